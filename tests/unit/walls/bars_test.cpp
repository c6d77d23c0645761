// Bars with a place of their own.
#include <gtest/gtest.h>

#include "made_jobs.hpp"

namespace stringcourse::tests {
namespace {

Job with_bars(Job job) {
  job.steel.bars = Bars{};
  job.steel.bars->size = "#5";
  return job;
}

const FixedBar* bar_at(const Building& building, int wall, Length centre) {
  for (const FixedBar& bar : building.fixed_bars) {
    if (bar.wall == wall && bar.centre.distance_from_start() == centre) return &bar;
  }
  return nullptr;
}

TEST(Bars, ACornersBarStandsThreeAndThirteenSixteenthsFromTheEndFace) {
  // bond model: the natural line is 3 13/16 in from the actual end face of a US 8 in wall.
  Job job = with_bars(shed());
  job.steel.bars->corners = true;
  RESOLVED(building, job);
  ASSERT_EQ(building.fixed_bars.size(), 4u);
  EXPECT_NE(bar_at(building, 0, in16(287, 10) - in16(3, 13)), nullptr);
  EXPECT_EQ(building.fixed_bars[0].reason, BarReason::Corner);
}

TEST(Bars, AtAReEntrantCornerTheThroughUnitEndsBeyondByTheOtherWallsThickness) {
  Job job = with_bars(job_with(outline_of({{288}, {240}, {144}, {96, Turn::Left}, {144}, {144}})));
  job.steel.bars->corners = true;
  RESOLVED(building, job);
  EXPECT_NE(bar_at(building, 3, in(96) + in16(7, 10) - in16(3, 13)), nullptr);
}

TEST(Bars, JambBarsStandBesideBothJambsAndAPierOfHalfAUnitTakesOne) {
  Job job = with_bars(shed());
  job.steel.bars->jambs = true;
  job.openings = {plain_hole("P", "AB", at("A", in(64)), in(40), in(56)),
                  plain_hole("Q", "AB", at("A", in(112)), in(40), in(56))};
  RESOLVED(building, job);
  EXPECT_NE(bar_at(building, 0, in16(63, 10) - in16(3, 13)), nullptr);
  EXPECT_NE(bar_at(building, 0, in(104) + in16(3, 13)), nullptr);
  EXPECT_EQ(building.fixed_bars.size(), 3u);  // the pier 104 .. 111 5/8 has one cell: one bar for both jambs
}

TEST(Bars, BesideAControlJointStandTwo) {
  Job job = with_bars(shed());
  job.steel.bars->control_joints = true;
  job.control_joints.placed = {{"AB", at("A", in(96))}};
  RESOLVED(building, job);
  EXPECT_NE(bar_at(building, 0, in16(95, 10) - in16(3, 13)), nullptr);
  EXPECT_NE(bar_at(building, 0, in(96) + in16(3, 13)), nullptr);
}

TEST(Bars, ADimensionedBarStandsAtItsNominalLineLessHalfAJoint) {
  Job job = with_bars(shed());
  job.steel.bars->dimensioned = {{"AB", at("A", in(52))}, {"AB", {"A", actual(in16(83, 13)), std::nullopt}}};
  RESOLVED(building, job);
  // Nominal 4 + 8 k is 3 13/16 + 8 k actual.
  EXPECT_NE(bar_at(building, 0, in16(51, 13)), nullptr);
  EXPECT_NE(bar_at(building, 0, in16(83, 13)), nullptr);
}

// One cell, one bar. The cell beside the jamb at 63 5/8 goes 7 5/8 in from it; its own bar would stand at 59 13/16.
TEST(Bars, ADimensionedBarBesideAJambIsTheJambsBar) {
  Job job = with_bars(shed());
  job.steel.bars->jambs = true;
  job.openings = {plain_hole("P", "AB", at("A", in(64)), in(40), in(56))};
  job.steel.bars->dimensioned = {{"AB", {"A", actual(in16(59, 5)), std::nullopt}}};
  RESOLVED(building, job);
  EXPECT_EQ(building.fixed_bars.size(), 2u);
  ASSERT_NE(bar_at(building, 0, in16(59, 5)), nullptr);
  EXPECT_EQ(bar_at(building, 0, in16(59, 5))->reason, BarReason::Dimensioned);
  EXPECT_EQ(bar_at(building, 0, in16(59, 13)), nullptr);
  const Finding* serves = finding(building, "dimensioned-bar-serves");
  ASSERT_NE(serves, nullptr);
  EXPECT_EQ(serves->place, "/steel/bars/dimensioned/0");
  EXPECT_NE(test::told(serves->says).find("1/2\" from the middle"), std::string::npos) << test::told(serves->says);
}

TEST(Bars, TwoDimensionedInOneCellWereAskedFor) {
  Job job = with_bars(shed());
  job.steel.bars->dimensioned = {{"AB", {"A", actual(in(83)), std::nullopt}},
                                 {"AB", {"A", actual(in(85)), std::nullopt}}};
  RESOLVED(building, job);
  EXPECT_EQ(building.fixed_bars.size(), 2u);
  EXPECT_EQ(finding(building, "bars-too-near"), nullptr);
}

// #5 is 5/8 in thick: 1 5/8 in centre to centre leave 1 in clear, 1 9/16 in leave 15/16. #9 is 1.128 in: 2 1/4
// leave 1.122.
TEST(Bars, TwoThatStandTooNearEachOtherAreAFinding) {
  const auto too_near = [](const std::string& size, Length apart) {
    Job job = with_bars(shed());
    job.steel.bars->size = size;
    job.steel.bars->dimensioned = {{"AB", {"A", actual(in(83)), std::nullopt}},
                                   {"AB", {"A", actual(in(83) + apart), std::nullopt}}};
    const auto building = resolve(job);
    const Finding* found = building ? finding(*building, "bars-too-near") : nullptr;
    return found ? found->place + ": " + test::told(found->says) : std::string();
  };
  EXPECT_EQ(too_near("#5", in16(1, 10)), "");
  EXPECT_TRUE(
      too_near("#5", in16(1, 9))
          .contains(
              "/steel/bars/dimensioned/1: On AB the bars at 6'-11\" and 7'-0 9/16\" from A leave 15/16\" of grout"));
  EXPECT_TRUE(too_near("#5", in16(0, 9)).contains(" meet; ")) << too_near("#5", in16(0, 9));
  EXPECT_TRUE(too_near("#9", in16(2, 4)).contains("want 1 3/16\"")) << too_near("#9", in16(2, 4));
  EXPECT_EQ(too_near("#9", in16(2, 5)), "");  // 2.3125 - 1.128 = 1.1845
}

// The corner's bar stands 3 13/16 in from both faces. Dimensioned just there, from either wall, it is that bar; 3/16 in
// off it would be a second one in the same cell.
TEST(Bars, ADimensionedBarInACornersCellIsTheCornersOrRefused) {
  Job job = with_bars(shed());
  job.steel.bars->corners = true;
  job.steel.bars->dimensioned = {{"AB", {"A", actual(in16(3, 13)), std::nullopt}},
                                 {"AB", {"B", actual(in16(3, 13)), std::nullopt}}};
  RESOLVED(building, job);
  EXPECT_EQ(building.fixed_bars.size(), 4u);
  job.steel.bars->dimensioned = {{"AB", {"A", actual(in(4)), std::nullopt}}};
  REFUSED(beside, job);
  ASSERT_NE(refusal(beside, "bar-beside-corner-bar"), nullptr) << codes(beside);
  EXPECT_EQ(refusal(beside, "bar-beside-corner-bar")->place, "/steel/bars/dimensioned/0/place/at");
  EXPECT_NE(test::told(refusal(beside, "bar-beside-corner-bar")->remedy).find("3 13/16\" from A"), std::string::npos);
  // Without bars in corners it is the user's own: across the other wall the shells leave 1 1/4 to 6 3/8, with 13/16 in
  // round the bar 2 1/16 to 5 9/16.
  job.steel.bars->corners = false;
  RESOLVED(alone, job);
  ASSERT_EQ(alone.fixed_bars.size(), 1u);
  EXPECT_EQ(alone.corners[static_cast<std::size_t>(alone.fixed_bars[0].corner)].name, "A");
  job.steel.bars->dimensioned = {{"AB", {"A", actual(in16(2, 1)), std::nullopt}}};
  RESOLVED(least, job);
  EXPECT_EQ(least.fixed_bars.size(), 1u);
  job.steel.bars->dimensioned = {{"AB", {"A", actual(in(2)), std::nullopt}}};
  REFUSED(shell, job);
  EXPECT_NE(refusal(shell, "bar-in-corner"), nullptr) << codes(shell);
}

/// A dowel found on AB, and kept.
Job with_kept_dowel(Job job, Length at) {
  Reading reading;
  reading.id = "d1";
  reading.dowel = DowelReading{"AB", {}, at, in16(3, 13)};
  job.readings = {reading};
  job.steel.kept_dowels = {"d1"};
  return job;
}

// A dowel within 2 in of a dimensioned bar (TMS 602's tolerance along a wall) is that bar: the place moves, and is
// told.
TEST(Bars, ADimensionedBarIsSetAtAKeptDowelWithAFinding) {
  Job job = with_kept_dowel(with_bars(shed()), in16(83, 9));
  job.steel.bars->dimensioned = {{"AB", {"A", actual(in16(83, 13)), std::nullopt}}};
  RESOLVED(building, job);
  ASSERT_EQ(building.fixed_bars.size(), 1u);
  EXPECT_EQ(building.fixed_bars[0].reason, BarReason::Cast);
  EXPECT_EQ(building.fixed_bars[0].centre.distance_from_start(), in16(83, 9));
  const Finding* moved = finding(building, "dimensioned-bar-moved");
  ASSERT_NE(moved, nullptr);
  EXPECT_EQ(moved->place, "/steel/bars/dimensioned/0");
  EXPECT_NE(test::told(moved->says).find("6'-11 13/16\""), std::string::npos) << test::told(moved->says);
  EXPECT_NE(test::told(moved->says).find("6'-11 9/16\": 1/4\" off"), std::string::npos) << test::told(moved->says);
  // Just where it was dimensioned nothing moves.
  job.readings[0].dowel->at = in16(83, 13);
  RESOLVED(there, job);
  EXPECT_EQ(finding(there, "dimensioned-bar-moved"), nullptr);
}

// A bar has one dowel. The second of two is a bar of its own, and one read twice is one.
TEST(Bars, ADimensionedBarTakesOneDowelOfTwo) {
  Job job = with_kept_dowel(with_bars(shed()), in(85));
  job.steel.bars->dimensioned = {{"AB", {"A", actual(in16(83, 13)), std::nullopt}}};
  job.readings.push_back(job.readings[0]);
  job.readings[1].id = "d2";
  job.readings[1].dowel->at = in16(86, 11);  // 1 11/16 in from the first, 2 7/8 from where the bar was asked
  job.steel.kept_dowels = {"d1", "d2"};
  RESOLVED(two, job);
  ASSERT_EQ(two.fixed_bars.size(), 2u);
  EXPECT_NE(bar_at(two, 0, in(85)), nullptr);
  EXPECT_NE(bar_at(two, 0, in16(86, 11)), nullptr);
  job.readings[1].dowel->at = in16(85, 9);  // 9/16 in off: within the 5/8 in of a #5
  RESOLVED(one, job);
  EXPECT_EQ(one.fixed_bars.size(), 1u);
  ASSERT_NE(finding(one, "kept-dowel-not-placed"), nullptr);
  EXPECT_EQ(finding(one, "kept-dowel-not-placed")->place, "/steel/kept_dowels/1");
}

// The corner's bar stands 3 13/16 in from A; a dowel 1/2 in off it is told to be no other bar.
TEST(Bars, AKeptDowelBesideACornersBarIsTold) {
  Job job = with_kept_dowel(with_bars(shed()), in16(4, 5));
  job.steel.bars->corners = true;
  RESOLVED(building, job);
  EXPECT_EQ(building.fixed_bars.size(), 4u);
  ASSERT_NE(finding(building, "kept-dowel-not-placed"), nullptr);
  EXPECT_NE(test::told(finding(building, "kept-dowel-not-placed")->says).find("1/2\" from the bar of corner A"),
            std::string::npos);
  job.readings[0].dowel->at = in16(3, 13);
  RESOLVED(there, job);
  EXPECT_EQ(finding(there, "kept-dowel-not-placed"), nullptr);
}

// Dimensioned just where the jamb's bar stands it is a dimensioned one still: a dowel 1/2 in off moves it with a
// finding.
TEST(Bars, ADimensionedBarThatIsTheJambsIsNotMovedInSilence) {
  Job job = with_kept_dowel(with_bars(shed()), in16(59, 5));
  job.steel.bars->jambs = true;
  job.openings = {plain_hole("P", "AB", at("A", in(64)), in(40), in(56))};
  job.steel.bars->dimensioned = {{"AB", {"A", actual(in16(59, 13)), std::nullopt}}};
  RESOLVED(building, job);
  EXPECT_EQ(building.fixed_bars.size(), 2u);
  ASSERT_NE(finding(building, "dimensioned-bar-moved"), nullptr);
  EXPECT_NE(test::told(finding(building, "dimensioned-bar-moved")->says).find("1/2\" off"), std::string::npos);
}

// 2 3/8 in off the jamb's bar is beyond that tolerance, but still in the jamb's cell: the dowel is the jamb's bar.
TEST(Bars, AKeptDowelInAJambsCellIsTheJambsBar) {
  Job job = with_kept_dowel(with_bars(shed()), in16(57, 7));
  job.steel.bars->jambs = true;
  job.openings = {plain_hole("P", "AB", at("A", in(64)), in(40), in(56))};
  RESOLVED(building, job);
  EXPECT_EQ(building.fixed_bars.size(), 2u);
  ASSERT_NE(bar_at(building, 0, in16(57, 7)), nullptr);
  EXPECT_EQ(bar_at(building, 0, in16(57, 7))->reason, BarReason::Cast);
}

TEST(Bars, InAnOpeningOrPastTheWallAreRefused) {
  Job job = with_bars(shed());
  job.openings = {plain_hole("P", "AB", at("A", in(64)), in(40), in(56))};
  job.steel.bars->dimensioned = {{"AB", at("A", in(84))}, {"AB", at("A", in(292))}};
  REFUSED(refusals, job);
  ASSERT_EQ(refusals.shown.size(), 2u) << codes(refusals);
  EXPECT_EQ(refusals.shown[0].place, "/steel/bars/dimensioned/0/place/at");
  EXPECT_NE(test::told(refusals.shown[0].reason).find("in P"), std::string::npos);
}

TEST(Bars, ASeriesWithoutCellsRefusesThem) {
  Job job = with_bars(shed());
  job.units.series = "us-4";
  REFUSED(refusals, job);
  EXPECT_NE(test::told(refusal(refusals, "bars-no-cell")->reason).find("us-4"), std::string::npos);
}

TEST(Bars, AnUnknownSizeIsRefusedWithTheList) {
  Job job = with_bars(shed());
  job.steel.bars->size = "#12";
  REFUSED(refusals, job);
  EXPECT_NE(test::told(refusal(refusals, "bar-size")->remedy).find("#5"), std::string::npos);
}

TEST(Bars, ASpacingOffTheCellsNamesTheTwoNearestThatLand) {
  // Cells come every 8 in: 16, 24, 32, 40, 48 land in cells; 18, 20, 30, 36 hit webs.
  Job job = with_bars(shed());
  for (const auto& [asked, fits] :
       {std::pair(18, "1'-4\" and every 2'-0\""), std::pair(20, "1'-4\" and every 2'-0\""),
        std::pair(30, "2'-0\" and every 2'-8\""), std::pair(36, "2'-8\" and every 3'-4\"")}) {
    job.steel.bars->spacing = in(asked);
    RESOLVED(building, job);
    const Finding* off = finding(building, "spacing-off-cells");
    ASSERT_NE(off, nullptr) << asked;
    EXPECT_NE(test::told(off->says).find(fits), std::string::npos) << test::told(off->says);
  }
  for (const int asked : {16, 24, 32, 40, 48}) {
    job.steel.bars->spacing = in(asked);
    RESOLVED(building, job);
    EXPECT_EQ(finding(building, "spacing-off-cells"), nullptr) << asked;
  }
}

TEST(Bars, AFirstPourOverFiveFootFourAsksForCleanouts) {
  // G1: cleanouts for pours over 5'-4" = 8 courses of 8 in.
  Job job = with_bars(shed());
  job.steel.pour_tops = {8};
  RESOLVED(low, job);
  EXPECT_TRUE(low.cleanout_courses.empty());
  job.steel.pour_tops = {9};
  RESOLVED(high, job);
  EXPECT_EQ(high.cleanout_courses, std::vector<int>{1});
  EXPECT_NE(finding(high, "cleanout-pour"), nullptr);
  // A low first pour and a high second: at the foot of the second. 12 courses: 3 below, 9 above.
  job.steel.pour_tops = {3};
  RESOLVED(second, job);
  EXPECT_EQ(second.cleanout_courses, std::vector<int>{4});
}

TEST(Bars, TheGroutSpaceRowIsTheLowestThatReachesTheTallestPour) {
  Job job = with_bars(shed());
  job.steel.bars->grout = Grout::Fine;
  job.steel.pour_tops = {4, 12};  // pours of 32 and 64 in
  RESOLVED(building, job);
  ASSERT_TRUE(building.bars.has_value());
  for (const GroutSpace& row : grout_spaces()) {
    if (row.grout == Grout::Fine && row.pour_at_most == in(64)) {
      EXPECT_EQ(building.bars->common_across, row.across);
      EXPECT_EQ(building.bars->common_along, row.along);
    }
  }
  EXPECT_EQ(building.bars->common_along, in(3));  // 2 x 3 in for fine grout poured to 5'-4"
}

TEST(Bars, AJambBarUnderAOnePieceLintelIsFound) {
  Job job = with_bars(shed());
  job.steel.bars->jambs = true;
  job.openings = {plain_hole("P", "AB", at("A", in(64)), in(40), in(56))};
  job.openings[0].lintel = Lintel{LintelMake::OnePiece, 1, std::nullopt, {}};
  RESOLVED(building, job);
  EXPECT_NE(finding(building, "bar-under-lintel"), nullptr);
}

TEST(Bars, AKeptDowelAtTheFirstCornerIsThatCornersBar) {
  // The corner's bar is the arriving wall's; read along the leaving wall it stands half a thickness, 3 13/16 in, from
  // A.
  Job job = with_bars(shed());
  job.steel.bars->corners = true;
  RESOLVED(plain, job);
  for (const char* id : {"corner", "far"}) {
    Reading reading;
    reading.id = id;
    reading.dowel = DowelReading{"AB", {}, id[0] == 'c' ? in(3) + Length::sixteenths(13) : in(60), in(3)};
    job.readings.push_back(reading);
  }
  job.steel.kept_dowels = {"corner"};
  RESOLVED(kept, job);
  EXPECT_EQ(kept.fixed_bars.size(), plain.fixed_bars.size());
  job.steel.kept_dowels = {"corner", "far"};
  RESOLVED(both, job);
  EXPECT_EQ(both.fixed_bars.size(), plain.fixed_bars.size() + 1);
}

}  // namespace
}  // namespace stringcourse::tests
