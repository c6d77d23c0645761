// The top of the walls: how high each is planned and, to be written in, stands; and what is hidden in it, for whoever
// drills there later.
#include <algorithm>

#include "bond/layout_parts.hpp"
#include "measure/digits.hpp"
#include "sheet/registry.hpp"

namespace stringcourse::sheet {
namespace {

/// The dowels from which bars reach the top, by their numbers; and the places of bars without one.
std::string bars_text(const Context& context, int wall) {
  const words::SheetWords& words = context.words;
  const int top = static_cast<int>(context.building.courses.size());
  std::vector<int> dowels;
  std::vector<std::string> places, parts;
  for (const bond::WallBar& bar : bond::bars_on_wall(context.building, context.layout, wall)) {
    if (bar.last_course != top || bar.shared) continue;
    const auto dowel = std::ranges::find_if(context.answer.dowels, [&](const steel::Dowel& one) {
      return one.wall == wall && one.along == bar.centre && bar.first_course == 1;
    });
    if (dowel != context.answer.dowels.end()) dowels.push_back(dowel->number);
    else places.push_back(both_forms(rounded_to(bar.centre, tape_step(context.tape())), context.tape()));
  }
  if (!dowels.empty()) parts.push_back(words::fill_in(words.pour_dowels, {ranges_text(dowels)}));
  if (!places.empty()) parts.push_back(words::fill_in(words.pour_places, {joined(places, ", ")}));
  return parts.empty() ? std::string(words.none) : joined(parts, "; ");
}

Table top_table_in(const Context& context, Micrometres height_of_text) {
  const words::SheetWords& words = context.words;
  Table table = new_table(context.page.list.width(), words.title_top,
                          {{"", 3},
                           {words.side, 9},
                           {words.top_planned, 18},
                           {words.top_start, 10},
                           {words.top_middle, 10},
                           {words.top_end, 10},
                           {words.top_bars, 40}},
                          height_of_text);
  table.pencil_boxes = true;
  const std::string top = both_forms(context.building.courses.back().top, context.tape());
  for (int wall = 0; wall < static_cast<int>(context.building.walls.size()); ++wall)
    table.add_row({"", context.wall(wall).name, top, "", "", "", bars_text(context, wall)});
  return table;
}

Table top_table(const Context& context) { return top_table_in(context, kText); }
Table small_top(const Context& context) { return top_table_in(context, kSmallText); }

}  // namespace

constinit const SheetKind kTopCardSheet{
    .name = "top",
    .hold_point = HoldPoint::Top,
    .purpose = &words::SheetWords::purpose_top,
    .caution = {"engineer"},
    .table = top_table,
    .small_table = small_top,
    .note = &words::SheetWords::top_note,
    .under = {&kLintelBarsSheet, &kPourCardSheet},
};

}  // namespace stringcourse::sheet
