#pragma once
// The same building said in another way: what is planned must not hang on how it is told.
#include "job/job.hpp"

namespace stringcourse::property {

/// The plan as seen in a mirror: the same sides in the opposite order, each from its other end, the turns as they were.
[[nodiscard]] Job mirrored(const Job& job);

/// The outline begun one corner later.
[[nodiscard]] Job with_other_first_corner(const Job& job);

/// Every corner and every opening has another name, and what refers to it follows. No interior walls, no readings.
[[nodiscard]] Job renamed(const Job& job);

}  // namespace stringcourse::property
