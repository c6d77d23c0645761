#pragma once
// Nets whose results are published (the test collection of GNU Gama, a general survey-adjustment library), and the
// small rectangles of the closed forms. Millimetres and metres as printed there.
#include <cmath>
#include <random>
#include <vector>

#include "ground/tape_network.hpp"

namespace stringcourse::ground_test {

using namespace stringcourse::ground;

struct Net {
  std::vector<NetPoint> points;
  std::vector<NetReading> readings;
};

/// Four pegs, every line taped once: the order AB BC CD DA AC BD of the fixtures. Inches.
inline Net rectangle(double a, double b, const std::vector<double>& lengths, double sigma = 1.0 / 16) {
  constexpr int kPairs[6][2] = {{0, 1}, {1, 2}, {2, 3}, {3, 0}, {0, 2}, {1, 3}};
  Net net{{{{0, 0}, false}, {{a, 0}, false}, {{a, b}, false}, {{0, b}, false}}, {}};
  for (std::size_t k = 0; k < lengths.size(); ++k) {
    net.readings.push_back({kPairs[k % 6][0], kPairs[k % 6][1], lengths[k], sigma});
  }
  return net;
}

inline std::vector<double> true_lengths(double a, double b) {
  const double d = std::sqrt(a * a + b * b);
  return {a, b, a, b, d, d};
}

}  // namespace stringcourse::ground_test
