// The printed sets of the example jobs, as solved: legible, complete, and true to the layout.
#include <gtest/gtest.h>

#include <algorithm>
#include <cstdlib>
#include <regex>

#include "measure/notation.hpp"
#include "paper/legibility.hpp"
#include "print/solved_examples.hpp"
#include "sheet/context.hpp"
#include "sheet/form_board.hpp"
#include "sheet/template.hpp"

namespace stringcourse::print_test {
namespace {

using paper::Group;
using paper::Paper;
using paper::Sheet;

constexpr Paper kPapers[] = {Paper::Letter, Paper::A4};

std::string troubles_of(const Sheet& sheet) {
  std::string all;
  for (const paper::LegibilityTrouble& trouble : paper::legibility_troubles(sheet)) {
    all += sheet.name + ": '" + trouble.text + "' and '" + trouble.other + "'\n";
  }
  return all;
}

bool has_label(const Sheet& sheet, std::string_view label) {
  bool found = false;
  visit_groups(sheet.groups, [&](const Group& group) { found = found || group.label == label; });
  return found;
}

TEST(PrintedSets, AreLegibleOnBothPapersWithFreeMargins) {
  ASSERT_GE(solved_examples().size(), 6u);
  for (const Solved& solved : solved_examples()) {
    SCOPED_TRACE(solved.name);
    for (const Paper paper : kPapers) {
      for (const Sheet& sheet : solved.sheets(paper)) EXPECT_EQ(troubles_of(sheet), "");
    }
    for (std::size_t index = 0; index < sheet::drawing_names(solved.answer.building).size(); ++index) {
      EXPECT_EQ(troubles_of(sheet::make_drawing(solved.answer, index)), "");
    }
  }
}

// A scale bar AND a print ruler on every sheet that is drawn to scale; a list has neither, and its title block says so.
TEST(PrintedSets, EverySheetHasCautionAndTitleFieldsAndThoseToScaleTheirRuler) {
  for (const Solved& solved : solved_examples()) {
    SCOPED_TRACE(solved.name);
    const auto sheets = solved.sheets(Paper::Letter);
    for (std::size_t index = 0; index < sheets.size(); ++index) {
      const Sheet& sheet = sheets[index];
      SCOPED_TRACE(sheet.name);
      EXPECT_TRUE(has_label(sheet, words::kEnglish.caution));
      EXPECT_TRUE(has_text(sheet, solved.answer.job.name));
      EXPECT_TRUE(has_text(sheet, sheet.title));
      EXPECT_TRUE(has_text(sheet, std::to_string(index + 1) + " of " + std::to_string(sheets.size())));
      const auto texts = texts_of(sheet);
      const auto says = [&](const auto& what) { return std::any_of(texts.begin(), texts.end(), what); };
      const bool scaled = says([](const std::string& text) { return text.starts_with("1:"); });
      EXPECT_EQ(scaled, has_label(sheet, words::kEnglish.print_ruler));
      EXPECT_NE(scaled, says([](const std::string& text) { return text == words::kEnglish.not_to_scale; }));
      bool bar = false;
      visit_groups(sheet.groups, [&](const Group& group) {
        bar = bar || (group.label.starts_with("1:") && group.shapes.size() > 1);
      });
      EXPECT_EQ(scaled, bar);
    }
  }
}

// By hand: third-unit marks (each third unit) at 48k - 3/8 where the side runs through, 8 in more where it
// butts.
TEST(PrintedSets, KilnHouseCarriesItsThirdUnitMarks) {
  bool through = false, butt = false;
  for (const Sheet& sheet : solved_example("kiln-house").sheets(Paper::Letter)) {
    if (!sheet.title.starts_with("Side")) continue;
    through = through || has_text(sheet, "47 5/8\"");
    butt = butt || has_text(sheet, "55 5/8\"");
  }
  EXPECT_TRUE(through);
  EXPECT_TRUE(butt);
}

// 28'-0" and 20'-0" nominal between two outside corners: less 3/8 in.
TEST(PrintedSets, KilnHousePlanDimensionsEachSideOnceInBothForms) {
  for (const Sheet& sheet : solved_example("kiln-house").sheets(Paper::Letter)) {
    if (sheet.title != "Course 1: plan") continue;
    const auto texts = texts_of(sheet);
    EXPECT_EQ(std::count(texts.begin(), texts.end(), "AB  27'-11 5/8\" = 335 5/8\""), 1);
    EXPECT_EQ(std::count(texts.begin(), texts.end(), "BC  19'-11 5/8\" = 239 5/8\""), 1);
    EXPECT_EQ(std::count(texts.begin(), texts.end(), "CD  27'-11 5/8\" = 335 5/8\""), 1);
    EXPECT_EQ(std::count(texts.begin(), texts.end(), "DA  19'-11 5/8\" = 239 5/8\""), 1);
  }
}

std::int64_t denominator_of(const Sheet& sheet) {
  for (const std::string& text : texts_of(sheet)) {
    if (text.starts_with("1:")) return std::atoll(text.c_str() + 2);
  }
  return 0;
}

struct Measured {
  std::string text;
  std::int64_t drawn_nanometres;
};

// A dimension is a group whose first part draws two extension lines and the line between them, and that holds one text.
std::vector<Measured> dimensions_of(const Sheet& sheet) {
  std::vector<Measured> all;
  const std::int64_t denominator = denominator_of(sheet);
  visit_groups(sheet.groups, [&](const Group& group) {
    if (group.groups.size() != 2 || group.groups[1].texts.size() != 1) return;
    const auto& lines = group.groups[0].shapes;
    if (lines.size() != 5 || lines[2].points.size() != 2) return;
    const auto a = lines[2].points[0], b = lines[2].points[1];
    const std::int64_t paper = std::abs(a.x - b.x) + std::abs(a.y - b.y);
    all.push_back({group.groups[1].texts[0].text, paper * denominator * 1000});
  });
  return all;
}

// Both ends are rounded to a whole micrometre of paper: off by half of one each, times the scale.
TEST(PrintedSets, EveryPlanDimensionIsAsLongOnPaperAsItSays) {
  int measured = 0;
  for (const Solved& solved : solved_examples()) {
    SCOPED_TRACE(solved.name);
    for (const Sheet& sheet : solved.sheets(Paper::A4)) {
      if (sheet.title.find(": plan") == std::string::npos) continue;
      for (const Measured& dimension : dimensions_of(sheet)) {
        const std::size_t equals = dimension.text.find(" = ");
        const std::size_t name = dimension.text.find("  ");
        if (equals == std::string::npos && name == std::string::npos) continue;  // a name alone where there is no room
        const std::string stated =
            equals != std::string::npos ? dimension.text.substr(equals + 3) : dimension.text.substr(name + 2);
        const auto length = read_length(stated, solved.answer.building.tape);
        ASSERT_TRUE(length.has_value()) << dimension.text;
        const std::int64_t off = std::abs(length->in_nanometres() - dimension.drawn_nanometres);
        EXPECT_LE(off, denominator_of(sheet) * 1000) << dimension.text;
        ++measured;
      }
    }
  }
  EXPECT_GT(measured, 20);  // four sides and more, on the plans of seven jobs
}

// Every corner has one side that runs through and one that butts: two arrows, one of them with a stop.
TEST(PrintedSets, KilnHousePlanShowsOneThroughAndOneButtArrowAtEachCorner) {
  for (const Sheet& sheet : solved_example("kiln-house").sheets(Paper::Letter)) {
    if (sheet.title.find(": plan") == std::string::npos) continue;
    int heads = 0, stops = 0;
    visit_groups(sheet.groups, [&](const Group& group) {
      for (const paper::Shape& shape : group.shapes) {
        if (shape.points.size() == 3 && shape.fill == paper::Fill::Black) ++heads;
        if (shape.points.size() == 2 && shape.pen == paper::Pen::Thick) ++stops;
      }
    });
    EXPECT_EQ(heads, 8) << sheet.title;
    EXPECT_EQ(stops, 4) << sheet.title;
  }
}

// "7 HA", "12 CU2": the mark of a unit's number is explained on the sheet that shows it.
TEST(PrintedSets, EveryLetterOnAStripIsExplainedOnThatSheet) {
  int letters = 0;
  for (const Solved& solved : solved_examples()) {
    SCOPED_TRACE(solved.name);
    for (const Sheet& sheet : solved.sheets(Paper::Letter)) {
      if (!sheet.title.starts_with("Side")) continue;
      std::string notes;
      for (const std::string& text : texts_of(sheet)) notes += text + " ";
      visit_groups(sheet.groups, [&](const Group& unit) {
        if (!std::regex_match(unit.label, std::regex(".+-[0-9]+-[0-9]+"))) return;
        for (const paper::Text& text : unit.texts) {
          const std::size_t space = text.text.find(' ');
          if (space == std::string::npos || text.text[space + 1] < 'A' || text.text[space + 1] > 'Z') continue;
          const std::string mark = text.text.substr(space + 1);
          const std::string meaning = mark.size() > 2 ? mark + " = " : mark + " ";
          EXPECT_NE(notes.find(meaning, notes.find("Box: ")), std::string::npos) << sheet.name << " " << mark;
          ++letters;
        }
      });
    }
  }
  EXPECT_GT(letters, 50);
}

// A full two-core unit shows its outline and two cells (us-8: cells from 1 in webs).
TEST(PrintedSets, StripsShowTheCellsOfEachUnit) {
  bool seen = false;
  for (const Sheet& sheet : solved_example("kiln-house").sheets(Paper::Letter)) {
    if (!sheet.title.starts_with("Side AB: courses 1 and 2")) continue;
    visit_groups(sheet.groups, [&](const Group& group) {
      if (group.label != "AB-1-2") return;
      EXPECT_EQ(group.shapes.size(), 3u);
      seen = true;
    });
  }
  EXPECT_TRUE(seen);
}

// Jobs that no example is: half-high course, control joints, long wall, corner sets, re-entrant corner.
TEST(PrintedSets, UnseenJobsAreLegibleToo) {
  const std::string head =
      R"({"stringcourse":1,"name":"Trial","tape":"inches","interior_walls":[],"outline":{"closed":true,"sides":[)";
  const auto side = [](const std::string& from, const std::string& to, int feet, const std::string& turn) {
    return R"({"from":")" + from + R"(","to":")" + to + R"(","length":")" + std::to_string(feet) +
           R"('-0\"","turn":")" + turn + R"("})";
  };
  const auto rectangle = [&](int wide, int deep) {
    return side("A", "B", wide, "right") + "," + side("B", "C", deep, "right") + "," + side("C", "D", wide, "right") +
           "," + side("D", "A", deep, "right");
  };
  const std::string jobs[] = {
      head + rectangle(60, 16) +
          R"(]},"units":{"series":"us-8"},"heights":{"courses":16,"half_high_courses":[16]},"openings":[],
        "control_joints":{"rule":"us"},"steel":{"wire_every":2}})",
      head + rectangle(8, 8) + R"(]},"units":{"series":"us-10"},"heights":{"courses":6},"openings":[]})",
      head + rectangle(16, 8) +
          R"(]},"units":{"series":"us-4"},"heights":{"courses":12},"openings":[{"name":"W1","on":"AB",
        "place":{"from":"A","at":"4'-0\""},"masonry":{"width":"2'-8\"","height":"2'-8\""},"sill_course":4}]})",
      head + side("A", "B", 24, "right") + "," + side("B", "C", 24, "right") + "," + side("C", "D", 12, "right") + "," +
          side("D", "E", 8, "left") + "," + side("E", "F", 12, "right") + "," + side("F", "A", 16, "right") +
          R"(]},"units":{"series":"us-6"},"heights":{"courses":10},"openings":[]})",
  };
  for (const std::string& json : jobs) {
    const Solved solved = solved_job("trial", json);
    for (const Paper paper : kPapers) {
      for (const Sheet& sheet : solved.sheets(paper)) EXPECT_EQ(troubles_of(sheet), "");
    }
  }
}

