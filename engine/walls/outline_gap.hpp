#pragma once
// Does the outline close?
#include "walls/draft.hpp"

namespace stringcourse::walls {

/// True if the nominal sides come back to the first corner; else a refusal that says how far off they end, to which
/// side, and which side changed by how much would close them.
[[nodiscard]] bool check_gap(Draft& draft);

}  // namespace stringcourse::walls
