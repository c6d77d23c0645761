#include "paper/table.hpp"

#include <algorithm>
#include <utility>

namespace stringcourse::paper {
namespace {

constexpr Micrometres kPadding = 1'000, kEndPadding = 3'000;  // a right-hand column keeps clear of the next

Lettering lettering_of(const Table& table, Weight weight) {
  return {table.height_of_text, weight, Anchor::Start, Ink::Black, 0};
}

Micrometres column_width(const Table& table, std::size_t column) {
  return static_cast<Micrometres>(std::int64_t{table.width} * table.columns[column].share / 100);
}

bool has_head(const Table& table) {
  return std::any_of(table.columns.begin(), table.columns.end(),
                     [](const Column& column) { return !column.title.empty(); });
}

// What a column leaves to its text.
Micrometres text_room(const Table& table, std::size_t column) {
  const Micrometres end = table.columns[column].anchor == Anchor::End ? kEndPadding : kPadding;
  return column_width(table, column) - kPadding - end;
}

// Printed lines of the head: column titles wrap too.
std::vector<std::vector<std::string>> head_lines(const Table& table) {
  if (!has_head(table)) return {};
  std::vector<std::vector<std::string>> titles;
  std::size_t most = 1;
  for (std::size_t column = 0; column < table.columns.size(); ++column) {
    titles.push_back(wrapped(table.columns[column].title, text_room(table, column), lettering_of(table, Weight::Bold)));
    most = std::max(most, titles.back().size());
  }
  std::vector<std::vector<std::string>> lines(most, std::vector<std::string>(table.columns.size()));
  for (std::size_t column = 0; column < titles.size(); ++column) {
    for (std::size_t line = 0; line < titles[column].size(); ++line) lines[line][column] = titles[column][line];
  }
  return lines;
}

Group draw_cells(const Table& table, const std::vector<std::string>& cells, Micrometres left, Micrometres baseline,
                 Weight weight) {
  Pad row(Role::TableRow);
  for (std::size_t column = 0; column < table.columns.size() && column < cells.size(); ++column) {
    const Micrometres width = column_width(table, column);
    Lettering lettering = lettering_of(table, weight);
    lettering.anchor = table.columns[column].anchor;
    const Micrometres x = lettering.anchor == Anchor::End ? left + width - kEndPadding : left + kPadding;
    Pad cell(Role::TableCell);
    cell.write({x, baseline}, cells[column], lettering);
    row.add(std::move(cell).take());
    left += width;
  }
  return std::move(row).take();
}

// A box to tick with a carpenter's pencil, in the empty first column.
void draw_pencil_box(Pad& pad, Point baseline, Micrometres size) {
  pad.box({baseline.x + kPadding, baseline.y, baseline.x + kPadding + size, baseline.y + size});
}

Micrometres head_height(const Table& table) {
  return static_cast<Micrometres>(head_lines(table).size()) * table.pitch();
}

// The heading behind `end` whose rows would be torn apart there, if they fit a sheet of their own; else `end`.
std::size_t before_torn_group(const Table& table, std::size_t first, std::size_t end, std::size_t fit) {
  std::size_t heading = end;
  while (heading > first && !table.lines[heading].heading) --heading;
  while (heading > first && !table.lines[heading].starts_row) --heading;
  std::size_t next = end;
  while (next < table.lines.size() && !table.lines[next].heading) ++next;
  return heading > first && next - heading <= fit ? heading : end;
}

// Where a sheet of a table ends: rows stay whole unless one is longer than a sheet.
std::size_t end_of_sheet(const Table& table, std::size_t first, std::size_t fit) {
  const std::size_t most = std::min(table.lines.size(), first + fit);
  if (most == table.lines.size()) return most;
  if (table.whole_groups) {
    const std::size_t end = before_torn_group(table, first, most, fit);
    if (end != most) return end;
  }
  for (std::size_t end = most; end > first; --end) {
    if (table.lines[end].starts_row && !table.lines[end - 1].heading) return end;
  }
  return most;
}

}  // namespace

void Table::add_row(std::span<const std::string> cells) {
  std::vector<std::vector<std::string>> columns_of_lines;
  std::size_t most = 1;
  for (std::size_t column = 0; column < cells.size(); ++column) {
    columns_of_lines.push_back(wrapped(cells[column], text_room(*this, column), lettering_of(*this, Weight::Regular)));
    most = std::max(most, columns_of_lines.back().size());
  }
  for (std::size_t line = 0; line < most; ++line) {
    TableLine printed{{}, line == 0, false};
    for (const auto& column : columns_of_lines) printed.cells.push_back(line < column.size() ? column[line] : "");
    lines.push_back(std::move(printed));
  }
}

void Table::add_heading(const std::string& text) {
  bool first = true;
  for (std::string& line : wrapped(text, width - 2 * kPadding, lettering_of(*this, Weight::Bold))) {
    lines.push_back({{std::move(line)}, std::exchange(first, false), true});
  }
}

Table new_table(Micrometres width, std::string_view name, std::initializer_list<ColumnWords> columns,
                Micrometres height_of_text) {
  Table table;
  table.name = std::string(name);
  for (const ColumnWords& column : columns) {
    table.columns.push_back({std::string(column.title), column.share, column.anchor});
  }
  table.width = width;
  table.height_of_text = height_of_text;
  return table;
}

HeadingAbove heading_above(const Table& table, std::size_t first) {
  if (first >= table.lines.size() || table.lines[first].heading) return {};
  std::size_t last = first;
  while (last > 0 && !table.lines[last - 1].heading) --last;
  if (last == 0) return {};
  std::size_t begin = last - 1;
  while (begin > 0 && !table.lines[begin].starts_row) --begin;
  return {begin, last};
}

std::size_t lines_that_fit(const Table& table, Micrometres height, std::size_t first) {
  const Micrometres room = height - head_height(table);
  const std::size_t lines = room <= 0 ? 0 : static_cast<std::size_t>(room / table.pitch()),
                    above = heading_above(table, first).lines();
  return lines - std::min(lines, above);
}

std::vector<std::size_t> ends_of_sheets(const Table& table, Micrometres height) {
  std::vector<std::size_t> ends;
  while (ends.empty() || ends.back() < table.lines.size()) {
    const std::size_t first = ends.empty() ? 0 : ends.back();
    ends.push_back(end_of_sheet(table, first, std::max<std::size_t>(1, lines_that_fit(table, height, first))));
  }
  return ends;
}

Micrometres table_height(const Table& table, std::size_t lines) {
  return head_height(table) + static_cast<Micrometres>(lines) * table.pitch();
}

Group draw_table(const Table& table, Point top_left, std::size_t first, std::size_t last) {
  Pad pad(Role::Table, table.name);
  Micrometres top = top_left.y;
  const Micrometres right = top_left.x + table.width;
  const Micrometres drop = (table.pitch() + table.height_of_text) / 2;  // from a line's top to its baseline
  for (const auto& titles : head_lines(table)) {
    pad.add(draw_cells(table, titles, top_left.x, top - drop, Weight::Bold));
    top -= table.pitch();
  }
  if (has_head(table)) pad.line({top_left.x, top}, {right, top}, {Pen::Medium});
  std::vector<std::size_t> shown;
  const HeadingAbove above = heading_above(table, first);
  for (std::size_t index = above.from; index < above.to; ++index) shown.push_back(index);
  for (std::size_t index = first; index < last && index < table.lines.size(); ++index) shown.push_back(index);
  for (const std::size_t index : shown) {
    const TableLine& line = table.lines[index];
    if (line.starts_row && index != shown.front())
      pad.line({top_left.x, top}, {right, top}, {Pen::Thin, Dash::Solid, Ink::Grey});
    if (line.starts_row && !line.heading && table.pencil_boxes)
      draw_pencil_box(pad, {top_left.x, top - drop}, table.height_of_text);
    if (line.heading) {
      pad.write({top_left.x + kPadding, top - drop}, line.cells.front(), lettering_of(table, Weight::Bold));
    } else {
      pad.add(draw_cells(table, line.cells, top_left.x, top - drop, Weight::Regular));
    }
    top -= table.pitch();
  }
  pad.line({top_left.x, top}, {right, top});
  return std::move(pad).take();
}

}  // namespace stringcourse::paper
