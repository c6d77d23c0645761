// The corner law on whole buildings: solve() on a sample of the plans that corner_law_test.cpp counts out by hand.
#include <gtest/gtest.h>

#include <array>
#include <string>

#include "solve/solve.hpp"

namespace stringcourse {
namespace {

constexpr std::int64_t kHalfUnits = 8;  // inches nominal

struct NamedSide {
  std::int64_t half_units;
  Turn turn;  // at its far end
};

Job plan(const char* series, const std::vector<NamedSide>& sides) {
  Job job;
  job.name = "Plan without openings";
  job.units.series = series;
  job.heights.courses = 4;
  for (std::size_t k = 0; k < sides.size(); ++k) {
    Side side;
    side.from = std::string(1, static_cast<char>('A' + k));
    side.to = std::string(1, static_cast<char>('A' + (k + 1) % sides.size()));
    side.length = {Length::inches(sides[k].half_units * kHalfUnits), Basis::Nominal};
    side.turn = sides[k].turn;
    job.outline.sides.push_back(side);
  }
  return job;
}

Job rectangle(const char* series, std::int64_t a, std::int64_t b) {
  return plan(series, {{a, Turn::Right}, {b, Turn::Right}, {a, Turn::Right}, {b, Turn::Right}});
}

/// a by b less a notch c by d.
Job l_plan(const char* series, std::int64_t a, std::int64_t b, std::int64_t c, std::int64_t d) {
  return plan(series, {{a, Turn::Right},
                       {b - d, Turn::Right},
                       {c, Turn::Left},
                       {d, Turn::Right},
                       {a - c, Turn::Right},
                       {b, Turn::Right}});
}

void expect_whole_units_only(const Job& job, const std::string& name) {
  const auto answer = solve(job, {});
  ASSERT_TRUE(answer.has_value()) << name;
  const Layout& layout = answer->layout;
  EXPECT_TRUE(layout.stopped.empty()) << name;
  EXPECT_TRUE(layout.proven) << name;
  EXPECT_EQ(layout.cost.cuts, 0) << name;
  EXPECT_EQ(layout.cost.short_laps, 0) << name;
  EXPECT_EQ(layout.cost.joint_deviation, 0) << name;
  EXPECT_FALSE(layout.pieces.empty()) << name;
  for (const Piece& piece : layout.pieces) ASSERT_EQ(piece.length, Length::sixteenths(250)) << name;
}

std::string sizes(std::initializer_list<std::int64_t> half_units) {
  std::string text;
  for (const std::int64_t size : half_units) text += std::to_string(size) + " ";
  return text;
}

TEST(CornerLawBuildings, EightInchRectanglesAndLPlansAreLaidInWholeUnits) {
  for (std::int64_t a = 10; a <= 14; ++a)
    for (std::int64_t b = 10; b <= 13; ++b) expect_whole_units_only(rectangle("us-8", a, b), sizes({a, b}));
  for (std::int64_t c = 3; c <= 6; ++c)
    for (std::int64_t d = 2; d <= 5; ++d) expect_whole_units_only(l_plan("us-8", 13, 12, c, d), sizes({13, 12, c, d}));
}

TEST(CornerLawBuildings, RectanglesOfOtherThicknessesAreLaidInWholeUnitsWithTheirCornerSets) {
  for (const char* series : {"us-6", "us-10", "us-12"})
    for (std::int64_t a = 10; a <= 12; ++a) expect_whole_units_only(rectangle(series, a, 11), series + sizes({a, 11}));
}

TEST(CornerLawBuildings, LPlansOfOtherThicknessesNeverCloseWithoutACutOrAShortLap) {
  for (const char* series : {"us-6", "us-12"})
    for (std::int64_t c = 4; c <= 5; ++c) {
      const auto answer = solve(l_plan(series, 13, 12, c, 4), {});
      ASSERT_TRUE(answer.has_value()) << series << c;
      const Layout& layout = answer->layout;
      EXPECT_GT(layout.cost.cuts + layout.cost.short_laps + static_cast<std::int64_t>(layout.stopped.size()), 0)
          << series << c;
    }
}

}  // namespace
}  // namespace stringcourse
