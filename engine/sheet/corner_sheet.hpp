#pragma once
// Corners from above, course 1 beside course 2: their units with names, the bar and its distances from both outer faces.
#include <vector>

#include "sheet/context.hpp"

namespace stringcourse::sheet {

inline constexpr Scale kCornerScale{10};
inline constexpr std::size_t kCornersOnSheet = 2;

/// The corners that are drawn, by their place in Building::corners: those with a bar and those made by a corner set. Where
/// there are many, one of each kind. Empty: none needs a drawing.
[[nodiscard]] std::vector<std::size_t> corners_drawn(const Context& context);
/// Up to kCornersOnSheet of them.
[[nodiscard]] Group draw_corners(const Context& context, std::span<const std::size_t> corners);

}  // namespace stringcourse::sheet
