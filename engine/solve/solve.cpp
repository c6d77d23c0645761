#include "solve/solve.hpp"

#include <algorithm>

#include "bond/assemble.hpp"
#include "bond/panel_memo.hpp"
#include "ground/findings.hpp"
#include "ground/tape_doubt.hpp"
#include "job/words.hpp"
#include "measure/sorting.hpp"
#include "solve/as_built.hpp"
#include "solve/best_layout.hpp"
#include "solve/concession_findings.hpp"
#include "solve/lintel_findings.hpp"
#include "solve/offers.hpp"
#include "solve/poured.hpp"
#include "walls/resolve.hpp"
#include "walls/words.hpp"

namespace stringcourse {
namespace {

Finding finding(std::string code, std::string text, std::string rule, HoldPoint point) {
  return Finding{std::move(code), "", std::move(text), std::move(rule), point};
}

std::string count_text(std::int64_t count, std::string_view one, std::string_view many) {
  return std::to_string(count) + " " + std::string(count == 1 ? one : many);
}

/// What the layout itself has to say.
std::vector<Finding> findings_of(const Building& building, const Layout& layout) {
  std::vector<Finding> found;
  if (layout.relaxed_piece) {
    found.push_back(finding("piece-relaxed", "a piece shorter than " + tape_text(building.least_piece, building.tape) +
                                                 " stands in the wall: nothing longer " + (layout.proven ? "closes it" : "was found that closes it"), "least piece of the job",
                            HoldPoint::Order));
  }
  if (layout.relaxed_bearing) {
    found.push_back(finding("cut-under-bearing", "a saw cut with a whole cell stands under a lintel bearing: fill that cell",
                            "uncut, filled units under a bearing", HoldPoint::Lintels));
  }
  if (layout.cost.short_laps > 0) {
    found.push_back(finding("short-laps", count_text(layout.cost.short_laps, "joint lap is", "joint laps are") +
                                              " short: head joints stand off the middle of the unit below, though never nearer to its end than a quarter unit",
                            walls::cited("running-bond"), HoldPoint::Order));
  }
  if (layout.cost.extra_bars > 0) {
    found.push_back(finding("bars-beyond-spacing", count_text(layout.cost.extra_bars, "bar", "bars") +
                                                       " more than the spacing asked for needs: cells do not fall on it",
                            "greatest spacing asked for", HoldPoint::Pour));
  }
  if (!layout.proven && layout.stopped.empty() && building.laid_to.empty()) {
    const bool least = layout.cost.conceded == layout.least_possible.conceded && layout.cost.short_laps == layout.least_possible.short_laps && layout.cost.cuts == layout.least_possible.cuts;
    found.push_back(finding("not-proven", least ? "No layout has fewer short joint laps or saw cuts; whether another has more even joints was not searched to the end."
                                : layout.cost.conceded > 0 ? "No layout that keeps every rule was found; one that gives up fewer may exist: the search stopped at this program's limit."
                                                : "This layout keeps the rules, but a better one may exist: the search stopped at this program's limit.", "",
                            HoldPoint::Order));
  }
  return found;
}

/// Expanded doubt of a taped distance, k = 2.
Length tape_doubt(const Job& job) {
  const double doubt = 2 * ground::standard_doubt(ground::tape_reading_error(job));
  return Length::nanometres(static_cast<std::int64_t>(doubt * 1e9 + 0.5));
}

/// Where the building sits on the slab: too small a slab is said.
void look_at_slab(Answer& answer) {
  if (answer.job.readings.empty()) return;
  const Tape tape = answer.building.tape;
  answer.slab = steel::slab_room(answer.job, answer.building, answer.layout, ground::entries_that_count(answer.job, answer.building));
  if (!answer.slab.lacks.empty()) {
    answer.findings.push_back({"slab-not-read", "/readings",
                               "Where the walls sit on the slab is not read yet: read " + ground::listed(answer.slab.lacks) + " too.", "",
                               HoldPoint::FirstCourse});
  }
  if (!answer.slab.fit || answer.slab.fit->room >= Length()) return;
  answer.findings.push_back({"slab-too-small", "/readings",
                             "However the building is shifted and turned, a face or a dowel lacks room on the slab: " + tape_text(answer.slab.fit->room, tape) + " at the best.",
                             "edge readings and dowels (linear program)", HoldPoint::FirstCourse});
}

/// A large building is laid anew fewer times: the work stays about that of a garage's.
steel::DowelSearchRoom search_room(const Layout& layout) {
  constexpr std::size_t kGarage = 3'000;  // pieces
  steel::DowelSearchRoom room;
  if (layout.pieces.size() > kGarage) room.layouts = std::max<int>(8, static_cast<int>(static_cast<std::size_t>(room.layouts) * kGarage / layout.pieces.size()));
  return room;
}

void find_saving(Answer& answer) {
  const steel::DowelSearch& search = answer.dowel_search;
  if (search.layouts.empty()) return;
  std::string choices;
  for (const steel::DowelLayout& layout : search.layouts) choices += (choices.empty() ? "" : "; or ") + steel::dowel_layout_text(layout);
  answer.findings.push_back({"dowels-saved-by-layout", "/steel/kept_dowels",
                             "Of " + number_text(search.found) + " dowels found " + number_text(search.stands) + " stand. Laid otherwise, with bars where the dowels are (kept_dowels in the job), " + choices + "." + (search.complete ? "" : " Not every set of dowels was tried."),
                             "bond solved anew with those bars fixed, by a quick search", HoldPoint::FirstCourse});
}

/// Dowels that must be set nearly where they are planned: one finding for each wall.
void find_little_room(Answer& answer) {
  const Building& building = answer.building;
  for (int wall = 0; wall < static_cast<int>(building.walls.size()); ++wall) {
    std::string tight;
    for (const steel::Dowel& dowel : answer.dowels) {
      if (dowel.wall != wall) continue;
      const std::string room = steel::little_room_text(building, dowel, steel::kLittleRoom);
      if (!room.empty()) tight += (tight.empty() ? "" : "; ") + number_text(dowel.number) + ": " + room;
    }
    if (tight.empty()) continue;
    answer.findings.push_back({"dowel-little-room", building.walls[static_cast<std::size_t>(wall)].place,
                               "Set these dowels of " + building.walls[static_cast<std::size_t>(wall)].name + " with care: out of place by more than this they lose the grout round them in course 1 or 2. " + tight + ".",
                               "less room than " + tape_text(steel::kLittleRoom, building.tape) + ", to which bars are placed across a thin wall (TMS 602, as others quote it)", HoldPoint::Pour});
  }
}

/// What was read of the dowels.
void look_at_dowels_read(Answer& answer, const Wishes& wishes) {
  const Building& building = answer.building;
  const std::vector<bool> counts = ground::entries_that_count(answer.job, building);
  answer.found_dowels = steel::dowels_found(answer.job, building, answer.layout, counts, tape_doubt(answer.job));
  if (wishes.save_dowels) answer.dowel_search = steel::search_dowels(answer.job, answer.layout, answer.found_dowels, counts, tape_doubt(answer.job), search_room(answer.layout));
  find_saving(answer);
  for (const steel::FoundDowel& dowel : answer.found_dowels) {
    if (dowel.action == steel::Action::Stands) continue;
    const Wall& wall = building.walls[static_cast<std::size_t>(dowel.wall)];
    answer.findings.push_back({"dowel-" + std::string(enum_name(dowel.action)), "/readings/" + number_text(dowel.entry),
                               "Dowel at " + tape_text(dowel.along, building.tape) + " on " + wall.name + ": " + steel::action_text(dowel, building.tape) + ".",
                               "bend at most 1 in 6; bars of a non-contact lap at most a fifth of the lap and 8 in apart; grout clear round a bar 1/4 in fine, 1/2 in coarse (TMS 402 and 602, as others quote them)",
                               HoldPoint::FirstCourse});
  }
}

/// The dowels to be set, and what follows from those that were found.
void look_at_dowels(Answer& answer, const Wishes& wishes) {
  const Building& building = answer.building;
  if (!building.bars) return;
  const PourOf pour = pour_of(answer);
  answer.dowels = steel::dowels_of(pour.building, pour.layout);
  if (!answer.poured) find_little_room(answer);
  if (!answer.job.readings.empty()) look_at_dowels_read(answer, wishes);
  if (!answer.poured) return;
  const std::vector<steel::Dowel> now = steel::dowels_of(building, answer.layout);
  answer.dowels_now = steel::dowels_now(answer.dowels, now, answer.found_dowels);
  number_as_poured(answer.dowels, *answer.dowels_now, answer.found_dowels);
  std::ranges::copy(dowel_findings(building, answer.dowels, *answer.dowels_now), std::back_inserter(answer.findings));
}

/// What is found to stand otherwise than planned takes the plan's place.
std::vector<Finding> resolve_from_here(Answer& answer, bond::PanelMemo& memo) {
  Resolved resolved = solve_from_here(answer.job, answer.building, answer.layout, memo);
  if (resolved.rebuilt) {
    answer.building = std::move(resolved.rebuilt->building);
    answer.layout = std::move(resolved.rebuilt->layout);
    answer.as_built = std::move(static_cast<AsBuilt&>(*resolved.rebuilt));
  }
  return std::move(resolved.findings);
}

/// Whether `job` has the very layout of `known`: it differs in its name, its notes and its logs alone, and nothing in
/// these moves a jamb, a corner or a bar.
bool is_laid_as(const Answer& known, const Job& job) {
  const auto moves_something = [](const LaidEntry& entry) { return entry.found.has_value(); };
  if (known.as_built || known.kept_from || !job.steel.kept_dowels.empty()) return false;
  if (std::ranges::any_of(job.laid, moves_something)) return false;
  Job other = known.job;
  other.name = job.name, other.notes = job.notes, other.readings = job.readings, other.laid = job.laid;
  return other == job;
}

/// As known, as searched for, or like another.
Layout layout_of(const Answer& answer, const Wishes& wishes, bond::PanelMemo& memo) {
  if (wishes.known != nullptr && !wishes.offers && is_laid_as(*wishes.known, answer.job)) return wishes.known->layout;
  if (wishes.like != nullptr) return bond::lay_out_like(*wishes.like, answer.building, memo);
  return best_layout(answer.building, memo);
}

/// What the laid log comes to.
void look_at_wall(Answer& answer) {
  answer.laid = laying::as_laid(answer.job, answer.building, layouts_of(answer));
  std::ranges::copy(answer.laid->findings, std::back_inserter(answer.findings));
}

}  // namespace

std::expected<Answer, Refusals> solve(const Job& job, const Wishes& wishes) {
  bond::PanelMemo memo(wishes.search_budget);
  return solve(job, wishes, memo);
}

std::expected<Answer, Refusals> solve(const Job& job, const Wishes& wishes, bond::PanelMemo& memo) {
  std::expected<Building, Refusals> building = resolve(job);
  if (!building) return std::unexpected(std::move(building.error()));
  Answer answer;
  answer.job = job;
  answer.building = std::move(*building);
  memo.begin_job(wishes.search_budget);
  answer.layout = layout_of(answer, wishes, memo);
  answer.poured = is_poured(job, answer.building);
  if (answer.poured && wishes.at_wall) answer.kept_from = without_kept_dowels(job, memo);
  std::vector<Finding> found_here;
  if (wishes.at_wall) found_here = resolve_from_here(answer, memo);
  if (memo.was_short() && memo.was_used_before()) return solve(job, wishes);  // what was known before would show
  if (wishes.laid) wishes.laid(answer.layout);
  count_and_list(answer);
  answer.findings = answer.building.findings;
  std::ranges::copy(found_here, std::back_inserter(answer.findings));
  std::ranges::copy(findings_of(answer.building, answer.layout), std::back_inserter(answer.findings));
  std::ranges::copy(concession_findings(answer.building, answer.layout), std::back_inserter(answer.findings));
  std::ranges::copy(lintel_findings(answer.building, answer.lintels), std::back_inserter(answer.findings));
  answer.found = ground::as_found(job, answer.building, answer.layout);
  std::ranges::copy(answer.found.findings, std::back_inserter(answer.findings));
  answer.boards = setout::boards_of(job, pour_of(answer).building);
  answer.rod_readings = setout::rod_readings(job, pour_of(answer).building);
  look_at_dowels(answer, wishes);
  look_at_slab(answer);
  if (wishes.at_wall) look_at_wall(answer);
  sort_stably(answer.findings, [](const Finding& a, const Finding& b) {
    return a.hold_point != b.hold_point ? a.hold_point < b.hold_point : a.place < b.place;
  });
  const bool may_move = answer.layout.stopped.empty() && !answer.poured;  // once poured neither sides nor openings do
  if (wishes.offers && may_move) find_offers(answer, memo, wishes);
  return answer;
}

}  // namespace stringcourse
