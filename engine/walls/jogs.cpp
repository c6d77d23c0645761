// Jogs of the outline: a side from a convex corner to a re-entrant one, so short that the corner units of the sides
// before and after it come together. From course to course either both corners swap (the jog runs through at both, then
// butts at both) or the jog runs through at one of them and butts at the other.
#include <algorithm>
#include <optional>

#include "walls/corner_plan.hpp"
#include "walls/draft.hpp"

namespace stringcourse::walls {
namespace {

/// What stands at the two corners of a jog.
struct Jog {
  Length leg_out, leg_in;  // of the corner made by the side at the convex, and at the re-entrant corner
  Length thick_in;         // of the side at the re-entrant corner
  Length piece;            // the shortest piece with which the jog runs through at a corner
  Length full;
  bool turns_in_one;  // one piece can make both corners: its unit is as thick as the wall
};

Length leg_of(const Draft& draft, int wall) {
  return corner_leg(draft.building.series_of(wall_at(draft, wall)), draft.building.corner_sets_stocked);
}

/// The jog that this side is, or nothing.
std::optional<Jog> jog_of(const Draft& draft, int index) {
  const Building& building = draft.building;
  const Wall& wall = wall_at(draft, index);
  if (wall.interior || wall.start.kind != EndKind::Corner || wall.end.kind != EndKind::Corner) return std::nullopt;
  const Corner& start = building.corners[static_cast<std::size_t>(wall.start.corner)];
  const Corner& end = building.corners[static_cast<std::size_t>(wall.end.corner)];
  if (start.convex == end.convex) return std::nullopt;
  const int out = start.convex ? start.arriving : end.leaving, in = start.convex ? end.leaving : start.arriving;
  const Series& series = building.series_of(wall);
  const Length piece = halves_make_corners(building, index) ? series.half : series.full;
  return Jog{leg_of(draft, out),
             leg_of(draft, in),
             thickness_of(draft, in),
             piece,
             series.full,
             corner_unit_thickness(series, building.corner_sets_stocked) == series.thickness};
}

/// The shortest jog whose corners both swap: where it butts at both, a joint at least is left between the two corners'
/// legs; where it runs through at both, one piece makes both corners, or two pieces do with a joint between them.
Length least_swapping(const Jog& jog, Length joint) {
  const Length butting = joint + jog.leg_out + jog.leg_in - jog.thick_in;
  const Length through = jog.turns_in_one ? jog.piece : jog.full * 2 + joint;
  return std::max(butting, through - jog.thick_in);
}

/// The shortest jog that runs through at one corner and butts at the other: the corner piece and a joint, either way.
Length least_in_turn(const Jog& jog, Length joint) {
  return jog.piece + joint + std::max(jog.leg_out, jog.leg_in) - jog.thick_in;
}

Length least_of(const Jog& jog, Length joint) {
  return std::min(least_swapping(jog, joint), least_in_turn(jog, joint));
}

}  // namespace

void check_jogs(Draft& draft) {
  if (!draft.series_stand || !draft.plan_stands) return;
  const int count = static_cast<int>(draft.building.walls.size());
  for (int index = 0; index < count; ++index) {
    const std::optional<Jog> jog = jog_of(draft, index);
    const Wall& wall = wall_at(draft, index);
    if (!jog || least_of(*jog, draft.building.joint_least) <= wall.actual) continue;
    refuse(draft, "jog-too-short", wall.place + "/length",
           fact("jog-too-short", {wall.name, marked(wall.actual), wall.start_name, wall.end_name}),
           fact("lengthen-jog", {wall.name, at_least(least_of(*jog, draft.building.joint))}));
  }
}

}  // namespace stringcourse::walls
