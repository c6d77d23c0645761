#pragma once
// Before the pour, on paper: the form board of each wall with its dowels.
#include "sheet/context.hpp"

namespace stringcourse::sheet {

/// As few sheets as have room for every dowel's number.
[[nodiscard]] WallParts parts_of_form_board(const Context& context, int wall);
/// The board from above: face line and form, dowels and jambs with running distances from the ONE place named.
[[nodiscard]] Group draw_form_board(const Context& context, int wall, const Part& part, Scale scale);

}  // namespace stringcourse::sheet
