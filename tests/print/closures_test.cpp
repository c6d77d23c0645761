// Where a course is closed stands on the strip of every course that has one, and its words stand clear of the arrows.
#include <gtest/gtest.h>

#include "paper/legibility.hpp"
#include "print/solved_examples.hpp"
#include "setout/laying_order.hpp"

namespace stringcourse::print_test {
namespace {

using paper::Group;
using paper::Paper;
using paper::Sheet;
using paper::Text;

struct Lettered {
  std::vector<Text> closures;        // "butter", "both ends"
  std::size_t ends = 0;              // heavy blue joints
  std::vector<paper::Shape> levels;  // level lines of two points
};

Lettered lettered(const Sheet& sheet) {
  Lettered all;
  visit_groups(sheet.groups, [&](const Group& group) {
    for (const Text& text : group.texts) {
      if (text.text == "butter" || text.text == "both ends") all.closures.push_back(text);
    }
    for (const paper::Shape& shape : group.shapes) {
      all.ends += shape.pen == paper::Pen::Heavy && shape.ink == paper::Ink::Blue && shape.points.size() == 2;
      if (shape.points.size() == 2 && shape.points[0].y == shape.points[1].y) all.levels.push_back(shape);
    }
  });
  return all;
}

bool is_strip_of(const Sheet& sheet, int course, const std::string& side) {
  const std::string number = std::to_string(course);
  for (const char* kind : {"side ", "wall "}) {
    const std::string title = "Course " + number + ": " + kind + side;
    if (sheet.title == title || sheet.title.starts_with(title + " (")) return true;
  }
  return false;
}

TEST(Closures, EveryOneOfCoursesOneAndTwoStandsOnAStrip) {
  std::size_t drawn = 0;
  for (const Solved& solved : solved_examples()) {
    const std::vector<Sheet> sheets = bands_of(solved.sheets(Paper::Letter));
    for (int course : {1, 2}) {
      for (int wall = 0; wall < static_cast<int>(solved.answer.building.walls.size()); ++wall) {
        const std::string& side = solved.answer.building.walls[static_cast<std::size_t>(wall)].name;
        std::size_t words = 0, ends = 0;
        for (const Sheet& sheet : sheets) {
          if (!is_strip_of(sheet, course, side)) continue;
          words += lettered(sheet).closures.size(), ends += lettered(sheet).ends;
        }
        const std::size_t closed =
            setout::closures_on(solved.answer.building, solved.answer.layout, wall, course).size();
        EXPECT_EQ(ends, 2 * closed) << solved.name << " " << side << "-" << course;
        // Beside another one's, its words are left out: the sheet tells what the joints mean.
        EXPECT_LE(words, 2 * closed);
        EXPECT_GE(words, closed > 0 ? 2u : 0u) << solved.name << " " << side << "-" << course;
        drawn += words / 2;
      }
    }
  }
  EXPECT_LT(50U, drawn);
}

TEST(Closures, TheirWordsLieOnNoArrow) {
  for (const Solved& solved : solved_examples()) {
    for (const Sheet& sheet : solved.sheets(Paper::Letter)) {
      const Lettered all = lettered(sheet);
      for (const Text& text : all.closures) {
        const paper::Box box = paper::text_box(text);
        for (const paper::Shape& line : all.levels) {
          const auto [left, right] = std::minmax(line.points[0].x, line.points[1].x);
          EXPECT_FALSE(box.low < line.points[0].y && line.points[0].y < box.high && left < box.right &&
                       box.left < right)
              << solved.name << " " << sheet.title << " " << text.text;
        }
      }
    }
  }
}

}  // namespace
}  // namespace stringcourse::print_test
