#pragma once
// Masses as people write them, exact: a pound is 0.45359237 kg (international yard and pound agreement, 1959).
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

#include "measure/notation.hpp"

namespace stringcourse {

/// Whole hundredths of a milligram: a pound is 45359237 of them; a hundredth of a pound is rounded to the nearest.
struct Mass {
  std::int64_t units = 0;
  [[nodiscard]] constexpr Mass times(std::int64_t count) const { return {units * count}; }
  constexpr Mass& operator+=(Mass other) {
    units += other.units;
    return *this;
  }
  friend constexpr auto operator<=>(Mass, Mass) = default;
};
inline constexpr Mass kPound{45'359'237}, kKilogram{100'000'000};

/// "35 lb", "16.5 kg": above zero, at most 1'000'000 of either, at most two digits behind the point.
[[nodiscard]] std::optional<Mass> read_mass(std::string_view text);
/// In whole pounds or kilograms, after the tape, rounded up: "36 lb".
[[nodiscard]] std::string mass_text(Mass mass, Tape tape);

}  // namespace stringcourse
