#pragma once
// What the readings of the ground come to, as findings at hold point 3.
#include <string>
#include <vector>

#include "ground/as_found.hpp"

namespace stringcourse::ground {

[[nodiscard]] std::vector<Finding> tape_findings(const Building& building, const TapeAsFound& tape);
[[nodiscard]] std::vector<Finding> level_findings(const Building& building, const LevelsAsFound& levels);

/// The lines still to be taped: "A to C and B to D".
[[nodiscard]] FactValue lines_missing(const Building& building, const TapeAsFound& tape);

}  // namespace stringcourse::ground
