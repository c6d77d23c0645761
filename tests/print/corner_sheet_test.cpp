// Corners drawn course by course: units, fillers and bars as the layout has them.
#include <gtest/gtest.h>

#include <algorithm>
#include <regex>
#include <set>
#include <sstream>

#include "bond/layout_parts.hpp"
#include "measure/notation.hpp"
#include "print/printed_marks.hpp"

namespace stringcourse::print_test {
namespace {

using paper::Paper;
using paper::Sheet;

Solved twelve_inch() {
  return solved_job(
      "twelve",
      R"({"stringcourse":1,"name":"t","tape":"inches","units":{"series":"us-12"},"outline":{"closed":true,"sides":[
    {"from":"A","to":"B","length":"24'-0\"","turn":"right"},{"from":"B","to":"C","length":"16'-0\"","turn":"right"},
    {"from":"C","to":"D","length":"24'-0\"","turn":"right"},{"from":"D","to":"A","length":"16'-0\"","turn":"right"}]},
    "heights":{"courses":12},"openings":[],"interior_walls":[],
    "steel":{"bars":{"size":"#4","corners":true,"grout":"coarse"}}})");
}

std::string corner_text(const Solved& solved, Paper paper) {
  std::string all;
  for (const Sheet& sheet : solved.sheets(paper)) {
    if (!sheet.title.starts_with("Corners in")) continue;
    for (const std::string& text : texts_of(sheet)) all += text + " ";
  }
  return all;
}

int count_of(const std::string& text, const std::string& part) {
  int count = 0;
  for (std::size_t at = text.find(part); at != std::string::npos; at = text.find(part, at + 1)) ++count;
  return count;
}

/// The piece whose face covers a plan point in a course, by its wall, number and cell, straight from the layout.
std::string unit_over(const Solved& solved, PlanPoint point, int course) {
  const Building& building = solved.answer.building;
  for (const Run& run : solved.answer.layout.runs) {
    const Wall& wall = building.walls[static_cast<std::size_t>(run.wall)];
    if (run.course != course) continue;
    const bond::SeenFrom place = bond::seen_from(wall, point);
    for (std::uint32_t p = 0; p < run.piece_count; ++p) {
      const Piece& piece = solved.answer.layout.pieces[run.first_piece + p];
      const Series& series = building.series_of(wall);
      const Length start = piece.start.nearest_nanometre();
      if (place.depth < Length() || place.depth > series.thickness || place.along < start ||
          place.along > start + piece.length)
        continue;
      int number = 0;
      for (const CellSpan& cell : bond::cells_of(series, piece)) {
        ++number;
        if (place.along > start + cell.from && place.along < start + cell.to)
          return wall.name + " unit " + std::to_string(piece.number) + ", cell " + std::to_string(number);
      }
    }
  }
  return "";
}

/// Corners that are named as built like another one.
std::set<std::string> built_alike(const std::string& text) {
  std::set<std::string> names;
  const std::regex told("Built alike, each along its own sides: ([^.]*)\\.");
  for (auto at = std::sregex_iterator(text.begin(), text.end(), told); at != std::sregex_iterator(); ++at) {
    std::istringstream list((*at)[1].str());
    for (std::string name; std::getline(list, name, ',');) names.insert(name.substr(name.find_first_not_of(' ')));
  }
  return names;
}

