// Openings: sizes from leaf and frame, course lines, places, and what is refused.
#include <gtest/gtest.h>

#include "made_jobs.hpp"

namespace stringcourse::tests {
namespace {

Opening door(Length leaf_width, Length leaf_height, Length frame_jamb, Length frame_head) {
  Opening opening;
  opening.name = "D1";
  opening.on = "AB";
  opening.place = at("A", in(64));
  opening.door = DoorSize{leaf_width, leaf_height, frame_jamb, frame_head, std::nullopt, std::nullopt};
  return opening;
}

TEST(Openings, TheWorkedWallOfTwentyFourByEightFeet) {
  // E16: 24'-0" x 8'-0", door 3'-4" x 7'-4", window 4'-0" x 4'-0": 23'-11 5/8", 40 3/8 in, 48 3/8 in, 12 courses.
  Job job = job_with(outline_of({{288}}, false));
  job.heights.courses.reset();
  job.heights.height = nominal(Length::feet(8));
  job.openings = {plain_hole("D1", "AB", at("A", in(40)), in(40), in(88)),
                  window_hole("W1", "AB", at("A", in(160)), in(48), in(48), 5)};
  RESOLVED(building, job);
  EXPECT_EQ(building.walls[0].actual, in16(287, 10));
  EXPECT_EQ(building.courses.size(), 12u);
  EXPECT_EQ(building.openings[0].width(), in16(40, 6));
  EXPECT_EQ(building.openings[1].width(), in16(48, 6));
  EXPECT_EQ(building.openings[0].first_course, 1);
  EXPECT_EQ(building.openings[0].last_course, 11);
  EXPECT_EQ(building.openings[1].first_course, 6);
  EXPECT_EQ(building.openings[1].last_course, 11);
  EXPECT_EQ(building.openings[1].height(), in16(48, 6));
  EXPECT_EQ(building.openings[0].height(), in16(88, 6));
  EXPECT_EQ(finding(building, "head-off-course"), nullptr);
}

TEST(Openings, ModularMasonryWidthsAreEightInchStepsPlusOneJoint) {
  // O1: 2'-8", 3'-4", 4'-0" and further 8 in steps; clear n modules = 8 n + 3/8 in.
  for (const std::int64_t inches : {32, 40, 48, 56}) {
    Job job = shed();
    job.openings = {plain_hole("P", "AB", at("A", in(64)), in(inches), in(56))};
    RESOLVED(building, job);
    EXPECT_EQ(building.openings[0].width(), in16(inches, 6));
    EXPECT_EQ(building.openings[0].packing_each_side, Length());
  }
}

TEST(Openings, ASixEightFrameFitsTenCourses) {
  // O2: a 6'-8" wrap-around frame (overall) fits a 10-course-high opening.
  Job job = shed();
  job.openings = {door(in(36), in(78), in(2), in(2))};
  RESOLVED(building, job);
  EXPECT_EQ(building.openings[0].last_course, 10);
  EXPECT_EQ(finding(building, "head-off-course"), nullptr);
}

TEST(Openings, ASevenFootDoorInAButtFrameTakesElevenCoursesAndTheNextWidth) {
  // O3: 7'-0" door, 4 in head, 2 in jambs: 7'-4", 11 courses; leaves 2'-4" and 3'-0" suit 2'-8" and 3'-4" openings.
  Job job = shed();
  job.openings = {door(in(36), in(84), in(2), in(4))};
  RESOLVED(building, job);
  const ResolvedOpening& opening = building.openings[0];
  EXPECT_EQ(opening.asked_width, in(40));
  EXPECT_EQ(opening.width(), in16(40, 6));
  EXPECT_EQ(opening.packing_each_side, Length::sixteenths(3));
  EXPECT_EQ(opening.last_course, 11);
  EXPECT_EQ(opening.packing_head, Length::sixteenths(6));
  job.openings = {door(in(28), in(84), in(2), in(4))};
  RESOLVED(narrow, job);
  EXPECT_EQ(narrow.openings[0].width(), in16(32, 6));
}

TEST(Openings, ASevenFootWrapAroundFrameFitsWithAFourInchStarterCourse) {
  // O4, O6: a 7'-0" wrap-around frame (overall) needs a 4 in starter course: 4 + 10 x 8 = 84 in.
  Job job = shed();
  job.openings = {door(in(36), in(82), in(2), in(2))};
  RESOLVED(plain, job);
  EXPECT_NE(finding(plain, "head-off-course"), nullptr);
  EXPECT_EQ(plain.openings[0].packing_head, in16(4, 6));
  job.heights.courses = 13;
  job.heights.half_high_courses = {1};
  RESOLVED(starter, job);
  EXPECT_EQ(finding(starter, "head-off-course"), nullptr);
  EXPECT_EQ(starter.openings[0].last_course, 11);
  EXPECT_EQ(starter.openings[0].packing_head, Length::sixteenths(6));
}

TEST(Openings, TheHalfHighCourseUnderTheHeadBringsTheHeadToTheFrame) {
  Job job = shed();
  job.heights.courses.reset();
  job.heights.height = nominal(in(100));
  job.heights.half_high = HalfHighPlace::UnderHead;
  job.openings = {door(in(36), in(82), in(2), in(2))};
  RESOLVED(building, job);
  EXPECT_TRUE(building.courses[10].half_high);  // ten wholes and a half-high: 84 in
  EXPECT_EQ(building.openings[0].last_course, 11);
  EXPECT_EQ(building.openings[0].packing_head, Length::sixteenths(6));
}

// 7'-4" is eleven whole courses: a half-high one under it would raise the head to 7'-8". It stands at the top, over
// whole ones.
TEST(Openings, AHalfHighCourseUnderAHeadOnAWholeCourseStandsAtTheTopAndThatIsSaid) {
  Job job = shed();
  job.heights.courses.reset();
  job.heights.height = nominal(in(116));  // fourteen wholes and a half-high
  job.heights.half_high = HalfHighPlace::UnderHead;
  job.openings = {plain_hole("D1", "AB", at("A", in(96)), in(40), in(88))};
  RESOLVED(building, job);
  ASSERT_EQ(building.courses.size(), 15u);
  EXPECT_TRUE(building.courses[14].half_high);
  EXPECT_EQ(building.openings[0].last_course, 11);
  ASSERT_NE(finding(building, "half-high-not-under-head"), nullptr);
  EXPECT_EQ(finding(building, "half-high-not-under-head")->place, "/heights/half_high");
}

// 7'-8" high, a 7'-4" door: only the half-high course is left for its lintel, and no lintel unit is 3 5/8 in high.
TEST(Openings, ALintelOfHalfHighUnitsIsRefused) {
  Job job = shed();
  job.heights.courses.reset();
  job.heights.height = nominal(in(92));
  for (const auto place : {HalfHighPlace::Top, HalfHighPlace::UnderHead}) {
    job.heights.half_high = place;
    job.openings = {plain_hole("D1", "AB", at("A", in(96)), in(40), in(88))};
    REFUSED(refusals, job);
    ASSERT_NE(refusal(refusals, "lintel-half-high"), nullptr) << codes(refusals);
    EXPECT_EQ(refusal(refusals, "lintel-half-high")->place, "/openings/0/lintel");
    EXPECT_NE(test::told(refusal(refusals, "lintel-half-high")->reason).find("course 12, 3 5/8\" high"),
              std::string::npos);
  }
  job.openings[0].lintel = Lintel{LintelMake::OnePiece, 1, std::nullopt, {}};
  RESOLVED(one_piece, job);
  EXPECT_EQ(one_piece.openings[0].lintel->first_course, 12);
}

TEST(Openings, AWindowAsksForTwoInchesEachSideAndEightInHeight) {
  // O5: masonry opening over window size: + 4 in width (2 each side), + 8 in height (2 above, 2 below, 4 sill).
  Job job = shed();
  Opening window;
  window.name = "W1";
  window.on = "AB";
  window.place = at("A", in(64));
  window.window = WindowSize{in(44), in(40), in(2), in(2), in(6)};
  window.sill_course = 5;
  job.openings = {window};
  RESOLVED(building, job);
  EXPECT_EQ(building.openings[0].asked_width, in(48));
  EXPECT_EQ(building.openings[0].asked_height, in(48));
  EXPECT_EQ(building.openings[0].width(), in16(48, 6));
  EXPECT_EQ(building.openings[0].last_course, 11);
}

TEST(Openings, AnOutsideCornerToAJambIsNominalLessOneJoint) {
  Job job = shed();
  job.openings = {plain_hole("P", "AB", at("A", in(64)), in(40), in(56)),
                  plain_hole("Q", "AB", at("B", in(64)), in(40), in(56)),
                  plain_hole("R", "CD", at("C", in(104), Face::Far), in(40), in(56))};
  RESOLVED(building, job);
  EXPECT_EQ(building.openings[0].from.distance_from_start(), in16(63, 10));
  EXPECT_EQ(building.openings[0].to.distance_from_start(), in(104));
  // Measured from B: the mirror.
  EXPECT_EQ(building.walls[0].actual - building.openings[1].to.distance_from_start(), in16(63, 10));
  // To the far edge at 8'-8": the same hole as to the near edge at 5'-4".
  EXPECT_EQ(building.openings[2].from.distance_from_start(), in16(63, 10));
}

TEST(Openings, FromAReEntrantCornerTheNearJambStandsAtItsNominalPlace) {
  // Wall EF of this L starts at the re-entrant corner E.
  Job job = job_with(outline_of({{288}, {240}, {144}, {96, Turn::Left}, {144}, {144}}));
  job.openings = {plain_hole("P", "EF", at("E", in(32)), in(40), in(56))};
  RESOLVED(building, job);
  EXPECT_EQ(building.openings[0].from.distance_from_start(), in(32));
  EXPECT_EQ(building.openings[0].to.distance_from_start(), in16(72, 6));
}

TEST(Openings, AnActualPlaceAndSizeAreTakenAsTheyAre) {
  Job job = shed();
  job.openings = {plain_hole("P", "AB", {"A", actual(in(48)), std::nullopt}, in(40), in(56))};
  job.openings[0].masonry = MasonrySize{actual(in(41)), nominal(in(56))};
  RESOLVED(building, job);
  EXPECT_EQ(building.openings[0].from.distance_from_start(), in(48));
  EXPECT_EQ(building.openings[0].width(), in(41));
}

TEST(Openings, ASillOffTheCoursesGoesToTheNearestTop) {
  Job job = shed();
  Opening window = plain_hole("W1", "AB", at("A", in(64)), in(40), in(40));
  window.sill = nominal(in(35));
  job.openings = {window};
  RESOLVED(building, job);
  EXPECT_EQ(building.openings[0].underside, in(32));  // tops at 24, 32, 40: 32 is nearest to 35
  EXPECT_EQ(building.openings[0].first_course, 6);
  EXPECT_NE(finding(building, "sill-off-course"), nullptr);
}

TEST(Openings, AHeadOffTheCoursesGoesUpAndNamesBothHeights) {
  Job job = shed();
  job.openings = {plain_hole("P", "AB", at("A", in(64)), in(40), in(82))};
  RESOLVED(building, job);
  EXPECT_EQ(building.openings[0].height(), in16(88, 6));
  const Finding* off = finding(building, "head-off-course");
  ASSERT_NE(off, nullptr);
  EXPECT_NE(test::told(off->says).find("6'-8 3/8\" and 7'-4 3/8\""), std::string::npos) << test::told(off->says);
}

TEST(Openings, AHeadAtTheTopHasNoLintel) {
  Job job = shed();
  job.openings = {plain_hole("P", "AB", at("A", in(64)), in(40), in(96))};
  RESOLVED(building, job);
  EXPECT_FALSE(building.openings[0].lintel.has_value());
  EXPECT_NE(finding(building, "no-lintel"), nullptr);
}

TEST(Openings, ALintelDeeperThanTheCoursesAboveIsRefused) {
  Job job = shed();
  job.openings = {plain_hole("P", "AB", at("A", in(64)), in(40), in(88))};
  job.openings[0].lintel = Lintel{LintelMake::OnePiece, 2, std::nullopt, {}};
  REFUSED(refusals, job);
  EXPECT_EQ(refusal(refusals, "lintel-deep")->place, "/openings/0/lintel");
}

TEST(Openings, ABearingUnderFourInchesIsFound) {
  Job job = shed();
  job.openings = {plain_hole("P", "AB", at("A", in(64)), in(40), in(80))};
  job.openings[0].lintel = Lintel{LintelMake::OnePiece, 1, in16(3, 15), {}};
  RESOLVED(building, job);
  const Finding* bearing = finding(building, "lintel-bearing");
  ASSERT_NE(bearing, nullptr);
  EXPECT_TRUE(words::cited(bearing->rule, {Tape::Inches}).contains("MSJC-08"));
  job.openings[0].lintel->bearing = in(4);
  RESOLVED(enough, job);
  EXPECT_EQ(finding(enough, "lintel-bearing"), nullptr);
}

TEST(Openings, OverlappingOpeningsAreToldTheLeastMove) {
  Job job = shed();
  job.openings = {plain_hole("P", "AB", at("A", in(64)), in(40), in(56)),
                  plain_hole("W1", "AB", at("A", in(101)), in(40), in(56))};
  REFUSED(refusals, job);
  const Refusal* overlap = refusal(refusals, "openings-overlap");
  ASSERT_NE(overlap, nullptr) << codes(refusals);
  EXPECT_EQ(overlap->place, "/openings/1/place");
  // P ends at 104; W1 starts at 101 - 3/8 = 100 5/8: 3 3/8 in over, and a least pier of 3 5/8 in: 7 in.
  EXPECT_NE(test::told(overlap->reason).find("3 3/8\""), std::string::npos) << test::told(overlap->reason);
  EXPECT_NE(test::told(overlap->remedy).find("Move W1 at least 7\" toward B"), std::string::npos)
      << test::told(overlap->remedy);
}

TEST(Openings, APierShorterThanTheLeastPieceIsRefusedAndTheLeastPieceIsNot) {
  Job job = shed();
  // Far jamb of P at 104 in. A second hole at nominal 108 starts at 107 5/8: a pier of 3 5/8 in, the least piece.
  job.openings = {plain_hole("P", "AB", at("A", in(64)), in(40), in(96)),
                  plain_hole("Q", "AB", at("A", in(108)), in(40), in(96))};
  EXPECT_TRUE(resolve(job).has_value());
  job.openings[1].place = at("A", in16(107, 15));
  REFUSED(refusals, job);
  EXPECT_NE(test::told(refusal(refusals, "pier-short")->remedy).find("1/16\" toward B"), std::string::npos)
      << codes(refusals);
}

TEST(Openings, AJambAtTheOtherWallsInnerFaceIsLawfulAndALittleNearerIsNot) {
  Job job = shed();
  Opening hole = plain_hole("P", "AB", {"A", actual(in16(7, 10)), std::nullopt}, in(40), in(96));
  job.openings = {hole};
  EXPECT_TRUE(resolve(job).has_value());
  job.openings[0].place.at = actual(in(9));
  REFUSED(pier, job);
  EXPECT_NE(refusal(pier, "pier-short"), nullptr) << codes(pier);
  job.openings[0].place.at = actual(in(7));
  REFUSED(leaves, job);
  EXPECT_NE(refusal(leaves, "opening-leaves-wall"), nullptr) << codes(leaves);
}

TEST(Openings, OnePieceLintelsThatMeetAreRefusedAndBlockLintelsRunOn) {
  Job job = shed();
  // Pier 104 .. 111 5/8, 7 5/8 in wide; each lintel bears 7 5/8 in on it.
  job.openings = {plain_hole("P", "AB", at("A", in(64)), in(40), in(80)),
                  plain_hole("Q", "AB", at("A", in(112)), in(40), in(80))};
  EXPECT_TRUE(resolve(job).has_value());
  job.openings[1].lintel = Lintel{LintelMake::OnePiece, 1, std::nullopt, {}};
  REFUSED(refusals, job);
  EXPECT_NE(test::told(refusal(refusals, "lintel-collides")->remedy).find("7 5/8\" toward B"), std::string::npos)
      << codes(refusals);
}

TEST(Openings, ALintelThatReachesIntoAWindowAboveIsRefused) {
  Job job = shed();
  job.openings = {
      plain_hole("P", "AB", at("A", in(64)), in(40), in(56)),
      window_hole("W1", "AB", at("A", in(104)), in(24), in(24), 6)};  // courses 7 to 9; P's lintel is course 8
  REFUSED(refusals, job);
  // W1 starts at 103 5/8, before P's jamb at 104, in course 7: the holes overlap there already.
  EXPECT_NE(refusal(refusals, "openings-overlap"), nullptr) << codes(refusals);
  job.openings[1].sill_course = 7;  // courses 8 to 10: only the lintel is hit
  REFUSED(above, job);
  EXPECT_NE(refusal(above, "lintel-collides"), nullptr) << codes(above);
}

TEST(Openings, ALintelThatOverhangsAFreeEndIsRefused) {
  Job job = job_with(outline_of({{288}}, false));
  job.openings = {plain_hole("P", "AB", at("A", in(8)), in(40), in(56))};  // jamb at 7 5/8: the bearing just fits
  EXPECT_TRUE(resolve(job).has_value());
  job.openings[0].place = at("A", in(7));
  REFUSED(refusals, job);
  EXPECT_NE(test::told(refusal(refusals, "lintel-overhangs")->remedy).find("1\" toward B"), std::string::npos)
      << codes(refusals);
}

TEST(Openings, AnOverheadDoorIsGivenItsRoomOrAFinding) {
  Job job = shed();
  Opening door;
  door.name = "G1";
  door.on = "AB";
  door.place = at("A", in(16));
  door.overhead = OverheadSize{in(108), in(84), in16(1, 8), in16(1, 8), in(12), in(12)};
  job.openings = {door};
  RESOLVED(building, job);
  EXPECT_EQ(building.openings[0].width(), in16(112, 6));  // 108 + 3 = 111 -> 14 x 8 + 3/8
  EXPECT_NE(finding(building, "side-room"), nullptr);  // inner face at 7 5/8, jamb at 15 5/8: 8 in beside it, 12 asked
  EXPECT_NE(finding(building, "head-room"), nullptr);  // soffit 80 3/8, top 88: 7 5/8 in above it
}

TEST(Openings, EveryTroubleOfEveryOpeningComesAtOnce) {
  Job job = shed();
  job.openings = {plain_hole("P", "XY", at("A", in(64)), in(40), in(56)),
                  plain_hole("Q", "AB", at("Z", in(64)), in(40), in(56)),
                  plain_hole("P", "AB", at("A", in(128)), in(40), in(56))};
  job.openings[2].masonry.reset();
  REFUSED(refusals, job);
  EXPECT_EQ(refusal(refusals, "unknown-wall")->place, "/openings/0/on");
  EXPECT_EQ(refusal(refusals, "unknown-corner")->place, "/openings/1/place/from");
  EXPECT_EQ(refusal(refusals, "choose-one")->place, "/openings/2");
  EXPECT_EQ(refusal(refusals, "name-twice")->place, "/openings/2/name");
}

TEST(Openings, AWallOfThreeHundredOpeningsResolves) {
  constexpr int kHoles = 300;
  Job job = job_with(outline_of({{64 * kHoles + 32}}, false));
  for (int i = 0; i < kHoles; ++i) {
    job.openings.push_back(plain_hole("P" + std::to_string(i), "AB", at("A", in(32 + 64 * i)), in(32), in(56)));
  }
  RESOLVED(building, job);
  EXPECT_EQ(building.openings.size(), 300u);
  EXPECT_EQ(building.openings.back().to.distance_from_start(), in(64 * kHoles));
}

}  // namespace
}  // namespace stringcourse::tests
