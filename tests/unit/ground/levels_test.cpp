#include "ground/levels.hpp"

#include <gtest/gtest.h>

#include <cmath>

namespace stringcourse::ground {
namespace {

/// A line of set-ups: backsight on one point, foresight on the next.
std::vector<RodReading> line_of(const std::vector<std::pair<double, double>>& sights, double sigma = 1) {
  std::vector<RodReading> readings;
  for (int k = 0; k < static_cast<int>(sights.size()); ++k) {
    readings.push_back({k, k, sights[static_cast<std::size_t>(k)].first, sigma});
    readings.push_back({k, k + 1, sights[static_cast<std::size_t>(k)].second, sigma});
  }
  return readings;
}

// SOURCE of L1, L2: surveying textbooks' exercises with their printed heights.
TEST(Levels, L1ALoopThatComesBackFiveCentimetresOff) {
  const std::vector<std::pair<double, double>> sights{{1.205, 1.860}, {.125, 1.915}, {.395, 2.615}, {.880, 1.760},
                                                      {1.960, .920},  {2.595, .915}, {2.255, .515}, {2.305, 1.170}};
  const auto open = adjust_levels(9, 8, line_of(sights), 0, 150.485);
  ASSERT_TRUE(open);
  const double heights[9] = {150.485, 149.830, 148.040, 145.820, 144.940, 145.980, 147.660, 149.400, 150.535};
  for (std::size_t k = 0; k < 9; ++k) EXPECT_NEAR(open->heights[k], heights[k], 1e-9);
  // Closed on the bench mark: the misclosure is shared alike by the set-ups.
  std::vector<RodReading> closed = line_of(sights);
  closed.back().point = 0;
  const auto found = adjust_levels(8, 8, closed, 0, 150.485);
  ASSERT_TRUE(found);
  ASSERT_EQ(found->loops.size(), 1u);
  EXPECT_NEAR(std::abs(found->loops[0].misclosure), .050, 1e-9);
  EXPECT_EQ(found->loops[0].readings.size(), 16u);
  EXPECT_NEAR(found->loops[0].doubt, 4, 1e-12);  // sixteen readings of sigma 1
  const double shared[8] = {150.485, 149.8238, 148.0275, 145.8013, 144.9150, 145.9488, 147.6225, 149.3563};
  for (std::size_t k = 0; k < 8; ++k) EXPECT_NEAR(found->heights[k], shared[k], 0.6e-4);
}

TEST(Levels, L4AStaffHeldUpsideDownReadsBelowZeroAndTheSumsStillClose) {
  // SOURCE: L4, a textbook's level book with inverted readings: backsights 7.795, foresights 8.245 in all, 185.205 to
  // 184.755. Its rows are not at hand; any rows with those sums must end there.
  const std::vector<std::pair<double, double>> sights{{1.525, 2.110}, {-2.325, 1.480}, {3.115, -1.905},
                                                      {0.940, 2.730}, {2.250, 1.290},  {2.290, 2.540}};
  double back = 0, fore = 0;
  for (const auto& [one, other] : sights) back += one, fore += other;
  ASSERT_NEAR(back, 7.795, 1e-12);
  ASSERT_NEAR(fore, 8.245, 1e-12);
  const auto found = adjust_levels(7, 6, line_of(sights), 0, 185.205);
  ASSERT_TRUE(found);
  EXPECT_NEAR(found->heights[6], 184.755, 1e-9);
}

TEST(Levels, L2ThreeSetUps) {
  const auto found = adjust_levels(4, 3, line_of({{2.365, 1.235}, {.685, 3.570}, {1.745, 2.340}}), 0, 100);
  ASSERT_TRUE(found);
  EXPECT_NEAR(found->heights[1], 101.130, 1e-9);
  EXPECT_NEAR(found->heights[2], 98.245, 1e-9);
  EXPECT_NEAR(found->heights[3], 97.650, 1e-9);
}

TEST(Levels, ARodHeldUpsideDownReadsBelowNothing) {
  // The instrument stands at 101.5; a soffit 1.9 above it: the rod's foot is up there, the reading -1.9.
  const auto found = adjust_levels(2, 1, {{0, 0, 1.5, 1}, {0, 1, -1.9, 1}}, 0, 100);
  ASSERT_TRUE(found);
  EXPECT_NEAR(found->heights[1], 103.4, 1e-12);
}

TEST(Levels, PublishedLevelNetComesOutAsPrinted) {
  // GNU Gama's test collection: differences in height with sigmas in mm. Each is a set-up with two readings.
  const struct {
    int from, to;
    double rise, sigma;
  } lines[] = {{0, 1, 10.509, 6}, {1, 2, 5.360, 4},  {2, 3, -8.523, 5},
               {3, 0, -7.348, 3}, {1, 3, -3.167, 4}, {0, 2, 15.881, 12}};
  std::vector<RodReading> readings;
  for (int k = 0; k < 6; ++k) {
    const double each = lines[k].sigma * 1e-3 / std::sqrt(2.0);
    readings.push_back({k, lines[k].from, 20 + lines[k].rise, each});
    readings.push_back({k, lines[k].to, 20, each});
  }
  const auto found = adjust_levels(4, 6, readings, 0, 437.596);
  ASSERT_TRUE(found);
  EXPECT_NEAR(found->heights[1], 448.1087, 0.6e-4);
  EXPECT_NEAR(found->heights[2], 453.4685, 0.6e-4);
  EXPECT_NEAR(found->heights[3], 444.9436, 0.6e-4);
  EXPECT_EQ(found->freedom, 3);
  EXPECT_NEAR(found->s0, .651, 0.6e-3);
  EXPECT_NEAR(found->doubts[1] * found->s0 * 1e3, 2.30, 0.6e-2);
  EXPECT_NEAR(found->doubts[2] * found->s0 * 1e3, 2.64, 0.6e-2);
  EXPECT_NEAR(found->doubts[3] * found->s0 * 1e3, 1.76, 0.6e-2);
}

TEST(Levels, PointsThatNothingTiesToTheDatumAreNamed) {
  const auto found = adjust_levels(4, 2, {{0, 0, 1, 1}, {0, 1, 2, 1}, {1, 2, 1, 1}, {1, 3, 1, 1}}, 0, 0);
  ASSERT_FALSE(found);
  EXPECT_EQ(found.error().points, (std::vector<int>{2, 3}));
}

TEST(Levels, P1TwoPegTestOfATextbook) {
  // 80 m apart, from the middle 1.32 and 1.56; from 10 m beyond A 1.11 and 1.39: 0.05 m in 100 m.
  const double error = sight_error(1.56 - 1.32, 1.39 - 1.11, 10, 90);
  EXPECT_NEAR(error, .05 / 100, 1e-12);
  EXPECT_NEAR(without_sight_error(1.39, error, 90), 1.345, 1e-12);
  EXPECT_NEAR(without_sight_error(1.11, error, 10), 1.105, 1e-12);
}

TEST(Levels, P3TwoPegTestByItsDifferences) {
  // Observed .615, true .630, over 25 m of difference in sight: .060 m in 100 m, the line falling.
  EXPECT_NEAR(sight_error(.630, .615, 0, 25), -.060 / 100, 1e-12);
}

}  // namespace
}  // namespace stringcourse::ground
