#pragma once
// Before the pour, on paper: the form board of each side with its dowels, and full-size templates that are cut out and
// laid on the form. One template serves every dowel round which the cells lie alike: a whole side at full size would
// take thirty sheets, and its joins would add up.
#include <vector>

#include "sheet/context.hpp"
#include "steel/dowels.hpp"

namespace stringcourse::sheet {

/// Dowels that one template serves: the cells of courses 1 and 2 stand alike round them.
struct DowelTemplate {
  std::vector<const steel::Dowel*> dowels;  // the first is drawn
  Length thickness, shell;                  // of their walls
};
/// By the first dowel of each. None without a list of dowels.
[[nodiscard]] std::vector<DowelTemplate> dowel_templates(const Context& context);
/// At full size: the form's edge (outer face line), the dowel's cross, the cells of course 1 (solid) and 2 (dashed), and
/// where it is laid. Where the dowel stands too deep for the paper the edge is replaced by a line parallel to it.
[[nodiscard]] Group draw_dowel_template(const Context& context, const DowelTemplate& shown);

/// True where dowels start on this wall.
[[nodiscard]] bool has_form_board(const Context& context, int wall);
[[nodiscard]] Scale scale_of_form_board(const Context& context, int wall);
/// The board from above: outer face line, dowels with running distances from the ONE named corner, openings.
[[nodiscard]] Group draw_form_board(const Context& context, int wall);

}  // namespace stringcourse::sheet
