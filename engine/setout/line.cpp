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

}  // namespace

double catenary_sag(double span, double weight, double pull) {
  const double a = pull / weight;
  return a * cosh_less_one(span / (2 * a));
}

LineSpan line_over(double span, const LineFacts& line, double most_sag) {
  LineSpan result{catenary_sag(span, line.weight, line.pull), 0, span, line.weight * span * span / (8 * most_sag),
                  LineSpan::Bears::NotKnown};
  while (catenary_sag(result.part, line.weight, line.pull) > most_sag && result.supports < 1000) {
    ++result.supports;
    result.part = span / (result.supports + 1);
  }
  if (line.strength > 0)
    result.bears = result.pull_without <= kLineShare * line.strength ? LineSpan::Bears::Yes : LineSpan::Bears::No;
  return result;
}

}  // namespace stringcourse::setout
