#include "ground/hull.hpp"

#include "measure/sorting.hpp"

namespace stringcourse::ground {

std::vector<std::size_t> lower_hull(const std::vector<std::pair<double, double>>& points) {
  std::vector<std::size_t> order;
  for (std::size_t k = 0; k < points.size(); ++k) order.push_back(k);
  sort_stably(order, [&](std::size_t a, std::size_t b) { return points[a] < points[b]; });
  std::vector<std::size_t> hull;
  const auto turns_up = [&](std::size_t a, std::size_t b, std::size_t c) {
    const double one = (points[b].first - points[a].first) * (points[c].second - points[a].second);
    const double other = (points[b].second - points[a].second) * (points[c].first - points[a].first);
    return one > other;
  };
  for (const std::size_t next : order) {
    if (!hull.empty() && points[hull.back()].first == points[next].first) continue;  // the lowest came first
    while (hull.size() > 1 && !turns_up(hull[hull.size() - 2], hull.back(), next)) hull.pop_back();
    hull.push_back(next);
  }
  return hull;
}

}  // namespace stringcourse::ground
