// Supports of a mason's line: on masonry, fewest, even; against brute force.
#include "setout/trigs.hpp"

#include <gtest/gtest.h>

#include <random>

#include "measure/force.hpp"
#include "unit/walls/made_jobs.hpp"

namespace stringcourse::setout {
namespace {

using namespace stringcourse::tests;

/// A wall as long as said with holes in it; nothing else of a building is asked.
Building wall_with(Length actual, const std::vector<std::pair<Length, Length>>& holes) {
  Building building;
  building.series.push_back(*find_series("us-8"));
  Wall wall;
  wall.actual = actual;
  building.walls.push_back(wall);
  for (const auto& [from, to] : holes) {
    ResolvedOpening opening;
    opening.wall = 0, opening.from = Position::from_start(from), opening.to = Position::from_start(to);
    building.openings.push_back(opening);
  }
  return building;
}

// 0.001 lb/ft pulled with 20 lb sags 1/32 in over sqrt(8 T s / w) = sqrt(8 x 20 x (1/384) / 0.001) = 20.41 ft.
TEST(Trigs, TheLongestSpanIsThatOfTheSagTable) {
  const LineFacts line{*read_line_weight("0.001 lb/ft"), *read_force("20 lb"), 0};
  const Length span = longest_span(line, 0.0254 / 32);
  EXPECT_NEAR(static_cast<double>(span.in_nanometres()) / 304.8e6, 20.4124, 0.001);
  EXPECT_LE(catenary_sag(static_cast<double>(span.in_nanometres()) * 1e-9, line.weight, line.pull), 0.0254 / 32);
}

TEST(Trigs, WithoutOpeningsTheyDivideTheWallEvenlyAndEqualWallsAlike) {
  for (int feet = 10; feet <= 90; feet += 7) {
    const Trigs trigs = trigs_of(wall_with(Length::feet(feet), {}), 0, Length::feet(20));
    const int fewest = (feet + 19) / 20 - 1;
    ASSERT_EQ(static_cast<int>(trigs.at.size()), fewest);
    EXPECT_TRUE(trigs.holds);
    for (int k = 0; k < fewest; ++k) {
      const Length even = Length::nanometres(Length::feet(feet).in_nanometres() * (k + 1) / (fewest + 1));
      EXPECT_LE(magnitude(trigs.at[static_cast<std::size_t>(k)] - even), Length::nanometres(fewest + 1));
    }
  }
}

// A 28 ft wall whose middle is a doorway, from 9'-3 5/8" to 18'-8": half of it is no place for a trig.
TEST(Trigs, NoneStandsInADoorway) {
  const Trigs trigs = trigs_of(wall_with(in16(335, 10), {{in16(111, 10), in(224)}}), 0, Length::feet(20));
  ASSERT_EQ(trigs.at.size(), 1u);
  EXPECT_TRUE(trigs.holds);
  EXPECT_TRUE(trigs.at[0] < in16(111, 10) || trigs.at[0] > in(224));
  EXPECT_LE(trigs.longest, Length::feet(20));
}

TEST(Trigs, AnOpeningWiderThanTheSpanIsSaid) {
  const Trigs trigs = trigs_of(wall_with(in(480), {{in(60), in(400)}}), 0, Length::feet(20));
  EXPECT_FALSE(trigs.holds);
  EXPECT_GT(trigs.longest, Length::feet(20));
  for (const Length at : trigs.at) EXPECT_TRUE(at < in(60) || at > in(400));
}

/// The fewest places of a grid of inches that leave no part longer than the span: a shortest path.
int fewest_by_brute_force(const std::vector<bool>& free, int whole, int span) {
  std::vector<int> least(static_cast<std::size_t>(whole) + 1, 1'000);
  least[0] = 0;
  for (int to = 1; to <= whole; ++to) {
    if (to != whole && !free[static_cast<std::size_t>(to)]) continue;
    for (int from = std::max(0, to - span); from < to; ++from) {
      const int here = least[static_cast<std::size_t>(from)] + (to == whole ? 0 : 1);
      least[static_cast<std::size_t>(to)] = std::min(least[static_cast<std::size_t>(to)], here);
    }
  }
  return least[static_cast<std::size_t>(whole)];
}

TEST(Trigs, AreTheFewestThatBruteForceFinds) {
  std::mt19937 dice(7);
  int compared = 0;
  for (int round = 0; round < 400; ++round) {
    const int whole = 240 + static_cast<int>(dice() % 700), span = 150 + static_cast<int>(dice() % 120);
    std::vector<std::pair<Length, Length>> holes;
    for (int at = 30 + static_cast<int>(dice() % 80); at < whole - 150;) {
      const int wide = 30 + static_cast<int>(dice() % 110);
      holes.emplace_back(in(at), in(at + wide));
      at += wide + 16 + static_cast<int>(dice() % 150);
    }
    // Half units of 8 in: every place that counts is then a whole inch, and the grid is exact.
    Building building = wall_with(in(whole), holes);
    building.series.front().half = in(8);
    const Trigs trigs = trigs_of(building, 0, in(span));
    std::vector<bool> free(static_cast<std::size_t>(whole) + 1, true);
    for (int x = 0; x <= whole; ++x) {
      free[static_cast<std::size_t>(x)] = x >= 4 && x <= whole - 4;
      for (const auto& [from, to] : holes) {
        if (in(x) > from - in(4) && in(x) < to + in(4)) free[static_cast<std::size_t>(x)] = false;
      }
    }
    const int brute = fewest_by_brute_force(free, whole, span);
    EXPECT_EQ(trigs.holds, brute < 1'000);
    if (!trigs.holds) continue;
    EXPECT_EQ(static_cast<int>(trigs.at.size()), brute);
    Length last;
    for (const Length at : trigs.at) {
      EXPECT_LE(at - last, trigs.longest);
      last = at;
      for (const auto& [from, to] : holes) EXPECT_TRUE(at <= from - in(4) || at >= to + in(4));
    }
    EXPECT_LE(in(whole)-last, trigs.longest);
    EXPECT_LE(trigs.longest, in(span));
    ++compared;
  }
  EXPECT_GT(compared, 100);
}

}  // namespace
}  // namespace stringcourse::setout
