// Corners that close: every corner set fits between its two walls; what is done to the sets in courses of another
// height or with a beam; and the room that a corner's bar has in the units of both its walls.
#include <algorithm>

#include "walls/fixed_bars.hpp"

namespace stringcourse::walls {
namespace {

const Series& series_at(const Draft& draft, int wall) { return draft.building.series_of(wall_at(draft, wall)); }

bool uses_set(const Draft& draft, int wall) {
  const Series& series = series_at(draft, wall);
  return corner_leg(series, draft.building.corner_sets_stocked) != series.thickness;
}

void check_closes(Draft& draft, const Corner& corner, int wall) {
  const Series& series = series_at(draft, wall);
  if (corner_parts(draft.building, corner, wall, series.full)) return;
  const int other = corner.arriving == wall ? corner.leaving : corner.arriving;
  refuse(draft, "corner-set-does-not-close", wall_at(draft, wall).place + "/series",
         fact("corner-set-does-not-close", {corner.name, series.id, marked(series.thickness),
                                            marked(corner_leg(series, draft.building.corner_sets_stocked)),
                                            wall_at(draft, other).name, marked(series_at(draft, other).thickness)}),
         fact("build-both-sides-alike"));
}

void find_cut_sets(Draft& draft) {
  std::vector<int> beams, half_high;
  for (const Course& course : draft.building.courses) {
    if (course.bond_beam) beams.push_back(course.number);
    if (course.half_high) half_high.push_back(course.number);
  }
  if (!beams.empty()) {
    find(draft, "corner-sets-in-beam", "/steel/bond_beams",
         fact("corner-sets-in-beam", {beams.size(), listed(FactValue::Kind::And, beams)}));
  }
  if (!half_high.empty()) {
    find(draft, "corner-sets-half-high", "/heights",
         fact("corner-sets-half-high", {half_high.size(), listed(FactValue::Kind::And, half_high),
                                        marked(draft.building.series.front().half_high)}));
  }
}

/// ... of the unit of `wall`, where that runs through.
Length grout_left_in(const Draft& draft, const Corner& corner, int wall, const BarPlace& bar) {
  const Building& building = draft.building;
  const Series& series = series_at(draft, wall);
  const bool at_end = corner.arriving == wall;
  const Length beyond =
      corner.convex ? Length() : series_at(draft, at_end ? corner.leaving : corner.arriving).thickness;
  const Length along = (at_end ? wall_at(draft, wall).actual - bar.along : bar.along) + beyond;
  const Length across = corner.convex ? bar.off_face : series.thickness - bar.off_face;
  const Length thick = corner_unit_thickness(series, building.corner_sets_stocked);
  Length left = std::min(across - series.face_shell, thick - series.face_shell - across);
  if (!series.full_cells.empty()) {  // seen from the unit's end at the corner
    const CellSpan &first = series.full_cells.front(), &last = series.full_cells.back();
    const CellSpan cell = at_end ? CellSpan{series.full - last.to, series.full - last.from} : first;
    left = std::min({left, along - cell.from, cell.to - along});
  }
  return left - Length::nanometres((building.bars->diameter.in_nanometres() + 1) / 2);
}

void check_corner_bar(Draft& draft, const FixedBar& bar) {
  const Corner& corner = draft.building.corners[static_cast<std::size_t>(bar.corner)];
  const Length left = grout_left(draft, bar);
  const BarRules& rules = *draft.building.bars;
  if (left >= rules.clearance) return;
  const std::string_view says = rules.grout == Grout::Fine ? "corner-bar-in-fine-grout" : "corner-bar-in-coarse-grout";
  find(draft, "corner-bar-clearance", wall_at(draft, corner.arriving).place,
       fact(says, {corner.name, rules.size, marked(std::max(left, Length())), marked(rules.clearance)}),
       "bar-clearance", HoldPoint::Pour);
}

/// A bar in the middle of a wall has its grout on either side.
void check_across(Draft& draft, int wall) {
  const Series& series = series_at(draft, wall);
  const BarRules& rules = *draft.building.bars;
  const Length clear = series.thickness - series.face_shell * 2, needed = rules.diameter + rules.clearance * 2;
  if (!series.grouts || clear >= needed) return;
  const std::string_view says = rules.grout == Grout::Fine ? "bar-across-in-fine-grout" : "bar-across-in-coarse-grout";
  find(draft, "bar-clearance-across", wall_at(draft, wall).place,
       fact(says, {series.id, marked(std::max(clear, Length())), rules.size, marked(needed)}), "bar-clearance",
       HoldPoint::Pour);
}

}  // namespace

Length grout_left(const Draft& draft, const FixedBar& bar) {
  const Corner& corner = draft.building.corners[static_cast<std::size_t>(bar.corner)];
  const auto left = [&](int wall) {
    return grout_left_in(draft, corner, wall, bar_seen_from(draft.building, bar, wall));
  };
  return std::min(left(corner.arriving), left(corner.leaving));
}

void resolve_corners(Draft& draft) {
  if (!draft.series_stand || !draft.plan_stands) return;
  bool sets = false;
  const std::vector<Corner> corners = draft.building.corners;
  for (const Corner& corner : corners) {
    for (const int wall : {corner.arriving, corner.leaving}) {
      check_closes(draft, corner, wall);
      sets |= uses_set(draft, wall);
    }
  }
  if (sets) find_cut_sets(draft);
}

void check_bar_room(Draft& draft) {
  if (!draft.building.bars) return;
  for (int wall = 0; wall < static_cast<int>(draft.building.walls.size()); ++wall) check_across(draft, wall);
  const std::vector<FixedBar> bars = draft.building.fixed_bars;
  for (const FixedBar& bar : bars) {
    if (bar.corner >= 0) check_corner_bar(draft, bar);
  }
}

}  // namespace stringcourse::walls
