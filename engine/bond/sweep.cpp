#include "bond/sweep.hpp"

#include <algorithm>
#include <cstring>
#include <map>

#include "measure/fault.hpp"

namespace stringcourse::bond {
namespace {

constexpr std::int32_t kNothing = -1;

std::uint64_t hash_words(const std::int32_t* words, std::size_t count) {
  std::uint64_t hash = 0x2545f4914f6cdd1dULL;
  for (std::size_t i = 0; i < count; ++i) {
    hash ^= static_cast<std::uint32_t>(words[i]);
    hash *= 0x9e3779b97f4a7c15ULL;
    hash ^= hash >> 29;
  }
  return hash;
}

std::int64_t longest_target(const Panel& panel) {
  std::int64_t longest = 0;
  for (const Row& row : panel.rows) {
    for (const RowRun& run : row.runs) longest = std::max(longest, run.end - run.start + 2 * panel.joint);
  }
  // Tight joints let a run hold more than its length in modules.
  return longest + longest / 8 + 4 * panel.joint;
}

}  // namespace

// ---- set-up --------------------------------------------------------------------------------------------------------

Sweep::Sweep(const Panel& panel, Stage stage) : panel_(&panel), order_(order_of(panel)) {
  const std::int64_t longest = longest_target(panel);
  std::int64_t least_module = std::int64_t{1} << 60;
  menus_.reserve(panel.rows.size());
  reaches_.reserve(panel.rows.size());
  for (const Row& row : panel.rows) {
    menus_.push_back(menu_of(row, stage));
    reaches_.emplace_back(menus_.back(), panel.joint, longest);
    for (const PieceChoice& choice : menus_.back().choices) {
      least_module = std::min(least_module, choice.length + panel.joint_least);
    }
    if (menus_.back().make_up_from > 0) least_module = std::min(least_module, panel.least_piece + panel.joint_least);
  }
  for (std::size_t r = 0; r < panel.rows.size(); ++r) {
    exact_.push_back(std::make_unique<RowGraph>(panel, panel.rows[r], menus_[r], reaches_[r], GraphKind::Exact));
    loose_.push_back(exact_.back()->has_leftovers()
                         ? std::make_unique<RowGraph>(panel, panel.rows[r], menus_[r], reaches_[r], GraphKind::Loose)
                         : nullptr);
    row_bounds_.emplace_back(loose(static_cast<std::int32_t>(r)));
  }
  const std::int64_t window = std::max({panel.least_lap, panel.short_lap_below, panel.match_within});
  memory_ = static_cast<std::size_t>(window / std::max<std::int64_t>(least_module, 1)) + 2;
  stride_ = panel.rows.size() * (1 + memory_);
  child_.resize(stride_);
  find_neighbours();
  make_matchings();
}

void Sweep::find_neighbours() {
  const std::size_t count = panel_->rows.size();
  neighbours_.resize(count);
  upper_.resize(count);
  lower_.resize(count);
  std::map<std::pair<std::int32_t, std::int32_t>, std::uint32_t> lying, shifting;
  const auto& courses = panel_->course_rows;
  const auto band = [&](std::int32_t row) { return panel_->rows[static_cast<std::size_t>(row)].band; };
  for (std::size_t c = 0; c + 1 < courses.size(); ++c) {
    ++lying[std::minmax(courses[c], courses[c + 1])];
    if (c + 2 < courses.size() && band(courses[c]) != band(courses[c + 2])) ++shifting[{courses[c], courses[c + 2]}];
  }
  for (const auto& [rows, weight] : lying) {
    edges_.push_back(Edge{rows.first, rows.second, weight});
    neighbours_[static_cast<std::size_t>(rows.first)].push_back({rows.second, weight});
    neighbours_[static_cast<std::size_t>(rows.second)].push_back({rows.first, weight});
  }
  if (order_ == Order::Weighted) return;
  for (const auto& [rows, weight] : shifting) {
    upper_[static_cast<std::size_t>(rows.first)].push_back({rows.second, weight});
    lower_[static_cast<std::size_t>(rows.second)].push_back({rows.first, weight});
  }
}

/// Pairs of neighbouring rows, each row in at most one pair: three ways of pairing, the best bound counts.
void Sweep::make_matchings() {
  const auto same_band = [&](const Edge& edge) {
    return panel_->rows[static_cast<std::size_t>(edge.first)].band == panel_->rows[static_cast<std::size_t>(edge.second)].band;
  };
  std::vector<Edge> within = edges_, across = edges_;
  std::ranges::stable_partition(within, same_band);
  std::ranges::stable_partition(across, [&](const Edge& edge) { return !same_band(edge); });
  add_matching(within);
  if (panel_->rows.size() < 3) return;
  add_matching(across);
  const auto crossing = std::ranges::find_if(across, same_band);
  std::reverse(across.begin(), crossing);
  add_matching(across);
}

void Sweep::add_matching(const std::vector<Edge>& edges) {
  Matching matching(panel_->rows.size(), kNothing);
  for (const Edge& edge : edges) {
    if (matching[static_cast<std::size_t>(edge.first)] != kNothing) continue;
    if (matching[static_cast<std::size_t>(edge.second)] != kNothing) continue;
    std::int32_t pair = kNothing;
    for (std::size_t p = 0; p < pairs_.size(); ++p) {
      if (pairs_[p].first == edge.first && pairs_[p].second == edge.second) pair = static_cast<std::int32_t>(p);
    }
    if (pair == kNothing) {
      pair = static_cast<std::int32_t>(pairs_.size());
      pairs_.push_back(Pair{edge.first, edge.second,
                            std::make_unique<PairBound>(*panel_, loose(edge.first), loose(edge.second), edge.weight)});
    }
    matching[static_cast<std::size_t>(edge.first)] = matching[static_cast<std::size_t>(edge.second)] = pair;
  }
  if (std::ranges::find(matchings_, matching) == matchings_.end()) matchings_.push_back(matching);
}

// ---- bounds --------------------------------------------------------------------------------------------------------

std::int32_t Sweep::loose_node(std::int32_t row, std::int32_t node) {
  const auto& loose_graph = loose_[static_cast<std::size_t>(row)];
  return loose_graph ? exact(row).loose_of(node, *loose_graph) : node;
}

Key Sweep::bound_of(const std::int32_t* words) {
  Key best{};
  for (const Matching& matching : matchings_) {
    Key sum{};
    for (std::int32_t row = 0; row < static_cast<std::int32_t>(matching.size()); ++row) {
      const std::int32_t pair = matching[static_cast<std::size_t>(row)];
      Key part;
      if (pair == kNothing) {
        part = row_bounds_[static_cast<std::size_t>(row)].from(loose_node(row, words[row_offset(row)]));
      } else {
        Pair& two = pairs_[static_cast<std::size_t>(pair)];
        if (two.first != row) continue;  // counted with its first row
        part = two.bound->from(loose_node(two.first, words[row_offset(two.first)]),
                               loose_node(two.second, words[row_offset(two.second)]));
      }
      if (part.is_impossible()) return part;
      sum = sum + part;
    }
    best = std::max(best, sum);
  }
  return best;
}

Key Sweep::root_bound() {
  std::ranges::fill(child_, kNothing);
  for (std::int32_t row = 0; row < static_cast<std::int32_t>(exact_.size()); ++row) {
    child_[row_offset(row)] = exact(row).root();
  }
  return bound_of(child_.data());
}

std::int32_t Sweep::impossible_row() {
  for (std::size_t row = 0; row < exact_.size(); ++row) {
    if (row_bounds_[row].from(0).is_impossible()) return static_cast<std::int32_t>(row);
  }
  return kNothing;
}

std::uint64_t Sweep::least_deviation() {
  std::uint64_t sum = 0;
  for (std::size_t row = 0; row < exact_.size(); ++row) {
    RowGraph& graph = *exact_[row];
    sum += graph.least_deviation();
  }
  return sum;
}

// ---- one step ------------------------------------------------------------------------------------------------------

std::int32_t Sweep::lagging_row(const std::int32_t* words) {
  std::int32_t lagging = kNothing;
  for (std::int32_t row = 0; row < static_cast<std::int32_t>(exact_.size()); ++row) {
    const Node& node = front(words, row);
    if (node.finished) continue;
    if (lagging == kNothing || compare(node.place, front(words, lagging).place) < 0) lagging = row;
  }
  return lagging;
}

template <typename Visit>
void Sweep::each_joint(const std::int32_t* words, std::int32_t row, Visit visit) {
  const RowGraph& graph = exact(row);
  const std::int32_t* own = words + row_offset(row);
  for (std::size_t i = 0; i <= memory_ && own[i] != kNothing; ++i) {
    const Node& node = graph.node(own[i]);
    if (node.head_joint) visit(node);
  }
}

bool Sweep::count_laps(const std::int32_t* words, std::int32_t row, const Node& target, Charge& charge) {
  bool lawful = true;
  for (const Neighbour& beside : neighbours_[static_cast<std::size_t>(row)]) {
    each_joint(words, beside.row, [&](const Node& joint) {
      if (target.lintel >= 0 && target.lintel == joint.lintel) return;
      if (closer_than(target.place, joint.place, panel_->least_lap)) lawful = false;
      if (closer_than(target.place, joint.place, panel_->short_lap_below)) charge.short_laps += beside.weight;
    });
  }
  return lawful;
}

bool Sweep::cells_meet(const std::int32_t* words, std::int32_t row, const Node& target) {
  const RowGraph& graph = exact(row);
  for (const Neighbour& beside : neighbours_[static_cast<std::size_t>(row)]) {
    const Node& other = front(words, beside.row);
    for (std::int32_t i = 0; i < target.held_count; ++i) {
      const HeldCell& cell = graph.held(target.first_held + i);
      for (std::int32_t k = 0; k < other.held_count; ++k) {
        const HeldCell& met = exact(beside.row).held(other.first_held + k);
        if (met.bar != cell.bar) continue;
        const std::int64_t common = panel_->bars[static_cast<std::size_t>(cell.bar)].common_along;
        const Exact& left = compare(cell.from, met.from) > 0 ? cell.from : met.from;
        const Exact& right = compare(cell.to, met.to) < 0 ? cell.to : met.to;
        if (compare(right, left, common) < 0) return false;
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
  const Node target = exact(row).node(arc.target);
  Charge charge;
  if (target.head_joint && !count_laps(words, row, target, charge)) return std::nullopt;
  if (target.held_count > 0 && !cells_meet(words, row, target)) return std::nullopt;
  if (order_ == Order::Weighted) return arc.cost;
  count_shifts(words, row, target, charge);
  return arc.cost + key_of(charge, order_);
}

void Sweep::move_front(std::int32_t* words, std::int32_t row, std::int32_t target) {
  std::int32_t* own = words + row_offset(row);
  const bool was_joint = exact(row).node(own[0]).head_joint;
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
  for (std::int32_t row = 0; row < static_cast<std::int32_t>(exact_.size()); ++row) {
    std::int32_t* own = words + row_offset(row);
    std::size_t kept = 1;
    for (std::size_t i = 1; i <= memory_ && own[i] != kNothing; ++i) {
      if (still_needed(words, row, exact(row).node(own[i]))) own[kept++] = own[i];
    }
    for (; kept <= memory_ && own[kept] != kNothing; ++kept) own[kept] = kNothing;
  }
}

// ---- the search ----------------------------------------------------------------------------------------------------

void Sweep::grow_slots() {
  slots_.assign(std::max<std::size_t>(slots_.size() * 2, 1024), kNothing);
  const std::size_t mask = slots_.size() - 1;
  for (std::int32_t state = 0; state < static_cast<std::int32_t>(states_.size()); ++state) {
    std::size_t slot = hash_words(words_of(state), stride_) & mask;
    while (slots_[slot] != kNothing) slot = (slot + 1) & mask;
    slots_[slot] = state;
  }
}

std::int32_t Sweep::find_state(const std::int32_t* words, std::uint64_t hash, std::size_t& slot) {
  const std::size_t mask = slots_.size() - 1;
  slot = hash & mask;
  while (slots_[slot] != kNothing) {
    if (std::memcmp(words_of(slots_[slot]), words, stride_ * sizeof(std::int32_t)) == 0) return slots_[slot];
    slot = (slot + 1) & mask;
  }
  return kNothing;
}

/// Keeps a state, or a cheaper way to one already known; kNothing when it is no cheaper.
std::int32_t Sweep::keep_state(const std::int32_t* words, const State& state) {
  if ((states_.size() + 1) * 2 > slots_.size()) grow_slots();
  std::size_t slot = 0;
  const std::int32_t known = find_state(words, hash_words(words, stride_), slot);
  if (known != kNothing) {
    State& old = states_[static_cast<std::size_t>(known)];
    if (!(state.cost < old.cost)) return kNothing;
    const Key to_go = old.to_go;
    old = state;
    old.to_go = to_go;
    return known;
  }
  const auto index = static_cast<std::int32_t>(states_.size());
  words_.insert(words_.end(), words, words + stride_);
  states_.push_back(state);
  states_.back().to_go = bound_of(words);
  slots_[slot] = index;
  return index;
}

/// Puts the state's successors on the heap.
std::int32_t Sweep::expand(std::int32_t index, const Key& cutoff) {
  const std::int32_t row = lagging_row(words_of(index));
  if (row == kNothing) return index;
  const std::int32_t node = words_of(index)[row_offset(row)];
  const std::int32_t first_arc = exact(row).grow_arcs(node);
  const std::int32_t end_arc = first_arc + exact(row).node(node).arc_count;
  for (std::int32_t a = first_arc; a < end_arc; ++a) {
    const Arc arc = exact(row).arc(a);
    const std::optional<Key> cost = step_cost(words_of(index), row, arc);
    if (!cost) continue;
    const State& parent = states_[static_cast<std::size_t>(index)];
    const State state{parent.cost + *cost, Key{}, index, row, a, parent.depth + 1};
    if (!(state.cost < cutoff)) continue;
    std::copy_n(words_of(index), stride_, child_.data());
    move_front(child_.data(), row, arc.target);
    static_cast<void>(exact(row).grow_arcs(arc.target));
    forget(child_.data());
    const std::int32_t kept = keep_state(child_.data(), state);
    if (kept == kNothing) continue;
    const State& now = states_[static_cast<std::size_t>(kept)];
    if (now.to_go.is_impossible()) continue;
    const Key total = now.cost + now.to_go;
    if (!(total < cutoff)) continue;
    heap_.push_back(Waiting{total, now.depth, kept});
    std::push_heap(heap_.begin(), heap_.end());
  }
  return kNothing;
}

SweepResult Sweep::run(const Key& cutoff, std::int64_t budget) {
  SweepResult result;
  const Key root = root_bound();
  if (root.is_impossible() || !(root < cutoff)) return result;
  words_.clear();
  states_.clear();
  slots_.clear();
  heap_.clear();
  for (std::int32_t row = 0; row < static_cast<std::int32_t>(exact_.size()); ++row) static_cast<void>(exact(row).grow_arcs(0));
  const std::int32_t start = keep_state(child_.data(), State{Key{}, root, kNothing, kNothing, kNothing, 0});
  heap_.push_back(Waiting{root, 0, start});
  while (!heap_.empty()) {
    const Waiting next = heap_.front();
    std::pop_heap(heap_.begin(), heap_.end());
    heap_.pop_back();
    const State& state = states_[static_cast<std::size_t>(next.state)];
    if (state.cost + state.to_go != next.total || state.depth != next.depth) continue;  // a cheaper way was found since
    if (result.expansions++ >= budget) {
      result.outcome = SweepResult::Outcome::OutOfBudget;
      result.bound = next.total;
      return result;
    }
    const std::int32_t goal = expand(next.state, cutoff);
    if (goal == kNothing) continue;
    result.outcome = SweepResult::Outcome::Best;
    result.cost = result.bound = states_[static_cast<std::size_t>(goal)].cost;
    result.rows = rows_of(goal);
    return result;
  }
  return result;
}

SweepResult Sweep::run_beam(const Key& cutoff, std::size_t width) {
  SweepResult result;
  words_.clear();
  states_.clear();
  slots_.clear();
  const Key root = root_bound();
  if (root.is_impossible()) return result;
  for (std::int32_t row = 0; row < static_cast<std::int32_t>(exact_.size()); ++row) static_cast<void>(exact(row).grow_arcs(0));
  std::vector<std::int32_t> level{keep_state(child_.data(), State{Key{}, root, kNothing, kNothing, kNothing, 0})};
  std::int32_t best = kNothing;
  Key limit = cutoff;
  while (!level.empty()) {
    heap_.clear();
    for (const std::int32_t state : level) {
      const std::int32_t goal = expand(state, limit);
      if (goal == kNothing || !(states_[static_cast<std::size_t>(goal)].cost < limit)) continue;
      best = goal;
      limit = states_[static_cast<std::size_t>(goal)].cost;
    }
    std::ranges::sort(heap_, [](const Waiting& a, const Waiting& b) { return b < a; });
    level.clear();
    for (const Waiting& waiting : heap_) {
      if (level.size() < width && (level.empty() || level.back() != waiting.state)) level.push_back(waiting.state);
    }
  }
  if (best == kNothing) return result;
  result.outcome = SweepResult::Outcome::Best;
  result.cost = states_[static_cast<std::size_t>(best)].cost;
  result.bound = root;
  result.rows = rows_of(best);
  return result;
}

std::vector<std::vector<std::vector<Chosen>>> Sweep::rows_of(std::int32_t goal) {
  std::vector<std::vector<std::vector<Chosen>>> rows(exact_.size());
  for (std::size_t r = 0; r < rows.size(); ++r) rows[r].resize(panel_->rows[r].runs.size());
  for (std::int32_t at = goal; states_[static_cast<std::size_t>(at)].parent != kNothing;) {
    const State& state = states_[static_cast<std::size_t>(at)];
    const Arc& arc = exact(state.row).arc(state.arc);
    if (arc.choice != -2) {
      const auto run = static_cast<std::size_t>(exact(state.row).node(arc.target).run);
      rows[static_cast<std::size_t>(state.row)][run].push_back(Chosen{arc.length, arc.choice, arc.cut});
    }
    at = state.parent;
  }
  for (auto& row : rows) {
    for (auto& run : row) std::ranges::reverse(run);
  }
  return rows;
}

}  // namespace stringcourse::bond
