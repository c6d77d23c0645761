#include "ground/slab_fit.hpp"

#include <algorithm>
#include <cmath>
#include <map>

#include "ground/hull.hpp"
#include "ground/max_margin.hpp"
#include "measure/metres.hpp"
#include "measure/sorting.hpp"

namespace stringcourse::ground {
namespace {

/// Towards minus infinity: rooms are never told larger than they are by more than the solver's own 1e-9.
Length down(double value) { return Length::nanometres(static_cast<std::int64_t>(std::floor(value * 1e9))); }

struct Frame {
  Spot middle;
  double size = 1;  // farthest clearance from the middle
};

Frame frame_of(const std::vector<Clearance>& clearances) {
  Frame frame;
  double west = clearances[0].at.x, east = west, south = clearances[0].at.y, north = south;
  for (const Clearance& one : clearances) {
    west = std::min(west, one.at.x), east = std::max(east, one.at.x);
    south = std::min(south, one.at.y), north = std::max(north, one.at.y);
  }
  frame.middle = {(west + east) / 2, (south + north) / 2};
  const double x = (east - west) / 2, y = (north - south) / 2;
  frame.size = std::max(1.0, std::sqrt(x * x + y * y));
  return frame;
}

/// How far a turn moves a place in the direction of its clearance, for each unit of turn times size: a turn t moves it
/// by
/// (-t y, t x).
double arm(const Clearance& one, const Frame& frame) {
  const double x = (one.at.x - frame.middle.x) / frame.size, y = (one.at.y - frame.middle.y) / frame.size;
  return -y * one.direction.x + x * one.direction.y;
}

/// Of all that look one way only those that some turn makes the tightest: n log n, and few are left.
std::vector<std::size_t> tightest_of(const std::vector<Clearance>& clearances, const Frame& frame) {
  std::map<std::pair<double, double>, std::vector<std::size_t>> ways;
  for (std::size_t k = 0; k < clearances.size(); ++k) {
    ways[{clearances[k].direction.x, clearances[k].direction.y}].push_back(k);
  }
  std::vector<std::size_t> tightest;
  for (const auto& [direction, numbers] : ways) {
    std::vector<std::pair<double, double>> points;
    for (const std::size_t k : numbers) points.emplace_back(arm(clearances[k], frame), metres(clearances[k].room));
    // room - turn x arm is least on the lower hull.
    for (const std::size_t on_hull : lower_hull(points)) tightest.push_back(numbers[on_hull]);
  }
  sort_stably(tightest);
  return tightest;
}

}  // namespace

double greatest_turn(double size) { return std::sqrt(2 * metres(Length::sixty_fourths(1)) / size); }

double room_after(const Clearance& clearance, const SlabFit& fit) {
  const double x = clearance.at.x - fit.middle.x, y = clearance.at.y - fit.middle.y;
  const double east = metres(fit.east) - fit.turn * y, north = metres(fit.north) + fit.turn * x;
  return metres(clearance.room) - (east * clearance.direction.x + north * clearance.direction.y);
}

SlabFit best_fit(const std::vector<Clearance>& clearances, Length farthest) {
  const Frame frame = frame_of(clearances);
  // Unknowns: shift east, shift north, and turn times size, so that all three are lengths. In units of `farthest`.
  const double unit = std::max(metres(farthest), 1e-3);
  std::vector<Limit> limits;
  const std::vector<std::size_t> tightest = tightest_of(clearances, frame);
  for (const std::size_t number : tightest) {
    const Clearance& one = clearances[number];
    limits.push_back({{one.direction.x, one.direction.y, arm(one, frame)}, 1, metres(one.room) / unit});
  }
  const double turn_most = greatest_turn(frame.size) * frame.size / unit;
  for (const double sign : {1.0, -1.0}) {
    limits.push_back({{sign, 0, 0}, 0, 1});
    limits.push_back({{0, sign, 0}, 0, 1});
    limits.push_back({{0, 0, sign}, 0, turn_most});
  }
  SlabFit fit;
  fit.middle = frame.middle;
  fit.room_before = clearances[0].room;
  for (const Clearance& one : clearances) fit.room_before = std::min(fit.room_before, one.room);
  const auto best = best_margin(limits);
  fit.room = fit.room_before;
  if (!best) return fit;
  fit.east = length_of(best->x[0] * unit), fit.north = length_of(best->x[1] * unit);
  fit.turn = best->x[2] * unit / frame.size;
  fit.room = down(best->margin * unit);
  for (const int number : best->binding) {
    if (number < static_cast<int>(tightest.size()))
      fit.tight.push_back(static_cast<int>(tightest[static_cast<std::size_t>(number)]));
  }
  return fit;
}

}  // namespace stringcourse::ground
