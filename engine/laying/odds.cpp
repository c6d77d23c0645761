#include "laying/odds.hpp"

#include <algorithm>
#include <cmath>
#include <vector>

#include "laying/batch.hpp"
#include "measure/dice.hpp"
#include "measure/metres.hpp"

namespace stringcourse::laying {
namespace {

struct Laid {
  double place = 0;  // of the last unit's far end beyond its plan, metres
  bool outside = false;
};

/// The joints asked for over the next bay, in metres less the planned joint.
std::vector<double> asked(const CourseAhead& course, const JointRules& rules, double read, int next, const Bias& bias,
                          Laid& laid) {
  // What the bias will add over the bay is taken off ahead.
  const Length ahead = corrected_ahead(bias, next, rules.step);
  Wanted wanted;
  wanted.past = rounded_to(length_of(read), rules.step) + ahead;
  wanted.bays = {next};
  wanted.beyond_working = true;
  wanted.unit = course.unit;
  const Correction correction = corrected(wanted, rules);
  std::vector<double> off(static_cast<std::size_t>(next), 0);
  if (correction.what == Correction::What::Joints) {
    laid.outside = laid.outside || correction.outside_working;
    for (std::size_t k = 0; k < off.size(); ++k) off[k] = metres(correction.joints[k] - rules.joint);
    return off;
  }
  // More than the bay can take: as much as it can.
  const double most = metres(wanted.past > Length() ? rules.least : rules.most) - metres(rules.joint);
  laid.outside = true;
  std::fill(off.begin(), off.end(), most);
  return off;
}

Laid lay_course(const CourseAhead& course, const Workmanship& hand, const JointRules& rules, Marks marks, Dice& dice) {
  Laid laid{metres(course.past), false};
  Bias bias = unknown_bias();
  const Noise noise{std::sqrt(hand.joint * hand.joint + hand.unit * hand.unit), hand.mark};
  double before = laid.place + (marks == Marks::Used ? hand.mark * dice.normal() : 0), planned = 0;
  for (int first = 0; first < course.units; first += course.bay) {
    const int next = std::min(course.bay, course.units - first);
    std::vector<double> off(static_cast<std::size_t>(next), 0);
    if (marks == Marks::Used) off = asked(course, rules, before, next, bias, laid);
    planned = 0;
    for (const double one : off) {
      planned += one;
      laid.place += one + hand.joint * dice.normal() + hand.unit * dice.normal() + hand.bias;
    }
    if (marks == Marks::NotUsed) continue;
    const double read = laid.place + hand.mark * dice.normal();
    bias = learned(bias, next, read - before - planned, noise);
    before = read;
  }
  return laid;
}

/// P(X <= k) of a binomial, by its terms relative to the largest: no powers, no logarithms.
double binomial_up_to(int k, int trials, double p) {
  if (k >= trials || p <= 0) return 1;
  if (k < 0 || p >= 1) return 0;
  const int middle = std::clamp(static_cast<int>(p * (trials + 1)), 0, trials);
  const double odds = p / (1 - p);
  double below = middle <= k ? 1 : 0, all = 1, term = 1;
  for (int i = middle; i > 0; --i) {
    term *= i / (odds * (trials - i + 1));
    all += term;
    if (i - 1 <= k) below += term;
  }
  term = 1;
  for (int i = middle; i < trials; ++i) {
    term *= odds * (trials - i) / (i + 1);
    all += term;
    if (i + 1 <= k) below += term;
  }
  return below / all;
}

}  // namespace

std::uint64_t Dice::next() { return drawn(state_); }

double Dice::uniform() { return static_cast<double>(next() >> 11) / 9007199254740992.0; }

double Dice::normal() {
  double sum = -6;
  for (int k = 0; k < 12; ++k) sum += uniform();
  return sum;
}

Odds simulate(const CourseAhead& course, const Workmanship& hand, const JointRules& rules, Marks marks, int courses,
              std::uint64_t seed) {
  Dice dice(seed);
  Odds odds;
  odds.courses = courses;
  double sum = 0, squares = 0;
  for (int k = 0; k < courses; ++k) {
    const Laid laid = lay_course(course, hand, rules, marks, dice);
    sum += laid.place, squares += laid.place * laid.place;
    odds.inside += laid.place <= metres(course.past_most) && -laid.place <= metres(course.short_most);
    odds.outside_working += laid.outside;
  }
  if (courses == 0) return odds;
  odds.mean = sum / courses;
  odds.spread = std::sqrt(std::max(0.0, squares / courses - odds.mean * odds.mean));
  return odds;
}

Share binomial_interval(int successes, int trials, double confidence) {
  const double tail = (1 - confidence) / 2;
  Share share;
  const auto bisect = [](const auto& too_low) {
    double low = 0, high = 1;
    for (int step = 0; step < 60; ++step) {
      const double middle = low + (high - low) / 2;
      (too_low(middle) ? low : high) = middle;
    }
    return low;
  };
  if (successes > 0)
    share.least = bisect([&](double p) { return 1 - binomial_up_to(successes - 1, trials, p) < tail; });
  if (successes < trials) share.most = bisect([&](double p) { return binomial_up_to(successes, trials, p) > tail; });
  return share;
}

}  // namespace stringcourse::laying
