#include "laying/verdict.hpp"

#include <algorithm>
#include <cmath>

#include "measure/functions.hpp"
#include "measure/metres.hpp"

namespace stringcourse::laying {
namespace {

double size_of(double value) { return value < 0 ? -value : value; }

/// Probability that a standard normal variable is at most z: chi-square with one degree of freedom, z^2.
double normal_probability(double z) {
  const double inside = size_of(z) > 38 ? 1 : chi_square_probability(1, z * z);  // beyond 38 it is 1 to the last digit
  return z < 0 ? (1 - inside) / 2 : (1 + inside) / 2;
}

}  // namespace

double tape_doubt(TapeMake tape, Length length, Length reading_error) {
  return together(
      {ground::standard_doubt(ground::permitted_error(tape, length)), ground::standard_doubt(reading_error)});
}

Verdict judged(double value, const Limits& limits, double expanded_doubt) {
  double margin = 0;
  bool any = false;
  const auto keep = [&](double room) { margin = any ? std::min(margin, room) : room, any = true; };
  if (limits.least) keep(value - *limits.least);
  if (limits.most) keep(*limits.most - value);
  return any ? ground::judged(margin, expanded_doubt) : Verdict::Fits;
}

double conformance(double value, const Limits& limits, double standard_doubt) {
  const double below = limits.least ? normal_probability((*limits.least - value) / standard_doubt) : 0;
  const double up_to = limits.most ? normal_probability((*limits.most - value) / standard_doubt) : 1;
  return up_to - below;
}

WallRules wall_rules(WallRuleSet rules) {
  // Location in plan: one rule in both sets, for no UK rule is known here.
  if (rules == WallRuleSet::Us) return {"bed-level", "plumb-us", "line-us", "place-in-plan", "bed-joint-tolerance"};
  return {"level-uk", "plumb-uk", "line-uk", "place-in-plan", "bed-joint-uk"};
}

Length allowed(const Tolerance& tolerance, Length length) {
  const double share = metres(length) / metres(tolerance.over);
  const Length by_length = Length::nanometres(
      static_cast<std::int64_t>(static_cast<double>(tolerance.within.in_nanometres()) * share + 0.5));
  return std::min(by_length, tolerance.most);
}

}  // namespace stringcourse::laying
