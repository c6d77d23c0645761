#pragma once
// The whole laid log read against the building: courses begun, beds to the next height, units set, closures, checks
// with their verdicts, how far the work is.
#include <optional>
#include <string>
#include <vector>

#include "laying/closure.hpp"
#include "laying/course_as_laid.hpp"
#include "laying/gauge.hpp"

namespace stringcourse::laying {

/// The last gauge reading of a wall, and the beds from there to the next height that must be met.
struct GaugeAsLaid {
  std::size_t entry = 0;
  int wall = 0, course = 1;
  Length high;
  int to_course = 0;         // whose top the next sill, head, beam or plate stands on; 0: none above
  Fact to_what;              // "sill of W1", "top of the wall"
  std::vector<int> courses;  // to be laid until there
  std::optional<Beds> beds;  // by courses; none where beds cannot take it
};

struct SetAsLaid {
  std::size_t entry = 0;
  int wall = 0, course = 1;
  UnitAdvice advice;
  std::optional<Length> from_line;  // beyond the gap that is wanted (1/16 in, 2 mm); below zero: too near
};

struct GapAsLaid {
  std::size_t entry = 0;
  int wall = 0, course = 1;
  Length at, measured;
  std::optional<Closure> closure;
  int opening = -1;  // index of the opening of this course that lies in it: nothing is laid there; -1: none
};

struct CheckAsLaid {
  std::size_t entry = 0;
  int wall = 0, course = 1;
  Limits limits;                       // metres
  Length allowed_least, allowed_most;  // the same
  Length doubt;                        // expanded, k = 2
  Verdict verdict = Verdict::CannotTell;
  double conformance = 0;  // probability that the true value keeps the limits
  std::string rule;        // its name in the table of rules
};

struct Progress {
  int units_all = 0, units_laid = 0;  // of finished courses, and up to the last mark read in others
  int days = 0;                       // different days among entries that count
  int per_day = 0;                    // units laid by day of work, down; 0 where no entry says when
  int days_left = 0;                  // at that pace, up
};

struct AsLaid {
  HowLaid how;
  std::vector<bool> counts;
  std::vector<CourseAsLaid> begun;    // courses with a reading or said to be laid, by wall and course
  std::vector<int> next_course;       // by wall: the lowest that is not finished; 0: all are
  std::vector<CourseAsLaid> at_hand;  // that course and the one after it, of every wall
  std::vector<GaugeAsLaid> gauges;    // by wall
  std::vector<SetAsLaid> sets;        // in the log's order; so are the others
  std::vector<GapAsLaid> gaps;
  std::vector<CheckAsLaid> checks;
  Progress progress;
  std::vector<Finding> findings;
};

[[nodiscard]] AsLaid as_laid(const Job& job, const Building& building, const Layouts& layouts);

/// Whole course first, from the named corner: "AB-3".
[[nodiscard]] std::string course_name(const Building& building, int wall, int course);

}  // namespace stringcourse::laying
