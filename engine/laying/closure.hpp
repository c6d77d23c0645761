#pragma once
// What closes the last gap of a course: one piece, or two where the gap is longer than a unit. As few saw cuts as can
// be, and no joint too near to one of the course below, wherever any pieces keep that.
#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "measure/fact.hpp"
#include "measure/length.hpp"
#include "measure/notation.hpp"

namespace stringcourse::laying {

struct Gap {
  Length measured;    // between the faces of the two units that stand, or from one to the jamb's line
  Length unit, half;  // whole and half unit as they were measured
  Length joint, least_joint, most_joint;
  Length step;
  Length least_piece;
  bool has_half = true;                               // the yard has halves
  bool joint_at_start = true, joint_at_end = true;    // none at a jamb: there the piece shows a factory face
  Length at = Length();                               // of the gap's near side, from the wall's start
  std::vector<Length> below = {};                     // centres of the head joints below, in order along the wall
  Length least_lap = Length(), short_lap = Length();  // a joint nearer to one below breaks the rule, or is a short lap
};

struct ClosurePiece {
  enum class Kind : std::uint8_t { Whole, Half, Cut } kind = Kind::Whole;
  Length length;  // a cut face goes inside, to a joint
  friend bool operator==(const ClosurePiece&, const ClosurePiece&) = default;
};

struct Closure {
  std::vector<ClosurePiece> pieces;  // one or two, from the gap's near side
  Length joint;                      // each, alike; what the step leaves is less than one step in all of them
  int last = 0;                      // which is laid last: a whole or a half unit rather than a cut
  std::optional<Length> lost_over;   // the joint below that the joint between the pieces comes nearer to than least_lap
  Length lost_lap;                   // and by how much it laps it
};

/// Pieces of which each is as long as the least piece at least, none longer than a unit, with joints within the range.
/// Of all such, by these in turn: the lap of the joint between two pieces, fewest saw cuts, fewest short laps, one
/// piece rather than two, joints as planned, two cuts as alike as they can be. None where nothing fits: a gap longer
/// than two units, or too narrow.
[[nodiscard]] std::optional<Closure> closure_of(const Gap& gap);

/// "a half unit, then a whole unit; joints of 3/8\"", with what is lost.
[[nodiscard]] Fact closure_said(const Closure& closure);

}  // namespace stringcourse::laying
