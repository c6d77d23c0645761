#include "sheet/lintel_lists.hpp"

#include <algorithm>

#include "sheet/hook_words.hpp"
#include "steel/dowels.hpp"

namespace stringcourse::sheet {
namespace {

using supply::BarThrough;
using supply::LintelAsLaid;
using supply::Soffit;

const ResolvedOpening& opening_of(const Context& context, const LintelAsLaid& lintel) {
  return context.building.openings[static_cast<std::size_t>(lintel.opening)];
}

std::string units_text(const Context& context, const LintelAsLaid& lintel) {
  std::vector<std::string> kinds;
  for (const supply::UnitCount& unit : lintel.units) {
    const std::string name(context.words.kinds[static_cast<std::size_t>(unit.kind)]);
    kinds.push_back(number_text(unit.whole + unit.pieces) + " " + name);
  }
  return joined(kinds, ", ");
}

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

}  // namespace

const LintelAsLaid* lintel_over(const std::vector<LintelAsLaid>& lintels, std::size_t opening) {
  const auto found = std::ranges::find(lintels, static_cast<std::int32_t>(opening), &LintelAsLaid::opening);
  return found == lintels.end() ? nullptr : &*found;
}

std::string span_text(const Context& context, const LintelAsLaid& lintel) {
  switch (lintel.soffit) {
    case Soffit::Floor: return std::string(context.words.lintel_floor);
    case Soffit::Form: return std::string(context.words.lintel_form);
    case Soffit::Nothing: return std::string(context.words.lintel_nothing);
    case Soffit::OnePiece: break;
  }
  const Length whole = opening_of(context, lintel).width() + lintel.start.bearing + lintel.end.bearing;
  return fill_in(context.words.lintel_one_piece, {height_text(context, whole)});
}

std::string bearing_text(const Context& context, const LintelAsLaid& lintel) {
  const ResolvedOpening& opening = opening_of(context, lintel);
  const Wall& wall = context.wall(opening.wall);
  const auto name = [&](const std::string& end) { return short_name(context.names, end); };
  return fill_in(context.words.lintel_bearing, {height_text(context, lintel.start.bearing), name(wall.start_name),
                                                height_text(context, lintel.end.bearing), name(wall.end_name),
                                                height_text(context, opening.lintel->least_bearing)});
}

std::string lintel_text(const Context& context, const LintelAsLaid& lintel) {
  const ResolvedOpening& opening = opening_of(context, lintel);
  const Wall& wall = context.wall(opening.wall);
  std::string text = span_text(context, lintel);
  if (lintel.soffit == Soffit::Floor) text = fill_in(context.words.lintel_units, {units_text(context, lintel)});
  if (lintel.soffit == Soffit::Form) text = fill_in(context.words.lintel_units_form, {units_text(context, lintel)});
  const auto bears = [&](Length bearing, const std::string& toward) {
    text += "\n" + fill_in(context.words.lintel_bears, {height_text(context, bearing), toward});
  };
  bears(lintel.start.bearing, wall.start_name);
  bears(lintel.end.bearing, wall.end_name);
  return text + "\n" +
         fill_in(context.words.lintel_bearing_asked, {height_text(context, opening.lintel->least_bearing)});
}

Table lintel_bar_table(const Context& context) {
  const Words& words = context.words;
  Table table = new_table(context.page.drawing.width(), words.title_lintel_bars,
                          {{"", 5},
                           {std::string(words.opening), 12},
                           {std::string(words.lintel_bar_where), 15},
                           {std::string(words.lintel_bar_cell), 11},
                           {std::string(words.lintel_bar_at), 33},
                           {std::string(words.lintel_bar_do), 24}},
                          kText);
  table.pencil_boxes = true;
  const auto lintels = supply::lintels_as_laid(context.building, context.layout);
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

}  // namespace stringcourse::sheet
