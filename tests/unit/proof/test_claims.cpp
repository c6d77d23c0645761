// A building that is not what the job asks for is found, though the layout fits it.
#include <gtest/gtest.h>

#include "hand.hpp"

namespace stringcourse::hand {
namespace {

TEST(FalseClaim, SideLongerThanPlannedIsFound) {
  Plan plan = rectangle();
  plan.job.outline.sides[0].length.length = in(50);
  EXPECT_EQ(broken(plan), "building");
}
TEST(FalseClaim, NominalReadAsActualIsFound) {
  Plan plan = rectangle();
  plan.job.outline.sides[1].length.basis = Basis::Actual;
  EXPECT_EQ(broken(plan), "building");
}
TEST(FalseClaim, ActualLengthSaidOutrightPasses) {
  Plan plan = rectangle();
  plan.job.outline.sides[1].length = {in(31, 5), Basis::Actual};
  EXPECT_EQ(broken(plan), "");
}
TEST(FalseClaim, TurnTheOtherWayIsFound) {
  Plan plan = notched();
  plan.job.outline.sides[3].turn = Turn::Right;
  EXPECT_EQ(broken(plan), "building");
}
TEST(FalseClaim, PlanThatDoesNotCloseIsFound) {
  Plan plan = rectangle();
  plan.building.walls[2].start_point.x += Length::nanometres(1);
  EXPECT_EQ(broken(plan), "building");
}
TEST(FalseClaim, WiderJointRangeIsFound) {
  Plan plan = rectangle();
  plan.building.joint_most += Length::nanometres(1);
  EXPECT_EQ(broken(plan), "building");
}
TEST(FalseClaim, SmallerLeastPieceIsFound) {
  Plan plan = rectangle();
  plan.building.least_piece = in(2);
  EXPECT_EQ(broken(plan), "building");
}
TEST(FalseClaim, CutNotOnTheListIsFound) {
  Plan plan = rectangle();
  plan.building.cuts.push_back(in(9));
  EXPECT_EQ(broken(plan), "building");
}
TEST(FalseClaim, KindNotInTheStockIsFound) {
  Plan plan = rectangle();
  plan.building.stocked.push_back(UnitKind::Corner);
  EXPECT_EQ(broken(plan), "building");
}
TEST(FalseClaim, SeriesWithOtherSizesIsFound) {
  Plan plan = rectangle();
  plan.building.series[0].cut_step = Length::sixteenths(2);
  EXPECT_EQ(broken(plan), "building");
}
TEST(FalseClaim, CourseOffItsHeightIsFound) {
  Plan plan = rectangle();
  plan.building.courses[1].top += Length::nanometres(1);
  EXPECT_EQ(broken(plan), "building");
}
TEST(FalseClaim, AnotherNumberOfCoursesIsFound) {
  Plan plan = rectangle();
  plan.job.heights.courses = 3;
  EXPECT_EQ(broken(plan), "building");
}
TEST(FalseClaim, WireOnTopOfTheWallIsFound) {
  Plan plan = rectangle();
  plan.job.steel.wire_every = 1;
  plan.building.courses[0].wire = true;
  EXPECT_EQ(told(plan), "");
  plan.building.courses[1].wire = true;
  EXPECT_EQ(broken(plan), "building");
}
// Two courses stand 16 in high: nearest to 12 in and more, to 20 and less.
TEST(FalseClaim, CoursesThatMissTheHeightAskedAreFound) {
  Plan plan = rectangle();
  plan.job.heights.courses.reset();
  const auto ask = [&](Length height) { plan.job.heights.height = StatedLength{height, Basis::Nominal}; };
  for (const Length height : {in(12), in(16), in(20)}) {
    ask(height);
    EXPECT_EQ(told(plan), "");
  }
  for (const Length height : {in(11, 7), in(20, 1)}) {
    ask(height);
    EXPECT_EQ(broken(plan), "building");
  }
}
TEST(FalseClaim, BondBeamNotAskedForIsFound) {
  Plan plan = rectangle();
  plan.building.courses[1].bond_beam = true;
  EXPECT_EQ(broken(plan), "building");
}
TEST(FalseClaim, MovedOpeningIsFound) {
  Plan plan = garden_wall();
  plan.job.openings[0].place.at.length = in(48);
  EXPECT_EQ(broken(plan), "building");
}
TEST(FalseClaim, NarrowedOpeningIsFound) {
  Plan plan = garden_wall();
  plan.job.openings[0].masonry->width.length = in(17);
  EXPECT_EQ(broken(plan), "building");
}
TEST(FalseClaim, OpeningTooLowIsFound) {
  Plan plan = garden_wall();
  plan.job.openings[0].masonry->height.length = in(17);
  EXPECT_EQ(broken(plan), "building");
}
TEST(FalseClaim, AnotherLintelIsFound) {
  Plan plan = garden_wall();
  plan.job.openings[0].lintel->courses = 2;
  EXPECT_EQ(broken(plan), "building");
}
// A leaf of 12 in and jambs of 2 in ask for 16 in: the next hole of whole half units and a joint is 16 3/8.
TEST(FalseClaim, DoorRoundedUpToTheHalfUnitPasses) {
  Plan plan = garden_wall();
  plan.job.openings[0].masonry.reset();
  plan.job.openings[0].door = DoorSize{in(12), in(16), in(2), std::nullopt, std::nullopt, std::nullopt};
  EXPECT_EQ(broken(plan), "");
  plan.job.openings[0].door->frame_jamb = in(2, 2);  // 16 1/2 asked: 24 3/8 must be built
  EXPECT_EQ(broken(plan), "building");
  plan.job.openings[0].door->leaf_width = in(3);  // 7 1/2 asked: 8 3/8 would do
  EXPECT_EQ(broken(plan), "building");
}
// From corner B at the far end: 104 - 56 = 48 to the near edge, 64 to the far one.
TEST(FalseClaim, OpeningMeasuredFromTheOtherEndPasses) {
  Plan plan = garden_wall();
  plan.job.openings[0].place = {"B", {in(48), Basis::Nominal}, Face::Near};
  EXPECT_EQ(broken(plan), "");
  plan.job.openings[0].place = {"B", {in(64), Basis::Nominal}, Face::Far};
  EXPECT_EQ(broken(plan), "");
}
TEST(FalseClaim, MovedInteriorWallIsFound) {
  Plan plan = lapped_tee();
  plan.job.interior_walls[0].place.at.length = in(36);
  EXPECT_EQ(broken(plan), "building");
  plan.job.interior_walls[0].place.to = Face::Far;  // its far face stands on nominal 36
  EXPECT_EQ(broken(plan), "");
}
TEST(FalseClaim, JunctionOffItsWallIsFound) {
  Plan plan = lapped_tee();
  plan.building.walls[1].start_point.y += Length::nanometres(1);
  EXPECT_EQ(broken(plan), "building");
}
TEST(FalseClaim, ControlJointByNoRuleIsFound) {
  Plan plan = jointed_wall();
  plan.job.control_joints.rule.reset();
  EXPECT_EQ(broken(plan), "building");
}
TEST(FalseClaim, PlacedControlJointPasses) {
  Plan plan = jointed_wall();
  plan.job.control_joints.rule.reset();
  plan.job.control_joints.placed.push_back({"AB", {"A", {in(32), Basis::Nominal}, std::nullopt}});
  plan.building.control_joints[0].by_rule = false;
  EXPECT_EQ(broken(plan), "");
  plan.job.control_joints.placed[0].place.at.length = in(48);
  EXPECT_EQ(broken(plan), "building");
}
TEST(FalseClaim, ThinnerBarIsFound) {
  Plan plan = barred_wall();
  plan.building.bars->diameter = in(0, 4);
  EXPECT_EQ(broken(plan), "building");
}
TEST(FalseClaim, GroutSpaceNotInTheTableIsFound) {
  Plan plan = barred_wall();
  plan.building.bars->common_along = in(1);
  EXPECT_EQ(broken(plan), "building");
}
TEST(FalseClaim, WiderSpacingIsFound) {
  Plan plan = barred_wall();
  plan.job.steel.bars->spacing = in(16);
  EXPECT_EQ(broken(plan), "building");
}
TEST(FalseClaim, WallThatPointsNowhereIsFound) {
  Plan plan = rectangle();
  plan.building.walls[0].series = 7;
  EXPECT_EQ(broken(plan), "building");
}

}  // namespace
}  // namespace stringcourse::hand
