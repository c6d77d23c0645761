#pragma once
// Before the pour, on paper: full-size templates that are cut out and laid on the face line. One template serves every
// dowel round which the cells lie alike: a whole side at full size would take thirty sheets, and its joins would add
// up.
#include <optional>
#include <vector>

#include "sheet/context.hpp"
#include "steel/dowels.hpp"

namespace stringcourse::sheet {

/// Dowels that one template serves: the cells of courses 1 and 2 stand alike round them.
struct DowelTemplate {
  std::vector<const steel::Dowel*> dowels;  // the first is drawn
};
/// By the first dowel of each. None without a list of dowels.
[[nodiscard]] std::vector<DowelTemplate> dowel_templates(const Context& context);
/// At full size: the wall's face line, the dowel's cross, the cells of course 1 (solid) and 2 (dashed), where it is
/// laid, and how far the form stands outside that line. At an outside corner the other wall's face line too. Where the
/// dowel stands too deep for the paper the face line is replaced by a line parallel to it.
[[nodiscard]] Group draw_dowel_template(const Context& context, const DowelTemplate& shown);

}  // namespace stringcourse::sheet
