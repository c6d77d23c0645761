// Openings against the wall's ends, against each other, against junctions. Each refusal names the least move that mends
// it.
#include "walls/opening_checks.hpp"

#include <algorithm>

#include "measure/sorting.hpp"
#include "walls/places.hpp"

namespace stringcourse::walls {
namespace {

const ResolvedOpening& opening_at(const Draft& draft, int index) {
  return draft.building.openings[static_cast<std::size_t>(index)];
}

bool share_courses(int first_a, int last_a, int first_b, int last_b) { return first_a <= last_b && first_b <= last_a; }

Fact move_toward(const ResolvedOpening& opening, Length by, const std::string& toward) {
  return fact("move-toward", {opening.name, at_least(by), toward});
}

/// One end of a wall as an opening meets it.
struct EndView {
  std::string name, other_name;
  Length room;        // from the face at this end to the jamb
  bool wall_is_jamb;  // another wall stands there: its face may be the jamb
};

/// False (refused): the opening leaves the wall, or a pier too short to lay stays between it and the end.
bool check_end(Draft& draft, const ResolvedOpening& opening, const EndView& end) {
  const Length least = draft.building.least_piece;
  if (end.room >= least || (end.room == Length() && end.wall_is_jamb)) return true;
  const bool leaves = end.room < Length();
  const std::string place = opening.place + "/place";
  if (leaves) {
    refuse(draft, "opening-leaves-wall", place,
           fact("opening-leaves-wall", {opening.name, marked(-end.room), end.name, wall_at(draft, opening.wall).name}),
           move_toward(opening, (end.wall_is_jamb ? Length() : least) - end.room, end.other_name));
    return false;
  }
  const Fact to_jamb = end.wall_is_jamb ? fact("or-to-wall-as-jamb", {marked(end.room), end.name}) : Fact();
  refuse(draft, "pier-short", place,
         fact("pier-short-at-end",
              {opening.name, end.name, FactValue::apart(end.room, least), FactValue::apart(least, end.room)}),
         sentences({move_toward(opening, least - end.room, end.other_name), to_jamb}));
  return false;
}

bool check_ends(Draft& draft, const ResolvedOpening& opening) {
  const Wall& wall = wall_at(draft, opening.wall);
  const EndView start{wall.start_name, wall.end_name, opening.from - first_face(draft, opening.wall),
                      wall.start.kind != EndKind::Free};
  const EndView end{wall.end_name, wall.start_name, last_face(draft, opening.wall) - opening.to,
                    wall.end.kind != EndKind::Free};
  const bool from_start = check_end(draft, opening, start), from_end = check_end(draft, opening, end);
  return from_start && from_end;
}

/// A lintel that reaches `over` past the end of the wall's masonry.
void refuse_overhang(Draft& draft, const ResolvedOpening& opening, Length over, const std::string& end,
                     const std::string& other) {
  if (over <= Length()) return;
  refuse(draft, "lintel-overhangs", opening.place + "/lintel",
         fact("lintel-overhangs", {opening.name, marked(over), end}),
         sentences({move_toward(opening, over, other), fact("or-bear-less")}));
}

/// Masonry on which a lintel may bear ends at the outer faces; at a re-entrant corner it goes on through the corner.
void check_overhang(Draft& draft, const ResolvedOpening& opening) {
  if (!opening.lintel) return;
  const Wall& wall = wall_at(draft, opening.wall);
  const LintelReach reach = lintel_reach(opening);
  Length before = Position() - reach.from;
  Length beyond = reach.to - Position::from_start(wall.actual);
  const auto square = [&](const WallEnd& end, int Corner::* other) {
    if (end.kind != EndKind::Corner || pushed_end(draft, end) == PushedEnd::Out) return Length();
    return thickness_of(draft, draft.building.corners[static_cast<std::size_t>(end.corner)].*other);
  };
  before -= square(wall.start, &Corner::arriving);
  beyond -= square(wall.end, &Corner::leaving);
  if (opening.from != first_face(draft, opening.wall))
    refuse_overhang(draft, opening, before, wall.start_name, wall.end_name);
  if (opening.to != last_face(draft, opening.wall))
    refuse_overhang(draft, opening, beyond, wall.end_name, wall.start_name);
}

/// Two openings in the same courses: apart by a pier that can be laid, or jamb to jamb. `a` starts no later than `b`.
bool check_pier(Draft& draft, const ResolvedOpening& a, const ResolvedOpening& b) {
  if (!share_courses(a.first_course, a.last_course, b.first_course, b.last_course)) return true;
  const Length pier = b.from - a.to, least = draft.building.least_piece;
  if (pier >= least || pier == Length()) return true;
  const bool overlaps = pier < Length();
  const Wall& wall = wall_at(draft, b.wall);
  const bool a_later = a.place.size() > b.place.size() || (a.place.size() == b.place.size() && a.place > b.place);
  refuse(draft, overlaps ? Code("openings-overlap") : Code("pier-short"), (a_later ? a.place : b.place) + "/place",
         overlaps ? fact("openings-overlap", {a.name, b.name, marked(-pier)})
                  : fact("pier-short-between",
                         {a.name, b.name, FactValue::apart(pier, least), FactValue::apart(least, pier)}),
         a_later ? move_toward(a, least - pier, wall.start_name) : move_toward(b, least - pier, wall.end_name));
  return false;
}

/// The lintel of `a` against the hole of `b`: a bearing needs masonry beside and under it.
bool check_lintel_over(Draft& draft, const ResolvedOpening& a, const ResolvedOpening& b) {
  if (!a.lintel) return true;
  const LintelReach reach = lintel_reach(a);
  const int last = a.lintel->first_course + a.lintel->courses - 1;
  if (!share_courses(a.lintel->first_course, last, b.first_course, b.last_course)) return true;
  const Length over = std::min(reach.to, b.to) - std::max(reach.from, b.from);
  if (over <= Length()) return true;
  const Wall& wall = wall_at(draft, a.wall);
  const bool b_after = b.from >= a.from;
  const Length by = b_after ? reach.to - b.from : b.to - reach.from;
  refuse(draft, "lintel-collides", b.place + "/place", fact("lintel-in-opening", {a.name, marked(over), b.name}),
         move_toward(b, by, b_after ? wall.end_name : wall.start_name));
  return false;
}

/// Two lintels in the same courses: one-piece lintels need ground of their own; block lintels may run on as one.
void check_lintels(Draft& draft, const ResolvedOpening& a, const ResolvedOpening& b) {
  if (!a.lintel || !b.lintel) return;
  if (a.lintel->make == LintelMake::BuiltUp && b.lintel->make == LintelMake::BuiltUp) return;
  const int last_a = a.lintel->first_course + a.lintel->courses - 1,
            last_b = b.lintel->first_course + b.lintel->courses - 1;
  const Length over = lintel_reach(a).to - lintel_reach(b).from;
  if (over <= Length() || !share_courses(a.lintel->first_course, last_a, b.lintel->first_course, last_b)) return;
  refuse(draft, "lintel-collides", b.place + "/lintel", fact("bearings-overlap", {a.name, b.name, marked(over)}),
         sentences({move_toward(b, over, wall_at(draft, b.wall).end_name), fact("or-span-both")}));
}

void check_pair(Draft& draft, const ResolvedOpening& a, const ResolvedOpening& b) {
  if (!check_pier(draft, a, b)) return;
  if (!check_lintel_over(draft, a, b) || !check_lintel_over(draft, b, a)) return;
  check_lintels(draft, a, b);
}

/// Neighbours in the order of their near jambs; the reach so far bounds how far back one must look.
void check_wall(Draft& draft, const std::vector<int>& in_order) {
  for (std::size_t k = 1; k < in_order.size(); ++k) {
    const ResolvedOpening& b = opening_at(draft, in_order[k]);
    const LintelReach reach = lintel_reach(b);
    for (std::size_t i = 0; i < k; ++i) {
      const ResolvedOpening& a = opening_at(draft, in_order[i]);
      if (lintel_reach(a).to + draft.building.least_piece > reach.from) check_pair(draft, a, b);
    }
  }
}

void check_junction(Draft& draft, const Junction& junction, const ResolvedOpening& opening) {
  if (opening.wall != junction.main || opening.from >= junction.to || opening.to <= junction.from) return;
  const Wall& main = wall_at(draft, junction.main);
  const Length to_end = junction.to - opening.from, to_start = opening.to - junction.from;
  const bool toward_end = to_end <= to_start;
  refuse(draft, "opening-on-junction", opening.place + "/place",
         fact("opening-on-junction", {opening.name, wall_at(draft, junction.abutting).name, main.name}),
         move_toward(opening, toward_end ? to_end : to_start, toward_end ? main.end_name : main.start_name));
}

void find_short_room(Draft& draft, const ResolvedOpening& opening, Length room, Length needed,
                     const std::string& toward) {
  if (room >= needed) return;
  find(draft, "side-room", opening.place + "/overhead/side_room",
       fact("side-room", {opening.name, toward, FactValue::apart(room, needed), FactValue::apart(needed, room)}));
}

/// Room inside for the tracks of an overhead door: clear wall beside it, wall above it.
void check_door_room(Draft& draft, const ResolvedOpening& opening, const OverheadSize& size,
                     const std::vector<int>& on_wall) {
  Position before = first_face(draft, opening.wall), after = last_face(draft, opening.wall);
  for (const int index : on_wall) {
    const ResolvedOpening& other = opening_at(draft, index);
    if (!share_courses(other.first_course, other.last_course, opening.first_course, opening.last_course)) continue;
    if (other.to <= opening.from) before = std::max(before, other.to);
    if (other.from >= opening.to) after = std::min(after, other.from);
  }
  const Wall& wall = wall_at(draft, opening.wall);
  const Length side = size.side_room.value_or(Length()), head = size.head_room.value_or(Length());
  find_short_room(draft, opening, opening.from - before, side, wall.start_name);
  find_short_room(draft, opening, after - opening.to, side, wall.end_name);
  const Length above = draft.building.courses.back().top - opening.soffit;
  if (above >= head) return;
  find(draft, "head-room", opening.place + "/overhead/head_room",
       fact("head-room", {opening.name, FactValue::apart(above, head), FactValue::apart(head, above)}));
}

/// The job's own opening behind a resolved one: its place ends in the index.
const Opening& asked_for(const Draft& draft, const ResolvedOpening& opening) {
  std::size_t index = 0;
  for (const char digit : opening.place.substr(opening.place.rfind('/') + 1))
    index = index * 10 + static_cast<std::size_t>(digit - '0');
  return draft.job.openings[index];
}

}  // namespace

std::vector<std::vector<int>> openings_by_wall(const Building& building) {
  std::vector<std::vector<int>> by_wall(building.walls.size());
  for (std::size_t i = 0; i < building.openings.size(); ++i) {
    by_wall[static_cast<std::size_t>(building.openings[i].wall)].push_back(static_cast<int>(i));
  }
  for (std::vector<int>& on_wall : by_wall) {
    sort_stably(on_wall, {}, [&](int i) { return building.openings[static_cast<std::size_t>(i)].from; });
  }
  return by_wall;
}

LintelReach lintel_reach(const ResolvedOpening& opening) {
  const Length bearing = opening.lintel ? opening.lintel->least_bearing : Length();
  return {opening.from - bearing, opening.to + bearing};
}

void check_openings(Draft& draft) {
  if (draft.building.courses.empty()) return;
  const std::vector<std::vector<int>> by_wall = openings_by_wall(draft.building);
  for (const std::vector<int>& on_wall : by_wall) {
    for (const int index : on_wall) {
      const ResolvedOpening& opening = opening_at(draft, index);
      if (check_ends(draft, opening)) check_overhang(draft, opening);
      for (const Junction& junction : draft.building.junctions) check_junction(draft, junction, opening);
      const Opening& asked = asked_for(draft, opening);
      if (asked.overhead) check_door_room(draft, opening, *asked.overhead, on_wall);
    }
    check_wall(draft, on_wall);
  }
}

}  // namespace stringcourse::walls
