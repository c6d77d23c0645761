// Bars with a place of their own: at corners, beside openings and control joints, and where the job dimensions one.
#include "walls/fixed_bars.hpp"

#include <algorithm>
#include <utility>

#include "measure/sorting.hpp"

namespace stringcourse::walls {
namespace {

Length half_cell(const Draft& draft) { return draft.building.series.front().half.half_down(); }

bool takes_grout(Draft& draft, const FixedBar& bar) {
  if (draft.building.series_of(wall_at(draft, bar.wall)).grouts) return true;
  refuse(draft, "bars-no-cell", bar.place,
         fact("bar-on-wall-without-cells",
              {wall_at(draft, bar.wall).name, draft.building.series_of(wall_at(draft, bar.wall)).id}),
         fact("leave-bar-out"));
  return false;
}

/// A bar of the engine's own, unless its cell has one.
void add_own(Draft& draft, BarSet& bars, FixedBar bar, const Stretch& cell) {
  if (!takes_grout(draft, bar) || own_cell_at(bars, bar.wall, bar.centre)) return;
  settle_in_wall(draft, bar);
  if (bar_of_corner(draft, bar.corner)) return;
  bars.cells.push_back({bar.wall, cell.from, cell.to, draft.building.fixed_bars.size()});
  draft.building.fixed_bars.push_back(bar);
}

/// The first cell of a corner's units along one of its walls.
Stretch corner_cell(const Draft& draft, const Corner& corner, int wall) {
  const Wall& line = wall_at(draft, wall);
  const Length half = draft.building.series.front().half;
  const bool at_end = corner.arriving == wall;
  const Length beyond = corner.convex ? Length() : thickness_of(draft, at_end ? corner.leaving : corner.arriving);
  if (at_end) return {Position::from_start(line.actual + beyond - half), Position::from_start(line.actual + beyond)};
  return {Position::from_start(-beyond), Position::from_start(half - beyond)};
}

/// The corner's bar on the arriving wall's line. Its cell is the other wall's too.
void add_corner(Draft& draft, BarSet& bars, int index) {
  const Corner corner = draft.building.corners[static_cast<std::size_t>(index)];
  const BarPlace place = corner_bar_place(draft.building, corner, corner.arriving);
  FixedBar bar;
  bar.wall = corner.arriving;
  bar.centre = Position::from_start(place.along);
  bar.off_face = place.off_face;
  bar.reason = BarReason::Corner;
  bar.corner = index;
  bar.place = wall_at(draft, corner.arriving).place;
  if (bar_of_corner(draft, index) || !takes_grout(draft, bar)) return;
  for (const int wall : {corner.arriving, corner.leaving}) {
    const Stretch cell = corner_cell(draft, corner, wall);
    bars.cells.push_back({wall, cell.from, cell.to, draft.building.fixed_bars.size()});
  }
  draft.building.fixed_bars.push_back(bar);
}

/// Beside a jamb or a joint: a bar in the cell next to it, if that cell is masonry of this wall; else refused with
/// `no_room`.
void add_beside(Draft& draft, BarSet& bars, const FixedBar& bar, Fact no_room) {
  const int hole = opening_over(draft, bar.wall, bar.centre);
  const bool same_courses = [&] {
    if (hole < 0 || bar.opening < 0) return hole >= 0;
    const ResolvedOpening& other = draft.building.openings[static_cast<std::size_t>(hole)];
    const ResolvedOpening& own = draft.building.openings[static_cast<std::size_t>(bar.opening)];
    return other.first_course <= own.last_course && own.first_course <= other.last_course;
  }();
  if (is_on_masonry(draft, bar.wall, bar.centre) && !same_courses) {
    const Length half = half_cell(draft);
    add_own(draft, bars, bar, {bar.centre - half, bar.centre + half});
    return;
  }
  refuse(draft, "bar-no-room", bar.place, std::move(no_room),
         fact("leave-pier", {marked(draft.building.series.front().half)}));
}

void find_under_lintel(Draft& draft, const ResolvedOpening& opening) {
  if (!opening.lintel || opening.lintel->make != LintelMake::OnePiece) return;
  find(draft, "bar-under-lintel", opening.place, fact("bar-under-lintel", {opening.name}), {}, HoldPoint::Lintels);
}

/// One jamb's bar. Where the jamb is the wall round the corner, the corner's bar; where it is a wall met square, none.
void add_jamb(Draft& draft, BarSet& bars, int index, const WallEnd& end, bool flush, Position centre) {
  const ResolvedOpening& opening = draft.building.openings[static_cast<std::size_t>(index)];
  if (flush && end.kind == EndKind::Corner) add_corner(draft, bars, end.corner);
  if (flush) return;
  FixedBar bar;
  bar.wall = opening.wall;
  bar.centre = centre;
  bar.reason = BarReason::Jamb;
  bar.opening = index;
  bar.place = opening.place;
  add_beside(draft, bars, bar, fact("bar-no-room-at-jamb", {opening.name, marked(half_cell(draft))}));
}

void add_jambs(Draft& draft, BarSet& bars) {
  for (std::size_t i = 0; i < draft.building.openings.size(); ++i) {
    const ResolvedOpening opening = draft.building.openings[i];
    const Wall& wall = wall_at(draft, opening.wall);
    const int index = static_cast<int>(i);
    add_jamb(draft, bars, index, wall.start, opening.from == first_face(draft, opening.wall),
             opening.from - half_cell(draft));
    add_jamb(draft, bars, index, wall.end, opening.to == last_face(draft, opening.wall), opening.to + half_cell(draft));
    find_under_lintel(draft, opening);
  }
}

void add_beside_joints(Draft& draft, BarSet& bars) {
  const std::vector<ControlJoint> joints = draft.building.control_joints;
  for (const ControlJoint& joint : joints) {
    FixedBar bar;
    bar.wall = joint.wall;
    bar.reason = BarReason::BesideControlJoint;
    bar.place = "/control_joints";
    for (const Position centre : {joint.from - half_cell(draft), joint.to + half_cell(draft)}) {
      bar.centre = centre;
      add_beside(draft, bars, bar,
                 fact("bar-no-room-at-joint", {wall_at(draft, joint.wall).name, marked(half_cell(draft))}));
    }
  }
}

/// A dimensioned bar stands in masonry through all courses.
bool check_dimensioned(Draft& draft, const FixedBar& bar, Length at) {
  const int hole = opening_over(draft, bar.wall, bar.centre);
  if (hole < 0 && is_on_masonry(draft, bar.wall, bar.centre)) return true;
  const Wall& wall = wall_at(draft, bar.wall);
  refuse(draft, "bar-off-masonry", bar.place + "/place/at",
         hole < 0
             ? fact("bar-past-end", {as_asked(at), wall.name, marked(wall.actual)})
             : fact("bar-in-opening", {as_asked(at), draft.building.openings[static_cast<std::size_t>(hole)].name}),
         fact("move-into-cell"));
  return false;
}

/// A bar dimensioned in the cell of a corner's units: it is the corner's bar, or stands in its place where none is
/// asked for.
void add_in_corner(Draft& draft, const FixedBar& bar) {
  const Corner& corner = draft.building.corners[static_cast<std::size_t>(bar.corner)];
  const Wall& wall = wall_at(draft, bar.wall);
  const Length along = bar.centre.distance_from_start();
  if (const FixedBar* own = bar_of_corner(draft, bar.corner)) {
    const Length its_own = bar_seen_from(draft.building, *own, bar.wall).along;
    if (its_own == along) return;
    refuse(draft, "bar-beside-corner-bar", bar.place + "/place/at",
           fact("bar-beside-corner-bar",
                {marked(along), wall.start_name, wall.name, corner.name, marked(magnitude(along - its_own))}),
           fact("dimension-at-corner-bar", {marked(its_own), wall.start_name}));
    return;
  }
  if (!draft.building.bars) return;
  const BarRules& rules = *draft.building.bars;
  const Length left = grout_left(draft, bar);
  if (left >= rules.clearance) {
    draft.building.fixed_bars.push_back(bar);
    return;
  }
  refuse(draft, "bar-in-corner", bar.place + "/place/at",
         fact(rules.grout == Grout::Fine ? "bar-in-corner-fine-grout" : "bar-in-corner-coarse-grout",
              {marked(along), wall.start_name, wall.name, marked(std::max(left, Length())), corner.name,
               marked(rules.clearance)}),
         fact("dimension-in-corner-cell",
              {marked(corner_bar_place(draft.building, corner, bar.wall).along), wall.start_name}));
}

/// A dimensioned bar in the cell of a jamb's or a joint's bar.
Fact serves(const Draft& draft, const FixedBar& bar, const FixedBar& own) {
  const Wall& wall = wall_at(draft, bar.wall);
  const FactValue along = marked(bar.centre.distance_from_start()), off = marked(magnitude(bar.centre - own.centre));
  if (own.opening < 0) return fact("bar-serves-joint", {along, wall.start_name, wall.name, off});
  const std::string& opening = draft.building.openings[static_cast<std::size_t>(own.opening)].name;
  return fact("bar-serves-jamb", {along, wall.start_name, wall.name, opening, off});
}

/// In the cell beside a jamb or joint a dimensioned bar is that jamb's or joint's bar.
void add_in_place_of(Draft& draft, const FixedBar& bar, const OwnCell& cell) {
  FixedBar& own = draft.building.fixed_bars[cell.bar];
  if (own.centre == bar.centre) {
    own = bar;
    return;
  }
  if (own.reason == BarReason::Dimensioned) {  // two were asked for
    draft.building.fixed_bars.push_back(bar);
    return;
  }
  find(draft, "dimensioned-bar-serves", bar.place, serves(draft, bar, own), {}, HoldPoint::Pour);
  own = bar;
}

void add_dimensioned(Draft& draft, const BarSet& bars, std::size_t index) {
  const DimensionedBar& asked = draft.job.steel.bars->dimensioned[index];
  FixedBar bar;
  bar.place = pointer("/steel/bars/dimensioned", index);
  const auto wall = named_wall(draft, asked.on, bar.place + "/on");
  if (!wall) return;
  const auto centre = placed_line(draft, *wall, asked.place, bar.place + "/place");
  if (!centre) return;
  bar.wall = *wall;
  bar.centre = *centre;
  bar.reason = BarReason::Dimensioned;
  if (!check_dimensioned(draft, bar, asked.place.at.length) || !takes_grout(draft, bar)) return;
  settle_in_wall(draft, bar);
  const OwnCell* cell = own_cell_at(bars, bar.wall, bar.centre);
  const auto same = [&](const FixedBar& other) { return other.wall == bar.wall && other.centre == bar.centre; };
  if (bar.corner >= 0) add_in_corner(draft, bar);
  else if (cell != nullptr) add_in_place_of(draft, bar, *cell);
  else if (std::ranges::none_of(draft.building.fixed_bars, same)) draft.building.fixed_bars.push_back(bar);
}

}  // namespace

int opening_over(const Draft& draft, int wall, Position centre) {
  for (std::size_t i = 0; i < draft.building.openings.size(); ++i) {
    const ResolvedOpening& opening = draft.building.openings[i];
    if (opening.wall == wall && centre > opening.from && centre < opening.to) return static_cast<int>(i);
  }
  return -1;
}

bool is_on_masonry(const Draft& draft, int wall, Position centre) {
  const Wall& line = wall_at(draft, wall);
  Position from, to = Position::from_start(line.actual);
  if (line.start.kind == EndKind::Corner && pushed_end(draft, line.start) == PushedEnd::In) {
    from = from - thickness_of(draft, draft.building.corners[static_cast<std::size_t>(line.start.corner)].arriving);
  }
  if (line.end.kind == EndKind::Corner && pushed_end(draft, line.end) == PushedEnd::In) {
    to = to + thickness_of(draft, draft.building.corners[static_cast<std::size_t>(line.end.corner)].leaving);
  }
  return centre > from && centre < to;
}

int corner_with_cell(const Draft& draft, int wall, Position centre) {
  for (const WallEnd& end : {wall_at(draft, wall).start, wall_at(draft, wall).end}) {
    if (end.kind != EndKind::Corner) continue;
    const Stretch cell = corner_cell(draft, draft.building.corners[static_cast<std::size_t>(end.corner)], wall);
    if (centre > cell.from && centre < cell.to) return end.corner;
  }
  return -1;
}

const FixedBar* bar_of_corner(const Draft& draft, int corner) {
  const auto found = std::ranges::find(draft.building.fixed_bars, corner, &FixedBar::corner);
  return corner < 0 || found == draft.building.fixed_bars.end() ? nullptr : &*found;
}

const OwnCell* own_cell_at(const BarSet& bars, int wall, Position centre) {
  const auto found = std::ranges::find_if(
      bars.cells, [&](const OwnCell& cell) { return cell.wall == wall && centre > cell.from && centre < cell.to; });
  return found == bars.cells.end() ? nullptr : &*found;
}

void settle_in_wall(const Draft& draft, FixedBar& bar) {
  bar.corner = corner_with_cell(draft, bar.wall, bar.centre);
  bar.off_face =
      bar.corner < 0
          ? middle_of(draft.building, bar.wall)
          : corner_bar_place(draft.building, draft.building.corners[static_cast<std::size_t>(bar.corner)], bar.wall)
                .off_face;
}

void resolve_fixed_bars(Draft& draft) {
  if (!draft.job.steel.bars || !draft.series_stand || !draft.plan_stands || !draft.building.series.front().grouts)
    return;
  const Bars& asked = *draft.job.steel.bars;
  BarSet bars;
  for (std::size_t i = 0; asked.corners && i < draft.building.corners.size(); ++i)
    add_corner(draft, bars, static_cast<int>(i));
  if (asked.jambs) add_jambs(draft, bars);
  if (asked.control_joints) add_beside_joints(draft, bars);
  for (std::size_t i = 0; i < asked.dimensioned.size(); ++i) add_dimensioned(draft, bars, i);
  keep_dowels(draft, bars);
  sort_stably(draft.building.fixed_bars, [](const FixedBar& a, const FixedBar& b) {
    return a.wall != b.wall ? a.wall < b.wall : a.centre < b.centre;
  });
}

}  // namespace stringcourse::walls
