#include "proof/grout.hpp"

#include <algorithm>
#include <map>
#include <optional>

#include "proof/cells.hpp"

namespace stringcourse::proof {
namespace {

template <typename List>
const auto& at(const List& list, std::int64_t index) {
  return list[static_cast<std::size_t>(index)];
}

/// Cubic nanometres.
using Cubic = int128;

Cubic cubic(Length a, Length b, Length c) {
  return static_cast<Cubic>(a.in_nanometres()) * b.in_nanometres() * c.in_nanometres();
}

constexpr Length kHighestLift = Length::inches(64);

bool lies_in_trough(UnitKind kind) {
  return kind == UnitKind::BondBeam || kind == UnitKind::BondBeamHalf || kind == UnitKind::Lintel ||
         kind == UnitKind::LintelHalf;
}

struct Span {
  Length from, to;
};

/// What a piece takes up across its wall: a corner set's unit is no thicker than its leg and stands at the corner's
/// outer side.
Span across_of(const Building& b, const Run& run, std::size_t index) {
  const Wall& wall = at(b.walls, run.wall);
  const Series& series = b.series_of(wall);
  const bool starts = index == 0 && run.at_start == RunEnd::ThroughCorner;
  const bool ends = index + 1 == run.piece_count && run.at_end == RunEnd::ThroughCorner;
  if (!starts && !ends) return {Length(), series.thickness};
  const Length thick = std::min(series.thickness, corner_leg(series, b.corner_sets_stocked));
  const Corner& corner = at(b.corners, starts ? wall.start.corner : wall.end.corner);
  return corner.convex ? Span{Length(), thick} : Span{series.thickness - thick, series.thickness};
}

bool inside(const PlanPoint& point, const PlanPoint& p, const PlanPoint& q) {
  return std::min(p.x, q.x) <= point.x && point.x <= std::max(p.x, q.x) && std::min(p.y, q.y) <= point.y &&
         point.y <= std::max(p.y, q.y);
}

/// What stands over a plan point in one course.
struct Standing {
  bool trough = false;
  std::optional<Cubic> area;  // of the cell there, square nanometres
};

std::optional<Standing> standing_in(const Building& b, const Layout& layout, const Run& run, const PlanPoint& point) {
  const Wall& wall = at(b.walls, run.wall);
  const Series& series = b.series_of(wall);
  for (std::size_t k = 0; k < run.piece_count; ++k) {
    const Piece& piece = layout.pieces[run.first_piece + k];
    const Span across = across_of(b, run, k);
    const Length start = piece.start.nearest_nanometre();
    const auto covers = [&](const Span& along, const Span& deep) {
      return inside(point, plan_point(wall, along.from, deep.from), plan_point(wall, along.to, deep.to));
    };
    if (!covers({start, start + piece.length}, across)) continue;
    Standing standing{lies_in_trough(piece.kind), std::nullopt};
    const Span clear{across.from + series.face_shell, across.to - series.face_shell};
    for (const CellSpan& cell : whole_cells(series, piece)) {
      if (covers({start + cell.from, start + cell.to}, clear))
        standing.area = cubic(cell.to - cell.from, clear.to - clear.from, Length::nanometres(1));
    }
    return standing;
  }
  return std::nullopt;
}

/// The runs of each course.
using Courses = std::map<int, std::vector<const Run*>>;

Standing standing_over(const Building& b, const Layout& layout, const Courses& courses, const PlacedBar& bar,
                       int course) {
  const PlanPoint point = plan_point(at(b.walls, bar.wall), bar.centre, bar.off_face);
  const auto here = courses.find(course);
  if (here == courses.end()) return {};
  for (const bool own : {true, false}) {
    for (const Run* run : here->second) {
      if ((run->wall == bar.wall) != own) continue;
      if (const auto standing = standing_in(b, layout, *run, point)) return *standing;
    }
  }
  return {};
}

/// Of a course with the bed under it.
Length height_of(const Building& b, int course) { return at(b.courses, course - 1).unit_height + b.joint; }

struct Measured {
  Cubic cells = 0;
  std::int32_t count = 0, unlike = 0;
};

Measured measured(const Building& b, const Layout& layout, const Courses& courses, const PlacedBar& bar, int first,
                  int last) {
  const Series& series = b.series_of(at(b.walls, bar.wall));
  Measured sum;
  for (int course = first; course <= last; ++course) {
    if (at(b.courses, course - 1).bond_beam) continue;
    const Standing standing = standing_over(b, layout, courses, bar, course);
    if (standing.trough) continue;
    ++sum.count;
    Cubic area = standing.area.value_or(0);
    if (!standing.area) {
      ++sum.unlike;
      if (!series.full_cells.empty())
        area = cubic(series.full_cells[0].to - series.full_cells[0].from, series.thickness - series.face_shell * 2,
                     Length::nanometres(1));
    }
    sum.cells += area * height_of(b, course).in_nanometres();
  }
  return sum;
}

Violations check_columns(const Building& b, const Layout& layout, const Courses& courses,
                         const supply::GroutPour& pour) {
  Violations found;
  std::map<std::uint32_t, int> seen;
  Cubic sum = 0;
  for (const supply::GroutColumn& column : pour.columns) {
    const std::string where = "grout of course " + std::to_string(pour.first_course);
    if (column.bar >= layout.bars.size()) return {violation(kBars, where, "a bar that is not there")};
    ++seen[column.bar];
    const PlacedBar& bar = layout.bars[column.bar];
    const int first = std::max(bar.first_course, pour.first_course), last = std::min(bar.last_course, pour.last_course);
    const Measured own = measured(b, layout, courses, bar, first, last);
    if (column.first_course != first || column.last_course != last || column.cells != own.count ||
        column.unlike != own.unlike || column.volume.cubic_nanometres != own.cells)
      found.push_back(violation(kBars, place_of(b, bar.wall, first),
                                "the grout round the bar at " + in_millimetres(bar.centre) + " is another amount"));
    int foot = pour.first_course;
    bool by_lift = column.by_lift.size() == pour.lift_tops.size();
    for (std::size_t lift = 0; by_lift && lift < pour.lift_tops.size(); ++lift) {
      const Measured in_lift = measured(b, layout, courses, bar, std::max(foot, first),
                                        std::min(at(pour.lift_tops, static_cast<std::int64_t>(lift)), last));
      by_lift = column.by_lift[lift].cubic_nanometres == in_lift.cells;
      foot = pour.lift_tops[lift] + 1;
    }
    if (!by_lift)
      found.push_back(
          violation(kBars, place_of(b, bar.wall, first),
                    "the grout of a lift round the bar at " + in_millimetres(bar.centre) + " is another amount"));
    sum += column.volume.cubic_nanometres;
  }
  for (std::uint32_t bar = 0; bar < layout.bars.size(); ++bar) {
    const PlacedBar& one = layout.bars[bar];
    const bool passes = one.first_course <= pour.last_course && one.last_course >= pour.first_course;
    if (seen[bar] != (passes ? 1 : 0))
      found.push_back(violation(kBars, place_of(b, one.wall, pour.first_course), "a bar's grout is not counted once"));
  }
  if (sum != pour.cells.cubic_nanometres) found.push_back(violation(kBars, "grout", "cells do not add up"));
  return found;
}

/// Troughs by their pieces and the joints between them.
Violations check_troughs(const Building& b, const Layout& layout, const supply::GroutPour& pour) {
  Cubic beams = 0, lintels = 0;
  for (const Run& run : layout.runs) {
    if (run.course < pour.first_course || run.course > pour.last_course) continue;
    const Series& series = b.series_of(at(b.walls, run.wall));
    const bool beam = at(b.courses, run.course - 1).bond_beam;
    Length length = beam ? run.slack : Length();
    for (std::size_t k = 0; k < run.piece_count; ++k) {
      const Piece& piece = layout.pieces[run.first_piece + k];
      const bool trough = lies_in_trough(piece.kind);
      if (beam || trough) length += piece.length;
      const bool joined = !beam && trough && k > 0 && lies_in_trough(layout.pieces[run.first_piece + k - 1].kind);
      if (joined) length += b.joint;
    }
    (beam ? beams : lintels) += cubic(length, series.thickness - series.face_shell * 2, height_of(b, run.course));
  }
  Cubic listed_beams = 0, listed_lintels = 0;
  for (const supply::GroutTrough& trough : pour.troughs) {
    const bool beam = at(b.courses, trough.course - 1).bond_beam;
    const Series& series = b.series_of(at(b.walls, trough.wall));
    const Cubic across =
        cubic(trough.to - trough.from, series.thickness - series.face_shell * 2, height_of(b, trough.course));
    (beam ? listed_beams : listed_lintels) += trough.volume.cubic_nanometres;
    // A lintel's trough ends where its joints as laid let it: they may be wider or thinner than planned.
    if (beam && across != trough.volume.cubic_nanometres)
      return {violation(kKinds, "grout", "a beam's trough holds another amount")};
  }
  const bool listed = pour.troughs.empty() && beams == 0 && lintels == 0;
  if (!listed && (listed_beams != beams || listed_lintels != lintels))
    return {violation(kKinds, "grout", "troughs that are listed do not add up")};
  if (beams == pour.beams.cubic_nanometres && lintels == pour.lintels.cubic_nanometres) return {};
  return {violation(kKinds, "grout", "troughs of beams or lintels hold another amount")};
}

Violations check_lifts(const Building& b, const supply::GroutPour& pour) {
  int below = pour.first_course - 1;
  for (const int top : pour.lift_tops) {
    Length height;
    for (int course = below + 1; course <= top; ++course) height += height_of(b, course);
    if (top <= below || (height > kHighestLift && top > below + 1))
      return {violation(kBars, "grout", "a lift is higher than 5'-4\", or none")};
    below = top;
  }
  return below == pour.last_course ? Violations{} : Violations{violation(kBars, "grout", "lifts end below the pour")};
}

/// First and last courses of all pours, as the job asks.
std::vector<std::pair<int, int>> pours_asked(const Job& job, const Building& b) {
  std::vector<std::pair<int, int>> pours;
  int foot = 1;
  for (const Course& course : b.courses) {
    const bool stops = std::ranges::find(job.steel.pour_tops, course.number) != job.steel.pour_tops.end() ||
                       course.number == static_cast<int>(b.courses.size());
    if (!stops) continue;
    pours.emplace_back(foot, course.number);
    foot = course.number + 1;
  }
  return pours;
}

}  // namespace

Violations check_grout(const Job& job, const Building& building, const Layout& layout,
                       const std::vector<supply::GroutPour>& pours) {
  Courses courses;
  for (const Run& run : layout.runs) courses[run.course].push_back(&run);
  Violations found;
  std::size_t next = 0;
  for (const auto& [first, last] : pours_asked(job, building)) {
    const bool listed = next < pours.size() && pours[next].first_course == first;
    const supply::GroutPour pour = listed ? pours[next++] : supply::GroutPour{first, last, Length()};
    if (listed && pour.last_course != last) found.push_back(violation(kBars, "grout", "a pour stops elsewhere"));
    if (listed) found = joined(std::move(found), check_lifts(building, pour));
    // One that is not listed holds nothing.
    if (listed) found = joined(std::move(found), check_columns(building, layout, courses, pour));
    found = joined(std::move(found), check_troughs(building, layout, pour));
    for (const PlacedBar& bar : layout.bars) {
      if (!listed && bar.first_course <= last && bar.last_course >= first &&
          measured(building, layout, courses, bar, std::max(first, bar.first_course), std::min(last, bar.last_course))
                  .cells > 0)
        found.push_back(violation(kBars, "grout", "a pour is left out"));
    }
  }
  if (next != pours.size()) found.push_back(violation(kBars, "grout", "a pour that nobody asked for"));
  return found;
}

}  // namespace stringcourse::proof
