#pragma once
// A cleanout at the foot of every bar's cell, in each pour that is high enough.
#include "proof/rules.hpp"

namespace stringcourse::proof {

/// Each bar has exactly one cleanout in the lowest course of every pour over 5'-4", in a unit that stands over the bar
/// in plan, and there is none besides; one in a plain unit only where the yard has no cleanout unit for it. A bar that
/// has no masonry there (an opening) needs none. Pours are worked out from the job again.
Violations check_cleanouts(const Job& job, const Building& building, const Layout& layout);

}  // namespace stringcourse::proof
