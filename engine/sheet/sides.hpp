#pragma once
// Sizes and units of each wall.
#include "paper/table.hpp"
#include "sheet/context.hpp"

namespace stringcourse::sheet {

/// As a table so wide.
[[nodiscard]] Table side_sizes_table(const Context& context, Micrometres width, Micrometres height_of_text);

}  // namespace stringcourse::sheet
