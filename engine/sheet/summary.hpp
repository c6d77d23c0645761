#pragma once
// The first sheet: where the job stands. Key plan on the left, tallies on the right.
#include "sheet/context.hpp"

namespace stringcourse::sheet {

/// Scale of the key plan.
[[nodiscard]] Scale scale_of_summary(const Context& context);
[[nodiscard]] Group draw_summary(const Context& context);
/// Whether the sides' sizes stand on it; else they have a sheet of their own.
[[nodiscard]] bool summary_holds_sides(const Context& context);

/// Whole-building plan of one course with its notes beside it.
[[nodiscard]] Scale scale_of_course_plan(const Context& context);
[[nodiscard]] Group draw_course_plan(const Context& context, int course);

}  // namespace stringcourse::sheet
