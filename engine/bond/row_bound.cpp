#include "bond/pair_bound.hpp"

#include <algorithm>

namespace stringcourse::bond {

void RowBound::reserve_for(std::int32_t node) {
  const auto size = static_cast<std::size_t>(node) + 1;
  if (settled_.size() >= size) return;
  settled_.resize(size * 2, 0);
  known_.resize(size * 2);
}

Key RowBound::from(std::int32_t start) {
  reserve_for(start);
  if (settled_[static_cast<std::size_t>(start)]) return known_[static_cast<std::size_t>(start)];
  std::vector<std::int32_t> stack{start};  // depth first with an own stack: rows of any length
  while (!stack.empty()) {
    if (room_->is_out()) return Key{};
    const std::int32_t node = stack.back();
    reserve_for(node);
    const auto at = static_cast<std::size_t>(node);
    if (settled_[at]) {
      stack.pop_back();
      continue;
    }
    if (graph_->node(node).finished) {
      settled_[at] = 1;
      known_[at] = Key{};
      continue;
    }
    const std::int32_t first_arc = graph_->grow_arcs(node);
    const std::int32_t end_arc = first_arc + graph_->node(node).arc_count;
    Key best = Key::impossible();
    bool waiting = false;
    for (std::int32_t a = first_arc; a < end_arc; ++a) {
      const std::int32_t target = graph_->arc(a).target;
      if (!graph_->is_open(graph_->node(target).family)) continue;
      reserve_for(target);
      if (!settled_[static_cast<std::size_t>(target)]) {
        stack.push_back(target);
        waiting = true;
        continue;
      }
      const Key rest = known_[static_cast<std::size_t>(target)];
      if (!rest.is_impossible()) best = std::min(best, graph_->arc(a).cost + rest);
    }
    if (waiting) continue;
    settled_[at] = 1;
    known_[at] = best;
    stack.pop_back();
  }
  return known_[static_cast<std::size_t>(start)];
}

}  // namespace stringcourse::bond
