#include "steel/dowels.hpp"

#include <algorithm>
#include <array>

#include "measure/notation.hpp"
#include "setout/places.hpp"

namespace stringcourse::steel {
namespace {

const Wall& wall_of(const Building& building, int wall) { return building.walls[static_cast<std::size_t>(wall)]; }

/// The run and piece over a place, if any.
struct Over {
  const Run* run = nullptr;
  const Piece* piece = nullptr;
};

Over over(const Layout& layout, int wall, int course, Length along) {
  for (const Run& run : setout::runs_in(layout, wall, course)) {
    if (along < run.start || along > run.end) continue;
    for (const Piece& piece : setout::pieces_of(layout, run)) {
      if (piece.start.nearest_nanometre() <= along && along <= setout::far_end(piece).nearest_nanometre()) return {&run, &piece};
    }
    return {&run, nullptr};  // in a joint
  }
  return {};
}

}  // namespace

std::optional<InCell> cell_at(const Building& building, const Layout& layout, int wall, int course, Length along) {
  const auto [run, piece] = over(layout, wall, course, along);
  if (piece == nullptr) return std::nullopt;
  const Length start = piece->start.nearest_nanometre();
  int number = 0;
  for (const CellSpan& cell : setout::cells_of(building.series_of(wall_of(building, wall)), *piece)) {
    ++number;
    if (start + cell.from <= along && along <= start + cell.to) return InCell{piece->number, number, start + cell.from, start + cell.to};
  }
  return std::nullopt;
}

bool unit_at(const Layout& layout, int wall, int course, Length along) { return over(layout, wall, course, along).run != nullptr; }

std::vector<Dowel> dowels_of(const Building& building, const Layout& layout) {
  std::vector<Dowel> dowels;
  for (int wall = 0; wall < static_cast<int>(building.walls.size()); ++wall) {
    std::int32_t number = 0;
    for (const setout::WallBar& bar : setout::bars_on_wall(building, layout, wall)) {
      if (bar.shared || bar.first_course != 1) continue;
      dowels.push_back({wall, ++number, bar.centre, bar.off_face, bar.reason, cell_at(building, layout, wall, 1, bar.centre),
                        building.courses.size() > 1 ? cell_at(building, layout, wall, 2, bar.centre) : std::nullopt});
    }
  }
  return dowels;
}

std::optional<Length> spacing_that_lands(const Building& building, Length spacing) {
  const Length pitch = building.series[0].pitch();
  if (spacing.is_multiple_of(pitch) || pitch <= Length()) return std::nullopt;
  return pitch * spacing.whole_multiples(pitch);
}

}  // namespace stringcourse::steel
