#include "bond/panel_memo.hpp"

#include <algorithm>
#include <bit>
#include <utility>

#include "bond/search.hpp"

namespace stringcourse::bond {
namespace {

/// Of the room that a job has left, what one step of one panel may take.
constexpr std::int64_t kStepShare = 5;
/// What a step may take however little is left. (What is easily found takes looks in proportion to its pieces.)
constexpr std::int64_t kLeastLooks = 2'000;
/// What a step of the search looks at, at least.
constexpr std::int64_t kLeastStep = 4'000;
/// What the first layouts of all panels of a job take together, and each at least and at most.
constexpr std::int64_t kQuickLooks = 4'000'000, kLeastQuickLooks = 6'000, kMostQuickLooks = 300'000;
/// Looks whose tables may be held between the steps of panels, of all panels together: more are made anew.
constexpr std::int64_t kMostHeld = 1'000'000;
/// How many panels of a job may look once more, before and where they give up rules, each with this share of the job's
/// looks.
constexpr int kMostLookedAgain = 6;
constexpr std::int64_t kShareAgain = 6;
/// The least budget that looks are counted out by: quick layouts need some.
constexpr std::int64_t kQuickBudget = 200'000;

/// Everything that decides a panel's answer, as bytes.
class Bytes {
 public:
  void put(std::int64_t value) { text_.append(reinterpret_cast<const char*>(&value), sizeof value); }
  void put(const std::vector<Cell>& cells) {
    put(static_cast<std::int64_t>(cells.size()));
    for (const Cell& cell : cells) {
      put(cell.from);
      put(cell.to);
    }
  }
  void put(const Row& row) {
    put(row.band);
    put(row.make_up_from);
    put(row.make_up_cells);
    put(static_cast<std::int64_t>(row.courses.size()));
    put(static_cast<std::int64_t>(row.runs.size()));
    for (const RowRun& run : row.runs) {
      put(run.start);
      put(run.end);
      put(static_cast<std::int64_t>(run.at_start) * 256 + static_cast<std::int64_t>(run.at_end));
      put(run.start_lintel < 0 ? -1 : 1);  // which lintel shows only in which joints are compared: those of one lintel
      put(run.end_lintel < 0 ? -1 : 1);    // are a lintel's length from those of another
    }
    put(static_cast<std::int64_t>(row.choices.size()));
    for (const PieceChoice& choice : row.choices) {
      put(choice.length);
      put((choice.is_cut ? 1 : 0) + (choice.corner ? 2 : 0) + (choice.half ? 4 : 0));
      put(choice.weight);
      put(choice.cells);
    }
    put(row.fixed ? 1 : 0);
    put(static_cast<std::int64_t>(row.printed.size()));
    for (const std::vector<Chosen>& run : row.printed) {
      put(static_cast<std::int64_t>(run.size()));
      for (const Chosen& piece : run) put(piece.length * 4 + static_cast<std::int64_t>(piece.cut));
    }
    put(static_cast<std::int64_t>(row.uncut_zones.size()));
    for (const UncutZone& zone : row.uncut_zones) {
      put(zone.from);
      put(zone.to);
      put(static_cast<std::int64_t>(zone.rule));
    }
  }
  [[nodiscard]] std::string take() { return std::move(text_); }

