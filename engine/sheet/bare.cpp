#include "sheet/bare.hpp"

#include <utility>

#include "sheet/plan.hpp"

namespace stringcourse::sheet {

Sheet bare_sheet(SheetName name, Micrometres width, Micrometres height) {
  return {.name = std::move(name.name), .title = std::move(name.title), .width = width, .height = height, .groups = {}};
}

Area inside_rim(const Sheet& sheet) { return {kRim, kRim, sheet.width - kRim, sheet.height - kRim}; }

BarePlan bare_plan(const Building& building, SheetName name) {
  const PlanExtent extent = extent_of_plan(building);
  const Length wide = extent.high.x - extent.low.x, high = extent.high.y - extent.low.y;
  const Scale scale = fitting_scale(wide, high, kLargest, kLargest, {50});
  const Micrometres round = 2 * (kPlanBorder + kRim);
  return {bare_sheet(std::move(name), scale.paper(wide) + round, scale.paper(high) + round), scale};
}

}  // namespace stringcourse::sheet
