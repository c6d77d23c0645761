#include "solve/solve.hpp"

#include <algorithm>
#include <optional>

#include "bond/assemble.hpp"
#include "bond/panel_memo.hpp"
#include "ground/as_found.hpp"
#include "ground/tape_doubt.hpp"
#include "measure/digits.hpp"
#include "solve/as_built.hpp"
#include "solve/best_layout.hpp"
#include "solve/bolt_findings.hpp"
#include "solve/concession_findings.hpp"
#include "solve/layout_findings.hpp"
#include "solve/lintel_findings.hpp"
#include "solve/offers.hpp"
#include "solve/poured.hpp"
#include "walls/resolve.hpp"

namespace stringcourse {
namespace {

/// Expanded doubt of a taped distance, k = 2.
Length tape_doubt(const Job& job) {
  const double doubt = 2 * ground::standard_doubt(ground::tape_reading_error(job));
  return Length::nanometres(static_cast<std::int64_t>(doubt * 1e9 + 0.5));
}

/// Where the building sits on the slab: too small a slab is said.
void look_at_slab(Answer& answer) {
  if (answer.job.readings.empty()) return;
  answer.slab = steel::slab_room(answer.job, answer.building, answer.layout,
                                 ground::entries_that_count(answer.job, answer.building));
  if (!answer.slab.lacks.empty()) {
    answer.findings.push_back({"slab-not-read", "/readings",
                               fact("slab-not-read", {listed(FactValue::Kind::And, answer.slab.lacks)}), "",
                               HoldPoint::FirstCourse});
  }
  if (!answer.slab.fit || answer.slab.fit->room >= Length()) return;
  answer.findings.push_back({"slab-too-small", "/readings", fact("slab-too-small", {answer.slab.fit->room}),
                             "slab-room", HoldPoint::FirstCourse});
}

/// A large building is laid anew fewer times: the work stays about that of a small one.
steel::DowelSearchRoom search_room(const Layout& layout) {
  constexpr std::size_t kSmallBuilding = 3'000;  // pieces
  steel::DowelSearchRoom room;
  if (layout.pieces.size() > kSmallBuilding)
    room.layouts = std::max<int>(
        8, static_cast<int>(static_cast<std::size_t>(room.layouts) * kSmallBuilding / layout.pieces.size()));
  return room;
}

void find_saving(Answer& answer) {
  const steel::DowelSearch& search = answer.dowel_search;
  if (search.layouts.empty()) return;
  std::vector<Fact> choices;
  for (const steel::DowelLayout& layout : search.layouts) {
    const Fact choice = steel::dowel_layout_said(layout);
    choices.push_back(choices.empty() ? choice : fact("or-otherwise", {choice}));
  }
  answer.findings.push_back({"dowels-saved-by-layout", "/steel/kept_dowels",
                             fact(search.complete ? "dowels-saved-by-layout" : "dowels-saved-not-all-tried",
                                  {search.found, search.stands, listed(FactValue::Kind::Semicolons, choices)}),
                             "dowels-kept", HoldPoint::FirstCourse});
}

/// Dowels that must be set nearly where they are planned: one finding for each wall.
void find_little_room(Answer& answer) {
  const Building& building = answer.building;
  const Length least = steel::little_room();
  for (int wall = 0; wall < static_cast<int>(building.walls.size()); ++wall) {
    std::vector<Fact> tight;
    for (const steel::Dowel& dowel : answer.dowels) {
      if (dowel.wall != wall) continue;
      const Fact room = steel::little_room_said(building, dowel, least);
      if (!room.empty()) tight.push_back(fact("dowel-number-room", {dowel.number, room}));
    }
    if (tight.empty()) continue;
    const Wall& named = building.walls[static_cast<std::size_t>(wall)];
    answer.findings.push_back({"dowel-little-room", named.place,
                               fact("dowel-little-room", {named.name, listed(FactValue::Kind::Semicolons, tight)}),
                               "dowel-little-room", HoldPoint::Pour});
  }
}

/// What is said of a dowel for which this is to be done; none of one that stands.
std::optional<Code> code_of(steel::Action action) {
  switch (action) {
    case steel::Action::Stands: return std::nullopt;
    case steel::Action::CannotTell: return "dowel-cannot-tell";
    case steel::Action::LapApart: return "dowel-lap-apart";
    case steel::Action::Bend: return "dowel-bend";
    case steel::Action::CutAndReplace: return "dowel-cut-and-replace";
  }
  return std::nullopt;
}

/// What was read of the dowels.
void look_at_dowels_read(Answer& answer, const Wishes& wishes) {
  const Building& building = answer.building;
  const std::vector<bool> counts = ground::entries_that_count(answer.job, building);
  answer.found_dowels = steel::dowels_found(answer.job, building, answer.layout, counts, tape_doubt(answer.job));
  if (wishes.save_dowels)
    answer.dowel_search = steel::search_dowels(answer.job, answer.layout, answer.found_dowels, counts,
                                               tape_doubt(answer.job), search_room(answer.layout));
  find_saving(answer);
  for (const steel::FoundDowel& dowel : answer.found_dowels) {
    const std::optional<Code> code = code_of(dowel.action);
    if (!code) continue;
    const Wall& wall = building.walls[static_cast<std::size_t>(dowel.wall)];
    answer.findings.push_back({*code, "/readings/" + number_text(dowel.entry),
                               fact("dowel-found", {dowel.along, wall.name, steel::action_said(dowel)}), "lap-apart",
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

/// Whether `job` has the very layout of `known`: it differs in its name, its notes, its logs, its order and its days
/// alone, and nothing in these moves a jamb, a corner or a bar.
bool is_laid_as(const Answer& known, const Job& job) {
  const auto moves_something = [](const LaidEntry& entry) { return entry.found.has_value(); };
  if (known.as_built || known.kept_from || !job.steel.kept_dowels.empty()) return false;
  if (std::ranges::any_of(job.laid, moves_something)) return false;
  Job other = known.job;
  other.name = job.name, other.notes = job.notes, other.readings = job.readings, other.laid = job.laid;
  other.order = job.order, other.days = job.days;
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

/// What runs out, and what the job says of articles that are not on the list.
void look_at_site(Answer& answer) {
  const Order& order = answer.order;
  for (const RunsOut& out : answer.site.short_of) {
    const Article& article = order.articles[static_cast<std::size_t>(out.article)];
    answer.findings.push_back({"runs-out", "/order/brought", runs_out_said(answer, out), "", article.wanted});
  }
  for (const std::size_t k : order.unknown_brought) {
    answer.findings.push_back({"brought-not-ordered", "/order/brought/" + number_text(k) + "/article",
                               fact("brought-not-ordered", {FactValue::typed(answer.job.order->brought[k].article)}),
                               "", HoldPoint::Order});
  }
  for (const std::size_t k : order.unknown_weights) {
    answer.findings.push_back({"weight-of-nothing", "/order/weights/" + number_text(k) + "/article",
                               fact("weight-of-nothing", {FactValue::typed(answer.job.order->weights[k].article)}), "",
                               HoldPoint::Order});
  }
}

/// What is ordered and how long it takes.
void look_at_order(Answer& answer, const Wishes& wishes) {
  answer.order = order_of(answer);
  if (wishes.at_rest) answer.bed_money = bed_money(answer);
  answer.programme = programme_of(answer);
  answer.weather = weather_of(answer.job);
  if (wishes.at_rest) answer.programme.chance = finish_chance(answer);
  if (wishes.at_rest) answer.site = site_of(answer);
  look_at_site(answer);
  std::ranges::copy(date_findings(answer), std::back_inserter(answer.findings));
  for (const std::size_t price : answer.order.unknown) {
    const ArticlePrice& stated = answer.job.order->prices[price];
    answer.findings.push_back({"price-of-nothing", "/order/prices/" + number_text(price) + "/article",
                               fact("price-of-nothing", {FactValue::typed(stated.article)}), "", HoldPoint::Order});
  }
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
  if (answer.poured && wishes.at_rest) answer.kept_from = without_kept_dowels(job, memo);
  std::vector<Finding> found_here;
  if (wishes.at_rest) found_here = resolve_from_here(answer, memo);
  if (memo.was_short() && memo.was_used_before()) return solve(job, wishes);  // what was known before would show
  if (wishes.laid) wishes.laid(answer.layout);
  count_and_list(answer);
  answer.findings = answer.building.findings;
  std::ranges::copy(found_here, std::back_inserter(answer.findings));
  std::ranges::copy(layout_findings(answer.building, answer.layout), std::back_inserter(answer.findings));
  std::ranges::copy(concession_findings(answer.building, answer.layout), std::back_inserter(answer.findings));
  std::ranges::copy(lintel_findings(answer.building, answer.lintels), std::back_inserter(answer.findings));
  std::ranges::copy(bolt_findings(answer.building, answer.plates), std::back_inserter(answer.findings));
  answer.found = ground::as_found(job, answer.building, answer.layout);
  std::ranges::copy(answer.found.findings, std::back_inserter(answer.findings));
  answer.boards = setout::boards_of(job, pour_of(answer).building);
  answer.rod_readings = setout::rod_readings(job, pour_of(answer).building);
  look_at_dowels(answer, wishes);
  answer.bar_pieces = steel::bar_pieces(answer.as_built ? answer.as_built->job : job, answer.building, answer.layout);
  if (wishes.search_budget >= bond::kLeastSearch) answer.bars_from_stock = bars_from_stock(answer.bar_pieces);
  std::ranges::copy(answer.bar_pieces.findings, std::back_inserter(answer.findings));
  answer.wires = steel::wires(answer.as_built ? answer.as_built->job : job, answer.building, answer.layout);
  answer.ties = steel::ties(answer.as_built ? answer.as_built->job : job, answer.building, answer.layout);
  answer.inspection = to_inspect(answer);
  answer.pour_cards = pour_cards(answer);
  std::ranges::copy(grout_log_findings(answer), std::back_inserter(answer.findings));
  look_at_slab(answer);
  if (wishes.at_rest) look_at_wall(answer);
  look_at_order(answer, wishes);
  sort_findings(answer.findings);
  answer.points = points_as_asked(answer);
  const bool may_move = answer.layout.stopped.empty() && !answer.poured;  // once poured neither sides nor openings do
  if (wishes.offers && may_move) find_offers(answer, memo, wishes);
  return answer;
}

}  // namespace stringcourse
