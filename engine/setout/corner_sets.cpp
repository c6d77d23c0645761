#include "setout/corner_sets.hpp"

#include <algorithm>

#include "setout/places.hpp"

namespace stringcourse::setout {
namespace {

const Wall& wall_of(const Building& building, int wall) { return building.walls[static_cast<std::size_t>(wall)]; }

// A corner set lies at one end of its run; one piece may be the whole run, and then it is taken for the start's.
bool lies_at_start(const Run& run, const Piece& piece) {
  return run.at_start == RunEnd::ThroughCorner && piece.start.nearest_nanometre() == run.start;
}

const WallEnd& end_of(const Building& building, const Run& run, const Piece& piece) {
  const Wall& wall = wall_of(building, run.wall);
  return lies_at_start(run, piece) ? wall.start : wall.end;
}

/// Outside corners have their units at the outer faces.
bool at_outer_faces(const Building& building, const WallEnd& end) {
  return end.kind != EndKind::Corner || building.corners[static_cast<std::size_t>(end.corner)].convex;
}

Length thickness_met(const Building& building, const Run& run, const WallEnd& end) {
  if (end.kind != EndKind::Corner) return building.series_of(wall_of(building, run.wall)).thickness;
  const Corner& corner = building.corners[static_cast<std::size_t>(end.corner)];
  return building.series_of(wall_of(building, corner.arriving == run.wall ? corner.leaving : corner.arriving)).thickness;
}

}  // namespace

OnWall extent_of(const Building& building, const Run& run, const Piece& piece) {
  const Series& series = building.series_of(wall_of(building, run.wall));
  const Length from = piece.start.nearest_nanometre(), to = far_end(piece).nearest_nanometre(), thick = series.thickness;
  if (piece.kind != Kind::CornerSet || !series.corner_set) return {from, to, Length(), thick};
  const Length deep = std::min(thick, series.corner_set->short_leg);
  return at_outer_faces(building, end_of(building, run, piece)) ? OnWall{from, to, Length(), deep} : OnWall{from, to, thick - deep, thick};
}

int corner_turned_by(const Building& building, const Layout& layout, const Run& run, const Piece& piece) {
  const auto pieces = pieces_of(layout, run);
  const Wall& wall = wall_of(building, run.wall);
  if (run.at_start == RunEnd::ThroughCorner && piece.number == pieces.front().number) return wall.start.corner;
  if (run.at_end == RunEnd::ThroughCorner && piece.number == pieces.back().number) return wall.end.corner;
  return -1;
}

std::vector<SetPart> parts_of_set(const Building& building, const Run& run, const Piece& piece) {
  const Series& series = building.series_of(wall_of(building, run.wall));
  if (piece.kind != Kind::CornerSet || !series.corner_set || series.corner_set->parts.empty()) return {};
  const CornerSet& set = *series.corner_set;
  const WallEnd& end = end_of(building, run, piece);
  const bool outer = at_outer_faces(building, end), at_start = lies_at_start(run, piece);
  const OnWall unit = extent_of(building, run, piece);
  std::vector<SetPart> parts{{set.parts.front(), unit}};
  // From the corner's end along, and from the faces that the unit lies on across.
  const Length met = thickness_met(building, run, end);
  const auto placed = [&](Length near, Length far, Length shallow, Length deep) {
    const Length from = at_start ? unit.from + near : unit.to - far, to = at_start ? unit.from + far : unit.to - near;
    return outer ? OnWall{from, to, shallow, deep} : OnWall{from, to, series.thickness - deep, series.thickness - shallow};
  };
  if (set.short_leg > series.thickness) {
    parts.push_back({set.parts.front(), placed(Length(), met, series.thickness, set.short_leg)});
  } else if (set.short_leg < series.thickness) {
    parts.push_back({set.parts.back(), placed(met + series.joint, piece.length, set.short_leg + series.joint, series.thickness)});
  }
  return parts;
}

}  // namespace stringcourse::setout
