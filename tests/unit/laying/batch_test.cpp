#include "laying/batch.hpp"

#include <gtest/gtest.h>

#include <cmath>
#include <random>

namespace stringcourse::laying {
namespace {

constexpr Length kUnit = Length::sixteenths(250);

TEST(Batch, TenUnitsLaidDryTellTheirMeanToATenthOfTheReading) {
  const auto batch = batch_of({{}, 10, Length::sixteenths(2505)}, kUnit, Length::sixteenths(1));
  ASSERT_TRUE(batch);
  EXPECT_EQ(batch->mean, Length::nanometres(250'500 * 1'587'500LL / 1000));  // 250.5 sixteenths
  EXPECT_FALSE(batch->spread);
  EXPECT_NEAR(batch->doubt, 0.0254 / 16 / std::sqrt(3.0) / 10, 1e-12);
  EXPECT_EQ(batch->within, Verdict::Fits);
}

TEST(Batch, SinglesTellTheSpreadAndAreJudgedOneByOne) {
  // 15 5/8 in and 2/16 more or less: at the limit, so the tape cannot tell; 5/16 more does not fit.
  const Length sixteenth = Length::sixteenths(1);
  const auto batch = batch_of({{kUnit, kUnit + 2 * sixteenth, kUnit - 2 * sixteenth}, 0, {}}, kUnit, sixteenth);
  ASSERT_TRUE(batch);
  EXPECT_EQ(batch->mean, kUnit);
  EXPECT_NEAR(*batch->spread, 2 * 0.0254 / 16, 1e-12);  // sqrt((0 + 4 + 4) / 2) sixteenths
  EXPECT_EQ(batch->within, Verdict::CannotTell);
  EXPECT_EQ(batch_of({{kUnit, kUnit + 5 * sixteenth}, 0, {}}, kUnit, sixteenth)->within, Verdict::DoesNotFit);
  EXPECT_FALSE(batch_of({}, kUnit, sixteenth));
}

TEST(Batch, TheJointClosesTheRunToLessThanHalfAStepAJoint) {
  std::mt19937 dice(3);
  const Length step = Length::sixteenths(1);
  int closed = 0;
  for (int round = 0; round < 2000; ++round) {
    const int units = 3 + static_cast<int>(dice() % 20), joints = units - 1 + static_cast<int>(dice() % 3);
    const Length mean = kUnit + Length::nanometres(static_cast<std::int64_t>(dice() % 4'000'000) - 2'000'000);
    const Length run = kUnit * units + Length::sixteenths(6) * joints;
    const auto closing = closing_joint(run, units, mean, joints, step, Length::sixteenths(4), Length::sixteenths(8));
    if (!closing) continue;
    ++closed;
    EXPECT_EQ(mean * units + closing->joint * joints + closing->left, run);  // conservation
    EXPECT_LE(2 * closing->left, step * joints);
    EXPECT_LE(-2 * closing->left, step * joints);
  }
  EXPECT_GT(closed, 1000);
  // SOURCE: trade practice: "3/8 full: 10 block = 160 in; yours: use 7/16": ten units 1/16 short each.
  const auto seven =
      closing_joint(Length::inches(160), 10, kUnit - step, 10, step, Length::sixteenths(4), Length::sixteenths(8));
  ASSERT_TRUE(seven);
  EXPECT_EQ(seven->joint, Length::sixteenths(7));
  EXPECT_EQ(seven->left, Length());
}

TEST(Bias, LearnsAsTheConjugateNormalDoes) {
  // Posterior of one constant after m bays of k units: precision 1/v0 + m k^2 / r, mean (k sum / r) / precision.
  const Noise noise{0.0017, 0.0005};
  const double r = 3 * noise.unit_and_joint * noise.unit_and_joint + 2 * noise.mark * noise.mark;
  Bias bias = unknown_bias();
  const double prior = bias.variance;
  double sum = 0;
  const double changes[] = {0.002, 0.0031, -0.0004, 0.0026};
  int bays = 0;
  for (const double change : changes) {
    bias = learned(bias, 3, change, noise);
    sum += change, ++bays;
    const double precision = 1 / prior + bays * 9 / r;
    EXPECT_NEAR(bias.variance, 1 / precision, 1e-18);
    EXPECT_NEAR(bias.mean, 3 * sum / r / precision, 1e-12);
  }
}

TEST(Bias, OfABatchThatRunsLongIsFoundWithTheVarianceThatItClaims) {
  // 20,000 walls of 8 bays; true bias 1/32 in. The filter shrinks towards 0 by exactly variance / prior (theory); its
  // own scatter about that is within 4 standard errors (4 / sqrt(2 n)) of what theory says.
  std::mt19937 dice(11);
  std::normal_distribution<double> unit(0, 1);
  const Noise noise{0.0017, 0.0005};
  const double truth = 0.0254 / 32, prior = unknown_bias().variance;
  const int walls = 20'000;
  double sum = 0, squares = 0, variance = 0;
  for (int wall = 0; wall < walls; ++wall) {
    Bias bias = unknown_bias();
    for (int bay = 0; bay < 8; ++bay) {
      // Both marks of a bay are read anew: independent, as the filter takes them.
      const double change =
          3 * truth + std::sqrt(3.0) * noise.unit_and_joint * unit(dice) + std::sqrt(2.0) * noise.mark * unit(dice);
      bias = learned(bias, 3, change, noise);
    }
    variance = bias.variance;
    sum += bias.mean, squares += bias.mean * bias.mean;
  }
  const double share = 1 - variance / prior;  // what the readings weigh
  const double mean = sum / walls, scatter = squares / walls - mean * mean;
  const double r = 3 * noise.unit_and_joint * noise.unit_and_joint + 2 * noise.mark * noise.mark;
  const double expected = share * share * r / (9 * 8);
  EXPECT_NEAR(mean, share * truth, 4 * std::sqrt(expected / walls));
  EXPECT_NEAR(scatter / expected, 1, 4 * std::sqrt(2.0 / walls));
}

TEST(Bias, IsCorrectedAheadOnlyOnceItIsSure) {
  const Length step = Length::sixteenths(1);
  EXPECT_EQ(corrected_ahead({0.0008, 0.0005 * 0.0005}, 3, step), Length());         // 1.6 sigma
  EXPECT_EQ(corrected_ahead({0.0254 / 32, 1e-8}, 6, step), Length::sixteenths(3));  // 6/32
  EXPECT_EQ(corrected_ahead({-0.0254 / 32, 1e-8}, 6, step), Length::sixteenths(-3));
}

}  // namespace
}  // namespace stringcourse::laying
