// The sweep: what one more piece costs beside the rows that it lies on.
#include "bond/sweep.hpp"

#include <algorithm>

#include "bond/concessions.hpp"
#include "measure/fault.hpp"

namespace stringcourse::bond {
namespace {

constexpr std::int32_t kNothing = -1;

}  // namespace

std::int32_t Sweep::lagging_row(const std::int32_t* words) {
  std::int32_t lagging = kNothing;
  for (std::int32_t row = 0; row < static_cast<std::int32_t>(graphs_.size()); ++row) {
    const Node& node = front(words, row);
    if (node.finished) continue;
    if (lagging == kNothing || compare(node.place, front(words, lagging).place) < 0) lagging = row;
  }
  return lagging;
}

template <typename Visit>
void Sweep::each_joint(const std::int32_t* words, std::int32_t row, Visit visit) {
  const RowGraph& own_graph = graph(row);
  const std::int32_t* own = words + row_offset(row);
  for (std::size_t i = 0; i <= memory_ && own[i] != kNothing; ++i) {
    const Node& node = own_graph.node(own[i]);
    if (node.head_joint) visit(node);
  }
}

bool Sweep::count_laps(const std::int32_t* words, std::int32_t row, const Node& target, Charge& charge) {
  bool lawful = true;
  for (const Neighbour& beside : neighbours_[static_cast<std::size_t>(row)]) {
    each_joint(words, beside.row, [&](const Node& joint) {
      if (target.lintel >= 0 && target.lintel == joint.lintel) return;
      if (closer_than(target.place, joint.place, panel_->least_lap)) {
        lawful = false;
        charge.conceded += weight_of_lap(closer_than(target.place, joint.place, panel_->stacked_lap)) * beside.weight;
      }
      if (closer_than(target.place, joint.place, panel_->short_lap_below)) charge.short_laps += beside.weight;
    });
  }
  return lawful || panel_->concedes;
}

bool Sweep::count_cells(const std::int32_t* words, std::int32_t row, const Node& target, Charge& charge) {
  const RowGraph& own_graph = graph(row);
  for (const Neighbour& beside : neighbours_[static_cast<std::size_t>(row)]) {
    const Node& other = front(words, beside.row);
    for (std::int32_t i = 0; i < target.held_count; ++i) {
      const HeldCell& cell = own_graph.held(target.first_held + i);
      for (std::int32_t k = 0; k < other.held_count; ++k) {
        const HeldCell& met = graph(beside.row).held(other.first_held + k);
        if (met.bar != cell.bar) continue;
        const std::int64_t common = panel_->bars[static_cast<std::size_t>(cell.bar)].common_along;
        const Exact& left = compare(cell.from, met.from) > 0 ? cell.from : met.from;
        const Exact& right = compare(cell.to, met.to) < 0 ? cell.to : met.to;
        if (compare(right, left, common) >= 0) continue;
        if (!panel_->concedes) return false;
        charge.conceded += weight::kBarUnheld * beside.weight;
      }
    }
  }
  return true;
}

bool Sweep::lies_in_masonry(std::int32_t row, const Exact& place) const {
  return std::ranges::any_of(panel_->rows[static_cast<std::size_t>(row)].runs, [&](const RowRun& run) {
    return compare(place, Exact::at(run.start)) > 0 && compare(place, Exact::at(run.end)) < 0;
  });
}

/// Term 4, each joint of the lower row once: when it is laid, if the upper row is already past it; else when the
/// upper row comes past it.
void Sweep::count_shifts(const std::int32_t* words, std::int32_t row, const Node& target, Charge& charge) {
  const std::int64_t near = panel_->match_within;
  if (target.head_joint) {
    for (const Neighbour& above : upper_[static_cast<std::size_t>(row)]) {
      const Node& up = front(words, above.row);
      if (compare(up.place, target.place, near) <= 0) continue;  // the upper row may still place it
      bool matched = false;
      each_joint(words, above.row, [&](const Node& joint) { matched |= within(joint.place, target.place, near); });
      if (!matched && lies_in_masonry(above.row, target.place)) charge.shifted += above.weight;
    }
  }
  const Node& old = front(words, row);
  for (const Neighbour& below : lower_[static_cast<std::size_t>(row)]) {
    each_joint(words, below.row, [&](const Node& joint) {
      if (compare(old.place, joint.place, near) > 0) return;      // settled before
      if (compare(target.place, joint.place, near) <= 0) return;  // still open
      bool matched = false;
      each_joint(words, row, [&](const Node& own) { matched |= within(own.place, joint.place, near); });
      if (!matched && lies_in_masonry(row, joint.place)) charge.shifted += below.weight;
    });
  }
}

std::optional<Key> Sweep::step_cost(const std::int32_t* words, std::int32_t row, const Arc& arc) {
  const Node target = graph(row).node(arc.target);
  Charge charge;
  if (target.head_joint && !count_laps(words, row, target, charge)) return std::nullopt;
  if (target.held_count > 0 && !count_cells(words, row, target, charge)) return std::nullopt;
  if (order_ == Order::Weighted) return arc.cost;
  count_shifts(words, row, target, charge);
  return arc.cost + key_of(charge, order_);
}

void Sweep::move_front(std::int32_t* words, std::int32_t row, std::int32_t target) {
  std::int32_t* own = words + row_offset(row);
  const bool was_joint = graph(row).node(own[0]).head_joint;
  if (was_joint) {
    ensure(own[memory_] == kNothing, "a row has more joints within one lap than the sweep remembers");
    for (std::size_t i = memory_; i > 0; --i) own[i] = own[i - 1];
  }
  own[0] = target;
}

bool Sweep::still_needed(const std::int32_t* words, std::int32_t row, const Node& joint) {
  const std::int64_t window = std::max(panel_->least_lap, panel_->short_lap_below);
  for (const Neighbour& beside : neighbours_[static_cast<std::size_t>(row)]) {
    if (joint.high > front(words, beside.row).next - window) return true;
  }
  for (const Neighbour& above : upper_[static_cast<std::size_t>(row)]) {
    if (joint.high >= front(words, above.row).low - panel_->match_within) return true;
  }
  for (const Neighbour& below : lower_[static_cast<std::size_t>(row)]) {
    if (joint.high >= front(words, below.row).next - panel_->match_within) return true;
  }
  return false;
}

/// Drops the joints that nothing to come can be compared with, so that states that differ only in them are one.
void Sweep::forget(std::int32_t* words) {
  for (std::int32_t row = 0; row < static_cast<std::int32_t>(graphs_.size()); ++row) {
    std::int32_t* own = words + row_offset(row);
    std::size_t kept = 1;
    for (std::size_t i = 1; i <= memory_ && own[i] != kNothing; ++i) {
      if (still_needed(words, row, graph(row).node(own[i]))) own[kept++] = own[i];
    }
    for (; kept <= memory_ && own[kept] != kNothing; ++kept) own[kept] = kNothing;
  }
}

}  // namespace stringcourse::bond
