#pragma once
// A short wall between two openings: both jamb units first, factory faces to the openings; then what closes the gap.
#include <optional>

#include "measure/length.hpp"

namespace stringcourse::laying {

struct Gap {
  Length measured;  // between the faces of the two units that stand
  Length unit, half;  // whole and half unit as they were measured
  Length joint, least_joint, most_joint;
  Length step;
  Length least_piece;
};
struct Closure {
  enum class Piece { Whole, Half, Cut, TwoCuts } piece = Piece::Whole;
  Length length;        // of the piece; a cut face goes inside, to a joint
  Length joint;         // at each side: alike
  bool next_to_last = false;  // the cut is laid before, a whole unit closes
  Length cut_length;    // next_to_last: of that cut; TwoCuts: of the other
};
/// A whole or a half unit where equal joints within the range let it in, the one whose joints come nearer to the planned;
/// else a cut with planned joints, to the step; joints take what rounding leaves. In a gap of more than a unit the cut is
/// laid next to last, and a whole unit closes; where that cut would be too short, two cuts of about half the gap, for they
/// are long enough. None where no lawful piece fits.
[[nodiscard]] std::optional<Closure> closure_of(const Gap& gap);

}  // namespace stringcourse::laying
