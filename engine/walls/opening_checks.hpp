#pragma once
// Ground along a wall that openings, their lintels and other breaks take up.
#include <vector>

#include "walls/draft.hpp"

namespace stringcourse::walls {

/// Indices of the openings of each wall, by where they start; opening order of the job where two start together.
[[nodiscard]] std::vector<std::vector<int>> openings_by_wall(const Building& building);

/// An opening with the bearings of its lintel: no control joint may stand in it. Without a lintel: the opening.
struct LintelReach {
  Position from, to;
};
[[nodiscard]] LintelReach lintel_reach(const ResolvedOpening& opening);

}  // namespace stringcourse::walls
