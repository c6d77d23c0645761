// Layouts laid by hand pass, and cost what was counted by hand.
#include <gtest/gtest.h>

#include <ctime>

#include "hand.hpp"

namespace stringcourse::hand {
namespace {

void expect_lawful(const Plan& plan) {
  EXPECT_EQ(told(plan), "");
  EXPECT_EQ(proof::check(plan.job, plan.building, plan.layout).cost, plan.layout.cost);
}

TEST(LawfulLayout, RectangleOfTwoCoursesPasses) { expect_lawful(rectangle()); }
TEST(LawfulLayout, RectangleWithCornerSetsPassesInTwelveInchBlock) { expect_lawful(rectangle("us-12")); }
TEST(LawfulLayout, RectangleWithCornerSetsPassesInSixInchBlock) { expect_lawful(rectangle("us-6")); }
TEST(LawfulLayout, RectangleWithCornerSetsPassesInTenInchBlock) { expect_lawful(rectangle("us-10")); }
TEST(LawfulLayout, PlanWithAReentrantCornerPasses) { expect_lawful(notched()); }
TEST(LawfulLayout, OnePieceLintelPasses) { expect_lawful(garden_wall()); }
TEST(LawfulLayout, LintelOfUnitsPasses) { expect_lawful(built_up_wall()); }
TEST(LawfulLayout, BarsInCellsPass) { expect_lawful(barred_wall()); }
TEST(LawfulLayout, LappedJunctionCostsTwoCutsAndTwoShortLaps) { expect_lawful(lapped_tee()); }
TEST(LawfulLayout, ControlJointPasses) { expect_lawful(jointed_wall()); }
TEST(LawfulLayout, OneBandOfFourCoursesPasses) { expect_lawful(banded_wall()); }
TEST(LawfulLayout, MakeUpPiecePasses) { expect_lawful(make_up_wall()); }

// Second unit of BC in course 1 of the rectangle: it starts one joint after the corner's 7 5/8 in, at 8 in exactly.
TEST(LawfulLayout, PlacesAreLiteralInches) {
  Plan plan = rectangle();
  EXPECT_EQ(piece_of(plan, 1, 1, 0, 0).start, (ExactPosition{203'200'000, 1}));  // 8 x 25.4 mm
  EXPECT_EQ(piece_of(plan, 0, 1, 0, 2).start, (ExactPosition{812'800'000, 1}));  // 32 x 25.4 mm
}

// A tied wall butts in every course with one joint; those joints stand plumb and are exempt from laps.
TEST(LawfulLayout, StraightJointsOfATiedWallAreNoLaps) {
  Plan plan = lapped_tee();
  plan.job.interior_walls[0].start_junction = JunctionKind::Tied;
  plan.building.junctions[0].kind = JunctionKind::Tied;
  plan.layout = {};
  plan.layout.entering_first = {0};
  lay(plan, 0, 1, in(0), in(63, 5), RunEnd::FreeEnd, RunEnd::FreeEnd, "FFFF");
  lay(plan, 0, 2, in(0), in(63, 5), RunEnd::FreeEnd, RunEnd::FreeEnd, "HFFFH");
  lay(plan, 1, 1, in(0), in(24), RunEnd::TiedJunction, RunEnd::FreeEnd, "FH");
  lay(plan, 1, 2, in(0), in(24), RunEnd::TiedJunction, RunEnd::FreeEnd, "HF");
  close(plan.layout);
  plan.layout.cost.units = 13;
  expect_lawful(plan);
}

// A lintel two courses deep has its end joints one above the other: at either end they are not compared.
TEST(LawfulLayout, EndJointsOfOneDeepLintelAreNoLaps) {
  Plan plan = garden_wall();
  plan.job.openings[0].lintel->courses = 2;
  plan.building.openings[0].lintel->courses = 2;
  plan.layout.runs.pop_back();
  plan.layout.pieces.resize(18);
  lay(plan, 0, 4, in(0), in(32), RunEnd::FreeEnd, RunEnd::LintelEnd, "HFH");          // joints 7, 23, 31 13/16
  lay(plan, 0, 4, in(63, 5), in(103, 5), RunEnd::LintelEnd, RunEnd::FreeEnd, "HFF");  // joints 63, 71, 87 13/16
  close(plan.layout);
  plan.layout.cost.units = 24;
  expect_lawful(plan);
}

// A unit of course 4 sawn in two (11 5/8 and 3 5/8): the other joints stay, one at 83 13/16 is new. Its neighbours a
// course down stand at 79 13/16 and 95 13/16: one short lap.
TEST(LawfulLayout, ShortLapIsCountedOnce) {
  Plan plan = garden_wall();
  relay(plan, 0, 4, 0, "HFFFFTQF");  // H to 7 5/8, F F F F to 71 5/8, T 72 to 83 5/8, Q 84 to 87 5/8
  plan.layout.cost = {.short_laps = 1, .cuts = 2, .short_pieces = 1, .units = 26};
  plan.layout.cut_lengths = 2;
  expect_lawful(plan);
}

// A bond beam in course 3 opens a band. Laid 11 5/8, three fulls, 3 5/8, its joints stand at 11, 27, 43, 59 13/16: none
// within 1/4 in of 15, 31, 47 13/16 in course 1 (three shift), each 4 in from one of the four in courses 2 and 4.
TEST(LawfulLayout, JointsThatShiftBetweenBandsAreCounted) {
  Plan plan = banded_wall();
  plan.job.steel.bond_beams = {3};
  plan.building.courses[2].bond_beam = true;
  expect_lawful(plan);
  relay(plan, 0, 3, 0, "TFFFq");
  plan.layout.cost = {.short_laps = 8, .cuts = 2, .short_pieces = 1, .shifted_joints = 3, .units = 19};
  plan.layout.cut_lengths = 2;
  expect_lawful(plan);
}

// 100,000 units in 100 courses of one wall. The machine's own processor time, so that a busy neighbour does not count.
TEST(LawfulLayout, HundredThousandUnitsAreCheckedInASecond) {
  Plan plan = begin(100);
  const Length nominal = in(16'000);  // 1,000 full units; by turns 999 and two halves
  add_free_wall(plan, nominal);
  const std::string odd(1000, 'F'), even = "H" + std::string(999, 'F') + "H";
  for (int course = 1; course <= 100; ++course)
    lay(plan, 0, course, in(0), nominal - in(0, 3), RunEnd::FreeEnd, RunEnd::FreeEnd, course % 2 == 1 ? odd : even);
  close(plan.layout);
  plan.layout.cost.units = 100'050;
  const std::clock_t before = std::clock();
  expect_lawful(plan);  // checks it twice
  EXPECT_LT(std::clock() - before, 2 * CLOCKS_PER_SEC);
}

}  // namespace
}  // namespace stringcourse::hand
