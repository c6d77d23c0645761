#include "bond/sweep.hpp"

#include <algorithm>
#include <cstring>
#include <map>

#include "measure/fault.hpp"

namespace stringcourse::bond {
namespace {

constexpr std::int32_t kNothing = -1;
constexpr std::uint64_t kFartherLook = 64;  // of the first term, beyond an allowance that was too small

std::uint64_t hash_words(const std::int32_t* words, std::size_t count) {
  std::uint64_t hash = 0x2545f4914f6cdd1dULL;
  for (std::size_t i = 0; i < count; ++i) {
    hash ^= static_cast<std::uint32_t>(words[i]);
    hash *= 0x9e3779b97f4a7c15ULL;
    hash ^= hash >> 29;
  }
  return hash;
}

}  // namespace

// ---- set-up --------------------------------------------------------------------------------------------------------

Sweep::Sweep(const Panel& panel, Stage stage, std::int64_t room)
    : panel_(&panel), order_(order_of(panel)), room_(room) {
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
  graphs_.reserve(panel.rows.size());
  for (std::size_t r = 0; r < panel.rows.size(); ++r) graphs_.emplace_back(panel, panel.rows[r], menus_[r], reaches_[r]);
  for (RowGraph& graph : graphs_) row_bounds_.emplace_back(graph);
  const std::int64_t window = std::max({panel.least_lap, panel.short_lap_below, panel.match_within});
  memory_ = static_cast<std::size_t>(window / std::max<std::int64_t>(least_module, 1)) + 2;
  stride_ = panel.rows.size() * (1 + memory_);
  child_.resize(stride_);
  find_neighbours();
  make_sharings(stage);
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
    lying_.push_back(Edge{rows.first, rows.second, PairTerms{PairTerms::Pieces::Counted, weight, 0}});
    neighbours_[static_cast<std::size_t>(rows.first)].push_back({rows.second, weight});
    neighbours_[static_cast<std::size_t>(rows.second)].push_back({rows.first, weight});
  }
  if (order_ == Order::Weighted) return;
  for (const auto& [rows, weight] : shifting) {
    upper_[static_cast<std::size_t>(rows.first)].push_back({rows.second, weight});
    lower_[static_cast<std::size_t>(rows.second)].push_back({rows.first, weight});
    shifting_.push_back(Edge{rows.first, rows.second, PairTerms{PairTerms::Pieces::Counted, 0, weight}});
  }
}

/// Several ways to share out the costs; the best bound counts. Whole pieces are tried only for layouts without a short
/// lap, where the costs between rows that are not paired add nothing.
void Sweep::make_sharings(Stage stage) {
  if (stage == Stage::Bare) {
    add_sharing({}, {});
    return;
  }
  const auto same_band = [&](const Edge& edge) {
    return panel_->rows[static_cast<std::size_t>(edge.first)].band == panel_->rows[static_cast<std::size_t>(edge.second)].band;
  };
  const bool all_terms = stage != Stage::Whole && order_ != Order::Weighted;
  const std::vector<Edge> nothing;
  std::vector<Edge> within = lying_, across = lying_;
  std::ranges::stable_partition(within, same_band);
  std::ranges::stable_partition(across, [&](const Edge& edge) { return !same_band(edge); });
  const std::vector<Edge>& lying = all_terms ? lying_ : nothing;
  add_sharing(within, lying);
  if (panel_->rows.size() < 3) return;
  add_sharing(across, lying);
  std::reverse(across.begin(), std::ranges::find_if(across, same_band));
  add_sharing(across, lying);
  if (all_terms && !shifting_.empty()) add_sharing(shifting_, lying);
}

std::int32_t Sweep::pair_of(const Edge& edge) {
  for (std::size_t p = 0; p < pairs_.size(); ++p) {
    const Edge& known = pairs_[p].edge;
    if (known.first == edge.first && known.second == edge.second && known.terms.pieces == edge.terms.pieces &&
        known.terms.laps == edge.terms.laps && known.terms.shifts == edge.terms.shifts) {
      return static_cast<std::int32_t>(p);
    }
  }
  pairs_.push_back(Pair{edge, std::make_unique<PairBound>(*panel_, graph(edge.first), graph(edge.second), edge.terms)});
  pairs_.back().bound->share_room(&room_);
  return static_cast<std::int32_t>(pairs_.size()) - 1;
}

