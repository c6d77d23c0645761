#pragma once
// Where the building sits on what was poured: the small shift and turn that leave the most room at its tightest place.
#include <vector>

#include "ground/tape_network.hpp"
#include "measure/length.hpp"

namespace stringcourse::ground {

/// Room that a movement of the building takes away: moving it by m takes m . direction of `room` at that place.
struct Clearance {
  Spot at;         // in plan, metres
  Spot direction;  // a unit vector
  Length room;     // as the building is planned to lie now; below zero: missing
};

struct SlabFit {
  Length east, north;      // shift of the plan's middle
  Spot middle;             // which place that is, metres
  double turn = 0;         // radians, to the left; so small that its square does not count
  Length room;             // the least of all rooms after it
  Length room_before;      // and as planned
  std::vector<int> tight;  // clearances that leave no more
};

/// Greatest turn: what linearising leaves out, turn^2 / 2 times the building's size, stays below 1/64 in.
[[nodiscard]] double greatest_turn(double size);

/// What is left of a room when the building has been moved so, metres.
[[nodiscard]] double room_after(const Clearance& clearance, const SlabFit& fit);

/// By a linear program in shift and turn. At least one clearance; where one direction is bound by nothing the building
/// does not move along it by more than `farthest`.
[[nodiscard]] SlabFit best_fit(const std::vector<Clearance>& clearances, Length farthest);

}  // namespace stringcourse::ground
