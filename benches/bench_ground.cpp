// A net far larger than a small building's: 50 points, 500 tapings, hung free.
#include <cmath>
#include <random>

#include "benches/figure.hpp"
#include "ground/tape_network.hpp"

int main() {
  using namespace stringcourse;
  std::mt19937 dice(1);
  std::uniform_real_distribution<double> place(0, 40);
  std::normal_distribution<double> error(0, 0.002);
  std::vector<ground::NetPoint> points;
  for (int k = 0; k < 50; ++k) points.push_back({{place(dice), place(dice)}, false});
  std::vector<ground::NetReading> readings;
  for (int k = 0; k < 500; ++k) {
    const int from = k % 50, to = (from + 1 + k / 50) % 50;
    const ground::Spot a = points[static_cast<std::size_t>(from)].about, b = points[static_cast<std::size_t>(to)].about;
    readings.push_back(
        {from, to, std::sqrt((b.x - a.x) * (b.x - a.x) + (b.y - a.y) * (b.y - a.y)) + error(dice), 0.002});
  }
  const double seconds = benches::median_seconds(11, [&] {
    if (!ground::adjust(points, readings, ground::Datum::Free)) benches::give_up("the net is not determinate");
  });
  benches::print_at_most("ground_net_50_points_500_readings", seconds * 1000, "ms", 20);
}
