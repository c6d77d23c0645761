// The zone that people keep out of beside a wall without its final support: in plan, and in section where the wall
// rises over the height of rule "brace-over-8-ft", to one scale. It warns; how high a wall may stand unbraced is told
// nowhere.
#include <algorithm>

#include "catalogue/rules.hpp"
#include "sheet/bare.hpp"
#include "sheet/brace_line.hpp"
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

constexpr Micrometres kRoundSection = 8'000;  // round it, and for what is said over it

/// The section, as wide as the zones on both sides of a wall; no size where none is drawn.
struct Covered {
  Length wide, high;
};
Covered section_of(const Context& context) {
  if (!brace_height(context)) return {};
  return {zone_width(context) * 2 + context.building.series_of(context.wall(0)).thickness, wall_height(context)};
}

/// The plan with the zone round it.
Covered plan_of_zone(const Context& context) {
  const PlanExtent extent = extent_of_plan(context.building);
  const Length round = zone_width(context) * 2;
  return {extent.high.x - extent.low.x + round, extent.high.y - extent.low.y + round};
}

enum class SectionIs { Beside, Under };

/// Plan and section, to one scale.
struct Arranged {
  SectionIs section = SectionIs::Beside;
  Scale scale{1};
};
Arranged arranged(const Context& context, Micrometres wide, Micrometres high) {
  const Covered plan = plan_of_zone(context), section = section_of(context);
  if (section.high == Length())
    return {SectionIs::Beside, fitting_scale(plan.wide, plan.high, wide, high, kLargestZone)};
  const Scale beside = fitting_scale(plan.wide + section.wide, std::max(plan.high, section.high),
                                     wide - 2 * kRoundSection, high - 2 * kRoundSection, kLargestZone);
  const Scale under = fitting_scale(std::max(plan.wide, section.wide), plan.high + section.high, wide,
                                    high - 3 * kRoundSection, kLargestZone);
  if (under.denominator < beside.denominator) return {SectionIs::Under, under};
  return {SectionIs::Beside, beside};
}

/// From its end, in the middle of the room's foot: the zone on both sides, the brace line across it.
void draw_section(Pad& pad, const Context& context, Scale scale, const Area& room) {
  const std::optional<Length> brace = brace_height(context);
  if (!brace) return;
  const Micrometres ground = room.bottom + 2'000, middle = room.centre().x;
  const Micrometres half = scale.paper(context.building.series_of(context.wall(0)).thickness) / 2;
  const Micrometres reach = half + scale.paper(zone_width(context)), high = scale.paper(wall_height(context));
  const Micrometres line = ground + scale.paper(*brace);
  const Stroke red{Pen::Thick, Dash::Dashed, Ink::Red};
  pad.line({middle - reach, ground}, {middle + reach, ground}, {Pen::Medium});
  for (const Micrometres x : {middle - reach, middle + reach}) pad.line({x, ground}, {x, ground + high}, red);
  pad.box({middle - half, ground, middle + half, ground + high}, {Pen::Medium}, Fill::Tint);
  pad.line({middle - reach, line}, {middle + reach, line}, {Pen::Medium, Dash::Dashed, Ink::Red});
  const std::string text = words::fill_in(context.words.top.zone_section, {height_text(context, *brace)});
  const Micrometres wide = std::min(room.width(), 2 * reach + kRoundSection);
  const Micrometres top = ground + high + 1'000 + paragraph_height(text, wide, kNote);
  write_paragraph(pad, {middle - wide / 2, top}, wide, text, kNote);
}

Group draw_plan_of_zone(const Context& context, const Arranged& how, const Area& room) {
  Pad pad(Role::Figure, std::string(context.words.top.title_zone));
  const Micrometres notes = room.bottom + notes_height(context, room.width());
  Area plan{room.left, notes + 2'000, room.right, room.top}, section = plan;
  const Covered size = section_of(context);
  if (size.high > Length() && how.section == SectionIs::Beside)
    plan.right -= how.scale.paper(size.wide) + 2 * kRoundSection, section.left = plan.right;
  if (size.high > Length() && how.section == SectionIs::Under)
    plan.bottom += how.scale.paper(size.high) + 3 * kRoundSection;
  draw_section(pad, context, how.scale, section);
  draw_zones(pad, context, plan, how.scale);
  draw_walls(pad, context, plan, how.scale);
  draw_longest(pad, context, plan, how.scale);
  write_paragraph(pad, {room.left, notes}, room.width(), notes_of(context), kNote);
  return std::move(pad).take();
}

bool has_zone(const Context& context) { return !context.building.courses.empty(); }

/// In the room that notes leave of a sheet.
Arranged arranged_on(const Context& context, const Area& room) {
  return arranged(context, room.width() - 2 * kRound,
                  room.height() - 2 * kRound - 2'000 - notes_height(context, room.width()));
}

std::vector<PlannedSheet> zone_sheets(const Context& context) {
  if (!has_zone(context)) return {};
  return numbered_sheets(context, context.words.top.title_zone, arranged_on(context, context.page.drawing).scale);
}

Drawing zone_drawing(const Context& context, SheetName name, int) {
  const Arranged how = arranged(context, kLargest, kLargest);
  const Covered plan = plan_of_zone(context), section = section_of(context);
  const bool beside = how.section == SectionIs::Beside;
  const Length both_wide = beside ? plan.wide + section.wide : std::max(plan.wide, section.wide);
  const Length both_high = beside ? std::max(plan.high, section.high) : plan.high + section.high;
  const Micrometres wide = std::max(how.scale.paper(both_wide) + 2 * kRound + 2 * kRoundSection, Micrometres{150'000});
  const Micrometres high =
      how.scale.paper(both_high) + 2 * kRound + 2'000 + 3 * kRoundSection + notes_height(context, wide);
  Sheet sheet = bare_sheet(std::move(name), wide + 2 * kRim, high + 2 * kRim);
  sheet.groups.push_back(draw_plan_of_zone(context, how, inside_rim(sheet)));
  return {std::move(sheet), how.scale, 0, -1, {}};
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
    .draw =
        [](const Context& context, const PlannedSheet&) {
          const Area& room = context.page.drawing;
          return draw_plan_of_zone(context, arranged_on(context, room), room);
        },
    .drawing = &kZoneDrawing,
};

}  // namespace stringcourse::sheet
