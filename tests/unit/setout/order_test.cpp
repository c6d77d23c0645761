#include <gtest/gtest.h>

#include <algorithm>

#include "bond/layout_parts.hpp"
#include "setout/gauge_rod.hpp"
#include "setout/laying_order.hpp"
#include "setout/saw_list.hpp"
#include "unit/setout/hand_built.hpp"

namespace stringcourse::setout {
namespace {

using stringcourse::testing::HandBuilt;
using stringcourse::testing::Plan;

// By hand: 47 5/8 over 39 5/8 over 31 5/8 over 23 5/8 over 15 5/8 on one side, 39 5/8 ... 15 5/8 and nothing on the
// other: 5, 4, 3, 2, 1 units round the corner, the trade's five-course lead.
TEST(Leads, OfFiveCoursesHaveFiveFourThreeTwoOneUnits) {
  const HandBuilt house{Plan{}};
  const auto all = leads(house.building, house.layout);
  ASSERT_EQ(all.size(), 4u);
  for (const Lead& lead : all) {
    ASSERT_EQ(lead.courses.size(), 5u);
    for (std::size_t index = 0; index < 5; ++index) {
      EXPECT_EQ(lead.courses[index].arriving_units + lead.courses[index].leaving_units, 5 - static_cast<int>(index));
    }
  }
  EXPECT_EQ(all[0].courses[0].leaving_units, 3);  // AB runs through at A in course 1
  EXPECT_EQ(all[0].courses[0].arriving_units, 2);
}

TEST(Leads, OfALowWallAreNoHigherThanTheWall) {
  const HandBuilt house{Plan{.courses = 3}};
  EXPECT_EQ(leads(house.building, house.layout)[0].courses.size(), 3u);
}

TEST(Closures, EachStretchHasOneAwayFromCornersAndBars) {
  const HandBuilt house{Plan{.door = true, .bars = true}};
  const auto all = closures(house.building, house.layout, 1);
  ASSERT_EQ(all.size(), 5u);  // AB is two stretches at the door
  for (const Closure& closure : all) {
    const stringcourse::Run& run = house.layout.runs[static_cast<std::size_t>(closure.run)];
    EXPECT_GT(closure.piece, run.first_piece + 1);
    EXPECT_LT(closure.piece + 2, run.first_piece + run.piece_count);
    EXPECT_FALSE(bond::is_saw_cut(house.layout.pieces[closure.piece]));
  }
}

// BC: 11 units between its corners; the sixth is the middle one.
TEST(Closures, StandNearTheMiddle) {
  const HandBuilt house{Plan{}};
  const auto all = closures(house.building, house.layout, 1);
  ASSERT_EQ(all.size(), 4u);
  EXPECT_EQ(house.layout.pieces[all[1].piece].number, 6);
}

TEST(GaugeRod, HasEveryCourseOnceFromOneDatum) {
  const HandBuilt house{Plan{.door = true, .beam = true}};
  const auto rod = gauge_rod(house.building);
  int tops = 0;
  for (const RodMark& mark : rod) {
    if (mark.event != RodEvent::CourseTop) continue;
    EXPECT_EQ(mark.at, Length::inches(8) * tops);  // three courses in two feet, course 1 at 0
    ++tops;
  }
  EXPECT_EQ(tops, 12);
  EXPECT_TRUE(std::is_sorted(rod.begin(), rod.end(), [](const RodMark& a, const RodMark& b) { return a.at < b.at; }));
}

// Door of seven courses: head at 6 x 8 in + 3/8; lintel course 8; top of wall 11 x 8 = 7'-4".
TEST(GaugeRod, HasHeadLintelBeamAndTop) {
  const HandBuilt house{Plan{.door = true, .beam = true}};
  const auto rod = gauge_rod(house.building);
  const auto at = [&](RodEvent event) {
    const auto found = std::find_if(rod.begin(), rod.end(), [&](const RodMark& mark) { return mark.event == event; });
    return found == rod.end() ? Length::inches(-999) : found->at;
  };
  EXPECT_EQ(at(RodEvent::Floor), Length::inches(-8));
  EXPECT_EQ(at(RodEvent::Head), Length::sixteenths(48 * 16 + 6));
  EXPECT_EQ(at(RodEvent::LintelCourse), Length::inches(56));
  EXPECT_EQ(at(RodEvent::BondBeam), Length::inches(88));
  EXPECT_EQ(at(RodEvent::Top), Length::inches(88));
  EXPECT_EQ(at(RodEvent::Wire), Length::inches(8));  // course 2
}

TEST(SawList, HoldsEveryCutOfTheLayoutOnce) {
  const HandBuilt house{Plan{.cut = true}};
  const SawList list = saw_list(house.building, house.layout);
  std::vector<std::uint32_t> listed;
  for (const SawGroup& group : list.groups) {
    for (const SawPlace& place : group.places) {
      EXPECT_EQ(house.layout.pieces[place.piece].length, group.length);
      const stringcourse::Run& run = house.layout.runs[static_cast<std::size_t>(place.run)];
      EXPECT_TRUE(place.piece >= run.first_piece && place.piece < run.first_piece + run.piece_count);
      listed.push_back(place.piece);
    }
  }
  std::sort(listed.begin(), listed.end());
  EXPECT_EQ(std::adjacent_find(listed.begin(), listed.end()), listed.end());
  EXPECT_EQ(static_cast<std::int64_t>(listed.size()), house.layout.cost.cuts);
  EXPECT_EQ(listed.size(), 24u);  // one in each course of AB and CD
}

// 15 5/8 - 11 5/8 - 1/8 of kerf leave 3 7/8 in.
TEST(SawList, OffcutIsWhatTheSawLeaves) {
  const HandBuilt house{Plan{.cut = true}};
  const SawList list = saw_list(house.building, house.layout);
  ASSERT_EQ(list.groups.size(), 1u);
  EXPECT_EQ(list.groups[0].offcut, Length::sixteenths(62));
  EXPECT_TRUE(list.pairs.empty());  // 11 5/8 twice is longer than a unit
  EXPECT_EQ(list.units(0, UnitKind::Full), 24);
}

// 11 5/8 + 3 5/8 + 1/8 = 15 3/8 fits into 15 5/8: one unit yields both.
TEST(SawList, PairsQuarterAndThreeQuarterCuts) {
  HandBuilt house{Plan{.cut = true}};
  int turned = 0;
  for (Piece& piece : house.layout.pieces) {
    if (bond::is_saw_cut(piece) && turned < 10) {
      piece.length = Length::sixteenths(58);
      ++turned;
    }
  }
  const SawList list = saw_list(house.building, house.layout);
  ASSERT_EQ(list.groups.size(), 2u);
  ASSERT_EQ(list.pairs.size(), 1u);
  EXPECT_EQ(list.pairs[0].units, 10);  // 14 of the one, 10 of the other
  EXPECT_EQ(list.units(0, UnitKind::Full), 14);
  EXPECT_EQ(list.groups[0].partner, 1);
  EXPECT_EQ(list.groups[1].paired, 10);
}

// 7 5/8 + 7 5/8 + 1/8 = 15 3/8: two to a unit; of seven, three units yield six and one more is needed.
TEST(SawList, TwoOfOneLengthComeFromOneUnit) {
  HandBuilt house{Plan{.courses = 4, .cut = true}};
  int kept = 0;
  for (Piece& piece : house.layout.pieces) {
    if (!bond::is_saw_cut(piece)) continue;
    piece.length = house.building.series[0].half;
    if (++kept > 7) piece.cut = CutEnd::None;
  }
  const SawList list = saw_list(house.building, house.layout);
  ASSERT_EQ(list.groups.size(), 1u);
  EXPECT_EQ(list.groups[0].places.size(), 7u);
  EXPECT_EQ(list.units(0, UnitKind::Full), 4);
}

}  // namespace
}  // namespace stringcourse::setout
