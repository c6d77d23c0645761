// What the sheets and the findings say: one word for one thing, in the spelling of the job's masons, and none that
// someone who lays block for the first time would misread.
#include <gtest/gtest.h>

#include <array>
#include <regex>
#include <set>

#include "print/solved_examples.hpp"
#include "words/sheet_words.hpp"

namespace stringcourse::print_test {
namespace {

using paper::Paper;

// Read as a claim on the building code, or wants a glossary, or names a second thing with a word that is taken.
constexpr std::string_view kUnwanted[] = {
    "lawful",       "goes away",   "run people through", "under a half",     "closes the stretch", "closes its stretch",
    "this stretch", "bay mark",    "least room",         "its doubt",        "second-hand",        "(seen)",
    "\u00AB",       "\u00BB",      "datum mark",         "over the bearing", "on the bearing",     "under the bearing",
    "saw kerf",     "filler each", "no lawful",          "at its budget"};
constexpr std::string_view kBritish[] = {"centre", "litre",  "metre",     "gauge rod", "Gauge rod",
                                         "grey",   "colour", "neighbour", "mould",     "storey"};
constexpr std::string_view kAmericanOnly[] = {"center",     "liter", "meter ",   "story pole",
                                              "Story pole", "gray",  "neighbor", "molded"};

/// Everything that a job's sheets and findings say, but for what its user wrote.
std::set<std::string> all_said(const Solved& solved) {
  std::set<std::string> said;
  for (const Paper paper : {Paper::Letter, Paper::A4}) {
    for (const paper::Sheet& sheet : solved.sheets(paper)) {
      for (const std::string& text : texts_of(sheet)) said.insert(text);
    }
  }
  for (const Finding& finding : solved.answer.findings)
    said.insert(words::told(finding.says, {solved.answer.building.tape})),
        said.insert(words::cited(finding.rule, {solved.answer.building.tape}));
  for (const Offer& offer : solved.answer.offers) said.insert(words::told(offer.text, {solved.answer.building.tape}));
  said.erase(solved.answer.job.notes);
  return said;
}

template <typename Words>
std::string found_in(const std::set<std::string>& said, const Words& words) {
  std::string found;
  for (const std::string& text : said) {
    for (const std::string_view word : words) {
      if (text.contains(word)) found += "\"" + std::string(word) + "\" in: " + text + "\n";
    }
  }
  return found;
}

TEST(PrintedWords, NoneIsMisreadByWhoeverLaysBlockForTheFirstTime) {
  for (const Solved& solved : solved_examples()) EXPECT_EQ(found_in(all_said(solved), kUnwanted), "") << solved.name;
}

TEST(PrintedWords, AreAmericanInInchesAndBritishInMillimetres) {
  int american = 0, british = 0;
  for (const Solved& solved : solved_examples()) {
    const std::set<std::string> said = all_said(solved);
    const bool inches = solved.answer.building.tape == Tape::Inches;
    (inches ? american : british) += 1;
    EXPECT_EQ(inches ? found_in(said, kBritish) : found_in(said, kAmericanOnly), "") << solved.name;
    const std::string_view rod = inches ? "Story pole and corner leads" : "Gauge rod and corner leads";
    EXPECT_TRUE(std::ranges::any_of(said, [&](const std::string& text) { return text.starts_with(rod); }))
        << solved.name;
  }
  EXPECT_GT(american, 0);
  EXPECT_GT(british, 0);
}

// A single letter is a corner's name; two letters and, of a saw cut, its number are a unit's mark, told on the same
// sheet.
TEST(PrintedWords, UnitMarksHaveTwoLettersAndAreToldOnTheirSheet) {
  const std::regex marked("[0-9]+ (HA|CU[0-9]*|BB|LI|SA|OE|OB|CO|CS|HH|SO)"), once("[0-9]+ [A-Z][0-9]*");
  std::set<std::string> marks;
  for (const Solved& solved : solved_examples()) {
    for (const paper::Sheet& sheet : solved.sheets(Paper::Letter)) {
      const std::vector<std::string> texts = texts_of(sheet);
      // Notes, joined as they are read on; numbers with their marks are not told by themselves.
      std::string whole;
      for (const std::string& text : texts) whole += std::regex_match(text, marked) ? "; " : text + " ";
      for (const std::string& text : texts) {
        EXPECT_FALSE(std::regex_match(text, once)) << sheet.name << ": " << text;
        std::smatch parts;
        if (!std::regex_match(text, parts, marked)) continue;
        const std::string mark = parts[1].str().substr(0, 2);
        marks.insert(mark);
        EXPECT_TRUE(whole.contains(mark + " ")) << sheet.name << " does not tell " << mark;
      }
    }
  }
  EXPECT_GE(marks.size(), 4u);
}

}  // namespace
}  // namespace stringcourse::print_test
