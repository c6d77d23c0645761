#pragma once
// Neighbouring courses: rule 3, short laps (term 1), bands and the joints that shift between them (term 4).
#include "proof/facts.hpp"

namespace stringcourse::proof {

struct LapCount {
  Violations violations;
  std::int64_t short_laps = 0;
};
/// Every pair of head joints of neighbouring courses, panel by panel: at least the least lap apart; those closer than a
/// half-unit pitch less the margin are short laps. Joints at tied junctions, and the joints at one end of one lintel
/// that is several courses deep, are straight on purpose and are not compared.
LapCount check_laps(const Building& building, const Facts& facts);

struct BandCount {
  Violations violations;
  std::int64_t shifted_joints = 0;
};
/// Bands from the bearing up, panel by panel; rows of one parity of a band are alike; joints of a course that find no
/// joint two courses up, in another band, where masonry stands.
BandCount check_bands(const Building& building, const Facts& facts);

}  // namespace stringcourse::proof
