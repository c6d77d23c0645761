#include "laying/verdict.hpp"

#include <gtest/gtest.h>

#include <cmath>

namespace stringcourse::laying {
namespace {

TEST(Verdict, ConformanceIsThatOfThePublishedCases) {
  // SOURCE: JCGM 106:2012 7.4: y 13.6, u 1.8, limits 12.5 and 16.3: 0.6626. Inputs of the others from memory: limit
  // -5.40, y -5.47, u 0.05: 0.9192; lower limit 490, y 509.7, u 8.6: 0.9890. Four printed digits: 5e-5.
  EXPECT_NEAR(conformance(13.6, {12.5, 16.3}, 1.8), 0.6626, 5e-5);
  EXPECT_NEAR(conformance(-5.47, {std::nullopt, -5.40}, 0.05), 0.9192, 5e-5);
  EXPECT_NEAR(conformance(509.7, {490, std::nullopt}, 8.6), 0.9890, 5e-5);
}

TEST(Verdict, ConformanceIsTheNormalIntegralOfTheMathematicsLibrary) {
  for (double z = -9; z <= 9; z += 0.37) {
    EXPECT_NEAR(conformance(0, {std::nullopt, z}, 1), 0.5 * std::erfc(-z / std::sqrt(2.0)), 2e-12) << z;
  }
}

TEST(Verdict, DoubtsAddUpAsInTheGumsEndGauge) {
  // SOURCE: GUM H.1: 25, 16.599, 6.7, 5.8, 3.9 and 2.887 nm make 31.66, given as 32.
  EXPECT_NEAR(together({25, 16.599, 6.7, 5.8, 3.9, 2.887}), 31.66, 5e-3);
}

TEST(Verdict, ATenMetreSetOutIsToldAsComputedByHand) {
  // By hand: terms 1.328, 0.115, 0.289, 0.664, 1.155, 0.866 mm: uc 2.094, U 4.19; +-10 mm.
  const double u = together({1.328, 0.115, 0.289, 0.664, 1.155, 0.866});
  EXPECT_NEAR(u, 2.094, 5e-4);
  EXPECT_NEAR(2 * u, 4.19, 5e-3);
  // The first term is the permitted error of a class II tape over 10 m: 0.3 + 0.2 x 10 = 2.3 mm, over sqrt 3.
  EXPECT_NEAR(1e3 * ground::standard_doubt(ground::permitted_error(TapeMake::ClassTwo, Length::millimetres(10'000))),
              1.328, 5e-4);
  const Limits limits{9990, 10010};
  for (const double fits : {10000.0, 10004.0, 10005.0}) EXPECT_EQ(judged(fits, limits, 2 * u), Verdict::Fits) << fits;
  for (const double unsure : {10007.0, 10010.0, 10013.0})
    EXPECT_EQ(judged(unsure, limits, 2 * u), Verdict::CannotTell) << unsure;
  EXPECT_EQ(judged(10016, limits, 2 * u), Verdict::DoesNotFit);
}

TEST(Verdict, AtTheGuardBandsEdgeItDecides) {
  const Limits limits{0, 10};
  EXPECT_EQ(judged(8, limits, 2), Verdict::Fits);
  EXPECT_EQ(judged(std::nextafter(8.0, 9.0), limits, 2), Verdict::CannotTell);
  EXPECT_EQ(judged(std::nextafter(12.0, 11.0), limits, 2), Verdict::CannotTell);
  EXPECT_EQ(judged(12, limits, 2), Verdict::DoesNotFit);
  EXPECT_EQ(judged(10, limits, 0), Verdict::Fits);  // a limit itself is kept
}

TEST(Verdict, WallTolerancesGrowWithTheWallUpToTheirLimit) {
  // SOURCE: TMS 602 (second-hand): bed level and plumb 1/4 in in 10 ft, 1/2 in at most; UK practice: 10 mm in 5 m, 15
  // mm.
  const WallRules us = wall_rules(WallRuleSet::Us);
  EXPECT_EQ(allowed(tolerance_of(us.bed_level), Length::feet(5)), Length::sixteenths(2));
  EXPECT_EQ(allowed(tolerance_of(us.bed_level), Length::feet(10)), Length::sixteenths(4));
  EXPECT_EQ(allowed(tolerance_of(us.plumb), Length::feet(40)), Length::sixteenths(8));
  const WallRules uk = wall_rules(WallRuleSet::Uk);
  EXPECT_EQ(allowed(tolerance_of(uk.bed_level), Length::millimetres(5000)), Length::millimetres(10));
  EXPECT_EQ(allowed(tolerance_of(uk.bed_level), Length::millimetres(20'000)), Length::millimetres(15));
}

}  // namespace
}  // namespace stringcourse::laying
