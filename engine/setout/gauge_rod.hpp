#pragma once
// The gauge rod: every height of the building on one stick, from one datum (the design top of course 1 is 0).
#include <cstdint>
#include <vector>

#include "walls/building.hpp"

namespace stringcourse::setout {

/// What a height on the rod is. Order is the order of printing at one height.
enum class RodEvent : std::uint8_t { Floor, Sill, CourseTop, Wire, Head, LintelCourse, BondBeam, PourStop, Top };

struct RodMark {
  Length at;  // from the datum, exact (course lines are whole nanometres)
  RodEvent event = RodEvent::CourseTop;
  std::int32_t course = 0;    // CourseTop, Wire, LintelCourse, BondBeam, PourStop, Top
  std::int32_t opening = -1;  // Floor, Sill, Head, LintelCourse: index into Building::openings
  friend bool operator==(const RodMark&, const RodMark&) = default;
};

/// All marks, lowest first. LintelCourse and BondBeam stand at the top of the course that they fill.
[[nodiscard]] std::vector<RodMark> gauge_rod(const Building& building);

}  // namespace stringcourse::setout
