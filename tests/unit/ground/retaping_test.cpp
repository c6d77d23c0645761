#include "ground/retaping.hpp"

#include <gtest/gtest.h>

#include <algorithm>

#include "nets.hpp"

namespace stringcourse::ground_test {
namespace {

std::vector<double> blundered() { return {384.0625, 287.9375, 384, 288, 481.125, 479.9375}; }

TEST(Retaping, SixReadingsTellOfABlunderButNotWhere) {
  const Net net = rectangle(384, 288, blundered());
  const auto found = suspects_of(net.points, net.readings, Datum::CornerAndSide);
  ASSERT_TRUE(found);
  EXPECT_EQ(found->suspicion, Suspicion::NotLocatable);
  for (const Residual& residual : found->adjusted.residuals)
    EXPECT_NEAR(std::abs(residual.standardised), 8.4059, 0.6e-4);
  ASSERT_EQ(found->tape_again.size(), 6u);
  // Residuals go with length: the diagonals first, then the 32 ft sides, then the 24 ft ones.
  EXPECT_GE(found->tape_again[0], 4);
  EXPECT_GE(found->tape_again[1], 4);
  EXPECT_EQ(std::min(found->tape_again[2], found->tape_again[3]), 0);
  EXPECT_EQ(std::max(found->tape_again[2], found->tape_again[3]), 2);
}

TEST(Retaping, EveryLineTwiceNamesTheBadReading) {
  std::vector<double> lengths = blundered();
  for (const double length : {384.0, 288.0, 383.9375, 288.0625, 480.0625, 480.0}) lengths.push_back(length);
  const Net net = rectangle(384, 288, lengths);
  const auto before = adjust(net.points, net.readings, Datum::CornerAndSide);
  ASSERT_TRUE(before);
  EXPECT_EQ(before->freedom, 7);
  EXPECT_NEAR(before->square_sum, 187.53, 0.6e-2);
  EXPECT_NEAR(std::abs(before->residuals[4].standardised), 13.60, 0.6e-2);
  EXPECT_NEAR(std::abs(before->residuals[10].standardised), 7.90, 0.6e-2);
  const auto found = suspects_of(net.points, net.readings, Datum::CornerAndSide);
  ASSERT_TRUE(found);
  EXPECT_EQ(found->suspicion, Suspicion::Located);
  EXPECT_EQ(found->wrong, std::vector<int>{4});
  EXPECT_EQ(found->adjusted.freedom, 6);
  EXPECT_NEAR(found->adjusted.square_sum, 2.600, 0.6e-3);
  EXPECT_NEAR(found->adjusted.places[1].x, 384.03625, 0.6e-5);
  EXPECT_NEAR(found->adjusted.places[2].x, 384.08311, 0.6e-5);
  EXPECT_NEAR(found->adjusted.places[2].y, 287.97250, 0.6e-5);
  EXPECT_NEAR(found->adjusted.places[3].x, .10937, 0.6e-5);
  EXPECT_NEAR(found->adjusted.places[3].y, 288.03498, 0.6e-5);
}

TEST(Retaping, GoodReadingsAreSuspectedOnceInAThousandTapings) {
  // With one degree of freedom all |w| are one and the same normal number: 0.001. 20,000 rounds: 20 expected, 4
  // standard deviations are 18.
  std::mt19937 dice(3);
  std::normal_distribution<double> error(0, 1.0 / 16);
  int suspected = 0;
  for (int round = 0; round < 20'000; ++round) {
    std::vector<double> lengths = true_lengths(384, 288);
    for (double& length : lengths) length += error(dice);
    const Net net = rectangle(384, 288, lengths);
    const auto found = suspects_of(net.points, net.readings, Datum::Free);
    ASSERT_TRUE(found);
    suspected += found->suspicion == Suspicion::None ? 0 : 1;
  }
  EXPECT_NEAR(suspected, 20, 18);
}

TEST(Retaping, AtMostFiveSecondTapingsFindTheBlunderWhereverItIs) {
  // Lines are taped again in the order told, until a second taping disagrees with the first: that first one is the
  // blunder. After five agreeing ones the sixth is left. A blunder of 2 in is 23 times the doubt of a difference, so it
  // is not missed; a right taping disagrees once in a thousand: of 600 rounds with five tapings at most, 3 are expected
  // to name a wrong line, 10 is 4 standard deviations above.
  std::mt19937 dice(5);
  std::normal_distribution<double> error(0, 1.0 / 16);
  int misled = 0;
  for (int wrong = 0; wrong < 6; ++wrong) {
    for (int round = 0; round < 100; ++round) {
      const std::vector<double> truth = true_lengths(384, 288);
      std::vector<double> lengths = truth;
      for (double& length : lengths) length += error(dice);
      lengths[static_cast<std::size_t>(wrong)] += round % 2 == 0 ? 2 : -2;
      const Net net = rectangle(384, 288, lengths);
      const auto found = suspects_of(net.points, net.readings, Datum::Free);
      ASSERT_TRUE(found);
      ASSERT_EQ(found->suspicion, Suspicion::NotLocatable);
      int tapings = 0, blunder = found->tape_again[5];
      for (const int line : found->tape_again) {
        if (tapings == 5) break;
        ++tapings;
        NetReading second = net.readings[static_cast<std::size_t>(line)];
        second.length = truth[static_cast<std::size_t>(line)] + error(dice);
        if (!tapings_agree(net.readings[static_cast<std::size_t>(line)], second)) {
          blunder = line;
          break;
        }
      }
      EXPECT_LE(tapings, 5);
      misled += blunder == wrong ? 0 : 1;
    }
  }
  EXPECT_LE(misled, 10);
}

}  // namespace
}  // namespace stringcourse::ground_test
