#include "steel/dowels.hpp"

#include <algorithm>

#include "measure/notation.hpp"
#include "setout/marks.hpp"
#include "setout/places.hpp"

namespace stringcourse::steel {
namespace {

const Wall& wall_of(const Building& building, int wall) { return building.walls[static_cast<std::size_t>(wall)]; }

/// The corner whose bar a shared or owned corner bar is; -1: none.
int corner_of(const Layout& layout, int wall, const setout::WallBar& bar) {
  if (bar.reason != BarReason::Corner) return -1;
  const auto placed = std::ranges::find_if(layout.bars, [&](const PlacedBar& one) { return one.wall == wall && one.centre == bar.centre; });
  return placed == layout.bars.end() ? -1 : placed->corner;
}

/// Whole nanometres, so that what is rounded goes against the room.
Length radius_of(const BarRules& bars) { return bars.diameter - bars.diameter.half_down() + bars.clearance; }

std::optional<DowelRoom> room_of(const Building& building, const Dowel& dowel) {
  if (!building.bars || !dowel.first || (building.courses.size() > 1 && !dowel.second)) return std::nullopt;
  const Length off = radius_of(*building.bars);
  setout::OnWall clear = dowel.first->clear;
  if (dowel.second) {
    const setout::OnWall& above = dowel.second->clear;
    clear = {std::max(clear.from, above.from), std::min(clear.to, above.to), std::max(clear.shallow, above.shallow), std::min(clear.deep, above.deep)};
  }
  return DowelRoom{dowel.along - clear.from - off, clear.to - dowel.along - off, dowel.off_face - clear.shallow - off, clear.deep - dowel.off_face - off};
}

}  // namespace

std::optional<InCell> cell_at(const Building& building, const Layout& layout, int wall, int course, setout::SeenFrom place) {
  return setout::what_stands_over(building, layout, wall, course, place).cell;
}

bool unit_at(const Building& building, const Layout& layout, int wall, int course, setout::SeenFrom place) {
  return setout::what_stands_over(building, layout, wall, course, place).run != nullptr;
}

Length DowelRoom::least() const { return std::min({to_start, to_end, to_outer, to_inner}); }

Length usable(Length room, Tape tape) {
  const Length step = tape_step(tape);
  return step * room.whole_multiples(step);
}

std::string little_room_text(const Building& building, const Dowel& dowel, Length most) {
  if (!dowel.room) return "";
  const Wall& wall = wall_of(building, dowel.wall);
  const bool inner = wall.interior;
  const struct { Length room; std::string way; } ways[] = {{dowel.room->to_start, "toward " + wall.start_name}, {dowel.room->to_end, "toward " + wall.end_name},
                                                           {dowel.room->to_outer, inner ? "to one face" : "to the outer face"},
                                                           {dowel.room->to_inner, inner ? "to the other face" : "to the inner face"}};
  std::string text;
  for (const auto& [room, way] : ways) {
    if (room >= most) continue;
    const Length left = std::max(Length(), usable(room, building.tape));
    text += (text.empty() ? "" : ", ") + tape_text(left, building.tape) + " " + way;
  }
  return text;
}

std::vector<Dowel> dowels_of(const Building& building, const Layout& layout) {
  std::vector<Dowel> dowels;
  for (int wall = 0; wall < static_cast<int>(building.walls.size()); ++wall) {
    std::int32_t number = 0;
    for (const setout::WallBar& bar : setout::bars_on_wall(building, layout, wall)) {
      if (bar.shared || bar.first_course != 1) continue;
      const setout::SeenFrom place{bar.centre, bar.off_face};
      Dowel dowel{wall, ++number, bar.centre, bar.off_face, bar.reason, corner_of(layout, wall, bar), cell_at(building, layout, wall, 1, place), std::nullopt, std::nullopt};
      if (building.courses.size() > 1) dowel.second = cell_at(building, layout, wall, 2, place);
      dowel.room = room_of(building, dowel);
      dowels.push_back(std::move(dowel));
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
