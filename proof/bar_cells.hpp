#pragma once
// One bar on its way up through the cells.
#include "proof/facts.hpp"

namespace stringcourse::proof {

/// Where a bar stands, along a wall and in from its outer face.
struct CornerBar {
  Length along, off_face;
};
/// A corner's bar as it stands in the other wall of its corner.
CornerBar seen_from_other(const Building& building, const PlacedBar& bar);

/// Whether two places of a wall lie in one cell of some course.
bool share_a_cell(const Building& building, const Facts& facts, int wall, Length one, Length other);

/// The bar in every course that it passes: inside one whole cell with its clearance, and enough in common with the cell
/// below. At a corner the unit of whichever wall runs through must hold it, along and across.
Violations check_cells_of(const Building& building, const Layout& layout, const Facts& facts, const PlacedBar& bar);

}  // namespace stringcourse::proof
