#include "walls/corner_plan.hpp"

#include <algorithm>
#include <utility>

namespace stringcourse::walls {
namespace {

bool has_set(const Series& series, bool sets_stocked) { return series.corner_set && sets_stocked; }

Fact unit_name(const Series& series) {
  const auto& parts = series.corner_set->parts;
  return parts.empty() ? fact("corner-unit") : fact("corner-set-part", {parts.front()});
}

/// As the series calls it where it is the one that its set comes with; else by its size.
Fact filler_name(const Series& series, Length thick, Length long_, bool usual) {
  const auto& parts = series.corner_set->parts;
  if (usual && parts.size() > 1) return fact("corner-set-part", {parts.back()});
  return fact("filler-of-size", {thick, long_});
}

/// The wall is thicker than the set's short leg: a unit of the leg's thickness, and a filler behind it.
std::optional<std::vector<CornerPart>> thick_corner(const Series& series, Length butting, Length length) {
  const Length leg = series.corner_set->short_leg, thick = series.thickness, joint = series.joint;
  if (length != series.full || butting > length) return std::nullopt;
  std::vector<CornerPart> parts{{Length(), length, Length(), leg, unit_name(series)}};
  const bool one_unit = series.corner_set->parts.size() < 2;
  const Length from = butting + joint, near = one_unit ? leg : leg + joint;
  if (near >= thick || from >= length) return parts;
  Fact name = one_unit ? Fact() : filler_name(series, thick - near, length - from, butting == thick);
  parts.push_back({from, length, near, thick, std::move(name)});
  return parts;
}

/// The wall is thinner than the leg: an L-unit, or a plain unit and a filler that covers the rest of its end.
std::optional<std::vector<CornerPart>> thin_corner(const Series& series, Length butting, Length length, Makes makes) {
  const Length leg = series.corner_set->short_leg, thick = series.thickness, joint = series.joint;
  const bool whole = length == series.full, one_unit = series.corner_set->parts.size() < 2;
  std::vector<CornerPart> parts{{Length(), length, Length(), thick, whole ? unit_name(series) : Fact()}};
  if (one_unit && whole && butting == thick && makes == Makes::OneCorner) {
    parts.push_back({Length(), thick, thick, leg, {}});
    return parts;
  }
  if (leg - thick <= joint || butting > length) return std::nullopt;
  if (one_unit && whole) parts.front().name = fact("plain-end-unit");
  parts.push_back(
      {Length(), butting, thick + joint, leg, filler_name(series, leg - thick - joint, butting, butting == thick)});
  return parts;
}

}  // namespace

Length corner_unit_thickness(const Series& series, bool sets_stocked) {
  return std::min(series.thickness, corner_leg(series, sets_stocked));
}

std::optional<std::vector<CornerPart>> corner_parts(const Series& through, Length butting, bool sets_stocked,
                                                    Length length, Makes makes) {
  const Length leg = corner_leg(through, sets_stocked);
  if (leg < through.thickness) return thick_corner(through, butting, length);
  if (leg > through.thickness) return thin_corner(through, butting, length, makes);
  const bool set = has_set(through, sets_stocked) && length == through.full;
  return std::vector<CornerPart>{{Length(), length, Length(), through.thickness, set ? unit_name(through) : Fact()}};
}

std::optional<std::vector<CornerPart>> corner_parts(const Building& building, const Corner& corner, int wall,
                                                    Length length, Makes makes) {
  const int other = corner.arriving == wall ? corner.leaving : corner.arriving;
  return corner_parts(building.series_of(wall_of(building, wall)),
                      building.series_of(wall_of(building, other)).thickness, building.corner_sets_stocked, length,
                      makes);
}

bool halves_make_corners(const Building& building, int wall) {
  const Wall& here = wall_of(building, wall);
  return std::ranges::all_of(std::initializer_list<WallEnd>{here.start, here.end}, [&](const WallEnd& end) {
    return end.kind != EndKind::Corner || corner_parts(building, building.corners[static_cast<std::size_t>(end.corner)],
                                                       wall, building.series_of(here).half);
  });
}

BarPlace corner_bar_place(const Building& building, const Corner& corner, int wall) {
  const bool at_end = corner.arriving == wall;
  const Wall& here = wall_of(building, wall);
  const Series& own = building.series_of(here);
  const Series& other = building.series_of(wall_of(building, at_end ? corner.leaving : corner.arriving));
  const Length in_own = corner_unit_thickness(own, building.corner_sets_stocked).half_down();
  const Length in_other = corner_unit_thickness(other, building.corner_sets_stocked).half_down();
  const Length inward = corner.convex ? in_other : in_other - other.thickness;
  return {at_end ? here.actual - inward : inward, corner.convex ? in_own : own.thickness - in_own};
}

BarPlace bar_seen_from(const Building& building, const FixedBar& bar, int wall) {
  const BarPlace place{bar.centre.distance_from_start(), bar.off_face};
  if (bar.wall == wall || bar.corner < 0) return place;
  return round_corner(building, building.corners[static_cast<std::size_t>(bar.corner)], bar.wall, place);
}

BarPlace round_corner(const Building& building, const Corner& corner, int wall, BarPlace place) {
  const bool at_end = corner.arriving == wall;
  const Length inwards =
      at_end ? wall_of(building, wall).actual - place.along : place.along;  // from the corner's point
  const Length off_face = corner.convex ? inwards : -inwards, in = corner.convex ? place.off_face : -place.off_face;
  return {at_end ? in : wall_of(building, corner.arriving).actual - in, off_face};
}

Length middle_of(const Building& building, int wall) {
  return building.series_of(wall_of(building, wall)).thickness.half_down();
}

}  // namespace stringcourse::walls
