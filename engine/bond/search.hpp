#pragma once
// Solving one panel: the least cost of any lawful layout, or that there is none.
#include <cstdint>
#include <expected>
#include <optional>

#include "bond/panel.hpp"

namespace stringcourse::bond {

/// The best layout of a panel. `budget` bounds the sweep's expansions: when it runs out the answer is the best layout
/// found and `least_possible` a proven bound (proven = false). Errors: PanelStop, proven when no lawful layout exists.
[[nodiscard]] std::expected<PanelAnswer, PanelStop> solve_panel(const Panel& panel, std::int64_t budget);

/// A proven bound on the cost of a panel, from pairs of rows alone: cheap. Empty: no lawful layout exists.
[[nodiscard]] std::optional<Cost> bound_panel(const Panel& panel);

}  // namespace stringcourse::bond
