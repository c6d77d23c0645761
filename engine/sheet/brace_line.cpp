#include "sheet/brace_line.hpp"

#include "catalogue/rules.hpp"

namespace stringcourse::sheet {
namespace {

constexpr Micrometres kTickFrom = 10'500, kTickTo = 14'000;  // right of the courses' numbers

}  // namespace

std::optional<Length> brace_height(const Context& context) {
  if (context.building.courses.empty()) return std::nullopt;
  const Length high = context.building.courses.back().top - foot_of_course(context.building, 1);
  const Length limit = limit_of("brace-over-8-ft", context.tape());
  return high > limit ? std::optional(limit) : std::nullopt;
}

void draw_brace_line(Pad& pad, const Elevation& elevation) {
  const std::optional<Length> high = brace_height(elevation.context);
  if (!high) return;
  const Micrometres y = elevation.level(elevation.bearing + *high);
  const Stroke dashes{Pen::Medium, Dash::Dashed, Ink::Red};
  pad.line({elevation.frame.left, y}, {elevation.frame.right, y}, dashes);
  const Micrometres right = elevation.frame.right;
  pad.line({right + kTickFrom, y}, {right + kTickTo, y}, {Pen::Medium, Dash::Solid, Ink::Red});
}

std::string brace_line_note(const Context& context) {
  const std::optional<Length> high = brace_height(context);
  return high ? words::fill_in(context.words.top.brace_line_note, {height_text(context, *high)}) : "";
}

}  // namespace stringcourse::sheet
