#pragma once
// Of many points only those that a straight line from below can touch: what a linear limit has to keep.
#include <cstddef>
#include <utility>
#include <vector>

namespace stringcourse::ground {

/// Indices of the points (x, y) on the lower convex hull, by rising x; of points with one x the lowest. n log n.
[[nodiscard]] std::vector<std::size_t> lower_hull(const std::vector<std::pair<double, double>>& points);

}  // namespace stringcourse::ground
