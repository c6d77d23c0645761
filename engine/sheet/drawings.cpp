// Drawings without a frame, for pages and pictures: each as large as what it shows.
#include <algorithm>

#include "setout/places.hpp"
#include "sheet/context.hpp"
#include "sheet/elevation.hpp"
#include "sheet/plan.hpp"
#include "sheet/sheets.hpp"

namespace stringcourse::sheet {
namespace {

constexpr Micrometres kRim = 7'000;  // what desk printers leave blank
constexpr Micrometres kLargest = 1'000'000;  // one metre of paper at most, each way

std::size_t plans_of(const Building& building) { return std::min<std::size_t>(2, building.courses.size()); }

Sheet sheet_for(SheetName name, Micrometres width, Micrometres height) {
  Sheet sheet;
  sheet.name = std::move(name.name);
  sheet.title = std::move(name.title);
  sheet.width = width;
  sheet.height = height;
  return sheet;
}

Area inside(const Sheet& sheet) { return {kRim, kRim, sheet.width - kRim, sheet.height - kRim}; }

Sheet plan_drawing(const Context& context, SheetName name, int course) {
  const PlanExtent extent = extent_of_plan(context.building);
  const Length wide = extent.high.x - extent.low.x, high = extent.high.y - extent.low.y;
  const Scale scale = fitting_scale(wide, high, kLargest, kLargest, {50});
  Sheet sheet = sheet_for(std::move(name), scale.paper(wide) + 2 * (kPlanBorder + kRim),
                          scale.paper(high) + 2 * (kPlanBorder + kRim));
  sheet.groups.push_back(draw_plan(context, course, PlanDetail::Units, inside(sheet), scale));
  return sheet;
}

Sheet elevation_drawing(const Context& context, SheetName name, int wall) {
  const setout::Reach reach = setout::reach_of_wall(context.building, context.layout, wall);
  const Length high = height_of_courses(context.building);
  const Scale scale = fitting_scale(reach.to - reach.from, high, kLargest, kLargest, {20});
  Sheet sheet = sheet_for(std::move(name), scale.paper(reach.to - reach.from) + kElevationLeft + kElevationRight + 2 * kRim,
                          scale.paper(high) + kElevationAbove + kElevationBelow + 2 * kRim);
  sheet.groups.push_back(draw_elevation(context, wall, {reach.from, reach.to, 1, 1}, scale, inside(sheet)));
  return sheet;
}

}  // namespace

std::vector<SheetName> drawing_names(const Building& building, const SheetWords& words) {
  std::vector<SheetName> names;
  for (std::size_t course = 1; course <= plans_of(building); ++course) {
    const std::string number = number_text(static_cast<long long>(course));
    names.push_back({"plan-course-" + number, fill_in(words.language->title_plan, {number})});
  }
  for (std::size_t wall = 0; wall < building.walls.size(); ++wall) {
    names.push_back({"elevation-" + number_text(static_cast<long long>(wall + 1)),
                     fill_in(words.language->title_elevation, {building.walls[wall].name})});
  }
  return names;
}

Sheet make_drawing(const Building& building, const Layout& layout, const SheetWords& words, std::size_t index) {
  const Context context = context_of(building, layout, words, Paper::Letter);
  SheetName name = drawing_names(building, words)[index];
  const std::size_t plans = plans_of(building);
  if (index < plans) return plan_drawing(context, std::move(name), static_cast<int>(index) + 1);
  return elevation_drawing(context, std::move(name), static_cast<int>(index - plans));
}

}  // namespace stringcourse::sheet
