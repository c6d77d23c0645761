// Every bar that passes a lintel: unit, cell, running place, what to do; by side.
#include "measure/digits.hpp"
#include "sheet/hook_words.hpp"
#include "sheet/registry.hpp"
#include "steel/dowels.hpp"
#include "supply/lintels.hpp"

namespace stringcourse::sheet {
namespace {

using supply::BarThrough;
using supply::LintelAsLaid;

/// Concrete can be cored on the site; a hole in steel is its maker's.
std::string what_to_do(const Context& context, const BarThrough& bar) {
  const auto& lintel = context.building.openings[static_cast<std::size_t>(bar.opening)].lintel;
  if (bar.unit > 0) return std::string(context.words.lintel_break_out);
  const bool steel = lintel && lintel->piece == LintelPiece::Steel;
  return std::string(steel ? context.words.top.lintel_steel : context.words.lintel_cored);
}

void add_bar(Table& table, const Context& context, const BarThrough& bar) {
  const std::string opening = context.building.openings[static_cast<std::size_t>(bar.opening)].name;
  const Length middle = context.building.series_of(context.wall(bar.wall)).thickness.half_down();
  const auto cell = steel::cell_at(context.building, context.layout, bar.wall, bar.course, {bar.centre, middle});
  const std::string course = context.wall(bar.wall).name + "-" + number_text(bar.course);
  const std::string unit = bar.unit > 0 ? course + "-" + number_text(bar.unit) : course;
  const Length centre = rounded_to(bar.centre, tape_step(context.tape()));
  table.add_row({"", opening, unit, cell ? number_text(cell->cell) : "", both_forms(centre, context.tape()),
                 what_to_do(context, bar)});
}

Table lintel_bar_table_in(const Context& context, Micrometres height_of_text) {
  const words::SheetWords& words = context.words;
  Table table = new_table(context.page.drawing.width(), words.title_lintel_bars,
                          {{"", 5},
                           {words.opening, 12},
                           {words.lintel_bar_where, 15},
                           {words.lintel_bar_cell, 11},
                           {words.lintel_bar_at, 33},
                           {words.lintel_bar_do, 24}},
                          height_of_text);
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

Table lintel_bar_table(const Context& context) { return lintel_bar_table_in(context, kText); }
Table small_lintel_bars(const Context& context) { return lintel_bar_table_in(context, kSmallText); }

}  // namespace

constinit const SheetKind kLintelBarsSheet{
    .name = "lintel-bars",
    .hold_point = HoldPoint::Lintels,
    .purpose = &words::SheetWords::purpose_lintel_bars,
    .caution = {"shores", &words::SheetWords::caution_lintel},
    .table = lintel_bar_table,
    .small_table = small_lintel_bars,
    .note = &words::SheetWords::lintel_bar_note,
    .under = {&kOpeningsSheet, &kShoresSheet},
};

}  // namespace stringcourse::sheet
