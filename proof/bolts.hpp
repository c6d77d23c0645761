#pragma once
// Anchor bolts of the plate, worked out again from the job and the placed pieces.
#include "proof/rules.hpp"
#include "setout/bolts.hpp"

namespace stringcourse::proof {

/// Pieces of plate cover the top course of every wall that carries one, from break to break, as long as the job says.
/// Every bolt stands at a mark of the tape in a grouted whole cell, clear of block, bars and trusses; ends and spacing
/// keep to what is asked, or no place there would do and that is said. No fewer bolts would do, two being the least.
Violations check_bolts(const Job& job, const Building& building, const Layout& layout,
                       const std::vector<setout::PlatePiece>& plates);

}  // namespace stringcourse::proof
