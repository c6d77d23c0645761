#pragma once
// Readings of pegs that stand off the plan, by the geometry alone.
#include <cmath>
#include <string>
#include <utility>
#include <vector>

#include "job/job.hpp"
#include "walls/building.hpp"

namespace stringcourse::ground_test {

inline double in_metres(Length length) { return static_cast<double>(length.in_nanometres()) * 1e-9; }
inline Length metres(double value) { return Length::nanometres(std::llround(value * 1e9)); }

inline Reading taped(std::string id, std::string from, std::string to, Length length) {
  Reading reading;
  reading.id = std::move(id);
  reading.tape = TapeReading{std::move(from), std::move(to), length};
  return reading;
}

inline Reading rod(std::string id, std::string station, Length value, std::string setup = "1") {
  Reading reading;
  reading.id = std::move(id);
  reading.rod = stringcourse::RodReading{std::move(setup), std::move(station), value, {}, {}, {}, {}, {}};
  return reading;
}

/// East and north, metres.
using Off = std::pair<double, double>;

/// The distance between pegs of two corners that stand `off` from the plan, by corner.
inline double between(const Building& building, const std::vector<Off>& off, std::size_t a, std::size_t b) {
  const auto x = [&](std::size_t k) { return in_metres(building.corners[k].point.x) + off[k].first; };
  const auto y = [&](std::size_t k) { return in_metres(building.corners[k].point.y) + off[k].second; };
  return std::sqrt((x(b) - x(a)) * (x(b) - x(a)) + (y(b) - y(a)) * (y(b) - y(a)));
}

/// Every line once.
inline std::vector<Reading> tapings(const Building& building, const std::vector<Off>& off) {
  std::vector<Reading> readings;
  for (std::size_t a = 0; a < building.corners.size(); ++a) {
    for (std::size_t b = a + 1; b < building.corners.size(); ++b) {
      readings.push_back(taped("t" + std::to_string(readings.size()), building.corners[a].name,
                               building.corners[b].name, metres(between(building, off, a, b))));
    }
  }
  return readings;
}

}  // namespace stringcourse::ground_test
