// Sizes that can be built but can hardly be meant: inches where feet were thought of, millimetres where metres were.
#include <algorithm>

#include "walls/draft.hpp"
#include "walls/resolve.hpp"

namespace stringcourse::walls {
namespace {

// Bounds of our own: no figure of a code. Nobody can turn round in two feet between walls, nor step over less as a building;
// at thirty feet of height or three hundred of length a building is none of the small ones that this program is for.
constexpr Length kLeastInside = Length::feet(2), kLeastHeight = Length::feet(2);
constexpr Length kMostHeight = Length::feet(30), kMostLength = Length::feet(300);

std::string question(const Draft& draft) {
  return draft.job.tape == Tape::Inches ? " Are feet and inches mixed up?" : " Are metres and millimetres mixed up?";
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
  if (east >= kLeastInside && north >= kLeastInside) return;
  find(draft, "building-implausible", "/outline",
       joined({"The building is ", say(draft, outside.east), " by ", say(draft, outside.north), " outside; its walls leave ",
               say(draft, std::max(east, Length())), " by ", say(draft, std::max(north, Length())), " inside.", question(draft)}));
}

void look_at_height(Draft& draft) {
  const std::vector<Course>& courses = draft.building.courses;
  if (courses.empty()) return;
  const Length height = courses.back().top - courses.front().top + courses.front().unit_height;
  if (height <= kMostHeight && (height >= kLeastHeight - draft.building.joint || !draft.job.outline.closed)) return;
  find(draft, "building-implausible", "/heights", joined({"The walls stand ", say(draft, height), " high.", question(draft)}));
}

void look_at_lengths(Draft& draft) {
  for (const Wall& wall : draft.building.walls) {
    if (wall.actual <= kMostLength) continue;
    find(draft, "building-implausible", wall.place,
         joined({wall.name, " is ", say(draft, wall.actual), " long.", question(draft)}));
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
