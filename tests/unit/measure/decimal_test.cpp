#include "measure/decimal.hpp"

#include <gtest/gtest.h>

namespace stringcourse {
namespace {

TEST(Decimal, IsItsDigitsItsScaleAndItsUnit) {
  const auto found = read_decimal("10.30  MPa ", 6, 3);
  ASSERT_TRUE(found.has_value());
  EXPECT_EQ(found->digits, 1030);
  EXPECT_EQ(found->scale, 100);
  EXPECT_EQ(found->unit, "MPa");
  EXPECT_EQ(read_decimal("7", 6, 3)->unit, "");
  EXPECT_EQ(read_decimal(".5 lb", 6, 3)->scale, 10);
}

TEST(Decimal, HasNoMoreDigitsThanAreAskedFor) {
  EXPECT_TRUE(read_decimal("123456.789 N", 6, 3).has_value());
  for (const char* text : {"1234567 N", "1.2345 N", "", ".", "N", "-1 N", "+1 N", "e5"})
    EXPECT_FALSE(read_decimal(text, 6, 3).has_value()) << text;
}

/// What stands behind a second point is no number, but the unit, which no reader knows.
TEST(Decimal, EndsAtWhatIsNoDigit) {
  EXPECT_EQ(read_decimal("1.2.3 N", 6, 3)->unit, ".3 N");
  EXPECT_EQ(read_decimal("1,5 N", 6, 3)->unit, ",5 N");
}

}  // namespace
}  // namespace stringcourse
