#pragma once
// Bars with a place of their own while they are gathered: one cell, one bar, unless two were asked for.
#include <cstddef>
#include <optional>
#include <string>
#include <vector>

#include "walls/corner_plan.hpp"
#include "walls/draft.hpp"
#include "walls/places.hpp"

namespace stringcourse::walls {

/// The cell of a bar that the engine places: half a unit from its jamb, joint or corner into the wall.
struct OwnCell {
  int wall = -1;
  Position from, to;
  std::size_t bar = 0;  // index into Building::fixed_bars
};

struct BarSet {
  std::vector<OwnCell> cells;
};

/// Where a bar may stand along a wall: its masonry, beyond re-entrant corners too.
[[nodiscard]] bool is_on_masonry(const Draft& draft, int wall, Position centre);
/// The opening in which this place lies, or -1.
[[nodiscard]] int opening_over(const Draft& draft, int wall, Position centre);
/// The corner in whose units' cell this place of the wall lies, or -1.
[[nodiscard]] int corner_with_cell(const Draft& draft, int wall, Position centre);
/// The bar of this corner so far, if any.
[[nodiscard]] const FixedBar* bar_of_corner(const Draft& draft, int corner);
/// The cell of a bar that the engine placed, if this place lies in one.
[[nodiscard]] const OwnCell* own_cell_at(const BarSet& bars, int wall, Position centre);
/// Gives a bar its depth; one in a corner's cell is of that corner.
void settle_in_wall(const Draft& draft, FixedBar& bar);
/// What is left of the grout between a corner's bar and the nearest shell or web of the corner units of both walls.
[[nodiscard]] Length grout_left(const Draft& draft, const FixedBar& bar);

/// Bars at dowels that stand already.
void keep_dowels(Draft& draft, const BarSet& bars);  // kept_bars.cpp

}  // namespace stringcourse::walls
