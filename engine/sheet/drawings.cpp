// Drawings without a frame, for pages and pictures: each as large as what it shows.
#include <algorithm>

#include "setout/places.hpp"
#include "sheet/context.hpp"
#include "sheet/drawing.hpp"
#include "sheet/elevation.hpp"
#include "sheet/found.hpp"
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

std::vector<Handle> plan_handles(const Building& building, int course, const Area& room, Scale scale) {
  std::vector<Handle> handles;
  const auto add = [&](Handle::What what, std::size_t index, const Wall& wall, Length from, Length to, bool shown) {
    const Point step = step_along(wall);
    handles.push_back({what, static_cast<int>(index), plan_box(building, room, scale, wall, from, to), step.x, step.y, shown});
  };
  for (std::size_t index = 0; index < building.walls.size(); ++index) {
    const Wall& wall = building.walls[index];
    if (!wall.interior) add(Handle::What::Side, index, wall, Length(), wall.actual, true);
  }
  for (std::size_t index = 0; index < building.openings.size(); ++index) {
    const ResolvedOpening& opening = building.openings[index];
    const bool shown = opening.first_course <= course && course <= opening.last_course;
    add(Handle::What::Opening, index, building.walls[static_cast<std::size_t>(opening.wall)],
        opening.from.distance_from_start(), opening.to.distance_from_start(), shown);
  }
  return handles;
}

Drawing plan_drawing(const Context& context, SheetName name, int course) {
  const PlanExtent extent = extent_of_plan(context.building);
  const Length wide = extent.high.x - extent.low.x, high = extent.high.y - extent.low.y;
  const Scale scale = fitting_scale(wide, high, kLargest, kLargest, {50});
  Sheet sheet = sheet_for(std::move(name), scale.paper(wide) + 2 * (kPlanBorder + kRim),
                          scale.paper(high) + 2 * (kPlanBorder + kRim));
  const Area room = inside(sheet);
  sheet.groups.push_back(draw_plan(context, course, PlanDetail::Units, room, scale));
  return {std::move(sheet), scale, course, -1, plan_handles(context.building, course, room, scale)};
}

Drawing elevation_drawing(const Context& context, SheetName name, int wall) {
  const setout::Reach reach = setout::reach_of_wall(context.building, context.layout, wall);
  const Length high = height_of_courses(context.building);
  const Scale scale = fitting_scale(reach.to - reach.from, high, kLargest, kLargest, {20});
  Sheet sheet = sheet_for(std::move(name), scale.paper(reach.to - reach.from) + kElevationLeft + kElevationRight + 2 * kRim,
                          scale.paper(high) + kElevationAbove + kElevationBelow + 2 * kRim);
  const Area room = inside(sheet);
  const Part part{reach.from, reach.to, 1, 1};
  sheet.groups.push_back(draw_elevation(context, wall, part, scale, room));
  Drawing drawing{std::move(sheet), scale, 0, wall, {}};
  for (std::size_t index = 0; index < context.building.openings.size(); ++index) {
    const ResolvedOpening& opening = context.building.openings[index];
    if (opening.wall != wall) continue;
    const Stretch stretch{opening.from.distance_from_start(), opening.to.distance_from_start(), opening.underside, opening.soffit};
    drawing.handles.push_back({Handle::What::Opening, static_cast<int>(index),
                               elevation_box(context, wall, part, scale, room, stretch), -1, 0, true});
  }
  return drawing;
}

Drawing pegs_drawing(const Context& context) {
  const PlanExtent extent = extent_of_plan(context.building);
  const Length wide = extent.high.x - extent.low.x, high = extent.high.y - extent.low.y;
  const Scale scale = fitting_scale(wide, high, kLargest, kLargest, {50});
  Sheet sheet = sheet_for({"pegs", std::string(context.words.title_found_plan)}, scale.paper(wide) + 2 * (kPlanBorder + kRim),
                          scale.paper(high) + 2 * (kPlanBorder + kRim));
  const Area room = inside(sheet);
  sheet.groups.push_back(draw_found_plan(context, room, scale));
  return {std::move(sheet), scale, 1, -1, {}};
}

