#pragma once
// What the lintels as laid have to say: floors to break out for bars, soffits to form, bearings that differ from what
// was asked, and openings that nothing in the yard spans.
#include <vector>

#include "job/trouble.hpp"
#include "supply/lintels.hpp"
#include "walls/building.hpp"

namespace stringcourse {

/// By opening, in the order of `lintels`; each names the rule it rests on.
[[nodiscard]] std::vector<Finding> lintel_findings(const Building& building,
                                                   const std::vector<supply::LintelAsLaid>& lintels);

}  // namespace stringcourse
