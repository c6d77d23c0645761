#include "supply/counts.hpp"

#include <gtest/gtest.h>

#include "unit/setout/hand_built.hpp"

namespace stringcourse::supply {
namespace {

using stringcourse::testing::HandBuilt;
using stringcourse::testing::Plan;

std::int64_t laid(const Counts& counts, UnitKind kind) {
  for (const UnitCount& unit : counts.units) {
    if (unit.kind == kind) return unit.whole;
  }
  return 0;
}

// Case E10: 20 x 8 x 8 ft. Its published 504 is 56 ft x 0.75 = 42 units x 12 courses, each corner counted twice; with
// each corner counted once, as laid, 40 x 12 = 480.
TEST(Counts, TwentyByEightByEightIs480WithCornersCountedOnce) {
  const HandBuilt house{Plan{.long_halves = 30, .short_halves = 12}};
  EXPECT_EQ(count_units(house.building, house.layout).pieces, 480);
  EXPECT_EQ(laid(count_units(house.building, house.layout), UnitKind::Full), 480);
}

TEST(Counts, WallsAddUpToTheBuilding) {
  const HandBuilt house{Plan{.door = true, .cut = true, .beam = true}};
  const Counts all = count_units(house.building, house.layout);
  std::int64_t pieces = 0, halves = 0, cuts = 0;
  for (int wall = 0; wall < 4; ++wall) {
    const Counts own = count_units_of_wall(house.building, house.layout, wall);
    pieces += own.pieces;
    halves += laid(own, UnitKind::Half);
    for (const CutCount& cut : own.cuts) cuts += cut.pieces;
  }
  EXPECT_EQ(pieces, all.pieces);
  EXPECT_EQ(pieces, static_cast<std::int64_t>(house.layout.pieces.size()));
  EXPECT_EQ(halves, laid(all, UnitKind::Half));
  EXPECT_EQ(cuts, house.layout.cost.cuts);
}

// 12 courses of 60 units; the door takes 7 courses of 40 in: 2 1/2 units of each.
TEST(Counts, TheDoorTakesItsShareOfUnits) {
  const HandBuilt without{Plan{}}, with{Plan{.door = true}};
  const auto halves_of = [](const HandBuilt& house) {
    std::int64_t halves = 0;
    for (const Piece& piece : house.layout.pieces) halves += piece.length == house.building.series[0].half ? 1 : 2;
    return halves;
  };
  EXPECT_EQ(halves_of(without) - halves_of(with), 7 * 5);
}

TEST(Purchases, AddTheUnitsThatGoToTheSaw) {
  const HandBuilt house{Plan{.cut = true}};
  for (const Purchase& purchase : units_to_buy(house.building, house.layout)) {
    if (purchase.kind != UnitKind::Full) continue;
    EXPECT_EQ(purchase.for_saw, 24);
    EXPECT_EQ(purchase.to_buy() - purchase.spare, purchase.whole + 24);
  }
}

// 480 units and 5 in 100 of them: 24. 4 lintel units: a fifth of one is one. None where the job says none.
TEST(Purchases, AddUnitsForBreakageRoundedUpForEachKind) {
  EXPECT_EQ(spare_units(480, 5), 24);
  EXPECT_EQ(spare_units(481, 5), 25);
  EXPECT_EQ(spare_units(4, 5), 1);
  EXPECT_EQ(spare_units(0, 5), 0);
  EXPECT_EQ(spare_units(480, 0), 0);
  HandBuilt house{Plan{.long_halves = 30, .short_halves = 12}};
  ASSERT_FALSE(house.building.breakage.stated);
  EXPECT_EQ(units_to_buy(house.building, house.layout).front().to_buy(), 480 + 24);
  house.building.breakage = {0, true};
  EXPECT_EQ(units_to_buy(house.building, house.layout).front().to_buy(), 480);
}

// Four corners in each of twelve courses, each one set on the side that runs through: 48 units and 48 fillers, in a
// beam and in a half-high course cut for it; a filler has no webs to cut down. Of 48 five in a hundred are 2.4: three
// spare ones of each.
TEST(CornerSets, ListTheirPartsCornerByCorner) {
  HandBuilt house{Plan{}};
  Series& series = house.building.series[0];
  series.thickness = Length::sixteenths(186);  // 11 5/8 in
  series.corner_set = CornerSet{series.full, series.half, {"8 in unit", "4 in filler"}};
  house.building.stocked.push_back(UnitKind::CornerSet);
  ASSERT_EQ(house.building.courses.size(), 12u);
  house.building.courses[0].half_high = true;
  house.building.courses[11].bond_beam = true;
  const Fact unit = fact("corner-set-part", {"8 in unit"}), filler = fact("corner-set-part", {"4 in filler"});
  const std::vector<PartCount> expected{{0, unit, PartWork::AsBought, 40, 3},
                                        {0, filler, PartWork::AsBought, 44, 3},
                                        {0, unit, PartWork::WebsCutDown, 4},
                                        {0, unit, PartWork::SawnHalfHigh, 4},
                                        {0, filler, PartWork::SawnHalfHigh, 4}};
  EXPECT_EQ(corner_set_parts(house.building, house.layout), expected);
}

// Opening 3'-4" + 3/8, bearings 8 and 16 less a joint each: 40 3/8 + 7 5/8 + 15 5/8 = 63 5/8 in.
TEST(Lintels, OfOnePieceAreAsLongAsOpeningAndBearings) {
  HandBuilt house{Plan{.door = true}};
  house.building.openings[0].lintel->make = LintelMake::OnePiece;
  house.layout.lintels = {{0, Length::sixteenths(122), Length::sixteenths(250)}};
  const std::vector<LintelCount> expected{{Length::sixteenths(63 * 16 + 10), 1, 1}};
  EXPECT_EQ(one_piece_lintels(house.building, house.layout), expected);
}

// Four corners and two jambs, each through 12 courses of 8 in: 6 x 8 ft.
TEST(Bars, CountACornersBarOnce) {
  HandBuilt house{Plan{.door = true, .bars = true}};
  house.layout.bars.push_back({3, house.building.walls[3].actual - Length::sixteenths(61), BarReason::Corner, 0, -1, 1,
                               12, Length::sixteenths(61)});
  const BarCount count = count_bars(house.building, house.layout);
  EXPECT_EQ(count.bars, 6);
  EXPECT_EQ(count.total, Length::feet(48));
  EXPECT_EQ(count.size, "#5");
}

}  // namespace
}  // namespace stringcourse::supply
