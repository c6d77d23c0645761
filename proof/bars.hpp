#pragma once
// Rule 5: every bar in whole cells, course by course; spacing; and the extra bars of term 5.
#include "proof/facts.hpp"

namespace stringcourse::proof {

struct BarCount {
  Violations violations;
  std::int64_t extra_bars = 0;
};
/// Fixed bars stand at their places; every bar goes through a whole cell with its clearance in each course that covers
/// it, and shares enough with the cell below; no gap along masonry exceeds the spacing.
BarCount check_bars(const Building& building, const Layout& layout, const Facts& facts);

}  // namespace stringcourse::proof
