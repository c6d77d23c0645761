#pragma once
// What can be done where corners stand off their places: before concrete stands there, and after.
#include <vector>

#include "ground/as_found.hpp"

namespace stringcourse::ground {

/// Whether a reading says that concrete stands: a dowel, an edge, a taping of what was poured, or the rod on what the
/// walls stand on.
[[nodiscard]] bool is_of_concrete(const Reading& entry, const Building& building);
/// Whether one that counts does.
[[nodiscard]] bool concrete_is_read(const Job& job, const Building& building, const std::vector<bool>& counts);

/// Where corners do not surely stand in their places: pegs and forms moved, recommended as long as no concrete is read;
/// lines chalked square on what was poured, recommended once it is. None as long as the shape is not known.
[[nodiscard]] std::vector<ShapeChoice> shape_choices(const Building& building, const TapeAsFound& tape, bool concrete);

}  // namespace stringcourse::ground
