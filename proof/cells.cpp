#include "proof/cells.hpp"

#include <algorithm>

#include "proof/kinds.hpp"

namespace stringcourse::proof {

std::vector<CellSpan> whole_cells(const Series& series, const Piece& piece) {
  std::vector<CellSpan> cells;
  if (!series.grouts || piece.kind == UnitKind::Solid) return cells;
  for (const CellSpan& cell : is_half_kind(piece.kind) ? series.half_cells : series.full_cells) {
    if (piece.cut == CutEnd::None) cells.push_back(cell);
    else if (cell.to < piece.length)
      cells.push_back(piece.cut == CutEnd::End ? cell : CellSpan{piece.length - cell.to, piece.length - cell.from});
  }
  std::ranges::sort(cells, {}, &CellSpan::from);
  return cells;
}

}  // namespace stringcourse::proof
