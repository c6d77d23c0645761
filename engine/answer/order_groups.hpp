#pragma once
// The headings of the order list: what several articles have in common is said once, over them.
#include "answer/order.hpp"

namespace stringcourse {

/// The heading that an article stands under: of units their block with its size. Articles of one heading follow one
/// another.
[[nodiscard]] Fact heading_over(const Article& article);
/// What an article is called under its heading; elsewhere it is called by its whole name.
[[nodiscard]] Fact called_under_heading(const Article& article);

}  // namespace stringcourse
