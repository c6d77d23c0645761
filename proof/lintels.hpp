#pragma once
// Rule 6 (lintels as placed) and rule 7 (control joints clear of bearings).
#include "proof/facts.hpp"

namespace stringcourse::proof {

/// Bearings, whole lengths, and what stands under them.
Violations check_lintels(const Building& building, const Layout& layout, const Facts& facts);
/// Width, place and clearance of every control joint.
Violations check_control_joints(const Job& job, const Building& building, const Layout& layout);

}  // namespace stringcourse::proof
