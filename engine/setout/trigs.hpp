#pragma once
// Where a mason's line is held up along a wall: on masonry, never in an opening.
#include <vector>

#include "setout/line.hpp"
#include "walls/building.hpp"

namespace stringcourse::setout {

struct Trigs {
  std::vector<Length> at;  // along the wall, rising; each on a unit in every course
  Length longest;          // the longest part between them and the wall's ends
  bool holds = true;       // false: an opening is so wide that the line over it hangs lower than allowed
};

/// The longest span whose sag is at most `most_sag` (metres). Whole nanometres, rounded down.
[[nodiscard]] Length longest_span(const LineFacts& line, double most_sag);
/// The fewest supports that leave no part longer than `span`, as even as openings allow. None where the wall is no
/// longer.
[[nodiscard]] Trigs trigs_of(const Building& building, int wall, Length span);

}  // namespace stringcourse::setout