 private:
  std::string text_;
};

std::string bytes_of(const Panel& panel) {
  Bytes bytes;
  for (const std::int64_t value : {panel.joint, panel.joint_least, panel.joint_most, panel.least_piece, panel.least_lap,
                                   panel.short_lap_below, panel.cut_step, panel.half_length, panel.match_within}) {
    bytes.put(value);
  }
  bytes.put((panel.cuts_before_laps ? 1 : 0) + (panel.weighted ? 2 : 0) + (panel.concedes ? 4 : 0));
  bytes.put(static_cast<std::int64_t>(panel.rows.size()));
  if (panel.concedes) {
    for (const std::int64_t value : {panel.far_joint_least, panel.far_joint_most, panel.stacked_lap}) bytes.put(value);
  }
  for (const Row& row : panel.rows) bytes.put(row);
  for (const std::int32_t row : panel.course_rows) bytes.put(row);
  bytes.put(static_cast<std::int64_t>(panel.bars.size()));
  for (const PanelBar& bar : panel.bars) {
    bytes.put(bar.centre);
    bytes.put(bar.half_width);
    bytes.put(bar.common_along);
  }
  return bytes.take();
}

}  // namespace

PanelCase::PanelCase() = default;
PanelCase::~PanelCase() = default;

PanelCase& PanelMemo::case_of(Panel panel) {
  std::string key = bytes_of(panel) + std::to_string(quick_looks_);  // with others another layout may come first
  const auto known = known_.find(key);
  if (known != known_.end()) {
    note_asked(*known->second);
    return *known->second;
  }
  auto fresh = std::make_unique<PanelCase>();
  fresh->job = job_;
  fresh->panel = std::move(panel);
  return *known_.emplace(std::move(key), std::move(fresh)).first->second;
}

/// By all the rules where that is possible.
std::expected<PanelAnswer, PanelStop> PanelMemo::concede(const Panel& panel, PanelSolver& solver) {
  Panel strict = panel;
  strict.concedes = false;
  PanelCase& kept = case_of(std::move(strict));
  while (kept.known != PanelCase::Known::Final) refine(kept);
  if (kept.answer) return *kept.answer;
  if (bears_on_nothing(panel)) return std::unexpected(*kept.stop);
  const Room own(kLooksOfBudget * budget_ / kShareAgain);
  const bool again = may_look_again() && solver.room_left().left() < own.left();
  if (again) {
    ++looked_again_;
    was_short_ = kept.was_short = true;
    if (!kept.stop->proven && look_again(kept, own)) return *kept.answer;
    PanelSolver roomy(panel, budget_, out_of_room_, own, quick_looks_);
    auto conceded = roomy.concede(PanelSolver::Effort::Search);
    looks_again_ += own.left() - roomy.room_left().left();
    return told(kept, std::move(conceded));
  }
  return told(kept, solver.concede(is_quick() ? PanelSolver::Effort::Quick : PanelSolver::Effort::Search));
}

/// Where nothing is conceded to, the stop is that of the rules; where those may yet be kept, nothing is proven.
std::expected<PanelAnswer, PanelStop> PanelMemo::told(const PanelCase& kept,
                                                      std::expected<PanelAnswer, PanelStop> conceded) {
  if (!conceded) return std::unexpected(*kept.stop);
  if (!kept.stop->proven) conceded->proven = false, conceded->least_possible = Cost{};  // the rules may yet be kept
  return conceded;
}

/// Before a rule is given up for want of room, a few panels are looked at once more, each with a room of its own.
bool PanelMemo::look_again(PanelCase& kept, Room own) {
  PanelSolver solver(kept.panel, budget_, out_of_room_, own, quick_looks_);
  auto found = solver.solve();
  looks_again_ += own.left() - solver.room_left().left();
  if (!found) {
    kept.stop = found.error();
    return false;
  }
  kept.answer = std::move(*found);
  kept.bound = key_of(kept.answer->least_possible, order_of(kept.panel));
  kept.stop.reset();
  return true;
}

bool PanelMemo::may_look_again() const {
  return !is_quick() && out_of_room_ == OutOfRoom::LayRoughly && looked_again_ < kMostLookedAgain;
}

void PanelMemo::share_quick_looks(std::size_t cases) {
  const auto many = static_cast<std::int64_t>(std::bit_ceil(cases));
  quick_looks_ = std::clamp(kQuickLooks / many, kLeastQuickLooks, kMostQuickLooks);
}

void PanelMemo::begin_change(std::int64_t looks) {
  refill(looks);
  ++job_;
  looked_again_ = 0;
  looks_again_ = 0;
  was_short_ = false;
}

void PanelMemo::begin_job(std::int64_t budget) {
  begin_change(kLooksOfBudget * std::max(budget, kQuickBudget));
  used_before_ = !known_.empty();
}

/// A case that an earlier job knows takes of this one's room what it took of that one's.
void PanelMemo::note_asked(PanelCase& which) {
  if (which.job == job_) return;
  which.job = job_;
  static_cast<void>(room_.take(which.looks));
  if (which.was_short || which.most_looks > step_room()) was_short_ = true;
}

std::int64_t PanelMemo::step_room() const { return std::max(room_.left() / kStepShare, kLeastLooks); }

void PanelMemo::refine(PanelCase& which) {
  if (which.known == PanelCase::Known::Final) return;
  const Room given(step_room());
  std::unique_ptr<PanelSolver> solver = std::move(which.solver);
  if (!solver) solver = std::make_unique<PanelSolver>(which.panel, budget_, out_of_room_, given, quick_looks_);
  solver->give(given);
  const std::int64_t held = which.held;
  held_ -= held;
  which.held = 0;
  take_step(which, *solver);
  const Room& left = solver->room_left();
  const std::int64_t taken = given.left() - left.left();
  static_cast<void>(room_.take(taken));
  which.looks += taken;
  which.most_looks = std::max(which.most_looks, taken);
  which.was_short = which.was_short || left.is_out();
  was_short_ = was_short_ || left.is_out();
  if (which.known == PanelCase::Known::Final) return;
  if (held_ + held + taken > kMostHeld) {
    solver->let_go_of_tables();
  } else {
    held_ += which.held = held + taken;
  }
  which.solver = std::move(solver);
}

void PanelMemo::take_step(PanelCase& which, PanelSolver& solver) {
  const auto finish = [&](std::expected<PanelAnswer, PanelStop> result) {
    which.known = PanelCase::Known::Final;
    if (!result) {
      which.stop = result.error();
      if (which.stop->proven)
        which.bound = Key::impossible();  // else what was proven before the room ran out still stands
      return;
    }
    which.answer = std::move(*result);
    which.bound = key_of(which.answer->least_possible, order_of(which.panel));
  };
  if (which.panel.concedes) return finish(concede(which.panel, solver));
  switch (which.known) {
    case PanelCase::Known::Nothing:
      if (solver.try_whole()) return finish(solver.solve());
      if (is_quick()) return finish(solver.solve_quickly());
      which.known = PanelCase::Known::NotWhole;
      which.bound = solver.bound_without_whole();
      return;
    case PanelCase::Known::NotWhole:
    case PanelCase::Known::Bounded:
      if (search(which, solver)) finish(solver.found());
      return;
    case PanelCase::Known::Final: return;
  }
}

/// As many looks as this case took before, so that what is made again after its tables were let go is no more than
/// half. True: it is done.
bool PanelMemo::search(PanelCase& which, PanelSolver& solver) {
  const std::int64_t given = solver.room_left().left(), enough = std::max(kLeastStep, which.looks);
  do {
    if (solver.advance()) return true;
  } while (given - solver.room_left().left() < enough);
  which.known = PanelCase::Known::Bounded;
  which.bound = std::max(which.bound, solver.bound());
  return false;
}

}  // namespace stringcourse::bond
