// The ground's small solvers against others: tape nets against Householder QR in long doubles, margins against GLPK.
#include <glpk.h>
#include <gtest/gtest.h>

#include <array>
#include <cmath>
#include <random>
#include <vector>

#include "ground/levels.hpp"
#include "ground/max_margin.hpp"
#include "ground/tape_network.hpp"

namespace stringcourse::ground {
namespace {

using Real = long double;
using Matrix = std::vector<std::vector<Real>>;

/// Least squares of A x = b by Householder reflections: x of least residual, A of full column rank.
std::vector<Real> least_squares(Matrix a, std::vector<Real> b) {
  const std::size_t rows = a.size(), columns = a[0].size();
  for (std::size_t k = 0; k < columns; ++k) {
    Real size = 0;
    for (std::size_t i = k; i < rows; ++i) size += a[i][k] * a[i][k];
    size = std::sqrt(size);
    std::vector<Real> mirror(rows, 0);
    for (std::size_t i = k; i < rows; ++i) mirror[i] = a[i][k];
    mirror[k] += a[k][k] < 0 ? -size : size;
    Real square = 0;
    for (const Real value : mirror) square += value * value;
    const auto reflect = [&](auto&& at) {
      Real along = 0;
      for (std::size_t i = k; i < rows; ++i) along += mirror[i] * at(i);
      for (std::size_t i = k; i < rows; ++i) at(i) -= 2 * along / square * mirror[i];
    };
    for (std::size_t j = k; j < columns; ++j) reflect([&](std::size_t i) -> Real& { return a[i][j]; });
    reflect([&](std::size_t i) -> Real& { return b[i]; });
  }
  std::vector<Real> x(columns);
  for (std::size_t k = columns; k-- > 0;) {
    Real sum = b[k];
    for (std::size_t j = k + 1; j < columns; ++j) sum -= a[k][j] * x[j];
    x[k] = sum / a[k][k];
  }
  return x;
}

/// Gauss-Newton by QR, points 0 and 1 fixed.
std::vector<Spot> adjusted_by_qr(const std::vector<NetPoint>& points, const std::vector<NetReading>& readings) {
  std::vector<std::array<Real, 2>> places;
  for (const NetPoint& point : points) places.push_back({point.about.x, point.about.y});
  for (int step = 0; step < 40; ++step) {
    Matrix a(readings.size(), std::vector<Real>(2 * (points.size() - 2), 0));
    std::vector<Real> b(readings.size());
    for (std::size_t r = 0; r < readings.size(); ++r) {
      const std::size_t from = static_cast<std::size_t>(readings[r].from),
                        to = static_cast<std::size_t>(readings[r].to);
      const Real dx = places[to][0] - places[from][0], dy = places[to][1] - places[from][1],
                 length = std::sqrt(dx * dx + dy * dy);
      const Real sigma = readings[r].sigma;
      b[r] = (readings[r].length - length) / sigma;
      const auto put = [&](std::size_t point, Real sign) {
        if (point < 2) return;
        a[r][2 * (point - 2)] = sign * dx / length / sigma, a[r][2 * (point - 2) + 1] = sign * dy / length / sigma;
      };
      put(from, -1), put(to, 1);
    }
    const std::vector<Real> change = least_squares(std::move(a), std::move(b));
    for (std::size_t k = 2; k < points.size(); ++k)
      places[k][0] += change[2 * (k - 2)], places[k][1] += change[2 * (k - 2) + 1];
  }
  std::vector<Spot> spots;
  for (const auto& [x, y] : places) spots.push_back({static_cast<double>(x), static_cast<double>(y)});
  return spots;
}

TEST(GroundOracle, RandomTapeNetsComeOutAsByHouseholderReflections) {
  // Both iterate to rest; the promise is 1e-10 of the net's size (60 m): 6e-9 m.
  std::mt19937 dice(17);
  std::uniform_real_distribution<double> place(0, 60), spread(0.001, 0.01);
  std::normal_distribution<double> unit(0, 1);
  for (int round = 0; round < 60; ++round) {
    const int count = 4 + round % 9;
    std::vector<NetPoint> points;
    for (int k = 0; k < count; ++k) points.push_back({{place(dice), place(dice)}, k < 2});
    std::vector<NetReading> readings;
    for (int from = 0; from < count; ++from) {
      for (int to = from + 1; to < count; ++to) {
        if (to < 2) continue;
        const Spot a = points[static_cast<std::size_t>(from)].about, b = points[static_cast<std::size_t>(to)].about;
        const double sigma = spread(dice);
        readings.push_back({from, to, std::hypot(b.x - a.x, b.y - a.y) + sigma * unit(dice), sigma});
      }
    }
    for (int k = 2; k < count; ++k) points[static_cast<std::size_t>(k)].about.x += 0.2 * unit(dice);
    const auto found = adjust(points, readings, Datum::Fixed);
    ASSERT_TRUE(found);
    const std::vector<Spot> twin = adjusted_by_qr(points, readings);
    for (std::size_t k = 0; k < points.size(); ++k) {
      EXPECT_NEAR(found->places[k].x, twin[k].x, 6e-9) << "round " << round;
      EXPECT_NEAR(found->places[k].y, twin[k].y, 6e-9) << "round " << round;
    }
  }
}

double margin_by_glpk(const std::vector<Limit>& limits) {
  glp_prob* problem = glp_create_prob();
  glp_set_obj_dir(problem, GLP_MAX);
  glp_add_cols(problem, 4);
  for (int column = 1; column <= 4; ++column) glp_set_col_bnds(problem, column, GLP_FR, 0, 0);
  glp_set_obj_coef(problem, 4, 1);
  glp_add_rows(problem, static_cast<int>(limits.size()));
  for (int row = 1; row <= static_cast<int>(limits.size()); ++row) {
    const Limit& limit = limits[static_cast<std::size_t>(row - 1)];
    const int columns[] = {0, 1, 2, 3, 4};
    const double factors[] = {0, limit.a[0], limit.a[1], limit.a[2], limit.share};
    glp_set_mat_row(problem, row, 4, columns, factors);
    glp_set_row_bnds(problem, row, GLP_UP, 0, limit.limit);
  }
  glp_smcp wishes;
  glp_init_smcp(&wishes);
  wishes.msg_lev = GLP_MSG_OFF;
  EXPECT_EQ(glp_simplex(problem, &wishes), 0);
  EXPECT_EQ(glp_get_status(problem), GLP_OPT);
  const double margin = glp_get_obj_val(problem);
  glp_delete_prob(problem);
  return margin;
}

TEST(GroundOracle, RandomMarginsAreGlpks) {
  // Limits of size about 1; GLPK's own tolerance is 1e-7, ours 1e-9.
  std::mt19937 dice(23);
  std::uniform_real_distribution<double> factor(-1, 1), limit(-1, 1);
  for (int round = 0; round < 300; ++round) {
    std::vector<Limit> limits;
    // A box keeps the margin finite: x in -1 .. 1 each way.
    for (std::size_t axis = 0; axis < 3; ++axis) {
      for (const double sign : {1.0, -1.0}) {
        Limit box{{0, 0, 0}, 0, 1};
        box.a[axis] = sign;
        limits.push_back(box);
      }
    }
    for (int k = 0; k < 5 + round % 60; ++k)
      limits.push_back({{factor(dice), factor(dice), factor(dice)}, 1, limit(dice)});
    const auto found = best_margin(limits);
    ASSERT_TRUE(found);
    EXPECT_NEAR(found->margin, margin_by_glpk(limits), 1e-6) << "round " << round;
    for (const Limit& one : limits) {
      EXPECT_LE(one.a[0] * found->x[0] + one.a[1] * found->x[1] + one.a[2] * found->x[2] + one.share * found->margin,
                one.limit + 1e-9);
    }
  }
}

/// A random net of rod readings: every point from at least two set-ups, so that loops close.
std::vector<RodReading> random_levels(std::mt19937& dice, int points, int setups, const std::vector<double>& heights,
                                      double sigma) {
  std::uniform_real_distribution<double> height(1, 2);
  std::vector<double> instruments;
  for (int k = 0; k < setups; ++k) instruments.push_back(height(dice));
  std::normal_distribution<double> unit(0, 1);
  std::vector<RodReading> readings;
  for (int setup = 0; setup < setups; ++setup) {
    for (int point = 0; point < points; ++point) {
      if ((point + setup) % 3 == 2) continue;  // not every point is seen from everywhere
      readings.push_back(
          {setup, point,
           instruments[static_cast<std::size_t>(setup)] - heights[static_cast<std::size_t>(point)] + sigma * unit(dice),
           sigma});
    }
  }
  return readings;
}

TEST(GroundOracle, RandomLevelNetsComeOutAsByHouseholderReflections) {
  // Normal equations of a few dozen readings of one weight against reflections in long doubles: both lose at most about
  // condition x 1e-16 x 2 m; the nets' condition is below 1e3.
  std::mt19937 dice(31);
  std::uniform_real_distribution<double> height(0, 1);
  for (int round = 0; round < 60; ++round) {
    const int points = 3 + round % 12, setups = 3 + round % 5;
    std::vector<double> heights{0};
    for (int k = 1; k < points; ++k) heights.push_back(height(dice));
    const std::vector<RodReading> readings = random_levels(dice, points, setups, heights, 0.001);
    const auto found = adjust_levels(points, setups, readings, 0, 0);
    ASSERT_TRUE(found);
    Matrix a(readings.size(), std::vector<Real>(static_cast<std::size_t>(points - 1 + setups), 0));
    std::vector<Real> b;
    for (std::size_t r = 0; r < readings.size(); ++r) {  // instrument - height = reading
      a[r][static_cast<std::size_t>(points - 1 + readings[r].setup)] = 1;
      if (readings[r].point > 0) a[r][static_cast<std::size_t>(readings[r].point - 1)] = -1;
      b.push_back(readings[r].rod);
    }
    const std::vector<Real> twin = least_squares(std::move(a), std::move(b));
    for (int k = 1; k < points; ++k)
      EXPECT_NEAR(found->heights[static_cast<std::size_t>(k)],
                  static_cast<double>(twin[static_cast<std::size_t>(k - 1)]), 1e-12)
          << "round " << round;
  }
}

TEST(GroundOracle, HeightsScatterAsTheirDoubtsSay) {
  // 4000 nets: the scatter of each height over its stated doubt is 1 within 4 / sqrt(2 x 4000) (four standard
  // deviations).
  std::mt19937 dice(37);
  const int points = 6, setups = 4, rounds = 4000;
  const std::vector<double> heights{0, 0.1, 0.2, 0.15, 0.05, 0.3};
  std::vector<double> squares(points, 0), doubts;
  for (int round = 0; round < rounds; ++round) {
    const auto found = adjust_levels(points, setups, random_levels(dice, points, setups, heights, 0.001), 0, 0);
    ASSERT_TRUE(found);
    doubts = found->doubts;
    for (std::size_t k = 1; k < heights.size(); ++k)
      squares[k] += (found->heights[k] - heights[k]) * (found->heights[k] - heights[k]);
  }
  for (std::size_t k = 1; k < heights.size(); ++k)
    EXPECT_NEAR(std::sqrt(squares[k] / rounds) / doubts[k], 1, 4 / std::sqrt(2.0 * rounds));
}

}  // namespace
}  // namespace stringcourse::ground
