#pragma once
// How the first courses are laid: corner leads, and the one unit in each stretch that closes it.
#include <cstdint>
#include <vector>

#include "bond/layout.hpp"
#include "walls/building.hpp"

namespace stringcourse::setout {

/// Units of one course of a lead, on either side of its corner.
struct LeadCourse {
  std::int32_t course = 1;
  std::int32_t arriving_units = 0;  // on the wall that ends at the corner
  std::int32_t leaving_units = 0;   // on the wall that starts there
  friend bool operator==(const LeadCourse&, const LeadCourse&) = default;
};

/// A corner built up first, racked back a half unit each course.
struct Lead {
  std::int32_t corner = 0;
  std::vector<LeadCourse> courses;
};

/// Most courses in a lead (common practice: four to five).
inline constexpr int kLeadCourses = 5;

/// One lead for each corner. The bottom course has as many units round the corner as the lead has courses (common
/// practice); each course above stops short of the one below, or at the same jamb.
[[nodiscard]] std::vector<Lead> leads(const Building& building, const Layout& layout);

/// The unit that closes one stretch: laid last, both ends buttered.
struct Closure {
  std::int32_t run = 0;     // index into Layout::runs
  std::uint32_t piece = 0;  // index into Layout::pieces
  friend bool operator==(const Closure&, const Closure&) = default;
};

/// The closure of each stretch of one course of the whole building, in the layout's order. It has a joint at both
/// ends; away from bars, cuts and corners where it can be, and as near the middle. A stretch whose pieces all show a
/// face has none.
[[nodiscard]] std::vector<Closure> closures(const Building& building, const Layout& layout, int course);
/// Those of one wall alone.
[[nodiscard]] std::vector<Closure> closures_on(const Building& building, const Layout& layout, int wall, int course);

}  // namespace stringcourse::setout
