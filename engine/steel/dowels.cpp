#include "steel/dowels.hpp"

#include <algorithm>

#include "bond/layout_parts.hpp"
#include "catalogue/rules.hpp"
#include "measure/notation.hpp"
#include "setout/marks.hpp"

namespace stringcourse::steel {
namespace {

/// Whole nanometres, so that what is rounded goes against the room.
Length radius_of(const BarRules& bars) { return bars.diameter - bars.diameter.half_down() + bars.clearance; }

std::optional<DowelRoom> room_of(const Building& building, const Dowel& dowel) {
  if (!building.bars || !dowel.first || (building.courses.size() > 1 && !dowel.second)) return std::nullopt;
  const Length off = radius_of(*building.bars);
  setout::OnWall clear = dowel.first->clear;
  if (dowel.second) {
    const setout::OnWall& above = dowel.second->clear;
    clear = {std::max(clear.from, above.from), std::min(clear.to, above.to), std::max(clear.shallow, above.shallow),
             std::min(clear.deep, above.deep)};
  }
  return DowelRoom{dowel.along - clear.from - off, clear.to - dowel.along - off, dowel.off_face - clear.shallow - off,
                   clear.deep - dowel.off_face - off};
}

}  // namespace

std::optional<InCell> cell_at(const Building& building, const Layout& layout, int wall, int course,
                              bond::SeenFrom place) {
  return setout::what_stands_over(building, layout, wall, course, place).cell;
}

bool unit_at(const Building& building, const Layout& layout, int wall, int course, bond::SeenFrom place) {
  return setout::what_stands_over(building, layout, wall, course, place).run != nullptr;
}

Length DowelRoom::least() const { return std::min({to_start, to_end, to_outer, to_inner}); }

Length usable(Length room, Tape tape) {
  const Length step = tape_step(tape);
  return step * room.whole_multiples(step);
}

Length little_room() { return limit_of("dowel-little-room"); }

Fact little_room_said(const Building& building, const Dowel& dowel, Length most) {
  if (!dowel.room) return {};
  const Wall& wall = wall_of(building, dowel.wall);
  std::vector<Fact> ways;
  const auto add = [&](Length room, std::string_view says, std::initializer_list<FactValue> toward) {
    if (room >= most) return;
    std::vector<FactValue> values{std::max(Length(), usable(room, building.tape))};
    values.insert(values.end(), toward);
    ways.push_back({says, std::move(values)});
  };
  add(dowel.room->to_start, "room-toward", {wall.start_name}), add(dowel.room->to_end, "room-toward", {wall.end_name});
  add(dowel.room->to_outer, wall.interior ? "room-to-one-face" : "room-to-outer-face", {});
  add(dowel.room->to_inner, wall.interior ? "room-to-other-face" : "room-to-inner-face", {});
  return ways.empty() ? Fact() : fact("dowel-room", {listed(FactValue::Kind::Commas, ways)});
}

std::vector<Dowel> dowels_of(const Building& building, const Layout& layout) {
  std::vector<Dowel> dowels;
  for (int wall = 0; wall < static_cast<int>(building.walls.size()); ++wall) {
    std::int32_t number = 0;
    for (const bond::WallBar& bar : bond::bars_on_wall(building, layout, wall)) {
      if (bar.shared || bar.first_course != 1) continue;
      const bond::SeenFrom place{bar.centre, bar.off_face};
      Dowel dowel{wall,
                  ++number,
                  bar.centre,
                  bar.off_face,
                  bar.reason,
                  bar.reason == BarReason::Corner ? bar.corner : -1,
                  cell_at(building, layout, wall, 1, place),
                  std::nullopt,
                  std::nullopt};
      if (building.courses.size() > 1) dowel.second = cell_at(building, layout, wall, 2, place);
      dowel.room = room_of(building, dowel);
      dowels.push_back(std::move(dowel));
    }
  }
  return dowels;
}

}  // namespace stringcourse::steel
