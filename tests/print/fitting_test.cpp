// Nothing on a sheet is cut, torn off, set over something else or beyond its place, whatever the names.
#include <gtest/gtest.h>

#include <algorithm>

#include "paper/legibility.hpp"
#include "print/hard_jobs.hpp"
#include "sheet/frame.hpp"

namespace stringcourse::print_test {
namespace {

using paper::Area;
using paper::Box;
using paper::Group;
using paper::Paper;
using paper::Sheet;
using paper::Text;

constexpr Paper kPapers[] = {Paper::Letter, Paper::A4};

std::string without_spaces(const std::string& text) {
  std::string kept;
  for (const char byte : text) {
    if (byte != ' ') kept += byte;
  }
  return kept;
}

/// The group's own texts and those of the groups in it.
void texts_in(const Group& group, std::vector<const Text*>& texts) {
  for (const Text& text : group.texts) texts.push_back(&text);
  for (const Group& inner : group.groups) texts_in(inner, texts);
}

bool inside(const Box& box, const Area& area) {
  // A comma's tail or a fraction's stroke may touch the line of its field.
  constexpr paper::Micrometres kStroke = 700;
  return box.left >= area.left - kStroke && box.right <= area.right + kStroke && box.low >= area.bottom - kStroke &&
         box.high <= area.top + kStroke;
}

/// The frame's parts keep to their own fields, everything to the margin.
std::string beyond_its_place(const Sheet& sheet, Paper paper) {
  const sheet::Page page = sheet::page_of(paper);
  std::string all;
  for (const Group& group : sheet.groups) {
    const bool caution = group.label == words::kEnglish.caution, block = group.label == words::kEnglish.job;
    const bool scaled =
        std::ranges::any_of(sheet.groups, [](const Group& one) { return one.label == words::kEnglish.print_ruler; });
    const Area area = caution ? (scaled ? page.caution : page.wide_caution) : block ? page.block : page.margin;
    std::vector<const Text*> texts;
    texts_in(group, texts);
    for (const Text* text : texts) {
      if (!inside(text_box(*text), area)) all += sheet.name + ": beyond its place: " + text->text + "\n";
    }
  }
  return all;
}

/// Left and low, millimetres.
std::string place_text(const Box& box) {
  return std::to_string(box.left / 1000) + ", " + std::to_string(box.low / 1000);
}

/// What is wrong with one sheet; a user's own ellipsis is no fault.
std::string faults_of_sheet(const Sheet& sheet, Paper paper) {
  std::string all;
  for (const paper::LegibilityTrouble& trouble : paper::legibility_troubles(sheet)) {
    all += sheet.name + ": '" + trouble.text + "' and '" + trouble.other + "' at " + place_text(trouble.box) + "\n";
  }
  for (const std::string& text : texts_of(sheet)) {
    if (text.find("…") != std::string::npos) all += sheet.name + ": cut: " + text + "\n";
  }
  return all + beyond_its_place(sheet, paper);
}

std::string faults_of_set(const Solved& solved) {
  std::string all;
  for (const Paper paper : kPapers) {
    for (const Sheet& sheet : solved.sheets(paper)) all += faults_of_sheet(sheet, paper);
  }
  return all;
}

/// Names that no sheet has whole (lines broken inside a word joined again).
std::string names_missing(const Solved& solved) {
  std::string printed;
  for (const Sheet& sheet : solved.sheets(Paper::Letter)) {
    for (const std::string& text : texts_of(sheet)) printed += without_spaces(text);
  }
  std::string all;
  for (const std::string& name : names_in(solved.answer.job)) {
    if (printed.find(without_spaces(name)) == std::string::npos) all += name + "\n";
  }
  return all;
}

/// "(3)" on a drawing stands in the sheet of names.
std::string keys_untold(const Solved& solved) {
  std::string listed, all;
  const auto sheets = solved.sheets(Paper::Letter);
  for (const Sheet& sheet : sheets) {
    if (!sheet.title.starts_with(words::kEnglish.title_names)) continue;
    for (const std::string& text : texts_of(sheet)) listed += text + "\n";
  }
  for (const Sheet& sheet : sheets) {
    for (const std::string& text : texts_of(sheet)) {
      const bool key = text.size() >= 3 && text.front() == '(' && text.back() == ')' &&
                       std::all_of(text.begin() + 1, text.end() - 1, [](char c) { return c >= '0' && c <= '9'; });
      if (key && listed.find(text + "\n") == std::string::npos) all += sheet.name + ": " + text + "\n";
    }
  }
  return all;
}

TEST(Fitting, NothingOnAnExamplesSheetsIsCutOrSetOverAnother) {
  for (const Solved& solved : solved_examples()) {
    SCOPED_TRACE(solved.name);
    EXPECT_EQ(faults_of_set(solved), "");
    EXPECT_EQ(names_missing(solved), "");
    EXPECT_EQ(keys_untold(solved), "");
  }
}

// A name that has room everywhere needs no key: the sheet of names is for those that have not.
TEST(Fitting, TheExamplesNeedNoSheetOfNames) {
  for (const Solved& solved : solved_examples()) {
    for (const Sheet& sheet : solved.sheets(Paper::Letter))
      EXPECT_FALSE(sheet.title.starts_with(words::kEnglish.title_names)) << solved.name;
  }
}

void expect_hard_jobs_fit(Names names, std::uint64_t first, std::uint64_t last, int least) {
  int solved_jobs = 0;
  for (std::uint64_t seed = first; seed < last; ++seed) {
    const auto solved = hard_job(seed, names);
    if (!solved) continue;
    SCOPED_TRACE(solved->name);
    EXPECT_EQ(faults_of_set(*solved), "");
    EXPECT_EQ(names_missing(*solved), "");
    EXPECT_EQ(keys_untold(*solved), "");
    ++solved_jobs;
  }
  EXPECT_GE(solved_jobs, least);
}

TEST(Fitting, HardJobsWithShortNames) { expect_hard_jobs_fit(Names::OneLetter, 0, 24, 8); }
TEST(Fitting, HardJobsWithNamesOfSeveralWords) { expect_hard_jobs_fit(Names::Words, 100, 124, 8); }
TEST(Fitting, HardJobsWithLongWords) { expect_hard_jobs_fit(Names::OneLongWord, 200, 224, 8); }
TEST(Fitting, HardJobsWithTheLongestNames) { expect_hard_jobs_fit(Names::Longest, 300, 324, 8); }

}  // namespace
}  // namespace stringcourse::print_test
