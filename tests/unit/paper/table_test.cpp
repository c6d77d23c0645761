#include "paper/table.hpp"

#include <gtest/gtest.h>

#include <random>

namespace stringcourse::paper {
namespace {

TEST(Tables, ContinueALongRowOnTheNextSheet) {
  Table table;
  table.columns = {{"Name", 50, Anchor::Start}, {"Note", 50, Anchor::Start}};
  table.width = 60'000;
  std::string note;
  for (int word = 0; word < 100; ++word) note += "word ";
  table.add_row({"x", note});
  EXPECT_GT(table.lines.size(), 10u);
  EXPECT_EQ(table.lines[0].cells[0], "x");
  EXPECT_EQ(table.lines[1].cells[0], "");
  EXPECT_FALSE(table.lines[1].starts_row);
}

// Rows of one to `longest` lines, some under headings; every line is its own number.
Table random_table(std::mt19937& dice, unsigned rows, unsigned longest) {
  Table table;
  table.columns = {{"", 100, Anchor::Start}};
  table.width = 60'000;
  for (unsigned row = 0; row < rows; ++row) {
    if (dice() % 4 == 0) table.lines.push_back({{"heading"}, true, true});
    for (unsigned line = 0, lines = 1 + dice() % longest; line < lines; ++line) {
      table.lines.push_back({{std::to_string(table.lines.size())}, line == 0, false});
    }
  }
  return table;
}

// A sheet may end before line `at`: there a row starts, and the line above it is no heading.
bool may_end(const Table& table, std::size_t at) {
  return at == table.lines.size() || (table.lines[at].starts_row && !table.lines[at - 1].heading);
}

TEST(Tables, GoOverSheetsRowByRowEachAsFullAsItsRowsAllow) {
  std::mt19937 dice(7);
  for (int job = 0; job < 400; ++job) {
    const Table table = random_table(dice, 1 + dice() % 40, 5);
    const std::size_t lines = 8 + dice() % 20;
    const auto ends = ends_of_sheets(table, static_cast<Micrometres>(lines) * table.pitch());
    std::size_t first = 0;
    for (const std::size_t end : ends) {
      const std::size_t room = lines - heading_above(table, first).lines();  // the heading is said again
      ASSERT_GT(end, first);
      ASSERT_LE(end - first, room);
      EXPECT_TRUE(may_end(table, end));
      for (std::size_t later = end + 1; later <= table.lines.size() && later - first <= room; ++later) {
        EXPECT_FALSE(may_end(table, later)) << end << " " << later;
      }
      first = end;
    }
    EXPECT_EQ(first, table.lines.size());
  }
}

TEST(Tables, ARowLongerThanASheetIsTornAndNothingOfItIsLost) {
  Table table;
  table.columns = {{"", 100, Anchor::Start}};
  for (int line = 0; line < 25; ++line) table.lines.push_back({{"x"}, line == 0, false});
  EXPECT_EQ(ends_of_sheets(table, 10 * table.pitch()), (std::vector<std::size_t>{10, 20, 25}));
}

TEST(Tables, AHeadingAndItsRowsStayTogetherWhereTheyFitOneSheet) {
  Table table;
  table.columns = {{"", 100, Anchor::Start}};
  table.whole_groups = true;
  for (int group = 0; group < 2; ++group) {
    table.lines.push_back({{"heading"}, true, true});
    for (int row = 0; row < 6; ++row) table.lines.push_back({{"x"}, true, false});
  }
  EXPECT_EQ(ends_of_sheets(table, 10 * table.pitch()), (std::vector<std::size_t>{7, 14}));
  table.whole_groups = false;
  EXPECT_EQ(ends_of_sheets(table, 10 * table.pitch()), (std::vector<std::size_t>{10, 14}));
}

}  // namespace
}  // namespace stringcourse::paper
