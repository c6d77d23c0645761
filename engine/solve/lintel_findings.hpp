#pragma once
// What the lintels as laid have to say: floors to break out for bars, soffits to form, bearings that differ from what
// was asked, and openings that nothing in the yard spans.
#include <vector>

#include "bond/layout.hpp"
#include "job/trouble.hpp"
#include "walls/building.hpp"

namespace stringcourse {

/// By opening, in the order of Layout::lintels; each names the rule it rests on.
[[nodiscard]] std::vector<Finding> lintel_findings(const Building& building, const Layout& layout);

}  // namespace stringcourse
