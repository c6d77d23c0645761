// The sets and the answer in another language: all that is said is said in it, and it has room.
#include "print/other_language.hpp"

#include <gtest/gtest.h>

#include <algorithm>
#include <set>
#include <utility>

#include "catalogue/rules.hpp"
#include "paper/legibility.hpp"
#include "print/solved_examples.hpp"

namespace stringcourse::print_test {
namespace {

TEST(OtherLanguage, MarksWordsAndLeavesPlaces) {
  EXPECT_EQ(marked("lay {0} {0|unit|units}, A"), "lAy {0} {0|UnIt|UnIts}, A");
  EXPECT_EQ(unmarked_word("lAy the wall", {}), "the");
  EXPECT_EQ(unmarked_word("lAy the wAll", {"the"}), "");
  EXPECT_EQ(unmarked_word("lAy 14'-7\", in mm", {}), "");
}

void add_words(std::set<std::string, std::less<>>& words, std::string_view text) {
  std::string word;
  for (std::size_t k = 0; k <= text.size(); ++k) {
    const bool letter = k < text.size() && ((text[k] >= 'a' && text[k] <= 'z') || (text[k] >= 'A' && text[k] <= 'Z'));
    if (letter) word += text[k];
    else if (!word.empty()) words.insert(std::exchange(word, ""));
  }
}

/// Words that no language translates: names of the job, of blocks, of documents and rules.
std::set<std::string, std::less<>> names_of(const Answer& answer) {
  std::set<std::string, std::less<>> names;
  for (const std::string& text : {answer.job.name, answer.job.issued, answer.job.drawn_by, answer.job.notes})
    add_words(names, text);
  if (answer.job.top) add_words(names, answer.job.top->plate);
  if (answer.building.top) add_words(names, answer.building.top->bolts.size);
  for (const Series& series : answer.building.series) {
    add_words(names, series.id), add_words(names, series.title), add_words(names, series.source.text);
    if (!series.corner_set) continue;
    for (const std::string& part : series.corner_set->parts) add_words(names, part);
  }
  for (const Wall& wall : answer.building.walls) add_words(names, wall.name), add_words(names, wall.end_name);
  for (const ResolvedOpening& opening : answer.building.openings) add_words(names, opening.name);
  for (const Rule& rule : catalogue_rules()) add_words(names, rule.source.text);
  for (const Reading& reading : answer.job.readings) {
    add_words(names, reading.id), add_words(names, reading.note);
    if (reading.rod) add_words(names, reading.rod->station), add_words(names, reading.rod->setup);
  }
  for (const LaidEntry& entry : answer.job.laid) {
    add_words(names, entry.id), add_words(names, entry.note);
    for (const std::string& photo : entry.photos) add_words(names, photo);
  }
  return names;
}

/// A rule is called by its id in every language: "bar clearance", on one line or two.
bool stands_in_a_rules_name(const std::string& text) {
  return std::ranges::any_of(catalogue_rules(), [&](const Rule& rule) {
    std::string name(rule.id);
    std::ranges::replace(name, '-', ' ');
    return name.contains(text);
  });
}

/// A sheet's texts as its groups have them: one that is broken into lines is one text again.
std::set<std::string> said_on(const paper::Sheet& sheet) {
  std::set<std::string> said;
  visit_groups(sheet.groups, [&](const paper::Group& group) {
    std::string all;
    for (const paper::Text& text : group.texts) all += (all.empty() ? "" : " ") + text.text;
    if (!all.empty()) said.insert(all);
  });
  return said;
}

TEST(OtherLanguage, EverythingThatIsSaidIsSaidInIt) {
  std::set<std::string> unmarked;
  for (const Solved& solved : solved_examples()) {
    const words::Reader reader{solved.answer.building.tape, other_language()};
    const auto names = names_of(solved.answer);
    const auto look = [&](const std::string& text, const std::string& where) {
      if (stands_in_a_rules_name(text)) return;
      const std::string word = unmarked_word(text, names);
      if (!word.empty()) unmarked.insert(word + " | " + where + ": " + text);
    };
    for (const paper::Sheet& sheet : sheet::make_sheets(solved.answer, paper::Paper::A4, other_language())) {
      for (const std::string& text : said_on(sheet)) look(text, sheet.name);
      look(sheet.title, sheet.name);
    }
    for (const Finding& finding : solved.answer.findings)
      look(words::told(finding.says, reader), std::string(finding.code.text()));
    for (const Offer& offer : solved.answer.offers) look(words::told(offer.text, reader), "offer");
  }
  std::string all;
  for (const std::string& one : unmarked) all += one + "\n";
  EXPECT_EQ(all, "");
}

TEST(OtherLanguage, HasRoomOnEverySheet) {
  for (const Solved& solved : solved_examples()) {
    for (const paper::Paper paper : {paper::Paper::Letter, paper::Paper::A4}) {
      for (const paper::Sheet& sheet : sheet::make_sheets(solved.answer, paper, other_language())) {
        std::string troubles;
        for (const paper::LegibilityTrouble& trouble : paper::legibility_troubles(sheet))
          troubles += sheet.name + ": '" + trouble.text + "' and '" + trouble.other + "'\n";
        EXPECT_EQ(troubles, "") << solved.name;
      }
    }
  }
}

}  // namespace
}  // namespace stringcourse::print_test
