#include "bond/search.hpp"

#include <algorithm>
#include <utility>

#include "bond/sweep.hpp"

namespace stringcourse::bond {
namespace {

constexpr std::size_t kBeamWidth = 400;

/// Whether a layout of whole pieces is best among ALL layouts. With no short lap, no shifted joint and no more
/// deviation than the runs need by themselves, every other layout has a cut, or deviates more.
bool beats_everything(const SweepResult& result, std::uint64_t least_deviation, Order order) {
  const Cost cost = cost_of(result.cost, order);
  return order != Order::Weighted && cost.short_laps == 0 && cost.cuts == 0 && cost.short_pieces == 0 &&
         cost.shifted_joints == 0 && static_cast<std::uint64_t>(cost.joint_deviation) == least_deviation;
}

PanelAnswer answer_of(SweepResult&& result, Order order, const Key& bound) {
  PanelAnswer answer;
  answer.rows = std::move(result.rows);
  answer.cost = cost_of(result.cost, order);
  answer.least_possible = cost_of(bound, order);
  answer.proven = !(bound < result.cost);
  answer.expansions = result.expansions;
  return answer;
}

/// Which row stops the panel, and which of its runs.
PanelStop stop_of(const Panel& panel, Sweep& sweep) {
  PanelStop stop{true, sweep.impossible_row(), -1};
  if (stop.row < 0) return stop;
  Panel alone = panel;
  const Row row = panel.rows[static_cast<std::size_t>(stop.row)];
  alone.course_rows = {0};
  for (std::size_t run = 0; run < row.runs.size() && stop.run < 0; ++run) {
    alone.rows = {row};
    alone.rows[0].runs = {row.runs[run]};
    alone.rows[0].courses = {1};
    Sweep single(alone, Stage::Everything);
    if (single.root_bound().is_impossible()) stop.run = static_cast<std::int32_t>(run);
  }
  return stop;
}

}  // namespace

std::expected<PanelAnswer, PanelStop> solve_panel(const Panel& panel, std::int64_t budget) {
  const Order order = order_of(panel);
  SweepResult best;
  std::int64_t expansions = 0;
  if (order != Order::Weighted) {
    Sweep whole(panel, Stage::Whole);
    best = whole.run(key_of(Charge{.short_laps = 1}, order), budget);  // only layouts without a short lap
    if (best.outcome == SweepResult::Outcome::Best && beats_everything(best, whole.least_deviation(), order)) {
      const Key bound = best.cost;
      return answer_of(std::move(best), order, bound);
    }
    expansions = best.expansions;
  }
  Sweep sweep(panel, Stage::Everything);
  SweepResult all = sweep.run(best.cost, budget);
  expansions += all.expansions;
  const bool have_best = !best.cost.is_impossible();
  if (all.outcome == SweepResult::Outcome::NoneBetter && !have_best) return std::unexpected(stop_of(panel, sweep));
  Key bound = best.cost;
  if (all.outcome == SweepResult::Outcome::OutOfBudget) {
    bound = std::min(all.bound, best.cost);
    all = sweep.run_beam(best.cost, kBeamWidth);
    if (all.outcome != SweepResult::Outcome::Best && !have_best) return std::unexpected(PanelStop{false, -1, -1});
  } else if (all.outcome == SweepResult::Outcome::Best) {
    bound = all.cost;
  }
  if (all.outcome == SweepResult::Outcome::Best) best = std::move(all);
  best.expansions = expansions;
  return answer_of(std::move(best), order, bound);
}

std::optional<Cost> bound_panel(const Panel& panel) {
  Sweep sweep(panel, Stage::Everything);
  const Key bound = sweep.root_bound();
  if (bound.is_impossible()) return std::nullopt;
  return cost_of(bound, order_of(panel));
}

}  // namespace stringcourse::bond
