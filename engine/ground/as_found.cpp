#include "ground/as_found.hpp"

#include <algorithm>
#include <iterator>
#include <set>
#include <string_view>

#include "ground/findings.hpp"
#include "job/strikes.hpp"
#include "job/words.hpp"
#include "measure/notation.hpp"
#include "measure/quoted.hpp"

namespace stringcourse::ground {
namespace {

std::string entry_place(std::size_t entry) { return "/readings/" + number_text(entry); }

Finding finding(std::string code, std::string place, std::string text, std::string rule) {
  return {std::move(code), std::move(place), std::move(text), std::move(rule), HoldPoint::FirstCourse};
}

bool has_corner(const Building& building, const std::string& name) {
  return std::ranges::any_of(building.corners, [&](const Corner& corner) { return corner.name == name; });
}

/// Why an entry names what the building does not have; "" where it has all.
std::string unknown_in(const Reading& entry, const Building& building) {
  if (entry.tape) {
    for (const std::string& name : {entry.tape->from, entry.tape->to}) {
      if (!has_corner(building, name)) return "there is no corner " + quoted(name);
    }
    if (entry.tape->from == entry.tape->to) return "both ends are the corner " + quoted(entry.tape->from);
  }
  const auto on_wall = [&](const std::string& on, const std::optional<std::string>& from, Length at) {
    return wall_place(building, on, from, at) ? std::string() : "there is no wall " + quoted(on) + (from ? " with an end at " + quoted(*from) : "");
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
    const std::string unknown = unknown_in(entry, building);
    if (!unknown.empty()) {
      findings.push_back(finding("reading-not-placed", entry_place(k), "Reading " + quoted(entry.id) + " does not count: " + unknown + ".", ""));
    } else if (entry.strike && !earlier.contains(*entry.strike)) {
      findings.push_back(finding("strike-of-nothing", entry_place(k), "Entry " + quoted(entry.id) + " strikes " + quoted(*entry.strike) + ", and no earlier entry has that name.", ""));
    }
    earlier.insert(entry.id);
  }
  if (job.ground && job.ground->hold && !has_corner(building, *job.ground->hold)) {
    findings.push_back(finding("hold-unknown", "/ground/hold", "There is no corner " + quoted(*job.ground->hold) + " whose peg could stay: the first that was taped stays.", ""));
  }
}

}  // namespace

std::optional<WallPlace> wall_place(const Building& building, const std::string& on, const std::optional<std::string>& from, Length at) {
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
  if (job.readings.empty()) return found;
  const std::vector<bool> counts = entries_that_count(job, building);
  find_unusable(job, building, found.findings);
  found.tape = tape_as_found(job, building, counts);
  std::ranges::copy(tape_findings(job, building, found.tape), std::back_inserter(found.findings));
  found.levels = levels_as_found(job, building, layout, counts);
  if (found.levels) std::ranges::copy(level_findings(job, building, *found.levels), std::back_inserter(found.findings));
  return found;
}

std::string move_text(const Building& building, const PegMove& move) {
  // Along the wall that leaves the corner, and along the one that arrives there.
  const Corner& corner = building.corners[static_cast<std::size_t>(move.corner)];
  std::string text;
  const auto add = [&](int number, const std::string& towards, int sign) {
    if (number < 0) return;
    const Heading heading = building.walls[static_cast<std::size_t>(number)].heading;
    const bool east_west = heading == Heading::East || heading == Heading::West;
    const Length along = (east_west ? move.east : move.north) * ((heading == Heading::East || heading == Heading::North) == (sign > 0) ? 1 : -1);
    const Length size = magnitude(along);
    const std::string amount = tape_text(size, building.tape);
    if (rounded_to(size, tape_step(building.tape)) == Length()) return;
    text += (text.empty() ? "" : ", ") + amount + (along < Length() ? " away from " : " toward ") + towards;
  };
  const auto& walls = building.walls;
  if (corner.leaving >= 0) add(corner.leaving, walls[static_cast<std::size_t>(corner.leaving)].end_name, 1);
  if (corner.arriving >= 0) add(corner.arriving, walls[static_cast<std::size_t>(corner.arriving)].start_name, -1);
  return text.empty() ? "stays" : text;
}

std::string verdict_text(Verdict verdict) {
  switch (verdict) {
    case Verdict::Fits: return "fits";
    case Verdict::DoesNotFit: return "does not fit";
    case Verdict::CannotTell: return "can't tell";
    case Verdict::NotRead: return "not read yet";
  }
  return {};
}

std::string slip_text(Slip slip) {
  switch (slip) {
    case Slip::FeetForInches: return "feet written as inches";
    case Slip::InchesForFeet: return "inches written as feet";
    case Slip::InchesForMillimetres: return "inches written as mm";
    case Slip::MillimetresForInches: return "mm written as inches";
    case Slip::FeetForMillimetres: return "feet written as mm";
    case Slip::MillimetresForFeet: return "mm written as feet";
    case Slip::FootLost: return "a foot lost or counted twice";
    case Slip::InchBurnt: return "the tape held at its 1 in mark";
  }
  return {};
}

}  // namespace stringcourse::ground
