#pragma once
// What is given up, and what each costs, where a stretch of wall closes geometrically but not by all the rules. The
// weights put the milder before the graver: the sum of weights is compared before every other term of the cost, so that
// as few and as mild rules as can be are given up. docs/bond-model.md lists them in the same order.
#include <cstdint>
#include <vector>

#include "bond/layout.hpp"
#include "bond/place.hpp"

namespace stringcourse::bond {

namespace weight {

inline constexpr std::uint32_t kWideJoints = 1;  // a run's joints beyond the job's range, within the site tolerance
inline constexpr std::uint32_t kBarUnheld = 4;  // a bar of its own place that no whole cell holds in a course, or whose
                                                // cells in two neighbouring courses share too little
inline constexpr std::uint32_t kBarSpacing = 4;       // spaced bars farther apart than asked
inline constexpr std::uint32_t kCutUnderBearing = 8;  // a saw cut without a whole cell under a lintel's bearing
inline constexpr std::uint32_t kLap = 16;             // a lap under a quarter unit, down to 2 in (50 mm)
inline constexpr std::uint32_t kCutFace = 32;         // a saw cut that shows at a jamb, free end or control joint
inline constexpr std::uint32_t kStackedLap = 64;      // a lap of less than 2 in
inline constexpr std::uint32_t kCutCorner = 128;  // a saw cut, or a half beside others, at a corner that runs through
inline constexpr std::uint32_t kBare = 1024;      // a stretch that no pieces fill

}  // namespace weight

[[nodiscard]] constexpr std::uint32_t weight_of_lap(bool stacked) {
  return stacked ? weight::kStackedLap : weight::kLap;
}

/// What one concession weighs.
[[nodiscard]] std::int64_t weight_of(Concession::What what);

/// Everything that these panels give up, by panel and course. Bars that are spaced come later (place_bars).
[[nodiscard]] std::vector<Concession> concessions_of(const std::vector<PlacedPanel>& panels);

}  // namespace stringcourse::bond
