#pragma once
// A rough fill of any resolved building: not in bond, not lawful, but every run is filled exactly. Sheets must stay
// legible whatever stands in a layout; the example jobs give real outlines, openings and control joints to draw.
#include <algorithm>
#include <vector>

#include "bond/layout.hpp"
#include "walls/building.hpp"

namespace stringcourse::testing {

class RoughLayout {
 public:
  explicit RoughLayout(const Building& building) : building_(building) {
    for (std::size_t corner = 0; corner < building.corners.size(); ++corner)
      layout.arriving_through.push_back(corner % 2 == 1);
    place_lintels();
    for (std::size_t wall = 0; wall < building.walls.size(); ++wall) {
      for (const Course& course : building.courses) fill_course(static_cast<int>(wall), course);
    }
    place_bars();
    layout.cost.units = static_cast<std::int64_t>(layout.pieces.size());
  }
  Layout layout;

 private:
  struct Break {
    Length from, to;
    RunEnd end;
  };

  void place_lintels() {
    for (std::size_t index = 0; index < building_.openings.size(); ++index) {
      const auto& lintel = building_.openings[index].lintel;
      if (!lintel) continue;
      layout.lintels.push_back({static_cast<std::int32_t>(index), lintel->least_bearing, lintel->least_bearing});
    }
  }

  void place_bars() {
    const auto last = static_cast<std::int32_t>(building_.courses.size());
    for (const FixedBar& bar : building_.fixed_bars) {
      layout.bars.push_back(
          {bar.wall, bar.centre.distance_from_start(), bar.reason, bar.corner, bar.opening, 1, last, bar.off_face});
    }
  }

  struct End {
    Length shift;
    RunEnd kind;
  };
  // How far masonry reaches past the wall's nominal end (negative: stops short).
  End end_of(const WallEnd& end, int wall, int course) const {
    if (end.kind == EndKind::Free) return {Length(), RunEnd::FreeEnd};
    if (end.kind == EndKind::Junction) return {Length(), RunEnd::TiedJunction};
    const Corner& corner = building_.corners[static_cast<std::size_t>(end.corner)];
    const bool arriving = corner.arriving == wall;
    const int other = arriving ? corner.leaving : corner.arriving;
    const Series& series = building_.series_of(building_.walls[static_cast<std::size_t>(other)]);
    const Length leg = corner_leg(series, building_.corner_sets_stocked);
    const bool through = ((end.corner % 2 == 1) == arriving) == (course % 2 == 1);
    const Length entering = corner.convex ? Length() : series.thickness;
    return through ? End{entering, RunEnd::ThroughCorner} : End{entering - leg, RunEnd::ButtCorner};
  }

  std::vector<Break> breaks_of(int wall, int course) const {
    std::vector<Break> breaks;
    for (const ResolvedOpening& opening : building_.openings) {
      if (opening.wall != wall) continue;
      const Length from = opening.from.distance_from_start(), to = opening.to.distance_from_start();
      if (course >= opening.first_course && course <= opening.last_course) breaks.push_back({from, to, RunEnd::Jamb});
      if (!opening.lintel || opening.lintel->make != LintelMake::OnePiece) continue;
      const int first = opening.lintel->first_course;
      if (course < first || course >= first + opening.lintel->courses) continue;
      breaks.push_back({from - opening.lintel->least_bearing, to + opening.lintel->least_bearing, RunEnd::LintelEnd});
    }
    for (const ControlJoint& joint : building_.control_joints) {
      if (joint.wall == wall)
        breaks.push_back({joint.from.distance_from_start(), joint.to.distance_from_start(), RunEnd::ControlJoint});
    }
    std::sort(breaks.begin(), breaks.end(), [](const Break& a, const Break& b) { return a.from < b.from; });
    return breaks;
  }

  void fill_course(int wall, const Course& course) {
    number_ = 0;
    const Wall& side = building_.walls[static_cast<std::size_t>(wall)];
    const End start = end_of(side.start, wall, course.number), end = end_of(side.end, wall, course.number);
    Length from = -start.shift;
    RunEnd at_start = start.kind;
    for (const Break& gap : breaks_of(wall, course.number)) {
      if (gap.from > from) fill_run(wall, course, from, gap.from, at_start, gap.end);
      from = gap.to;
      at_start = gap.end;
    }
    if (side.actual + end.shift > from) fill_run(wall, course, from, side.actual + end.shift, at_start, end.kind);
  }

  void mark_corner_sets(const Run& run, const Series& series) {
    if (!series.corner_set || run.piece_count == 0) return;
    Piece& first = layout.pieces[run.first_piece];
    Piece& last = layout.pieces[run.first_piece + run.piece_count - 1];
    if (run.at_start == RunEnd::ThroughCorner && first.length == series.full) first.kind = UnitKind::CornerSet;
    if (run.at_end == RunEnd::ThroughCorner && last.length == series.full) last.kind = UnitKind::CornerSet;
  }

  void fill_run(int wall, const Course& course, Length start, Length end, RunEnd at_start, RunEnd at_end) {
    const Series& series = building_.series_of(building_.walls[static_cast<std::size_t>(wall)]);
    Run run{wall, course.number, start,
            end,  at_start,      at_end,
            0,    end - start,   static_cast<std::uint32_t>(layout.pieces.size()),
            0};
    Length at = has_joint(at_start) ? start + series.joint : start;
    const Length last = has_joint(at_end) ? end - series.joint : end;
    while (at < last) {
      Length length = std::min(series.full, last - at);
      const Length rest = last - at - length;
      if (rest > Length() && rest < series.least_piece + series.joint) length = series.half;
      const bool whole = length == series.full || length == series.half;
      const bool half = length == series.half;
      UnitKind kind = course.bond_beam ? (half ? UnitKind::BondBeamHalf : UnitKind::BondBeam)
                                       : (half ? UnitKind::Half : UnitKind::Full);
      if (!whole) kind = UnitKind::Full;
      layout.pieces.push_back(
          {ExactPosition{at.in_nanometres(), 1}, length, kind, whole ? CutEnd::None : CutEnd::End, false, ++number_});
      layout.cost.cuts += whole ? 0 : 1;
      ++run.piece_count;
      run.slack -= length;
      at += length + series.joint;
    }
    mark_corner_sets(run, series);
    run.joints = static_cast<std::int32_t>(run.piece_count) - 1 + has_joint(at_start) + has_joint(at_end);
    layout.runs.push_back(run);
  }

  const Building& building_;
  std::int32_t number_ = 0;
};

}  // namespace stringcourse::testing
