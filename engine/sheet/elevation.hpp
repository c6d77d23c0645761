#pragma once
// One wall seen from outside, its start at the right: courses, openings, beams, bars, control joints, every unit.
#include <vector>

#include "sheet/context.hpp"

namespace stringcourse::sheet {

/// A rectangle on a wall: along it, and in heights from the datum.
struct Stretch {
  Length from, to, low, high;
};

struct ElevationPlan {
  Scale scale;
  std::vector<Part> parts;
};
/// Scale and parts of one wall's elevation on sheets: on one sheet where that leaves letters legible, else over
/// several, as large as so many sheets allow.
[[nodiscard]] ElevationPlan plan_elevation(const Context& context, int wall);
/// Drawn into `room`, which is at least as wide and high as plan_elevation() counts on.
[[nodiscard]] Group draw_elevation(const Context& context, int wall, const Part& part, Scale scale, const Area& room);

/// Where draw_elevation() puts what stands from `from` to `to` along the wall and from `low` to `high` over the datum.
[[nodiscard]] Area elevation_box(const Context& context, int wall, const Part& part, Scale scale, const Area& room,
                                 const Stretch& stretch);

/// Paper that the courses of the whole height take, and what letters and dimensions take besides.
[[nodiscard]] Length height_of_courses(const Building& building);
inline constexpr Micrometres kElevationLeft = 32'000, kElevationRight = 14'000;
inline constexpr Micrometres kElevationAbove = 5'500, kElevationBelow = 33'400;

}  // namespace stringcourse::sheet
