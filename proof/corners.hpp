#pragma once
// Corners in plan: in each course the pieces of the two walls that meet neither overlap nor leave a gap but joints.
#include "proof/facts.hpp"

namespace stringcourse::proof {

/// Every corner of every course, from the places of the pieces there and what a corner set is made of: of a wall
/// thicker than its leg, a unit as thick as the leg and a filler behind it; of a thinner wall an L-unit, or a unit and
/// a filler over its end. Walls with a stopped stretch are left out.
Violations check_corners(const Building& building, const Layout& layout, const Facts& facts);

}  // namespace stringcourse::proof
