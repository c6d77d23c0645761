#pragma once
// Headings, plan points and rectangles of walls.
#include "walls/building.hpp"

namespace stringcourse::walls {

/// How an end takes part in the nominal outline: convex corners and free ends are pushed out by half a joint,
/// re-entrant corners and junctions stand half a joint inside.
enum class PushedEnd { Out, In };

[[nodiscard]] constexpr Heading right_of(Heading heading) {
  return static_cast<Heading>((static_cast<int>(heading) + 1) % 4);
}
[[nodiscard]] constexpr Heading left_of(Heading heading) {
  return static_cast<Heading>((static_cast<int>(heading) + 3) % 4);
}
[[nodiscard]] constexpr PlanPoint moved(PlanPoint point, Heading heading, Length by) {
  switch (heading) {
    case Heading::West: point.x -= by; break;
    case Heading::North: point.y += by; break;
    case Heading::East: point.x += by; break;
    case Heading::South: point.y -= by; break;
  }
  return point;
}

/// A rectangle in plan, its sides along the axes.
struct Rectangle {
  Length west, east, south, north;
};
[[nodiscard]] constexpr Rectangle spanned(PlanPoint a, PlanPoint b) {
  return {a.x < b.x ? a.x : b.x, a.x < b.x ? b.x : a.x, a.y < b.y ? a.y : b.y, a.y < b.y ? b.y : a.y};
}
/// True if they share more than an edge.
[[nodiscard]] constexpr bool overlap(const Rectangle& a, const Rectangle& b) {
  return a.west < b.east && b.west < a.east && a.south < b.north && b.south < a.north;
}
/// The masonry of a wall from `from` to `to` along its line, through its thickness.
[[nodiscard]] constexpr Rectangle footprint(const Wall& wall, Length thickness, Length from, Length to) {
  const PlanPoint outer = moved(wall.start_point, wall.heading, from);
  const PlanPoint inner = moved(moved(wall.start_point, wall.heading, to), right_of(wall.heading), thickness);
  return spanned(outer, inner);
}
/// How far a plan point lies ahead of `origin`, looking along `heading`.
[[nodiscard]] constexpr Length ahead(PlanPoint origin, Heading heading, PlanPoint point) {
  switch (heading) {
    case Heading::West: return origin.x - point.x;
    case Heading::North: return point.y - origin.y;
    case Heading::East: return point.x - origin.x;
    case Heading::South: return origin.y - point.y;
  }
  return {};
}
/// Where a plan point stands along a wall's line.
[[nodiscard]] constexpr Length along(const Wall& wall, PlanPoint point) {
  return ahead(wall.start_point, wall.heading, point);
}

}  // namespace stringcourse::walls
