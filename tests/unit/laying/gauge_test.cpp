#include "laying/gauge.hpp"

#include <gtest/gtest.h>

#include <algorithm>

namespace stringcourse::laying {
namespace {

const Length kSixteenth = Length::sixteenths(1);

BedsWanted beds(int courses, Length target) {
  return {Length(),
          target,
          std::vector<Length>(static_cast<std::size_t>(courses), Length::sixteenths(122)),
          Length::sixteenths(6),
          Length::sixteenths(2),
          kSixteenth};
}

TEST(Gauge, ElevenBedsTakeAnInchAndThreeEighthsEitherWayAndNoMore) {
  // SOURCE: derived in the trade notes: 11 beds of +-1/8 in: +-1 3/8 in.
  for (const int off : {-22, -7, 0, 1, 13, 22}) {
    const auto found = equal_beds(beds(11, Length::sixteenths(11 * 128 + off)));
    ASSERT_TRUE(found) << off;
    Length top;
    for (const Length bed : found->beds) {
      top = top + bed + Length::sixteenths(122);
      EXPECT_GE(bed, Length::sixteenths(4));
      EXPECT_LE(bed, Length::sixteenths(8));
    }
    EXPECT_EQ(top + found->left, Length::sixteenths(11 * 128 + off));
    EXPECT_EQ(found->left, Length());
  }
  EXPECT_FALSE(equal_beds(beds(11, Length::sixteenths(11 * 128 + 23))));
  EXPECT_FALSE(equal_beds(beds(11, Length::sixteenths(11 * 128 - 23))));
}

TEST(Gauge, BedsDifferByAStepAtMost) {
  const auto found = equal_beds(beds(5, Length::sixteenths(5 * 128 + 3)));
  ASSERT_TRUE(found);
  const auto [least, most] = std::minmax_element(found->beds.begin(), found->beds.end());
  EXPECT_EQ(*most - *least, kSixteenth);
}

UnitReadings corners(int a, int b, int c, int d, int bed) {
  return {
      {kSixteenth * a, kSixteenth * b, kSixteenth * c, kSixteenth * d}, kSixteenth * bed, kSixteenth * 4, kSixteenth};
}

TEST(OneUnit, TheHighestCornerIsTappedFirst) {
  const UnitAdvice advice = advise(corners(1, 0, 3, 2, 9));
  EXPECT_FALSE(advice.lift);
  ASSERT_EQ(advice.taps.size(), 3u);
  EXPECT_EQ(advice.taps[0].corner, UnitCorner::FarOuter);
  EXPECT_EQ(advice.taps[0].down, 3 * kSixteenth);
  EXPECT_EQ(advice.taps[1].corner, UnitCorner::FarInner);
  EXPECT_EQ(advice.taps[2].corner, UnitCorner::NearOuter);
  EXPECT_TRUE(advise(corners(0, 0, 0, 0, 6)).taps.empty());
}

TEST(OneUnit, IsNeverDrivenBelowItsLeastBedAndComesUpWhereItLiesLow) {
  EXPECT_FALSE(advise(corners(0, 0, 2, 0, 6)).lift);  // 6 less 2 is the 4 that must stay
  EXPECT_TRUE(advise(corners(0, 0, 3, 0, 6)).lift);
  EXPECT_TRUE(advise(corners(0, -1, 3, 0, 12)).lift);  // nothing is tapped up
  EXPECT_TRUE(advise(corners(0, -1, 3, 0, 12)).taps.empty());
}

}  // namespace
}  // namespace stringcourse::laying
