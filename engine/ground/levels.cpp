#include "ground/levels.hpp"

#include <cmath>

#include "ground/symmetric.hpp"

namespace stringcourse::ground {
namespace {

std::size_t index(int number) { return static_cast<std::size_t>(number); }

/// Points 0 .. p-1, then set-ups p .. p+s-1, and the readings between them.
struct Graph {
  int points, setups;
  const std::vector<RodReading>& readings;
  [[nodiscard]] int nodes() const { return points + setups; }
  [[nodiscard]] int other_end(const RodReading& reading, int node) const {
    return node < points ? points + reading.setup : reading.point;
  }
  [[nodiscard]] bool touches(const RodReading& reading, int node) const {
    return reading.point == node || points + reading.setup == node;
  }
};

/// The reading by which each node was reached from the fixed point, -1 at it and where nothing leads.
struct Tree {
  std::vector<int> by;
  std::vector<bool> reached;
  std::vector<bool> used;  // by reading
};

Tree tree_from(const Graph& graph, int fixed) {
  Tree tree{std::vector<int>(index(graph.nodes()), -1), std::vector<bool>(index(graph.nodes()), false),
            std::vector<bool>(graph.readings.size(), false)};
  std::vector<int> queue{fixed};
  tree.reached[index(fixed)] = true;
  for (std::size_t next = 0; next < queue.size(); ++next) {
    for (std::size_t k = 0; k < graph.readings.size(); ++k) {
      if (!graph.touches(graph.readings[k], queue[next])) continue;
      const int other = graph.other_end(graph.readings[k], queue[next]);
      if (tree.reached[index(other)]) continue;
      tree.reached[index(other)] = true, tree.used[k] = true;
      tree.by[index(other)] = static_cast<int>(k);
      queue.push_back(other);
    }
  }
  return tree;
}

std::vector<int> way_home(const Graph& graph, const Tree& tree, int node) {
  std::vector<int> way;
  while (tree.by[index(node)] >= 0) {
    way.push_back(tree.by[index(node)]);
    node = graph.other_end(graph.readings[index(way.back())], node);
  }
  return way;
}

/// Heights added up along the tree alone.
std::vector<double> added_up(const Graph& graph, const Tree& tree, int fixed, double height) {
  std::vector<double> values(index(graph.nodes()), 0.0);
  values[index(fixed)] = height;
  for (int node = 0; node < graph.nodes(); ++node) {
    std::vector<int> way = way_home(graph, tree, node);
    double value = height;
    int at = fixed;
    for (std::size_t k = way.size(); k-- > 0;) {
      const RodReading& reading = graph.readings[index(way[k])];
      value += at < graph.points ? reading.rod : -reading.rod;
      at = graph.other_end(reading, at);
    }
    values[index(node)] = value;
  }
  return values;
}

std::vector<Loop> loops_of(const Graph& graph, const Tree& tree, int fixed, double height) {
  const std::vector<double> values = added_up(graph, tree, fixed, height);
  std::vector<Loop> loops;
  for (std::size_t k = 0; k < graph.readings.size(); ++k) {
    if (tree.used[k]) continue;
    const RodReading& reading = graph.readings[k];
    Loop loop{{static_cast<int>(k)}, values[index(graph.points + reading.setup)] - reading.rod - values[index(reading.point)], 0};
    std::vector<int> one = way_home(graph, tree, graph.points + reading.setup), other = way_home(graph, tree, reading.point);
    while (!one.empty() && !other.empty() && one.back() == other.back()) one.pop_back(), other.pop_back();
    loop.readings.insert(loop.readings.end(), one.begin(), one.end());
    loop.readings.insert(loop.readings.end(), other.begin(), other.end());
    double square = 0;
    for (const int number : loop.readings) square += graph.readings[index(number)].sigma * graph.readings[index(number)].sigma;
    loop.doubt = std::sqrt(square);
    loops.push_back(std::move(loop));
  }
  return loops;
}

}  // namespace

std::expected<Levelled, Loose> adjust_levels(int points, int setups, const std::vector<RodReading>& readings, int fixed, double height) {
  const Graph graph{points, setups, readings};
  const Tree tree = tree_from(graph, fixed);
  Loose loose;
  for (int point = 0; point < points; ++point) {
    if (!tree.reached[index(point)]) loose.points.push_back(point);
  }
  if (!loose.points.empty()) return std::unexpected(std::move(loose));
  // Unknown changes to the added-up values, so that large heights cost no digits. Unreached set-ups have no readings here.
  const std::vector<double> start = added_up(graph, tree, fixed, height);
  const std::size_t count = index(graph.nodes());
  Symmetric normal(count);
  std::vector<double> right(count, 0.0);
  for (std::size_t node = 0; node < count; ++node) {
    if (static_cast<int>(node) == fixed || !tree.reached[node]) normal.at(node, node) = 1;
  }
  const auto held = [&](std::size_t node) { return static_cast<int>(node) == fixed; };
  for (const RodReading& reading : readings) {
    const std::size_t point = index(reading.point), setup = index(points + reading.setup);
    const double weight = 1 / (reading.sigma * reading.sigma), misfit = reading.rod - (start[setup] - start[point]);
    if (!held(point)) normal.at(point, point) += weight, right[point] -= weight * misfit;
    normal.at(setup, setup) += weight, right[setup] += weight * misfit;
    if (!held(point)) normal.at(point, setup) -= weight, normal.at(setup, point) -= weight;
  }
  const auto inverse = inverse_of(normal);
  if (!inverse) return std::unexpected(std::move(loose));  // cannot be: every node hangs on the fixed point
  const std::vector<double> change = product(*inverse, right);
  Levelled result;
  for (std::size_t node = 0; node < count; ++node) {
    const bool is_point = static_cast<int>(node) < points;
    (is_point ? result.heights : result.instruments).push_back(start[node] + change[node]);
    if (is_point) result.doubts.push_back(held(node) ? 0 : std::sqrt(inverse->at(node, node)));
  }
  double squares = 0;
  for (const RodReading& reading : readings) {
    const double residual = result.instruments[index(reading.setup)] - result.heights[index(reading.point)] - reading.rod;
    result.residuals.push_back(residual);
    squares += residual * residual / (reading.sigma * reading.sigma);
  }
  result.loops = loops_of(graph, tree, fixed, height);
  result.freedom = static_cast<int>(result.loops.size());
  if (result.freedom > 0) result.s0 = std::sqrt(squares / result.freedom);
  return result;
}

}  // namespace stringcourse::ground
