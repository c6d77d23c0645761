#include "setout/hook.hpp"

namespace stringcourse::setout {
namespace {

const Corner& corner_at(const Building& building, const WallEnd& end) {
  return building.corners[static_cast<std::size_t>(end.corner)];
}

/// How far a form board reaches beyond one end of its wall's line: at an outside corner as far as the footing projects;
/// at a re-entrant one it meets the other wall's form so far short of it; where the wall ends on another, that
/// footing's form lies inside it.
std::optional<Length> beyond_end(const Building& building, const SettingOut& asked, int wall, const WallEnd& end) {
  if (end.kind == EndKind::Corner && asked.footing_outside) {
    return corner_at(building, end).convex ? *asked.footing_outside : -*asked.footing_outside;
  }
  if (end.kind != EndKind::Junction || !asked.footing_inside) return std::nullopt;
  const Junction& junction = building.junctions[static_cast<std::size_t>(end.junction)];
  const int main = junction.main == wall ? junction.abutting : junction.main;
  if (wall_of(building, main).interior) return std::nullopt;
  return -*asked.footing_inside;
}

}  // namespace

Hook hook_of(const Building& building, int wall) {
  const Wall& here = wall_of(building, wall);
  Hook hook{HookKind::FreeEnd, here.start_name, -1, here.start_point, false};
  if (here.start.kind == EndKind::Corner) {
    const Corner& corner = corner_at(building, here.start);
    hook.kind = corner.convex ? HookKind::OuterCorner : HookKind::InnerCorner;
    hook.name = corner.name;
    hook.other = corner.arriving == wall ? corner.leaving : corner.arriving;
  }
  if (here.start.kind == EndKind::Junction) {
    hook.kind = HookKind::MetFace;
    hook.other = building.junctions[static_cast<std::size_t>(here.start.junction)].main;
    hook.name = wall_of(building, hook.other).name;
    hook.other_is_inner = wall_of(building, hook.other).interior;
  }
  return hook;
}

FormEdge form_edge(const Building& building, const SettingOut* asked, int wall) {
  if (asked == nullptr) return {};
  const Wall& here = wall_of(building, wall);
  FormEdge edge;
  if (!here.interior) edge.beyond_face = asked->footing_outside;
  edge.before_start = beyond_end(building, *asked, wall, here.start);
  edge.past_end = beyond_end(building, *asked, wall, here.end);
  return edge;
}

}  // namespace stringcourse::setout
