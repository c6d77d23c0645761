#pragma once
// Joint reinforcement, read again from the layout's runs.
#include "proof/rules.hpp"
#include "steel/ties.hpp"
#include "steel/wires.hpp"

namespace stringcourse::proof {

/// In each bed that the job asks for, all masonry of the layout has its stretch; none passes a jamb or a control joint;
/// pieces lap as said and are as few as that allows; corners are counted; what is bought can be cut from it, by the
/// rule that is told.
Violations check_wires(const Job& job, const Building& building, const Layout& layout, const steel::Wires& wires);
/// One tie at each junction that is butted and tied, in each bed that the job asks for and both walls have.
Violations check_ties(const Job& job, const Building& building, const Layout& layout, const steel::Ties& ties);

}  // namespace stringcourse::proof
