#include "setout/cleanouts.hpp"

#include <algorithm>
#include <set>

#include "bond/layout_parts.hpp"

namespace stringcourse::setout {
namespace {

const Run& run_of(const Layout& layout, std::uint32_t piece) {
  const auto after = std::ranges::upper_bound(layout.runs, piece, {}, &Run::first_piece);
  return *std::prev(after);
}

/// Inside, the cell of an outside corner is behind the wall that butts there; a wall that abuts stands before others.
bool inner_face_is_covered(const Building& building, const PlacedBar& bar, int wall, Length along) {
  if (bar.corner >= 0) return building.corners[static_cast<std::size_t>(bar.corner)].convex;
  return std::ranges::any_of(building.junctions, [&](const Junction& junction) {
    return junction.main == wall && junction.from.distance_from_start() < along &&
           along < junction.to.distance_from_start();
  });
}

}  // namespace

std::vector<WallCleanout> cleanouts_of(const Building& building, const Layout& layout) {
  std::vector<WallCleanout> all;
  std::set<std::uint32_t> bought;
  for (const PlacedCleanout& placed : layout.cleanouts) {
    const PlacedBar& bar = layout.bars[placed.bar];
    const Run& run = run_of(layout, placed.piece);
    const UnitKind kind = layout.pieces[placed.piece].kind;
    const bond::SeenFrom place =
        bond::seen_from(wall_of(building, run.wall), plan_point(wall_of(building, bar.wall), bar.centre, bar.off_face));
    const bool unit =
        (kind == UnitKind::Cleanout || kind == UnitKind::CleanoutHalf) && bought.insert(placed.piece).second;
    all.push_back({run.wall, placed.course, placed.piece, place.along, unit,
                   inner_face_is_covered(building, bar, run.wall, place.along)});
  }
  return all;
}

std::vector<WallCleanout> cleanouts_in(const Building& building, const Layout& layout, int wall, int course) {
  std::vector<WallCleanout> all = cleanouts_of(building, layout);
  std::erase_if(all, [&](const WallCleanout& one) { return one.wall != wall || one.course != course; });
  return all;
}

}  // namespace stringcourse::setout
