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
/// Laying level; where that does not surely fit, all others that apply too, ranked: what keeps the range first, then
/// the fewest units that are handled otherwise, then the least mortar and concrete (this program's own order). A curb
/// is at least 2 in (50 mm) thick (ours); half-high units and whole courses go where the bearing lies low enough for
/// one with its beds; a slope is at most that of rule "bed-level".
[[nodiscard]] std::vector<BedChoice> bed_choices(const BedAsFound& bed, const Bearing& bearing, FirstCourse course);

}  // namespace stringcourse::ground
