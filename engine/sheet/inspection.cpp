// What is looked at before each pour, with boxes to tick: bars by side, cleanouts, floors broken out, beams, lintels.
#include <algorithm>

#include "bond/layout_parts.hpp"
#include "measure/digits.hpp"
#include "sheet/list_sheet.hpp"
#include "sheet/registry.hpp"

namespace stringcourse::sheet {
namespace {

constexpr std::string_view kBox = "\u2610", kTicked = "\u2611";

enum class Seen { No, Yes };

/// "☐ 3", or ticked where the laid log says so.
std::string boxed(const std::string& text, Seen seen) {
  return std::string(seen == Seen::Yes ? kTicked : kBox) + "\u00A0" + text;
}

/// Whether all lines are ticked that say this of that.
Seen seen_in(const PourToInspect& pour, LookedAtWhat what, std::int32_t of, std::int32_t through = -1) {
  const bool all = std::ranges::all_of(pour.lines, [&](const LineToTick& line) {
    const std::int32_t its = line.what == LookedAtWhat::Beam ? line.course : line.of;
    return line.what != what || its != of || line.through != through || line.ticked_by >= 0;
  });
  return all ? Seen::Yes : Seen::No;
}

std::string bar_text(const Context& context, const BarToInspect& bar, Seen seen) {
  if (bar.number > 0) return boxed(bar.short_name, seen);
  const Length centre = rounded_to(context.layout.bars[bar.bar].centre, tape_step(context.tape()));
  return boxed(words::fill_in(context.words.top.at_place, {bar.short_name, both_forms(centre, context.tape())}), seen);
}

std::string through_text(const Context& context, const supply::BarThrough& through, Seen seen) {
  const std::string course = context.wall(through.wall).name + "-" + number_text(through.course);
  return boxed(through.unit > 0 ? course + "-" + number_text(through.unit) : course, seen);
}

void add_side(Table& table, const Context& context, const PourToInspect& pour, int wall) {
  std::vector<std::string> bars, holes, floors;
  std::string photos;
  for (std::size_t at = 0; at < pour.bars.size(); ++at) {
    const BarToInspect& bar = pour.bars[at];
    const auto of = static_cast<std::int32_t>(at);
    if (context.layout.bars[bar.bar].wall != wall) continue;
    bars.push_back(bar_text(context, bar, seen_in(pour, LookedAtWhat::Bar, of)));
    if (bar.cleanout >= 0) holes.push_back(boxed(bar.short_name, seen_in(pour, LookedAtWhat::Cleanout, of)));
    for (std::size_t k = 0; k < bar.through.size(); ++k) {
      const Seen seen = seen_in(pour, LookedAtWhat::Floor, of, static_cast<std::int32_t>(k));
      floors.push_back(through_text(context, bar.through[k], seen));
    }
    photos = bar.photo.substr(0, bar.photo.rfind('-') + 1);
  }
  if (bars.empty()) return;
  const std::string none(context.words.none);
  table.add_row({context.wall(wall).name, joined(bars, " "), holes.empty() ? none : joined(holes, " "),
                 floors.empty() ? none : joined(floors, " "), words::fill_in(context.words.top.photos_as, {photos})});
}

void add_pour(Table& table, const Context& context, const PourToInspect& pour, std::size_t number) {
  const words::TopWords& words = context.words.top;
  std::vector<std::string> all{words::fill_in(
      words.pour_of, {number_text(number), number_text(pour.first_course), number_text(pour.last_course)})};
  for (const std::int32_t course : pour.beams)
    all.push_back(
        boxed(words::fill_in(words.beam_ready, {number_text(course)}), seen_in(pour, LookedAtWhat::Beam, course)));
  std::vector<std::string> lintels;
  for (const std::int32_t opening : pour.lintels)
    lintels.push_back(boxed(opening_of(context.building, opening).name, seen_in(pour, LookedAtWhat::Lintel, opening)));
  if (!lintels.empty()) all.push_back(words::fill_in(words.lintel_ready, {joined(lintels, " ")}));
  table.add_heading(joined(all, "; "));
  for (int wall = 0; wall < static_cast<int>(context.building.walls.size()); ++wall)
    add_side(table, context, pour, wall);
}

Table inspection_table(const Context& context) {
  const words::SheetWords& words = context.words;
  Table table = new_table(context.page.list.width(), words.top.title_inspection,
                          {{words.side, 7},
                           {words.top.bars_there, 25},
                           {words.top.holes_there, 22},
                           {words.top.floors_there, 28},
                           {words.top.photos_there, 18}},
                          kSmallText);
  std::size_t number = 0;
  for (const PourToInspect& pour : context.answer.inspection) add_pour(table, context, pour, ++number);
  return table;
}

std::string inspection_note(const Context& context) { return std::string(context.words.top.inspection_note); }

}  // namespace

constinit const SheetKind kInspectionSheet{
    .name = "inspection",
    .hold_point = HoldPoint::Grout,
    .purpose = &words::SheetWords::purpose_inspection,
    .caution = {"grout-pressure"},
    .table = inspection_table,
    .made_note = inspection_note,
    .under = {&kPourCardSheet, &kLintelBarsSheet},
};

}  // namespace stringcourse::sheet
