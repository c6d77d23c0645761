#pragma once
// Before the pour, on paper: the form board of each wall with its dowels, two to a sheet.
#include "sheet/kind.hpp"

namespace stringcourse::sheet {

/// In as few parts as have room for every dowel's and jamb's number.
[[nodiscard]] WallParts parts_of_form_board(const Context& context, int wall);
/// The board from above: face line and form, dowels and jambs with running distances from the ONE place named.
[[nodiscard]] Group draw_form_board(const Context& context, const Band& band, Scale scale, const Area& room);

}  // namespace stringcourse::sheet
