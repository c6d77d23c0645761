#pragma once
// What turns a corner, as it stands on its wall's line: the unit, and its set's filler or short leg.
#include <vector>

#include "bond/layout.hpp"
#include "measure/fact.hpp"
#include "walls/building.hpp"

namespace stringcourse::setout {

/// A rectangle on a wall's line: along it, and in from its outer face.
struct OnWall {
  Length from, to, shallow, deep;
  friend bool operator==(const OnWall&, const OnWall&) = default;
};

/// One part of what turns a corner.
struct SetPart {
  Fact name;            // as bought; an L-unit's leg has its unit's; empty: a plain unit
  bool filler = false;  // a piece of its own beside the unit
  OnWall place;         // on the line of the wall that runs through
};

/// What a piece covers of its wall. One that turns a corner: its long unit alone, which may be thinner than the wall;
/// it lies at the outer faces of an outside corner and at the inner faces of a re-entrant one.
[[nodiscard]] OnWall extent_of(const Building& building, const Run& run, const Piece& piece);
/// The corners that a piece turns (it is at an end of its run that goes through there): none, one or two.
[[nodiscard]] std::vector<int> corners_turned_by(const Building& building, const Run& run, const Piece& piece);
/// The parts of what a piece makes at the corners that it turns, the unit first. Empty for a piece that turns none.
[[nodiscard]] std::vector<SetPart> corner_parts_of(const Building& building, const Run& run, const Piece& piece);

}  // namespace stringcourse::setout
