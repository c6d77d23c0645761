// Which cells a piece has whole, as drawn on the strips.
#include <gtest/gtest.h>

#include "bond/layout_parts.hpp"
#include "catalogue/series.hpp"

namespace stringcourse::bond {
namespace {

Piece piece_of(Length length, UnitKind kind, CutEnd cut) {
  Piece piece;
  piece.length = length;
  piece.kind = kind;
  piece.cut = cut;
  return piece;
}

// us-8 is a two-core unit.
TEST(Cells, AFullUnitHasBothAndAHalfOne) {
  const Series& series = *find_series("us-8");
  EXPECT_EQ(cells_of(series, piece_of(series.full, UnitKind::Full, CutEnd::None)).size(), 2u);
  EXPECT_EQ(cells_of(series, piece_of(series.half, UnitKind::Half, CutEnd::None)).size(), 1u);
}

// Sawn to 11 5/8 in at its end, the second cell is open: only the first is whole.
TEST(Cells, ASawCutKeepsTheCellThatTheSawLeavesWhole) {
  const Series& series = *find_series("us-8");
  const Length length = Length::sixteenths(11 * 16 + 10);
  const auto at_end = cells_of(series, piece_of(length, UnitKind::Full, CutEnd::End));
  ASSERT_EQ(at_end.size(), 1u);
  EXPECT_EQ(at_end[0], series.full_cells[0]);
}

// Sawn at its start, the piece is the same turned round: the cell lies as far from the far end as it lay from the near.
TEST(Cells, ASawCutAtItsStartIsTheMirrorOfOneAtItsEnd) {
  const Series& series = *find_series("us-8");
  const Length length = Length::sixteenths(11 * 16 + 10);
  const auto at_start = cells_of(series, piece_of(length, UnitKind::Full, CutEnd::Start));
  ASSERT_EQ(at_start.size(), 1u);
  EXPECT_EQ(at_start[0].from, length - series.full_cells[0].to);
  EXPECT_EQ(at_start[0].to, length - series.full_cells[0].from);
}

// A corner set's long unit has cells (its bar stands in one); a solid unit has none.
TEST(Cells, ACornerSetHasItsLongUnitsAndASolidUnitNone) {
  const Series& series = *find_series("us-12");
  EXPECT_EQ(cells_of(series, piece_of(series.full, UnitKind::CornerSet, CutEnd::None)), series.full_cells);
  EXPECT_TRUE(cells_of(series, piece_of(series.full, UnitKind::Solid, CutEnd::None)).empty());
}

}  // namespace
}  // namespace stringcourse::bond
