#include "ground/tape_network.hpp"

#include <gtest/gtest.h>

#include "nets.hpp"

namespace stringcourse::ground_test {
namespace {

constexpr double kMm = 1e-3;

/// SOURCE of N1, N1b, N2, N4: GNU Gama's test collection, inputs and printed results.
Net n1() {
  return {{{{170.71, 170.71}}, {{170.71, 270.71}}, {{100, 100}}, {{241.42, 100}}},
          {{1, 0, 100.01, .01},
           {2, 0, 100.02, .01},
           {3, 0, 100.03, .01},
           {1, 2, 184.785, .01},
           {2, 3, 141.44, .01},
           {1, 3, 184.805, .01}}};
}

TEST(TapeNetwork, FreeQuadrilateralOfThePublishedCollectionComesOutToItsLastDigit) {
  const Net net = n1();
  const auto found = adjust(net.points, net.readings, Datum::Free);
  ASSERT_TRUE(found);
  // Seven decimals are printed: half of the last.
  const double places[4][2] = {
      {170.7122664, 170.7185298}, {170.7032034, 270.7213322}, {99.9912116, 99.9971400}, {241.4333185, 99.9829980}};
  for (std::size_t k = 0; k < 4; ++k) {
    EXPECT_NEAR(found->places[k].x, places[k][0], 0.5e-7) << k;
    EXPECT_NEAR(found->places[k].y, places[k][1], 0.5e-7) << k;
  }
  EXPECT_EQ(found->freedom, 1);
  EXPECT_NEAR(found->s0 * 10, 11.763625, 0.5e-6);  // millimetres, sigma 10
  EXPECT_NEAR(found->square_sum * 100, 138.38288, 0.5e-5);
  EXPECT_NEAR(found->s0_least, .031, 0.5e-3);
  EXPECT_NEAR(found->s0_most, 2.241, 0.5e-3);
  EXPECT_EQ(found->agreement, Agreement::Agree);
  // Printed with s0 in them, three decimals of a millimetre.
  const double doubts[4][2] = {{10.792, 6.818}, {8.097, 5.513}, {6.405, 7.055}, {6.405, 7.055}};
  for (std::size_t k = 0; k < 4; ++k) {
    EXPECT_NEAR(std::sqrt(found->clouds[k].xx) * found->s0 / kMm, doubts[k][0], 0.6e-3) << k;
    EXPECT_NEAR(std::sqrt(found->clouds[k].yy) * found->s0 / kMm, doubts[k][1], 0.6e-3) << k;
  }
  const double residuals[6] = {-7.197, -5.088, -5.090, 3.895, 2.108, 3.896};
  const double shares[6] = {.3743, .1871, .1872, .1096, .0321, .1097};
  for (std::size_t k = 0; k < 6; ++k) {
    EXPECT_NEAR(found->residuals[k].value / kMm, residuals[k], 0.6e-3);
    EXPECT_NEAR(found->residuals[k].redundancy, shares[k], 0.6e-4);
    EXPECT_NEAR(std::abs(found->residuals[k].standardised), 1.1764, 0.6e-4);
  }
}

TEST(TapeNetwork, ResectionFromThreeFixedPointsAsPublished) {
  Net net = n1();
  for (std::size_t k = 1; k < 4; ++k) net.points[k].fixed = true;
  net.readings.resize(3);
  const auto found = adjust(net.points, net.readings, Datum::Fixed);
  ASSERT_TRUE(found);
  EXPECT_NEAR(found->places[0].x, 170.7029, 0.5e-4);
  EXPECT_NEAR(found->places[0].y, 170.7234, 0.5e-4);
  EXPECT_NEAR(found->s0 * .01, 0.033029, 0.5e-6);
  EXPECT_NEAR(std::sqrt(found->clouds[0].xx) * found->s0 / kMm, 33.03, 0.5e-2);
  EXPECT_NEAR(std::sqrt(found->clouds[0].yy) * found->s0 / kMm, 23.35, 0.5e-2);
}

TEST(TapeNetwork, FiveDistancesFromTwoFixedPointsFarFromTheOriginAsPublished) {
  const std::vector<NetPoint> points{{{2410000, 390000}, true},
                                     {{2411820, 386881.222}, true},
                                     {{2415776.819, 391043.461}},
                                     {{2416892.670, 387603.450}}};
  const std::vector<NetReading> readings{{0, 2, 5870.302, .01},
                                         {0, 3, 7297.588, .01},
                                         {2, 3, 3616.434, .01},
                                         {2, 1, 5742.878, .01},
                                         {3, 1, 5123.760, .01}};
  const auto found = adjust(points, readings, Datum::Fixed);
  ASSERT_TRUE(found);
  EXPECT_NEAR(found->places[2].x, 2415776.904378, 0.6e-6);
  EXPECT_NEAR(found->places[2].y, 391043.294493, 0.6e-6);
  EXPECT_NEAR(found->places[3].x, 2416892.695516, 0.6e-6);
  EXPECT_NEAR(found->places[3].y, 387603.255128, 0.6e-6);
  EXPECT_NEAR(found->s0 * .01, 0.1359054, 0.5e-7);
  EXPECT_EQ(found->agreement, Agreement::TooFar);
  const double adjusted[5] = {5870.356684, 7297.508989, 3616.470751, 5742.816355, 5123.823927};
  const double shares[5] = {.1619, .3380, .0731, .2057, .2213};
  for (std::size_t k = 0; k < 5; ++k) {
    EXPECT_NEAR(readings[k].length + found->residuals[k].value, adjusted[k], 0.6e-6);
    EXPECT_NEAR(found->residuals[k].redundancy, shares[k], 0.6e-4);
  }
  const double doubts[2][2] = {{.148788, .220608}, {.103783, .270545}};
  for (std::size_t k = 0; k < 2; ++k) {
    EXPECT_NEAR(std::sqrt(found->clouds[k + 2].xx) * found->s0, doubts[k][0], 0.6e-6);
    EXPECT_NEAR(std::sqrt(found->clouds[k + 2].yy) * found->s0, doubts[k][1], 0.6e-6);
  }
}

TEST(TapeNetwork, OnePointFromFiveFixedOnesAsPublished) {
  const std::vector<NetPoint> points{{{3000, 2000}, true}, {{1000, 2000}, true}, {{3000, 2100}, true},
                                     {{1000, 2100}, true}, {{2000, 1000}, true}, {{2010, 1990}}};
  const double lengths[5] = {1000, 1000, 1005, 1005, 1000};
  std::vector<NetReading> readings;
  for (int k = 0; k < 5; ++k) readings.push_back({k, 5, lengths[k], .02});
  const auto found = adjust(points, readings, Datum::Fixed);
  ASSERT_TRUE(found);
  EXPECT_NEAR(found->places[5].x, 2000.0000, 0.5e-4);
  EXPECT_NEAR(found->places[5].y, 1999.9976, 0.5e-4);
}

TEST(TapeNetwork, SmallBuildingHungOnItsFirstCornerAndSide) {
  // 24 x 32 ft, sigma 1/16 in; worked with another program, five decimals of an inch.
  const Net net = rectangle(384, 288, {384.0625, 287.9375, 384, 288, 480.125, 479.9375});
  const auto found = adjust(net.points, net.readings, Datum::CornerAndSide);
  ASSERT_TRUE(found);
  const double places[4][2] = {{0, 0}, {384.07250, 0}, {384.18185, 287.94498}, {.17185, 288.00745}};
  const double residuals[6] = {.0100, .0075, .0100, .0075, -.0125, -.0125};
  for (std::size_t k = 0; k < 4; ++k) {
    EXPECT_NEAR(found->places[k].x, places[k][0], 0.6e-5);
    EXPECT_NEAR(found->places[k].y, places[k][1], 0.6e-5);
  }
  for (std::size_t k = 0; k < 6; ++k) {
    EXPECT_NEAR(found->residuals[k].value, residuals[k], 0.6e-4);
    EXPECT_NEAR(std::abs(found->residuals[k].standardised), .4001, 0.6e-4);
  }
  EXPECT_NEAR(found->square_sum, .1601, 0.6e-4);
  const auto free = adjust(net.points, net.readings, Datum::Free);
  ASSERT_TRUE(free);
  const double loose[4][2] = {{-.07375, -.03186}, {383.99875, .05562}, {384.0425, 288.00062}, {.0325, 287.97562}};
  for (std::size_t k = 0; k < 4; ++k) {
    EXPECT_NEAR(free->places[k].x, loose[k][0], 0.6e-5);
    EXPECT_NEAR(free->places[k].y, loose[k][1], 0.6e-5);
  }
  EXPECT_NEAR(free->square_sum, found->square_sum, 1e-9);  // the shape does not hang on what it is hung on
}

TEST(TapeNetwork, BracedRectanglesKeepTheClosedFormsOfRedundancyAndResidual) {
  // r = a^2/4d^2, b^2/4d^2 and 1/4; |w| = |W| / (2 d sigma), the same for all six; linearising leaves |W|^2 / d of it.
  std::minstd_rand dice(7);
  std::uniform_real_distribution<double> side(60, 900), slip(-0.2, 0.2);
  for (int round = 0; round < 200; ++round) {
    const double a = side(dice), b = side(dice), d = std::sqrt(a * a + b * b), sigma = 1.0 / 16;
    std::vector<double> lengths = true_lengths(a, b), slips;
    for (double& length : lengths) slips.push_back(slip(dice)), length += slips.back();
    const double misclosure = a * (slips[0] + slips[2]) + b * (slips[1] + slips[3]) - d * (slips[4] + slips[5]);
    const Net net = rectangle(a, b, lengths, sigma);
    const auto found = adjust(net.points, net.readings, Datum::Free);
    ASSERT_TRUE(found);
    const double shares[3] = {a * a / (4 * d * d), b * b / (4 * d * d), 0.25};
    const int which[6] = {0, 1, 0, 1, 2, 2};
    double sum = 0;
    for (std::size_t k = 0; k < 6; ++k) {
      // Slips of 0.2 in change directions by 0.4/60 at most, and with them the redundancies by as much.
      EXPECT_NEAR(found->residuals[k].redundancy, shares[which[k]], 0.02);
      EXPECT_NEAR(std::abs(found->residuals[k].standardised), std::abs(misclosure) / (2 * d * sigma),
                  0.4 * 0.4 / 60 / sigma + 1e-6);
      sum += found->residuals[k].redundancy;
    }
    EXPECT_NEAR(sum, 1, 1e-6);
  }
}

TEST(TapeNetwork, StatedDoubtHoldsTheTruthAsOftenAsItSays) {
  // 4,000 tapings of a 24 x 32 ft net with normal errors; the square of a standardised coordinate error is above 1 in
  // 31.73 of 100. Tolerance: 4 standard deviations of the binomial, sqrt(0.3173 x 0.6827 / 4000) = 0.0074 each.
  std::mt19937 dice(11);
  std::normal_distribution<double> error(0, 1.0 / 16);
  const std::vector<double> lengths = true_lengths(384, 288);
  int outside = 0, far = 0;
  constexpr int kRounds = 4'000;
  for (int round = 0; round < kRounds; ++round) {
    std::vector<double> read = lengths;
    for (double& length : read) length += error(dice);
    const Net net = rectangle(384, 288, read);
    const auto found = adjust(net.points, net.readings, Datum::CornerAndSide);
    ASSERT_TRUE(found);
    const double off = found->places[2].x - 384;
    outside += off * off > found->clouds[2].xx ? 1 : 0;
    far += found->agreement == Agreement::Agree ? 0 : 1;
  }
  EXPECT_NEAR(static_cast<double>(outside) / kRounds, 0.3173, 0.0296);
  EXPECT_NEAR(static_cast<double>(far) / kRounds, 0.05, 4 * std::sqrt(0.05 * 0.95 / kRounds));
}

TEST(TapeNetwork, SaysWhichLinesWouldHoldAShapeThatCanMove) {
  Net net = rectangle(384, 288, {384, 288, 384, 288});  // four sides only: it can lean
  auto found = adjust(net.points, net.readings, Datum::Free);
  ASSERT_FALSE(found);
  EXPECT_EQ(found.error().kind, NetTrouble::Kind::NotDeterminate);
  ASSERT_EQ(found.error().pairs.size(), 1u);
  const std::array<int, 2> pair = found.error().pairs[0];
  EXPECT_TRUE((pair == std::array{0, 2}) || (pair == std::array{1, 3}));
  net.readings.push_back({pair[0], pair[1], 480, 1.0 / 16});
  EXPECT_TRUE(adjust(net.points, net.readings, Datum::Free));
}

TEST(TapeNetwork, NamesTheReadingsOfATriangleThatCannotBe) {
  // AC longer than AB and BC together, and nothing else to hold the shape.
  const Net net = rectangle(384, 288, {384, 288, 384, 288, 780});
  const auto found = adjust(net.points, net.readings, Datum::Free);
  ASSERT_FALSE(found);
  EXPECT_EQ(found.error().kind, NetTrouble::Kind::ImpossibleTriangle);
  EXPECT_EQ(found.error().readings[0], 4);
  // With BD too the others hold it: AC is then a misfit like any other, if a large one.
  const Net held = rectangle(384, 288, {384, 288, 384, 288, 780, 480});
  const auto adjusted = adjust(held.points, held.readings, Datum::Free);
  ASSERT_TRUE(adjusted);
  EXPECT_GT(adjusted->square_sum, 1e6);
}

TEST(TapeNetwork, EllipsesHaveTheAxesOfTheirMatrix) {
  // Independent of the code: variance along a direction is v' C v; along the axes it is least and most.
  const Cloud cloud{5, 1.5, 2};
  const Ellipse ellipse = ellipse_of(cloud);
  const auto variance = [&](double x, double y) { return cloud.xx * x * x + 2 * cloud.xy * x * y + cloud.yy * y * y; };
  EXPECT_NEAR(variance(ellipse.direction.x, ellipse.direction.y), ellipse.longer * ellipse.longer, 1e-12);
  EXPECT_NEAR(variance(-ellipse.direction.y, ellipse.direction.x), ellipse.shorter * ellipse.shorter, 1e-12);
  for (int k = 0; k < 360; ++k) {
    const double angle = k * 3.14159265358979 / 180;
    EXPECT_LE(variance(std::cos(angle), std::sin(angle)), ellipse.longer * ellipse.longer + 1e-12);
  }
}

}  // namespace
}  // namespace stringcourse::ground_test
