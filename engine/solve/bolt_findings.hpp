#pragma once
// Where no bolt of the plate can stand in grout.
#include <vector>

#include "job/trouble.hpp"
#include "setout/bolts.hpp"

namespace stringcourse {

/// One for each place at which a bolt is asked for and none can stand, at most eight of each wall; at hold point Top.
[[nodiscard]] std::vector<Finding> bolt_findings(const Building& building,
                                                 const std::vector<setout::PlatePiece>& plates);

}  // namespace stringcourse
