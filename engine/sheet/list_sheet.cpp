#include "sheet/list_sheet.hpp"

#include <algorithm>

namespace stringcourse::sheet {
namespace {

constexpr Micrometres kTableHead = 2'000;       // between the sheet's title and a table
constexpr Micrometres kBetweenTables = 12'000;  // with the lower one's name
constexpr Lettering kFootNote{kSmallText};      // notes under a table

/// Room under a table for its notes, all of them.
Micrometres foot_under(const Context& context, const std::string& note) {
  return note.empty() ? 0 : paragraph_height(note, context.page.list.width(), kFootNote) + 2'000;
}

/// What a sheet leaves to tables over this note.
Micrometres room_over(const Context& context, const std::string& note) {
  return context.page.list.height() - kTableHead - foot_under(context, note);
}

/// A table on one of its sheets, with the heading said again.
Micrometres height_on(const Table& table, const PlannedSheet& sheet) {
  return table_height(table, heading_above(table, sheet.first_line).lines() + sheet.last_line - sheet.first_line);
}

Micrometres whole_height(const List& list) { return table_height(list.table, list.table.lines.size()); }

/// One note after the other.
std::string all_notes(const List& above, ListsUnder under) {
  std::vector<std::string> notes{above.note};
  for (const List* list : under) notes.push_back(list->note);
  std::erase(notes, std::string());
  return joined(notes, " ");
}

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

bool fits_under(const Context& context, const List& above, ListsUnder under, const List& below) {
  std::vector<const List*> all(under.begin(), under.end());
  all.push_back(&below);
  Micrometres height = height_on(above.table, sheets_of_list(context, above).back());
  for (const List* list : all) height += kBetweenTables + whole_height(*list);
  return height <= room_over(context, all_notes(above, all));
}

Group draw_list(const Context& context, const PlannedSheet& sheet, const List& list, ListsUnder under_last) {
  const ListsUnder under = sheet.last_line == list.table.lines.size() ? under_last : ListsUnder();
  const Area room = context.page.list;
  const Table& table = list.table;
  Pad pad(Role::Table, sheet.title);
  pad.add(draw_table(table, {room.left, room.top - kTableHead}, sheet.first_line, sheet.last_line));
  Micrometres top = room.top - kTableHead - height_on(table, sheet);
  for (const List* lower : under) {
    top -= kBetweenTables;
    pad.write({room.left + 1'000, top + 2'000}, lower->table.name, {kText, Weight::Bold});
    pad.add(draw_table(lower->table, {room.left, top}, 0, lower->table.lines.size()));
    top -= whole_height(*lower);
  }
  const std::string note = all_notes(list, under);
  const Point foot{room.left, room.bottom + paragraph_height(note, room.width(), kFootNote)};
  write_paragraph(pad, foot, room.width(), note, kFootNote);
  return std::move(pad).take();
}

}  // namespace stringcourse::sheet
