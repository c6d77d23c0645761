#pragma once
// What is left to be packed between an opening's hole and what goes into it.
#include "measure/fact.hpp"
#include "walls/building.hpp"

namespace stringcourse {

struct Answer;

/// "Pack 3/16 in at each jamb and 6 in at the head; ..." with the frame, buck or room that would leave nothing to pack.
/// Empty of a bare hole, and where there is nothing to pack.
[[nodiscard]] Fact packing_said(const Answer& answer, const ResolvedOpening& opening);

}  // namespace stringcourse
