// Which way something is off is said in words, with the corner that it lies toward: a sign means nothing at the slab.
#include <gtest/gtest.h>

#include <regex>

#include "print/solved_examples.hpp"

namespace stringcourse::print_test {
namespace {

using paper::Paper;
using paper::Sheet;

std::string readings_text(const Solved& solved) {
  std::string all;
  for (const Sheet& sheet : solved.sheets(Paper::Letter)) {
    if (!sheet.title.starts_with("Readings")) continue;
    for (const std::string& text : texts_of(sheet)) all += text + " ";
  }
  return all;
}

// Side BC of the clay store starts at B. Its dowels were planned at 895, 3295 and 4095 mm and read at 897, 3390 and
// 4094.
TEST(Ways, ADowelsPlaceNamesTheCornerThatItStandsToward) {
  const std::string text = readings_text(solved_example("clay-store"));
  for (const char* said :
       {" 2 mm off its place toward C, 96", " 95 mm off its place toward C, 96", " 1 mm off its place toward B, 97"})
    EXPECT_TRUE(text.contains(said)) << said << "\n" << text;
  EXPECT_FALSE(std::regex_search(text, std::regex("-[0-9]+ mm off"))) << text;
}

/// All that stands on the sheets of the marks at the wall, a text a line.
std::string marks_text(const Solved& solved) {
  std::string all;
  for (const Sheet& sheet : solved.sheets(Paper::Letter)) {
    if (!sheet.title.starts_with("Marks at the wall")) continue;
    for (const std::string& text : texts_of(sheet)) all += text + "\n";
  }
  return all;
}

// Ten units together 190 in: 3 3/8 in longer each than 15 5/8, more than joints or one cut can make up in three. Bars
// are lost before anything was read; beside that it is said that no joints bring the course back.
TEST(Ways, WhatIsLostNeverStandsWithoutTheJointsOrThatThereAreNone) {
  const std::string text =
      marks_text(solved_job("long units", R"({"stringcourse": 1, "name": "Long units", "tape": "inches",
    "units": {"series": "us-8"}, "outline": {"closed": true, "sides": [
      {"from": "A", "to": "B", "length": "16'-0\"", "turn": "right"},
      {"from": "B", "to": "C", "length": "12'-0\"", "turn": "right"},
      {"from": "C", "to": "D", "length": "16'-0\"", "turn": "right"},
      {"from": "D", "to": "A", "length": "12'-0\"", "turn": "right"}]},
    "heights": {"courses": 4}, "openings": [], "steel": {"bars": {"size": "#5", "spacing": "4'-0\"", "corners": true}},
    "laid": [{"id": "1", "when": "2026-05-09 07:50", "by": "JO", "units": {"together": 10, "row": "190\""}}]})"));
  EXPECT_TRUE(text.contains("loses the bar")) << text;
  EXPECT_TRUE(text.contains("no joints within the")) << text;
  EXPECT_FALSE(text.contains("\n;")) << text;
}

/// A house 28 by 20 ft on a slab 4 in larger all round, but turned: at every side's far end the edge lies farther out,
/// or nearer in, by 1/2 in for each 7 ft from the side's middle.
Solved on_a_turned_slab(const std::string& near, const std::string& far) {
  std::string readings;
  const auto edge = [&](const std::string& on, const std::string& at, const std::string& beyond) {
    readings += std::string(readings.empty() ? "" : ", ") + R"({"id": ")" + on + at + R"(", "edge": {"on": ")" + on +
                R"(", "from": ")" + on.substr(0, 1) + R"(", "at": ")" + at + R"('", "beyond": ")" + beyond + R"(\""}})";
  };
  for (const char* on : {"AB", "CD"}) edge(on, "7", near), edge(on, "21", far);
  for (const char* on : {"BC", "DA"}) edge(on, "3", near), edge(on, "17", far);
  return solved_job("turned", R"({"stringcourse": 1, "name": "Turned", "tape": "inches", "units": {"series": "us-8"},
    "outline": {"closed": true, "sides": [
      {"from": "A", "to": "B", "length": "28'-0\"", "turn": "right"},
      {"from": "B", "to": "C", "length": "20'-0\"", "turn": "right"},
      {"from": "C", "to": "D", "length": "28'-0\"", "turn": "right"},
      {"from": "D", "to": "A", "length": "20'-0\"", "turn": "right"}]},
    "heights": {"courses": 4}, "openings": [], "readings": [)" +
                                  readings + "]}");
}

// 1/2 in in 7 ft is 2 in (1.998) in the 27'-11 5/8" of AB. AB runs west along the south side: where its edge lies
// farther out at B, the building follows to the south there.
TEST(Ways, ATurnOnTheSlabSaysWhichWayTheFirstSidesFarEndGoes) {
  EXPECT_TRUE(readings_text(on_a_turned_slab("3 1/2", "4 1/2")).contains("2\" south at B"));
  EXPECT_TRUE(readings_text(on_a_turned_slab("4 1/2", "3 1/2")).contains("2\" north at B"));
}

}  // namespace
}  // namespace stringcourse::print_test
