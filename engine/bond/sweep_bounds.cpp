// The sweep: its set-up, and the bounds that guide it.
#include "bond/sweep.hpp"

#include <algorithm>
#include <numeric>

namespace stringcourse::bond {
namespace {

constexpr std::int32_t kNothing = -1;

bool is_alike(const Cell& a, const Cell& b) { return a.from == b.from && a.to == b.to; }
bool is_alike(const RowRun& a, const RowRun& b) {
  return a.start == b.start && a.end == b.end && a.at_start == b.at_start && a.at_end == b.at_end &&
         a.start_lintel == b.start_lintel && a.end_lintel == b.end_lintel;
}
bool is_alike(const PieceChoice& a, const PieceChoice& b) {
  return a.length == b.length && a.is_cut == b.is_cut && a.corner == b.corner && a.half == b.half &&
         a.weight == b.weight &&
         std::ranges::equal(a.cells, b.cells, [](const Cell& x, const Cell& y) { return is_alike(x, y); });
}
bool is_alike(const Row& a, const Row& b) {
  return a.courses.size() == b.courses.size() && a.make_up_from == b.make_up_from && a.uncut_zones.empty() &&
         b.uncut_zones.empty() &&
         std::ranges::equal(a.runs, b.runs, [](const RowRun& x, const RowRun& y) { return is_alike(x, y); }) &&
         std::ranges::equal(a.choices, b.choices,
                            [](const PieceChoice& x, const PieceChoice& y) { return is_alike(x, y); }) &&
         std::ranges::equal(a.make_up_cells, b.make_up_cells,
                            [](const Cell& x, const Cell& y) { return is_alike(x, y); });
}

}  // namespace

Sweep::Sweep(const Panel& panel, Stage stage, std::int64_t places, Room& room)
    : panel_(&panel), order_(order_of(panel)), places_(places), room_(&room) {
  const std::int64_t longest = longest_target(panel);
  std::int64_t least_module = std::int64_t{1} << 60;
  menus_.reserve(panel.rows.size());
  for (const Row& row : panel.rows) {
    menus_.push_back(menu_of(row, stage));
    menus_.back().most_families = most_families(panel, room);
    for (const PieceChoice& choice : menus_.back().choices) {
      least_module = std::min(least_module, choice.length + least_joint(panel));
    }
    if (menus_.back().make_up_from > 0) least_module = std::min(least_module, panel.least_piece + least_joint(panel));
  }
  reaches_ = reaches_of(menus_, panel.joint, longest);
  graphs_.reserve(panel.rows.size());
  for (std::size_t r = 0; r < panel.rows.size(); ++r) {
    graphs_.emplace_back(panel, panel.rows[r], menus_[r], *reaches_[r]);
    graphs_.back().charge_to(room_);
    cut_short_ = cut_short_ || reaches_[r]->too_large() || graphs_.back().is_cut_short();
  }
  find_alike();
  for (std::size_t r = 0; r < panel.rows.size(); ++r)
    row_bounds_.emplace_back(graph(static_cast<std::int32_t>(r)), *room_);
  const std::int64_t window = std::max({panel.least_lap, panel.short_lap_below, panel.match_within});
  memory_ = static_cast<std::size_t>(window / std::max<std::int64_t>(least_module, 1)) + 2;
  stride_ = panel.rows.size() * (1 + memory_);
  child_.resize(stride_);
  find_neighbours();
  make_sharings(stage);
}

/// Rows that are one problem share a graph, and pairs of them a bound. Not where families are closed pair by pair.
void Sweep::find_alike() {
  for (std::size_t row = 0; row < panel_->rows.size(); ++row) {
    std::size_t first = row;
    for (std::size_t other = 0; order_ == Order::Weighted && other < first; ++other) {
      if (is_alike(panel_->rows[other], panel_->rows[row])) first = other;
    }
    alike_.push_back(static_cast<std::int32_t>(first));
  }
}

void Sweep::find_neighbours() {
  const std::size_t count = panel_->rows.size();
  neighbours_.resize(count);
  upper_.resize(count);
  lower_.resize(count);
  const RowPairs pairs = row_pairs(*panel_);
  for (const auto& [first, second, weight] : pairs.lying) {
    lying_.push_back(Edge{first, second, PairTerms{PairTerms::Pieces::Counted, weight, 0}});
    neighbours_[static_cast<std::size_t>(first)].push_back({second, weight});
    neighbours_[static_cast<std::size_t>(second)].push_back({first, weight});
  }
  if (order_ == Order::Weighted) return;
  for (const auto& [first, second, weight] : pairs.shifting) {
    upper_[static_cast<std::size_t>(first)].push_back({second, weight});
    lower_[static_cast<std::size_t>(second)].push_back({first, weight});
    shifting_.push_back(Edge{first, second, PairTerms{PairTerms::Pieces::Counted, 0, weight}});
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
    return panel_->rows[static_cast<std::size_t>(edge.first)].band ==
           panel_->rows[static_cast<std::size_t>(edge.second)].band;
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
  const auto same_terms = [&](const PairTerms& terms) {
    return terms.pieces == edge.terms.pieces && terms.laps == edge.terms.laps && terms.shifts == edge.terms.shifts;
  };
  const auto alike = [&](std::int32_t a, std::int32_t b) {
    return alike_[static_cast<std::size_t>(a)] == alike_[static_cast<std::size_t>(b)];
  };
  const std::size_t added = pairs_.size();
  std::size_t same = added;
  for (std::size_t p = 0; p < added; ++p) {
    const Edge& known = pairs_[p].edge;
    if (!same_terms(known.terms)) continue;
    if (known.first == edge.first && known.second == edge.second) return static_cast<std::int32_t>(p);
    if (same == added && alike(known.first, edge.first) && alike(known.second, edge.second)) same = pairs_[p].same;
  }
  if (same < added) {
    pairs_.push_back(Pair{edge, pairs_[same].bound, same});
  } else {
    pairs_.push_back(
        Pair{edge, std::make_shared<PairBound>(*panel_, graph(edge.first), graph(edge.second), edge.terms), added});
    pairs_.back().bound->share_room(&places_, room_);
  }
  return static_cast<std::int32_t>(added);
}

bool Sweep::ran_out() const {
  return cut_short_ || room_->is_out() ||
         std::ranges::any_of(pairs_, [](const Pair& pair) { return pair.bound->ran_out(); });
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
    const bool paired = std::any_of(
        sharing.pairs.begin(), sharing.pairs.begin() + static_cast<std::ptrdiff_t>(counted), [&](std::int32_t p) {
          const Edge& known = pairs_[static_cast<std::size_t>(p)].edge;
          return known.first == edge.first && known.second == edge.second && known.terms.laps > 0;
        });
    if (paired) continue;
    edge.terms.pieces = PairTerms::Pieces::Free;
    sharing.pairs.push_back(pair_of(edge));
  }
  sharings_.push_back(std::move(sharing));
}

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

Key Sweep::root_bound() {
  for (std::uint64_t allowance = 0;;) {
    const Allowed allowed = allow(allowance);
    if (ran_out()) return sure_bound();
    if (allowed.possible) return bound_at_root();
    if (!allowed.next) return Key::impossible();
    allowance = next_after(allowance, *allowed.next);
  }
}

/// Finds what each pair takes at least, then lets each take what the least of all others leaves of the allowance; what
/// it can't use within that is closed to the pairs built after it.
bool Sweep::build_sharing(const Sharing& sharing, std::uint64_t allowance, Allowed& allowed, std::vector<char>& built) {
  std::uint64_t taken = 0;
  std::vector<std::size_t> looked_for;
  const auto missing = [&](std::uint64_t needed) { allowed.next = std::max(allowed.next.value_or(0), needed); };
  for (const std::int32_t index : sharing.pairs) {
    const std::size_t p = pairs_[static_cast<std::size_t>(index)].same;
    PairBound& pair = *pairs_[p].bound;
    if (places_ < 0 || room_->is_out()) return false;
    const bool found = std::ranges::find(looked_for, p) != looked_for.end();
    looked_for.push_back(p);
    if (!built[p] && !found && !pair.find_least(allowance > taken ? allowance - taken : 0)) {
      note_sure(taken + pair.surely_at_least());
      if (pair.next_allowance()) missing(taken + *pair.next_allowance());
      return false;
    }
    taken += pair.least_first_term();
    note_sure(taken);
  }
  if (laps_first()) {
    for (const std::int32_t index : sharing.pairs) note_least(pairs_[static_cast<std::size_t>(index)]);
    taken = std::max(taken, least_of_all_edges());
  }
  if (taken > allowance) {
    missing(taken);
    return false;
  }
  for (const std::int32_t index : sharing.pairs) {
    const std::size_t p = pairs_[static_cast<std::size_t>(index)].same;
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

/// Short laps are what two rows cost each other, never a row by itself: what each two take at least adds up.
void Sweep::note_least(const Pair& pair) {
  for (std::size_t e = 0; e < lying_.size(); ++e) {
    if (lying_[e].first == pair.edge.first && lying_[e].second == pair.edge.second && pair.edge.terms.laps > 0)
      least_of_edge_[e] = std::max(least_of_edge_[e], pair.bound->least_first_term());
  }
}

std::uint64_t Sweep::least_of_all_edges() const {
  return std::accumulate(least_of_edge_.begin(), least_of_edge_.end(), std::uint64_t{0});
}

void Sweep::note_sure(std::uint64_t first_term) {
  if (all_open_ && order_ != Order::Weighted) sure_first_term_ = std::max(sure_first_term_, first_term);
}

/// `wanted` is what pairs ask for through the families that an allowance leaves open; with more of them open it may be
/// less, and looking too far fills the tables. So no more than an eighth at a time, but for what is surely needed.
std::uint64_t Sweep::next_after(std::uint64_t allowance, std::uint64_t wanted) const {
  return std::max(std::min(std::max(allowance + 1, wanted), stepped(allowance)), sure_first_term_);
}

Sweep::Allowed Sweep::allow(std::uint64_t allowance) {
  if (built_for_ == allowance) return built_;
  built_for_.reset();
  Allowed allowed = build_all(allowance);
  built_for_ = allowance;
  built_ = allowed;
  return allowed;
}

/// What each two rows that lie on one another take at least, before any of them looks farther.
bool Sweep::find_least_of_edges(std::uint64_t allowance, Allowed& allowed) {
  std::uint64_t taken = 0;
  for (const std::int32_t index : sharings_.front().pairs) {
    Pair& pair = pairs_[static_cast<std::size_t>(index)];
    if (pair.edge.terms.laps == 0) continue;
    if (places_ < 0 || room_->is_out()) return false;
    if (!pair.bound->find_least(allowance > taken ? allowance - taken : 0)) {
      note_sure(taken + pair.bound->surely_at_least());
      if (pair.bound->next_allowance())
        allowed.next = std::max(allowed.next.value_or(0), taken + *pair.bound->next_allowance());
      return false;
    }
    taken += pair.bound->least_first_term();
    note_sure(taken);
    note_least(pair);
  }
  if (taken <= allowance) return true;
  allowed.next = std::max(allowed.next.value_or(0), taken);
  return false;
}

Sweep::Allowed Sweep::build_all(std::uint64_t allowance) {
  allowance_ = allowance;
  Allowed allowed;
  for (std::size_t row = 0; row < graphs_.size(); ++row) {
    graphs_[row].open_all_families();
    row_bounds_[row] = RowBound(graph(static_cast<std::int32_t>(row)), *room_);
    if (graphs_[row].run_without_family() >= 0) return allowed;
  }
  std::vector<char> built(pairs_.size(), 0);
  all_open_ = true;
  least_of_edge_.assign(lying_.size(), 0);
  if (laps_first() && !sharings_.empty() && !find_least_of_edges(allowance, allowed)) return allowed;
  for (const Sharing& sharing : sharings_) {
    // First the pairs that count pieces: what they close need not be looked at by those that count laps alone.
    Sharing counting{{}, sharing.alone};
    for (const std::int32_t pair : sharing.pairs) {
      if (pairs_[static_cast<std::size_t>(pair)].edge.terms.pieces == PairTerms::Pieces::Counted)
        counting.pairs.push_back(pair);
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
    row_bounds_[row] = RowBound(graph(static_cast<std::int32_t>(row)), *room_);
    if (row_bounds_[row].from(graph(static_cast<std::int32_t>(row)).root()).is_impossible())
      return static_cast<std::int32_t>(row);
  }
  return kNothing;
}

std::uint64_t Sweep::least_deviation() {
  std::uint64_t sum = 0;
  for (std::size_t row = 0; row < graphs_.size(); ++row) { sum += graphs_[row].least_deviation(); }
  return sum;
}

}  // namespace stringcourse::bond
