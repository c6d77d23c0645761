// The zone that people keep out of beside a wall without its final support: in plan, to scale. It warns; how high a
// wall may stand unbraced is told nowhere.
#include <algorithm>

#include "catalogue/rules.hpp"
#include "sheet/bare.hpp"
#include "sheet/known.hpp"
#include "sheet/plan.hpp"
#include "sheet/registry.hpp"
#include "words/language.hpp"

namespace stringcourse::sheet {
namespace {

constexpr Lettering kNote{kSmallText, Weight::Regular, Anchor::Start, Ink::Black, 0};
constexpr Micrometres kRound = 4'000;  // round the zone
constexpr Scale kLargestZone{75};

/// As high as the walls are to stand over what they stand on, and what the rule adds.
Length wall_height(const Context& context) {
  return context.building.courses.back().top - foot_of_course(context.building, 1);
}
Length zone_width(const Context& context) {
  return wall_height(context) + limit_of("limited-access-zone", context.tape());
}

/// Outwards from a wall's outer face, one step on paper.
Point outward_of(const Wall& wall) {
  const Point along = step_along(wall);
  return {-along.y, along.x};
}

/// The stretch beside a wall's outer face, as long as the wall.
Area zone_beside(const Context& context, const Area& room, Scale scale, const Wall& wall) {
  Area box = plan_box(context.building, room, scale, wall, Length(), wall.actual);
  const Point out = outward_of(wall);
  const Micrometres wide = scale.paper(zone_width(context));
  if (out.x > 0) box.left = box.right, box.right += wide;
  if (out.x < 0) box.right = box.left, box.left -= wide;
  if (out.y > 0) box.bottom = box.top, box.top += wide;
  if (out.y < 0) box.top = box.bottom, box.bottom -= wide;
  return box;
}

/// A dimension from face to brace line, in the middle of the wall.
void draw_width(Pad& pad, const Context& context, const Wall& wall, const Area& zone) {
  const std::string text = words::fill_in(
      context.words.top.zone_beside, {short_name(context.names, wall.name), height_text(context, zone_width(context))});
  const Lettering lettering{kText, Weight::Regular, Anchor::Middle, Ink::Black, 0};
  if (outward_of(wall).x != 0) {
    const Micrometres y = zone.centre().y;
    pad.add(level_dimension({zone.left, y}, {zone.right, y}, y, text, lettering));
  } else {
    const Micrometres x = zone.centre().x;
    pad.add(upright_dimension({x, zone.bottom}, {x, zone.top}, x, text, lettering));
  }
}

void draw_walls(Pad& pad, const Context& context, const Area& room, Scale scale) {
  for (const Wall& wall : context.building.walls)
    pad.box(plan_box(context.building, room, scale, wall, Length(), wall.actual), {Pen::Medium}, Fill::Tint);
}

void draw_zones(Pad& pad, const Context& context, const Area& room, Scale scale) {
  for (const Wall& wall : context.building.walls) {
    if (wall.interior) continue;
    const Area zone = zone_beside(context, room, scale, wall);
    pad.box(zone, {Pen::Thick, Dash::Dashed, Ink::Red}, Fill::None);
  }
}

/// They are all alike: once, on the longest side.
void draw_longest(Pad& pad, const Context& context, const Area& room, Scale scale) {
  const Wall* longest = nullptr;
  for (const Wall& wall : context.building.walls) {
    if (!wall.interior && (longest == nullptr || wall.actual > longest->actual)) longest = &wall;
  }
  if (longest != nullptr) draw_width(pad, context, *longest, zone_beside(context, room, scale, *longest));
}

std::string notes_of(const Context& context) {
  const words::TopWords& words = context.words.top;
  std::string text = words::fill_in(
      words.zone_note, {height_text(context, wall_height(context)), height_text(context, zone_width(context))});
  for (const std::string_view id : {"limited-access-zone", "brace-over-8-ft", "wind-leave", "wind-first-day"})
    text += " " + words::cited(id, context.reader()) + ".";
  return text + " " + std::string(words.zone_no_height);
}

Micrometres notes_height(const Context& context, Micrometres width) {
  return paragraph_height(notes_of(context), width, kNote);
}

Group draw_plan_of_zone(const Context& context, Scale scale, const Area& room) {
  Pad pad(Role::Figure, std::string(context.words.top.title_zone));
  const Micrometres foot = notes_height(context, room.width());
  const Area above{room.left, room.bottom + foot + 2'000, room.right, room.top};
  draw_zones(pad, context, above, scale);
  draw_walls(pad, context, above, scale);
  draw_longest(pad, context, above, scale);
  write_paragraph(pad, {room.left, room.bottom + foot}, room.width(), notes_of(context), kNote);
  return std::move(pad).take();
}

/// With the zone round it.
struct Covered {
  Length wide, high;
};
Covered covered_by(const Context& context) {
  const PlanExtent extent = extent_of_plan(context.building);
  const Length round = zone_width(context) * 2;
  return {extent.high.x - extent.low.x + round, extent.high.y - extent.low.y + round};
}

bool has_zone(const Context& context) { return !context.building.courses.empty(); }

std::vector<PlannedSheet> zone_sheets(const Context& context) {
  if (!has_zone(context)) return {};
  const Area& room = context.page.drawing;
  const Covered covered = covered_by(context);
  const Scale scale =
      fitting_scale(covered.wide, covered.high, room.width() - 2 * kRound,
                    room.height() - 2 * kRound - 2'000 - notes_height(context, room.width()), kLargestZone);
  return numbered_sheets(context, context.words.top.title_zone, scale);
}

Drawing zone_drawing(const Context& context, SheetName name, int) {
  const Covered covered = covered_by(context);
  const Scale scale = fitting_scale(covered.wide, covered.high, kLargest, kLargest, kLargestZone);
  const Micrometres wide = std::max(scale.paper(covered.wide) + 2 * kRound, Micrometres{150'000});
  const Micrometres high = scale.paper(covered.high) + 2 * kRound + 2'000 + notes_height(context, wide);
  Sheet sheet = bare_sheet(std::move(name), wide + 2 * kRim, high + 2 * kRim);
  sheet.groups.push_back(draw_plan_of_zone(context, scale, inside_rim(sheet)));
  return {std::move(sheet), scale, 0, -1, {}};
}

constinit const DrawingKind kZoneDrawing{
    .name = "zone",
    .has = [](const Context& context, int) { return has_zone(context); },
    .title = [](const Building&, const words::SheetWords& words, int) { return std::string(words.top.title_zone); },
    .draw = zone_drawing,
};

}  // namespace

constinit const SheetKind kAccessZoneSheet{
    .name = "zone",
    .purpose = &words::SheetWords::purpose_weather,
    .on_request = &Wanted::standards,
    .caution = {"limited-access-zone"},
    .sheets = zone_sheets,
    .draw = [](const Context& context,
               const PlannedSheet& sheet) { return draw_plan_of_zone(context, *sheet.scale, context.page.drawing); },
    .drawing = &kZoneDrawing,
};

}  // namespace stringcourse::sheet
