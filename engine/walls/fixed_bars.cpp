// Bars with a place of their own: at corners, beside openings and control joints, and where the job dimensions one.
#include <algorithm>
#include <set>

#include "job/strikes.hpp"
#include "job/words.hpp"
#include "measure/sorting.hpp"
#include "walls/corner_plan.hpp"
#include "walls/draft.hpp"
#include "walls/places.hpp"

namespace stringcourse::walls {
namespace {

/// A dowel no farther than this from a bar is that bar's. SOURCE: TMS 602, placing of bars along a wall (second-hand).
constexpr Length kSameBar = Length::inches(2);

Length half_cell(const Draft& draft) { return draft.building.series.front().half.half_down(); }

/// Bars so far, without doubles on one wall.
struct BarSet {
  std::set<std::pair<int, Position>> taken;
};

void add_bar(Draft& draft, BarSet& bars, const FixedBar& bar) {
  if (!draft.building.series_of(wall_at(draft, bar.wall)).grouts) {
    refuse(draft, "bars-no-cell", bar.place,
           joined({"A bar is asked for on ", wall_at(draft, bar.wall).name, ", whose series ",
                   draft.building.series_of(wall_at(draft, bar.wall)).id, " has no known cell that takes grout."}),
           "Leave the bar out, or build this wall of a series with cells.");
    return;
  }
  if (!bars.taken.emplace(bar.wall, bar.centre).second) return;
  draft.building.fixed_bars.push_back(bar);
  if (bar.reason != BarReason::Corner) draft.building.fixed_bars.back().off_face = middle_of(draft.building, bar.wall);
}

/// The corner's bar on the arriving wall's line.
FixedBar corner_bar(const Draft& draft, int index) {
  const Corner& corner = draft.building.corners[static_cast<std::size_t>(index)];
  const BarPlace place = corner_bar_place(draft.building, corner, corner.arriving);
  FixedBar bar;
  bar.wall = corner.arriving;
  bar.centre = Position::from_start(place.along);
  bar.off_face = place.off_face;
  bar.reason = BarReason::Corner;
  bar.corner = index;
  bar.place = joined({wall_at(draft, corner.arriving).place});
  return bar;
}

/// Masonry's limits along a wall: where a bar of this wall may stand.
Stretch bar_ground(const Draft& draft, int wall) {
  const Wall& line = wall_at(draft, wall);
  Position from, to = Position::from_start(line.actual);
  if (line.start.kind == EndKind::Corner && pushed_end(draft, line.start) == PushedEnd::In) {
    from = from - thickness_of(draft, draft.building.corners[static_cast<std::size_t>(line.start.corner)].arriving);
  }
  if (line.end.kind == EndKind::Corner && pushed_end(draft, line.end) == PushedEnd::In) {
    to = to + thickness_of(draft, draft.building.corners[static_cast<std::size_t>(line.end.corner)].leaving);
  }
  return {from, to};
}

/// The opening in which this place lies, or -1.
int opening_over(const Draft& draft, int wall, Position centre) {
  for (std::size_t i = 0; i < draft.building.openings.size(); ++i) {
    const ResolvedOpening& opening = draft.building.openings[i];
    if (opening.wall == wall && centre > opening.from && centre < opening.to) return static_cast<int>(i);
  }
  return -1;
}

bool is_on_masonry(const Draft& draft, int wall, Position centre) {
  const Stretch ground = bar_ground(draft, wall);
  return centre > ground.from && centre < ground.to;
}

/// Beside a jamb or a joint: a bar in the cell next to it, if that cell is masonry of this wall.
void add_beside(Draft& draft, BarSet& bars, const FixedBar& bar, const std::string& beside) {
  const int hole = opening_over(draft, bar.wall, bar.centre);
  const bool same_courses = [&] {
    if (hole < 0 || bar.opening < 0) return hole >= 0;
    const ResolvedOpening& other = draft.building.openings[static_cast<std::size_t>(hole)];
    const ResolvedOpening& own = draft.building.openings[static_cast<std::size_t>(bar.opening)];
    return other.first_course <= own.last_course && own.first_course <= other.last_course;
  }();
  if (is_on_masonry(draft, bar.wall, bar.centre) && !same_courses) {
    add_bar(draft, bars, bar);
    return;
  }
  refuse(draft, "bar-no-room", bar.place,
         joined({"Beside ", beside, " there is no cell for a bar: its middle would stand ", say(draft, half_cell(draft)),
                 " from the edge, where there is no masonry."}),
         joined({"Leave a pier of at least ", say(draft, draft.building.series.front().half), " there."}));
}

void find_under_lintel(Draft& draft, const ResolvedOpening& opening) {
  if (!opening.lintel || opening.lintel->make != LintelMake::OnePiece) return;
  find(draft, "bar-under-lintel", opening.place,
       joined({"The jamb bars of ", opening.name, " come up under the ends of its one-piece lintel: it needs cored ends, "
               "or the bars stop below it."}),
       {}, HoldPoint::Lintels);
}

/// One jamb's bar. Where the jamb is the wall round the corner, the corner's bar; where it is a wall met square, none.
void add_jamb(Draft& draft, BarSet& bars, int index, const WallEnd& end, bool flush, Position centre) {
  const ResolvedOpening& opening = draft.building.openings[static_cast<std::size_t>(index)];
  if (flush && end.kind == EndKind::Corner) add_bar(draft, bars, corner_bar(draft, end.corner));
  if (flush) return;
  FixedBar bar;
  bar.wall = opening.wall;
  bar.centre = centre;
  bar.reason = BarReason::Jamb;
  bar.opening = index;
  bar.place = opening.place;
  add_beside(draft, bars, bar, joined({"a jamb of ", opening.name}));
}

void add_jambs(Draft& draft, BarSet& bars) {
  for (std::size_t i = 0; i < draft.building.openings.size(); ++i) {
    const ResolvedOpening opening = draft.building.openings[i];
    const Wall& wall = wall_at(draft, opening.wall);
    const int index = static_cast<int>(i);
    add_jamb(draft, bars, index, wall.start, opening.from == first_face(draft, opening.wall), opening.from - half_cell(draft));
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
      add_beside(draft, bars, bar, joined({"a control joint on ", wall_at(draft, joint.wall).name}));
    }
  }
}

/// A dimensioned bar stands in masonry through all courses.
bool check_dimensioned(Draft& draft, const FixedBar& bar, Length at) {
  const int hole = opening_over(draft, bar.wall, bar.centre);
  if (hole < 0 && is_on_masonry(draft, bar.wall, bar.centre)) return true;
  const Wall& wall = wall_at(draft, bar.wall);
  const std::string where =
      hole < 0 ? joined({"past the end of ", wall.name, " (", say(draft, wall.actual), " long)"})
               : joined({"in ", draft.building.openings[static_cast<std::size_t>(hole)].name});
  refuse(draft, "bar-off-masonry", joined({bar.place, "/place/at"}), joined({"The bar at ", say_asked(draft, at), " stands ", where, "."}),
         "Move it into a cell of the wall.");
  return false;
}

void add_dimensioned(Draft& draft, BarSet& bars, std::size_t index) {
  const DimensionedBar& asked = draft.job.steel.bars->dimensioned[index];
  FixedBar bar;
  bar.place = pointer("/steel/bars/dimensioned", index);
  const auto wall = named_wall(draft, asked.on, joined({bar.place, "/on"}));
  if (!wall) return;
  const auto centre = placed_line(draft, *wall, asked.place, joined({bar.place, "/place"}));
  if (!centre) return;
  bar.wall = *wall;
  bar.centre = *centre;
  bar.reason = BarReason::Dimensioned;
  if (check_dimensioned(draft, bar, asked.place.at.length)) add_bar(draft, bars, bar);
}

/// The dowel of this id in the log, if it stands there (job/strikes.hpp).
const DowelReading* dowel_read(const Job& job, const std::vector<bool>& stands, std::string_view id) {
  const DowelReading* found = nullptr;
  for (std::size_t k = 0; k < job.readings.size(); ++k) {
    const Reading& entry = job.readings[k];
    if (entry.dowel && entry.id == id && stands[k]) found = &*entry.dowel;
  }
  return found;
}

/// Its place along its wall; none for a wall or corner that the building does not have.
std::optional<std::pair<int, Position>> place_of(const Draft& draft, const DowelReading& dowel) {
  const auto named = draft.wall_by_name.find(dowel.on);
  if (named == draft.wall_by_name.end()) return std::nullopt;
  const Wall& wall = wall_at(draft, named->second);
  const bool from_end = dowel.from && *dowel.from != wall.start_name;
  if (from_end && *dowel.from != wall.end_name) return std::nullopt;
  return std::pair{named->second, Position::from_start(from_end ? wall.actual - dowel.at : dowel.at)};
}

/// True where the bar at this wall's first corner stands: it is the arriving wall's.
bool is_corners_of_other(const Draft& draft, int wall, Position at) {
  for (const FixedBar& bar : draft.building.fixed_bars) {
    if (bar.reason != BarReason::Corner || draft.building.corners[static_cast<std::size_t>(bar.corner)].leaving != wall) continue;
    const Corner& corner = draft.building.corners[static_cast<std::size_t>(bar.corner)];
    if (magnitude(at - Position::from_start(corner_bar_place(draft.building, corner, wall).along)) <= kSameBar) return true;
  }
  return false;
}

/// The bar that a kept dowel is: beside its jamb or joint it takes the place of the bar there, if it is that one.
void add_kept(Draft& draft, const std::vector<bool>& readings_standing, std::size_t index) {
  const std::string place = pointer("/steel/kept_dowels", index), &id = draft.job.steel.kept_dowels[index];
  const DowelReading* dowel = dowel_read(draft.job, readings_standing, id);
  const auto at = dowel ? place_of(draft, *dowel) : std::nullopt;
  const bool stands = at && opening_over(draft, at->first, at->second) < 0 && is_on_masonry(draft, at->first, at->second) &&
                      draft.building.series_of(wall_at(draft, at->first)).grouts;
  if (!stands) {
    find(draft, "kept-dowel-not-placed", place,
         dowel ? joined({"The dowel ", quoted(id), " was not found where a bar of a wall may stand: it is not kept."})
               : joined({"No reading ", quoted(id), " of a dowel counts: nothing is kept for it."}), {}, HoldPoint::FirstCourse);
    return;
  }
  if (is_corners_of_other(draft, at->first, at->second)) return;
  for (FixedBar& bar : draft.building.fixed_bars) {
    const Length off = bar.centre - at->second, size = magnitude(off);
    if (bar.wall != at->first || size > kSameBar) continue;
    if (bar.reason != BarReason::Corner) bar.centre = at->second, bar.reason = BarReason::Cast;
    return;
  }
  draft.building.fixed_bars.push_back({at->first, at->second, BarReason::Cast, -1, -1, place, middle_of(draft.building, at->first)});
}

}  // namespace

void resolve_fixed_bars(Draft& draft) {
  if (!draft.job.steel.bars || !draft.series_stand || !draft.building.series.front().grouts) return;
  const Bars& asked = *draft.job.steel.bars;
  BarSet bars;
  for (std::size_t i = 0; asked.corners && i < draft.building.corners.size(); ++i) {
    add_bar(draft, bars, corner_bar(draft, static_cast<int>(i)));
  }
  if (asked.jambs) add_jambs(draft, bars);
  if (asked.control_joints) add_beside_joints(draft, bars);
  for (std::size_t i = 0; i < asked.dimensioned.size(); ++i) add_dimensioned(draft, bars, i);
  const std::vector<bool> standing = entries_standing(draft.job.readings);
  for (std::size_t i = 0; i < draft.job.steel.kept_dowels.size(); ++i) add_kept(draft, standing, i);
  sort_stably(draft.building.fixed_bars, [](const FixedBar& a, const FixedBar& b) {
    return a.wall != b.wall ? a.wall < b.wall : a.centre < b.centre;
  });
}

}  // namespace stringcourse::walls
