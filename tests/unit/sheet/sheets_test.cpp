#include "sheet/sheets.hpp"

#include <gtest/gtest.h>

#include <functional>
#include <set>

#include "bond/layout_parts.hpp"
#include "paper/legibility.hpp"
#include "sheet/context.hpp"
#include "unit/sheet/house_answer.hpp"

namespace stringcourse::sheet {
namespace {

using stringcourse::testing::HandBuilt;
using stringcourse::testing::Plan;

void visit_groups(const std::vector<Group>& groups, const std::function<void(const Group&)>& take) {
  for (const Group& group : groups) {
    take(group);
    visit_groups(group.groups, take);
  }
}

std::vector<Text> texts_of(const Sheet& sheet) {
  std::vector<Text> texts;
  visit_groups(sheet.groups,
               [&](const Group& group) { texts.insert(texts.end(), group.texts.begin(), group.texts.end()); });
  return texts;
}

bool says(const Sheet& sheet, const std::string& words) {
  for (const Text& text : texts_of(sheet)) {
    if (text.text.find(words) != std::string::npos) return true;
  }
  return false;
}

std::set<std::string> labels_of(const Sheet& sheet) {
  std::set<std::string> labels;
  visit_groups(sheet.groups, [&](const Group& group) { labels.insert(group.label); });
  return labels;
}

std::vector<Plan> plans() {
  return {Plan{}, Plan{.door = true, .bars = true, .beam = true}, Plan{.door = true, .cut = true, .bars = true},
          Plan{.long_halves = 90, .short_halves = 60, .courses = 20, .bars = true, .beam = true},
          Plan{.long_halves = 12, .short_halves = 8, .courses = 3}};
}

std::string troubles_of(const std::vector<Sheet>& sheets) {
  std::string all;
  for (const Sheet& sheet : sheets) {
    for (const LegibilityTrouble& trouble : legibility_troubles(sheet)) {
      all += sheet.name + ": '" + trouble.text + "' and '" + trouble.other + "'\n";
    }
  }
  return all;
}

TEST(Sheets, AreLegibleOnBothPapersAndBothTapes) {
  for (const Plan& plan : plans()) {
    for (const Tape tape : {Tape::Inches, Tape::Millimetres}) {
      HandBuilt house{plan};
      house.building.tape = tape;
      for (const Paper paper : {Paper::Letter, Paper::A4}) {
        EXPECT_EQ(troubles_of(make_sheets(answer_of(house), paper)), "");
      }
    }
  }
}

// Names as long and as odd as a user can type them stay inside their places.
TEST(Sheets, HostileNamesStayText) {
  HandBuilt house{
      Plan{.door = true, .cut = true, .bars = true, .first_corner = "<svg onload=x>&\"'" + std::string(120, 'W')}};
  house.building.openings[0].name = ")Tj ET \n" + std::string(200, 'M') + "\x01\x7F";
  house.building.openings[0].note = std::string(500, 'x');
  Answer answer = answer_of(house);
  answer.job.name = std::string(300, 'N');
  answer.job.notes = std::string(2'000, 'n');
  answer.job.issued = answer.job.drawn_by = std::string(100, 'd');
  const auto sheets = make_sheets(answer, Paper::Letter);
  EXPECT_EQ(troubles_of(sheets), "");
  for (const Sheet& sheet : sheets) {
    EXPECT_EQ(sheet.name.find_first_not_of("abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789-"),
              std::string::npos);
    for (const Text& text : texts_of(sheet)) {
      for (const char byte : text.text) EXPECT_GE(static_cast<unsigned char>(byte), 0x20);
    }
  }
}

TEST(Sheets, NothingIsDrawnOutsideTheMargins) {
  for (const Plan& plan : plans()) {
    const HandBuilt house{plan};
    const Page page = page_of(Paper::A4);
    for (const Sheet& sheet : make_sheets(answer_of(house), Paper::A4)) {
      visit_groups(sheet.groups, [&](const Group& group) {
        for (const Shape& shape : group.shapes) {
          for (const Point point : shape.points) {
            EXPECT_GE(point.x, page.margin.left - 1) << sheet.name;
            EXPECT_LE(point.x, page.margin.right + 1) << sheet.name;
            EXPECT_GE(point.y, page.margin.bottom - 1) << sheet.name;
            EXPECT_LE(point.y, page.margin.top + 1) << sheet.name;
          }
        }
      });
    }
  }
}

TEST(Sheets, TheStreamGivesTheSameSheetsAndNames) {
  const HandBuilt house{Plan{.door = true, .cut = true}};
  const auto sheets = make_sheets(answer_of(house), Paper::Letter);
  const auto names = sheet_names(answer_of(house), Paper::Letter);
  ASSERT_EQ(names.size(), sheets.size());
  std::set<std::string> unique;
  std::size_t index = 0;
  for_each_sheet(answer_of(house), Paper::Letter, [&](const Sheet& sheet) {
    EXPECT_EQ(sheet.name, sheets[index].name);
    EXPECT_EQ(names[index].name, sheet.name);
    EXPECT_EQ(names[index].title, sheet.title);
    EXPECT_EQ(texts_of(sheet).size(), texts_of(sheets[index]).size());
    unique.insert(sheet.name);
    ++index;
  });
  EXPECT_EQ(index, sheets.size());
  EXPECT_EQ(unique.size(), sheets.size());
}

TEST(Sheets, EveryUnitOfTheFirstTwoCoursesAndEveryUnitInElevationIsDrawnUnderItsName) {
  const HandBuilt house{Plan{.door = true}};
  std::set<std::string> strips, elevations;
  for (const Sheet& sheet : make_sheets(answer_of(house), Paper::Letter)) {
    const auto labels = labels_of(sheet);
    if (sheet.title.starts_with("Side")) strips.insert(labels.begin(), labels.end());
    if (sheet.title.find("Elevation") != std::string::npos) elevations.insert(labels.begin(), labels.end());
  }
  for (const stringcourse::Run& run : house.layout.runs) {
    for (const Piece& piece : bond::pieces_of(house.layout, run)) {
      const std::string name = bond::piece_name(house.building, run, piece);
      EXPECT_TRUE(elevations.contains(name)) << name;
      if (run.course <= 2) { EXPECT_TRUE(strips.contains(name)) << name; }
    }
  }
}

TEST(Sheets, EveryRunningMarkStandsOnExactlyOneStripOfItsSide) {
  const HandBuilt house{Plan{.door = true, .bars = true}};
  std::multiset<std::string> written;
  for (const Sheet& sheet : make_sheets(answer_of(house), Paper::Letter)) {
    visit_groups(sheet.groups, [&](const Group& group) {
      if (group.label != "Course 1: side CD") return;
      Sheet alone;
      alone.groups = {group};
      for (const Text& text : texts_of(alone)) {
        const bool number = text.height >= kText && text.quarter_turns == 1 && text.text.ends_with('"');
        if (number && !text.text.ends_with("13/16\"")) written.insert(text.text);  // those are bars' middles
      }
    });
  }
  // CD runs through: 18 units of 16 in less a joint, both forms each.
  EXPECT_EQ(written.size(), 18u * 2);
  EXPECT_EQ(written.count("47 5/8\""), 1u);
  EXPECT_EQ(written.count("3'-11 5/8\""), 1u);
  EXPECT_EQ(written.count("287 5/8\""), 1u);
}

TEST(Sheets, RunningNumbersAreFiveMillimetresHighOrMore) {
  const HandBuilt house{Plan{.door = true}};
  for (const Sheet& sheet : make_sheets(answer_of(house), Paper::Letter)) {
    if (!sheet.title.starts_with("Side")) continue;
    for (const Text& text : texts_of(sheet)) {
      if (text.text == "47 5/8\"" || text.text == "55 5/8\"") { EXPECT_GE(text.height, 5'000); }
    }
  }
}

TEST(Sheets, EachCarriesTitleBlockAndCautionAndThoseToScaleAPrintRuler) {
  const HandBuilt house{Plan{.door = true}};
  const auto sheets = make_sheets(answer_of(house), Paper::Letter);
  for (std::size_t index = 0; index < sheets.size(); ++index) {
    EXPECT_TRUE(says(sheets[index], "Glaze store"));
    EXPECT_TRUE(says(sheets[index], "CAUTION"));
    const auto texts = texts_of(sheets[index]);
    const bool to_scale = std::ranges::any_of(texts, [](const Text& text) { return text.text.starts_with("1:"); });
    EXPECT_EQ(says(sheets[index], "Lay a tape on this ruler"), to_scale);
    EXPECT_TRUE(says(sheets[index], std::to_string(index + 1) + " of " + std::to_string(sheets.size())));
  }
}

// Six inches and 150 mm, measured on the paper: the ruler's level line and its farthest metric tick.
TEST(Frame, ThePrintRulerIsTrue) {
  std::set<Micrometres> lengths;
  FrameText text;
  text.scale = Scale{20};
  const auto frame = frame_of(page_of(Paper::A4), text, words::kEnglish, Tape::Inches);
  std::set<Micrometres> ticks;
  visit_groups(frame, [&](const Group& group) {
    if (group.label != words::kEnglish.print_ruler) return;
    for (const Shape& shape : group.shapes) {
      const Point a = shape.points.front(), b = shape.points.back();
      if (a.y == b.y) lengths.insert(b.x - a.x);
      else if (b.y < a.y) ticks.insert(a.x);
    }
  });
  EXPECT_TRUE(lengths.contains(152'400));
  EXPECT_EQ(*ticks.rbegin() - *ticks.begin(), 150'000);
}

TEST(Sheets, AGapInTheProofIsSaid) {
  HandBuilt house{Plan{}};
  house.layout.proven = false;
  house.layout.cost.short_laps = 3;
  house.layout.least_possible.short_laps = 1;
  const auto sheets = make_sheets(answer_of(house), Paper::Letter);
  EXPECT_TRUE(says(sheets.front(), "Not proven least"));
  EXPECT_FALSE(says(sheets.front(), "Proven least:"));
}

TEST(Sheets, ALongWallGoesOverSeveralSheetsWithMatchLines) {
  const HandBuilt house{Plan{.long_halves = 90}};
  int strips = 0, match_lines = 0;
  for (const Sheet& sheet : make_sheets(answer_of(house), Paper::Letter)) {
    if (!sheet.title.starts_with("Side AB: courses 1 and 2")) continue;
    ++strips;
    for (const Text& text : texts_of(sheet)) match_lines += text.text.starts_with("match line");
  }
  EXPECT_GE(strips, 3);                          // 60 ft at 1:40 is 457 mm; a sheet shows at most 226
  EXPECT_EQ(match_lines, 2 * 2 * (strips - 1));  // two courses on each
}

TEST(Parts, CoverTheWallWithoutGapAndFit) {
  for (int inches = 100; inches < 3'000; inches += 37) {
    const Length room = Length::inches(180), to = Length::inches(inches);
    const auto parts = parts_of(Length::inches(-8), to, room, Length::inches(16));
    EXPECT_EQ(parts.front().from, Length::inches(-8));
    EXPECT_EQ(parts.back().to, to);
    for (std::size_t index = 0; index < parts.size(); ++index) {
      EXPECT_LE(parts[index].to - parts[index].from, room) << inches;
      if (index > 0) { EXPECT_EQ(parts[index].from, parts[index - 1].to); }
    }
  }
}

TEST(Drawings, HaveAPlanForTwoCoursesAndAnElevationForEachWall) {
  const HandBuilt house{Plan{.door = true, .bars = true}};
  const auto names = drawing_names(house.building);
  ASSERT_EQ(names.size(), 6u);
  std::vector<Sheet> drawings;
  for (std::size_t index = 0; index < names.size(); ++index) {
    drawings.push_back(make_drawing(answer_of(house), index));
    EXPECT_EQ(drawings.back().name, names[index].name);
  }
  EXPECT_EQ(troubles_of(drawings), "");
}

}  // namespace
}  // namespace stringcourse::sheet
