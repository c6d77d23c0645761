// What the job does not say yet and a hold point asks.
#include <algorithm>

#include "answer/answer.hpp"
#include "ground/findings.hpp"
#include "measure/digits.hpp"

namespace stringcourse {
namespace {

/// "D1", or "opening 3" of one without a name.
FactValue name_of(const Opening& opening, std::size_t index) {
  return opening.name.empty() ? FactValue(fact("lack-opening-number", {index + 1})) : FactValue(opening.name);
}

void add_order(const Answer& answer, std::vector<Lack>& lacks) {
  if (answer.job.name.empty()) lacks.push_back({fact("lack-name"), "/name"});
  if (!answer.job.units.stocked) { lacks.push_back({fact("lack-stocked"), "/units"}); }
  for (const Series& series : answer.building.series) {
    if (!series.cells_assumed) continue;
    lacks.push_back({fact("lack-cells", {series.title}), "/units"});
  }
}

void add_pour(const Answer& answer, std::vector<Lack>& lacks) {
  if (!answer.job.steel.bars) { lacks.push_back({fact("lack-bars"), "/steel"}); }
  if (!answer.job.setting_out) lacks.push_back({fact("lack-setting-out"), ""});
  if (answer.found.tape.lines.empty()) { lacks.push_back({fact("lack-lines-read"), "/readings"}); }
}

void add_first_course(const Answer& answer, std::vector<Lack>& lacks) {
  const auto lack = [&](Fact says) { lacks.push_back({std::move(says), "/readings"}); };
  const ground::AsFound& found = answer.found;
  if (found.tape.lines.empty()) lack(fact("lack-poured-read"));
  if (!found.tape.of_lines && !found.tape.tape_again.empty()) lack(fact("lack-tape-again"));
  if (!found.levels) lack(fact("lack-rod"));
  else if (!found.levels->bed) lack(fact("lack-rod-on-slab"));
  if (!answer.dowels.empty() && answer.found_dowels.empty()) lack(fact("lack-dowels"));
}

void add_lintels(const Answer& answer, std::vector<Lack>& lacks) {
  for (std::size_t index = 0; index < answer.job.openings.size(); ++index) {
    if (answer.job.openings[index].lintel || index >= answer.building.openings.size()) continue;
    if (!answer.building.openings[index].lintel) continue;
    lacks.push_back(
        {fact("lack-lintel", {name_of(answer.job.openings[index], index)}), "/openings/" + number_text(index)});
  }
}

void add_grout(const Answer& answer, std::vector<Lack>& lacks) {
  if (answer.job.steel.bars && answer.job.steel.pour_tops.empty()) { lacks.push_back({fact("lack-pours"), "/steel"}); }
  for (const steel::Unsaid& one : answer.bar_pieces.unsaid) lacks.push_back({one.says, one.place});
}

void add_top(const Answer& answer, std::vector<Lack>& lacks) {
  const int top = static_cast<int>(answer.building.courses.size());
  if (std::ranges::find(answer.job.steel.bond_beams, top) == answer.job.steel.bond_beams.end()) {
    lacks.push_back({fact("lack-top-beam"), "/steel"});
  }
  lacks.push_back({fact("lack-as-laid"), ""});
}

}  // namespace

std::vector<Lack> lacks_of(const Answer& answer, HoldPoint point) {
  std::vector<Lack> lacks;
  switch (point) {
    case HoldPoint::Order: add_order(answer, lacks); break;
    case HoldPoint::Pour: add_pour(answer, lacks); break;
    case HoldPoint::FirstCourse: add_first_course(answer, lacks); break;
    case HoldPoint::Lintels: add_lintels(answer, lacks); break;
    case HoldPoint::Grout: add_grout(answer, lacks); break;
    case HoldPoint::Top: add_top(answer, lacks); break;
  }
  return lacks;
}

}  // namespace stringcourse
