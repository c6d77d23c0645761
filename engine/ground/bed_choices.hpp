#pragma once
// What can be done about a bearing that no level of the first course fits, and what each way takes.
#include <string>
#include <vector>

#include "ground/as_found.hpp"

namespace stringcourse::ground {

/// What the bearing tells of its readings, for what can be done about it.
struct ReadHeight {
  std::string station;
  Length height;
};
struct Bearing {
  const Building& building;
  const Layout& layout;
  std::vector<BearingHeight> heights;  // along the walls: a corner's on both
  std::vector<ReadHeight> read;        // one for each station
};
/// Level first; where that does not surely fit, all others that apply. A curb is at least 2 in (50 mm) thick (ours);
/// half-high units and whole courses go where the bearing lies low enough for one with its beds; a slope is at most
/// 1/4 in in 10 ft (TMS 602, level of beds, second-hand).
[[nodiscard]] std::vector<BedChoice> bed_choices(const BedAsFound& bed, const Bearing& bearing, bool grouted);

}  // namespace stringcourse::ground
