#include "ground/bed.hpp"

#include <gtest/gtest.h>

#include <random>

#include "ground/max_margin.hpp"

namespace stringcourse::ground {
namespace {

std::vector<Length> sixteenths(std::initializer_list<int> values) {
  std::vector<Length> heights;
  for (const int value : values) heights.push_back(Length::sixteenths(value));
  return heights;
}

TEST(Bed, LevelOfTheFootingFixtureHasNoMarginLeft) {
  // 32 x 24 ft, sixteenths at eight places: range 8/16, so the margin is exactly 0 with the top 8/16 above zero.
  const BedLevel level = best_level(sixteenths({0, 3, -2, 1, -4, 2, 4, -1}), first_bed_range(FirstCourse::Hollow));
  EXPECT_EQ(level.margin, Length());
  EXPECT_EQ(level.top, Length::sixteenths(8));
  EXPECT_EQ(level.thinnest, Length::sixteenths(4));
  EXPECT_EQ(level.thickest, Length::sixteenths(12));
  EXPECT_EQ(judged(level.margin, Length::sixteenths(1)), Verdict::CannotTell);
}

TEST(Bed, NoOtherLevelHasMoreMargin) {
  std::minstd_rand dice(2);
  for (int round = 0; round < 500; ++round) {
    std::vector<Length> heights;
    for (int k = 0; k < 6; ++k) heights.push_back(Length::nanometres(static_cast<std::int64_t>(dice() % 30'000'000)));
    const BedRange plain = first_bed_range(FirstCourse::Hollow);
    const BedLevel best = best_level(heights, plain);
    const auto margin_at = [&](Length top) {
      Length least = Length::feet(1);
      for (const Length height : heights)
        least = std::min({least, top - height - plain.least, plain.most - (top - height)});
      return least;
    };
    EXPECT_EQ(margin_at(best.top), best.margin);
    for (int step = -50; step <= 50; ++step)
      EXPECT_LE(margin_at(best.top + Length::nanometres(step * 100'001)), best.margin);
  }
}

TEST(Bed, TiltedTopOfTheFootingFixtureAsTwoSolversGiveIt) {
  // CBC and GLPK: greatest distance 2.6/16 in, plane 1.8 - .0875 x - .0166667 y, so margin 1.4/16 of the range 4 to 12.
  const std::vector<PlanHeight> heights{{0, 0, 0},    {16, 0, 3},  {32, 0, -2}, {32, 12, 1},
                                        {32, 24, -4}, {16, 24, 2}, {0, 24, 4},  {0, 12, -1}};
  const auto plane = best_plane(heights, 4, 12, 10);
  ASSERT_TRUE(plane);
  EXPECT_NEAR(plane->margin, 1.4, 1e-9);
  EXPECT_NEAR(plane->top, 8 + 1.8, 1e-9);
  EXPECT_NEAR(plane->along_x, -.0875, 1e-9);
  EXPECT_NEAR(plane->along_y, -.0166666667, 1e-9);
}

TEST(Bed, PublishedMinimaxFit) {
  // NAG library documentation, example e02gcc: y = K e^t + L e^-t + M. CBC and GLPK: residual .0010340367.
  const double t[5] = {0, .2, .4, .6, .8}, y[5] = {4.501, 4.360, 4.333, 4.418, 4.625};
  std::vector<Limit> limits;
  for (int k = 0; k < 5; ++k) {
    limits.push_back({{std::exp(t[k]), std::exp(-t[k]), 1}, 1, y[k]});
    limits.push_back({{-std::exp(t[k]), -std::exp(-t[k]), -1}, 1, -y[k]});
  }
  const auto best = best_margin(limits);
  ASSERT_TRUE(best);
  EXPECT_NEAR(-best->margin, .0010340367, 0.6e-10);
  EXPECT_NEAR(best->x[0], 1.0049, 0.6e-4);
  EXPECT_NEAR(best->x[1], 2.0149, 0.6e-4);
  EXPECT_NEAR(best->x[2], 1.4822, 0.6e-4);
}

TEST(Bed, HeightsBetweenTwoReadingsLieOnTheLineAndBeyondThemAreUnknown) {
  const std::vector<BearingHeight> readings{{0, Length::feet(0), Length::sixteenths(2)},
                                            {0, Length::feet(8), Length::sixteenths(-2)},
                                            {1, Length::feet(4), Length()}};
  EXPECT_EQ(height_at(readings, 0, Length::feet(2)), Length::sixteenths(1));
  EXPECT_EQ(height_at(readings, 0, Length::feet(8)), Length::sixteenths(-2));
  EXPECT_FALSE(height_at(readings, 0, Length::feet(9)));
  EXPECT_FALSE(height_at(readings, 1, Length::feet(3)));
}

TEST(Bed, VerdictsHaveThreeAnswers) {
  const Length doubt = Length::sixteenths(1);
  EXPECT_EQ(judged(Length::sixteenths(1), doubt), Verdict::Fits);
  EXPECT_EQ(judged(Length::nanometres(1'587'499), doubt), Verdict::CannotTell);
  EXPECT_EQ(judged(Length(), doubt), Verdict::CannotTell);
  EXPECT_EQ(judged(Length::sixteenths(-1), doubt), Verdict::DoesNotFit);
  EXPECT_EQ(judged(Length(), Length()), Verdict::Fits);
}

}  // namespace
}  // namespace stringcourse::ground
