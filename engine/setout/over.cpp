#include "setout/over.hpp"

#include <algorithm>

namespace stringcourse::setout {
namespace {

/// A rectangle on one wall's line as another sees it.
OnWall seen_by(const Wall& looks, const Wall& owner, const OnWall& place) {
  const bond::SeenFrom a = bond::seen_from(looks, plan_point(owner, place.from, place.shallow));
  const bond::SeenFrom b = bond::seen_from(looks, plan_point(owner, place.to, place.deep));
  return {std::min(a.along, b.along), std::max(a.along, b.along), std::min(a.depth, b.depth),
          std::max(a.depth, b.depth)};
}

bool holds(const OnWall& place, const bond::SeenFrom& at) {
  return place.from <= at.along && at.along <= place.to && place.shallow <= at.depth && at.depth <= place.deep;
}

/// The cells of a piece on its own wall's line.
std::vector<OnWall> cells_on_own_line(const Building& building, const Run& run, const Piece& piece) {
  const Series& series = building.series_of(wall_of(building, run.wall));
  const OnWall extent = extent_of(building, run, piece);
  std::vector<OnWall> cells;
  for (const CellSpan& cell : bond::cells_of(series, piece)) {
    cells.push_back({extent.from + cell.from, extent.from + cell.to, extent.shallow + series.face_shell,
                     extent.deep - series.face_shell});
  }
  return cells;
}

SeenCell seen_cell(const Layout& layout, const Run& run, const Piece& piece, std::size_t index, const OnWall& clear) {
  return {run.wall, piece.number, static_cast<int>(index) + 1,
          static_cast<std::uint32_t>(&piece - layout.pieces.data()), clear};
}

/// What this wall's own units have over a place on its own line.
Over over_own(const Building& building, const Layout& layout, int wall, int course, const bond::SeenFrom& at) {
  if (at.depth < Length() || at.depth > building.series_of(wall_of(building, wall)).thickness) return {};
  for (const Run& run : bond::runs_in(layout, wall, course)) {
    if (at.along < run.start || at.along > run.end) continue;
    Over over{&run, nullptr, std::nullopt};
    for (const Piece& piece : bond::pieces_of(layout, run)) {
      if (at.along < piece.start.nearest_nanometre() || at.along > bond::far_end(piece).nearest_nanometre()) continue;
      if (!holds(extent_of(building, run, piece), at)) continue;
      over.piece = &piece;
      const std::vector<OnWall> cells = cells_on_own_line(building, run, piece);
      for (std::size_t k = 0; k < cells.size(); ++k) {
        if (holds(cells[k], at)) over.cell = seen_cell(layout, run, piece, k, cells[k]);
      }
    }
    return over;
  }
  return {};
}

}  // namespace

std::vector<int> walls_met(const Building& building, int wall) {
  std::vector<int> met;
  const Wall& here = wall_of(building, wall);
  for (const WallEnd& end : {here.start, here.end}) {
    if (end.kind == EndKind::Corner) {
      const Corner& corner = building.corners[static_cast<std::size_t>(end.corner)];
      const int other = corner.arriving == wall ? corner.leaving : corner.arriving;
      if (other >= 0) met.push_back(other);
    }
    if (end.kind == EndKind::Junction) met.push_back(building.junctions[static_cast<std::size_t>(end.junction)].main);
  }
  for (const Junction& junction : building.junctions) {
    if (junction.main == wall) met.push_back(junction.abutting);
  }
  return met;
}

Over what_stands_over(const Building& building, const Layout& layout, int wall, int course, bond::SeenFrom place) {
  const Wall& looks = wall_of(building, wall);
  const Over own = over_own(building, layout, wall, course, place);
  if (own.piece != nullptr) return own;
  const PlanPoint point = plan_point(looks, place.along, place.depth);
  for (const int other : walls_met(building, wall)) {
    Over over = over_own(building, layout, other, course, bond::seen_from(wall_of(building, other), point));
    if (over.piece == nullptr) continue;
    if (over.cell) over.cell->clear = seen_by(looks, wall_of(building, other), over.cell->clear);
    return over;
  }
  return own;
}

std::vector<SeenCell> cells_seen(const Building& building, const Layout& layout, int wall, int course) {
  const Wall& looks = wall_of(building, wall);
  const Length thick = building.series_of(looks).thickness;
  const bond::WallReach reach = bond::reach_of_wall(building, layout, wall);
  std::vector<SeenCell> seen;
  const auto add = [&](int owner) {
    for (const Run& run : bond::runs_in(layout, owner, course)) {
      for (const Piece& piece : bond::pieces_of(layout, run)) {
        const std::vector<OnWall> cells = cells_on_own_line(building, run, piece);
        for (std::size_t k = 0; k < cells.size(); ++k) {
          const OnWall clear = owner == wall ? cells[k] : seen_by(looks, wall_of(building, owner), cells[k]);
          const bool inside =
              clear.shallow >= Length() && clear.deep <= thick && clear.from >= reach.from && clear.to <= reach.to;
          if (inside) seen.push_back(seen_cell(layout, run, piece, k, clear));
        }
      }
    }
  };
  add(wall);
  for (const int other : walls_met(building, wall)) add(other);
  return seen;
}

}  // namespace stringcourse::setout
