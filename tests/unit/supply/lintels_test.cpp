#include "supply/lintels.hpp"

#include <gtest/gtest.h>

#include <set>

#include "bond/lintel_units.hpp"
#include "unit/setout/hand_built.hpp"

namespace stringcourse::supply {
namespace {

using stringcourse::testing::HandBuilt;
using stringcourse::testing::Plan;

// The door's jambs stand at 95 5/8 and 136. Course 8 butts at A: a joint, then units of 16 from 8, so 88 to 103 5/8 is
// the sixth, which stands 7 5/8 over the near jamb, and 136 to 151 5/8 the ninth, which stands 15 5/8 beyond the far
// one.
constexpr Length k7_5 = Length::sixteenths(122), k15_5 = Length::sixteenths(250), k23_5 = Length::sixteenths(378);

HandBuilt house_with(Length asked) {
  HandBuilt house{Plan{.door = true, .bars = true}};
  house.building.openings[0].lintel->least_bearing = asked;
  const auto laid = bond::bearings_as_laid(house.layout, house.building.openings[0]);
  house.layout.lintels = {{0, laid->start, laid->end}};
  return house;
}

TEST(LintelUnits, BearToTheEndOfTheLastUnitThatIsNeeded) {
  struct Case {
    Length asked, start, end;
  };
  for (const Case& each :
       {Case{Length::inches(4), k7_5, k15_5}, Case{k7_5, k7_5, k15_5},
        Case{Length::sixteenths(124), k7_5, k15_5},   // 1/8 in is within a unit's tolerance
        Case{Length::sixteenths(125), k23_5, k15_5},  // 3/16 is not: the next unit too
        Case{Length::inches(8), k23_5, k15_5}, Case{Length::inches(16), k23_5, Length::sixteenths(506)}}) {
    const HandBuilt house = house_with(each.asked);
    EXPECT_EQ(house.layout.lintels[0].start_bearing, each.start) << each.asked.in_nanometres();
    EXPECT_EQ(house.layout.lintels[0].end_bearing, each.end) << each.asked.in_nanometres();
  }
}

TEST(LintelUnits, AreNoneWhereNoRunCrossesTheOpening) {
  HandBuilt house{Plan{.door = true}};
  std::erase_if(house.layout.runs, [](const stringcourse::Run& run) { return run.wall == 0 && run.course == 8; });
  EXPECT_FALSE(bond::bearings_as_laid(house.layout, house.building.openings[0]).has_value());
}

// A wall that ends 4 in beyond the jamb, with 7 5/8 asked: the run's end is what there is.
TEST(LintelsAsLaid, SayWhereTheMasonryEndsTooSoon) {
  HandBuilt house{Plan{.door = true}};
  house.building.openings[0].lintel->least_bearing = Length::inches(112);
  const Length from = Length::sixteenths(95 * 16 + 10);
  const auto laid = bond::bearings_as_laid(house.layout, house.building.openings[0]);
  EXPECT_EQ(laid->start, from - Length::inches(8));  // the course butts at A: its first unit starts at 8
  house.layout.lintels = {{0, laid->start, laid->end}};
  const auto lintels = lintels_as_laid(house.building, house.layout);
  EXPECT_TRUE(lintels[0].start.is_short);
}

TEST(LintelsAsLaid, TellABearingThatEndsInAJoint) {
  const auto ends = [](Length asked) {
    const HandBuilt house = house_with(asked);
    const LintelAsLaid lintel = lintels_as_laid(house.building, house.layout)[0];
    return std::pair{lintel.start.in_joint, lintel.end.in_joint};
  };
  EXPECT_EQ(ends(k7_5), std::pair(false, false));
  EXPECT_EQ(ends(Length::inches(8)), std::pair(true, false));   // from 7 5/8 to 8 there is a joint
  EXPECT_EQ(ends(Length::inches(9)), std::pair(false, false));  // an inch into the next unit
  EXPECT_EQ(ends(Length::inches(16)), std::pair(false, true));  // 15 5/8 to 16 at the other end
}

// Jamb bars half a unit (3 13/16) off the jambs: 91 13/16 in the sixth unit, 139 13/16 in the ninth.
TEST(Floors, AreBrokenOutWhereBarsPassThem) {
  const HandBuilt house = house_with(k7_5);
  const std::vector<BarThrough> floors = floors_to_break_out(house.building, house.layout);
  ASSERT_EQ(floors.size(), 2u);
  EXPECT_EQ(floors[0].unit, 6);
  EXPECT_EQ(floors[0].centre, Length::sixteenths(91 * 16 + 13));
  EXPECT_EQ(floors[1].unit, 9);
  EXPECT_EQ(floors[1].centre, Length::sixteenths(139 * 16 + 13));
  for (const BarThrough& floor : floors)
    EXPECT_EQ(std::tuple(floor.wall, floor.course, floor.opening), std::tuple(0, 8, 0));
}

TEST(Floors, StayWhereTheBarEndsBelow) {
  HandBuilt house = house_with(k7_5);
  for (PlacedBar& bar : house.layout.bars) bar.last_course = 7;
  EXPECT_TRUE(floors_to_break_out(house.building, house.layout).empty());
}

// The corner's bar is listed on one wall and met on both: in each course it stands in one unit only.
TEST(Floors, OfACornersUnitCountOnce) {
  HandBuilt house{Plan{.bars = true}};
  for (Piece& piece : house.layout.pieces) piece.kind = UnitKind::Lintel;
  EXPECT_EQ(floors_to_break_out(house.building, house.layout).size(), 4u * 12u);
}

TEST(LintelsAsLaid, SayWhatSpansAndWhetherItsSoffitIsClosed) {
  HandBuilt house = house_with(k7_5);
  const auto soffit = [&] { return lintels_as_laid(house.building, house.layout)[0].soffit; };
  EXPECT_EQ(soffit(), Soffit::Floor);
  ASSERT_EQ(lintels_as_laid(house.building, house.layout)[0].units.size(), 1u);
  EXPECT_EQ(lintels_as_laid(house.building, house.layout)[0].units[0], (UnitCount{0, UnitKind::Lintel, 4, 0}));
  const auto replace = [&](UnitKind with) {
    for (const stringcourse::Run& run : house.layout.runs) {
      for (std::uint32_t p = 0; run.wall == 0 && run.course == 8 && p < run.piece_count; ++p) {
        UnitKind& kind = house.layout.pieces[run.first_piece + p].kind;
        if (kind != UnitKind::Full) kind = with;
      }
    }
  };
  replace(UnitKind::BondBeam);
  EXPECT_EQ(soffit(), Soffit::Form);
  EXPECT_TRUE(floors_to_break_out(house.building, house.layout).empty());
  replace(UnitKind::Corner);
  EXPECT_EQ(soffit(), Soffit::Nothing);
  house.building.openings[0].lintel->make = LintelMake::OnePiece;
  EXPECT_EQ(soffit(), Soffit::OnePiece);
  EXPECT_EQ(lintels_as_laid(house.building, house.layout)[0].bars.size(), 2u);  // cored at both jamb bars
}

}  // namespace
}  // namespace stringcourse::supply
