// Every bar that passes a lintel: unit, cell, running place, what to do; by side.
#include "sheet/hook_words.hpp"
#include "sheet/registry.hpp"
#include "steel/dowels.hpp"
#include "supply/lintels.hpp"

namespace stringcourse::sheet {
namespace {

using supply::BarThrough;
using supply::LintelAsLaid;

void add_bar(Table& table, const Context& context, const BarThrough& bar) {
  const Words& words = context.words;
  const std::string opening = context.building.openings[static_cast<std::size_t>(bar.opening)].name;
  const Length middle = context.building.series_of(context.wall(bar.wall)).thickness.half_down();
  const auto cell = steel::cell_at(context.building, context.layout, bar.wall, bar.course, {bar.centre, middle});
  const std::string course = context.wall(bar.wall).name + "-" + number_text(bar.course);
  const std::string unit = bar.unit > 0 ? course + "-" + number_text(bar.unit) : course;
  const Length centre = rounded_to(bar.centre, tape_step(context.tape()));
  table.add_row({"", opening, unit, cell ? number_text(cell->cell) : "", both_forms(centre, context.tape()),
                 std::string(bar.unit > 0 ? words.lintel_break_out : words.lintel_cored)});
}

Table lintel_bar_table(const Context& context) {
  const Words& words = context.words;
  Table table = new_table(context.page.drawing.width(), words.title_lintel_bars,
                          {{"", 5},
                           {words.opening, 12},
                           {words.lintel_bar_where, 15},
                           {words.lintel_bar_cell, 11},
                           {words.lintel_bar_at, 33},
                           {words.lintel_bar_do, 24}},
                          kText);
  table.pencil_boxes = true;
  const auto& lintels = context.answer.lintels;
  for (int wall = 0; wall < static_cast<int>(context.building.walls.size()); ++wall) {
    bool headed = false;
    for (const LintelAsLaid& lintel : lintels) {
      for (const BarThrough& bar : lintel.bars) {
        if (bar.wall != wall) continue;
        if (!headed) table.add_heading(context.wall(wall).name + ": " + marks_from_text(context.building, wall, words));
        headed = true;
        add_bar(table, context, bar);
      }
    }
  }
  return table;
}

}  // namespace

constinit const SheetKind kLintelBarsSheet{
    .name = "lintel-bars",
    .hold_point = HoldPoint::Lintels,
    .caution = {"shores", &Words::caution_lintel},
    .table = lintel_bar_table,
    .note = &Words::lintel_bar_note,
    .under = &kOpeningsSheet,
};

}  // namespace stringcourse::sheet
