// Exact lengths: the identities that everything else stands on.
#include <gtest/gtest.h>

#include "measure/length.hpp"

namespace stringcourse {
namespace {

// 1 in = 25.4 mm by definition (international inch).
static_assert(Length::inches(1) == Length::nanometres(25'400'000));
static_assert(Length::feet(1) == 12 * Length::inches(1));
static_assert(16 * Length::sixteenths(1) == Length::inches(1));
static_assert(64 * Length::sixty_fourths(1) == Length::inches(1));
static_assert(Length::millimetres(254) == Length::inches(10));
static_assert(kLongest == Length::millimetres(10'000'000));

TEST(Length, whole_multiples_round_towards_minus_infinity) {
  const Length step = Length::nanometres(10);
  EXPECT_EQ(Length::nanometres(29).whole_multiples(step), 2);
  EXPECT_EQ(Length::nanometres(-1).whole_multiples(step), -1);
  EXPECT_EQ(Length::nanometres(-10).whole_multiples(step), -1);
  EXPECT_EQ(Length::nanometres(-11).whole_multiples(step), -2);
}

TEST(Length, a_tie_rounds_up_on_either_side_of_nought) {
  const Length step = Length::nanometres(10);
  EXPECT_EQ(rounded_to(Length::nanometres(15), step), Length::nanometres(20));
  EXPECT_EQ(rounded_to(Length::nanometres(14), step), Length::nanometres(10));
  EXPECT_EQ(rounded_to(Length::nanometres(-15), step), Length::nanometres(-10));
  EXPECT_EQ(rounded_to(Length::nanometres(-16), step), Length::nanometres(-20));
}

TEST(ExactPosition, fractions_compare_by_value_and_round_to_the_nearest_nanometre) {
  const ExactPosition third{1, 3};
  const ExactPosition two_sixths{2, 6};
  const ExactPosition half{1, 2};
  const ExactPosition minus_half{-1, 2};
  EXPECT_EQ(third, two_sixths);
  EXPECT_LT(third, half);
  EXPECT_EQ(third.nearest_nanometre(), Length());
  EXPECT_EQ(half.nearest_nanometre(), Length::nanometres(1));
  EXPECT_EQ(minus_half.nearest_nanometre(), Length());
  EXPECT_EQ((ExactPosition{-5, 3}).nearest_nanometre(), Length::nanometres(-2));
}

}  // namespace
}  // namespace stringcourse
