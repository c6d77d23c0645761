#pragma once
// From the user's job to the building as it is to stand: nominal sizes become actual ones, once.
#include <expected>

#include "job/job.hpp"
#include "job/trouble.hpp"
#include "walls/building.hpp"

namespace stringcourse {

/// Resolves a job that was read without refusals. Exact: whole nanometres, no rounding but where a rule asks for it.
/// Promises, for a building that comes back: side names are unique; a closed outline closes; no two walls overlap;
/// courses rise from the bearing; openings stand on course lines, on their walls, clear of each other, of junctions and
/// of control joints; every lintel bears on masonry; every junction has both its walls; pour tops rise.
/// A job that can't be resolved comes back as refusals, all at once, each with its place in the job.
///
/// Laws (j = joint; convex corners and free ends are "out", re-entrant corners and junctions are "in"):
///   side, out-out        actual = nominal - j
///   side, out-in         actual = nominal
///   side, in-in          actual = nominal + j
///   opening              actual = nominal + j, in width and in height
///   near jamb at N       N - j from an out end, N from an in end
///   far jamb at N        N from an out end, N + j from an in end
/// Heights take no half joints at the datum: floors and sills are heights of masonry as stated.
/// Where interior walls cross each other's line the one listed first runs on, unless a stated length says otherwise.
[[nodiscard]] std::expected<Building, Refusals> resolve(const Job& job);

/// Greatest panel length between control joints under `rule` in a wall `height` high, before it is rounded down to half
/// units: rules "control-joint-us" and "control-joint-uk".
[[nodiscard]] Length greatest_panel(JointRule rule, Length height);

/// Least bearing of a lintel (rule "lintel-bearing").
[[nodiscard]] Length least_lintel_bearing();

}  // namespace stringcourse
