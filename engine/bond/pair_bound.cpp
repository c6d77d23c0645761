#include "bond/pair_bound.hpp"

#include <algorithm>

namespace stringcourse::bond {

Key RowBound::from(std::int32_t start) {
  // Depth first with an own stack: rows of any length.
  const auto grow = [&](std::int32_t node) {
    const auto size = static_cast<std::size_t>(node) + 1;
    if (settled_.size() < size) {
      settled_.resize(size * 2, 0);
      known_.resize(size * 2);
    }
  };
  grow(start);
  if (settled_[static_cast<std::size_t>(start)]) return known_[static_cast<std::size_t>(start)];
  std::vector<std::int32_t> stack{start};
  while (!stack.empty()) {
    const std::int32_t node = stack.back();
    grow(node);
    if (settled_[static_cast<std::size_t>(node)]) {
      stack.pop_back();
      continue;
    }
    if (graph_->node(node).finished) {
      settled_[static_cast<std::size_t>(node)] = 1;
      known_[static_cast<std::size_t>(node)] = Key{};
      continue;
    }
    const std::int32_t first_arc = graph_->grow_arcs(node);
    const std::int32_t end_arc = first_arc + graph_->node(node).arc_count;
    Key best = Key::impossible();
    bool waiting = false;
    for (std::int32_t a = first_arc; a < end_arc; ++a) {
      const std::int32_t target = graph_->arc(a).target;
      grow(target);
      if (!settled_[static_cast<std::size_t>(target)]) {
        stack.push_back(target);
        waiting = true;
        continue;
      }
      const Key rest = known_[static_cast<std::size_t>(target)];
      if (!rest.is_impossible()) best = std::min(best, graph_->arc(a).cost + rest);
    }
    if (waiting) continue;
    settled_[static_cast<std::size_t>(node)] = 1;
    known_[static_cast<std::size_t>(node)] = best;
    stack.pop_back();
  }
  return known_[static_cast<std::size_t>(start)];
}

PairBound::PairBound(const Panel& panel, RowGraph& first, RowGraph& second, std::uint32_t interfaces)
    : panel_(&panel), first_(&first), second_(&second), interfaces_(interfaces), order_(order_of(panel)) {}

std::int32_t PairBound::entry_of(std::int32_t first, std::int32_t second) {
  const auto key = (static_cast<std::uint64_t>(static_cast<std::uint32_t>(first)) << 32) |
                   static_cast<std::uint32_t>(second);
  const std::int32_t known = index_.find(0, key);
  if (known != IndexMap::kAbsent) return known;
  const auto entry = static_cast<std::int32_t>(entries_.size());
  const bool finished = first_->node(first).finished && second_->node(second).finished;
  entries_.push_back(Entry{first, second, finished ? Key{} : Key::impossible(), finished});
  index_.insert(0, key, entry);
  return entry;
}

Key PairBound::step(const Arc& arc, const Node& target, const Node& other) const {
  if (!target.head_joint || !other.head_joint) return arc.cost;
  if (target.lintel >= 0 && target.lintel == other.lintel) return arc.cost;
  const std::int64_t farthest = std::max(target.high - other.low, other.high - target.low);
  if (farthest < panel_->least_lap) return Key::impossible();
  if (farthest >= panel_->short_lap_below || order_ == Order::Weighted) return arc.cost;
  Charge charge;
  charge.short_laps = interfaces_;
  return arc.cost + key_of(charge, order_);
}

void PairBound::open(std::int32_t entry) {
  const Entry at = entries_[static_cast<std::size_t>(entry)];
  const Node& a = first_->node(at.first);
  const Node& b = second_->node(at.second);
  const bool of_first = b.finished || (!a.finished && compare(a.place, b.place) <= 0);
  RowGraph& graph = of_first ? *first_ : *second_;
  const std::int32_t from = of_first ? at.first : at.second;
  const std::int32_t first_arc = graph.grow_arcs(from);
  stack_.push_back(Frame{entry, first_arc, first_arc + graph.node(from).arc_count, of_first});
}

Key PairBound::from(std::int32_t first, std::int32_t second) {
  const std::int32_t root = entry_of(first, second);
  if (entries_[static_cast<std::size_t>(root)].settled) return entries_[static_cast<std::size_t>(root)].cost;
  stack_.clear();
  open(root);
  while (!stack_.empty()) {
    Frame& frame = stack_.back();
    if (frame.next_arc == frame.end_arc) {
      entries_[static_cast<std::size_t>(frame.entry)].settled = true;
      stack_.pop_back();
      continue;
    }
    const Entry at = entries_[static_cast<std::size_t>(frame.entry)];
    RowGraph& graph = frame.of_first ? *first_ : *second_;
    const RowGraph& still = frame.of_first ? *second_ : *first_;
    const Arc arc = graph.arc(frame.next_arc);
    const Node& other = still.node(frame.of_first ? at.second : at.first);
    const Key cost = step(arc, graph.node(arc.target), other);
    if (cost.is_impossible()) {
      ++frame.next_arc;
      continue;
    }
    const std::int32_t frame_entry = frame.entry;
    const std::int32_t next = frame.of_first ? entry_of(arc.target, at.second) : entry_of(at.first, arc.target);
    const Entry& reached = entries_[static_cast<std::size_t>(next)];
    if (!reached.settled) {
      open(next);  // comes back to this very arc once it is settled
      continue;
    }
    ++stack_.back().next_arc;
    if (reached.cost.is_impossible()) continue;
    Entry& own = entries_[static_cast<std::size_t>(frame_entry)];
    own.cost = std::min(own.cost, cost + reached.cost);
  }
  return entries_[static_cast<std::size_t>(root)].cost;
}

}  // namespace stringcourse::bond
