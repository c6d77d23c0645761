#pragma once
// Rising: beds from here to the next height that must be met exactly; and the corners of one unit, tapped down to the
// line.
#include <array>
#include <optional>
#include <vector>

#include "measure/length.hpp"

namespace stringcourse::laying {

/// Beds of the courses from the one just read to the one whose top must be at a height.
struct BedsWanted {
  Length now;                 // top of the course read, over the datum
  Length target;              // top (or soffit) to be met
  std::vector<Length> units;  // unit heights of the courses still to be laid, lowest first
  Length bed;                 // as planned: 3/8 in, 10 mm
  Length either_way;          // 1/8 in, 3 mm. SOURCE: TMS 602 (second-hand)
  Length step;                // of the tape
};
struct Beds {
  std::vector<Length> beds;  // lowest first, in whole steps
  Length left;               // what steps cannot take; less than half of one
};
/// As even as they can be. None where the beds would leave what is allowed: then that many courses cannot meet the
/// height.
[[nodiscard]] std::optional<Beds> equal_beds(const BedsWanted& wanted);

/// A unit's four corners over (above zero) or under where they belong, and its face's distance from the line.
/// Corners: outer and inner at the end already met, outer and inner at the far end.
enum class UnitCorner { NearOuter, NearInner, FarOuter, FarInner };
struct UnitReadings {
  std::array<Length, 4> high;  // by UnitCorner
  Length thinnest_bed;         // as it lies
  Length least_bed;            // 1/4 in of a first bed, 1/4 in (3/8 - 1/8) of others
  Length step;
};
struct Tap {
  UnitCorner corner = UnitCorner::NearOuter;
  Length down;
};
struct UnitAdvice {
  bool lift = false;      // something lies too low, or driving it down would leave too thin a bed: lift, re-bed
  std::vector<Tap> taps;  // the highest corner first; empty: it lies right
};
/// Corners that are high by a step or more are tapped down, the highest first, none farther than its bed allows. A
/// corner low by a step or more cannot be tapped up: lift and re-bed.
[[nodiscard]] UnitAdvice advise(const UnitReadings& readings);

}  // namespace stringcourse::laying
