#pragma once
// Where control joints go in one stretch of wall: the fewest that keep every panel within the rule, panels as alike as
// can be.
#include <vector>

#include "measure/length.hpp"

namespace stringcourse::walls {

/// Held: a corner or a tied wall holds the panel, so the first joint stands within half the rule's length.
enum class PanelEnd { Held, Open };

/// All places are nominal, from the wall's start.
struct PanelSearch {
  Length start, end;
  PanelEnd at_start = PanelEnd::Held, at_end = PanelEnd::Held;
  Length greatest;            // panel
  std::vector<Length> lines;  // where a joint may stand, rising, inside start..end
};

struct PanelAnswer {
  std::vector<Length> lines;  // chosen, rising
  Length too_long;            // sum of what panels are longer than the rule allows; 0: the rule is kept
  Length longest;             // of all panels
};

/// Exact. Least in this order: excess over the rule, number of joints, sum of squares of the panels (alike panels win);
/// of equal ones the earlier lines. Cost: lines times the lines in one panel; lines squared where the rule can't be
/// kept.
[[nodiscard]] PanelAnswer best_joint_lines(const PanelSearch& search);

}  // namespace stringcourse::walls
