#include "solve/lintel_findings.hpp"

#include <algorithm>
#include <string>
#include <string_view>

#include "measure/digits.hpp"
#include "measure/notation.hpp"

namespace stringcourse {
namespace {

using supply::LintelAsLaid;
using supply::LintelEnd;
using supply::Soffit;

constexpr std::size_t kShownBars = 8;  // the schedule lists them all

/// One lintel with what it stands on.
struct Here {
  const Building& building;
  const LintelAsLaid& lintel;
  const ResolvedOpening& opening;
  const Wall& wall;

  [[nodiscard]] Finding finding(Code code, Fact says, std::string_view rule, HoldPoint point) const {
    return {code, opening.place, std::move(says), std::string(rule), point};
  }
};

/// "AB-12-7 at 4'-7 7/16" (55 7/16") from A": each bar's unit and running place, as many as are shown.
Fact bars_said(const Here& here) {
  std::vector<FactValue> shown;
  const auto& bars = here.lintel.bars;
  for (std::size_t k = 0; k < std::min(bars.size(), kShownBars); ++k) {
    const supply::BarThrough& bar = bars[k];
    const FactValue at(rounded_to(bar.centre, tape_step(here.building.tape)), LengthForm::Both);
    const std::string unit = here.wall.name + "-" + number_text(bar.course) + "-" + number_text(bar.unit);
    shown.push_back(bar.unit > 0 ? FactValue(fact("at-in-unit", {unit, at})) : at);
  }
  const FactValue all(FactValue::Kind::Commas, std::move(shown));
  if (bars.size() <= kShownBars) return fact("places-from", {all, here.wall.start_name});
  return fact("places-and-more-from", {all, bars.size() - kShownBars, here.wall.start_name});
}

void add_floors(std::vector<Finding>& found, const Here& here) {
  const std::size_t count = here.lintel.bars.size();
  if (count == 0 || here.lintel.soffit == Soffit::OnePiece) return;
  const Fact bars = bars_said(here);
  found.push_back(here.finding("lintel-floor",
                               count == 1 ? fact("lintel-floor-one", {here.opening.name, bars})
                                          : fact("lintel-floor", {here.opening.name, count, bars}),
                               "lintel-floor", HoldPoint::Lintels));
}

void add_soffit(std::vector<Finding>& found, const Here& here) {
  if (here.lintel.soffit == Soffit::Form) {
    found.push_back(here.finding("lintel-soffit", fact("lintel-soffit", {here.opening.name, here.opening.width()}),
                                 "lintel-soffit", HoldPoint::Lintels));
  }
  if (here.lintel.soffit == Soffit::Nothing) {
    found.push_back(
        here.finding("nothing-spans", fact("nothing-spans", {here.opening.name}), "lintel-spans", HoldPoint::Order));
  }
}

void add_end(std::vector<Finding>& found, const Here& here, const LintelEnd& end, const std::string& toward) {
  const Length asked = here.opening.lintel->least_bearing;
  if (end.is_short) {
    found.push_back(here.finding("lintel-bearing-short",
                                 fact("lintel-bearing-short", {here.opening.name, end.bearing, toward, asked}),
                                 "lintel-bearing", HoldPoint::Lintels));
  }
  if (end.is_plain && here.lintel.soffit != Soffit::Nothing) {
    found.push_back(here.finding("lintel-bearing-plain", fact("lintel-bearing-plain", {here.opening.name, toward}),
                                 "lintel-spans", HoldPoint::Lintels));
  }
}

/// What is asked may be a nominal size: then it ends in the joint, and one more unit at each such end is laid for
/// nothing.
void add_joints(std::vector<Finding>& found, const Building& building, const std::vector<LintelAsLaid>& lintels) {
  std::vector<std::string> names;
  std::int64_t units = 0;
  for (const LintelAsLaid& lintel : lintels) {
    const int ends = int{lintel.start.in_joint} + int{lintel.end.in_joint};
    if (ends == 0) continue;
    names.push_back(building.openings[static_cast<std::size_t>(lintel.opening)].name);
    units += ends;
  }
  if (units == 0) return;
  const Length half = building.series.front().half;
  found.push_back({"lintel-bearing-joint", "/openings",
                   fact("lintel-bearing-joint", {listed(FactValue::Kind::Commas, names), units, half}),
                   "lintel-bearing", HoldPoint::Order});
}

}  // namespace

std::vector<Finding> lintel_findings(const Building& building, const std::vector<LintelAsLaid>& lintels) {
  std::vector<Finding> found;
  for (const LintelAsLaid& lintel : lintels) {
    const ResolvedOpening& opening = building.openings[static_cast<std::size_t>(lintel.opening)];
    const Here here{building, lintel, opening, building.walls[static_cast<std::size_t>(opening.wall)]};
    add_floors(found, here);
    add_soffit(found, here);
    add_end(found, here, lintel.start, here.wall.start_name);
    add_end(found, here, lintel.end, here.wall.end_name);
  }
  add_joints(found, building, lintels);
  return found;
}

}  // namespace stringcourse
