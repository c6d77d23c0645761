#pragma once
// What is looked at before each pour, gathered again from the placed pieces.
#include "answer/inspection.hpp"
#include "proof/rules.hpp"
#include "supply/shores.hpp"

namespace stringcourse::proof {

/// Pours follow one another as the job asks; each lists every bar that passes it once, with its cleanout and every unit
/// with a floor or lintel in one piece over it, each once; no cleanout of the layout is left out; beams are the
/// courses' own. Photos' names are ASCII and no two alike.
Violations check_inspection(const Job& job, const Building& building, const Layout& layout,
                            const std::vector<PourToInspect>& pours);

/// Heights are those of the courses; seats are the pieces under the bearings; shores no farther apart than the job
/// says, and none of them could be left out.
Violations check_bridged(const Job& job, const Building& building, const Layout& layout,
                         const std::vector<supply::Bridged>& bridged);

}  // namespace stringcourse::proof