// A template is cut out and laid on the form: what it draws must be as large as what it stands for.
TEST(PrintedSets, EveryDowelHasOneTemplateAtFullSize) {
  for (const Solved& solved : solved_examples()) {
    SCOPED_TRACE(solved.name);
    for (const Paper paper : kPapers) {
      const sheet::Context context = sheet::context_of(solved.answer, paper);
      std::size_t served = 0;
      for (const sheet::DowelTemplate& shown : sheet::dowel_templates(context)) {
        served += shown.dowels.size();
        // The widest box drawn solid is the cell of course 1: as wide as the clear interval of the dowel list, to the
        // micrometre by which each edge is rounded.
        const steel::Dowel& dowel = *shown.dowels.front();
        if (!dowel.first) continue;
        const auto clear =
            static_cast<double>((dowel.first->clear.to - dowel.first->clear.from).in_nanometres()) / 1000;
        const Group group = sheet::draw_dowel_template(context, shown);
        bool drawn = false;
        for (const paper::Shape& shape : group.shapes) {
          if (shape.dash != paper::Dash::Solid || shape.points.size() < 4) continue;
          const auto [left, right] = std::ranges::minmax(shape.points, {}, &paper::Point::x);
          drawn = drawn || std::abs(static_cast<double>(right.x - left.x) - clear) <= 2;
        }
        EXPECT_TRUE(drawn) << dowel.number;
      }
      EXPECT_EQ(served, solved.answer.dowels.size());
    }
  }
}

TEST(PrintedSets, TheFormBoardOfASideShowsEachDowelsPlaceAsTheListDoes) {
  for (const Solved& solved : solved_examples()) {
    SCOPED_TRACE(solved.name);
    const sheet::Context context = sheet::context_of(solved.answer, Paper::A4);
    for (const steel::Dowel& dowel : solved.answer.dowels) {
      const Length step = solved.answer.building.tape == Tape::Inches ? Length::sixteenths(1) : Length::millimetres(1);
      const std::string text = tape_text(rounded_to(dowel.along, step), solved.answer.building.tape);
      std::vector<Group> groups;
      const sheet::WallParts board = sheet::parts_of_form_board(context, dowel.wall);
      for (const sheet::Part& part : board.parts)
        groups.push_back(sheet::draw_form_board(context, {dowel.wall, 0, part}, board.scale, context.page.drawing));
      bool written = false;
      visit_groups(groups, [&](const Group& group) {
        for (const paper::Text& one : group.texts) written = written || one.text.find(text) != std::string::npos;
      });
      EXPECT_TRUE(written) << text;
    }
  }
}

}  // namespace
}  // namespace stringcourse::print_test
