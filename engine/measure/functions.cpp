#include "measure/functions.hpp"

#include <bit>
#include <cmath>
#include <cstdint>

namespace stringcourse {

double exponential(double x) {
  // e^x = 2^k e^r, r at most half of ln 2 either way; ln 2 in two parts, the first exact in products with k.
  constexpr double kInverse = 1.4426950408889634, kHigh = 6.93147180369123816490e-01, kLow = 1.90821492927058770002e-10;
  const double scaled = x * kInverse;
  const std::int64_t k = static_cast<std::int64_t>(scaled < 0 ? scaled - 0.5 : scaled + 0.5);
  const double r = (x - static_cast<double>(k) * kHigh) - static_cast<double>(k) * kLow;
  double sum = 1;
  for (int n = 14; n >= 1; --n) sum = 1 + sum * r / n;
  return sum * std::bit_cast<double>(static_cast<std::uint64_t>(k + 1023) << 52);
}

double chi_square_probability(int freedom, double value) {
  if (value <= 0) return 0;
  // P(a, x) = x^a e^-x / Gamma(a + 1) (1 + x/(a+1) + x^2/((a+1)(a+2)) + ...), a half the freedom.
  const double x = value / 2, a = freedom / 2.0;
  if (x > a + 20 * std::sqrt(a) + 100) return 1;  // what is left is far below the last digit
  constexpr double kRootOfPi = 1.7724538509055160273;
  double front = freedom % 2 == 0 ? 1 : 2 * std::sqrt(x) / kRootOfPi;
  const double share = exponential(-x / freedom);
  // e^-x is taken in as many parts as there are degrees of freedom, so that nothing runs over.
  for (double k = freedom % 2 == 0 ? 1 : 1.5; k <= a + 0.25; k += 1) front *= x / k * share * share;
  if (freedom % 2 == 1) front *= share;
  double sum = 1, term = 1;
  for (int n = 1; n <= 10'000 && term > sum * 1e-17; ++n) {
    term *= x / (a + n);
    sum += term;
  }
  const double probability = front * sum;
  return probability < 1 ? probability : 1;
}

double chi_square_quantile(double probability, int freedom) {
  double low = 0, high = 3'000;
  for (int step = 0; step < 200; ++step) {
    const double middle = low + (high - low) / 2;
    (chi_square_probability(freedom, middle) < probability ? low : high) = middle;
  }
  return high;
}

}  // namespace stringcourse
