#pragma once
// Ties in the beds where inner walls are butted against the wall that they meet, as often as the drawings ask. The
// program chooses neither how often nor which tie.
#include <cstdint>
#include <optional>
#include <vector>

#include "bond/layout.hpp"
#include "job/job.hpp"
#include "walls/building.hpp"

namespace stringcourse::steel {

/// In the bed on top of one course.
struct Tie {
  std::int32_t junction = 0, course = 1;  // into Building::junctions
  friend bool operator==(const Tie&, const Tie&) = default;
};

struct Ties {
  std::optional<std::int32_t> every;  // courses; none: the job does not say
  std::vector<Tie> ties;              // by course, then junction
  /// Junctions that are tied, by nothing that the job says: neither by ties nor by tees of joint reinforcement.
  std::vector<std::int32_t> unsaid;
};

/// Lapped junctions are held by their units, control joints by nothing: only tied ones have ties. None on the last
/// course; none where one of the two walls has no bed there.
[[nodiscard]] Ties ties(const Job& job, const Building& building, const Layout& layout);

}  // namespace stringcourse::steel
