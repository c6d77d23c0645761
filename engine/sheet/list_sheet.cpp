#include "sheet/list_sheet.hpp"

#include <algorithm>

namespace stringcourse::sheet {
namespace {

constexpr Micrometres kTableHead = 2'000;       // between the sheet's title and a table
constexpr Micrometres kBetweenTables = 12'000;  // with the lower one's name
constexpr Lettering kFootNote{kSmallText};      // notes under a table

/// Room under a table for its notes, all of them.
Micrometres foot_under(const Context& context, const std::string& note) {
  return note.empty() ? 0 : paragraph_height(note, context.page.drawing.width(), kFootNote) + 2'000;
}

/// What a sheet leaves to tables over this note.
Micrometres room_over(const Context& context, const std::string& note) {
  return context.page.drawing.height() - kTableHead - foot_under(context, note);
}

std::string both_notes(const List& above, const List& below) { return above.note + " " + below.note; }

}  // namespace

std::vector<PlannedSheet> sheets_of_list(const Context& context, const List& list) {
  const std::vector<std::size_t> ends = ends_of_sheets(list.table, room_over(context, list.note));
  std::vector<PlannedSheet> sheets = numbered_sheets(context, list.table.name, std::nullopt, ends.size());
  for (std::size_t index = 0; index < ends.size(); ++index) {
    sheets[index].first_line = index == 0 ? 0 : ends[index - 1];
    sheets[index].last_line = ends[index];
  }
  return sheets;
}

bool fits_under(const Context& context, const List& above, const List& below) {
  const Micrometres upper = table_height(above.table, above.table.lines.size());
  const Micrometres lower = table_height(below.table, below.table.lines.size());
  return upper + kBetweenTables + lower <= room_over(context, both_notes(above, below));
}

Group draw_list(const Context& context, const PlannedSheet& sheet, const List& list, const List* under) {
  const Area room = context.page.drawing;
  const Table& table = list.table;
  Pad pad(Role::Table, sheet.title);
  pad.add(draw_table(table, {room.left, room.top - kTableHead}, sheet.first_line, sheet.last_line));
  if (under) {
    const std::size_t lines = heading_above(table, sheet.first_line).lines() + sheet.last_line - sheet.first_line;
    const Micrometres top = room.top - kTableHead - table_height(table, lines) - kBetweenTables;
    pad.write({room.left + 1'000, top + 2'000}, under->table.name, {kText, Weight::Bold});
    pad.add(draw_table(under->table, {room.left, top}, 0, under->table.lines.size()));
  }
  const std::string note = under ? both_notes(list, *under) : list.note;
  const Point foot{room.left, room.bottom + paragraph_height(note, room.width(), kFootNote)};
  write_paragraph(pad, foot, room.width(), note, kFootNote);
  return std::move(pad).take();
}

}  // namespace stringcourse::sheet
