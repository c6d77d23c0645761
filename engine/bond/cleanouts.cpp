// Cleanouts: one for every bar at the foot of each pour that is high enough.
#include <algorithm>
#include <optional>

#include "bond/place.hpp"
#include "walls/plan.hpp"

namespace stringcourse::bond {
namespace {

template <typename List>
const auto& at(const List& list, std::int32_t index) {
  return list[static_cast<std::size_t>(index)];
}

/// The walls whose units may stand over a bar: its own; at a corner the other; in a slot the one that enters.
std::vector<std::int32_t> walls_at(const Building& building, const PlacedBar& bar) {
  std::vector<std::int32_t> walls{bar.wall};
  if (bar.corner >= 0) {
    const Corner& corner = at(building.corners, bar.corner);
    walls.push_back(corner.arriving == bar.wall ? corner.leaving : corner.arriving);
  }
  for (const Junction& junction : building.junctions) {
    if (junction.main == bar.wall) walls.push_back(junction.abutting);
  }
  std::erase_if(walls, [](std::int32_t wall) { return wall < 0; });
  return walls;
}

/// The piece of a wall's course that covers a plan point.
std::optional<std::uint32_t> piece_over(const Building& building, const Layout& layout, std::int32_t wall,
                                        std::int32_t course, PlanPoint point) {
  const Wall& line = at(building.walls, wall);
  const Length along = walls::along(line, point),
               depth = walls::ahead(line.start_point, walls::right_of(line.heading), point);
  if (depth <= Length() || depth >= building.series_of(line).thickness) return std::nullopt;
  auto run = std::ranges::lower_bound(layout.runs, std::pair(wall, course), {},
                                      [](const Run& one) { return std::pair(one.wall, one.course); });
  for (; run != layout.runs.end() && run->wall == wall && run->course == course; ++run) {
    if (along <= run->start || along >= run->end) continue;
    for (std::uint32_t p = run->first_piece; p < run->first_piece + run->piece_count; ++p) {
      const Length start = layout.pieces[p].start.nearest_nanometre();
      if (start < along && along < start + layout.pieces[p].length) return p;
    }
  }
  return std::nullopt;
}

std::optional<std::uint32_t> unit_round(const Building& building, const Layout& layout, const PlacedBar& bar,
                                        std::int32_t course) {
  const PlanPoint point = plan_point(at(building.walls, bar.wall), bar.centre, bar.off_face);
  for (const std::int32_t wall : walls_at(building, bar)) {
    if (const auto piece = piece_over(building, layout, wall, course, point)) return piece;
  }
  return std::nullopt;
}

/// A plain unit becomes one with a hole, if the yard has it. `series`: of the wall that the piece is on.
void name_unit(const Building& building, const Series& series, Piece& piece) {
  if (piece.kind != UnitKind::Full && piece.kind != UnitKind::Half) return;
  const UnitKind wanted = piece.kind == UnitKind::Half ? UnitKind::CleanoutHalf : UnitKind::Cleanout;
  if (std::ranges::contains(building.stocked, wanted) && std::ranges::contains(series.made, wanted))
    piece.kind = wanted;
}

const Series& series_of_piece(const Building& building, const Layout& layout, std::uint32_t piece) {
  const auto after = std::ranges::upper_bound(layout.runs, piece, {}, &Run::first_piece);
  return building.series_of(at(building.walls, std::prev(after)->wall));
}

}  // namespace

void place_cleanouts(const Building& building, Layout& layout) {
  layout.cleanouts.clear();
  for (const int course : building.cleanout_courses) {
    for (std::uint32_t b = 0; b < layout.bars.size(); ++b) {
      const PlacedBar& bar = layout.bars[b];
      if (course < bar.first_course || course > bar.last_course) continue;
      const auto piece = unit_round(building, layout, bar, course);
      if (!piece) continue;
      layout.cleanouts.push_back({b, course, *piece});
      name_unit(building, series_of_piece(building, layout, *piece), layout.pieces[*piece]);
    }
  }
}

}  // namespace stringcourse::bond
