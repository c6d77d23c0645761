#pragma once
// What breaks the bed on top of a course, and where two walls both have one: for what lies in it. Internal to steel/.
#include <cstdint>
#include <vector>

#include "bond/layout.hpp"
#include "steel/wires.hpp"
#include "walls/building.hpp"

namespace stringcourse::steel {

/// An opening of that course, a control joint, a lintel in one piece that goes on in the course above.
struct Break {
  Length from, to;
  WireEnd kind = WireEnd::Jamb;
};

struct Plan {
  const Building& building;
  const Layout& layout;
};

/// The openings and lintels of one wall that break the bed on top of this course.
[[nodiscard]] std::vector<Break> holes_of(const Plan& plan, std::int32_t wall, std::int32_t course);
[[nodiscard]] Length middle_of(const Junction& junction);
/// Whether both walls of a junction have a bed at it on top of this course: a lintel's end leaves a joint there, and in
/// the square of a re-entrant corner the corner's own piece lies.
[[nodiscard]] bool stands(const Plan& plan, const Junction& junction, std::int32_t course);

}  // namespace stringcourse::steel
