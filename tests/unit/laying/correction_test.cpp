#include "laying/correction.hpp"

#include <gtest/gtest.h>

#include <functional>
#include <random>

namespace stringcourse::laying {
namespace {

/// The least sum of squared distances without windows: q = floor(slack / count), and slack - count q joints of q + 1:
/// even spreading is best.
std::int64_t least_squares_sum(int count, std::int64_t slack) {
  const std::int64_t q = slack >= 0 ? slack / count : -((-slack + count - 1) / count), r = slack - count * q;
  return (count - r) * q * q + r * (q + 1) * (q + 1);
}

/// Every choice of widths, one after the other.
void each_choice(int count, const Steps& steps, const std::function<void(const std::vector<std::int64_t>&)>& take) {
  std::vector<std::int64_t> widths(static_cast<std::size_t>(count), steps.least);
  for (;;) {
    take(widths);
    int k = 0;
    while (k < count && ++widths[static_cast<std::size_t>(k)] > steps.most)
      widths[static_cast<std::size_t>(k++)] = steps.least;
    if (k == count) return;
  }
}

std::int64_t squares(const std::vector<std::int64_t>& widths, std::int64_t joint) {
  std::int64_t sum = 0;
  for (const std::int64_t width : widths) sum += (width - joint) * (width - joint);
  return sum;
}

bool keeps(const std::vector<std::int64_t>& widths, std::int64_t past, const Steps& steps,
           const std::vector<Window>& windows) {
  std::int64_t place = past;
  for (std::size_t k = 0; k <= widths.size(); ++k) {
    for (const Window& window : windows) {
      if (window.joints == static_cast<int>(k) && (place < window.least || place > window.most)) return false;
    }
    if (k < widths.size()) place += widths[k] - steps.joint;
  }
  return place == 0;
}

TEST(EvenJoints, AreThoseOfLeastSquaresByBruteForceWithAndWithoutBars) {
  std::mt19937 dice(5);
  int possible = 0, impossible = 0, bound = 0;
  for (int round = 0; round < 600; ++round) {
    const int count = 1 + static_cast<int>(dice() % 5);
    const Steps steps{6, 3 + static_cast<std::int64_t>(dice() % 3), 7 + static_cast<std::int64_t>(dice() % 3)};
    const std::int64_t past = static_cast<std::int64_t>(dice() % 17) - 8;
    std::vector<Window> windows;
    if (round % 2 == 1) {
      const std::int64_t low = static_cast<std::int64_t>(dice() % 9) - 6;
      windows.push_back({1 + static_cast<int>(dice() % static_cast<unsigned>(count)), low,
                         low + static_cast<std::int64_t>(dice() % 6)});
    }
    std::int64_t best = -1;
    each_choice(count, steps, [&](const std::vector<std::int64_t>& widths) {
      if (keeps(widths, past, steps, windows) && (best < 0 || squares(widths, 6) < best)) best = squares(widths, 6);
    });
    const auto found = even_joints(count, past, steps, windows);
    ASSERT_EQ(found.has_value(), best >= 0) << "round " << round;
    if (!found) {
      ++impossible;
      continue;
    }
    ++possible;
    EXPECT_TRUE(keeps(*found, past, steps, windows));
    EXPECT_EQ(squares(*found, 6), best);
    // Without windows and inside the range it is the closed form; a window can only make it dearer.
    if (windows.empty()) EXPECT_EQ(best, least_squares_sum(count, -past)) << count << " " << past;
    bound += !windows.empty() && best > least_squares_sum(count, -past);
  }
  EXPECT_GT(possible, 200);
  EXPECT_GT(impossible, 100);
  EXPECT_GT(bound, 10);
}

Wanted past_by(int sixteenths, std::vector<int> bays) {
  return {Length::sixteenths(sixteenths), std::move(bays), {}, false, Length::sixteenths(250)};
}

const JointRules kRules = joint_rules(Tape::Inches, Length::sixteenths(6));

TEST(Correction, ThreeSixteenthsPastIsThreeJointsASixteenthNarrower) {
  const Correction found = corrected(past_by(3, {3, 3, 3}), kRules);
  EXPECT_EQ(found.what, Correction::What::Joints);
  EXPECT_EQ(found.bays, 1);
  EXPECT_EQ(found.joints, std::vector<Length>(3, Length::sixteenths(5)));
  EXPECT_FALSE(found.outside_working);
}

TEST(Correction, ABayOfThreeTakesWhatItsWorkingRangeLeavesAndNoMore) {
  // 1/4 to 1/2 in about 3/8: 2/16 a joint either way, so 6/16 in a bay. By the tolerance -0.75 and +1.125 in (derived:
  // 3 x 1/4, 3 x 3/8 in).
  for (const int past : {6, -6}) EXPECT_EQ(corrected(past_by(past, {3, 3}), kRules).bays, 1);
  for (const int past : {7, -7}) EXPECT_EQ(corrected(past_by(past, {3, 3}), kRules).bays, 2);
  Wanted far = past_by(12, {3});
  far.beyond_working = true;
  const Correction most = corrected(far, kRules);
  EXPECT_EQ(most.what, Correction::What::Joints);
  EXPECT_TRUE(most.outside_working);
  EXPECT_EQ(most.joints, std::vector<Length>(3, Length::sixteenths(2)));
  far.past = Length::sixteenths(-18);
  EXPECT_EQ(corrected(far, kRules).joints, std::vector<Length>(3, Length::sixteenths(12)));
  far.past = Length::sixteenths(-19);
  EXPECT_NE(corrected(far, kRules).what, Correction::What::Joints);
}

TEST(Correction, WherePastNoJointsHelpTheLeastCutDoesAndWhereShortNothing) {
  const Correction cut = corrected(past_by(10, {3}), kRules);
  EXPECT_EQ(cut.what, Correction::What::SawCut);
  EXPECT_EQ(cut.cut, Length::sixteenths(4));  // 10 less the 6 of three joints
  EXPECT_EQ(corrected(past_by(-10, {3}), kRules).what, Correction::What::CannotBe);
}

TEST(Correction, ABarStaysInItsCellWhereAnyWidthsKeepItAndIsNamedWhereNone) {
  // 4/16 past, three joints: evenly 5, 5, 4 or so. The unit after the first joint holds a bar with 2/16 of room past
  // it.
  Wanted wanted = past_by(4, {3});
  wanted.bars = {{1, Length::sixteenths(2), Length::sixteenths(8)}};
  const Correction kept = corrected(wanted, kRules);
  ASSERT_EQ(kept.what, Correction::What::Joints);
  EXPECT_TRUE(kept.bars_lost.empty());
  EXPECT_EQ(kept.joints.front(), Length::sixteenths(4));  // 4 past less 2 is the 2 that the bar allows
  wanted.bars[0].past_most = Length::sixteenths(1);       // 3/16 in one joint is more than the range
  const Correction cut = corrected(wanted, kRules);
  EXPECT_EQ(cut.what, Correction::What::SawCut);
  EXPECT_EQ(cut.cut, Length::sixteenths(1));
  EXPECT_TRUE(cut.bars_lost.empty());
  // A bar that would have to stand 1/16 in short of where a course 4/16 in past can be after one joint, nothing to cut
  // and nothing to lay again: no widths keep it.
  wanted.bars[0] = {1, Length::sixteenths(-7), Length::sixteenths(8)};
  const Correction lost = corrected(wanted, kRules);
  EXPECT_EQ(lost.bars_lost, std::vector<int>{0});
  EXPECT_EQ(lost.what, Correction::What::Joints);
}

TEST(Correction, MillimetresGoByWholeMillimetres) {
  const JointRules rules = joint_rules(Tape::Millimetres, Length::millimetres(10));
  const Correction found = corrected({Length::millimetres(5), {3, 3}, {}, false, Length::millimetres(390)}, rules);
  EXPECT_EQ(found.joints,
            (std::vector<Length>{Length::millimetres(8), Length::millimetres(8), Length::millimetres(9)}));
  EXPECT_EQ(corrected({Length::millimetres(10), {3, 3}, {}, false, Length::millimetres(390)}, rules).bays, 2);
}

}  // namespace
}  // namespace stringcourse::laying
