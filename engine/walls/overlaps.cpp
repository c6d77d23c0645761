// No two sides of the outline stand in the same place; inner walls end at what they meet. A sweep from west to east:
// cost grows with the walls and their near neighbours.
#include <algorithm>

#include "measure/sorting.hpp"
#include "walls/draft.hpp"
#include "walls/plan.hpp"

namespace stringcourse::walls {
namespace {

/// A wall's masonry, or the square that a re-entrant corner adds beyond its two walls.
struct Patch {
  Rectangle at;
  int wall = -1;  // the wall, or the wall that arrives at the square's corner
  bool square = false;
};

std::vector<Patch> patches(const Draft& draft) {
  const Building& building = draft.building;
  std::vector<Patch> all;
  for (std::size_t i = 0; i < building.walls.size(); ++i) {
    const Wall& wall = building.walls[i];
    all.push_back({footprint(wall, building.series_of(wall).thickness, Length(), wall.actual), static_cast<int>(i)});
  }
  for (const Corner& corner : building.corners) {
    if (corner.convex) continue;
    const Wall& arriving = wall_at(draft, corner.arriving);
    const Length beyond = arriving.actual + thickness_of(draft, corner.leaving);
    all.push_back(
        {footprint(arriving, thickness_of(draft, corner.arriving), arriving.actual, beyond), corner.arriving, true});
  }
  sort_stably(all, {}, [](const Patch& patch) { return patch.at.west; });
  return all;
}

int side_count(const Building& building) {
  return static_cast<int>(std::ranges::count_if(building.walls, [](const Wall& wall) { return !wall.interior; }));
}

/// How many sides apart two sides stand along the outline (an interior wall: far).
int sides_apart(const Draft& draft, int a, int b) {
  if (wall_at(draft, a).interior || wall_at(draft, b).interior) return 1000;
  const int count = side_count(draft.building);
  const int apart = a < b ? b - a : a - b;
  return draft.job.outline.closed ? std::min(apart, count - apart) : apart;
}

/// Corner squares may share ground with the walls of a short jog beside them; neighbours meet at their corner.
bool may_share_ground(const Draft& draft, const Patch& a, const Patch& b) {
  const int apart = sides_apart(draft, a.wall, b.wall);
  return apart <= 1 || ((a.square || b.square) && apart <= 2);
}

void refuse_overlap(Draft& draft, const Patch& a, const Patch& b) {
  const Wall& first = wall_at(draft, std::min(a.wall, b.wall));
  const Wall& second = wall_at(draft, std::max(a.wall, b.wall));
  refuse(draft, "outline-crosses", second.place, fact("walls-overlap", {second.name, first.name}),
         fact("move-clear", {second.name, first.name}));
}

}  // namespace

void check_overlaps(Draft& draft) {
  if (!draft.plan_stands) return;
  const std::vector<Patch> all = patches(draft);
  for (std::size_t i = 0; i < all.size(); ++i) {
    for (std::size_t k = i + 1; k < all.size() && all[k].at.west < all[i].at.east; ++k) {
      if (!overlap(all[i].at, all[k].at) || may_share_ground(draft, all[i], all[k])) continue;
      refuse_overlap(draft, all[i], all[k]);
    }
  }
}

}  // namespace stringcourse::walls
