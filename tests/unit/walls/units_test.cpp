// Series, stock, joints, cuts and courses.
#include <gtest/gtest.h>

#include "made_jobs.hpp"

namespace stringcourse::tests {
namespace {

TEST(Units, TheDefaultCutsAreAQuarterAndThreeQuartersOfAUnitAsLaid) {
  // us-8: 16 x 3/4 - 3/8 = 11 5/8 in, 16 / 4 - 3/8 = 3 5/8 in.
  RESOLVED(building, shed());
  EXPECT_EQ(building.cuts, (std::vector{in16(11, 10), in16(3, 10)}));
  EXPECT_EQ(building.joint_least, Length::sixteenths(4));
  EXPECT_EQ(building.joint_most, Length::sixteenths(8));
  EXPECT_EQ(building.least_piece, in16(3, 10));
}

TEST(Units, AYardWithoutHalvesSawsThem) {
  Job job = shed();
  job.units.stocked = std::vector{UnitKind::Full, UnitKind::Corner};
  RESOLVED(building, job);
  EXPECT_NE(finding(building, "kind-replaced-by-cut"), nullptr);
  EXPECT_EQ(building.cuts, (std::vector{in16(11, 10), in16(7, 10), in16(3, 10)}));
}

TEST(Units, AYardWithoutWholeUnitsIsRefused) {
  Job job = shed();
  job.units.stocked = std::vector{UnitKind::Half};
  REFUSED(refusals, job);
  EXPECT_EQ(refusal(refusals, "full-not-stocked")->place, "/units/stocked");
}

TEST(Units, CutsOutsideLeastPieceAndWholeUnitAreRefusedEach) {
  Job job = shed();
  job.units.cuts = std::vector{in(3), in(8), in(16)};
  REFUSED(refusals, job);
  ASSERT_EQ(refusals.shown.size(), 2u) << codes(refusals);
  EXPECT_EQ(refusals.shown[0].place, "/units/cuts/0");
  EXPECT_EQ(refusals.shown[1].place, "/units/cuts/2");
}

TEST(Units, WallsOfOneBuildingMayDifferInThicknessOnly) {
  Job job = shed();
  job.outline.sides[1].series = "us-12";
  RESOLVED(building, job);
  EXPECT_EQ(building.series.size(), 2u);
  EXPECT_EQ(building.series_of(building.walls[1]).thickness, in16(11, 10));
  job.outline.sides[1].series = "au-190";
  REFUSED(refusals, job);
  EXPECT_EQ(refusal(refusals, "series-mixed")->place, "/outline/sides/1/series");
}

TEST(Units, AMeasuredSeriesIsCompletedWithItsTapesDefaults) {
  Job job = shed();
  OwnSeries own;
  own.id = "yard";
  own.full = in16(15, 10);
  own.half = own.thickness = own.height = in16(7, 10);
  own.joint = Length::sixteenths(6);
  job.units.own_series.push_back(own);
  job.units.series = "yard";
  RESOLVED(building, job);
  const Series& series = building.series[0];
  EXPECT_EQ(series.half_high, in16(3, 10));  // two half-highs and a joint make a whole: (7 5/8 - 3/8) / 2
  EXPECT_EQ(series.least_piece, in16(3, 10));
  EXPECT_EQ(series.joint_tolerance, Length::sixteenths(2));
  EXPECT_FALSE(series.grouts);
}

TEST(Units, AnUnknownSeriesIsRefusedWithTheKnownOnes) {
  Job job = shed();
  job.units.series = "us-9";
  REFUSED(refusals, job);
  EXPECT_NE(test::told(refusal(refusals, "unknown-series")->remedy).find("us-8"), std::string::npos);
}

TEST(Courses, EightFeetAreTwelveCoursesAndTenFeetFifteen) {
  // E10: a building 8 ft high is counted with 12 courses, a wall 10 ft high with 15.
  Job job = shed();
  job.heights.courses.reset();
  job.heights.height = nominal(Length::feet(8));
  RESOLVED(eight, job);
  EXPECT_EQ(eight.courses.size(), 12u);
  job.heights.height = nominal(Length::feet(10));
  RESOLVED(ten, job);
  EXPECT_EQ(ten.courses.size(), 15u);
}

TEST(Courses, TheTopOfCourseOneIsTheDatum) {
  RESOLVED(building, shed());
  EXPECT_EQ(building.courses[0].top, Length());
  EXPECT_EQ(building.courses[0].underside(), -in16(7, 10));
  EXPECT_EQ(building.courses[11].top, in(88));  // eleven courses of 8 in above the datum
}

TEST(Courses, FourInchesMoreAreAHalfHighCourseAtTheTopOrWhereTheJobSays) {
  Job job = shed();
  job.heights.courses.reset();
  job.heights.height = nominal(in(100));
  RESOLVED(top, job);
  ASSERT_EQ(top.courses.size(), 13u);
  EXPECT_TRUE(top.courses[12].half_high);
  EXPECT_EQ(top.courses[12].top, in(92));
  job.heights.half_high = HalfHighPlace::First;
  RESOLVED(first, job);
  EXPECT_TRUE(first.courses[0].half_high);
  EXPECT_EQ(first.courses[0].underside(), -in16(3, 10));
  EXPECT_EQ(first.courses[12].top, in(96));
}

// Courses come every 8 in: 8'-5" lies 3 in under thirteen and 5 in over twelve, 8'-3" the other way round, 9'-2" 2 in
// under fourteen. Of two as near the higher: 8'-4" without half-high units.
TEST(Courses, AHeightOffTheCoursesIsBuiltToTheNearestAndNamesWhatFits) {
  Job job = shed();
  job.heights.courses.reset();
  for (const auto& [height, courses] : {std::pair{101, 13u}, {99, 12u}, {110, 14u}, {97, 12u}, {103, 13u}}) {
    job.heights.height = nominal(in(height));
    RESOLVED(building, job);
    EXPECT_EQ(building.courses.size(), courses) << height;
    EXPECT_NE(finding(building, "height-off-course"), nullptr) << height;
  }
  job.heights.height = nominal(in(101));
  RESOLVED(building, job);
  const Finding* off = finding(building, "height-off-course");
  for (const char* fits : {"8'-5\"", "the wall stands 8'-8\"", "8'-0\", 8'-8\"", "8'-4\""})
    EXPECT_NE(test::told(off->says).find(fits), std::string::npos) << test::told(off->says);
  job.units.stocked = std::vector{UnitKind::Full, UnitKind::Half};
  job.heights.height = nominal(in(100));
  RESOLVED(between, job);
  EXPECT_EQ(between.courses.size(), 13u);
}

// A half-high course asked for leaves 7'-8" of 8 in courses: with 8'-0" asked 11 and the half-high make 7'-8", 12 and
// it 8'-4".
TEST(Courses, AHeightWithHalfHighCoursesStatedGoesToTheNearestToo) {
  Job job = shed();
  job.heights.courses.reset();
  job.heights.height = nominal(in(99));
  job.heights.half_high_courses = {1};
  RESOLVED(building, job);
  EXPECT_EQ(building.courses.size(), 13u);  // 4 + 12 x 8 = 100, an inch off
}

TEST(Courses, ABondBeamInAHalfHighCourseIsAFinding) {
  Job job = shed();
  job.heights.half_high_courses = {5};
  job.steel.bond_beams = {5, 12};
  RESOLVED(building, job);
  ASSERT_NE(finding(building, "bond-beam-half-high"), nullptr);
  EXPECT_NE(test::told(finding(building, "bond-beam-half-high")->says).find("Course 5 "), std::string::npos);
}

TEST(Courses, BeamsWireAndPourTopsOutOfRangeAreRefused) {
  Job job = shed();
  job.steel.bond_beams = {12, 13};
  job.steel.pour_tops = {6, 6};
  job.steel.wire_every = 0;
  REFUSED(refusals, job);
  EXPECT_EQ(refusal(refusals, "course-range")->place, "/steel/bond_beams/1");
  EXPECT_EQ(refusal(refusals, "pour-order")->place, "/steel/pour_tops/1");
  EXPECT_NE(refusal(refusals, "wire-every"), nullptr);
}

TEST(Courses, WireLiesOnEverySecondCourseButTheTopAndTheLastPourEndsAtTheTop) {
  Job job = shed();
  job.steel.wire_every = 2;
  job.steel.bond_beams = {12};
  job.steel.pour_tops = {6};
  RESOLVED(building, job);
  EXPECT_FALSE(building.courses[0].wire);
  EXPECT_TRUE(building.courses[1].wire);
  EXPECT_TRUE(building.courses[9].wire);
  EXPECT_FALSE(building.courses[11].wire);  // no bed lies on top of the wall
  EXPECT_TRUE(building.courses[11].bond_beam);
  EXPECT_EQ(building.pour_tops, (std::vector{6, 12}));
}

}  // namespace
}  // namespace stringcourse::tests
