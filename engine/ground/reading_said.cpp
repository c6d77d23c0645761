#include "ground/reading_said.hpp"

#include <algorithm>
#include <array>

#include "ground/bed_as_found.hpp"
#include "measure/notation.hpp"
#include "measure/sorting.hpp"

namespace stringcourse::ground {
namespace {

/// Which of three sentences tells a difference: above, alike on the tape, below.
Fact told_apart(std::array<std::string_view, 3> says, Length difference, std::vector<FactValue> names, Tape tape) {
  const Length size = magnitude(difference);
  const bool alike = rounded_to(size, tape_step(tape)) == Length();
  if (!alike) names.emplace_back(size);
  return {says[alike ? 1 : difference > Length() ? 0 : 2], std::move(names)};
}

Fact line_said(const Building& building, const TapeAsFound& tape, const TapedLine& line) {
  const auto corner = [&](int number) { return building.corners[static_cast<std::size_t>(number)].name; };
  const Fact name = fact("line-between", {corner(line.from), corner(line.to)});
  Fact said = told_apart({"said-line-longer", "said-line-as-planned", "said-line-shorter"}, line.read - line.expected,
                         {name}, building.tape);
  return tape.verdict == Verdict::NotRead ? fact("said-alone", {std::move(said)}) : said;
}

/// The first point of the bearing that was read: the others are compared with it.
const Station* first_bearing(const Building& building, const LevelsAsFound& levels) {
  const Station* first = nullptr;
  for (const Station& one : levels.stations) {
    if (is_bearing(building, one) && (first == nullptr || one.entry < first->entry)) first = &one;
  }
  return first;
}

FactValue name_of(const Building& building, const Station& station) {
  const bool corner = std::ranges::contains(building.corners, station.name, &Corner::name);
  return corner ? FactValue(station.name) : FactValue::typed(station.name);
}

Fact rod_said(const Building& building, const Station& station, const Station& first) {
  const FactValue name = name_of(building, station);
  if (&station == &first) return fact("said-rod-first", {name});
  return told_apart({"said-rod-higher", "said-rod-alike", "said-rod-lower"}, station.height - first.height,
                    {name, name_of(building, first)}, building.tape);
}

Fact edge_said(const Building& building, const EdgeReading& edge) {
  return told_apart({"said-edge-beyond", "said-edge-on", "said-edge-short"}, edge.beyond, {edge.on}, building.tape);
}

}  // namespace

std::vector<ReadingSaid> readings_said(const Job& job, const Building& building, const AsFound& found,
                                       const std::vector<bool>& counts) {
  std::vector<ReadingSaid> said;
  for (const TapedLine& line : found.tape.lines) {
    if (!line.slip) said.push_back({line.entry, line_said(building, found.tape, line)});
  }
  const Station* const first = found.levels ? first_bearing(building, *found.levels) : nullptr;
  for (std::size_t k = 0; k < job.readings.size(); ++k) {
    const Reading& entry = job.readings[k];
    if (!counts[k]) continue;
    if (entry.edge) said.push_back({k, edge_said(building, *entry.edge)});
    if (!entry.rod || first == nullptr) continue;
    const auto station = std::ranges::find(found.levels->stations, entry.rod->station, &Station::name);
    if (station != found.levels->stations.end() && is_bearing(building, *station))
      said.push_back({k, rod_said(building, *station, *first)});
  }
  sort_stably(said, {}, &ReadingSaid::entry);
  return said;
}

}  // namespace stringcourse::ground
