#pragma once
// The length of a lap by the job's rule, held against the rule's own formula.
#include <optional>

#include "job/job.hpp"
#include "walls/building.hpp"

namespace stringcourse::proof {

/// What a rule is asked for.
struct LapAsked {
  std::string size;  // of the bar
  Length diameter;
  Length around;  // the least of cover and clear distance to laps beside
};

/// Whether the job's rule has all that it needs.
bool gives_laps(const Steel& steel);
/// Whether `lap` is no shorter than the job's rule gives. Exact: both sides squared, in whole numbers of any size.
bool is_long_enough(const Lap& rule, const LapAsked& asked, Length lap);

}  // namespace stringcourse::proof
