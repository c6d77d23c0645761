#pragma once
// Buildings that somebody would build: rectangles, L and U plans of a small shed's size, with doors, an overhead door
// and windows where they would stand, bars, control joints and lintels of either make. Unlike random_jobs, nothing here
// is meant to be refused: all of it can be laid by a mason. Pure C++ without files, clocks or the standard library's
// generators: a seed means the same job everywhere.
#include <cstdint>

#include "job/job.hpp"

namespace stringcourse::property {

/// What sizes and places are whole multiples of: half units; whole inches (10 mm); sixteenths (mm).
enum class Grain { Module, Inch, Sixteenth };

/// The building of this seed.
[[nodiscard]] Job sensible_job(std::uint64_t seed, Grain grain);

}  // namespace stringcourse::property
