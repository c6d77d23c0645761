#include "answer/day_card.hpp"

#include <algorithm>
#include <map>
#include <set>

#include "answer/programme_parts.hpp"
#include "answer/site_parts.hpp"

namespace stringcourse {
namespace {

FactValue wall_names(const Answer& answer, const std::set<std::int32_t>& walls) {
  std::vector<FactValue> names;
  for (const std::int32_t wall : walls) names.emplace_back(answer.building.walls[static_cast<std::size_t>(wall)].name);
  return {FactValue::Kind::And, std::move(names)};
}

FactValue numbers(const std::vector<std::int64_t>& all) {
  std::vector<FactValue> values(all.begin(), all.end());
  return {FactValue::Kind::And, std::move(values)};
}

/// Units by their kind alone where the building has one series: "article-unit" says the kind first.
FactValue short_name(const Answer& answer, const Article& article) {
  return answer.building.series.size() == 1 ? article.name.values.front() : FactValue(article.name);
}

/// Whether a pallet is for one of these blocks, by wall and place along it.
bool serves(const PlacedPallet& pallet, const std::set<std::pair<std::int32_t, Length>>& blocks) {
  if (pallet.from_wall < 0) return false;
  const auto first = blocks.lower_bound({pallet.from_wall, pallet.from});
  return first != blocks.end() && *first <= std::pair(pallet.to_wall, pallet.to);
}

/// Courses finished on the day, each with its walls.
std::map<std::int32_t, std::set<std::int32_t>> courses_of(const WorkDay& day) {
  std::map<std::int32_t, std::set<std::int32_t>> courses;
  for (const auto& [wall, course] : day.finished) courses[course].insert(wall);
  return courses;
}

bool is_finished(const WorkDay& day, std::int32_t wall, std::int32_t course) {
  return std::ranges::contains(day.finished, std::pair(wall, course));
}

/// Bars along beams and lintels, and upright ones that begin in these courses.
void add_bars(std::vector<Fact>& said, const Answer& answer, const WorkDay& day) {
  std::map<std::pair<std::int32_t, std::int32_t>, std::int64_t> beams, uprights;  // by course and wall
  std::map<std::int32_t, std::int64_t> lintels;
  for (const steel::BarPiece& piece : answer.bar_pieces.pieces) {
    if (!is_finished(day, piece.wall, piece.first_course)) continue;
    const std::pair at(piece.first_course, piece.wall);
    if (piece.use == steel::BarUse::Beam || piece.use == steel::BarUse::Corner) ++beams[at];
    if (piece.use == steel::BarUse::Upright) ++uprights[at];
    if (piece.use == steel::BarUse::Lintel) ++lintels[piece.opening];
  }
  const auto wall = [&](std::int32_t at) { return answer.building.walls[static_cast<std::size_t>(at)].name; };
  for (const auto& [at, count] : uprights) said.push_back(fact("card-uprights", {count, at.first, wall(at.second)}));
  for (const auto& [at, count] : beams) said.push_back(fact("card-beam-bars", {count, at.first, wall(at.second)}));
  for (const auto& [opening, count] : lintels)
    said.push_back(fact("card-lintel-bars", {count, answer.building.openings[static_cast<std::size_t>(opening)].name}));
}

/// Ties in the beds on top of courses of inner walls.
void add_ties(std::vector<Fact>& said, const Answer& answer, const WorkDay& day) {
  std::map<std::int32_t, std::vector<Fact>> places;  // by course
  for (const steel::Tie& tie : answer.ties.ties) {
    const Junction& at = answer.building.junctions[static_cast<std::size_t>(tie.junction)];
    if (is_finished(day, at.abutting, tie.course))
      places[tie.course].push_back(
          fact("card-tie", {wall_of(answer.building, at.abutting).name, wall_of(answer.building, at.main).name}));
  }
  for (const auto& [course, all] : places)
    said.push_back(fact("card-ties", {course, listed(FactValue::Kind::And, all), all.size()}));
}

}  // namespace

std::vector<Fact> stacked_said(const Answer& answer, const WorkDay& day) {
  std::vector<Fact> said;
  if (!answer.site.pallets) return said;
  const std::vector<std::int32_t> run_of = planning::runs_of_pieces(answer.layout);
  const std::vector<PlacedPallet>& pallets = answer.site.pallets->pallets;
  for (std::size_t article = 0; article < answer.order.articles.size(); ++article) {
    const auto units = siting::units_of(answer, answer.order.articles[article]);
    if (!units) continue;
    std::set<std::pair<std::int32_t, Length>> blocks;
    for (const std::uint32_t index : day.pieces) {
      const Piece& piece = answer.layout.pieces[index];
      const std::int32_t wall = answer.layout.runs[static_cast<std::size_t>(run_of[index])].wall;
      if (units->has(answer.building.walls[static_cast<std::size_t>(wall)], piece))
        blocks.insert({wall, piece.start.nearest_nanometre() + piece.length.half_down()});
    }
    std::map<std::int32_t, std::vector<std::int64_t>> beside;
    for (std::size_t k = 0; k < pallets.size(); ++k) {
      if (pallets[k].article == static_cast<std::int64_t>(article) && serves(pallets[k], blocks))
        beside[pallets[k].beside].push_back(static_cast<std::int64_t>(k) + 1);
    }
    for (const auto& [wall, all] : beside) {
      said.push_back(fact("card-stacked", {short_name(answer, answer.order.articles[article]), numbers(all), all.size(),
                                           answer.building.walls[static_cast<std::size_t>(wall)].name}));
    }
  }
  return said;
}

std::vector<Fact> steel_said(const Answer& answer, const WorkDay& day) {
  std::vector<Fact> said;
  add_bars(said, answer, day);
  for (const auto& [course, walls] : courses_of(day)) {
    if (std::ranges::contains(answer.wires.courses, course))
      said.push_back(fact("card-wire", {course, wall_names(answer, walls)}));
  }
  add_ties(said, answer, day);
  return said;
}

std::vector<Fact> checks_said(const Answer& answer, const WorkDay& day) {
  std::vector<Fact> said, tops;
  for (const auto& [course, walls] : courses_of(day))
    tops.push_back(fact("card-top", {course, FactValue(top_of_course(answer.building, course), LengthForm::Both)}));
  std::vector<FactValue> values(tops.begin(), tops.end());
  if (!tops.empty()) said.push_back(fact("card-tops", {FactValue(FactValue::Kind::Commas, std::move(values))}));
  for (const std::int32_t index : day.tasks) {
    const Task& task = answer.programme.tasks[static_cast<std::size_t>(index)];
    if (task.work != WorkKind::GroutLift || task.lift > 1) continue;
    const std::int32_t last = answer.tallies.grout[static_cast<std::size_t>(task.pour)].last_course;
    const auto look = std::ranges::find(answer.inspection, last, &PourToInspect::last_course);
    if (look == answer.inspection.end()) continue;
    const auto open = std::ranges::count_if(look->lines, [](const LineToTick& line) { return line.ticked_by < 0; });
    if (open > 0) said.push_back(fact("card-inspect", {task.pour + 1, open}));
  }
  return said;
}

namespace {

/// Walls of one day that end alike.
struct Ending {
  bool stands_still = false;  // nothing is laid on them
  std::int32_t course = 0, begun = 0;
  friend auto operator<=>(const Ending&, const Ending&) = default;
};

Fact ending_said(const Answer& answer, const Ending& ending, const std::set<std::int32_t>& walls) {
  const FactValue names = wall_names(answer, walls);
  const auto high = [&](std::int32_t course) { return FactValue(planning::over_foot(answer.building, course)); };
  if (ending.course == 0) return fact("card-stop-begun", {names, ending.begun, high(ending.begun)});
  std::vector<FactValue> values{ending.course, names, high(ending.course)};
  const bool more = ending.begun > ending.course;
  if (ending.stands_still) values.emplace_back(walls.size());
  if (more) values.insert(values.end(), {ending.begun, high(ending.begun)});
  if (ending.stands_still) return {more ? "card-stands-part" : "card-stands", std::move(values)};
  return {more ? "card-stop-part" : "card-stop", std::move(values)};
}

}  // namespace

std::vector<Fact> stop_said(const Answer& answer, const WorkDay& day) {
  const std::vector<std::int32_t> run_of = planning::runs_of_pieces(answer.layout);
  std::set<std::int32_t> grow;
  for (const std::uint32_t piece : day.pieces)
    grow.insert(answer.layout.runs[static_cast<std::size_t>(run_of[piece])].wall);
  std::map<Ending, std::set<std::int32_t>> walls;
  for (const Reached& reached : day.reached) {
    if (reached.begun > 0) walls[{!grow.contains(reached.wall), reached.course, reached.begun}].insert(reached.wall);
  }
  std::vector<Fact> said;
  for (const auto& [ending, of] : walls) said.push_back(ending_said(answer, ending, of));
  if (said.empty()) said.push_back(fact("card-no-wall"));
  if (const Fact tall = tall_said(answer, day); !tall.empty()) said.push_back(tall);
  return said;
}

std::vector<Fact> day_card(const Answer& answer, const WorkDay& day) {
  std::vector<Fact> all = stacked_said(answer, day);
  for (const std::vector<Fact>& more : {steel_said(answer, day), checks_said(answer, day), stop_said(answer, day)})
    all.insert(all.end(), more.begin(), more.end());
  return all;
}

}  // namespace stringcourse
