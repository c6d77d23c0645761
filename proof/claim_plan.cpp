// Outline, corners, interior walls, junctions.
#include "proof/claim.hpp"

namespace stringcourse::proof {
namespace {

template <typename List>
const auto& at(const List& list, int index) {
  return list[static_cast<std::size_t>(index)];
}

Violation differs(std::string where, std::string text) {
  return violation(kBuilding, std::move(where), std::move(text));
}

/// Turn from side i to the next, seen with the building on the right hand; the last side of an open outline has none.
bool turns_right(const Job& job, const Names& names, int side) {
  const bool right = at(job.outline.sides, side).turn.value_or(Turn::Right) == Turn::Right;
  return right != names.reversed;
}

int next_side(const Job& job, int side) {
  const int count = static_cast<int>(job.outline.sides.size());
  if (side + 1 < count) return side + 1;
  return job.outline.closed ? 0 : -1;
}

/// Nominal lines stand j/2 outside the outer faces: a side loses j/2 at a convex corner or free end, and gains it at a
/// re-entrant corner.
Length actual_side(const Job& job, const Building& b, const Names& names, int side) {
  const StatedLength& stated = at(job.outline.sides, side).length;
  if (stated.basis == Basis::Actual) return stated.length;
  const Length j = b.series_of(at(b.walls, at(names.side_walls, side))).joint;
  const int count = static_cast<int>(job.outline.sides.size());
  const int before = side > 0 ? side - 1 : job.outline.closed ? count - 1 : -1;
  const bool gains_before = before >= 0 && !turns_right(job, names, before);
  const bool gains_after = next_side(job, side) >= 0 && !turns_right(job, names, side);
  const Length doubled = (gains_before ? j : -j) + (gains_after ? j : -j);
  return stated.length + doubled.half_down();
}

/// The corner between side i and the next joins their walls, arriving and leaving, and is convex at a right turn.
bool corner_is_right(const Job& job, const Building& b, const Names& names, int side, int next) {
  const int first = at(names.side_walls, names.reversed ? next : side),
            second = at(names.side_walls, names.reversed ? side : next);
  const WallEnd& end = at(b.walls, first).end;
  const WallEnd& start = at(b.walls, second).start;
  if (end.kind != EndKind::Corner || start.kind != EndKind::Corner || end.corner != start.corner) return false;
  const Corner& corner = at(b.corners, end.corner);
  return corner.arriving == first && corner.leaving == second && corner.convex == turns_right(job, names, side);
}

PlanPoint along(const PlanPoint& from, Heading heading, Length length) {
  switch (heading) {
    case Heading::West: return {from.x - length, from.y};
    case Heading::North: return {from.x, from.y + length};
    case Heading::East: return {from.x + length, from.y};
    case Heading::South: return {from.x, from.y - length};
  }
  return from;
}

Heading turned_right(Heading heading, int quarters) {
  return static_cast<Heading>((static_cast<int>(heading) + quarters) % 4);
}

/// In plan: the wall that arrives ends where the one that leaves starts, a quarter turn on.
bool corner_closes(const Building& b, const Corner& corner) {
  const Wall& a = at(b.walls, corner.arriving);
  const Wall& l = at(b.walls, corner.leaving);
  return along(a.start_point, a.heading, a.actual) == l.start_point && l.start_point == corner.point &&
         l.heading == turned_right(a.heading, corner.convex ? 1 : 3);
}

/// Where a point of the plan lies on a wall's own line: along it from its start, and across it to its right.
struct OnLine {
  Length along, across;
};
OnLine on_line(const Wall& wall, const PlanPoint& point) {
  const Length x = point.x - wall.start_point.x, y = point.y - wall.start_point.y;
  switch (wall.heading) {
    case Heading::West: return {-x, y};
    case Heading::North: return {y, x};
    case Heading::East: return {x, -y};
    case Heading::South: return {-y, -x};
  }
  return {};
}

/// At a re-entrant corner a wall's inner face goes on through the corner, by the thickness of the other wall.
Length square_beyond(const Building& b, const WallEnd& end, int Corner::* other) {
  if (end.kind != EndKind::Corner || at(b.corners, end.corner).convex) return Length();
  return b.series_of(at(b.walls, at(b.corners, end.corner).*other)).thickness;
}

/// In plan: the abutting wall ends on a face of its main wall, square to it, and its two faces are from and to.
bool junction_touches(const Building& b, const Junction& junction) {
  const Wall& main = at(b.walls, junction.main);
  const Wall& wall = at(b.walls, junction.abutting);
  const PlanPoint left =
      junction.at_abutting_start ? wall.start_point : along(wall.start_point, wall.heading, wall.actual);
  const PlanPoint right = along(left, turned_right(wall.heading, 1), b.series_of(wall).thickness);
  const OnLine a = on_line(main, left), c = on_line(main, right);
  const Length from = std::min(a.along, c.along), to = std::max(a.along, c.along);
  const bool on_face = a.across == c.across && (a.across == Length() || a.across == b.series_of(main).thickness);
  return on_face && from == junction.from.distance_from_start() && to == junction.to.distance_from_start() &&
         from >= -square_beyond(b, main.start, &Corner::arriving) &&
         to <= main.actual + square_beyond(b, main.end, &Corner::leaving);
}

const Junction* junction_at(const Building& b, int wall, bool start) {
  const WallEnd& end = start ? at(b.walls, wall).start : at(b.walls, wall).end;
  if (end.kind != EndKind::Junction) return nullptr;
  const Junction& junction = at(b.junctions, end.junction);
  return junction.abutting == wall && junction.at_abutting_start == start ? &junction : nullptr;
}

/// The near (or far) face of the interior wall stands where the job says, on the wall that it starts from.
bool stands_as_asked(const Job& job, const Building& b, const Names& names, const InteriorWall& asked,
                     const Junction& junction) {
  const Measured place = measure(job, b, names, junction.main, asked.place);
  const bool near = asked.place.to.value_or(Face::Near) == Face::Near;
  const Length face =
      place.from_start == near ? junction.from.distance_from_start() : junction.to.distance_from_start();
  const Length from_end = at(b.walls, junction.main).actual - face;
  return place.known && place.to_masonry == (place.from_start ? face : from_end);
}

Violations claim_interior_wall(const Job& job, const Building& b, const Names& names, int index) {
  Violations found;
  const InteriorWall& asked = at(job.interior_walls, index);
  const int wall = at(names.interior_walls, index);
  const std::string where = name_of(b, wall);
  const Junction* start = junction_at(b, wall, true);
  const Junction* end = junction_at(b, wall, false);
  if (!start || start->main != wall_named(job, names, asked.off))
    return {differs(where, "does not start from the wall that the job says")};
  if (start->kind != asked.start_junction.value_or(JunctionKind::Tied) ||
      (end && end->kind != asked.end_junction.value_or(JunctionKind::Tied)))
    found.push_back(differs(where, "is joined another way than the job says"));
  if (!stands_as_asked(job, b, names, asked, *start))
    found.push_back(differs(where, "stands elsewhere on the wall that it starts from"));
  if (!asked.length) {
    if (!end) found.push_back(differs(where, "must reach another wall"));
    return found;
  }
  // Clear of the wall that it starts from: j/2 more there, j/2 less at its free end; clear between two walls: + j.
  const bool nominal = asked.length->basis == Basis::Nominal;
  const Length length = asked.length->length + (end && nominal ? b.series_of(at(b.walls, wall)).joint : Length());
  if (at(b.walls, wall).actual != length) found.push_back(differs(where, "has another length than the job says"));
  return found;
}

}  // namespace

Violations claim_outline(const Job& job, const Building& building, const Names& names) {
  Violations found;
  for (int i = 0; i < static_cast<int>(job.outline.sides.size()); ++i) {
    const int wall = at(names.side_walls, i);
    const Length expected = actual_side(job, building, names, i);
    if (at(building.walls, wall).actual != expected)
      found.push_back(differs(name_of(building, wall), "is " + in_millimetres(at(building.walls, wall).actual) +
                                                           " long, must be " + in_millimetres(expected)));
    const int next = next_side(job, i);
    if (next >= 0 && !corner_is_right(job, building, names, i, next))
      found.push_back(
          differs(name_of(building, wall), "the corner at its far end joins other walls or turns the other way"));
  }
  for (const Corner& corner : building.corners)
    if (!corner_closes(building, corner))
      found.push_back(differs("corner " + corner.name, "the plan does not close here"));
  return found;
}

Violations claim_interior(const Job& job, const Building& building, const Names& names) {
  Violations found;
  for (int i = 0; i < static_cast<int>(job.interior_walls.size()); ++i)
    found = joined(std::move(found), claim_interior_wall(job, building, names, i));
  for (const Junction& junction : building.junctions)
    if (!junction_touches(building, junction))
      found.push_back(differs(name_of(building, junction.abutting), "does not end on a face of the wall it meets"));
  return found;
}

}  // namespace stringcourse::proof
