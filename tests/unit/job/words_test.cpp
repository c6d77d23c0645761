#include "job/words.hpp"

#include <array>

#include "gtest/gtest.h"

namespace stringcourse::test {
namespace {

TEST(Words, CharactersAreCodePoints) {
  EXPECT_EQ(count_characters("a\u00E9\U0001F9F1"), 3U);  // 1 + 2 + 4 bytes
}

TEST(Words, EditDistanceIsThatOfThePublishedExamples) {
  EXPECT_EQ(edit_distance("kitten", "sitting"), 3U);   // the usual textbook pair
  EXPECT_EQ(edit_distance("saturday", "sunday"), 3U);  // likewise
  EXPECT_EQ(edit_distance("", "abc"), 3U);
  EXPECT_EQ(edit_distance("abc", "abc"), 0U);
}

TEST(Words, TheNearestNameIsOfferedOnlyWhenItIsNear) {
  constexpr std::array<std::string_view, 3> kKnown{"on", "name", "sill_course"};
  EXPECT_EQ(nearest_name("naem", kKnown), "name");  // two changes of four letters
  EXPECT_EQ(nearest_name("sillcourse", kKnown), "sill_course");
  EXPECT_EQ(nearest_name("xy", kKnown), "");  // two changes would be the whole word
  EXPECT_EQ(nearest_name("sill", kKnown), "");
}

TEST(Words, QuotingShowsWhatCannotBeSeen) {
  EXPECT_EQ(stringcourse::quoted("a\nb\u202Ec\u00E9"), "\u201Ca\\u000Ab\\u202Ec\u00E9\u201D");
  EXPECT_EQ(stringcourse::quoted(std::string(41, 'x')), "\u201C" + std::string(40, 'x') + "...\u201D");
}

TEST(Words, PointerTokensAreEscapedAsInRfc6901) {
  EXPECT_EQ(pointer_token("a/b"), "a~1b");  // the RFC's own examples, section 5
  EXPECT_EQ(pointer_token("m~n"), "m~0n");
}

}  // namespace
}  // namespace stringcourse::test