bool Sweep::ran_out() const {
  return std::ranges::any_of(pairs_, [](const Pair& pair) { return pair.bound->ran_out(); });
}

/// Pairs rows along `edges`, greedily, each row once; then adds what the remaining edges of `rest` cost, pieces free.
void Sweep::add_sharing(const std::vector<Edge>& edges, const std::vector<Edge>& rest) {
  Sharing sharing;
  std::vector<char> taken(panel_->rows.size(), 0);
  std::vector<std::int32_t> used;
  for (const Edge& edge : edges) {
    if (taken[static_cast<std::size_t>(edge.first)] || taken[static_cast<std::size_t>(edge.second)]) continue;
    taken[static_cast<std::size_t>(edge.first)] = taken[static_cast<std::size_t>(edge.second)] = 1;
    sharing.pairs.push_back(pair_of(edge));
  }
  for (std::int32_t row = 0; row < static_cast<std::int32_t>(taken.size()); ++row) {
    if (!taken[static_cast<std::size_t>(row)]) sharing.alone.push_back(row);
  }
  const std::size_t counted = sharing.pairs.size();
  for (Edge edge : rest) {
    const bool paired = std::any_of(sharing.pairs.begin(), sharing.pairs.begin() + static_cast<std::ptrdiff_t>(counted), [&](std::int32_t p) {
      const Edge& known = pairs_[static_cast<std::size_t>(p)].edge;
      return known.first == edge.first && known.second == edge.second && known.terms.laps > 0;
    });
    if (paired) continue;
    edge.terms.pieces = PairTerms::Pieces::Free;
    sharing.pairs.push_back(pair_of(edge));
  }
  sharings_.push_back(std::move(sharing));
}

// ---- bounds --------------------------------------------------------------------------------------------------------

PairPlace Sweep::place_of(const std::int32_t* words, const Edge& edge) {
  const std::int32_t* first = words + row_offset(edge.first);
  const std::int32_t* second = words + row_offset(edge.second);
  return PairPlace{first[0], second[0], first[1], second[1]};
}

Key Sweep::bound_of(const std::int32_t* words) {
  Key best{};
  for (const Sharing& sharing : sharings_) {
    Key sum{};
    for (const std::int32_t row : sharing.alone) {
      const Key part = row_bounds_[static_cast<std::size_t>(row)].from(words[row_offset(row)]);
      if (part.is_impossible()) return part;
      sum = sum + part;
    }
    for (const std::int32_t index : sharing.pairs) {
      Pair& pair = pairs_[static_cast<std::size_t>(index)];
      const Key part = pair.bound->from(place_of(words, pair.edge));
      if (part.is_impossible()) return part;
      sum = sum + part;
    }
    best = std::max(best, sum);
  }
  return best;
}

Key Sweep::bound_at_root() {
  std::ranges::fill(child_, kNothing);
  for (std::int32_t row = 0; row < static_cast<std::int32_t>(graphs_.size()); ++row) {
    child_[row_offset(row)] = graph(row).root();
    static_cast<void>(graph(row).grow_arcs(graph(row).root()));
  }
  return bound_of(child_.data());
}

Key Sweep::root_bound_within(const Key& cutoff) {
  const bool weighted = order_ == Order::Weighted;
  for (std::uint64_t allowance = least_allowance_;;) {
    const bool last = !cutoff.is_impossible() && (weighted || allowance >= cutoff.words[0] >> 32);
    const Allowed allowed = allow(allowance);
    if (ran_out()) return std::min(sure_bound(), cutoff);
    if (allowed.possible) return std::min(bound_at_root(), cutoff);
    if (last || !allowed.next) return cutoff;
    allowance = std::max(allowance + 1, *allowed.next);
    if (!cutoff.is_impossible()) allowance = std::min(allowance, cutoff.words[0] >> 32);
    least_allowance_ = allowance;
  }
}

Key Sweep::root_bound() { return root_bound_within(Key::impossible()); }

