#include "proof/claim.hpp"

namespace stringcourse::proof {
namespace {

template <typename List>
const auto& at(const List& list, int index) {
  return list[static_cast<std::size_t>(index)];
}

int wall_with_place(const Building& b, const std::string& place, int otherwise) {
  for (int i = 0; i < static_cast<int>(b.walls.size()); ++i)
    if (at(b.walls, i).place == place) return i;
  return otherwise;
}

/// The nominal line at this end stands j/2 outside the wall's end at a convex corner or free end, j/2 inside elsewhere.
bool pushed_out(const Building& b, const WallEnd& end) {
  if (end.kind == EndKind::Corner) return at(b.corners, end.corner).convex;
  return end.kind == EndKind::Free;
}

struct EndChoice {
  bool known, at_start;
};

EndChoice end_named(const Job& job, const Names& names, int wall, const std::string& name) {
  for (std::size_t i = 0; i < names.side_walls.size(); ++i) {
    if (names.side_walls[i] != wall) continue;
    const Side& side = job.outline.sides[i];
    if (name == side.from) return {true, !names.reversed};
    return {name == side.to, names.reversed};
  }
  return {name == "start" || name == "end", name == "start"};
}

}  // namespace

Names name_walls(const Job& job, const Building& building) {
  Names names;
  const int sides = static_cast<int>(job.outline.sides.size());
  for (int i = 0; i < sides; ++i)
    names.side_walls.push_back(wall_with_place(building, "/outline/sides/" + std::to_string(i), i));
  for (int i = 0; i < static_cast<int>(job.interior_walls.size()); ++i)
    names.interior_walls.push_back(wall_with_place(building, "/interior_walls/" + std::to_string(i), sides + i));
  names.reversed = !job.outline.closed && job.outline.building_on == Hand::Left;
  return names;
}

int wall_named(const Job& job, const Names& names, const std::string& name) {
  for (std::size_t i = 0; i < names.side_walls.size(); ++i) {
    const Side& side = job.outline.sides[i];
    if (name == (side.name.empty() ? side.from + side.to : side.name)) return names.side_walls[i];
  }
  for (std::size_t i = 0; i < names.interior_walls.size(); ++i)
    if (name == job.interior_walls[i].name) return names.interior_walls[i];
  return -1;
}

Measured measure(const Job& job, const Building& building, const Names& names, int wall, const Place& place) {
  const Wall& w = at(building.walls, wall);
  const EndChoice end = end_named(job, names, wall, place.from);
  Measured measured;
  measured.known = end.known;
  measured.from_start = end.at_start;
  measured.to_masonry = measured.to_void = measured.to_middle = place.at.length;
  if (place.at.basis == Basis::Actual) return measured;
  // Nominal line n from a line that stands at o = -j/2 (outside) or +j/2 (inside). A near face of masonry stands j/2
  // beyond its line, a far one j/2 before it; the edges of a hole the other way round.
  const Length j = building.series_of(w).joint;
  const Length origin = pushed_out(building, end.at_start ? w.start : w.end) ? -j : j;  // twice
  const Length face = place.to.value_or(Face::Near) == Face::Near ? j : -j;             // twice
  measured.to_masonry += (origin + face).half_down();
  measured.to_void += (origin - face).half_down();
  measured.to_middle += origin.half_down();
  return measured;
}

Violations check_claim(const Job& job, const Building& building) {
  const Names names = name_walls(job, building);
  Violations found = joined(claim_units(job, building, names), claim_courses(job, building));
  for (auto claim : {claim_outline, claim_interior, claim_openings, claim_control_joints, claim_bars})
    found = joined(std::move(found), claim(job, building, names));
  return found;
}

}  // namespace stringcourse::proof
