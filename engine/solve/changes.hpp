#pragma once
// What of a printed layout is otherwise now, as far as it is still to be laid.
#include "solve/as_built.hpp"

namespace stringcourse {

/// Fills in the changes and the changed pieces, and says which laid units they would touch: never silently.
void find_changes(const Job& job, Rebuilt& found, std::vector<Finding>& findings);

}  // namespace stringcourse
