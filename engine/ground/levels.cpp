#include "ground/levels.hpp"

#include <algorithm>
#include <cmath>
#include <span>

#include "ground/symmetric.hpp"

namespace stringcourse::ground {
namespace {

std::size_t index(int number) { return static_cast<std::size_t>(number); }

/// Points 0 .. p-1, then set-ups p .. p+s-1, and the readings at each of them in their order.
class Graph {
 public:
  Graph(int points, int setups, const std::vector<RodReading>& readings)
      : points(points),
        setups(setups),
        readings(readings),
        first_(index(points + setups) + 1, 0),
        at_(2 * readings.size()) {
    for (const RodReading& reading : readings)
      ++first_[index(reading.point) + 1], ++first_[index(node_of(reading)) + 1];
    for (std::size_t node = 1; node < first_.size(); ++node) first_[node] += first_[node - 1];
    std::vector<std::size_t> next(first_.begin(), first_.end() - 1);
    for (std::size_t k = 0; k < readings.size(); ++k) {
      at_[next[index(readings[k].point)]++] = static_cast<int>(k);
      at_[next[index(node_of(readings[k]))]++] = static_cast<int>(k);
    }
  }

  const int points, setups;
  const std::vector<RodReading>& readings;
  [[nodiscard]] int nodes() const { return points + setups; }
  [[nodiscard]] int node_of(const RodReading& reading) const { return points + reading.setup; }
  [[nodiscard]] int other_end(const RodReading& reading, int node) const {
    return node < points ? node_of(reading) : reading.point;
  }
  [[nodiscard]] std::span<const int> readings_at(int node) const {
    return std::span(at_).subspan(first_[index(node)], first_[index(node) + 1] - first_[index(node)]);
  }