// The bed under a whole wall, as wide as it is.
Drawing bed_drawing(const Context& context, int wall) {
  const setout::Reach reach = setout::reach_of_wall(context.building, context.layout, wall);
  const Scale scale = fitting_scale(reach.to - reach.from, reach.to - reach.from, kLargest, kLargest, {20});
  Sheet sheet = sheet_for({"bed-" + number_text(wall + 1), fill_in(context.words.title_bed_profile, {context.wall(wall).name})},
                          std::max(scale.paper(reach.to - reach.from) + 30'000, Micrometres{190'000}) + 2 * kRim, 175'000);
  Context on_sheet = context;
  on_sheet.page.drawing = inside(sheet);
  sheet.groups.push_back(draw_bed_profile(on_sheet, wall, {reach.from, reach.to, 1, 1}, scale));
  return {std::move(sheet), scale, 0, wall, {}};
}

// The number behind `prefix`, from 1 to `most`; 0 for anything else.
int number_behind(std::string_view name, std::string_view prefix, std::size_t most) {
  if (!name.starts_with(prefix)) return 0;
  name.remove_prefix(prefix.size());
  std::size_t number = 0;
  for (const char digit : name) {
    if (digit < '0' || digit > '9' || number > most) return 0;
    number = number * 10 + static_cast<std::size_t>(digit - '0');
  }
  return name.empty() || name.front() == '0' || number > most ? 0 : static_cast<int>(number);
}

SheetName plan_name(const SheetWords& words, int course) {
  const std::string number = number_text(course);
  return {"plan-course-" + number, fill_in(words.language->title_plan, {number})};
}

SheetName elevation_name(const Building& building, const SheetWords& words, int wall) {
  return {"elevation-" + number_text(wall + 1),
          fill_in(words.language->title_elevation, {building.walls[static_cast<std::size_t>(wall)].name})};
}

}  // namespace

std::vector<SheetName> drawing_names(const Building& building, const SheetWords& words) {
  std::vector<SheetName> names;
  for (std::size_t course = 1; course <= plans_of(building); ++course) names.push_back(plan_name(words, static_cast<int>(course)));
  for (std::size_t wall = 0; wall < building.walls.size(); ++wall) {
    names.push_back(elevation_name(building, words, static_cast<int>(wall)));
  }
  return names;
}

Sheet make_drawing(const Building& building, const Layout& layout, const SheetWords& words, std::size_t index) {
  const Context context = context_of(building, layout, words, Paper::Letter);
  const std::size_t plans = plans_of(building);
  const int place = static_cast<int>(index < plans ? index + 1 : index - plans);
  if (index < plans) return plan_drawing(context, plan_name(words, place), place).sheet;
  return elevation_drawing(context, elevation_name(building, words, place), place).sheet;
}

namespace {

bool stands_in(const Group& group, const std::string& key) {
  return std::ranges::any_of(group.texts, [&](const Text& text) { return text.text.find(key) != std::string::npos; }) ||
         std::ranges::any_of(group.groups, [&](const Group& inner) { return stands_in(inner, key); });
}

std::optional<Drawing> drawing_of(const Context& context, const SheetWords& words, std::string_view name) {
  const Building& building = context.building;
  if (const int course = number_behind(name, "plan-course-", building.courses.size())) {
    return plan_drawing(context, plan_name(words, course), course);
  }
  if (const int wall = number_behind(name, "elevation-", building.walls.size())) {
    return elevation_drawing(context, elevation_name(building, words, wall - 1), wall - 1);
  }
  if (context.job.found == nullptr) return std::nullopt;
  if (name == "pegs") return pegs_drawing(context);
  const int wall = number_behind(name, "bed-", building.walls.size());
  if (wall > 0 && has_bed_profile(context, wall - 1)) return bed_drawing(context, wall - 1);
  return std::nullopt;
}

}  // namespace

std::optional<Drawing> make_named_drawing(const Building& building, const Layout& layout, const SheetWords& words,
                                          std::string_view name) {
  const Context context = context_of(building, layout, words, Paper::Letter);
  std::optional<Drawing> drawing = drawing_of(context, words, name);
  if (!drawing) return drawing;
  for (const LongName& one : context.names) {
    if (std::ranges::any_of(drawing->sheet.groups, [&](const Group& group) { return stands_in(group, one.key); })) drawing->names.push_back(one);
  }
  return drawing;
}

}  // namespace stringcourse::sheet
