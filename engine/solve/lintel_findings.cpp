#include "solve/lintel_findings.hpp"

#include <algorithm>
#include <string>
#include <string_view>

#include "measure/notation.hpp"
#include "walls/words.hpp"

namespace stringcourse {
namespace {

using supply::LintelAsLaid;
using supply::LintelEnd;
using supply::Soffit;
using walls::cited;
using walls::count_text;
using walls::joined;

constexpr std::size_t kShownBars = 8;  // the schedule lists them all

/// One lintel with what it stands on.
struct Here {
  const Building& building;
  const LintelAsLaid& lintel;
  const ResolvedOpening& opening;
  const Wall& wall;

  [[nodiscard]] std::string say(Length length) const { return tape_text(length, building.tape); }
  [[nodiscard]] Finding finding(std::string code, std::string text, std::string_view rule, HoldPoint point) const {
    return {std::move(code), opening.place, std::move(text), cited(rule), point};
  }
};

/// "AB-12-7 at 4'-7 7/16" (55 7/16") from A": each bar's unit and running place, as many as are shown.
std::string bars_text(const Here& here) {
  std::string text;
  const auto& bars = here.lintel.bars;
  for (std::size_t k = 0; k < std::min(bars.size(), kShownBars); ++k) {
    const supply::BarThrough& bar = bars[k];
    if (k > 0) text += ", ";
    if (bar.unit > 0) text += joined({here.wall.name, "-", count_text(bar.course), "-", count_text(bar.unit), " at "});
    text += both_forms(rounded_to(bar.centre, tape_step(here.building.tape)), here.building.tape);
  }
  if (bars.size() > kShownBars)
    text += joined({" and ", count_text(static_cast<std::int64_t>(bars.size() - kShownBars)), " more"});
  return joined({text, " from ", here.wall.start_name});
}

void add_floors(std::vector<Finding>& found, const Here& here) {
  const std::size_t count = here.lintel.bars.size();
  if (count == 0 || here.lintel.soffit == Soffit::OnePiece) return;
  found.push_back(here.finding(
      "lintel-floor",
      joined({"The lintel units of ", here.opening.name, " have floors, and bars pass ",
              count == 1 ? "one" : count_text(static_cast<std::int64_t>(count)),
              " of them: break the floor out there before the unit is laid (side-course-unit, middle of the bar): ",
              bars_text(here), "."}),
      "lintel-floor", HoldPoint::Lintels));
}

void add_soffit(std::vector<Finding>& found, const Here& here) {
  if (here.lintel.soffit == Soffit::Form) {
    found.push_back(here.finding(
        "lintel-soffit",
        joined({"Bond-beam units span ", here.opening.name,
                ": the yard stocks no lintel unit that fits. They are open underneath: form and shore the soffit, ",
                here.say(here.opening.width()), " long, before grout goes in."}),
        "lintel-soffit", HoldPoint::Lintels));
  }
  if (here.lintel.soffit == Soffit::Nothing) {
    found.push_back(
        here.finding("nothing-spans",
                     joined({"Nothing in the yard spans ", here.opening.name,
                             ": plain units stand over it, which take no bars and carry nothing. Have lintel or "
                             "bond-beam units of this height, halves too, or ask for a lintel in one piece."}),
                     "lintel-spans", HoldPoint::Order));
  }
}

void add_end(std::vector<Finding>& found, const Here& here, const LintelEnd& end, const std::string& toward) {
  const Length asked = here.opening.lintel->least_bearing;
  if (end.is_short) {
    found.push_back(here.finding(
        "lintel-bearing-short",
        joined({"The lintel of ", here.opening.name, " bears ", here.say(end.bearing), " toward ", toward, " as laid; ",
                here.say(asked), " is asked. Its course ends there: ask your engineer, or move the opening."}),
        "lintel-bearing", HoldPoint::Lintels));
  }
  if (end.is_plain && here.lintel.soffit != Soffit::Nothing) {
    found.push_back(here.finding(
        "lintel-bearing-plain",
        joined(
            {"The lintel of ", here.opening.name, " bears on into the corner unit at ", toward,
             ", which takes no bars along the wall: cut its webs down so that bars and grout reach it, and fill it."}),
        "lintel-spans", HoldPoint::Lintels));
  }
}

/// What is asked may be a nominal size: then it ends in the joint, and one more unit at each such end is laid for
/// nothing.
void add_joints(std::vector<Finding>& found, const Building& building, const std::vector<LintelAsLaid>& lintels) {
  std::string names;
  std::int64_t units = 0;
  for (const LintelAsLaid& lintel : lintels) {
    const int ends = int{lintel.start.in_joint} + int{lintel.end.in_joint};
    if (ends == 0) continue;
    names += (names.empty() ? "" : ", ") + building.openings[static_cast<std::size_t>(lintel.opening)].name;
    units += ends;
  }
  if (units == 0) return;
  const Length half = building.series.front().half;
  found.push_back({"lintel-bearing-joint", "/openings",
                   joined({"The bearing asked ends in a joint over ", names, ": ", count_text(units),
                           units == 1 ? " end takes one more unit." : " ends take one more unit each.",
                           " Bearings are actual: a half unit bears ", tape_text(half, building.tape),
                           ". If your drawings mean a nominal size, ask for that."}),
                   cited("lintel-bearing"), HoldPoint::Order});
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
