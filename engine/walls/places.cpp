#include "walls/places.hpp"

#include <utility>

namespace stringcourse::walls {
namespace {

/// Which end of its wall a place is measured from.
enum class MeasuredFrom { Start, End };

std::optional<MeasuredFrom> measured_from(Draft& draft, int wall, const Place& place,
                                          const std::string& place_pointer) {
  const auto& starts = draft.start_names[static_cast<std::size_t>(wall)];
  const auto& ends = draft.end_names[static_cast<std::size_t>(wall)];
  if (starts.contains(place.from)) return MeasuredFrom::Start;
  if (ends.contains(place.from)) return MeasuredFrom::End;
  std::vector<FactValue> known;
  for (const auto* names : {&starts, &ends}) {
    for (const std::string& name : *names) known.push_back(FactValue::typed(name));
  }
  refuse(draft, "unknown-corner", place_pointer + "/from",
         fact("unknown-corner", {FactValue::typed(place.from), wall_at(draft, wall).name}),
         fact("measure-from", {{FactValue::Kind::Or, std::move(known)}}));
  return std::nullopt;
}

const WallEnd& end_of(const Wall& wall, MeasuredFrom from) {
  return from == MeasuredFrom::Start ? wall.start : wall.end;
}

/// Distance of the near edge from the actual end: half a joint for the edge and half a joint for the end, exact.
Length near_edge(const Place& place, Length width, Placed what, PushedEnd end, Length joint) {
  const bool far = place.to == Face::Far;
  if (place.at.basis == Basis::Actual) return far ? place.at.length - width : place.at.length;
  // In halves of a joint: a hole's near edge lies before its nominal line, its far edge beyond; masonry the other way.
  const int edge = (what == Placed::Hole) == far ? 1 : -1;
  const int halves = edge + (end == PushedEnd::Out ? -1 : 1);
  const Length at = place.at.length + joint * (halves / 2);
  return far ? at - width : at;
}

Position from_wall_start(const Wall& wall, MeasuredFrom from, Length distance) {
  return Position::from_start(from == MeasuredFrom::Start ? distance : wall.actual - distance);
}

}  // namespace

PushedEnd pushed_end(const Draft& draft, const WallEnd& end) {
  if (end.kind == EndKind::Junction) return PushedEnd::In;
  if (end.kind == EndKind::Free) return PushedEnd::Out;
  return draft.building.corners[static_cast<std::size_t>(end.corner)].convex ? PushedEnd::Out : PushedEnd::In;
}

std::optional<Stretch> placed_stretch(Draft& draft, int wall, const Place& place, Length width, Placed what,
                                      const std::string& place_pointer) {
  const auto from = measured_from(draft, wall, place, place_pointer);
  if (!from) return std::nullopt;
  const Wall& line = wall_at(draft, wall);
  const Length near = near_edge(place, width, what, pushed_end(draft, end_of(line, *from)), draft.building.joint);
  const Position a = from_wall_start(line, *from, near), b = from_wall_start(line, *from, near + width);
  return *from == MeasuredFrom::Start ? Stretch{a, b} : Stretch{b, a};
}

std::optional<Position> placed_line(Draft& draft, int wall, const Place& place, const std::string& place_pointer) {
  const auto from = measured_from(draft, wall, place, place_pointer);
  if (!from) return std::nullopt;
  const Wall& line = wall_at(draft, wall);
  const Length half_joint = draft.building.joint.half_down();
  const Length push = pushed_end(draft, end_of(line, *from)) == PushedEnd::Out ? -half_joint : half_joint;
  const Length distance = place.at.basis == Basis::Actual ? place.at.length : place.at.length + push;
  return from_wall_start(line, *from, distance);
}

Position first_face(const Draft& draft, int wall) {
  const WallEnd& end = wall_at(draft, wall).start;
  const bool behind = end.kind == EndKind::Corner && pushed_end(draft, end) == PushedEnd::Out;
  return Position::from_start(
      behind ? thickness_of(draft, draft.building.corners[static_cast<std::size_t>(end.corner)].arriving) : Length());
}

Position last_face(const Draft& draft, int wall) {
  const Wall& line = wall_at(draft, wall);
  const bool behind = line.end.kind == EndKind::Corner && pushed_end(draft, line.end) == PushedEnd::Out;
  const Length other =
      behind ? thickness_of(draft, draft.building.corners[static_cast<std::size_t>(line.end.corner)].leaving)
             : Length();
  return Position::from_start(line.actual - other);
}

}  // namespace stringcourse::walls
