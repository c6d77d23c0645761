#pragma once
// The few functions of probability that verdicts need, from + - x / and sqrt only, so that every machine gives the same
// bits. (The mathematics libraries of native and WebAssembly builds differ in their last digits.)

namespace stringcourse {

/// e to the x for -700 <= x <= 700. Relative error at most 1e-12.
[[nodiscard]] double exponential(double x);

/// Probability that a chi-square variable of so many degrees of freedom (1 to 1000) is at most `value` (0 to 3000).
/// Absolute error at most 1e-12. SOURCE: series of the incomplete gamma function, NIST DLMF 8.7.1.
[[nodiscard]] double chi_square_probability(int freedom, double value);

/// The value that a chi-square variable stays below with this probability (1e-6 to 1 - 1e-6). Relative error at most
/// 1e-9.
[[nodiscard]] double chi_square_quantile(double probability, int freedom);

}  // namespace stringcourse
