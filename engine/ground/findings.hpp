#pragma once
// What the readings of the ground come to, as findings at hold point 3.
#include <string>
#include <vector>

#include "ground/as_found.hpp"

namespace stringcourse::ground {

[[nodiscard]] std::vector<Finding> tape_findings(const Job& job, const Building& building, const TapeAsFound& tape);
[[nodiscard]] std::vector<Finding> level_findings(const Job& job, const Building& building, const LevelsAsFound& levels);

/// "a, b and c": all of them are to be read.
[[nodiscard]] std::string listed(const std::vector<std::string>& names);

}  // namespace stringcourse::ground
