#pragma once
// Remedies that the job has chosen, held against what was read since.
#include "ground/as_found.hpp"

namespace stringcourse::ground {

/// Puts bed_chosen and shape_chosen into what is found, and the findings of what was read since and says otherwise.
void hold_chosen(AsFound& found, const Job& job, const Building& building, const Layout& layout);

}  // namespace stringcourse::ground
