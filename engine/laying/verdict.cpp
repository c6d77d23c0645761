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

double tape_doubt(ground::TapeClass tape, Length length, Length reading_error) {
  return together({ground::standard_doubt(ground::permitted_error(tape, length)), ground::standard_doubt(reading_error)});
}

double difference_doubt(ground::TapeClass tape, Length one, Length other, Length reading_error) {
  const Length longer = std::max(one, other), apart = longer - std::min(one, other);
  // The shared error is proportional to the length: of the difference only its share of the longer one's remains.
  const double shared = longer == Length() ? 0 : metres(apart) / metres(longer) * ground::standard_doubt(ground::permitted_error(tape, longer));
  const double reading = ground::standard_doubt(reading_error);
  return together({shared, reading, reading});
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

WallRules wall_rules(RuleSet rules) {
  // Location in plan: TMS 602 in both sets, for no UK rule is known here.
  const Tolerance position{Length::sixteenths(8), Length::feet(20), Length::sixteenths(12)};
  if (rules == RuleSet::Us) {
    const Tolerance plumb{Length::sixteenths(4), Length::feet(10), Length::sixteenths(8)};
    return {{Length::sixteenths(4), Length::feet(10), Length::sixteenths(8)}, plumb, plumb, position};
  }
  const Tolerance level{Length::millimetres(10), Length::millimetres(5000), Length::millimetres(15)};
  const Tolerance line{Length::millimetres(8), Length::millimetres(5000), Length::millimetres(12)};
  return {level, line, line, position};
}

Length allowed(const Tolerance& tolerance, Length length) {
  if (tolerance.length == Length()) return tolerance.over;
  const double share = metres(length) / metres(tolerance.length);
  const Length by_length = Length::nanometres(static_cast<std::int64_t>(static_cast<double>(tolerance.over.in_nanometres()) * share + 0.5));
  return tolerance.most == Length() ? by_length : std::min(by_length, tolerance.most);
}

}  // namespace stringcourse::laying
