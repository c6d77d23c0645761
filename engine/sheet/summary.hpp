#pragma once
// What the first sheet leaves to others.
#include "sheet/context.hpp"

namespace stringcourse::sheet {

/// Whether the sides' sizes stand on it; else they have a sheet of their own.
[[nodiscard]] bool summary_holds_sides(const Context& context);

}  // namespace stringcourse::sheet
