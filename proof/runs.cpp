#include "proof/runs.hpp"

#include <algorithm>

namespace stringcourse::proof {
namespace {

/// One end of an expected run. Two breaks may end at one place (a control joint at a jamb): either name is right there.
struct End {
  Length at;
  std::vector<RunEnd> names;
};
struct ExpectedRun {
  End start, end;
};
/// What interrupts a course: an opening, a lintel, a slot, a control joint.
struct Break {
  Length from, to;
  RunEnd name;
};

template <typename List>
const auto& at(const List& list, int index) {
  return list[static_cast<std::size_t>(index)];
}

/// How far past the corner point (outwards positive) this wall reaches in this course.
Length reach_past_corner(const Building& b, int corner, int wall, bool through) {
  const Corner& c = at(b.corners, corner);
  const int other = c.arriving == wall ? c.leaving : c.arriving;
  const Series& beside = b.series_of(at(b.walls, other));
  const Length thickness = beside.thickness;  // butting: the other wall is the one that runs through
  const Length leg = corner_leg(beside, b.corner_sets_stocked);
  if (c.convex) return through ? Length() : -leg;
  return through ? thickness : thickness - leg;
}

struct Reach {
  Length past;
  RunEnd name;
};

Reach reach_of(const Building& b, const Layout& layout, int wall, const WallEnd& end, int course) {
  if (end.kind == EndKind::Corner) {
    const bool through = runs_through(b, layout, end.corner, wall, course);
    return {reach_past_corner(b, end.corner, wall, through), through ? RunEnd::ThroughCorner : RunEnd::ButtCorner};
  }
  if (end.kind == EndKind::Free) return {Length(), RunEnd::FreeEnd};
  const Junction& junction = at(b.junctions, end.junction);
  if (junction.kind != JunctionKind::Lapped) return {Length(), RunEnd::TiedJunction};
  if (!enters(layout, end.junction, course)) return {Length(), RunEnd::LappedButt};
  return {b.series_of(at(b.walls, junction.main)).thickness, RunEnd::EnteringJunction};
}

std::vector<Break> opening_breaks(const Building& b, const Layout& layout, int wall, int course) {
  std::vector<Break> breaks;
  for (std::size_t i = 0; i < b.openings.size(); ++i) {
    const ResolvedOpening& o = b.openings[i];
    if (o.wall != wall) continue;
    const Length from = o.from.distance_from_start(), to = o.to.distance_from_start();
    // What was laid before a jamb was found elsewhere stays where it stands.
    const bool laid = course <= o.laid_courses;
    const Length near = laid ? o.laid_from.distance_from_start() : from,
                 far = laid ? o.laid_to.distance_from_start() : to;
    if (o.first_course <= course && course <= o.last_course) breaks.push_back({near, far, RunEnd::Jamb});
    if (!o.lintel || o.lintel->make != LintelMake::OnePiece) continue;
    const PlacedLintel* placed = placed_lintel(layout, static_cast<int>(i));
    if (placed && o.lintel->first_course <= course && course < o.lintel->first_course + o.lintel->courses)
      breaks.push_back({from - placed->start_bearing, to + placed->end_bearing, RunEnd::LintelEnd});
  }
  return breaks;
}

std::vector<Break> breaks_of(const Building& b, const Layout& layout, int wall, int course) {
  std::vector<Break> breaks = opening_breaks(b, layout, wall, course);
  for (std::size_t j = 0; j < b.junctions.size(); ++j) {
    const Junction& junction = b.junctions[j];
    if (junction.main == wall && junction.kind == JunctionKind::Lapped && enters(layout, static_cast<int>(j), course))
      breaks.push_back({junction.from.distance_from_start(), junction.to.distance_from_start(), RunEnd::SlotSide});
  }
  for (const ControlJoint& joint : b.control_joints)
    if (joint.wall == wall)
      breaks.push_back({joint.from.distance_from_start(), joint.to.distance_from_start(), RunEnd::ControlJoint});
  std::ranges::sort(
      breaks, [](const Break& x, const Break& y) { return x.from < y.from || (x.from == y.from && x.to < y.to); });
  return breaks;
}

/// Both ends want a joint.
bool wants_joints(const End& start, const End& end) {
  return std::ranges::any_of(start.names, has_joint) && std::ranges::any_of(end.names, has_joint);
}

/// What is left of `whole` between the breaks. Stretches of no length are left out, unless both ends want a joint.
std::vector<ExpectedRun> between(const ExpectedRun& whole, const std::vector<Break>& breaks) {
  std::vector<ExpectedRun> runs;
  End start = whole.start;
  for (std::size_t i = 0; i < breaks.size(); ++i) {
    const Break& gap = breaks[i];
    End end{gap.from, {}};
    for (std::size_t k = i; k < breaks.size() && breaks[k].from == gap.from; ++k) end.names.push_back(breaks[k].name);
    if (start.at < gap.from || (start.at == gap.from && wants_joints(start, end))) runs.push_back({start, end});
    if (start.at < gap.to) start = {gap.to, {gap.name}};
    else if (start.at == gap.to) start.names.push_back(gap.name);
  }
  if (start.at < whole.end.at || (start.at == whole.end.at && wants_joints(start, whole.end)))
    runs.push_back({start, whole.end});
  return runs;
}

bool names_match(const End& expected, RunEnd name) {
  return std::ranges::find(expected.names, name) != expected.names.end();
}

bool matches(const ExpectedRun& expected, const Run& run) {
  return expected.start.at == run.start && expected.end.at == run.end && names_match(expected.start, run.at_start) &&
         names_match(expected.end, run.at_end);
}

std::string extent(Length from, Length to) { return in_millimetres(from) + " to " + in_millimetres(to); }

Violations compare_runs(const std::string& where, const std::vector<ExpectedRun>& expected, const CourseFacts& course) {
  Violations found;
  if (expected.size() != course.runs.size()) {
    found.push_back(violation(
        kRuns, where,
        std::to_string(course.runs.size()) + " runs stand where " + std::to_string(expected.size()) + " must"));
    return found;
  }
  for (std::size_t i = 0; i < expected.size(); ++i) {
    const Run& run = *course.runs[i].run;
    if (matches(expected[i], run)) continue;
    found.push_back(violation(kRuns, where,
                              "a run from " + extent(run.start, run.end) + " must go from " +
                                  extent(expected[i].start.at, expected[i].end.at) + ", or ends at something else"));
  }
  return found;
}

Violations check_course(const Building& b, const Layout& layout, const Facts& facts, int wall, int course) {
  const Wall& w = at(b.walls, wall);
  const Reach start = reach_of(b, layout, wall, w.start, course), end = reach_of(b, layout, wall, w.end, course);
  const ExpectedRun whole{{-start.past, {start.name}}, {w.actual + end.past, {end.name}}};
  const std::vector<Break> breaks = breaks_of(b, layout, wall, course);
  const std::string where = place_of(b, wall, course);
  for (const Break& gap : breaks)
    if (gap.from < whole.start.at || whole.end.at < gap.to || gap.to <= gap.from)
      return {
          violation(kRuns, where, "a break from " + extent(gap.from, gap.to) + " reaches past the end of the wall")};
  return compare_runs(where, between(whole, breaks), at(at(facts.walls, wall).courses, course - 1));
}

}  // namespace

bool runs_through(const Building& building, const Layout& layout, int corner, int wall, int course) {
  const bool arriving_through_odd = at(layout.arriving_through, corner) != 0;
  const bool odd = course % 2 == 1;
  const bool arriving_through = arriving_through_odd == odd;
  return (at(building.corners, corner).arriving == wall) == arriving_through;
}

bool enters(const Layout& layout, int junction, int course) {
  return (at(layout.entering_first, junction) != 0) == (course % 2 == 1);
}

Violations check_runs(const Building& building, const Layout& layout, const Facts& facts) {
  Violations found;
  for (int wall = 0; wall < static_cast<int>(building.walls.size()); ++wall) {
    if (at(facts.walls, wall).stopped) continue;
    for (int course = 1; course <= static_cast<int>(building.courses.size()); ++course)
      found = joined(std::move(found), check_course(building, layout, facts, wall, course));
  }
  return found;
}

}  // namespace stringcourse::proof
