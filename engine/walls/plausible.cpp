// Sizes that can be built but can hardly be meant: inches where feet were thought of, millimetres where metres were.
#include <algorithm>
#include <utility>

#include "catalogue/rules.hpp"
#include "walls/draft.hpp"
#include "walls/resolve.hpp"

namespace stringcourse::walls {
namespace {

// Nobody can turn round in two feet between walls, nor step over less as a building; at thirty feet of height or three
// hundred of length a building is none of the small ones that this program is for.
Length least_inside() { return limit_of("building-plausible"); }
Length least_height() { return limit_of("building-plausible", Tape::Inches, 1); }
Length most_height() { return limit_of("building-plausible", Tape::Inches, 2); }
Length most_length() { return limit_of("building-plausible", Tape::Inches, 3); }

/// What is found, and what may have been meant.
void find_implausible(Draft& draft, std::string place, Fact says) {
  const bool inches = draft.job.tape == Tape::Inches;
  find(draft, "building-implausible", std::move(place),
       sentences({std::move(says), fact(inches ? "feet-or-inches-mixed" : "metres-or-millimetres-mixed")}));
}

struct Extent {
  Length east, north;
};

/// How far the outer faces of a closed outline reach.
Extent extent_of(const Building& building) {
  Length west, east, south, north;
  bool first = true;
  for (const Wall& wall : building.walls) {
    if (wall.interior) continue;
    const PlanPoint at = wall.start_point;
    west = first ? at.x : std::min(west, at.x);
    east = first ? at.x : std::max(east, at.x);
    south = first ? at.y : std::min(south, at.y);
    north = first ? at.y : std::max(north, at.y);
    first = false;
  }
  return {east - west, north - south};
}

void look_inside(Draft& draft) {
  if (!draft.job.outline.closed) return;
  const Extent outside = extent_of(draft.building);
  const Length walls = 2 * thickness_of(draft, 0);
  const Length east = outside.east - walls, north = outside.north - walls;
  if (east >= least_inside() && north >= least_inside()) return;
  find_implausible(draft, "/outline",
                   fact("building-small", {marked(outside.east), marked(outside.north),
                                           marked(std::max(east, Length())), marked(std::max(north, Length()))}));
}

void look_at_height(Draft& draft) {
  const std::vector<Course>& courses = draft.building.courses;
  if (courses.empty()) return;
  const Length height = courses.back().top - courses.front().top + courses.front().unit_height;
  if (height <= most_height() && (height >= least_height() - draft.building.joint || !draft.job.outline.closed)) return;
  find_implausible(draft, "/heights", fact("walls-stand-high", {marked(height)}));
}

void look_at_lengths(Draft& draft) {
  for (const Wall& wall : draft.building.walls) {
    if (wall.actual <= most_length()) continue;
    find_implausible(draft, wall.place, fact("wall-long", {wall.name, marked(wall.actual)}));
    return;
  }
}

}  // namespace

void look_for_implausible(Draft& draft) {
  if (!draft.plan_stands || draft.building.walls.empty()) return;
  look_inside(draft);
  look_at_height(draft);
  look_at_lengths(draft);
}

}  // namespace stringcourse::walls
