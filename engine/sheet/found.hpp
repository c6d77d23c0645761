#pragma once
// What was found on the ground: the pegs with the way to move each, all readings with what they come to, and the bed
// under every unit of the first course.
#include "paper/table.hpp"
#include "sheet/context.hpp"
#include "sheet/strip.hpp"

namespace stringcourse::sheet {

/// The walls as planned, every taped line, and at each corner the way its peg is to be moved, in words and arrows.
[[nodiscard]] Group draw_found_plan(const Context& context, const Area& room, Scale scale);
/// Tapings, moves, levels and the choices for the bed. No lines where nothing was read.
[[nodiscard]] Table found_table(const Context& context);

/// True where beds are known under units of this wall.
[[nodiscard]] bool has_bed_profile(const Context& context, int wall);
/// Whole walls at 1:20 to 1:40 where they fit, else in the parts of their strip.
[[nodiscard]] StripPlan plan_bed_profile(const Context& context, int wall);
/// One stretch of a wall seen from outside: units of course 1, the bed under them at full height, its thickness in
/// sixteenths (or millimetres) above each.
[[nodiscard]] Group draw_bed_profile(const Context& context, int wall, const Part& part, Scale scale);

}  // namespace stringcourse::sheet
