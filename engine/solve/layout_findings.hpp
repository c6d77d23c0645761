#pragma once
// What a layout itself has to say.
#include <vector>

#include "bond/layout.hpp"
#include "job/trouble.hpp"
#include "walls/building.hpp"

namespace stringcourse {

/// Pieces shorter than asked for, cuts under bearings, short laps, bars beyond the spacing, and what a search that did
/// not end leaves open.
[[nodiscard]] std::vector<Finding> layout_findings(const Building& building, const Layout& layout);

/// As an answer lists them: by hold point, then place.
void sort_findings(std::vector<Finding>& findings);

}  // namespace stringcourse
