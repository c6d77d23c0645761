#pragma once
// Cleanouts on the walls that carry them: where each is, whether it is bought or cut, and to which side it opens.
#include <vector>

#include "bond/layout.hpp"
#include "walls/building.hpp"

namespace stringcourse::setout {

struct WallCleanout {
  std::int32_t wall = 0, course = 1;
  std::uint32_t piece = 0;
  Length along;          // of its bar, on the line of the wall whose unit it is in
  bool bought = false;   // a cleanout unit; else the hole is cut
  bool outward = false;  // through the outer face: at an outside corner, and where a wall meets the inner face there
};
/// All of them, in the layout's order. A cleanout unit has one hole: a second bar's in it is cut.
[[nodiscard]] std::vector<WallCleanout> cleanouts_of(const Building& building, const Layout& layout);
/// Those of one course of one wall.
[[nodiscard]] std::vector<WallCleanout> cleanouts_in(const Building& building, const Layout& layout, int wall,
                                                     int course);

}  // namespace stringcourse::setout
