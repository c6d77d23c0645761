#pragma once
// One side of one course as a strip: every unit at its place, with running marks from the side's start corner.
#include <vector>

#include "sheet/context.hpp"

namespace stringcourse::sheet {

/// The scale of all strips: large enough for numbers 5 mm high at every block end.
inline constexpr Scale kStripScale{20};

[[nodiscard]] std::vector<Part> strip_parts(const Context& context, int wall);
/// "Course 1: side AB".
[[nodiscard]] std::string strip_title(const Context& context, int wall, int course);
[[nodiscard]] Group draw_strip(const Context& context, int wall, int course, const Part& part);

}  // namespace stringcourse::sheet