void expect_every_corner_told(const Solved& solved) {
  SCOPED_TRACE(solved.name);
  const Building& building = solved.answer.building;
  for (const Paper paper : {Paper::Letter, Paper::A4}) {
    const std::string text = corner_text(solved, paper);
    const std::set<std::string> alike = built_alike(text);
    std::set<std::string> drawn, like;  // distances of the bars from both faces
    for (const PlacedBar& bar : solved.answer.layout.bars) {
      if (bar.reason != BarReason::Corner) continue;
      const Corner& corner = building.corners[static_cast<std::size_t>(bar.corner)];
      const PlanPoint point = plan_point(building.walls[static_cast<std::size_t>(bar.wall)], bar.centre, bar.off_face);
      const Wall& arriving = building.walls[static_cast<std::size_t>(corner.arriving)];
      const Wall& leaving = building.walls[static_cast<std::size_t>(corner.leaving)];
      // Distances from the two faces, one of which runs along each axis of the plan: the corner point lies on both.
      const bool level = arriving.heading == Heading::West || arriving.heading == Heading::East;
      const Length across = magnitude(point.x - corner.point.x), up = magnitude(point.y - corner.point.y);
      const auto said = [&](Length distance) { return tape_text(distance, building.tape); };
      const std::string sentence = "Bar: " + said(level ? up : across) + " from the outer face of " + arriving.name +
                                   ", " + said(level ? across : up) + " from that of " + leaving.name;
      // One of those that are built alike is drawn; the others are named under it.
      const std::string distances = said(level ? up : across) + ", " + said(level ? across : up);
      if (alike.contains(corner.name)) {
        like.insert(distances);
        continue;
      }
      drawn.insert(distances);
      EXPECT_EQ(count_of(text, sentence), std::min<int>(2, static_cast<int>(building.courses.size())))
          << corner.name << ": " << sentence;
      for (int course = 1; course <= 2; ++course) {
        EXPECT_NE(text.find("Corner " + corner.name + ", course " + std::to_string(course)), std::string::npos);
        const std::string unit = unit_over(solved, point, course);
        ASSERT_FALSE(unit.empty());
        EXPECT_NE(text.find("It stands in " + unit + "."), std::string::npos)
            << corner.name << ", course " << course << ": " << unit;
      }
    }
    EXPECT_TRUE(std::ranges::includes(drawn, like)) << text;
  }
}

TEST(CornerSheets, SayOfEveryCornerBarItsDistancesAndWhoseCellItStandsIn) {
  int corners = 0;
  for (const Solved& solved : solved_examples()) {
    // More corners than these are drawn by their kinds.
    if (solved.answer.building.corners.size() > 6) continue;
    expect_every_corner_told(solved);
    corners += static_cast<int>(std::ranges::count_if(
        solved.answer.layout.bars, [](const PlacedBar& bar) { return bar.reason == BarReason::Corner; }));
  }
  EXPECT_GT(corners, 12);
  expect_every_corner_told(twelve_inch());
}

TEST(CornerSheets, NameTheUnitAndTheFillerOfEachCornerSet) {
  const std::string text = corner_text(twelve_inch(), Paper::Letter);
  // Four corners, one of those alike drawn, two courses: in words beside each, and in each filler.
  const int drawn = 4 - static_cast<int>(built_alike(text).size());
  EXPECT_GE(drawn, 1);
  EXPECT_EQ(count_of(text, "8 in unit + 4 in filler") + count_of(text, "8 in unit + 4 in  filler"), 2 * drawn) << text;
  EXPECT_EQ(count_of(text, "filler"), 4 * drawn);
  // Walls without bars have their fillers drawn too.
  EXPECT_GT(count_of(corner_text(solved_example("pug-mill-shop"), Paper::Letter), "4 in filler"), 4);
}

TEST(CornerSheets, AreLeftOutWhereAPlainUnitTurnsTheCornerAndNoBarStands) {
  for (const Solved& solved : solved_examples()) {
    const bool sets = std::ranges::any_of(solved.answer.layout.pieces,
                                          [](const Piece& piece) { return piece.kind == UnitKind::CornerSet; });
    const bool bars = std::ranges::any_of(solved.answer.layout.bars,
                                          [](const PlacedBar& bar) { return bar.reason == BarReason::Corner; });
    EXPECT_EQ(!corner_text(solved, Paper::Letter).empty(), sets || bars) << solved.name;
  }
}

}  // namespace
}  // namespace stringcourse::print_test
