#pragma once
// Where the cells of a piece stand, from the series' figures.
#include <vector>

#include "proof/facts.hpp"

namespace stringcourse::proof {

/// Cells that a piece keeps whole, from its start face. A cut keeps the cells that end before the saw's cut, counted
/// from its factory end. Solid units and series that take no grout have none.
std::vector<CellSpan> whole_cells(const Series& series, const Piece& piece);

}  // namespace stringcourse::proof