/// Finds what each pair takes at least, then lets each take what the least of all others leaves of the allowance; what
/// it can't use within that is closed to the pairs built after it.
bool Sweep::build_sharing(const Sharing& sharing, std::uint64_t allowance, Allowed& allowed, std::vector<char>& built) {
  std::uint64_t taken = 0;
  const auto missing = [&](std::uint64_t needed) { allowed.next = std::max(allowed.next.value_or(0), needed); };
  for (const std::int32_t index : sharing.pairs) {
    const auto p = static_cast<std::size_t>(index);
    PairBound& pair = *pairs_[p].bound;
    if (room_ < 0) return false;
    if (!built[p] && !pair.find_least(allowance > taken ? allowance - taken : 0)) {
      // How much it would take: a start for the next allowance, which may be more than is needed and costs only time.
      if (!pair.find_further(allowance + kFartherLook)) {
        note_sure(taken + pair.surely_at_least());
        if (pair.next_allowance()) missing(taken + *pair.next_allowance());
        return false;
      }
    }
    taken += pair.least_first_term();
    note_sure(taken);
  }
  if (taken > allowance) {
    missing(taken);
    return false;
  }
  for (const std::int32_t index : sharing.pairs) {
    const auto p = static_cast<std::size_t>(index);
    if (built[p]) continue;
    built[p] = 1;
    all_open_ = false;
    PairBound& pair = *pairs_[p].bound;
    pair.extend(pair.least_first_term() + allowance - taken);
    if (pair.next_allowance()) missing(allowance + 1);
    if (pairs_[p].edge.terms.laps > 0) pair.close_unused();
  }
  return true;
}

void Sweep::note_sure(std::uint64_t first_term) {
  if (all_open_ && order_ != Order::Weighted) sure_first_term_ = std::max(sure_first_term_, first_term);
}

Sweep::Allowed Sweep::allow(std::uint64_t allowance) {
  if (built_for_ == allowance) return built_;
  built_for_.reset();
  Allowed allowed = build_all(allowance);
  built_for_ = allowance;
  built_ = allowed;
  return allowed;
}

Sweep::Allowed Sweep::build_all(std::uint64_t allowance) {
  allowance_ = allowance;
  Allowed allowed;
  for (std::size_t row = 0; row < graphs_.size(); ++row) {
    graphs_[row].open_all_families();
    row_bounds_[row] = RowBound(graphs_[row]);
    if (graphs_[row].run_without_family() >= 0) return allowed;
  }
  std::vector<char> built(pairs_.size(), 0);
  all_open_ = true;
  for (const Sharing& sharing : sharings_) {
    // First the pairs that count pieces: what they close need not be looked at by those that count laps alone.
    Sharing counting{{}, sharing.alone};
    for (const std::int32_t pair : sharing.pairs) {
      if (pairs_[static_cast<std::size_t>(pair)].edge.terms.pieces == PairTerms::Pieces::Counted) counting.pairs.push_back(pair);
    }
    if (!build_sharing(counting, allowance, allowed, built)) return allowed;
    if (!build_sharing(sharing, allowance, allowed, built)) return allowed;
  }
  allowed.possible = true;
  return allowed;
}

std::int32_t Sweep::impossible_row() {
  for (std::size_t row = 0; row < graphs_.size(); ++row) {
    built_for_.reset();
    graphs_[row].open_all_families();
    row_bounds_[row] = RowBound(graphs_[row]);
    if (row_bounds_[row].from(graphs_[row].root()).is_impossible()) return static_cast<std::int32_t>(row);
  }
  return kNothing;
}

std::uint64_t Sweep::least_deviation() {
  std::uint64_t sum = 0;
  for (std::size_t row = 0; row < graphs_.size(); ++row) {
    sum += graphs_[row].least_deviation();
  }
  return sum;
}

// ---- one step ------------------------------------------------------------------------------------------------------

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
      if (closer_than(target.place, joint.place, panel_->least_lap)) lawful = false;
      if (closer_than(target.place, joint.place, panel_->short_lap_below)) charge.short_laps += beside.weight;
    });
  }
  return lawful;
}

