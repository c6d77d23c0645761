#include "bond/layout_parts.hpp"

#include <algorithm>
#include <charconv>

#include "measure/sorting.hpp"
#include "walls/corner_plan.hpp"

namespace stringcourse::bond {
namespace {

void append_number(std::string& text, std::int64_t value) {
  char digits[24];
  const auto end = std::to_chars(digits, digits + sizeof digits, value).ptr;
  text.append(digits, end);
}

template <typename Before>
std::span<const Run> matching_runs(const Layout& layout, const Before& order, const Run& key) {
  const auto [first, last] = std::equal_range(layout.runs.begin(), layout.runs.end(), key, order);
  return {first, last};
}

/// The bars that a wall owns. Relies on the layout's order (wall, centre).
std::span<const PlacedBar> bars_of(const Layout& layout, int wall) {
  const auto owned = std::ranges::equal_range(layout.bars, wall, {}, &PlacedBar::wall);
  return {owned.begin(), owned.end()};
}

bool holds_corner_bar(std::span<const PlacedBar> own, int corner) {
  return std::ranges::any_of(own, [&](const PlacedBar& bar) { return bar.corner == corner; });
}

}  // namespace

std::span<const Piece> pieces_of(const Layout& layout, const Run& run) {
  return std::span(layout.pieces).subspan(run.first_piece, run.piece_count);
}

std::span<const Run> runs_in(const Layout& layout, int wall, int course) {
  Run key;
  key.wall = wall;
  key.course = course;
  const auto order = [](const Run& a, const Run& b) {
    return a.wall != b.wall ? a.wall < b.wall : a.course < b.course;
  };
  return matching_runs(layout, order, key);
}

std::span<const Run> runs_of_courses(const Layout& layout, int wall, int first, int last) {
  const std::span<const Run> all = runs_of_wall(layout, wall);
  const auto from = std::ranges::lower_bound(all, first, {}, &Run::course),
             to = std::ranges::upper_bound(all, last, {}, &Run::course);
  return {from, to};
}

std::span<const Run> runs_of_wall(const Layout& layout, int wall) {
  Run key;
  key.wall = wall;
  return matching_runs(layout, [](const Run& a, const Run& b) { return a.wall < b.wall; }, key);
}

Length bought_length(const Series& series, UnitKind kind) {
  switch (kind) {
    case UnitKind::Half:
    case UnitKind::BondBeamHalf:
    case UnitKind::LintelHalf:
    case UnitKind::SashHalf:
    case UnitKind::CleanoutHalf:
    case UnitKind::HalfHighHalf: return series.half;
    case UnitKind::Full:
    case UnitKind::Corner:
    case UnitKind::CornerSet:
    case UnitKind::OpenEnd:
    case UnitKind::OpenBoth:
    case UnitKind::BondBeam:
    case UnitKind::Lintel:
    case UnitKind::Sash:
    case UnitKind::Cleanout:
    case UnitKind::HalfHigh:
    case UnitKind::Solid: return series.full;
  }
  return series.full;
}

std::vector<CellSpan> cells_of(const Series& series, const Piece& piece) {
  if (piece.kind == UnitKind::Solid) return {};
  const Length bought = bought_length(series, piece.kind);
  std::vector<CellSpan> cells;
  for (const CellSpan& cell : bought == series.half ? series.half_cells : series.full_cells) {
    if (!is_saw_cut(piece)) cells.push_back(cell);
    else if (cell.to < piece.length && piece.cut == CutEnd::End) cells.push_back(cell);
    else if (cell.to < piece.length) cells.push_back({piece.length - cell.to, piece.length - cell.from});
  }
  return cells;
}

SeenFrom seen_from(const Wall& wall, PlanPoint point) {
  const Length x = point.x - wall.start_point.x, y = point.y - wall.start_point.y;
  switch (wall.heading) {
    case Heading::West: return {-x, y};
    case Heading::North: return {y, x};
    case Heading::East: return {x, -y};
    case Heading::South: return {-y, -x};
  }
  return {};
}

std::string piece_name(const Building& building, const Run& run, const Piece& piece) {
  std::string name = building.walls[static_cast<std::size_t>(run.wall)].name;
  name += '-';
  append_number(name, run.course);
  name += '-';
  append_number(name, piece.number);
  return name;
}

std::vector<WallBar> bars_on_wall(const Building& building, const Layout& layout, int wall) {
  std::vector<WallBar> met;
  const std::span<const PlacedBar> own = bars_of(layout, wall);
  for (const PlacedBar& bar : own)
    met.push_back({bar.centre, bar.reason, bar.first_course, bar.last_course, false, bar.off_face, bar.corner});
  // The bar of a corner belongs to one of its two walls.
  const Wall& here = building.walls[static_cast<std::size_t>(wall)];
  for (const WallEnd& end : {here.start, here.end}) {
    if (end.kind != EndKind::Corner || holds_corner_bar(own, end.corner)) continue;
    const Corner& corner = building.corners[static_cast<std::size_t>(end.corner)];
    const int other = corner.arriving == wall ? corner.leaving : corner.arriving;
    if (other < 0) continue;
    for (const PlacedBar& bar : bars_of(layout, other)) {
      if (bar.corner != end.corner) continue;
      const walls::BarPlace seen = walls::round_corner(building, corner, other, {bar.centre, bar.off_face});
      met.push_back({seen.along, bar.reason, bar.first_course, bar.last_course, true, seen.off_face, bar.corner});
    }
  }
  sort_stably(met, [](const WallBar& a, const WallBar& b) { return a.centre < b.centre; });
  return met;
}

std::span<const WallBar> bars_between(std::span<const WallBar> bars, Length from, Length to) {
  const auto first = std::ranges::lower_bound(bars, from, {}, &WallBar::centre);
  const auto after = std::ranges::upper_bound(first, bars.end(), to, {}, &WallBar::centre);
  return {first, after};
}

WallReach reach_of_wall(const Building& building, const Layout& layout, int wall) {
  WallReach reach{Length(), building.walls[static_cast<std::size_t>(wall)].actual};
  for (const Run& run : runs_of_wall(layout, wall)) {
    reach.from = std::min(reach.from, run.start);
    reach.to = std::max(reach.to, run.end);
  }
  return reach;
}

}  // namespace stringcourse::bond
