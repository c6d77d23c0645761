#include "paper/legibility.hpp"

#include <algorithm>

#include "gtest/gtest.h"

namespace stringcourse::paper {
namespace {

Text text_at(Point at, std::string words, Micrometres height = 2'500) {
  return {at, std::move(words), height, Weight::Regular, Anchor::Start, Ink::Black, 0};
}

Sheet sheet_of(std::vector<Text> texts) {
  Sheet sheet;
  Group group;
  group.texts = std::move(texts);
  sheet.groups.push_back(std::move(group));
  return sheet;
}

std::vector<LegibilityRule> rules(const Sheet& sheet) {
  std::vector<LegibilityRule> found;
  for (const LegibilityTrouble& trouble : legibility_troubles(sheet)) found.push_back(trouble.rule);
  return found;
}

using Rules = std::vector<LegibilityRule>;

TEST(Legibility, DigitsStandFromBaselineToCapitalHeight) {
  const Micrometres width = text_width("47", 3'000, Weight::Regular);
  EXPECT_EQ(text_box(text_at({10'000, 20'000}, "47", 3'000)), (Box{10'000, 20'000, 10'000 + width, 23'000}));
}

TEST(Legibility, SlashReachesAFifteenthBeyondTheDigits) {
  // B612's slash runs from -100 to 1600 where capitals run from 0 to 1500: 200 micrometres each way at 3 mm.
  const Box box = text_box(text_at({0, 20'000}, "5/16", 3'000));
  EXPECT_EQ(box.low, 19'800);
  EXPECT_EQ(box.high, 23'200);
}

TEST(Legibility, TurnedBoxesTurnAboutTheTextsOwnPoint) {
  Text text = text_at({50'000, 60'000}, "47", 3'000);
  const Micrometres w = text_width("47", 3'000, Weight::Regular);
  text.quarter_turns = 1;  // upwards: capitals point to the left
  EXPECT_EQ(text_box(text), (Box{47'000, 60'000, 50'000, 60'000 + w}));
  text.quarter_turns = 2;
  EXPECT_EQ(text_box(text), (Box{50'000 - w, 57'000, 50'000, 60'000}));
  text.quarter_turns = -1;  // downwards
  EXPECT_EQ(text_box(text), (Box{50'000, 60'000 - w, 53'000, 60'000}));
  text.quarter_turns = 1;
  text.anchor = Anchor::End;
  EXPECT_EQ(text_box(text), (Box{47'000, 60'000 - w, 50'000, 60'000}));
}

TEST(Legibility, TextsThatTouchAreFineAndThatOverlapByAMicrometreAreNot) {
  const Micrometres w = text_width("47", 2'500, Weight::Regular);
  EXPECT_EQ(rules(sheet_of({text_at({50'000, 50'000}, "47"), text_at({50'000 + w, 50'000}, "8")})), Rules{});
  EXPECT_EQ(rules(sheet_of({text_at({50'000, 50'000}, "47"), text_at({50'000, 52'500}, "47")})), Rules{});
  const auto found =
      legibility_troubles(sheet_of({text_at({50'000, 50'000}, "47"), text_at({50'000 + w - 1, 50'000}, "8")}));
  ASSERT_EQ(found.size(), 1u);
  EXPECT_EQ(found[0].rule, LegibilityRule::Overlap);
  EXPECT_EQ(found[0].text, "47");
  EXPECT_EQ(found[0].other, "8");
}

TEST(Legibility, OverlapIsSeenAcrossGroupsAndTurns) {
  Sheet sheet = sheet_of({text_at({50'000, 50'000}, "14'-7 5/16\"")});
  Group inner;
  inner.texts.push_back(text_at({56'000, 45'000}, "standing"));
  inner.texts[0].quarter_turns = 1;
  sheet.groups[0].groups.push_back(inner);
  EXPECT_EQ(rules(sheet), Rules{LegibilityRule::Overlap});
}

TEST(Legibility, SweepFindsWhatComparingAllPairsFinds) {
  std::vector<Text> texts;
  std::uint64_t seed = 11;
  for (int k = 0; k < 400; ++k) {
    const auto next = [&](std::uint64_t below) {
      seed = seed * 6364136223846793005u + 1442695040888963407u;
      return static_cast<Micrometres>((seed >> 33) % below);
    };
    texts.push_back(text_at({20'000 + next(230'000), 20'000 + next(170'000)}, std::to_string(next(100'000))));
    texts.back().quarter_turns = next(4);
  }
  std::size_t pairs = 0;
  for (std::size_t a = 0; a < texts.size(); ++a) {
    for (std::size_t b = a + 1; b < texts.size(); ++b) {
      const Box p = text_box(texts[a]), q = text_box(texts[b]);
      if (std::max(p.left, q.left) < std::min(p.right, q.right) && std::max(p.low, q.low) < std::min(p.high, q.high))
        ++pairs;
    }
  }
  EXPECT_GT(pairs, 0u);
  EXPECT_EQ(std::ranges::count(rules(sheet_of(texts)), LegibilityRule::Overlap), static_cast<std::ptrdiff_t>(pairs));
}

TEST(Legibility, EdgeAndMarginAreToldApart) {
  EXPECT_EQ(rules(sheet_of({text_at({6'350, 6'350}, "4")})), Rules{});
  EXPECT_EQ(rules(sheet_of({text_at({6'349, 6'350}, "4")})), Rules{LegibilityRule::InMargin});
  EXPECT_EQ(rules(sheet_of({text_at({-1, 6'350}, "4")})), Rules{LegibilityRule::OffSheet});
  EXPECT_EQ(rules(sheet_of({text_at({279'000, 100'000}, "4")})), Rules{LegibilityRule::OffSheet});
  EXPECT_EQ(rules(sheet_of({text_at({100'000, 215'900 - 2'500}, "4")})), Rules{LegibilityRule::InMargin});
}

TEST(Legibility, HeightsAreOfTheSeriesAndLargeEnough) {
  for (const Micrometres height : {2'500, 3'500, 5'000, 7'000, 10'000}) {
    EXPECT_EQ(rules(sheet_of({text_at({50'000, 50'000}, "4", height)})), Rules{});
  }
  EXPECT_EQ(rules(sheet_of({text_at({50'000, 50'000}, "4", 4'000)})), Rules{LegibilityRule::HeightSeries});
  EXPECT_EQ(rules(sheet_of({text_at({50'000, 50'000}, "4", 1'800)})),
            (Rules{LegibilityRule::TooSmall, LegibilityRule::HeightSeries}));
}

TEST(Legibility, PensAreOfTheSeriesAndAnUnknownPenIsNot) {
  Sheet sheet = sheet_of({});
  for (const Pen pen : {Pen::None, Pen::Thin, Pen::Medium, Pen::Thick, Pen::Heavy}) {
    sheet.groups[0].circles.push_back({{50'000, 50'000}, 1'000, pen, Ink::Black, Fill::None});
  }
  EXPECT_EQ(rules(sheet), Rules{});
  sheet.groups[0].circles.push_back({{50'000, 50'000}, 1'000, static_cast<Pen>(9), Ink::Black, Fill::None});
  EXPECT_EQ(rules(sheet), (Rules{LegibilityRule::PenSeries, LegibilityRule::TooManyPens}));
}

TEST(Legibility, CharacterWithoutAGlyphIsTold) {
  EXPECT_EQ(rules(sheet_of({text_at({50'000, 50'000},
                                    "1\u2044"
                                    "2")})),
            Rules{LegibilityRule::NoGlyph});
}

}  // namespace
}  // namespace stringcourse::paper
