#pragma once
// One bar on its way up through the cells.
#include "proof/facts.hpp"

namespace stringcourse::proof {

/// The bar in every course that it passes: inside one whole cell with its clearance, and enough in common with the cell
/// below. At a corner also inside the other wall's corner unit, where that one runs through.
Violations check_cells_of(const Building& building, const Layout& layout, const Facts& facts, const PlacedBar& bar);

}  // namespace stringcourse::proof
