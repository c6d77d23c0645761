#pragma once
// Which runs each course must have, from the bits, the openings, the lintels as placed, the slots and control joints.
#include "proof/facts.hpp"

namespace stringcourse::proof {

/// Whether this wall runs through at the corner in this course, as the layout's bit says.
bool runs_through(const Building& building, const Layout& layout, int corner, int wall, int course);

/// Whether the abutting wall of a lapped junction enters the main wall in this course.
bool enters(const Layout& layout, int junction, int course);

/// Every wall and course has exactly the runs it must have, with the right extents and ends.
Violations check_runs(const Building& building, const Layout& layout, const Facts& facts);

}  // namespace stringcourse::proof
