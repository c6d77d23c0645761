// Many rod readings: the work grows as their number, and the result is that of the plain normal equations.
#include <gtest/gtest.h>

#include <cmath>
#include <random>

#include "ground/as_found.hpp"
#include "ground/levels.hpp"
#include "tapings.hpp"
#include "unit/kiln_house_site.hpp"

namespace stringcourse::ground {
namespace {

/// Solves by elimination with the largest pivot, all columns at once: rows of [matrix | right sides].
std::vector<std::vector<double>> solved(std::vector<std::vector<double>> rows) {
  const std::size_t count = rows.size();
  for (std::size_t column = 0; column < count; ++column) {
    std::size_t pivot = column;
    for (std::size_t row = column; row < count; ++row) {
      if (std::abs(rows[row][column]) > std::abs(rows[pivot][column])) pivot = row;
    }
    std::swap(rows[column], rows[pivot]);
    for (std::size_t row = 0; row < count; ++row) {
      if (row == column) continue;
      const double factor = rows[row][column] / rows[column][column];
      for (std::size_t k = column; k < rows[row].size(); ++k) rows[row][k] -= factor * rows[column][k];
    }
  }
  for (std::size_t row = 0; row < count; ++row) {
    const double pivot = rows[row][row];
    for (double& value : rows[row]) value /= pivot;
  }
  return rows;
}

/// All unknowns in one system, point 0 held at 0. By unknown: its value, and its row of the inverse.
std::vector<std::vector<double>> slow_twin(int points, int setups, const std::vector<RodReading>& readings) {
  const auto count = static_cast<std::size_t>(points + setups);
  std::vector<std::vector<double>> rows(count, std::vector<double>(2 * count + 1, 0.0));
  for (std::size_t k = 0; k < count; ++k) rows[k][count + 1 + k] = 1;
  rows[0][0] = 1;
  for (const RodReading& one : readings) {
    // rod = instrument - height
    const auto point = static_cast<std::size_t>(one.point), setup = static_cast<std::size_t>(points + one.setup);
    const double weight = 1 / (one.sigma * one.sigma);
    rows[setup][setup] += weight, rows[setup][count] += weight * one.rod;
    if (point == 0) continue;
    rows[setup][point] -= weight, rows[point][setup] -= weight, rows[point][point] += weight;
    rows[point][count] -= weight * one.rod;
  }
  return solved(std::move(rows));
}

TEST(LevelsMany, HeightsAndDoubtsAreThoseOfAllUnknownsSolvedTogether) {
  std::minstd_rand dice(28);
  std::normal_distribution<double> error(0, 0.001);
  for (int round = 0; round < 40; ++round) {
    const int points = 3 + static_cast<int>(dice() % 20), setups = 1 + static_cast<int>(dice() % 6);
    std::vector<double> heights{0}, instruments;
    for (int k = 1; k < points; ++k) heights.push_back(static_cast<double>(dice() % 2000) / 1000);
    for (int k = 0; k < setups; ++k) instruments.push_back(3 + static_cast<double>(dice() % 1000) / 1000);
    std::vector<RodReading> readings;
    const auto read = [&](int setup, int point) {
      const double sigma = 0.001 * (1 + static_cast<double>(dice() % 3));
      readings.push_back(
          {setup, point,
           instruments[static_cast<std::size_t>(setup)] - heights[static_cast<std::size_t>(point)] + error(dice),
           sigma});
    };
    for (int setup = 0; setup < setups; ++setup) read(setup, 0), read(setup, 0);
    for (int point = 1; point < points; ++point) read(static_cast<int>(dice() % static_cast<unsigned>(setups)), point);
    for (int more = 0; more < 2 * points; ++more)
      read(static_cast<int>(dice() % static_cast<unsigned>(setups)),
           static_cast<int>(dice() % static_cast<unsigned>(points)));
    const auto found = adjust_levels(points, setups, readings, 0, 0);
    ASSERT_TRUE(found);
    const auto slow = slow_twin(points, setups, readings);
    const std::size_t count = slow.size();
    for (std::size_t k = 0; k < static_cast<std::size_t>(points); ++k) {
      // Heights of a few metres in doubles, a few dozen unknowns: 1e-9 leaves six digits for rounding.
      EXPECT_NEAR(found->heights[k], slow[k][count], 1e-9);
      EXPECT_NEAR(found->doubts[k], k == 0 ? 0 : std::sqrt(slow[k][count + 1 + k]), 1e-9);
    }
  }
}

std::vector<RodReading> many(int count, int setups) {
  std::vector<RodReading> readings;
  for (int k = 0; k < count; ++k) readings.push_back({k % setups, k < setups ? 0 : k - setups + 1, 1.5, 0.001});
  return readings;
}

TEST(LevelsMany, TenTimesTheReadingsAreTenTimesTheWork) {
  for (const int setups : {1, 20}) {
    const auto few = adjust_levels(2'000 - setups + 1, setups, many(2'000, setups), 0, 0);
    const auto more = adjust_levels(20'000 - setups + 1, setups, many(20'000, setups), 0, 0);
    ASSERT_TRUE(few && more);
    EXPECT_LE(more->steps, 10 * few->steps);
  }
}

TEST(LevelsMany, AHundredThousandReadingsAreLevelled) {
  // As many as a job may have. All unknowns in one matrix would take 80 GB.
  test::Site site = test::kiln_house_site();
  const char* corners[] = {"A", "B", "C", "D"};
  for (int k = 0; k < 100'000; ++k) {
    const std::string station = k < 4 ? corners[k] : "p" + std::to_string(k);
    site.job.readings.push_back(ground_test::rod(std::to_string(k), station, Length::inches(50)));
  }
  const AsFound found = as_found(site.job, site.building, site.layout);
  ASSERT_TRUE(found.levels && found.levels->bed);
  EXPECT_EQ(found.levels->stations.size(), 100'000u);
  EXPECT_EQ(found.levels->bed->verdict, Verdict::Fits);
}

TEST(LevelsMany, MoreSetUpsThanTheLimitAreSaidSo) {
  test::Site site = test::kiln_house_site();
  for (int k = 0; k <= kMostSetups; ++k) {
    site.job.readings.push_back(ground_test::rod("a" + std::to_string(k), "A", Length::inches(50), std::to_string(k)));
  }
  const AsFound found = as_found(site.job, site.building, site.layout);
  ASSERT_TRUE(found.levels);
  EXPECT_FALSE(found.levels->bed);
  ASSERT_EQ(found.findings.size(), 1u);
  EXPECT_EQ(found.findings[0].code, Code("too-many-setups"));
  site.job.readings.pop_back();
  EXPECT_TRUE(as_found(site.job, site.building, site.layout).levels->bed);
}

}  // namespace
}  // namespace stringcourse::ground
