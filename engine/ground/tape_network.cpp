#include "ground/tape_network.hpp"

#include <algorithm>
#include <cmath>
#include <map>
#include <optional>
#include <set>
#include <utility>

#include "ground/symmetric.hpp"
#include "measure/functions.hpp"

namespace stringcourse::ground {
namespace {

constexpr int kMostSteps = 60;
constexpr double kStill = 1e-11;  // of the net's size: a step so short changes nothing
constexpr double kSure = 0.95;

double distance(const Spot& a, const Spot& b) {
  const double dx = b.x - a.x, dy = b.y - a.y;
  return std::sqrt(dx * dx + dy * dy);
}

std::size_t index(int number) { return static_cast<std::size_t>(number); }

/// Four numbers of a row of the design matrix and where they stand: dx, dy of `from`, dx, dy of `to`. -1: not unknown.
struct Row {
  std::array<int, 4> columns;
  std::array<double, 4> values;
};

/// Which unknown each coordinate is, -1 where it is held.
struct Unknowns {
  std::vector<int> x, y;
  int count = 0;
};

Unknowns unknowns_of(const std::vector<NetPoint>& points, Datum datum) {
  Unknowns unknowns;
  for (std::size_t k = 0; k < points.size(); ++k) {
    const bool held = (datum == Datum::Fixed && points[k].fixed) || (datum == Datum::CornerAndSide && k == 0);
    unknowns.x.push_back(held ? -1 : unknowns.count++);
    unknowns.y.push_back(held ? -1 : unknowns.count++);
  }
  return unknowns;
}

Row row_of(const NetReading& reading, const std::vector<Spot>& places, const Unknowns& unknowns) {
  const Spot &a = places[index(reading.from)], &b = places[index(reading.to)];
  const double length = std::max(distance(a, b), 1e-12);
  const double dx = (b.x - a.x) / length / reading.sigma, dy = (b.y - a.y) / length / reading.sigma;
  return {{unknowns.x[index(reading.from)], unknowns.y[index(reading.from)], unknowns.x[index(reading.to)],
           unknowns.y[index(reading.to)]},
          {-dx, -dy, dx, dy}};
}

/// Constraint vectors, each of length 1 over all unknowns: what no distance tells.
std::vector<std::vector<double>> constraints_of(const std::vector<Spot>& places, const Unknowns& unknowns,
                                                Datum datum) {
  std::vector<std::vector<double>> all;
  const std::size_t count = index(unknowns.count);
  const auto add = [&](auto&& x_part, auto&& y_part) {
    std::vector<double> vector(count, 0.0);
    double square = 0;
    for (std::size_t k = 0; k < places.size(); ++k) {
      if (unknowns.x[k] < 0) continue;
      vector[index(unknowns.x[k])] = x_part(k), vector[index(unknowns.y[k])] = y_part(k);
      square += x_part(k) * x_part(k) + y_part(k) * y_part(k);
    }
    const double root = std::sqrt(square);
    for (double& value : vector) value /= root > 0 ? root : 1;
    all.push_back(std::move(vector));
  };
  if (datum == Datum::CornerAndSide) {
    // Point 1 does not move across its direction from point 0.
    const Spot &a = places[0], &b = places[1];
    add([&](std::size_t k) { return k == 1 ? -(b.y - a.y) : 0.0; },
        [&](std::size_t k) { return k == 1 ? b.x - a.x : 0.0; });
  }
  if (datum != Datum::Free) return all;
  Spot middle;
  for (const Spot& place : places)
    middle.x += place.x / static_cast<double>(places.size()), middle.y += place.y / static_cast<double>(places.size());
  add([](std::size_t) { return 1.0; }, [](std::size_t) { return 0.0; });
  add([](std::size_t) { return 0.0; }, [](std::size_t) { return 1.0; });
  add([&](std::size_t k) { return -(places[k].y - middle.y); }, [&](std::size_t k) { return places[k].x - middle.x; });
  return all;
}

/// One linearised net: normal equations, with the datum's constraints as unit rows of the net's own weight.
struct Step {
  Symmetric normal;
  std::vector<double> right;
  std::vector<Row> rows;
  std::vector<double> misfit;  // (measured - computed) / sigma
  std::vector<std::vector<double>> constraints;
  double weight = 1;
};

Step linearised(const std::vector<NetReading>& readings, const std::vector<Spot>& places, const Unknowns& unknowns,
                Datum datum) {
  const std::size_t count = index(unknowns.count);
  Step step{Symmetric(count), std::vector<double>(count, 0.0), {}, {}, constraints_of(places, unknowns, datum), 0};
  for (const NetReading& reading : readings) {
    const Row row = row_of(reading, places, unknowns);
    const double misfit =
        (reading.length - distance(places[index(reading.from)], places[index(reading.to)])) / reading.sigma;
    for (int i = 0; i < 4; ++i) {
      if (row.columns[index(i)] < 0) continue;
      const std::size_t r = index(row.columns[index(i)]);
      step.right[r] += row.values[index(i)] * misfit;
      for (int j = 0; j < 4; ++j) {
        if (row.columns[index(j)] >= 0)
          step.normal.at(r, index(row.columns[index(j)])) += row.values[index(i)] * row.values[index(j)];
      }
    }
    step.weight = std::max(step.weight, 1 / (reading.sigma * reading.sigma));
    step.rows.push_back(row);
    step.misfit.push_back(misfit);
  }
  for (const std::vector<double>& constraint : step.constraints) {
    for (std::size_t i = 0; i < count; ++i) {
      for (std::size_t j = 0; j < count; ++j) step.normal.at(i, j) += step.weight * constraint[i] * constraint[j];
    }
  }
  return step;
}

double size_of(const std::vector<Spot>& places) {
  double size = 0;
  for (const Spot& place : places) size = std::max(size, distance(places[0], place));
  return size > 0 ? size : 1;
}

/// One Gauss-Newton step; how far the farthest point moved.
double moved_by(std::vector<Spot>& places, const Unknowns& unknowns, const std::vector<double>& change) {
  double farthest = 0;
  for (std::size_t k = 0; k < places.size(); ++k) {
    if (unknowns.x[k] < 0) continue;
    const double dx = change[index(unknowns.x[k])], dy = change[index(unknowns.y[k])];
    places[k].x += dx, places[k].y += dy;
    farthest = std::max({farthest, dx < 0 ? -dx : dx, dy < 0 ? -dy : dy});
  }
  return farthest;
}

double quadratic(const Symmetric& matrix, const Row& row) {
  double sum = 0;
  for (std::size_t i = 0; i < 4; ++i) {
    for (std::size_t j = 0; j < 4; ++j) {
      if (row.columns[i] < 0 || row.columns[j] < 0) continue;
      sum += row.values[i] * row.values[j] * matrix.at(index(row.columns[i]), index(row.columns[j]));
    }
  }
  return sum;
}

/// The covariance of the unknowns. With M = N + w C C' (N the readings' part, C the constraints, w their weight) it is
/// M^-1 N M^-1 = M^-1 - w (M^-1 C)(M^-1 C)'.
Symmetric covariance_of(const Symmetric& inverse, const Step& step) {
  Symmetric covariance = inverse;
  for (const std::vector<double>& constraint : step.constraints) {
    const std::vector<double> along = product(inverse, constraint);
    for (std::size_t i = 0; i < along.size(); ++i) {
      for (std::size_t j = 0; j < along.size(); ++j) covariance.at(i, j) -= step.weight * along[i] * along[j];
    }
  }
  return covariance;
}

void judge(Adjusted& adjusted) {
  if (adjusted.freedom <= 0) return;
  adjusted.s0 = std::sqrt(adjusted.square_sum / adjusted.freedom);
  const int freedom = std::min(adjusted.freedom, 1000);
  adjusted.s0_least = std::sqrt(chi_square_quantile((1 - kSure) / 2, freedom) / freedom);
  adjusted.s0_most = std::sqrt(chi_square_quantile((1 + kSure) / 2, freedom) / freedom);
  adjusted.agreement = adjusted.s0 > adjusted.s0_most    ? Agreement::TooFar
                       : adjusted.s0 < adjusted.s0_least ? Agreement::TooNear
                                                         : Agreement::Agree;
}

/// The shortest and the longest reading of each line.
struct Extremes {
  int shortest, longest;
};
using Lines = std::map<std::pair<int, int>, Extremes>;

Lines lines_of(const std::vector<NetReading>& readings) {
  Lines lines;
  for (std::size_t k = 0; k < readings.size(); ++k) {
    const NetReading& reading = readings[k];
    const int number = static_cast<int>(k);
    const auto pair = std::minmax(reading.from, reading.to);
    Extremes& line = lines.try_emplace({pair.first, pair.second}, Extremes{number, number}).first->second;
    if (reading.length < readings[index(line.shortest)].length) line.shortest = number;
    if (reading.length > readings[index(line.longest)].length) line.longest = number;
  }
  return lines;
}

/// Three readings that no triangle has, the longest first: it exceeds the other two by more than 4 times their doubt.
std::optional<std::vector<int>> impossible_triangle(const std::vector<NetReading>& readings, int points) {
  const Lines lines = lines_of(readings);
  const auto line = [&](int a, int b) { return lines.find({std::min(a, b), std::max(a, b)}); };
  for (const auto& [ends, extremes] : lines) {
    for (int third = 0; third < points; ++third) {
      const auto one = line(ends.first, third), other = line(ends.second, third);
      if (one == lines.end() || other == lines.end()) continue;
      const NetReading &long_one = readings[index(extremes.longest)], &first = readings[index(one->second.shortest)],
                       &second = readings[index(other->second.shortest)];
      const double doubt = long_one.sigma * long_one.sigma + first.sigma * first.sigma + second.sigma * second.sigma;
      if (long_one.length <= first.length + second.length + 4 * std::sqrt(doubt)) continue;
      return std::vector{extremes.longest, one->second.shortest, other->second.shortest};
    }
  }
  return std::nullopt;
}

/// Why no shape was found: three readings that cannot be one, or readings and corners that belong to different shapes.
NetTrouble trouble_of(const std::vector<NetReading>& readings, int points) {
  auto three = impossible_triangle(readings, points);
  if (three) return {NetTrouble::Kind::ImpossibleTriangle, {}, *std::move(three)};
  return {NetTrouble::Kind::NoConvergence, {}, {}};
}

Adjusted result_of(const std::vector<NetReading>& readings, const std::vector<Spot>& places, const Unknowns& unknowns,
                   const Step& step, const Symmetric& inverse) {
  Adjusted adjusted;
  adjusted.places = places;
  const Symmetric covariance = covariance_of(inverse, step);
  for (std::size_t k = 0; k < places.size(); ++k) {
    if (unknowns.x[k] < 0) {
      adjusted.clouds.emplace_back();
      continue;
    }
    const std::size_t x = index(unknowns.x[k]), y = index(unknowns.y[k]);
    adjusted.clouds.push_back(
        {std::max(0.0, covariance.at(x, x)), covariance.at(x, y), std::max(0.0, covariance.at(y, y))});
  }
  for (std::size_t k = 0; k < readings.size(); ++k) {
    const double share = 1 - quadratic(covariance, step.rows[k]);
    Residual residual{-step.misfit[k] * readings[k].sigma, share > 1e-9 ? std::min(share, 1.0) : 0.0, 0};
    if (residual.redundancy > 0) residual.standardised = -step.misfit[k] / std::sqrt(residual.redundancy);
    adjusted.square_sum += step.misfit[k] * step.misfit[k];
    adjusted.residuals.push_back(residual);
  }
  const int held = static_cast<int>(step.constraints.size());
  adjusted.freedom = static_cast<int>(readings.size()) - (unknowns.count - held);
  judge(adjusted);
  return adjusted;
}

}  // namespace

Ellipse ellipse_of(const Cloud& cloud) {
  const double half_sum = (cloud.xx + cloud.yy) / 2, half_difference = (cloud.xx - cloud.yy) / 2;
  const double root = std::sqrt(half_difference * half_difference + cloud.xy * cloud.xy);
  Ellipse ellipse{std::sqrt(half_sum + root), std::sqrt(std::max(0.0, half_sum - root)), {1, 0}};
  // The eigenvector of the larger eigenvalue, from the row that is the longer one.
  const Spot one{cloud.xy, root - half_difference}, other{root + half_difference, cloud.xy};
  const double one_size = one.x * one.x + one.y * one.y, other_size = other.x * other.x + other.y * other.y;
  const Spot& longer = one_size > other_size ? one : other;
  const double size = std::sqrt(std::max(one_size, other_size));
  if (size > 0) ellipse.direction = {longer.x / size, longer.y / size};
  return ellipse;
}

std::expected<Adjusted, NetTrouble> adjust(const std::vector<NetPoint>& points, const std::vector<NetReading>& readings,
                                           Datum datum) {
  if (auto pairs = missing_pairs(points, readings, datum); !pairs.empty()) {
    return std::unexpected(NetTrouble{NetTrouble::Kind::NotDeterminate, std::move(pairs), {}});
  }
  const Unknowns unknowns = unknowns_of(points, datum);
  std::vector<Spot> places;
  for (const NetPoint& point : points) places.push_back(point.about);
  const double size = size_of(places);
  for (int step_number = 0; step_number < kMostSteps; ++step_number) {
    const Step step = linearised(readings, places, unknowns, datum);
    const auto inverse = inverse_of(step.normal);
    if (!inverse) break;
    if (moved_by(places, unknowns, product(*inverse, step.right)) > kStill * size) continue;
    const Step last = linearised(readings, places, unknowns, datum);
    const auto last_inverse = inverse_of(last.normal);
    if (!last_inverse) break;
    Adjusted result = result_of(readings, places, unknowns, last, *last_inverse);
    // With nothing to spare every reading is met, unless no shape has them.
    if (result.freedom <= 0 && result.square_sum > 1) break;
    return result;
  }
  return std::unexpected(trouble_of(readings, static_cast<int>(points.size())));
}

std::vector<std::array<int, 2>> missing_pairs(const std::vector<NetPoint>& points,
                                              const std::vector<NetReading>& readings, Datum datum) {
  const Unknowns unknowns = unknowns_of(points, datum);
  std::vector<Spot> places;
  for (const NetPoint& point : points) places.push_back(point.about);
  // Rows made perpendicular to one another, one by one: what is left of a row is what it newly tells.
  std::vector<std::vector<double>> basis = constraints_of(places, unknowns, datum);
  const auto take = [&](std::vector<double> row) {
    for (int twice = 0; twice < 2; ++twice) {
      for (const std::vector<double>& one : basis) {
        double along = 0;
        for (std::size_t k = 0; k < row.size(); ++k) along += row[k] * one[k];
        for (std::size_t k = 0; k < row.size(); ++k) row[k] -= along * one[k];
      }
    }
    double square = 0;
    for (const double value : row) square += value * value;
    if (square < 1e-6) return false;  // a thousandth of the row: nothing that a tape could tell
    for (double& value : row) value /= std::sqrt(square);
    basis.push_back(std::move(row));
    return true;
  };
  const auto row_between = [&](int from, int to) {
    const Row row = row_of({from, to, 1, 1}, places, unknowns);
    std::vector<double> full(index(unknowns.count), 0.0);
    for (std::size_t k = 0; k < 4; ++k) {
      if (row.columns[k] >= 0) full[index(row.columns[k])] += row.values[k];
    }
    return full;
  };
  const std::size_t wanted = index(unknowns.count);
  std::set<std::pair<int, int>> taken;  // a line read again tells nothing new of the shape
  for (const NetReading& reading : readings) {
    if (basis.size() == wanted) return {};
    const auto pair = std::minmax(reading.from, reading.to);
    if (taken.emplace(pair.first, pair.second).second) take(row_between(reading.from, reading.to));
  }
  std::vector<std::array<int, 2>> missing;
  for (int from = 0; from < static_cast<int>(points.size()); ++from) {
    for (int to = from + 1; to < static_cast<int>(points.size()) && basis.size() < wanted; ++to) {
      if (take(row_between(from, to))) missing.push_back({from, to});
    }
  }
  return missing;
}

}  // namespace stringcourse::ground
