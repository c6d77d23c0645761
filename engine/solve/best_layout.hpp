#pragma once
// The layout of a job: what the search finds, or what is found without it where that is better.
#include "bond/layout.hpp"
#include "bond/panel_memo.hpp"
#include "walls/building.hpp"

namespace stringcourse {

/// bond::lay_out; and where that is not proven, never one that gives up more, has more short laps or cuts (in the order
/// of the cost) than what is laid at once: a search shares its room among all choices, and the room for one panel may
/// end before what is easily found of another choice is looked at. No rule is relaxed for it. What is proven is the
/// search's.
[[nodiscard]] Layout best_layout(const Building& building, bond::PanelMemo& memo);

}  // namespace stringcourse
