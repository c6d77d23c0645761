#pragma once
// What one reading says by itself. It never says that anything fits: that takes all of them.
#include <vector>

#include "ground/as_found.hpp"

namespace stringcourse::ground {

/// By entry. Of tapings that make sense: longer or shorter than planned; of rods on what the walls stand on: how much
/// lower or higher than the first such point; of edges: how far beyond the face line.
[[nodiscard]] std::vector<ReadingSaid> readings_said(const Job& job, const Building& building, const AsFound& found,
                                                     const std::vector<bool>& counts);

}  // namespace stringcourse::ground
