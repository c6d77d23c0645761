#include <gtest/gtest.h>

#include "sheet/context.hpp"
#include "words/sheet_words.hpp"

namespace stringcourse::sheet {
namespace {

TEST(Words, ValuesAreNeverReadAsPatterns) {
  EXPECT_EQ(words::fill_in("{0} and {1}", {"{1}", "b"}), "{1} and b");
  EXPECT_EQ(words::fill_in("{7} stays, { too", {"a"}), "{7} stays, { too");
}

TEST(Ranges, JoinThreeOrMoreInARow) {
  EXPECT_EQ(ranges_text({1, 3, 5, 6, 7, 8}), "1, 3, 5-8");
  EXPECT_EQ(ranges_text({1, 2}), "1, 2");
  EXPECT_EQ(ranges_text({}), "");
}

}  // namespace
}  // namespace stringcourse::sheet
