#pragma once
// "3/16 past" at a mark: what the next joints must be. Over one bay if it can take it, over more if not, over none if
// the tolerance forbids it: then what has to be cut.
#include <cstdint>
#include <vector>

#include "laying/even_joints.hpp"
#include "measure/length.hpp"
#include "measure/notation.hpp"

namespace stringcourse::laying {

struct JointRules {
  Length step;                         // widths are whole multiples of it
  Length joint;                        // as planned
  Length working_least, working_most;  // the crew's own range: 1/4 to 1/2 in, 7 to 13 mm
  Length least, most;                  // never outside: rule "head-joint-range"
};
[[nodiscard]] JointRules joint_rules(Tape tape, Length joint);

/// A unit still to be laid, the one after the first `joints` joints, may lie so far past or short of its plan before
/// the bar in it loses its clearance (or its joint comes too near to one of the course below).
struct BarAhead {
  int joints = 0;
  Length past_most, short_most;
  Length ahead = Length();  // what planned joints and the units as they are add by there: above zero, past
};

struct Wanted {
  Length past;                 // of the last unit's far end beyond its mark; below zero: short
  std::vector<int> bays;       // joints to each mark ahead, the nearest first; the last one is the jamb, bar or closure
  std::vector<BarAhead> bars;  // by joints from here
  bool beyond_working = false;  // asked for: the tolerance instead of the working range
  Length unit;                  // length of a whole unit, for what is to be cut
  std::vector<Length> ahead =
      {};  // by bays: what planned joints and the units as they are add by that mark; empty: nothing
};

struct Correction {
  enum class What {
    Joints,    // the next joints as given
    SawCut,    // the next unit is cut by `cut`, its joints and the others as given
    LayAgain,  // the last `again` units come up; joints from there as given (only replay says so: it knows where the
               // course stood)
    CannotBe,  // not even a cut
  } what = What::CannotBe;
  std::vector<Length> joints;  // in the order of laying
  int bays = 0;                // in how many the course is back on its mark
  bool outside_working = false;
  Length cut;                  // SawCut: so much shorter
  int again = 0;               // LayAgain
  Length left;                 // what the tape's steps cannot take: less than half a step
  std::vector<int> bars_lost;  // of Wanted::bars: not even so in their cells
};

/// The fewest bays that can take it within the working range; then, if asked, within the tolerance; then the least cut.
/// Never LayAgain. Bars are kept in their cells wherever any widths keep them: a bar that no widths keep
/// is named.
[[nodiscard]] Correction corrected(const Wanted& wanted, const JointRules& rules);

}  // namespace stringcourse::laying
