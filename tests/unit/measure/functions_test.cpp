#include "measure/functions.hpp"

#include <gtest/gtest.h>

#include <cmath>

namespace stringcourse {
namespace {

TEST(Functions, ExponentialAgreesWithLongDoubles) {
  for (int k = -7'000; k <= 7'000; ++k) {
    const double x = k / 10.0;
    const long double truth = std::exp(static_cast<long double>(x));
    EXPECT_NEAR(static_cast<double>(exponential(x) / truth), 1, 1e-12) << x;
  }
}

TEST(Functions, ChiSquareHasItsClosedFormsForOneTwoAndFourDegrees) {
  // F1 = erf(sqrt(x/2)), F2 = 1 - e^(-x/2), F4 = 1 - e^(-x/2) (1 + x/2).
  for (double x = 0.001; x < 60; x *= 1.1) {
    EXPECT_NEAR(chi_square_probability(1, x), std::erf(std::sqrt(x / 2)), 1e-12);
    EXPECT_NEAR(chi_square_probability(2, x), -std::expm1(-x / 2), 1e-12);
    EXPECT_NEAR(chi_square_probability(4, x), 1 - std::exp(-x / 2) * (1 + x / 2), 1e-12);
  }
}

TEST(Functions, GlobalTestLimitsAreThePublishedOnes) {
  // Limits of s0 / sigma0, 95 in 100, printed to three decimals in GNU Gama's test collection.
  const struct {
    int freedom;
    double least, most;
  } limits[] = {{1, .031, 2.241}, {3, .268, 1.765},  {4, .348, 1.669},
                {8, .522, 1.480}, {10, .570, 1.431}, {14, .634, 1.366}};
  for (const auto& [freedom, least, most] : limits) {
    EXPECT_NEAR(std::sqrt(chi_square_quantile(.025, freedom) / freedom), least, 0.5e-3);
    EXPECT_NEAR(std::sqrt(chi_square_quantile(.975, freedom) / freedom), most, 0.5e-3);
  }
  EXPECT_NEAR(std::sqrt(chi_square_quantile(.95, 1)), 1.9599640, 0.5e-7);
  EXPECT_NEAR(std::sqrt(chi_square_quantile(.999, 1)), 3.2905267, 0.5e-7);
}

TEST(Functions, ManyDegreesOfFreedomStayInRange) {
  // The chi-square of many degrees is near normal: mean f, variance 2f; its median f (1 - 2/(9f))^3 (Wilson, Hilferty)
  // within 1e-4 of f.
  for (const int freedom : {100, 400, 1000}) {
    const double median = chi_square_quantile(.5, freedom);
    EXPECT_NEAR(median / freedom, std::pow(1 - 2.0 / (9 * freedom), 3), 1e-4);
  }
}

}  // namespace
}  // namespace stringcourse
