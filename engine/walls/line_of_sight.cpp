#include "walls/line_of_sight.hpp"

#include <algorithm>

namespace stringcourse::walls {
namespace {

/// Thickness of the other wall at a re-entrant corner; 0 at other ends.
Length square_beyond(const Draft& draft, const WallEnd& end, int Corner::* other) {
  if (end.kind != EndKind::Corner || pushed_end(draft, end) == PushedEnd::Out) return {};
  return thickness_of(draft, draft.building.corners[static_cast<std::size_t>(end.corner)].*other);
}

/// A rectangle as seen from a wall's start: ahead of it and to its right.
struct Seen {
  Length near, far, left, right;
};
Seen seen_from(const Wall& viewer, const Rectangle& at) {
  const PlanPoint a{at.west, at.south}, b{at.east, at.north};
  const Length ahead_a = along(viewer, a), ahead_b = along(viewer, b);
  const Length right_a = ahead(viewer.start_point, right_of(viewer.heading), a);
  const Length right_b = ahead(viewer.start_point, right_of(viewer.heading), b);
  return {std::min(ahead_a, ahead_b), std::max(ahead_a, ahead_b), std::min(right_a, right_b),
          std::max(right_a, right_b)};
}

Rectangle whole_footprint(const Draft& draft, int wall) {
  const Wall& line = wall_at(draft, wall);
  return footprint(line, thickness_of(draft, wall), -square_beyond(draft, line.start, &Corner::arriving),
                   line.actual + square_beyond(draft, line.end, &Corner::leaving));
}

bool is_square_to(Heading a, Heading b) { return (static_cast<int>(a) - static_cast<int>(b)) % 2 != 0; }

/// Does the strip of `self`, `thickness` wide, run into this? Where?
std::optional<Meeting> met_by(const Draft& draft, int self, int other) {
  const Wall& wall = wall_at(draft, self);
  const Length thickness = thickness_of(draft, self);
  const Seen seen = seen_from(wall, whole_footprint(draft, other));
  if (seen.far <= Length() || seen.right <= Length() || seen.left >= thickness) return std::nullopt;
  Meeting met;
  met.wall = other;
  met.clear = seen.near;
  met.full_face = is_square_to(wall.heading, wall_at(draft, other).heading) && seen.left <= Length() &&
                  seen.right >= thickness && seen.near >= Length();
  const PlanPoint left = moved(wall.start_point, wall.heading, seen.near);
  const Length a = along(wall_at(draft, other), left);
  const Length b = along(wall_at(draft, other), moved(left, right_of(wall.heading), thickness));
  met.from = Position::from_start(std::min(a, b));
  met.to = Position::from_start(std::max(a, b));
  return met;
}

/// Nearer first; of two walls that share a corner's face the one that is met square.
bool comes_first(const Meeting& a, const Meeting& b) {
  if (a.clear != b.clear) return a.clear < b.clear;
  return a.full_face && !b.full_face;
}

}  // namespace

std::optional<Meeting> first_met(const Draft& draft, int self, std::span<const int> standing) {
  std::optional<Meeting> first;
  for (const int other : standing) {
    const std::optional<Meeting> met = met_by(draft, self, other);
    if (met && (!first || comes_first(*met, *first))) first = met;
  }
  return first;
}

Stretch meeting_stretch(const Draft& draft, int wall) {
  const Wall& line = wall_at(draft, wall);
  return {first_face(draft, wall) - square_beyond(draft, line.start, &Corner::arriving),
          last_face(draft, wall) + square_beyond(draft, line.end, &Corner::leaving)};
}

}  // namespace stringcourse::walls
