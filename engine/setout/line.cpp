#include "setout/line.hpp"

#include <cmath>

namespace stringcourse::setout {
namespace {

/// cosh(x) - 1 without the loss of its small digits: x^2/2 (1 + x^2/12 (1 + x^2/30 (...))).
double cosh_less_one(double x) {
  const double square = x * x;
  double sum = 1;
  for (int k = 30; k >= 2; --k) sum = 1 + sum * square / ((2 * k - 1) * (2 * k));
  return square / 2 * sum;
}

double hyperbolic_sine(double x) {
  const double square = x * x;
  double sum = 1;
  for (int k = 30; k >= 1; --k) sum = 1 + sum * square / ((2 * k) * (2 * k + 1));
  return x * sum;
}

}  // namespace

double parabola_sag(double span, double weight, double pull) { return weight * span * span / (8 * pull); }

double catenary_sag(double span, double weight, double pull) {
  const double a = pull / weight;
  return a * cosh_less_one(span / (2 * a));
}

double catenary_parameter(double along, double height, double arc) {
  // With x = along / 2a: sinh(x) / x = sqrt(arc^2 - height^2) / along, which grows with x.
  const double wanted = std::sqrt(arc * arc - height * height) / along;
  double low = 1e-9, high = 8;
  for (int step = 0; step < 200; ++step) {
    const double middle = low + (high - low) / 2;
    (hyperbolic_sine(middle) / middle < wanted ? low : high) = middle;
  }
  return along / (2 * high);
}

LineSpan line_over(double span, const LineFacts& line, double most_sag) {
  LineSpan result{catenary_sag(span, line.weight, line.pull), 0, span, line.weight * span * span / (8 * most_sag), LineSpan::Bears::NotKnown};
  while (catenary_sag(result.part, line.weight, line.pull) > most_sag && result.supports < 1000) {
    ++result.supports;
    result.part = span / (result.supports + 1);
  }
  if (line.strength > 0) result.bears = result.pull_without <= kLineShare * line.strength ? LineSpan::Bears::Yes : LineSpan::Bears::No;
  return result;
}

}  // namespace stringcourse::setout