 private:
  std::vector<std::size_t> first_;
  std::vector<int> at_;
};

/// The reading by which each node was reached from the fixed point, -1 at it and where nothing leads; heights added up
/// along these alone.
struct Tree {
  std::vector<int> by, depth;
  std::vector<bool> reached;
  std::vector<bool> used;  // by reading
  std::vector<double> height;
};

Tree tree_from(const Graph& graph, int fixed, double height) {
  const std::size_t count = index(graph.nodes());
  Tree tree{std::vector<int>(count, -1), std::vector<int>(count, 0), std::vector<bool>(count, false),
            std::vector<bool>(graph.readings.size(), false), std::vector<double>(count, 0.0)};
  std::vector<int> queue{fixed};
  tree.reached[index(fixed)] = true, tree.height[index(fixed)] = height;
  for (std::size_t next = 0; next < queue.size(); ++next) {
    const int node = queue[next];
    for (const int number : graph.readings_at(node)) {
      const RodReading& reading = graph.readings[index(number)];
      const std::size_t other = index(graph.other_end(reading, node));
      if (tree.reached[other]) continue;
      tree.reached[other] = true, tree.used[index(number)] = true;
      tree.by[other] = number, tree.depth[other] = tree.depth[index(node)] + 1;
      tree.height[other] = tree.height[index(node)] + (node < graph.points ? reading.rod : -reading.rod);
      queue.push_back(static_cast<int>(other));
    }
  }
  return tree;
}

/// The readings from both ends up to where their ways home meet: one way after the other.
void add_ways(const Graph& graph, const Tree& tree, int one, int other, std::vector<int>& readings) {
  std::vector<int> second;
  while (one != other) {
    const bool from_one = tree.depth[index(one)] >= tree.depth[index(other)];
    int& node = from_one ? one : other;
    const int by = tree.by[index(node)];
    (from_one ? readings : second).push_back(by);
    node = graph.other_end(graph.readings[index(by)], node);
  }
  readings.insert(readings.end(), second.begin(), second.end());
}

std::vector<Loop> loops_of(const Graph& graph, const Tree& tree) {
  std::vector<Loop> loops;
  for (std::size_t k = 0; k < graph.readings.size(); ++k) {
    if (tree.used[k]) continue;
    const RodReading& reading = graph.readings[k];
    const int setup = graph.node_of(reading);
    const double misclosure = tree.height[index(setup)] - reading.rod - tree.height[index(reading.point)];
    Loop loop{{static_cast<int>(k)}, misclosure, 0};
    add_ways(graph, tree, setup, reading.point, loop.readings);
    double square = 0;
    for (const int number : loop.readings)
      square += graph.readings[index(number)].sigma * graph.readings[index(number)].sigma;
    loop.doubt = std::sqrt(square);
    loops.push_back(std::move(loop));
  }
  return loops;
}

/// How a point hangs on one set-up: the weight of its readings from there.
struct Hang {
  int setup = 0;
  double weight = 0;
};

/// A point's normal equation: weight x change = right + sum of weights x changes of its set-ups.
struct PointEquation {
  std::vector<Hang> hangs;
  double weight = 0, right = 0;
};

PointEquation equation_of(const Graph& graph, const Tree& tree, int point) {
  PointEquation equation;
  for (const int number : graph.readings_at(point)) {
    const RodReading& reading = graph.readings[index(number)];
    const double weight = 1 / (reading.sigma * reading.sigma);
    const double misfit = reading.rod - (tree.height[index(graph.node_of(reading))] - tree.height[index(point)]);
    equation.weight += weight, equation.right -= weight * misfit;
    equation.hangs.push_back({reading.setup, weight});
  }
  // Readings from one set-up count together.
  std::stable_sort(equation.hangs.begin(), equation.hangs.end(),
                   [](const Hang& a, const Hang& b) { return a.setup < b.setup; });
  std::size_t kept = 0;
  for (std::size_t k = 1; k < equation.hangs.size(); ++k) {
    if (equation.hangs[k].setup == equation.hangs[kept].setup) equation.hangs[kept].weight += equation.hangs[k].weight;
    else equation.hangs[++kept] = equation.hangs[k];
  }
  if (!equation.hangs.empty()) equation.hangs.resize(kept + 1);
  return equation;
}

/// The set-ups' own equations, with every point but the fixed one taken out of them (Schur complement).
struct SetupEquations {
  Symmetric normal;
  std::vector<double> right;
};

SetupEquations setup_equations(const Graph& graph, const Tree& tree, const std::vector<PointEquation>& points,
                               int fixed) {
  SetupEquations setups{Symmetric(index(graph.setups)), std::vector<double>(index(graph.setups), 0.0)};
  for (const RodReading& reading : graph.readings) {
    const double weight = 1 / (reading.sigma * reading.sigma), up = tree.height[index(graph.node_of(reading))];
    setups.normal.at(index(reading.setup), index(reading.setup)) += weight;
    setups.right[index(reading.setup)] += weight * (reading.rod - (up - tree.height[index(reading.point)]));
  }
  for (int setup = 0; setup < graph.setups; ++setup) {
    if (graph.readings_at(graph.points + setup).empty()) setups.normal.at(index(setup), index(setup)) = 1;
  }
  for (int point = 0; point < graph.points; ++point) {
    if (point == fixed) continue;
    const PointEquation& equation = points[index(point)];
    for (const Hang& a : equation.hangs) {
      setups.right[index(a.setup)] += a.weight * equation.right / equation.weight;
      for (const Hang& b : equation.hangs)
        setups.normal.at(index(a.setup), index(b.setup)) -= a.weight * b.weight / equation.weight;
    }
  }
  return setups;
}

/// A point's change, and its variance, from those of its set-ups.
struct Change {
  double change = 0, variance = 0;
};

Change change_of(const PointEquation& equation, const std::vector<double>& setups, const Symmetric& covariance) {
  Change found{equation.right / equation.weight, 1 / equation.weight};
  for (const Hang& a : equation.hangs) {
    found.change += a.weight * setups[index(a.setup)] / equation.weight;
    for (const Hang& b : equation.hangs) {
      found.variance +=
          (a.weight / equation.weight) * (b.weight / equation.weight) * covariance.at(index(a.setup), index(b.setup));
    }
  }
  return found;
}

void judge(Levelled& result, const Graph& graph, const Tree& tree) {
  double squares = 0;
  for (const RodReading& reading : graph.readings) {
    const double residual =
        result.instruments[index(reading.setup)] - result.heights[index(reading.point)] - reading.rod;
    result.residuals.push_back(residual);
    squares += residual * residual / (reading.sigma * reading.sigma);
  }
  result.loops = loops_of(graph, tree);
  for (const Loop& loop : result.loops) result.steps += static_cast<std::int64_t>(loop.readings.size());
  result.freedom = static_cast<int>(result.loops.size());
  if (result.freedom > 0) result.s0 = std::sqrt(squares / result.freedom);
}

}  // namespace

std::vector<int> loose_points(int points, int setups, const std::vector<RodReading>& readings, int fixed) {
  const Tree tree = tree_from(Graph(points, setups, readings), fixed, 0);
  std::vector<int> loose;
  for (int point = 0; point < points; ++point) {
    if (!tree.reached[index(point)]) loose.push_back(point);
  }
  return loose;
}

std::expected<Levelled, Loose> adjust_levels(int points, int setups, const std::vector<RodReading>& readings, int fixed,
                                             double height) {
  const Graph graph(points, setups, readings);
  const Tree tree = tree_from(graph, fixed, height);
  Loose loose;
  for (int point = 0; point < points; ++point) {
    if (!tree.reached[index(point)]) loose.points.push_back(point);
  }
  if (!loose.points.empty()) return std::unexpected(std::move(loose));
  // Unknown changes to the added-up values, so that large heights cost no digits. Points come in by their set-ups.
  std::vector<PointEquation> equations;
  const std::int64_t many = setups;
  Levelled result;
  result.steps = static_cast<std::int64_t>(readings.size()) + many * many * many;
  for (int point = 0; point < points; ++point) {
    equations.push_back(equation_of(graph, tree, point));
    const auto hangs = static_cast<std::int64_t>(equations.back().hangs.size());
    result.steps += hangs * hangs;
  }
  const SetupEquations together = setup_equations(graph, tree, equations, fixed);
  const auto inverse = inverse_of(together.normal);
  if (!inverse) return std::unexpected(std::move(loose));  // cannot be: every node hangs on the fixed point
  const std::vector<double> change = product(*inverse, together.right);
  for (int point = 0; point < points; ++point) {
    const Change one = point == fixed ? Change{} : change_of(equations[index(point)], change, *inverse);
    result.heights.push_back(tree.height[index(point)] + one.change);
    result.doubts.push_back(std::sqrt(one.variance));
  }
  for (int setup = 0; setup < setups; ++setup)
    result.instruments.push_back(tree.height[index(points + setup)] + change[index(setup)]);
  judge(result, graph, tree);
  return result;
}

}  // namespace stringcourse::ground