bool Sweep::cells_meet(const std::int32_t* words, std::int32_t row, const Node& target) {
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
  const Node target = graph(row).node(arc.target);
  Charge charge;
  if (target.head_joint && !count_laps(words, row, target, charge)) return std::nullopt;
  if (target.held_count > 0 && !cells_meet(words, row, target)) return std::nullopt;
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
  const std::int32_t first_arc = graph(row).grow_arcs(node);
  const std::int32_t end_arc = first_arc + graph(row).node(node).arc_count;
  for (std::int32_t a = first_arc; a < end_arc; ++a) {
    const Arc arc = graph(row).arc(a);
    if (!graph(row).is_open(graph(row).node(arc.target).family)) continue;
    const std::optional<Key> cost = step_cost(words_of(index), row, arc);
    if (!cost) continue;
    const State& parent = states_[static_cast<std::size_t>(index)];
    const State state{parent.cost + *cost, Key{}, index, row, a, parent.depth + 1};
    if (!(state.cost < cutoff)) {
      cut_off_ = true;
      continue;
    }
    std::copy_n(words_of(index), stride_, child_.data());
    move_front(child_.data(), row, arc.target);
    static_cast<void>(graph(row).grow_arcs(arc.target));
    forget(child_.data());
    const std::int32_t kept = keep_state(child_.data(), state);
    if (kept == kNothing) continue;
    const State& now = states_[static_cast<std::size_t>(kept)];
    if (now.to_go.is_impossible()) continue;
    const Key total = now.cost + now.to_go;
    if (!(total < cutoff)) {
      cut_off_ = true;
      continue;
    }
    heap_.push_back(Waiting{total, now.depth, kept});
    std::push_heap(heap_.begin(), heap_.end());
  }
  return kNothing;
}

void Sweep::restart() {
  words_.clear();
  states_.clear();
  slots_.clear();
  heap_.clear();
  cut_off_ = false;
}

SweepResult Sweep::run(const Key& cutoff, std::int64_t budget) {
  SweepResult result;
  const bool weighted = order_ == Order::Weighted;
  std::uint64_t allowance = least_allowance_;
  if (!cutoff.is_impossible() && !weighted) allowance = std::min(allowance, cutoff.words[0] >> 32);
  for (;;) {
    const Key beyond{{(allowance + 1) << 32, 0, 0, 0}};
    const bool last = weighted || !(beyond < cutoff);
    const Allowed allowed = allow(allowance);
    if (ran_out()) {
      result.outcome = SweepResult::Outcome::OutOfBudget;
      result.bound = sure_bound();
      return result;
    }
    if (allowed.possible) {
      SweepResult within = run_within(last ? cutoff : beyond, budget - result.expansions);
      within.expansions += result.expansions;
      result = std::move(within);
      if (result.outcome != SweepResult::Outcome::NoneBetter) return result;
    }
    if (last || (!allowed.next && !(allowed.possible && cut_off_))) return result;
    allowance = allowed.possible ? allowance + std::max<std::uint64_t>(1, allowance / 8) : std::max(allowance + 1, *allowed.next);
  }
}

SweepResult Sweep::run_within(const Key& cutoff, std::int64_t budget) {
  SweepResult result;
  restart();
  const Key root = bound_at_root();
  if (root.is_impossible() || !(root < cutoff)) {
    cut_off_ = !root.is_impossible();
    return result;
  }
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
  const int widenings = pairs_.empty() ? 1 : 6;
  for (int widening = 0; widening < widenings && result.outcome != SweepResult::Outcome::Best && !ran_out(); ++widening) {
    static_cast<void>(allow(widening == 0 ? allowance_ : allowance_ * 2 + 4));
    if (!ran_out()) result = run_beam_within(cutoff, width);
  }
  return result;
}

SweepResult Sweep::run_beam_within(const Key& cutoff, std::size_t width) {
  SweepResult result;
  restart();
  const Key root = bound_at_root();
  if (root.is_impossible()) return result;
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
  std::vector<std::vector<std::vector<Chosen>>> rows(graphs_.size());
  for (std::size_t r = 0; r < rows.size(); ++r) rows[r].resize(panel_->rows[r].runs.size());
  for (std::int32_t at = goal; states_[static_cast<std::size_t>(at)].parent != kNothing;) {
    const State& state = states_[static_cast<std::size_t>(at)];
    const Arc& arc = graph(state.row).arc(state.arc);
    if (arc.choice != -2) {
      const auto run = static_cast<std::size_t>(graph(state.row).node(arc.target).run);
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
