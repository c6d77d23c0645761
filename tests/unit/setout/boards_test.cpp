#include "setout/boards.hpp"

#include <gtest/gtest.h>

#include <cmath>
#include <random>

namespace stringcourse::setout {
namespace {

/// A rectangle whose outer faces are a x b, set out in feet.
Building rectangle(Length a, Length b) {
  Building building;
  building.tape = Tape::Inches;
  building.series.push_back(*find_series("us-8"));
  const PlanPoint points[] = {{{}, {}}, {-a, {}}, {-a, b}, {{}, b}};
  const Length lengths[] = {a, b, a, b};
  const char* names[] = {"A", "B", "C", "D"};
  for (int k = 0; k < 4; ++k) {
    building.corners.push_back({names[k], true, (k + 3) % 4, k, points[k]});
    Wall wall;
    wall.name = std::string(names[k]) + names[(k + 1) % 4];
    wall.start_name = names[k], wall.end_name = names[(k + 1) % 4];
    wall.actual = lengths[k];
    wall.start = {EndKind::Corner, k, -1}, wall.end = {EndKind::Corner, (k + 1) % 4, -1};
    building.walls.push_back(wall);
  }
  return building;
}

TEST(Boards, KerfsAreMeasuredFromTheOuterEndInOrder) {
  Job job;
  job.setting_out.emplace();
  job.setting_out->footing_outside = job.setting_out->footing_inside = Length::inches(4);
  const auto boards = boards_of(job, rectangle(Length::feet(28), Length::feet(20)));
  ASSERT_EQ(boards.size(), 4u);
  // 2 ft to the outer face; a 7 5/8 in wall.
  const Length kerfs[] = {Length::inches(20), Length::inches(24), Length::inches(24) + Length::sixteenths(61),
                          Length::inches(24) + Length::sixteenths(122), Length::inches(28) + Length::sixteenths(122)};
  ASSERT_EQ(boards[0].kerfs.size(), 5u);
  for (std::size_t k = 0; k < 5; ++k) EXPECT_EQ(boards[0].kerfs[k].at, kerfs[k]);
  EXPECT_EQ(boards[0].beyond, Length::feet(4));
  EXPECT_TRUE(boards_of(Job{}, rectangle(Length::feet(28), Length::feet(20))).empty());
}

TEST(Boards, DiagonalsAreExactToTheNanometre) {
  // 24 x 32 ft has a diagonal of 40 ft; others against long double roots.
  EXPECT_EQ(straight_between({{}, {}}, {Length::feet(24), Length::feet(32)}), Length::feet(40));
  std::mt19937_64 dice(1);
  for (int round = 0; round < 10'000; ++round) {
    const std::int64_t x = static_cast<std::int64_t>(dice() % 60'000'000'000),
                       y = static_cast<std::int64_t>(dice() % 60'000'000'000);
    const Length found = straight_between({{}, {}}, {Length::nanometres(x), Length::nanometres(y)});
    const long double root = std::sqrt(static_cast<long double>(x) * static_cast<long double>(x) +
                                       static_cast<long double>(y) * static_cast<long double>(y));
    EXPECT_LE(std::abs(static_cast<long double>(found.in_nanometres()) - root), 0.51L);
  }
}

TEST(Boards, EveryRectangleHasFourSidesAndTwoEqualDiagonals) {
  const auto tapes = expected_tapes(rectangle(Length::feet(28), Length::feet(20)));
  ASSERT_EQ(tapes.size(), 6u);
  std::vector<Length> diagonals;
  for (const ExpectedTape& tape : tapes) {
    if (!tape.side) diagonals.push_back(tape.length);
  }
  ASSERT_EQ(diagonals.size(), 2u);
  EXPECT_EQ(diagonals[0], diagonals[1]);
}

TEST(Boards, ASixteenthOnTheHypotenuseCostsWhatTheTableSays) {
  // At the end of a 32 ft wall: 3-4-5 ft 0.833 in, 6-8-10 0.417, 9-12-15 0.278, 12-16-20 0.208, 24-32-40 0.104
  // (computed).
  const struct {
    int room;
    double cost;
  } table[] = {{4, .833}, {8, .417}, {12, .278}, {16, .208}, {32, .104}};
  for (const auto& [room, cost] : table) {
    const auto checks = square_checks(rectangle(Length::feet(32), Length::feet(24)), Length::feet(room));
    ASSERT_EQ(checks.size(), 4u);
    EXPECT_EQ(std::max(checks[0].leg_a, checks[0].leg_b), Length::feet(room));
    EXPECT_NEAR(static_cast<double>(checks[0].slip_costs.in_nanometres()) / 25.4e6, cost, 0.6e-3);
    EXPECT_EQ(4 * checks[0].hypotenuse, 5 * std::max(checks[0].leg_a, checks[0].leg_b));
  }
}

}  // namespace
}  // namespace stringcourse::setout
