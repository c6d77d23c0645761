#pragma once
// A new job from a few measures: the rectangle that a user starts with.
#include <expected>
#include <string>
#include <vector>

#include "edits/typed_opening.hpp"
#include "job/job.hpp"
#include "job/trouble.hpp"

namespace stringcourse {

/// As typed. Lengths are nominal unless they end with "actual".
struct Measures {
  std::string name;
  std::string length, width, height;
  std::string series = "us-8";
  std::vector<TypedOpening> openings = {};
};

/// A closed rectangle of sides AB BC CD DA, in the tape of the series. Refused with all that is wrong, each at
/// "/begin/" and the name of the measure, or "/begin/opening/" and its number from 0 on: "not-a-length",
/// "unknown-series", and "unit-unsaid" of a number alone that may be feet as well as inches (metres or centimetres as
/// well as millimetres). Whether it can be built is not asked here.
[[nodiscard]] std::expected<Job, Refusals> begun_job(const Measures& measures);

}  // namespace stringcourse
