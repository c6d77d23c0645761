#pragma once
// The building from above: one course with every unit, or just its walls for a key plan.
#include "sheet/context.hpp"

namespace stringcourse::sheet {

/// What a plan shows: Walls for the key plan, Units with numbers for a course, Site for walls without the walk's
/// arrows.
enum class PlanDetail { Walls, Units, Site };

/// What the masonry covers in plan.
struct PlanExtent {
  PlanPoint low, high;
};
[[nodiscard]] PlanExtent extent_of_plan(const Building& building);

/// Room that lettering and dimensions take round the plan, on each side.
inline constexpr Micrometres kPlanBorder = 18'500;
/// At this scale and larger ones unit numbers are legible in a plan.
inline constexpr Scale kSmallestNumbered{60};
/// Plans are drawn no larger.
inline constexpr Scale kLargestPlan{30};

/// The largest scale, 1:30 or smaller, at which the plan and its lettering fit into `room`.
[[nodiscard]] Scale scale_of_plan(const Building& building, const Area& room);
/// Where draw_plan() puts a stretch of a wall, in its whole thickness.
[[nodiscard]] Area plan_box(const Building& building, const Area& room, Scale scale, const Wall& wall, Length from,
                            Length to);
/// The step on paper, x and y, along a wall.
[[nodiscard]] Point step_along(const Wall& wall);
/// A plan, and for each wall where its length is lettered on it: around that text; of interior walls nothing.
struct DrawnPlan {
  Group group;
  std::vector<Area> lengths;
};
[[nodiscard]] DrawnPlan drawn_plan(const Context& context, int course, PlanDetail detail, const Area& room,
                                   Scale scale);
/// Just the plan.
[[nodiscard]] Group draw_plan(const Context& context, int course, PlanDetail detail, const Area& room, Scale scale);

}  // namespace stringcourse::sheet
