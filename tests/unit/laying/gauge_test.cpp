#include "laying/gauge.hpp"

#include <gtest/gtest.h>

#include <algorithm>

#include "laying/closure.hpp"

namespace stringcourse::laying {
namespace {

const Length kSixteenth = Length::sixteenths(1);

BedsWanted beds(int courses, Length target) {
  return {Length(), target, std::vector<Length>(static_cast<std::size_t>(courses), Length::sixteenths(122)), Length::sixteenths(6), Length::sixteenths(2), kSixteenth};
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
  return {{kSixteenth * a, kSixteenth * b, kSixteenth * c, kSixteenth * d}, kSixteenth * bed, kSixteenth * 4, kSixteenth};
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

Gap gap(int sixteenths) {
  return {kSixteenth * sixteenths, kSixteenth * 250, kSixteenth * 122, kSixteenth * 6, kSixteenth * 4, kSixteenth * 8, kSixteenth, kSixteenth * 58};
}

TEST(Closure, AWholeOrHalfUnitClosesWhereEqualJointsLetItIn) {
  for (const int width : {258, 262, 266}) {
    const auto found = closure_of(gap(width));
    ASSERT_TRUE(found) << width;
    EXPECT_EQ(found->piece, Closure::Piece::Whole);
    EXPECT_EQ(found->length + 2 * found->joint, kSixteenth * width);
  }
  EXPECT_EQ(closure_of(gap(134))->piece, Closure::Piece::Half);
}

TEST(Closure, ElseACutWithEqualJointsFillsTheGapExactlyToANanometre) {
  for (int width = 70; width <= 257; ++width) {
    const auto found = closure_of(gap(width));
    if (width >= 130 && width <= 138) continue;  // halves
    ASSERT_TRUE(found) << width;
    EXPECT_EQ(found->piece, Closure::Piece::Cut);
    EXPECT_EQ(found->length, kSixteenth * (width - 12));
    EXPECT_EQ(found->joint, kSixteenth * 6);
  }
  EXPECT_FALSE(closure_of(gap(69)));  // the piece would be shorter than the least
}

TEST(Closure, OfMoreThanAUnitTheCutIsNextToLastAndAWholeUnitCloses) {
  const auto found = closure_of(gap(400));
  ASSERT_TRUE(found);
  EXPECT_TRUE(found->next_to_last);
  EXPECT_EQ(found->length, kSixteenth * 250);
  EXPECT_EQ(found->cut_length, kSixteenth * 132);  // 400 less 250 less three joints
  EXPECT_EQ(found->cut_length + found->length + 3 * found->joint, kSixteenth * 400);
  // 32/16 would be left: too short to stand. Two cuts of half of 300 less three joints stand.
  const auto two = closure_of(gap(300));
  ASSERT_TRUE(two);
  EXPECT_EQ(two->piece, Closure::Piece::TwoCuts);
  EXPECT_EQ(two->length, kSixteenth * 141);
  EXPECT_EQ(two->cut_length, kSixteenth * 141);
  EXPECT_EQ(two->length + two->cut_length + 3 * two->joint, kSixteenth * 300);
}

}  // namespace
}  // namespace stringcourse::laying
