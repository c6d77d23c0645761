#pragma once
// What a course has over a place of the plan, whichever wall's unit it is: at a corner the other wall's, in a slot the
// wall's that enters.
#include <cstdint>
#include <optional>
#include <vector>

#include "bond/layout.hpp"
#include "bond/layout_parts.hpp"
#include "setout/corner_sets.hpp"
#include "walls/building.hpp"

namespace stringcourse::setout {

/// A cell of a unit, as one wall sees it.
struct SeenCell {
  std::int32_t wall = 0;    // on whose line the unit lies
  std::int32_t unit = 0;    // its number along that wall
  int cell = 0;             // from the unit's end nearer to that wall's start: 1, 2 ...
  std::uint32_t piece = 0;  // into Layout::pieces
  OnWall clear;             // between webs and shells, on the line of the wall that looks
  friend bool operator==(const SeenCell&, const SeenCell&) = default;
};

/// What stands over a place.
struct Over {
  const Run* run = nullptr;      // none: an opening, or air
  const Piece* piece = nullptr;  // none: a joint, a filler
  std::optional<SeenCell> cell;  // none: a web, a shell, a cut end, a solid unit
};
[[nodiscard]] Over what_stands_over(const Building& building, const Layout& layout, int wall, int course,
                                    bond::SeenFrom place);

/// The cells of one course between a wall's faces: its own units' in order along it, then those of other walls' units
/// that stand there.
[[nodiscard]] std::vector<SeenCell> cells_seen(const Building& building, const Layout& layout, int wall, int course);

/// The walls that a wall meets: round its corners, at its ends, and those that meet it.
[[nodiscard]] std::vector<int> walls_met(const Building& building, int wall);

}  // namespace stringcourse::setout
