#pragma once
// From where the pegs were found to where they belong: how far to move each.
#include <vector>

#include "ground/tape_network.hpp"

namespace stringcourse::ground {

/// The design laid over what was found: turned by a unit vector (c, s), then shifted. No stretching.
struct Overlay {
  double c = 1, s = 0;
  Spot shift;
};
[[nodiscard]] constexpr Spot laid(const Overlay& overlay, const Spot& design) {
  return {overlay.c * design.x - overlay.s * design.y + overlay.shift.x,
          overlay.s * design.x + overlay.c * design.y + overlay.shift.y};
}

/// The overlay that leaves point `held` where it was found and lays the side to `toward` along the line found.
[[nodiscard]] Overlay overlay_from(const std::vector<Spot>& design, const std::vector<Spot>& found, int held,
                                   int toward);

/// For each point the way from where it was found to where it belongs, metres.
[[nodiscard]] std::vector<Spot> moves(const Overlay& overlay, const std::vector<Spot>& design,
                                      const std::vector<Spot>& found);

}  // namespace stringcourse::ground
