#include "ground/as_found.hpp"

#include <algorithm>
#include <iterator>
#include <set>
#include <string_view>

#include "ground/chosen_now.hpp"
#include "ground/findings.hpp"
#include "ground/reading_said.hpp"
#include "ground/shape_choices.hpp"
#include "job/strikes.hpp"
#include "job/words.hpp"
#include "measure/notation.hpp"

namespace stringcourse::ground {
namespace {

std::string entry_place(std::size_t entry) { return "/readings/" + number_text(entry); }

Finding finding(Code code, std::string place, Fact says) {
  return {code, std::move(place), std::move(says), {}, HoldPoint::FirstCourse};
}

bool has_corner(const Building& building, const std::string& name) {
  return std::ranges::any_of(building.corners, [&](const Corner& corner) { return corner.name == name; });
}

Fact no_wall(const std::string& on, const std::optional<std::string>& from) {
  const FactValue wall = FactValue::typed(on);
  return from ? fact("no-wall-with-end", {wall, FactValue::typed(*from)}) : fact("no-wall", {wall});
}

/// Why an entry names what the building does not have; empty where it has all.
Fact unknown_in(const Reading& entry, const Building& building) {
  if (entry.tape) {
    for (const std::string& name : {entry.tape->from, entry.tape->to}) {
      if (!has_corner(building, name)) return fact("no-corner", {FactValue::typed(name)});
    }
    if (entry.tape->from == entry.tape->to) return fact("one-corner-twice", {FactValue::typed(entry.tape->from)});
  }
  const auto on_wall = [&](const std::string& on, const std::optional<std::string>& from, Length at) {
    return wall_place(building, on, from, at) ? Fact() : no_wall(on, from);
  };
  if (entry.rod && entry.rod->on) return on_wall(*entry.rod->on, entry.rod->from, entry.rod->at.value_or(Length()));
  if (entry.dowel) return on_wall(entry.dowel->on, entry.dowel->from, entry.dowel->at);
  if (entry.edge) return on_wall(entry.edge->on, entry.edge->from, entry.edge->at);
  return {};
}

void find_unusable(const Job& job, const Building& building, std::vector<Finding>& findings) {
  std::set<std::string_view> earlier;
  for (std::size_t k = 0; k < job.readings.size(); ++k) {
    const Reading& entry = job.readings[k];
    const Fact unknown = unknown_in(entry, building);
    const FactValue id = FactValue::typed(entry.id);
    if (!unknown.empty()) {
      findings.push_back(finding("reading-not-placed", entry_place(k), fact("reading-not-placed", {id, unknown})));
    } else if (entry.strike && !earlier.contains(*entry.strike)) {
      findings.push_back(finding("strike-of-nothing", entry_place(k),
                                 fact("strike-of-nothing", {id, FactValue::typed(*entry.strike)})));
    }
    earlier.insert(entry.id);
  }
  if (job.ground && job.ground->hold && !has_corner(building, *job.ground->hold)) {
    findings.push_back(
        finding("hold-unknown", "/ground/hold", fact("hold-unknown", {FactValue::typed(*job.ground->hold)})));
  }
}

}  // namespace

std::optional<WallPlace> wall_place(const Building& building, const std::string& on,
                                    const std::optional<std::string>& from, Length at) {
  for (std::size_t k = 0; k < building.walls.size(); ++k) {
    const Wall& wall = building.walls[k];
    if (wall.name != on) continue;
    if (!from || *from == wall.start_name) return WallPlace{static_cast<int>(k), at};
    if (*from == wall.end_name) return WallPlace{static_cast<int>(k), wall.actual - at};
  }
  return std::nullopt;
}

std::vector<bool> entries_that_count(const Job& job, const Building& building) {
  std::vector<bool> counts = entries_standing(job.readings);
  for (std::size_t k = 0; k < counts.size(); ++k) {
    const Reading& entry = job.readings[k];
    if (entry.strike || !unknown_in(entry, building).empty()) counts[k] = false;
  }
  return counts;
}

AsFound as_found(const Job& job, const Building& building, const Layout& layout) {
  AsFound found;
  if (job.readings.empty()) {
    hold_chosen(found, job, building, layout);
    return found;
  }
  const std::vector<bool> counts = entries_that_count(job, building);
  find_unusable(job, building, found.findings);
  found.tape = tape_as_found(job, building, counts);
  found.tape.choices = shape_choices(building, found.tape, concrete_is_read(job, building, counts));
  for (Finding& one : tape_findings(building, found.tape)) {
    if (found.tape.of_lines) one.hold_point = HoldPoint::Pour;
    found.findings.push_back(std::move(one));
  }
  found.levels = levels_as_found(job, building, layout, counts);
  if (found.levels) std::ranges::copy(level_findings(building, *found.levels), std::back_inserter(found.findings));
  found.said = readings_said(job, building, found, counts);
  hold_chosen(found, job, building, layout);
  return found;
}

Fact move_said(const Building& building, const PegMove& move) {
  // Along the wall that leaves the corner, and along the one that arrives there.
  const Corner& corner = building.corners[static_cast<std::size_t>(move.corner)];
  std::vector<Fact> ways;
  const auto add = [&](int number, const std::string& towards, int sign) {
    if (number < 0) return;
    const Heading heading = building.walls[static_cast<std::size_t>(number)].heading;
    const bool east_west = heading == Heading::East || heading == Heading::West;
    const Length along = (east_west ? move.east : move.north) *
                         ((heading == Heading::East || heading == Heading::North) == (sign > 0) ? 1 : -1);
    const Length size = magnitude(along);
    if (rounded_to(size, tape_step(building.tape)) == Length()) return;
    ways.push_back(fact(along < Length() ? "peg-away-from" : "peg-toward", {size, towards}));
  };
  const auto& walls = building.walls;
  if (corner.leaving >= 0) add(corner.leaving, walls[static_cast<std::size_t>(corner.leaving)].end_name, 1);
  if (corner.arriving >= 0) add(corner.arriving, walls[static_cast<std::size_t>(corner.arriving)].start_name, -1);
  return ways.empty() ? fact("peg-stays") : fact("peg-moves", {listed(FactValue::Kind::Commas, ways)});
}

Fact verdict_said(Verdict verdict) {
  switch (verdict) {
    case Verdict::Fits: return fact("verdict-fits");
    case Verdict::DoesNotFit: return fact("verdict-does-not-fit");
    case Verdict::CannotTell: return fact("verdict-cannot-tell");
    case Verdict::NotRead: return fact("verdict-not-read");
  }
  return {};
}

Fact slip_said(Slip slip) {
  switch (slip) {
    case Slip::FeetForInches: return fact("slip-feet-for-inches");
    case Slip::InchesForFeet: return fact("slip-inches-for-feet");
    case Slip::InchesForMillimetres: return fact("slip-inches-for-millimetres");
    case Slip::MillimetresForInches: return fact("slip-millimetres-for-inches");
    case Slip::FeetForMillimetres: return fact("slip-feet-for-millimetres");
    case Slip::MillimetresForFeet: return fact("slip-millimetres-for-feet");
    case Slip::FootLost: return fact("slip-foot-lost");
    case Slip::InchBurnt: return fact("slip-inch-burnt");
  }
  return {};
}

}  // namespace stringcourse::ground
