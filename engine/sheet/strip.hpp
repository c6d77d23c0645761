#pragma once
// One side of one course as a strip: every unit at its place, with running marks from the side's start corner.
#include "sheet/context.hpp"

namespace stringcourse::sheet {

/// 1:20 or 1:25, whichever takes fewer sheets: large enough for numbers 5 mm high at every block end. Parts end at the
/// end of a block where they can.
[[nodiscard]] WallParts parts_of_strip(const Context& context, int wall, int course);
/// "Course 1: side AB".
[[nodiscard]] std::string strip_title(const Context& context, int wall, int course);
[[nodiscard]] Group draw_strip(const Context& context, int wall, int course, const Part& part, Scale scale);

}  // namespace stringcourse::sheet
