#pragma once
// From the building to paper: drafting scales (ISO 5455, and steps between them where
// a sheet would else stay half empty), exact to the micrometre.
#include <array>

#include "measure/length.hpp"
#include "paper/display.hpp"

namespace stringcourse::paper {

/// 1 : denominator.
struct Scale {
  std::int32_t denominator = 20;

  /// Micrometres on paper, to the nearest (a tie goes up).
  constexpr Micrometres paper(Length length) const {
    const std::int64_t unit = std::int64_t{denominator} * 1000;
    return static_cast<Micrometres>(
        Length::nanometres(length.in_nanometres() + unit / 2).whole_multiples(Length::nanometres(unit)));
  }
  /// What so much paper shows.
  constexpr Length shown(Micrometres width) const {
    return Length::nanometres(std::int64_t{width} * denominator * 1000);
  }
  friend constexpr bool operator==(Scale, Scale) = default;
};

inline constexpr std::array<Scale, 14> kScales{
    {{10}, {20}, {25}, {30}, {40}, {50}, {60}, {75}, {100}, {150}, {200}, {300}, {500}, {1000}}};

/// The largest scale, not larger than `largest`, at which width x height fits into the room; the smallest if none does.
[[nodiscard]] constexpr Scale fitting_scale(Length width, Length height, Micrometres room_wide, Micrometres room_high,
                                            Scale largest) {
  for (const Scale scale : kScales) {
    if (scale.denominator < largest.denominator) continue;
    if (width <= scale.shown(room_wide) && height <= scale.shown(room_high)) return scale;
  }
  return kScales.back();
}

}  // namespace stringcourse::paper
