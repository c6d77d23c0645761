#pragma once
// The building against the job: what follows from the job is worked out again here and compared; what the building was
// free to choose (openings rounded up, control joints by rule, the half-high course) is checked for lawfulness.
#include "proof/rules.hpp"

namespace stringcourse::proof {

/// The walls of a building as the job names them.
struct Names {
  std::vector<int> side_walls;      // side i of the outline is this wall
  std::vector<int> interior_walls;  // interior wall i is this wall
  bool reversed = false;            // the outline is walked from its far end: the building lay on the left hand
};
Names name_walls(const Job& job, const Building& building);
/// The wall that the job calls `name`, or -1.
int wall_named(const Job& job, const Names& names, const std::string& name);

/// A place of the job on its wall. `from_start`: measured from the end where x = 0.
struct Measured {
  bool known = false;  // the corner named is an end of that wall
  bool from_start = true;
  Length to_masonry;  // along the wall from that end to a face of masonry nearer to it (wall) ...
  Length to_void;     // ... or to an edge of a hole nearer to it (opening)
  Length to_middle;   // ... or to a bar's centre
};
/// Nominal lines stand j/2 outside the masonry's faces. `face`: near or far (see Place).
Measured measure(const Job& job, const Building& building, const Names& names, int wall, const Place& place);

Violations claim_units(const Job& job, const Building& building, const Names& names);
Violations claim_courses(const Job& job, const Building& building);
Violations claim_outline(const Job& job, const Building& building, const Names& names);
Violations claim_interior(const Job& job, const Building& building, const Names& names);
Violations claim_openings(const Job& job, const Building& building, const Names& names);
Violations claim_control_joints(const Job& job, const Building& building, const Names& names);
Violations claim_bars(const Job& job, const Building& building, const Names& names);

/// All of the above.
Violations check_claim(const Job& job, const Building& building);

}  // namespace stringcourse::proof
