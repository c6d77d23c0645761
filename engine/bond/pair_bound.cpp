#include "bond/pair_bound.hpp"

#include <algorithm>

#include "bond/concessions.hpp"

namespace stringcourse::bond {
namespace {

constexpr std::int32_t kNothing = -1;

std::uint64_t packed(std::int32_t high, std::int32_t low) {
  return (static_cast<std::uint64_t>(static_cast<std::uint32_t>(high)) << 32) | static_cast<std::uint32_t>(low);
}

std::uint64_t hash_of(const PairPlace& place) {
  return mixed_words(packed(place.behind_first, place.behind_second), packed(place.first, place.second));
}

/// Farthest and nearest that two places may be apart.
std::int64_t farthest(const Node& a, const Node& b) { return std::max(a.high - b.low, b.high - a.low); }
std::int64_t nearest(const Node& a, const Node& b) { return std::max(a.low - b.high, b.low - a.high); }

bool surely_in_masonry(const Row& row, const Node& joint) {
  return std::ranges::any_of(row.runs,
                             [&](const RowRun& run) { return joint.low > run.start && joint.high < run.end; });
}

}  // namespace

PairBound::PairBound(const Panel& panel, RowGraph& first, RowGraph& second, PairTerms terms)
    : panel_(&panel), first_(&first), second_(&second), terms_(terms), order_(order_of(panel)) {
  if (terms_.laps == 0 || order_ != Order::HalfBond || panel.concedes) return;
  spared_first_ = spared_pieces(first.row(), second.row());
  spared_second_ = spared_pieces(second.row(), first.row());
}

/// A short piece between two head joints, with unbroken masonry beside it for a short-lap limit past either joint, has
/// a joint of the other row nearer than the limit to one of its own: the stretch is longer than any piece. So of q
/// short pieces all but the spared ones cost a short lap, and one short lap serves at most two of them. Spared is what
/// may stand where the other row has no masonry, or within the limit of that, and the pieces at the run's own ends.
std::vector<std::int32_t> PairBound::spared_pieces(const Row& row, const Row& beside) const {
  std::int64_t longest = row.make_up_from, least = panel_->least_piece;
  for (const Row* each : {&row, &beside}) {
    for (const PieceChoice& choice : each->choices) {
      longest = std::max(longest, choice.length);
      least = std::min(least, choice.length);
    }
  }
  least += panel_->joint_least;
  const std::int64_t limit = panel_->short_lap_below;
  if (longest + panel_->joint_most >= least + 2 * limit || limit <= 0) return {};
  std::vector<std::int32_t> spared;
  for (const RowRun& run : row.runs) {
    // From the run's start to the other row's first masonry, between its runs, and beyond its last.
    std::int64_t at_start = 1, at_end = 1, between = 0, bare_from = run.start;
    for (const RowRun& other : beside.runs) {
      const std::int64_t from = std::max(bare_from - limit, run.start), to = std::min(other.start + limit, run.end);
      if (bare_from == run.start) {
        at_start = std::max(at_start, (to - run.start - 1) / least + 1);
      } else if (from < to) {
        between += (to - from) / least + 2;
      }
      bare_from = std::max(bare_from, other.end);
    }
    at_end = std::max(at_end, (run.end - std::max(run.start, bare_from - limit) - 1) / least + 1);
    spared.push_back(static_cast<std::int32_t>(at_start + between + at_end));
  }
  return spared;
}

std::uint64_t PairBound::laps_to_come(const PairPlace& place) const {
  const auto least = [&](const RowGraph& graph, std::int32_t index, const std::vector<std::int32_t>& spared) {
    const Node& node = graph.node(index);
    if (spared.empty() || node.run < 0 || node.run >= static_cast<std::int32_t>(spared.size())) return 0;
    const std::int32_t costing = graph.least_short_to_come(node) - spared[static_cast<std::size_t>(node.run)];
    return costing > 0 ? (costing + 1) / 2 : 0;
  };
  const std::int32_t pairs =
      std::max(least(*first_, place.first, spared_first_), least(*second_, place.second, spared_second_));
  return static_cast<std::uint64_t>(pairs) * terms_.laps;
}

/// Drops the joints behind that nothing to come in the other row can be compared with.
void PairBound::forget(PairPlace& place) {
  static_cast<void>(first_->grow_arcs(place.first));
  static_cast<void>(second_->grow_arcs(place.second));
  const std::int64_t window = terms_.laps > 0 ? std::max(panel_->least_lap, panel_->short_lap_below) : 0;
  // Just what Sweep::still_needed asks, so that the sweep's states are found here.
  const Node& first = first_->node(place.first);
  const Node& second = second_->node(place.second);
  const auto for_laps = [&](const Node& behind, const Node& other) {
    return terms_.laps > 0 && behind.high > other.next - window;
  };
  if (place.behind_first != kNothing) {
    const Node& behind = first_->node(place.behind_first);
    const bool open_above = terms_.shifts > 0 && behind.high >= second.low - panel_->match_within;
    if (!for_laps(behind, second) && !open_above) place.behind_first = kNothing;
  }
  if (place.behind_second != kNothing) {
    const Node& behind = second_->node(place.behind_second);
    const bool matches_below = terms_.shifts > 0 && behind.high >= first.next - panel_->match_within;
    if (!for_laps(behind, first) && !matches_below) place.behind_second = kNothing;
  }
}

std::int32_t PairBound::find(PairPlace place) {
  forget(place);
  return find_at(place, hash_of(place));
}

std::int32_t PairBound::find_at(const PairPlace& place, std::uint64_t hash) const {
  return index_.find(hash,
                     [&](std::int32_t index) { return entries_[static_cast<std::size_t>(index)].place == place; });
}

/// Notes a way to this place; it is spread from when its turn comes.
std::int32_t PairBound::reach(PairPlace place, std::uint32_t first_term) {
  forget(place);
  const std::uint64_t hash = hash_of(place);
  std::int32_t index = find_at(place, hash);
  if (index == IndexTable::kAbsent) {
    index = static_cast<std::int32_t>(entries_.size());
    Entry entry;
    entry.place = place;
    entry.first_term = first_term;
    entry.finished = first_->node(place.first).finished && second_->node(place.second).finished;
    entries_.push_back(entry);
    index_.insert(hash, index);
    if (places_ != nullptr && --*places_ < 0) ran_out_ = true;
  } else {
    Entry& known = entries_[static_cast<std::size_t>(index)];
    if (known.first_term <= first_term) return index;
    known.first_term = first_term;
  }
  waiting_[std::max(level_, first_term + laps_to_come(place))].push_back(index);
  return index;
}

void PairBound::take(std::int64_t looks) {
  if (room_ != nullptr && !room_->take(looks)) ran_out_ = true;
}

void PairBound::spread(std::int32_t index) {
  Entry& entry = entries_[static_cast<std::size_t>(index)];
  if (entry.opened) return spread_again(index);
  entry.opened = true;
  const std::uint32_t so_far = entry.first_term;
  const PairPlace at = entry.place;
  if (entry.finished) {
    goal_term_ = goal_reached_ ? std::min<std::uint64_t>(goal_term_, so_far) : so_far;
    goal_reached_ = true;
    return;
  }
  const bool of_first = first_lags(at);
  RowGraph& graph = of_first ? *first_ : *second_;
  const std::int32_t from = of_first ? at.first : at.second;
  const std::int32_t first_arc = graph.grow_arcs(from);
  const std::int32_t end_arc = first_arc + graph.node(from).arc_count;
  take(end_arc - first_arc + 1);
  const auto first_way = static_cast<std::int32_t>(ways_.size());
  for (std::int32_t a = first_arc; a < end_arc; ++a) {
    const Arc arc = graph.arc(a);
    if (!graph.is_open(graph.node(arc.target).family)) continue;
    const Key cost = step(at, arc, of_first);
    if (cost.is_impossible()) continue;
    ways_.push_back(Way{reach(moved(at, arc.target, of_first), so_far + first_term_of(cost)), a});
  }
  Entry& spread_entry = entries_[static_cast<std::size_t>(index)];
  spread_entry.first_way = first_way;
  spread_entry.way_count = static_cast<std::int16_t>(static_cast<std::int32_t>(ways_.size()) - first_way);
}

/// A cheaper way to an entry was found after it was spread: its ways are there, only their first terms fall.
void PairBound::spread_again(std::int32_t index) {
  const Entry entry = entries_[static_cast<std::size_t>(index)];
  if (entry.finished) goal_term_ = std::min<std::uint64_t>(goal_term_, entry.first_term);
  take(entry.way_count + 1);
  for (std::int32_t w = entry.first_way; w < entry.first_way + entry.way_count; ++w) {
    const Way way = ways_[static_cast<std::size_t>(w)];
    const Key cost = cost_of_way(entry.place, way);
    static_cast<void>(
        reach(entries_[static_cast<std::size_t>(way.entry)].place, entry.first_term + first_term_of(cost)));
  }
}

Key PairBound::cost_of_way(const PairPlace& place, const Way& way) const {
  const bool of_first = first_lags(place);
  return step(place, (of_first ? *first_ : *second_).arc(way.arc), of_first);
}

void PairBound::spread_level() {
  const auto level = waiting_.begin();
  level_ = level->first;
  for (std::size_t i = 0; i < level->second.size() && !ran_out_; ++i) {  // a level may grow while it is spread
    spread(level->second[i]);
  }
  waiting_.erase(level);
}

bool PairBound::find_least(std::uint64_t allowance) {
  const bool begun = !entries_.empty() && !ran_out_;
  if (begun && through_first_ == first_->open_families() && through_second_ == second_->open_families())
    return find_further(allowance);
  through_first_ = first_->open_families();
  through_second_ = second_->open_families();
  index_.clear();
  entries_.clear();
  ways_.clear();
  costs_.clear();
  waiting_.clear();
  goal_reached_ = ran_out_ = false;
  level_ = 0;
  static_cast<void>(reach(PairPlace{first_->root(), second_->root(), kNothing, kNothing}, 0));
  return find_further(allowance);
}

bool PairBound::find_further(std::uint64_t allowance) {
  while (!goal_reached_ && !ran_out_ && !waiting_.empty() && waiting_.begin()->first <= allowance) spread_level();
  return goal_reached_;
}

void PairBound::extend(std::uint64_t allowance) {
  costs_.clear();
  while (!ran_out_ && !waiting_.empty() && waiting_.begin()->first <= allowance) spread_level();
}

std::optional<std::uint64_t> PairBound::next_allowance() const {
  if (waiting_.empty()) return std::nullopt;
  return waiting_.begin()->first;
}

std::uint64_t PairBound::surely_at_least() const {
  if (ran_out_) return goal_reached_ ? std::min(goal_term_, level_) : level_;  // this level was not looked through
  if (goal_reached_) return goal_term_;
  return waiting_.empty() ? level_ : waiting_.begin()->first;
}

void PairBound::close_unused() {
  std::vector<char> alive_first(first_->family_count(), 0), alive_second(second_->family_count(), 0);
  const auto note = [](const RowGraph& graph, std::int32_t index, std::vector<char>& alive) {
    const Node& node = graph.node(index);
    if (node.run_done && node.family >= 0) alive[static_cast<std::size_t>(node.family)] = 1;
  };
  for (const Entry& entry : entries_) {
    if (!entry.opened) continue;
    note(*first_, entry.place.first, alive_first);
    note(*second_, entry.place.second, alive_second);
  }
  first_->close_others(alive_first);
  second_->close_others(alive_second);
}

bool PairBound::count_lap(const Node& target, const Node& joint, Charge& charge) const {
  if (!joint.head_joint || (target.lintel >= 0 && target.lintel == joint.lintel)) return true;
  const std::int64_t apart = farthest(target, joint);
  if (apart < panel_->least_lap) {
    if (!panel_->concedes) return false;
    charge.conceded += terms_.laps * weight_of_lap(apart < panel_->stacked_lap);
  }
  if (apart < panel_->short_lap_below) charge.short_laps += terms_.laps;
  return true;
}

/// As Sweep::count_shifts: each joint of the first (lower) row once. Asked for only where places are exact.
void PairBound::count_shifts(const PairPlace& place, const Node& target, bool first_moves, Charge& charge) const {
  const std::int64_t near = panel_->match_within;
  const Node& upper = second_->node(place.second);
  const auto matches = [&](const Node& joint) {
    if (upper.head_joint && nearest(upper, joint) <= near) return true;
    return place.behind_second != kNothing && nearest(second_->node(place.behind_second), joint) <= near;
  };
  const auto settle = [&](const Node& joint) {
    if (!matches(joint) && surely_in_masonry(second_->row(), joint)) charge.shifted += terms_.shifts;
  };
  if (first_moves) {
    if (target.head_joint && upper.low > target.high + near) settle(target);
    return;
  }
  const auto open_until_now = [&](const Node& joint) {
    return joint.head_joint && upper.low <= joint.high + near && target.low > joint.high + near;
  };
  const Node& lower = first_->node(place.first);
  if (open_until_now(lower)) settle(lower);
  if (place.behind_first == kNothing) return;
  const Node& behind = first_->node(place.behind_first);
  if (open_until_now(behind)) settle(behind);
}

Key PairBound::step(const PairPlace& place, const Arc& arc, bool first_moves) const {
  const RowGraph& graph = first_moves ? *first_ : *second_;
  const RowGraph& still = first_moves ? *second_ : *first_;
  const Node& target = graph.node(arc.target);
  const std::int32_t behind = first_moves ? place.behind_second : place.behind_first;
  Charge charge;
  if (terms_.laps > 0 && target.head_joint) {
    if (!count_lap(target, still.node(first_moves ? place.second : place.first), charge)) return Key::impossible();
    if (behind != kNothing && !count_lap(target, still.node(behind), charge)) return Key::impossible();
  }
  const Key own = terms_.pieces == PairTerms::Pieces::Counted ? arc.cost : Key{};
  if (order_ == Order::Weighted) return own;
  if (terms_.shifts > 0) count_shifts(place, target, first_moves, charge);
  return own + key_of(charge, order_);
}

PairPlace PairBound::moved(const PairPlace& place, std::int32_t target, bool first_moves) const {
  PairPlace next = place;
  if (first_moves) {
    if (first_->node(place.first).head_joint) next.behind_first = place.first;
    next.first = target;
  } else {
    if (second_->node(place.second).head_joint) next.behind_second = place.second;
    next.second = target;
  }
  return next;
}

bool PairBound::first_lags(const PairPlace& place) const {
  const Node& a = first_->node(place.first);
  const Node& b = second_->node(place.second);
  return b.finished || (!a.finished && compare(a.place, b.place) <= 0);
}

Key PairBound::from(PairPlace place) {
  const std::int32_t root = find(place);
  if (root == IndexMap::kAbsent || !entries_[static_cast<std::size_t>(root)].opened) return Key::impossible();
  if (costs_.size() != entries_.size()) costs_.resize(entries_.size());
  if (costs_[static_cast<std::size_t>(root)].settled) return costs_[static_cast<std::size_t>(root)].cost;
  stack_.assign(1, Frame{root, 0});  // depth first with an own stack
  while (!stack_.empty()) {
    Frame& frame = stack_.back();
    const Entry& entry = entries_[static_cast<std::size_t>(frame.entry)];
    CostToGo& own = costs_[static_cast<std::size_t>(frame.entry)];
    if (entry.finished) own.cost = Key{};
    if (frame.next_way == entry.way_count) {
      own.settled = true;
      stack_.pop_back();
      continue;
    }
    const Way& way = ways_[static_cast<std::size_t>(entry.first_way + frame.next_way)];
    const CostToGo& rest = costs_[static_cast<std::size_t>(way.entry)];
    const bool opened = entries_[static_cast<std::size_t>(way.entry)].opened;
    if (opened && !rest.settled) {
      stack_.push_back(Frame{way.entry, 0});  // comes back to this very way once it is settled
      continue;
    }
    ++frame.next_way;
    if (opened && !rest.cost.is_impossible()) own.cost = std::min(own.cost, cost_of_way(entry.place, way) + rest.cost);
  }
  return costs_[static_cast<std::size_t>(root)].cost;
}

}  // namespace stringcourse::bond
