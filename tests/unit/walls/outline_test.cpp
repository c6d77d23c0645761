// Nominal and actual lengths, corners and plan points, and the outlines that are refused.
#include <gtest/gtest.h>

#include "made_jobs.hpp"

namespace stringcourse::tests {
namespace {

TEST(Outline, ARectanglesSidesAreNominalLessOneJoint) {
  // U3: actual length of a modular wall = nominal less 3/8 in; 24'-0" -> 23'-11 5/8" (E16).
  RESOLVED(building, shed());
  EXPECT_EQ(building.walls[0].actual, in16(287, 10));
  EXPECT_EQ(building.walls[1].actual, in16(239, 10));
  EXPECT_EQ(building.walls[0].nominal, in(288));
}

TEST(Outline, TheFirstWallRunsWestFromTheOriginAndTheBuildingIsOnTheRight) {
  RESOLVED(building, shed());
  EXPECT_EQ(building.walls[0].heading, Heading::West);
  EXPECT_EQ(building.walls[1].heading, Heading::North);
  EXPECT_EQ(building.walls[0].start_point, (PlanPoint{}));
  EXPECT_EQ(building.walls[2].start_point, (PlanPoint{-in16(287, 10), in16(239, 10)}));
  EXPECT_EQ(building.walls[3].heading, Heading::South);
}

TEST(Outline, InAnLTheTwoSidesAtTheReEntrantCornerKeepTheirNominalLength) {
  // Right, right, left, right, right, right: corner D is re-entrant (turn at the far end of the third side).
  RESOLVED(building, job_with(outline_of({{288}, {240}, {144}, {96, Turn::Left}, {144}, {144}})));
  // Turns are at far corners: the fourth side's far corner E is the left one.
  EXPECT_FALSE(building.corners[4].convex);
  EXPECT_EQ(building.walls[3].actual, in(96));   // convex to re-entrant: nominal
  EXPECT_EQ(building.walls[4].actual, in(144));  // re-entrant to convex: nominal
  EXPECT_EQ(building.walls[2].actual, in16(143, 10));
}

TEST(Outline, BetweenTwoReEntrantCornersASideIsNominalPlusOneJoint) {
  // A U: the court's back wall stands between two re-entrant corners.
  RESOLVED(building,
           job_with(outline_of({{384}, {240}, {128}, {96, Turn::Left}, {128, Turn::Left}, {96}, {128}, {240}})));
  EXPECT_EQ(building.walls[4].name, "EF");
  EXPECT_EQ(building.walls[4].actual, in16(128, 6));
  EXPECT_EQ(building.walls[3].actual, in(96));
}

TEST(Outline, TheActualOuterFacesComeBackToTheFirstCorner) {
  RESOLVED(building,
           job_with(outline_of({{384}, {240}, {128}, {96, Turn::Left}, {128, Turn::Left}, {96}, {128}, {240}})));
  const Wall& last = building.walls.back();  // runs south down to A at the origin
  EXPECT_EQ(last.heading, Heading::South);
  EXPECT_EQ(last.start_point.x, Length());
  EXPECT_EQ(last.start_point.y, last.actual);
}

TEST(Outline, AStatedActualLengthIsTakenAsItIsAndItsNominalComputedBack) {
  Job job = shed();
  job.outline.sides[0].length = actual(in16(287, 10));
  RESOLVED(building, job);
  EXPECT_EQ(building.walls[0].actual, in16(287, 10));
  EXPECT_EQ(building.walls[0].nominal, in(288));
}

TEST(Outline, AnOutlineThatEndsShortSaysHowFarWhereAndWhatWouldCloseIt) {
  REFUSED(refusals, job_with(outline_of({{288}, {240}, {280}, {240}})));
  const Refusal* open = refusal(refusals, "outline-open");
  ASSERT_NE(open, nullptr);
  EXPECT_EQ(open->place, "/outline/sides/3/length");
  // AB goes 288 west, CD only 280 back east: the end lies 8 in west of A.
  EXPECT_NE(test::told(open->reason).find("8\" to the west of corner A"), std::string::npos)
      << test::told(open->reason);
  EXPECT_NE(test::told(open->remedy).find("AB 8\" shorter or CD 8\" longer"), std::string::npos)
      << test::told(open->remedy);
}

TEST(Outline, ALeftHandedClosedOutlineIsWalkedTheOtherWayAndKeepsItsNames) {
  Outline left = outline_of({{288, Turn::Left}, {240, Turn::Left}, {288, Turn::Left}, {240, Turn::Left}});
  RESOLVED(building, job_with(left));
  EXPECT_EQ(building.walls[0].name, "DA");
  EXPECT_EQ(building.walls[0].start_name, "A");
  EXPECT_EQ(building.walls[0].place, "/outline/sides/3");
  for (const Corner& corner : building.corners) EXPECT_TRUE(corner.convex);
}

TEST(Outline, AnOpenOutlineOnTheLeftIsWalkedBackWithItsTurnsFlipped) {
  Outline outline = outline_of({{96, Turn::Left}, {144, Turn::Right}, {200}}, false);
  outline.building_on = Hand::Left;
  RESOLVED(building, job_with(outline));
  ASSERT_EQ(building.walls.size(), 3u);
  EXPECT_EQ(building.walls[0].name, "CD");
  EXPECT_EQ(building.walls[0].start_name, "D");
  // B is a left turn with the building on the left: convex. C turns right: re-entrant.
  EXPECT_EQ(building.corners[0].name, "C");
  EXPECT_FALSE(building.corners[0].convex);
  EXPECT_TRUE(building.corners[1].convex);
  EXPECT_EQ(building.walls[0].actual, in(200));       // free end (out) to re-entrant: nominal
  EXPECT_EQ(building.walls[2].actual, in16(95, 10));  // convex to free end: less one joint
  EXPECT_EQ(building.walls[0].start.kind, EndKind::Free);
}

TEST(Outline, WallsThatCrossAreRefused) {
  // The third side comes back through the first: 4 rights more than lefts, closed, but a figure that crosses itself.
  REFUSED(refusals,
          job_with(outline_of({{400}, {200}, {100}, {300, Turn::Left}, {100, Turn::Left}, {300}, {200}, {200}})));
  EXPECT_NE(refusal(refusals, "outline-crosses"), nullptr) << codes(refusals);
}

TEST(Outline, TwoWallsNearerThanTheirThicknessAreRefusedAndTouchingOnesAreNot) {
  // A finger 15 1/4 in wide (actual) is two walls of 7 5/8 in back to back: nominal 15 5/8. Less is refused.
  Outline finger = outline_of({{240}, {0}, {240}, {0}});
  finger.sides[1].length = finger.sides[3].length = nominal(in16(15, 10));
  EXPECT_TRUE(resolve(job_with(finger)).has_value());
  finger.sides[1].length = finger.sides[3].length = nominal(in16(15, 9));
  REFUSED(refusals, job_with(finger));
  EXPECT_NE(refusal(refusals, "outline-crosses"), nullptr);
}

TEST(Outline, TroublesOfNamesTurnsAndChainComeTogether) {
  Job job = shed();
  job.outline.sides[1].turn.reset();
  job.outline.sides[2].from = "X";
  job.outline.sides[3].name = "AB";
  REFUSED(refusals, job);
  EXPECT_EQ(refusal(refusals, "turn-missing")->place, "/outline/sides/1/turn");
  EXPECT_EQ(refusal(refusals, "outline-chain")->place, "/outline/sides/1/to");
  EXPECT_EQ(refusal(refusals, "name-twice")->place, "/outline/sides/3/name");
}

TEST(Outline, TurnsThatDoNotGoRoundOnceAreRefused) {
  REFUSED(refusals, job_with(outline_of({{96}, {96}, {96}, {96, Turn::Left}})));
  EXPECT_NE(refusal(refusals, "outline-turns"), nullptr);
}

TEST(Outline, TwoThousandSidesResolve) {
  // A comb along the top of a long building: each tooth is four sides. 2,004 sides.
  std::vector<Side> sides;
  const auto add = [&](std::int64_t inches, Turn turn) {
    Side side;
    side.from = "c" + std::to_string(sides.size());
    side.to = "c" + std::to_string(sides.size() + 1);
    side.length = nominal(Length::inches(inches));
    side.turn = turn;
    sides.push_back(side);
  };
  constexpr int kTeeth = 500;
  add(64 * kTeeth, Turn::Right);
  add(160, Turn::Right);
  for (int tooth = 0; tooth < kTeeth - 1; ++tooth) {
    add(32, Turn::Right);
    add(64, Turn::Left);
    add(32, Turn::Left);
    add(64, Turn::Right);
  }
  add(64, Turn::Right);
  add(160, Turn::Right);
  sides.back().to = "c0";
  Outline outline;
  outline.sides = sides;
  RESOLVED(building, job_with(outline));
  EXPECT_EQ(building.walls.size(), 4u + 4u * (kTeeth - 1));
}

}  // namespace
}  // namespace stringcourse::tests
