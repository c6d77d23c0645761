#pragma once
// The corner leads, drawn: both faces of a corner unfolded, as seen from outside, its units course by course.
#include <cstddef>
#include <span>

#include "sheet/context.hpp"

namespace stringcourse::sheet {

inline constexpr std::size_t kLeadsOnSheet = 4;  // one under another

/// The leads of these places in setout::leads(), each with its units in words: "Lead at A: 5+5, 4+4".
[[nodiscard]] Group draw_leads(const Context& context, std::span<const std::size_t> shown, const Area& room);

}  // namespace stringcourse::sheet
