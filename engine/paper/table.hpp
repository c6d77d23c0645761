#pragma once
// Tables: text never leaves its column. Long cells wrap; a table too long for one sheet goes on with the next.
#include <initializer_list>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "paper/pad.hpp"

namespace stringcourse::paper {

struct Column {
  std::string title;
  int share = 10;  // of the table's width, in hundredths
  Anchor anchor = Anchor::Start;
};

/// One printed line of a table. The first line of a row has a rule above it.
struct TableLine {
  std::vector<std::string> cells;
  bool starts_row = true;
  bool heading = false;  // one bold cell across the table
};

/// A table laid out in printed lines for one width.
struct Table {
  std::string name;
  std::vector<Column> columns;
  Micrometres width = 0;
  Micrometres height_of_text = kText;
  std::vector<TableLine> lines;
  bool whole_groups = false;  // a heading and its rows stay on one sheet where they fit one
  bool pencil_boxes = false;  // a box at the start of each row; its first column is left empty

  Micrometres pitch() const { return line_pitch(height_of_text); }
  /// Adds a row; cells wrap to their columns.
  void add_row(std::span<const std::string> cells);
  void add_row(std::initializer_list<std::string> cells) { add_row(std::span(cells.begin(), cells.size())); }
  void add_heading(const std::string& text);
};

/// A column to be: its words outlive the call.
struct ColumnWords {
  std::string_view title;
  int share = 10;
  Anchor anchor = Anchor::Start;
};
/// An empty table of these columns.
[[nodiscard]] Table new_table(Micrometres width, std::string_view name, std::initializer_list<ColumnWords> columns,
                              Micrometres height_of_text);

/// Lines from line `first` on that fit below the table's head, and the heading above them, in so much height.
[[nodiscard]] std::size_t lines_that_fit(const Table& table, Micrometres height, std::size_t first = 0);
/// The lines of the heading under which line `first` stands, if that is no heading itself: said again where a sheet
/// begins in the middle of its rows. From a line to the line behind; empty where there is none.
struct HeadingAbove {
  std::size_t from = 0, to = 0;
  std::size_t lines() const { return to - from; }
};
[[nodiscard]] HeadingAbove heading_above(const Table& table, std::size_t first);
/// The line behind the last one of each sheet that leaves so much height to the table. Each is as full as its rows, and
/// groups that are to stay whole, allow; a row longer than a sheet is torn.
[[nodiscard]] std::vector<std::size_t> ends_of_sheets(const Table& table, Micrometres height);
/// The lines first..last (last not included), with the head and the heading above them, hung from `top_left`.
[[nodiscard]] Group draw_table(const Table& table, Point top_left, std::size_t first, std::size_t last);
/// Height of so many lines with the head.
[[nodiscard]] Micrometres table_height(const Table& table, std::size_t lines);

}  // namespace stringcourse::paper
