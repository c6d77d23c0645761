#pragma once
// What chance the rest of a course has: a seeded simulation with the hand and the units as measured, and the closed
// forms that it is held against. + - x / sqrt only: every machine draws the same numbers.
#include <cstdint>

#include "laying/correction.hpp"

namespace stringcourse::laying {

/// Standard deviations, metres. Defaults of the check values, flagged unverified: joints 1/16 in, units 1/24 in.
struct Workmanship {
  double joint = 0.0254 / 16;
  double unit = 0.0254 / 24;
  double bias = 0;            // each unit longer than planned by so much
  double mark = 0.0254 / 32;  // reading a mark
};

/// A course still to be laid: units with a joint before each, a mark after every `bay` of them.
struct CourseAhead {
  int units = 24;
  int bay = 3;
  Length past;                   // where it stands now
  Length past_most, short_most;  // where the last unit may end, so that the closure's joints stay in tolerance
  Length unit;                   // for what is cut
};

enum class Marks { Used, NotUsed };

struct Odds {
  int courses = 0, inside = 0;
  double mean = 0, spread = 0;  // of the last unit's place, metres
  int outside_working = 0;      // courses in which a joint outside the working range was asked for
};
/// So many courses, each laid by drawing every unit, joint and reading. With marks each bay is corrected as `corrected`
/// says, and the bias is learned from mark to mark. The same seed gives the same odds.
[[nodiscard]] Odds simulate(const CourseAhead& course, const Workmanship& hand, const JointRules& rules, Marks marks,
                            int courses, std::uint64_t seed);

/// The exact binomial interval of a share (Clopper and Pearson) at this confidence, 0 < confidence < 1. To 1e-9.
struct Share {
  double least = 0, most = 1;
};
[[nodiscard]] Share binomial_interval(int successes, int trials, double confidence);

/// A small generator (splitmix64) and a standard normal as the sum of twelve uniform numbers less six: right in mean
/// and variance, never beyond 6 (ours; the tails that closures hang on lie within 4).
class Dice {
 public:
  explicit Dice(std::uint64_t seed) : state_(seed) {}
  [[nodiscard]] std::uint64_t next();
  [[nodiscard]] double uniform();  // 0 <= x < 1, multiples of 2^-53
  [[nodiscard]] double normal();

 private:
  std::uint64_t state_;
};

}  // namespace stringcourse::laying
