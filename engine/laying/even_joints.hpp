#pragma once
// Widths of the next joints, in whole steps of the tape, that bring the course back to where it should be: as even as
// they can be, with every bar still in its cell.
#include <cstdint>
#include <optional>
#include <vector>

namespace stringcourse::laying {

/// Everything in whole steps: sixteenths of an inch, or millimetres.
struct Steps {
  std::int64_t joint = 6;            // as planned
  std::int64_t least = 4, most = 8;  // each joint
};

/// After the first `joints` of the joints to come the course may lie so far past (above zero) or short of its plan:
/// where it lies farther, a bar leaves its cell.
struct Window {
  int joints = 0;
  std::int64_t least = 0, most = 0;
};

/// `count` joints after which a course that now lies `past` its plan (below zero: short) lies on it. Of all lawful
/// widths those whose squared distances from the planned joint add up to least; of these, those that lie nearest to the
/// plan on the way; of these, the one that comes first in the order of the alphabet. None where no widths keep all
/// limits. Exact: dynamic programming over what has been made up so far, count x (count x range) x range steps.
[[nodiscard]] std::optional<std::vector<std::int64_t>> even_joints(int count, std::int64_t past, const Steps& steps,
                                                                   const std::vector<Window>& windows = {});

}  // namespace stringcourse::laying
