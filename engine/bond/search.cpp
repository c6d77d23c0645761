#include "bond/search.hpp"

#include <algorithm>
#include <utility>

#include "bond/row_by_row.hpp"

namespace stringcourse::bond {
namespace {

constexpr std::size_t kBeamWidth = 24;
constexpr std::int64_t kBoundRoom = 200'000;
constexpr std::int64_t kLeastRoughRoom = 20'000;
constexpr std::size_t kStarts = 8, kQuickStarts = 2;  // rows that a quick layout is begun with
constexpr std::int64_t kConcedingShare = 4;      // of the budget: where rules are given up, good is soon good enough
constexpr std::int64_t kLeastSearched = 60'000;  // looks: with less it is no use to begin a search
constexpr std::int64_t kQuickShare = 2;          // of the room, for a first layout that keeps the rules
constexpr std::int64_t kRoughShare = 4;          // of the room that is left: kept for a beam, where no layout is known

PanelAnswer answer_of(const SweepResult& result, Order order, const Key& bound) {
  PanelAnswer answer;
  answer.rows = result.rows;
  answer.cost = cost_of(result.cost, order);
  answer.least_possible = cost_of(bound, order);
  answer.proven = !(bound < result.cost);
  answer.expansions = result.expansions;
  return answer;
}

}  // namespace

PanelSolver::PanelSolver(const Panel& panel, std::int64_t budget, OutOfRoom out_of_room, Room room,
                         std::int64_t quick_looks)
    : panel_(&panel),
      budget_(budget),
      out_of_room_(out_of_room),
      quick_looks_(quick_looks),
      order_(order_of(panel)),
      room_(room) {}

/// With no short lap, no shifted joint and no more deviation than the runs need by themselves, every other layout has a
/// cut, or deviates more.
bool PanelSolver::try_whole() {
  whole_tried_ = true;
  if (order_ == Order::Weighted) return false;
  if (room_.left() < kLeastSearched) {
    whole_ran_out_ = true;
    return false;
  }
  Sweep whole(*panel_, Stage::Whole, places(), room_);
  best_ = whole.run(key_of(Charge{.short_laps = 1}, order_), budget_);  // only layouts without a short lap
  whole_ran_out_ = best_.outcome == SweepResult::Outcome::OutOfBudget;
  least_deviation_ = whole.least_deviation();
  if (best_.outcome != SweepResult::Outcome::Best) {
    best_.cost = Key::impossible();
    return false;
  }
  const Cost cost = cost_of(best_.cost, order_);
  whole_is_best_ = cost.short_laps == 0 && cost.cuts == 0 && cost.short_pieces == 0 && cost.shifted_joints == 0 &&
                   static_cast<std::uint64_t>(cost.joint_deviation) == least_deviation_;
  return whole_is_best_;
}

Key PanelSolver::bound_without_whole() const {
  if (order_ == Order::Weighted || whole_ran_out_) return Key{};
  return best_.cost.is_impossible() ? key_of(Charge{.deviation = 1}, order_) : Key{};
}

Sweep& PanelSolver::everything() {
  if (!everything_) {
    everything_ = std::make_unique<Sweep>(*panel_, Stage::Everything, places(), room_);
    everything_->begin_at(first_term_);
  }
  return *everything_;
}

/// A good layout, not proven: the best of the rough families if that is found soon, else whatever a beam finds.
SweepResult PanelSolver::lay_roughly() {
  everything_.reset();
  for (const Stage stage : {Stage::Rough, Stage::Bare}) {
    Sweep rough(*panel_, stage, std::max(places() / 4, kLeastRoughRoom), room_);
    SweepResult found;
    if (stage == Stage::Rough) found = rough.run(best_.cost, budget_ / 16);
    if (found.outcome == SweepResult::Outcome::OutOfBudget || stage == Stage::Bare)
      found = rough.run_beam(best_.cost, kBeamWidth);
    if (found.outcome == SweepResult::Outcome::Best) return found;
  }
  return {};
}

/// A layout that is easily found: what the search must beat. Where a little finds none that keeps the rules, a search
/// tries once more with half its room.
void PanelSolver::lay_quickly(std::size_t most_starts) {
  if (quickly_tried_) return;
  quickly_tried_ = true;
  lay_rows(most_starts, quick_looks_);
  const bool gives_up_rules = !best_.cost.is_impossible() && cost_of(best_.cost, order_).conceded > 0;
  const std::int64_t more = room_.left() / kQuickShare;
  const bool is_search = most_starts == kStarts;
  if (is_search && more > quick_looks_ && (best_.cost.is_impossible() || gives_up_rules)) lay_rows(most_starts, more);
}

void PanelSolver::lay_rows(std::size_t most_starts, std::int64_t looks) {
  Room quick(looks);
  std::optional<RoughLayout> found = lay_row_by_row(*panel_, most_starts, quick);
  static_cast<void>(room_.take(looks - quick.left()));
  if (!found || !(found->cost < best_.cost)) return;
  best_.outcome = SweepResult::Outcome::Best;
  best_.cost = found->cost;
  best_.rows = std::move(found->rows);
}

std::expected<PanelAnswer, PanelStop> PanelSolver::solve_quickly() {
  if (!whole_tried_) static_cast<void>(try_whole());
  if (whole_is_best_) return answer_of(best_, order_, best_.cost);
  lay_quickly(kQuickStarts);
  if (best_.cost.is_impossible()) return std::unexpected(PanelStop{false, -1, -1});
  return answer_of(best_, order_, Key{});
}

std::expected<PanelAnswer, PanelStop> PanelSolver::concede(Effort effort) {
  lay_quickly(effort == Effort::Quick ? kQuickStarts : kStarts);
  if (best_.cost.is_impossible()) return std::unexpected(PanelStop{false, -1, -1});
  if (effort == Effort::Quick || room_.left() < kLeastSearched) return answer_of(best_, order_, Key{});
  SweepResult all = everything().run(best_.cost, budget_ / kConcedingShare);
  Key bound = best_.cost;
  if (all.outcome == SweepResult::Outcome::OutOfBudget) bound = std::min(all.bound, best_.cost);
  if (all.outcome == SweepResult::Outcome::Best) {
    bound = all.cost;
    best_ = std::move(all);
  }
  return answer_of(best_, order_, bound);
}

/// What is easily found; true where nothing else need be looked for.
bool PanelSolver::begin() {
  begun_ = true;
  if (!whole_tried_) static_cast<void>(try_whole());
  if (whole_is_best_) {
    bound_ = best_.cost;
    return true;
  }
  lay_quickly(kStarts);
  return false;
}

bool PanelSolver::advance() {
  if (!begun_ && begin()) return true;
  const bool have_layout = !best_.cost.is_impossible();
  if (room_.left() < kLeastSearched) {
    if (!have_layout) stop_ = PanelStop{false, -1, -1};
    return true;
  }
  const std::int64_t kept = have_layout ? 0 : std::max<std::int64_t>(room_.left() / kRoughShare, 0);
  static_cast<void>(room_.take(kept));
  SweepResult all = everything().advance(best_.cost, budget_ - searched_);
  static_cast<void>(room_.take(-kept));
  searched_ += all.expansions;
  first_term_ = everything_->next_first_term();
  switch (all.outcome) {
    case SweepResult::Outcome::Unfinished: raise_bound(all.bound); return !(bound_ < best_.cost);
    case SweepResult::Outcome::NoneBetter:
      if (!have_layout) stop_ = PanelStop{true, -1, -1};
      bound_ = best_.cost;
      return true;
    case SweepResult::Outcome::Best:
      best_ = std::move(all);
      bound_ = best_.cost;
      return true;
    case SweepResult::Outcome::OutOfBudget: return end_without_room(std::move(all));
  }
  return true;
}

/// The bound stands where it is; a layout is looked for roughly if none is known.
bool PanelSolver::end_without_room(SweepResult all) {
  raise_bound(all.bound);
  if (!best_.cost.is_impossible()) return true;
  if (!everything().ran_out()) all = everything().run_beam(best_.cost, kBeamWidth);
  if (all.outcome != SweepResult::Outcome::Best && out_of_room_ == OutOfRoom::LayRoughly) all = lay_roughly();
  if (all.outcome == SweepResult::Outcome::Best) {
    best_ = std::move(all);
  } else {
    stop_ = PanelStop{false, -1, -1};
  }
  return true;
}

std::expected<PanelAnswer, PanelStop> PanelSolver::found() {
  if (stop_) return std::unexpected(*stop_);
  PanelAnswer answer = answer_of(best_, order_, std::min(bound_, best_.cost));
  answer.expansions = searched_ + (whole_is_best_ ? best_.expansions : 0);
  return answer;
}

std::expected<PanelAnswer, PanelStop> PanelSolver::solve() {
  while (!advance()) {}
  return found();
}

std::expected<PanelAnswer, PanelStop> solve_panel(const Panel& panel, std::int64_t budget) {
  auto found = PanelSolver(panel, budget, OutOfRoom::LayRoughly, Room(budget * kLooksOfBudget)).solve();
  Room naming(kLooksOfStops);
  if (!found) return std::unexpected(located(panel, found.error(), naming));
  return found;
}

PanelStop located(const Panel& panel, PanelStop stop, Room& room) {
  if (!stop.proven) return stop;
  Panel strict = panel;
  strict.concedes = false;
  stop.row = Sweep(strict, Stage::Everything, kBoundRoom, room).impossible_row();
  if (stop.row < 0) return stop;
  const Row& row = strict.rows[static_cast<std::size_t>(stop.row)];
  Panel alone = strict;
  alone.course_rows = {0};
  for (std::size_t run = 0; run < row.runs.size() && stop.run < 0; ++run) {
    alone.rows.assign(1, row);
    alone.rows[0].runs.assign(1, row.runs[run]);
    alone.rows[0].courses = {1};
    Sweep single(alone, Stage::Everything, kBoundRoom, room);
    if (single.root_bound().is_impossible()) stop.run = static_cast<std::int32_t>(run);
  }
  return stop;
}

std::optional<Cost> bound_panel(const Panel& panel) {
  Room room(kBoundRoom * kLooksOfBudget);
  Sweep sweep(panel, Stage::Everything, kBoundRoom, room);
  const Key bound = sweep.root_bound();
  if (bound.is_impossible()) return std::nullopt;
  return cost_of(bound, order_of(panel));
}

}  // namespace stringcourse::bond
