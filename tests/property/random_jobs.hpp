#pragma once
// Random jobs that look like jobs: mostly on the half-unit grid, with everything that a job document can ask for.
// Pure C++ without files, clocks or the standard library's generators: a seed means the same job everywhere.
#include <cstdint>

#include "job/job.hpp"

namespace stringcourse::property {

/// Small: up to about 20 half units a side and 8 courses. Large: up to 60 and 16.
enum class Size { Small, Large };

/// The job of this seed. Most can be built; some are refused, some have a wall that no layout fills.
[[nodiscard]] Job random_job(std::uint64_t seed, Size size = Size::Small);

}  // namespace stringcourse::property
