#pragma once
// An invented school of any size, to measure with: one long building, classrooms on both sides of a corridor.
#include <cstdint>

#include "job/job.hpp"

namespace stringcourse::benches {

/// A school of about that many units: bays of two classrooms, each with two windows and a door; two corridor walls end
/// to end, partitions butted against them, everything on the 8 in grid, control joints by the US rule. At most about
/// 1,700,000 units, where the number of openings reaches the job reader's limit.
[[nodiscard]] Job school(std::int64_t units);

}  // namespace stringcourse::benches
