#include "ground/hull.hpp"

#include <gtest/gtest.h>

#include <algorithm>
#include <random>

namespace stringcourse::ground {
namespace {

TEST(Hull, NoLineThatLiesUnderItsPointsCutsAnyOther) {
  std::minstd_rand dice(7);
  for (int round = 0; round < 200; ++round) {
    std::vector<std::pair<double, double>> points;
    for (int k = 0; k < 40; ++k) points.push_back({static_cast<double>(dice() % 30), static_cast<double>(dice() % 50)});
    const std::vector<std::size_t> hull = lower_hull(points);
    // For any slope, the point that is lowest against it is as low on the hull as among all. Whole numbers: exact.
    for (int slope = -60; slope <= 60; ++slope) {
      const auto height = [&](const std::pair<double, double>& one) { return one.second - slope * one.first; };
      double all = 1e9, kept = 1e9;
      for (const auto& one : points) all = std::min(all, height(one));
      for (const std::size_t k : hull) kept = std::min(kept, height(points[k]));
      ASSERT_EQ(kept, all);
    }
    // And none of the kept is one too many: each lies under the chord of its neighbours.
    for (std::size_t k = 1; k + 1 < hull.size(); ++k) {
      const auto &a = points[hull[k - 1]], &b = points[hull[k]], &c = points[hull[k + 1]];
      EXPECT_LT((b.second - a.second) * (c.first - a.first), (c.second - a.second) * (b.first - a.first));
    }
  }
}

}  // namespace
}  // namespace stringcourse::ground
