// One cell, one bar; and no gap along masonry wider than the spacing asked for. On jobs that once broke it, and on many
// more of their kind.
#include <gtest/gtest.h>

#include <algorithm>

#include "certify.hpp"
#include "unit/walls/made_jobs.hpp"

namespace stringcourse::property {
namespace {

using tests::outline_of;

/// Bars that stand in one wall, corner bars of its neighbours left out.
std::vector<Length> bars_on(const Answer& answer, int wall) {
  std::vector<Length> places;
  for (const PlacedBar& bar : answer.layout.bars) {
    if (bar.wall == wall) places.push_back(bar.centre);
  }
  return places;
}

/// 7.2 by 4.8 m in 190 mm block, bars in corners and at most 800 mm apart.
Job store() {
  Job job = tests::job_with(outline_of({{0}, {0}, {0}, {0}}), 13);
  job.tape = Tape::Millimetres;
  job.units.series = "au-190";
  for (std::size_t side = 0; side < 4; ++side)
    job.outline.sides[side].length = tests::nominal(Length::millimetres(side % 2 == 0 ? 7200 : 4800));
  job.steel.bars = Bars{};
  job.steel.bars->size = "N12";
  job.steel.bars->corners = true;
  job.steel.bars->spacing = Length::millimetres(800);
  return job;
}

// The corner's bar stands at 95; one at 897 is 802 from it, so one more stands between. That was at 895, in the same
// cell.
TEST(OneBarEach, ASpacedBarNeverSharesTheCellOfADimensionedOne) {
  Job job = store();
  job.steel.bars->dimensioned = {{"BC", {"B", tests::actual(Length::millimetres(897)), std::nullopt}}};
  const auto answer = solve(job, {});
  ASSERT_TRUE(answer.has_value());
  EXPECT_EQ(faults_of(*answer), "");
  EXPECT_TRUE(answer->layout.stopped.empty());
  const std::vector<Length> bars = bars_on(*answer, 1);
  ASSERT_TRUE(std::ranges::find(bars, Length::millimetres(897)) != bars.end());
  // The next cell's middle lies 200 off, its edges (130 mm wide, 30 mm webs) 70 nearer: 100 at least.
  for (const Length bar : bars)
    EXPECT_TRUE(bar == Length::millimetres(897) ||
                magnitude(bar - Length::millimetres(897)) > Length::millimetres(100));
  // Halves of 200: cells' middles at 95, 295, ... 695. The bar between could stand at 741, at the edge of its cell.
  EXPECT_TRUE(std::ranges::find(bars, Length::millimetres(695)) != bars.end());
}

TEST(OneBarEach, ASpacedBarNeverSharesTheCellOfAKeptDowel) {
  Job job = store();
  Reading reading;
  reading.id = "d1";
  reading.dowel = DowelReading{"BC", {}, Length::millimetres(897), Length::millimetres(96)};
  job.readings = {reading};
  job.steel.kept_dowels = {"d1"};
  const auto answer = solve(job, {});
  ASSERT_TRUE(answer.has_value());
  EXPECT_EQ(faults_of(*answer), "");
  const std::vector<Length> bars = bars_on(*answer, 1);
  EXPECT_EQ(std::ranges::count_if(
                bars, [](Length bar) { return magnitude(bar - Length::millimetres(897)) < Length::millimetres(100); }),
            1);
}

// Any place of a cell that holds the bar: at most one bar within its cell, and no gap over the spacing, 201 places.
TEST(OneBarEach, WhereverADimensionedBarStands) {
  int laid = 0;
  for (int at = 800; at <= 1000; ++at) {
    Job job = store();
    job.heights.courses = 2;
    job.steel.bars->dimensioned = {{"BC", {"B", tests::actual(Length::millimetres(at)), std::nullopt}}};
    const auto answer = solve(job, {});
    ASSERT_TRUE(answer.has_value()) << at;
    EXPECT_EQ(faults_of(*answer), "") << at;
    laid += answer->layout.stopped.empty() ? 1 : 0;
  }
  EXPECT_GT(laid, 60);
}

// 24 by 16 ft, 2'-8" asked, a control joint 10 ft from A: from the corner bars at 3 13/16 the masonry of AB is 280 in
// long.
TEST(Spacing, GoesOnAcrossAControlJoint) {
  for (const int joint : {40, 80, 120, 128, 200, 248}) {
    Job job = tests::job_with(outline_of({{288}, {192}, {288}, {192}}), 10);
    job.steel.bars = Bars{};
    job.steel.bars->size = "#5";
    job.steel.bars->corners = true;
    job.steel.bars->spacing = tests::in(32);
    job.control_joints.placed = {{"AB", tests::at("A", tests::in(joint))}};
    const auto answer = solve(job, {});
    ASSERT_TRUE(answer.has_value()) << joint;
    EXPECT_EQ(faults_of(*answer), "") << joint;
    std::vector<Length> bars = bars_on(*answer, 0);
    bars.push_back(tests::in16(3, 13));  // the corner's at A, which DA lists
    std::ranges::sort(bars);
    for (std::size_t i = 1; i < bars.size(); ++i)
      EXPECT_LE(bars[i] - bars[i - 1], tests::in(32)) << joint << " bar " << i;
    EXPECT_EQ(bars.back(), tests::in16(287, 10) - tests::in16(3, 13)) << joint;
  }
}

// The dowel takes the dimensioned bar's place within the tolerance; the certificate knows it by the finding, and only
// so.
TEST(Dimensioned, IsWhereTheJobSaysOrTheFindingSaysWhy) {
  Job job = store();
  job.steel.bars->spacing.reset();
  job.steel.bars->dimensioned = {{"BC", {"B", tests::actual(Length::millimetres(897)), std::nullopt}}};
  Reading reading;
  reading.id = "d1";
  reading.dowel = DowelReading{"BC", {}, Length::millimetres(880), Length::millimetres(95)};
  job.readings = {reading};
  job.steel.kept_dowels = {"d1"};
  auto answer = solve(job, {});
  ASSERT_TRUE(answer.has_value());
  EXPECT_EQ(faults_of(*answer), "");
  std::erase_if(answer->building.findings,
                [](const Finding& finding) { return finding.code == "dimensioned-bar-moved"; });
  EXPECT_NE(faults_of(*answer).find("is not where the job dimensions it"), std::string::npos);
}

// 7'-8" high with a 7'-4" door: over its head only the half-high course is left. In one piece the lintel may lie there;
// of units it is refused, and the certificate refuses it where it is laid all the same.
TEST(HalfHigh, CarriesNoLintelOfUnits) {
  Job job = tests::job_with(tests::outline_of({{336}, {240}, {336}, {240}}));
  job.heights.courses.reset();
  job.heights.height = tests::nominal(tests::in(92));
  job.openings = {tests::plain_hole("D1", "AB", tests::at("A", tests::in(120)), tests::in(40), tests::in(88))};
  EXPECT_FALSE(solve(job, {}).has_value());
  job.openings[0].lintel = Lintel{LintelMake::OnePiece, std::nullopt, std::nullopt, {}};
  auto answer = solve(job, {});
  ASSERT_TRUE(answer.has_value());
  EXPECT_EQ(faults_of(*answer), "");
  answer->job.openings[0].lintel->make = answer->building.openings[0].lintel->make = LintelMake::BuiltUp;
  EXPECT_NE(faults_of(*answer).find("its lintel of units lies in a half-high course"), std::string::npos);
}

}  // namespace
}  // namespace stringcourse::property
