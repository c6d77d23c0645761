#pragma once
// The parts of a corner set as they stand, where the wall's thickness is not half a unit.
#include <string>
#include <vector>

#include "bond/layout.hpp"
#include "walls/building.hpp"

namespace stringcourse::setout {

/// A rectangle on a wall's line: along it, and in from its outer face.
struct OnWall {
  Length from, to, shallow, deep;
  friend bool operator==(const OnWall&, const OnWall&) = default;
};

/// One part: the long unit, its filler, or the short leg of an L-unit.
struct SetPart {
  std::string name;  // as bought; an L-unit's leg has its unit's
  OnWall place;      // on the line of the wall that runs through
};

/// What a piece covers of its wall. A corner set's: its long unit alone, at the outer faces of an outside corner and at
/// the inner faces of a re-entrant one.
[[nodiscard]] OnWall extent_of(const Building& building, const Run& run, const Piece& piece);
/// The corner that a piece turns (it is the last of a run that goes through there); -1: none.
[[nodiscard]] int corner_turned_by(const Building& building, const Layout& layout, const Run& run, const Piece& piece);
/// The parts of a corner set, the long unit first. Empty for any other piece.
[[nodiscard]] std::vector<SetPart> parts_of_set(const Building& building, const Run& run, const Piece& piece);

}  // namespace stringcourse::setout
