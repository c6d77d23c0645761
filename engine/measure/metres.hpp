#pragma once
// Lengths as floating-point metres and back, for least squares and probabilities: never for what decides where a unit
// goes.
#include <cstdint>

#include "measure/length.hpp"

namespace stringcourse {

[[nodiscard]] constexpr double metres(Length length) { return static_cast<double>(length.in_nanometres()) / 1e9; }

/// The nearest nanometre; a tie goes away from zero. |metres| below 9e9.
[[nodiscard]] constexpr Length length_of(double metres) {
  const double scaled = metres * 1e9;
  return Length::nanometres(static_cast<std::int64_t>(scaled < 0 ? scaled - 0.5 : scaled + 0.5));
}

}  // namespace stringcourse
