#pragma once
// The first bed from what was read of the bearing.
#include <optional>
#include <vector>

#include "ground/as_found.hpp"

namespace stringcourse::ground {

/// A corner or a place on a wall, read on what the wall will stand on, and believed.
[[nodiscard]] bool is_bearing(const Building& building, const Station& station);

/// None where the bearing was not read at all.
[[nodiscard]] std::optional<BedAsFound> bed_as_found(const Job& job, const Building& building, const Layout& layout,
                                                     const std::vector<Station>& stations);

}  // namespace stringcourse::ground
