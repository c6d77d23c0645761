// The sweep: the search itself.
#include "bond/sweep.hpp"

#include <algorithm>
#include <cstring>

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

}  // namespace

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
  static_cast<void>(room_->take(looks_of_state()));
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
  static_cast<void>(room_->take(end_arc - first_arc + 1));
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
  std::int64_t expansions = 0;
  for (;;) {
    SweepResult step = advance(cutoff, budget - expansions);
    expansions += step.expansions;
    step.expansions = expansions;
    if (step.outcome != SweepResult::Outcome::Unfinished) return step;
  }
}

/// First the bound that the pairs give within the allowance, then the search within it, then the next allowance.
SweepResult Sweep::advance(const Key& cutoff, std::int64_t budget) {
  SweepResult result;
  const bool weighted = order_ == Order::Weighted;
  std::uint64_t allowance = least_allowance_;
  if (!cutoff.is_impossible() && !weighted) allowance = std::min(allowance, first_term(cutoff, *panel_));
  const Key beyond = first_term_key(allowance + 1, *panel_);
  const bool last = weighted || !(beyond < cutoff);
  const Key limit = last ? cutoff : beyond;
  const Allowed allowed = allow(allowance);
  if (ran_out()) {
    result.outcome = SweepResult::Outcome::OutOfBudget;
    result.bound = sure_bound();
    return result;
  }
  if (allowed.possible && !bounded_) {
    bounded_ = true;
    result.bound = bound_at_root();
    result.outcome = SweepResult::Outcome::Unfinished;
    if (result.bound < limit) return result;
  }
  if (allowed.possible) {
    result = run_within(limit, budget);
    if (result.outcome != SweepResult::Outcome::NoneBetter) return result;
  }
  if (last || (!allowed.next && !(allowed.possible && cut_off_))) {
    result.outcome = SweepResult::Outcome::NoneBetter;
    return result;
  }
  least_allowance_ = allowed.possible ? stepped(allowance) : next_after(allowance, *allowed.next);
  bounded_ = false;
  result.outcome = SweepResult::Outcome::Unfinished;
  result.bound = beyond;
  return result;
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
    if (result.expansions++ >= budget || room_->is_out()) {
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
  for (int widening = 0; widening < widenings && result.outcome != SweepResult::Outcome::Best && !ran_out();
       ++widening) {
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
  while (!level.empty() && !room_->is_out()) {
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
