// Facts in words: what each kind of value becomes. Lengths are worked out by hand beside them.
#include <gtest/gtest.h>

#include "words/language.hpp"
#include "words/sheet_words.hpp"

namespace stringcourse::words {
namespace {

using Kind = FactValue::Kind;

constexpr Sentence kSentences[] = {
    {"all", "{0}; {1}"},   {"bare", "{0}"},     {"counted", "{0} {0|unit|units}"}, {"inner", "<{0}>"},
    {"list-and", " and "}, {"list-or", " or "}, {"nothing", "as it is"},           {"sentences", "{0}"},
};
const Language& language() {
  static const Language kLanguage{{kSentences}, kEnglish, kEnglish};
  return kLanguage;
}
std::string said(const Fact& fact, Tape tape = Tape::Inches) { return told(fact, {tape, language()}); }
std::string bare(FactValue value, Tape tape = Tape::Inches) { return said(fact("bare", {std::move(value)}), tape); }

TEST(Told, NamesCountsAndPartsStandInTheirPlaces) {
  EXPECT_EQ(said(fact("all", {"AB", 7})), "AB; 7");
  EXPECT_EQ(said(fact("nothing")), "as it is");
  EXPECT_EQ(said(Fact()), "");
  EXPECT_EQ(said(fact("all", {fact("inner", {"W1"}), "x"})), "<W1>; x");
  EXPECT_EQ(bare("{0}"), "{0}");  // a value is no pattern
}

TEST(Told, OneAndManyHaveTheirWords) {
  EXPECT_EQ(said(fact("counted", {0})), "0 units");
  EXPECT_EQ(said(fact("counted", {1})), "1 unit");
  EXPECT_EQ(said(fact("counted", {2})), "2 units");
}

TEST(Told, ListsAreJoinedAndEmptySentencesLeftOut) {
  const std::vector<std::string> names{"A", "B", "C"};
  EXPECT_EQ(bare(listed(Kind::And, names)), "A, B and C");
  EXPECT_EQ(bare(listed(Kind::Or, std::vector<std::string>{"A", "B"})), "A or B");
  EXPECT_EQ(bare(listed(Kind::Commas, names)), "A, B, C");
  EXPECT_EQ(bare(listed(Kind::Semicolons, names)), "A; B; C");
  EXPECT_EQ(bare(listed(Kind::And, std::vector<std::string>{"A"})), "A");
  EXPECT_EQ(said(sentences({fact("nothing"), Fact(), fact("inner", {"B"})})), "as it is <B>");
  EXPECT_TRUE(sentences({Fact(), Fact()}).empty());
}

TEST(Told, LengthsHaveTheirReadersForms) {
  const Length length = Length::inches(175) + Length::sixteenths(5);  // 14 ft 7 5/16 in = 4452.9375 mm
  EXPECT_EQ(bare({length}), "14'-7 5/16\"");
  EXPECT_EQ(bare({length}, Tape::Millimetres), "4453 mm");
  EXPECT_EQ(bare({length, LengthForm::Both}), "14'-7 5/16\" = 175 5/16\"");
  EXPECT_EQ(bare({length, LengthForm::AtLeast}, Tape::Millimetres), "4453 mm");
  EXPECT_EQ(bare({Length::millimetres(1), LengthForm::AtLeast}), "1/16\"");  // 1 mm is 0.63 of a sixteenth
}

TEST(Told, LengthsThatAreComparedNeverReadAlike) {
  const Length one = Length::inches(10), other = one + Length::sixty_fourths(1);
  EXPECT_EQ(bare(FactValue::apart(one, one)), "10\"");
  EXPECT_EQ(bare(FactValue::apart(other, one)), "10 1/64\"");
}

TEST(Told, WhatSomebodyTypedIsQuoted) { EXPECT_EQ(bare(FactValue::typed("14' 7'")), "\u201C14' 7'\u201D"); }

TEST(Told, ARulesLimitsStandByBothTapesWhereTheReadersIsTheOther) {
  // 1/4 in = 6.35 mm, 10 ft = 3048 mm, 1/2 in = 12.7 mm.
  EXPECT_EQ(rule_text(*find_rule("bed-level"), {Tape::Millimetres}),
            "Bed joints, and the top of a bearing wall, are level within 1/4 in (6.4 mm) in 10 ft (3048 mm) and 1/2 in "
            "(12.7 mm) in all");
  // 6 m = 236.22 in: 19 ft 8 4/16 in; 10 mm = 6.3 sixteenths.
  EXPECT_EQ(
      rule_text(*find_rule("control-joint-uk"), {Tape::Inches}),
      "Movement joints in concrete block stand no further apart than 6 m (19'-8 1/4\") and are 10 mm (3/8 in) wide");
  EXPECT_EQ(cited("", {Tape::Inches}), "");
}

}  // namespace
}  // namespace stringcourse::words
