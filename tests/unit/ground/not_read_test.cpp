// What is not read yet is said so: it neither fits nor not, and nothing is worked out from it.
#include <gtest/gtest.h>

#include <algorithm>

#include "ground/as_found.hpp"
#include "tapings.hpp"
#include "told.hpp"
#include "unit/kiln_house_site.hpp"

namespace stringcourse::ground {
namespace {

using namespace ground_test;
using test::Site;

const std::vector<Off> kRight(4);

std::vector<std::string> codes(const AsFound& found) {
  std::vector<std::string> all;
  for (const Finding& one : found.findings) all.emplace_back(one.code.text());
  return all;
}

bool joins(const Reading& reading, const std::string& a, const std::string& b) {
  return (reading.tape->from == a && reading.tape->to == b) || (reading.tape->from == b && reading.tape->to == a);
}

/// All tapings of the kiln house but these.
std::vector<Reading> tapings_without(const Building& building,
                                     const std::vector<std::pair<std::string, std::string>>& lines) {
  std::vector<Reading> all = tapings(building, kRight);
  for (const auto& [a, b] : lines) std::erase_if(all, [&](const Reading& one) { return joins(one, a, b); });
  return all;
}

Reading at_corner(const std::string& corner, int sixteenths) {
  return rod(corner, corner, Length::inches(48) + Length::sixteenths(sixteenths));
}

TEST(NotRead, OneRodReadingSaysNothingOfTheBed) {
  Site site = test::kiln_house_site();
  site.job.readings = {rod("d", "datum", Length::inches(48)), at_corner("A", 64)};
  const AsFound found = as_found(site.job, site.building, site.layout);
  ASSERT_TRUE(found.levels && found.levels->bed);
  EXPECT_EQ(found.levels->bed->verdict, Verdict::NotRead);
  std::vector<std::string> lacks;
  for (const Fact& place : found.levels->bed->lacks) lacks.push_back(test::told(place));
  std::ranges::sort(lacks);
  EXPECT_EQ(lacks, (std::vector<std::string>{"B", "C", "D"}));
  EXPECT_TRUE(found.levels->bed->choices.empty());  // no mortar for a bed that is not known
  EXPECT_EQ(codes(found), std::vector<std::string>{"bed-not-read"});
  const std::string says = test::told(found.findings[0].says);
  EXPECT_TRUE(says.contains("not read yet")) << says;
}

TEST(NotRead, WhatWasReadIsOutOfRangeWhateverElseIsRead) {
  Site site = test::kiln_house_site();
  // B lies 3/4 in lower than A: the range is 1/2 in, and further readings can only widen the spread.
  site.job.readings = {rod("d", "datum", Length::inches(48)), at_corner("A", 60), at_corner("B", 72)};
  const AsFound found = as_found(site.job, site.building, site.layout);
  ASSERT_TRUE(found.levels && found.levels->bed);
  EXPECT_EQ(found.levels->bed->verdict, Verdict::DoesNotFit);
  EXPECT_TRUE(found.levels->bed->choices.empty());
  EXPECT_EQ(codes(found), std::vector<std::string>{"bed-out-of-range"});
}

TEST(NotRead, AllCornersAndTheBedIsReadWholeSaveWhereAnInnerWallStandsFree) {
  Site site = test::kiln_house_site();
  site.job.readings = {rod("d", "datum", Length::inches(48))};
  for (const char* corner : {"A", "B", "C", "D"}) {
    if (site.job.readings.size() < 5) {
      const AsFound before = as_found(site.job, site.building, site.layout);
      if (before.levels && before.levels->bed) EXPECT_EQ(before.levels->bed->verdict, Verdict::NotRead) << corner;
    }
    site.job.readings.push_back(at_corner(corner, 64));
  }
  const AsFound found = as_found(site.job, site.building, site.layout);
  EXPECT_EQ(found.levels->bed->verdict, Verdict::Fits);
  EXPECT_TRUE(found.levels->bed->lacks.empty());
  EXPECT_FALSE(found.levels->bed->choices.empty());
}

TEST(NotRead, ThreeSidesOrNoDiagonalsHoldNoShape) {
  Site site = test::kiln_house_site();
  using Lines = std::vector<std::pair<std::string, std::string>>;
  for (const Lines& without : {Lines{{"A", "C"}, {"B", "D"}}, Lines{{"A", "C"}, {"B", "D"}, {"D", "A"}},
                               Lines{{"A", "C"}, {"A", "D"}, {"A", "B"}}}) {
    site.job.readings = tapings_without(site.building, without);
    const AsFound found = as_found(site.job, site.building, site.layout);
    EXPECT_EQ(found.tape.verdict, Verdict::NotRead);
    EXPECT_TRUE(found.tape.moves.empty() || found.tape.state == TapeAsFound::State::Adjusted);
    EXPECT_FALSE(found.tape.missing.empty());
    EXPECT_TRUE(std::ranges::contains(codes(found), "shape-not-held"));
    // What is asked for does it: with it the shape is held, though perhaps by nothing to spare.
    for (const auto& [a, b] : found.tape.missing) {
      const auto p = static_cast<std::size_t>(a), q = static_cast<std::size_t>(b);
      site.job.readings.push_back(taped("more" + std::to_string(a) + std::to_string(b), site.building.corners[p].name,
                                        site.building.corners[q].name, metres(between(site.building, kRight, p, q))));
    }
    EXPECT_EQ(as_found(site.job, site.building, site.layout).tape.state, TapeAsFound::State::Adjusted);
  }
}

TEST(NotRead, FiveLinesHoldTheShapeAndNothingChecksThem) {
  Site site = test::kiln_house_site();
  site.job.readings = tapings_without(site.building, {{"B", "D"}});
  const AsFound found = as_found(site.job, site.building, site.layout);
  EXPECT_EQ(found.tape.verdict, Verdict::NotRead);
  ASSERT_EQ(found.tape.missing.size(), 1u);
  EXPECT_EQ(site.building.corners[static_cast<std::size_t>(found.tape.missing[0][0])].name, "B");
  EXPECT_EQ(site.building.corners[static_cast<std::size_t>(found.tape.missing[0][1])].name, "D");
  EXPECT_EQ(codes(found), std::vector<std::string>{"tapings-unchecked"});
  site.job.readings = tapings(site.building, kRight);
  const AsFound all = as_found(site.job, site.building, site.layout);
  EXPECT_EQ(all.tape.verdict, Verdict::Fits);
  EXPECT_TRUE(all.findings.empty());
}

/// Pegs sheared along AB so that the diagonals differ by so much: AC^2 - BD^2 = 4 x side x shear.
std::vector<Off> sheared(const Building& building, double difference) {
  double low = 0, high = 0.5;
  for (int step = 0; step < 80; ++step) {
    const double shear = (low + high) / 2;
    const std::vector<Off> off{{0, 0}, {0, 0}, {shear, 0}, {shear, 0}};
    const double differ = between(building, off, 0, 2) - between(building, off, 1, 3);
    ((differ > 0 ? differ : -differ) < difference ? low : high) = shear;
  }
  return {{0, 0}, {0, 0}, {low, 0}, {low, 0}};
}

TEST(Diagonals, AnInchOfDifferenceIsAFindingWithItsLimitAndWhereItIsFrom) {
  Site site = test::kiln_house_site();
  // 1/2 in is allowed; the doubt of a difference of two readings of +-1/16 in is 2 sqrt 2 / 16 / sqrt 3 = 0.102 in.
  for (const auto& [sixteenths, verdict] :
       {std::pair{16, Verdict::DoesNotFit}, std::pair{4, Verdict::Fits}, std::pair{8, Verdict::CannotTell},
        std::pair{10, Verdict::DoesNotFit}, std::pair{6, Verdict::Fits}}) {
    site.job.readings = tapings(site.building, sheared(site.building, sixteenths * 0.0254 / 16));
    const AsFound found = as_found(site.job, site.building, site.layout);
    ASSERT_EQ(found.tape.diagonals.size(), 1u);
    const Diagonals& pair = found.tape.diagonals[0];
    EXPECT_LE(magnitude(pair.difference - Length::sixteenths(sixteenths)), Length::nanometres(10));
    EXPECT_EQ(pair.allowed, Length::sixteenths(8));
    EXPECT_EQ(pair.verdict, verdict) << sixteenths;
    const auto told = std::ranges::find(found.findings, Code("diagonals-differ"), &Finding::code);
    ASSERT_EQ(told != found.findings.end(), verdict != Verdict::Fits) << sixteenths;
    if (sixteenths != 16) continue;
    EXPECT_EQ(found.tape.verdict, Verdict::DoesNotFit);
    const std::string says = test::told(told->says);
    EXPECT_TRUE(says.contains("1\" longer")) << says;
    EXPECT_TRUE(says.contains("1/2\" is allowed")) << test::told(told->says);
    EXPECT_TRUE(words::cited(told->rule, {Tape::Inches}).contains("12-16-20")) << told->rule;
  }
}

TEST(Diagonals, ACornerFartherOffItsPlaceThanTheLimitIsAFindingTooWithDiagonalsAlike) {
  Site site = test::kiln_house_site();
  // C and D both 1 in too far from AB: a rectangle, so its diagonals say nothing; sides are 1 in too long.
  site.job.readings = tapings(site.building, {{0, 0}, {0, 0}, {0, -0.0254}, {0, -0.0254}});
  const AsFound found = as_found(site.job, site.building, site.layout);
  ASSERT_EQ(found.tape.diagonals.size(), 1u);
  EXPECT_EQ(found.tape.diagonals[0].verdict, Verdict::Fits);
  EXPECT_EQ(std::ranges::count(codes(found), "corner-off-place"), 2);
  EXPECT_EQ(found.tape.verdict, Verdict::DoesNotFit);
}

TEST(Diagonals, ACornerMayStandOffByHalfAnInchInTwentyFeetAndThreeQuartersAtMost) {
  // SOURCE: TMS 602, location in plan: 1/2 in in 20 ft, 3/4 in at most (second-hand).
  EXPECT_EQ(corner_allowed(Length::feet(8)), Length::sixteenths(8));
  EXPECT_EQ(corner_allowed(Length::feet(20)), Length::sixteenths(8));
  EXPECT_EQ(corner_allowed(Length::feet(25)), Length::sixteenths(10));
  EXPECT_EQ(corner_allowed(Length::feet(30)), Length::sixteenths(12));
  EXPECT_EQ(corner_allowed(Length::feet(90)), Length::sixteenths(12));
}

TEST(TapingsFit, TheRuleTellsTheLimitThatReadingsAreHeldAgainst) {
  EXPECT_EQ(static_cast<int>(kBlunderLimit * 100), 329);
  for (const char* id : {"tapings-fit", "level-loop"}) {
    EXPECT_TRUE(words::cited(id, {Tape::Inches}).contains("3.29 times the doubt")) << id;
  }
}

}  // namespace
}  // namespace stringcourse::ground
