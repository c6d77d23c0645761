#pragma once
// Grout, pour by pour, measured again from the placed pieces.
#include "proof/rules.hpp"
#include "supply/grout.hpp"

namespace stringcourse::proof {

/// Pours follow one another as the job asks and leave nothing out; each bar has the cells that stand over it in plan,
/// each once; beams and lintels hold what their pieces and joints leave; all to the cubic nanometre. No lift is higher
/// than 5'-4" unless it is one course. SOURCE: TMS 602 3.5D (second-hand).
Violations check_grout(const Job& job, const Building& building, const Layout& layout,
                       const std::vector<supply::GroutPour>& pours);

}  // namespace stringcourse::proof
