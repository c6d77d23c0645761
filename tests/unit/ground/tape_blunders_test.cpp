// One reading of many is wrong: it is found, or it is said that it cannot be; never is it taken for an impossible plan.
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <random>
#include <set>

#include "ground/as_found.hpp"
#include "tapings.hpp"
#include "told.hpp"
#include "unit/kiln_house_site.hpp"

namespace stringcourse::ground {
namespace {

using namespace ground_test;
using test::Site;

/// A kick wheel shop round a yard: 40 x 24 ft, the yard 16 x 8 ft. A, H, G, D are in line with one another's sides.
Site yard() {
  return test::site_of(R"({"stringcourse": 1, "name": "Kick wheel shop", "tape": "inches", "units": {"series": "us-8"},
    "outline": {"closed": true, "sides": [
      {"from": "A", "to": "B", "length": "40'-0\"", "turn": "right"}, {"from": "B", "to": "C", "length": "24'-0\"", "turn": "right"},
      {"from": "C", "to": "D", "length": "12'-0\"", "turn": "right"}, {"from": "D", "to": "E", "length": "8'-0\"", "turn": "left"},
      {"from": "E", "to": "F", "length": "16'-0\"", "turn": "left"}, {"from": "F", "to": "G", "length": "8'-0\"", "turn": "right"},
      {"from": "G", "to": "H", "length": "12'-0\"", "turn": "right"}, {"from": "H", "to": "A", "length": "24'-0\"", "turn": "right"}]},
    "heights": {"courses": 4}, "openings": []})");
}

Length to_sixteenth(double inches) { return Length::sixteenths(std::llround(inches * 16)); }

/// Pegs within 1/4 in of the plan; A stays, B lies in A's own direction.
std::vector<Off> pegs(std::minstd_rand& dice, std::size_t corners) {
  std::uniform_real_distribution<double> off(-0.25 * 0.0254, 0.25 * 0.0254);
  std::vector<Off> stands(corners);
  for (Off& one : stands) one = {off(dice), off(dice)};
  stands[0] = {0, 0}, stands[1].second = 0;
  return stands;
}

/// Every line but the one across the yard's mouth, read to 1/16 in.
std::vector<Reading> read_lines(const Building& building, const std::vector<Off>& stands, std::minstd_rand& dice) {
  std::uniform_real_distribution<double> error(-1.0 / 32, 1.0 / 32);
  std::vector<Reading> all = tapings(building, stands);
  std::erase_if(all, [](const Reading& one) { return one.tape->from == "C" && one.tape->to == "F"; });
  for (Reading& one : all) one.tape->length = to_sixteenth(in_metres(one.tape->length) / 0.0254 + error(dice));
  return all;
}

TEST(TapeBlunders, AQuarterInchMoreOnALineOverCornersInARowIsNoImpossiblePlan) {
  Site site = yard();
  // D, G and H lie in one line: DH is as long as DG and GH together, and a little more than that is no triangle.
  site.job.readings = tapings(site.building, std::vector<Off>(8));
  for (Reading& one : site.job.readings) {
    if (one.tape->from == "D" && one.tape->to == "H") one.tape->length += Length::sixteenths(16);
  }
  const AsFound found = as_found(site.job, site.building, site.layout);
  EXPECT_EQ(found.tape.state, TapeAsFound::State::Adjusted);
  EXPECT_EQ(found.tape.suspicion, Suspicion::Located);
  for (const TapedLine& line : found.tape.lines) {
    const std::string name = site.building.corners[static_cast<std::size_t>(line.from)].name +
                             site.building.corners[static_cast<std::size_t>(line.to)].name;
    EXPECT_EQ(line.wrong, name == "DH") << name;
  }
  // Everything else fits to a nanometre: all pegs stand right.
  for (const PegMove& move : found.tape.moves) EXPECT_LT(move.off, Length::nanometres(100));
}

TEST(TapeBlunders, WhateverLineIsWrongTheOthersAreAdjustedAndThePegsAreFound) {
  Site site = yard();
  std::minstd_rand dice(20);
  int located = 0, misled = 0;
  for (int round = 0; round < 80; ++round) {
    const std::vector<Off> stands = pegs(dice, 8);
    site.job.readings = read_lines(site.building, stands, dice);
    const std::size_t wrong = dice() % site.job.readings.size();
    const auto by = static_cast<std::int64_t>(4 + dice() % 29);  // 1/4 in to 2 in
    site.job.readings[wrong].tape->length += Length::sixteenths(dice() % 2 == 0 ? by : -by);
    const AsFound found = as_found(site.job, site.building, site.layout);
    ASSERT_EQ(found.tape.state, TapeAsFound::State::Adjusted) << round;
    std::set<std::size_t> named;
    for (std::size_t k = 0; k < found.tape.lines.size(); ++k) {
      if (found.tape.lines[k].wrong) named.insert(k);
    }
    if (named == std::set{wrong}) ++located;
    else if (!named.empty()) ++misled;
    if (named != std::set{wrong}) continue;
    for (std::size_t k = 0; k < 8; ++k) {
      const PegMove& move = found.tape.moves[k];
      const double east = in_metres(move.east) + stands[k].first, north = in_metres(move.north) + stands[k].second;
      // Twice the expanded doubt is four times the standard one.
      EXPECT_LE(std::sqrt(east * east + north * north), 2 * in_metres(move.doubt) + 1e-9) << round;
    }
  }
  EXPECT_EQ(misled, 0);
  EXPECT_GE(located, 70);
}

/// A first line of four sides and two diagonals, one of them 2 in wrong.
TEST(TapeBlunders, WhileTapingsDisagreeNoPegIsMovedAndNothingIsJudged) {
  Site site = test::kiln_house_site();
  site.job.readings = tapings(site.building, std::vector<Off>(4));
  site.job.readings[1].tape->length += Length::inches(2);  // AC
  const AsFound found = as_found(site.job, site.building, site.layout);
  EXPECT_EQ(found.tape.suspicion, Suspicion::NotLocatable);
  EXPECT_EQ(found.tape.verdict, Verdict::CannotTell);
  EXPECT_TRUE(found.tape.moves.empty());
  EXPECT_EQ(found.tape.tape_again.size(), 6u);
  for (const TapedLine& line : found.tape.lines) EXPECT_FALSE(line.wrong);
  const auto told = std::ranges::find(found.findings, Code("tapings-disagree"), &Finding::code);
  ASSERT_NE(told, found.findings.end());
  EXPECT_TRUE(test::told(told->says).contains("No peg is moved")) << test::told(told->says);
}

TEST(TapeBlunders, TapeAgainNamesEachLineOnceAndNoneThatTwoTapingsConfirm) {
  Site site = test::kiln_house_site();
  site.job.readings = tapings(site.building, std::vector<Off>(4));
  site.job.readings[1].tape->length += Length::inches(2);  // AC
  const Reading second = site.job.readings[4];             // BD, read the same again, twice
  for (const char* id : {"again", "and again"})
    site.job.readings.push_back(taped(id, second.tape->to, second.tape->from, second.tape->length));
  const AsFound found = as_found(site.job, site.building, site.layout);
  EXPECT_EQ(found.tape.suspicion, Suspicion::NotLocatable);
  std::set<std::pair<int, int>> lines;
  for (const std::size_t k : found.tape.tape_again) {
    const TapedLine& line = found.tape.lines[k];
    EXPECT_TRUE(lines.insert(std::minmax(line.from, line.to)).second);
    EXPECT_FALSE(std::minmax(line.from, line.to) == std::minmax(1, 3));
  }
  EXPECT_EQ(lines.size(), 5u);
}

TEST(TapeBlunders, WhereNothingElseHoldsTheShapeTheTriangleIsNamed) {
  Site site = test::kiln_house_site();
  // Five lines hold four corners with nothing to spare; AC is longer than AB and BC together.
  site.job.readings = tapings(site.building, std::vector<Off>(4));
  std::erase_if(site.job.readings, [](const Reading& one) { return one.tape->from == "B" && one.tape->to == "D"; });
  for (Reading& one : site.job.readings) {
    if (one.tape->to == "C" && one.tape->from == "A")
      one.tape->length = site.job.readings[0].tape->length + Length::feet(25);
  }
  const AsFound found = as_found(site.job, site.building, site.layout);
  EXPECT_EQ(found.tape.state, TapeAsFound::State::Impossible);
  EXPECT_EQ(found.tape.verdict, Verdict::NotRead);
  EXPECT_TRUE(found.tape.moves.empty());
  ASSERT_EQ(found.tape.impossible.size(), 3u);
  const TapedLine& longest = found.tape.lines[found.tape.impossible[0]];
  EXPECT_EQ(std::minmax(longest.from, longest.to), std::minmax(0, 2));
}

}  // namespace
}  // namespace stringcourse::ground
