// The first course: the whole plan with its notes beside it. Any other course as a drawing.
#include <algorithm>

#include "bond/layout.hpp"
#include "measure/digits.hpp"
#include "paper/stack.hpp"
#include "sheet/bare.hpp"
#include "sheet/drawing_kinds.hpp"
#include "sheet/plan.hpp"
#include "sheet/registry.hpp"

namespace stringcourse::sheet {
namespace {

constexpr int kCourses = 2;  // are drawn in every set

// Corners and free ends as the outline is walked.
std::string order_of_corners(const Context& context) {
  const auto& walls = context.building.walls;
  std::string order = walls.front().start_name;
  for (const Wall& wall : walls) {
    if (!wall.interior && wall.end_name != walls.front().start_name) order += ", " + wall.end_name;
  }
  return order;
}

std::vector<int> courses_with_wire(const Building& building) {
  std::vector<int> wire;
  for (const Course& course : building.courses) {
    if (course.wire) wire.push_back(course.number);
  }
  return wire;
}

constexpr int kPlanShare = 74;  // of the width: the plan

Scale scale_of_course_plan(const Context& context) {
  return scale_of_plan(context.building, left_part(context.page.drawing, kPlanShare));
}

void write_legend(Stack& stack, const Context& context) {
  if (scale_of_course_plan(context).denominator > kSmallestNumbered.denominator) return;
  const std::string legend = joined(legend_of(context, {-1, 1}), "; ");
  if (!legend.empty()) stack.write(legend, Weight::Regular);
}

void write_first_course_notes(Stack& stack, const Context& context) {
  const words::SheetWords& words = context.words;
  stack.write(
      words::fill_in(words.order_of_corners, {context.building.walls.front().start_name, order_of_corners(context)}),
      Weight::Bold);
  stack.write(std::string(words.arrow_note), Weight::Regular);
  stack.write(std::string(words.block_end_rule) + " " + std::string(words.whole_plan_note), Weight::Regular);
  stack.write(std::string(words.bed_note), Weight::Bold);
  if (std::ranges::contains(context.layout.cleanouts, 1, &PlacedCleanout::course))
    stack.write(std::string(words.pour.cleanout_note), Weight::Regular);
  const auto wire = courses_with_wire(context.building);
  if (!wire.empty()) stack.write(words::fill_in(words.wire_note, {ranges_text(wire)}), Weight::Regular);
  stack.write(std::string(words.mortar_note), Weight::Regular);
  if (!context.layout.bars.empty()) stack.write(std::string(words.bar_note), Weight::Regular);
  write_legend(stack, context);
  stack.write(std::string(words.leads_elsewhere), Weight::Regular);
  stack.write(std::string(words.second_note), Weight::Regular);
}

std::string plan_title(const Building&, const words::SheetWords& words, int course) {
  return words::fill_in(words.title_plan, {number_text(course)});
}

Group draw_course_plan(const Context& context) {
  constexpr int course = 1;
  Pad pad(Role::Figure, plan_title(context.building, context.words, course));
  const Scale scale = scale_of_course_plan(context);
  const PlanDetail detail = scale.denominator <= 200 ? PlanDetail::Units : PlanDetail::Walls;
  pad.add(draw_plan(context, course, detail, left_part(context.page.drawing, kPlanShare), scale));
  Stack stack(pad, right_part(context.page.drawing, kPlanShare), std::string(context.words.more_follow));
  write_first_course_notes(stack, context);
  stack.finish();
  return std::move(pad).take();
}

int courses_of(const Building& building) { return std::min(kCourses, static_cast<int>(building.courses.size())); }

bool has_course(const Context& context, int course) {
  return course <= static_cast<int>(context.building.courses.size());
}

std::vector<Handle> plan_handles(const Building& building, int course, const Area& room, Scale scale) {
  std::vector<Handle> handles;
  const auto add = [&](Handle::What what, std::size_t index, const Wall& wall, Length from, Length to, bool shown) {
    const Point step = step_along(wall);
    handles.push_back(
        {what, static_cast<int>(index), plan_box(building, room, scale, wall, from, to), step.x, step.y, shown});
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
  BarePlan bare = bare_plan(context.building, std::move(name));
  const Area room = inside_rim(bare.sheet);
  DrawnPlan drawn = drawn_plan(context, course, PlanDetail::Units, room, bare.scale);
  bare.sheet.groups.push_back(std::move(drawn.group));
  std::vector<Handle> handles = plan_handles(context.building, course, room, bare.scale);
  for (Handle& handle : handles) {
    if (handle.what == Handle::What::Side) handle.length = drawn.lengths[static_cast<std::size_t>(handle.index)];
  }
  return {std::move(bare.sheet), bare.scale, course, -1, std::move(handles)};
}

}  // namespace

constinit const DrawingKind kPlanDrawing{
    .name = "plan-course-",
    .has = has_course,
    .title = plan_title,
    .draw = plan_drawing,
    .in_every_set = courses_of,
};

constinit const SheetKind kCoursesSheet{
    .name = "course",
    .hold_point = HoldPoint::FirstCourse,
    .purpose = &words::SheetWords::purpose_plan,
    .caution = {"wet-cement"},
    .sheets =
        [](const Context& context) {
          std::vector<PlannedSheet> sheets =
              numbered_sheets(context, plan_title(context.building, context.words, 1), scale_of_course_plan(context));
          sheets.front().course = 1;
          return sheets;
        },
    .draw = [](const Context& context, const PlannedSheet&) { return draw_course_plan(context); },
    .drawing = &kPlanDrawing,
};

}  // namespace stringcourse::sheet
