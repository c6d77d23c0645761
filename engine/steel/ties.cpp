#include "steel/ties.hpp"

#include <algorithm>

#include "steel/beds.hpp"

namespace stringcourse::steel {
namespace {

bool is_tied_by_wire(const Job& job, const Building& building) {
  return job.steel.wire_tees.value_or(WireTees::Pieces) == WireTees::Pieces &&
         std::ranges::any_of(building.courses, &Course::wire);
}

}  // namespace

Ties ties(const Job& job, const Building& building, const Layout& layout) {
  Ties ties;
  ties.every = job.steel.tie_every;
  const auto last = static_cast<std::int32_t>(building.courses.size());
  const auto count = static_cast<std::int32_t>(building.junctions.size());
  const auto is_tied = [&](std::int32_t junction) {
    return building.junctions[static_cast<std::size_t>(junction)].kind == JunctionKind::Tied;
  };
  for (std::int32_t course = 1; ties.every && course < last; ++course) {
    for (std::int32_t junction = 0; course % *ties.every == 0 && junction < count; ++junction) {
      const Junction& at = building.junctions[static_cast<std::size_t>(junction)];
      if (is_tied(junction) && stands({building, layout}, at, course)) ties.ties.push_back({junction, course});
    }
  }
  if (ties.every || is_tied_by_wire(job, building)) return ties;
  for (std::int32_t junction = 0; junction < count; ++junction) {
    if (is_tied(junction)) ties.unsaid.push_back(junction);
  }
  return ties;
}

}  // namespace stringcourse::steel
