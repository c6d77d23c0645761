#include "paper/pad.hpp"

#include <gtest/gtest.h>

#include "paper/scale.hpp"

namespace stringcourse::paper {
namespace {

// A word wider than its line goes on over further lines: every character of it, whole and in order.
TEST(Wrapping, AWordThatIsTooWideIsBrokenNotCut) {
  const Lettering lettering{kText};
  const std::string word = "ééééééééé-abcdefghijklmnop";
  for (Micrometres width = 6'000; width < 40'000; width += 500) {  // wider than its widest letter
    std::string all;
    for (const std::string& line : wrapped(word, width, lettering)) {
      EXPECT_TRUE(fits(line, width, lettering)) << line;
      EXPECT_NE(static_cast<unsigned char>(line.front()) & 0xC0, 0x80) << "begins inside a character";
      all += line;
    }
    EXPECT_EQ(all, word);
  }
}

TEST(Wrapping, ANumberTooWideForItsLineIsBrokenAtItsSpace) {
  const auto lines = wrapped("1 13/16\"", 18'000, {kText});
  EXPECT_EQ(lines, (std::vector<std::string>{"1", "13/16\""}));
}

TEST(Setting, TakesTheLargestHeightAtWhichTheWholeTextFits) {
  const std::string text = "a name of five words";
  for (Micrometres width = 3'000; width < 60'000; width += 700) {
    for (Micrometres height = 2'000; height < 25'000; height += 1'100) {
      const auto setting = set_in(text, {width, height}, {}, kLargeHeights);
      if (!setting) continue;
      std::string all;
      for (const std::string& line : setting->lines) {
        EXPECT_LE(text_width(line, setting->lettering.height, Weight::Regular), width);
        all += (all.empty() ? "" : " ") + line;
      }
      EXPECT_EQ(all, text);
      EXPECT_LE(setting->height, height);
      EXPECT_EQ(setting->height, setting->lettering.height + static_cast<Micrometres>(setting->lines.size() - 1) *
                                                                 line_pitch(setting->lettering.height));
    }
  }
  EXPECT_FALSE(set_in("unbreakable", {5'000, 50'000}, {}, kLargeHeights).has_value());
  EXPECT_EQ(set_in("W1", {50'000, 50'000}, {}, kLargeHeights)->lettering.height, kLargeText);
}

TEST(Wrapping, KeepsEveryWordInOrderAndEveryLineInItsWidth) {
  const Lettering lettering{kText};
  const std::string text = "one two three four five six seven eight nine ten";
  std::string joined;
  for (const std::string& line : wrapped(text, 25'000, lettering)) {
    EXPECT_TRUE(fits(line, 25'000, lettering));
    joined += (joined.empty() ? "" : " ") + line;
  }
  EXPECT_EQ(joined, text);
}

TEST(Wrapping, NeverPartsAFractionFromItsNumber) {
  // From where the widest number fits a line of its own: in a narrower one it is broken, never cut.
  for (Micrometres width = text_width("7'-4 3/8\"", kText, Weight::Regular); width < 60'000; width += 1'000) {
    for (const std::string& line : wrapped("3'-4 3/8\" x 7'-4 3/8\" and 12 7/16\"", width, {kText})) {
      EXPECT_FALSE(line.starts_with("3/8") || line.starts_with("7/16")) << width;
    }
  }
}

TEST(Spreading, LeavesFreeLabelsWhereTheyWantToStand) {
  const std::vector<Micrometres> wanted{10'000, 30'000, 50'000};
  EXPECT_EQ(spread(wanted, 15'000, 0, 60'000), wanted);
}

// Two at one place part by the pitch, half of it each way; at the border both move inwards.
TEST(Spreading, PartsLabelsThatTouch) {
  EXPECT_EQ(spread({20'000, 20'000}, 10'000, 0, 60'000), (std::vector<Micrometres>{15'000, 25'000}));
  EXPECT_EQ(spread({0, 0}, 10'000, 0, 60'000), (std::vector<Micrometres>{0, 10'000}));
  EXPECT_EQ(spread({60'000, 60'000}, 10'000, 0, 60'000), (std::vector<Micrometres>{50'000, 60'000}));
}

TEST(Spreading, KeepsThePitchAndTheOrder) {
  std::vector<Micrometres> wanted;
  for (int index = 0; index < 20; ++index) wanted.push_back(index * index * 400);
  const auto places = spread(wanted, 8'000, 0, 200'000);
  for (std::size_t index = 1; index < places.size(); ++index) EXPECT_GE(places[index] - places[index - 1], 8'000 - 1);
}

TEST(Scales, AreExactToTheMicrometre) {
  EXPECT_EQ(Scale{20}.paper(Length::inches(16)), 20'320);  // 406.4 mm / 20
  EXPECT_EQ(Scale{50}.paper(Length::millimetres(-400)), -8'000);
  EXPECT_EQ(Scale{20}.shown(20'320), Length::inches(16));
}

}  // namespace
}  // namespace stringcourse::paper
