// Sheets of a building of which only a little was read: they say what is still to be read, and no more.
#include <gtest/gtest.h>

#include <algorithm>

#include "print/solved_examples.hpp"

namespace stringcourse::print_test {
namespace {

using paper::Paper;
using paper::Sheet;

/// The kiln house with these readings (JSON).
Solved read_so_far(const std::string& readings) {
  return solved_job("a few readings",
                    R"({"stringcourse": 1, "name": "Kiln house", "tape": "inches", "units": {"series": "us-8"},
    "outline": {"closed": true, "sides": [
      {"from": "A", "to": "B", "length": "28'-0\"", "turn": "right"},
      {"from": "B", "to": "C", "length": "20'-0\"", "turn": "right"},
      {"from": "C", "to": "D", "length": "28'-0\"", "turn": "right"},
      {"from": "D", "to": "A", "length": "20'-0\"", "turn": "right"}]},
    "heights": {"courses": 4}, "openings": [], "readings": [)" +
                        readings + "]}");
}

/// All lettering of the sheet of what was read, one text a line.
std::string found_text(const Solved& solved, Paper paper) {
  std::string all;
  for (const Sheet& sheet : solved.sheets(paper)) {
    if (!sheet.title.starts_with("Readings")) continue;
    for (const std::string& text : texts_of(sheet)) all += text + "\n";
  }
  return all;
}

TEST(NotReadSheets, OneRodReadingThreeSidesAndOneEdgeSayWhatIsStillToBeRead) {
  const Solved solved = read_so_far(R"(
    {"id": "d", "rod": {"setup": "1", "station": "datum", "rod": "48\""}},
    {"id": "a", "rod": {"setup": "1", "station": "A", "rod": "52\""}},
    {"id": "1", "tape": {"from": "A", "to": "B", "length": "27'-11 5/8\""}},
    {"id": "2", "tape": {"from": "B", "to": "C", "length": "19'-11 5/8\""}},
    {"id": "3", "tape": {"from": "C", "to": "D", "length": "27'-11 5/8\""}},
    {"id": "e", "edge": {"on": "AB", "from": "A", "at": "2'", "beyond": "4\""}})");
  for (const Paper paper : {Paper::Letter, Paper::A4}) {
    const std::string text = found_text(solved, paper);
    ASSERT_FALSE(text.empty());
    for (const char* said : {"Tapings, outer corner to outer corner: not read yet", "allowed: not read yet",
                             "slab: not read yet", "B, C, D", "Tape these too"}) {
      EXPECT_TRUE(text.contains(said)) << said;
    }
    // Nothing fits, nothing is moved, no mortar is mixed, no mark is given for the rod on course 1.
    for (const char* said : {"fits", " gal", "toward", "stays", "must read"}) EXPECT_FALSE(text.contains(said)) << said;
    for (const Sheet& sheet : solved.sheets(paper)) {
      EXPECT_FALSE(std::ranges::any_of(texts_of(sheet), [](const std::string& one) {
        return one.starts_with("The outer face is, from");
      })) << sheet.title;
    }
  }
}

TEST(NotReadSheets, AnInchOfDiagonalsStandsWithItsLimit) {
  const Solved solved = read_so_far(R"(
    {"id": "1", "tape": {"from": "A", "to": "B", "length": "27'-11 5/8\""}},
    {"id": "2", "tape": {"from": "B", "to": "C", "length": "19'-11 5/8\""}},
    {"id": "3", "tape": {"from": "C", "to": "D", "length": "27'-11 5/8\""}},
    {"id": "4", "tape": {"from": "D", "to": "A", "length": "19'-11 5/8\""}},
    {"id": "5", "tape": {"from": "A", "to": "C", "length": "34'-4 13/16\""}},
    {"id": "6", "tape": {"from": "B", "to": "D", "length": "34'-3 13/16\""}})");
  const std::string text = found_text(solved, Paper::Letter);
  EXPECT_TRUE(text.contains("AC longer by 1\"")) << text;
  EXPECT_TRUE(text.contains("1/2\" allowed"));
  EXPECT_TRUE(text.contains("does not fit"));
}

}  // namespace
}  // namespace stringcourse::print_test
