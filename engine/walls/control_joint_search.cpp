#include "walls/control_joint_search.hpp"

#include <algorithm>
#include <cstddef>

namespace stringcourse::walls {
namespace {

struct PanelCost {
  std::int64_t excess = 0;
  std::int64_t joints = 0;
  int128 squares = 0;
};

bool is_less(const PanelCost& a, const PanelCost& b) {
  if (a.excess != b.excess) return a.excess < b.excess;
  if (a.joints != b.joints) return a.joints < b.joints;
  return a.squares < b.squares;
}

/// The nodes are the stretch's start, the lines, its end.
struct Nodes {
  const PanelSearch& search;
  std::size_t count() const { return search.lines.size() + 2; }
  Length at(std::size_t node) const {
    if (node == 0) return search.start;
    return node + 1 == count() ? search.end : search.lines[node - 1];
  }
  /// Greatest length of the panel between two nodes.
  Length limit(std::size_t from, std::size_t to) const {
    const bool held_before = from == 0 && search.at_start == PanelEnd::Held;
    const bool held_after = to + 1 == count() && search.at_end == PanelEnd::Held;
    return held_before != held_after ? search.greatest.half_down() : search.greatest;
  }
};

PanelCost with_panel(const Nodes& nodes, PanelCost cost, std::size_t from, std::size_t to) {
  const Length panel = nodes.at(to) - nodes.at(from), limit = nodes.limit(from, to);
  cost.excess += std::max(panel - limit, Length()).in_nanometres();
  cost.joints += to + 1 < nodes.count() ? 1 : 0;
  cost.squares += static_cast<int128>(panel.in_nanometres()) * panel.in_nanometres();
  return cost;
}

struct Step {
  PanelCost cost;
  std::size_t before = 0;
};

std::vector<Step> best_steps(const Nodes& nodes) {
  std::vector<Step> best(nodes.count());
  for (std::size_t to = 1; to < best.size(); ++to) {
    best[to] = {with_panel(nodes, best[to - 1].cost, to - 1, to), to - 1};
    for (std::size_t from = to - 1; from-- > 0;) {
      // Panels only grow from here: where the rule is kept, one that breaks it can't be better.
      if (best[to].cost.excess == 0 && nodes.at(to) - nodes.at(from) > nodes.search.greatest) break;
      const PanelCost cost = with_panel(nodes, best[from].cost, from, to);
      if (!is_less(best[to].cost, cost)) best[to] = {cost, from};
    }
  }
  return best;
}

}  // namespace

PanelAnswer best_joint_lines(const PanelSearch& search) {
  const Nodes nodes{search};
  const std::vector<Step> best = best_steps(nodes);
  PanelAnswer answer;
  answer.too_long = Length::nanometres(best.back().cost.excess);
  for (std::size_t node = best.size() - 1; node != 0; node = best[node].before) {
    answer.longest = std::max(answer.longest, nodes.at(node) - nodes.at(best[node].before));
    if (best[node].before != 0) answer.lines.push_back(nodes.at(best[node].before));
  }
  std::ranges::reverse(answer.lines);
  return answer;
}

}  // namespace stringcourse::walls
