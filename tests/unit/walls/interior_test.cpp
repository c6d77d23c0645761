// Interior walls and their junctions.
#include <gtest/gtest.h>

#include "made_jobs.hpp"

namespace stringcourse::tests {
namespace {

TEST(InteriorWalls, RunClearToTheWallOpposite) {
  Job job = shed();
  job.interior_walls = {inner_wall("P1", "AB", at("A", in(96)))};
  RESOLVED(building, job);
  ASSERT_EQ(building.walls.size(), 5u);
  const Wall& wall = building.walls[4];
  // Outside to outside 239 5/8, less two walls of 7 5/8: 224 3/8 = nominal 224 + 3/8.
  EXPECT_EQ(wall.actual, in16(224, 6));
  EXPECT_EQ(wall.nominal, in(224));
  EXPECT_EQ(wall.heading, Heading::North);
  EXPECT_EQ(wall.end_name, "CD");
  ASSERT_EQ(building.junctions.size(), 2u);
  // Near face from a convex corner: at its nominal place; 7 5/8 in thick.
  EXPECT_EQ(building.junctions[0].from.distance_from_start(), in(96));
  EXPECT_EQ(building.junctions[0].to.distance_from_start(), in16(103, 10));
  // On CD, walked the other way: 287 5/8 - 103 5/8 = 184.
  EXPECT_EQ(building.junctions[1].main, 2);
  EXPECT_EQ(building.junctions[1].from.distance_from_start(), in(184));
  // Walking north its left face looks west: the far face along AB.
  EXPECT_EQ(wall.start_point, (PlanPoint{-in16(103, 10), in16(7, 10)}));
}

TEST(InteriorWalls, AFarFaceFromAConvexCornerStandsOneJointBeforeItsNominalPlace) {
  Job job = shed();
  job.interior_walls = {inner_wall("P1", "AB", at("A", in(104), Face::Far))};
  RESOLVED(building, job);
  EXPECT_EQ(building.junctions[0].to.distance_from_start(), in16(103, 10));
}

TEST(InteriorWalls, TheOneListedFirstRunsOnAndTheOtherStopsAtIt) {
  Job job = shed();
  job.interior_walls = {inner_wall("P1", "BC", at("B", in(96))), inner_wall("P2", "AB", at("A", in(96)))};
  RESOLVED(building, job);
  EXPECT_EQ(building.walls[4].end_name, "DA");
  EXPECT_EQ(building.walls[5].end_name, "P1");
  // P1's near face (from B, along BC) at 96; from AB's inner face 7 5/8: 88 3/8 clear.
  EXPECT_EQ(building.walls[5].actual, in16(88, 6));
}

TEST(InteriorWalls, MayStartFromOneListedLaterAndMeetAnother) {
  Job job = shed();
  // P1 leaves P2 on the walker's right (P2 walks north, so east) and meets DA.
  job.interior_walls = {inner_wall("P1", "P2", at("start", in(96))), inner_wall("P2", "AB", at("A", in(96)))};
  RESOLVED(building, job);
  EXPECT_EQ(building.walls[4].heading, Heading::East);
  EXPECT_EQ(building.walls[4].end_name, "DA");
  // P2's near face stands 96 from A; DA is 7 5/8 thick: 88 3/8.
  EXPECT_EQ(building.walls[4].actual, in16(88, 6));
  // From a junction the near face of masonry stands one joint beyond its nominal place.
  EXPECT_EQ(building.junctions[1].from.distance_from_start(), in16(96, 6));
}

TEST(InteriorWalls, AStatedLengthEndsFreeMatchesOrIsRefusedWithBothNumbers) {
  Job job = shed();
  job.interior_walls = {inner_wall("P1", "AB", at("A", in(96)))};
  job.interior_walls[0].length = nominal(in(64));
  RESOLVED(stub, job);
  EXPECT_EQ(stub.walls[4].end.kind, EndKind::Free);
  EXPECT_EQ(stub.walls[4].actual, in(64));
  job.interior_walls[0].length = nominal(in(224));
  RESOLVED(across, job);
  EXPECT_EQ(across.walls[4].end.kind, EndKind::Junction);
  job.interior_walls[0].length = nominal(in(226));
  REFUSED(refusals, job);
  const Refusal* length = refusal(refusals, "interior-wall-length");
  ASSERT_NE(length, nullptr);
  EXPECT_NE(test::told(length->reason).find("18'-10 3/8\""), std::string::npos) << test::told(length->reason);
  EXPECT_NE(test::told(length->reason).find("18'-8 3/8\""), std::string::npos) << test::told(length->reason);
}

TEST(InteriorWalls, WithNothingAheadAndNoLengthAreRefused) {
  Job job = job_with(outline_of({{288}, {240}}, false));
  job.interior_walls = {inner_wall("P1", "AB", at("A", in(96)))};
  REFUSED(refusals, job);
  EXPECT_EQ(refusal(refusals, "interior-wall-endless")->place, "/interior_walls/0");
}

TEST(InteriorWalls, ThatStartFromEachOtherAreRefused) {
  Job job = shed();
  job.interior_walls = {inner_wall("P1", "P2", at("start", in(96))), inner_wall("P2", "P1", at("start", in(96)))};
  REFUSED(refusals, job);
  EXPECT_NE(refusal(refusals, "junction-loop"), nullptr);
}

TEST(InteriorWalls, OppositeEachOtherAtOneSpotAreLawfulAndOverlappingOnesAreNot) {
  Job job = shed();
  job.interior_walls = {inner_wall("M", "BC", at("B", in(112))), inner_wall("P1", "AB", at("A", in(96))),
                        inner_wall("P2", "CD", at("D", in(96)))};
  RESOLVED(building, job);  // P1 and P2 meet M from both sides at the same place
  EXPECT_EQ(building.walls[5].end_name, "M");
  EXPECT_EQ(building.walls[6].end_name, "M");
  job.interior_walls = {inner_wall("P1", "AB", at("A", in(96))), inner_wall("P2", "AB", at("A", in(100)))};
  REFUSED(refusals, job);
  const Refusal* overlap = refusal(refusals, "junctions-overlap");
  ASSERT_NE(overlap, nullptr) << codes(refusals);
  // P1 stands 96 .. 103 5/8, P2 would start at 100: 3 5/8 in.
  EXPECT_NE(test::told(overlap->remedy).find("Move P2 at least 3 5/8\" toward B"), std::string::npos)
      << test::told(overlap->remedy);
}

TEST(InteriorWalls, InsideTheCornerOfAnotherWallAreRefused) {
  Job job = shed();
  job.interior_walls = {inner_wall("P1", "AB", at("A", in(1)))};
  REFUSED(refusals, job);
  // Its near face at 1, the inner face of DA at 7 5/8: 6 5/8 in toward B.
  EXPECT_NE(test::told(refusal(refusals, "junction-off-wall")->remedy).find("6 5/8\" toward B"), std::string::npos)
      << codes(refusals);
}

TEST(InteriorWalls, OnlyPartlyOnAWallsFaceAreRefused) {
  // P1 stands free, 64 in long from AB's inner face. P2 off BC stands 68 .. 75 5/8 from B, that is 60 3/8 .. 68 above
  // that inner face: P1's end comes half way across its path.
  Job job = shed();
  job.interior_walls = {inner_wall("P1", "AB", at("A", in(96))), inner_wall("P2", "BC", at("B", in(68)))};
  job.interior_walls[0].length = nominal(in(64));
  REFUSED(refusals, job);
  EXPECT_EQ(refusal(refusals, "junction-partial")->place, "/interior_walls/1/place") << codes(refusals);
}

TEST(InteriorWalls, AnOpeningWhereOneMeetsASideIsRefusedWithTheLeastMove) {
  Job job = shed();
  job.interior_walls = {inner_wall("P1", "AB", at("A", in(96)))};
  job.openings = {plain_hole("P", "AB", at("A", in(64)), in(40), in(56))};
  REFUSED(refusals, job);
  const Refusal* on = refusal(refusals, "opening-on-junction");
  ASSERT_NE(on, nullptr);
  // The hole ends at 104; the wall starts at 96: 8 in toward A.
  EXPECT_NE(test::told(on->remedy).find("Move P at least 8\" toward A"), std::string::npos) << test::told(on->remedy);
}

TEST(InteriorWalls, CarryOpeningsMeasuredFromStartOrEnd) {
  Job job = shed();
  job.interior_walls = {inner_wall("P1", "AB", at("A", in(96)))};
  job.openings = {plain_hole("P", "P1", at("start", in(32)), in(40), in(56)),
                  plain_hole("Q", "P1", at("CD", in(32)), in(40), in(56))};
  RESOLVED(building, job);
  EXPECT_EQ(building.openings[0].from.distance_from_start(), in(32));
  EXPECT_EQ(building.walls[4].actual - building.openings[1].to.distance_from_start(), in(32));
}

}  // namespace
}  // namespace stringcourse::tests
