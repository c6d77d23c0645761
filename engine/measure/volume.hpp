#pragma once
// Exact volumes: whole cubic nanometres.
#include <cstdint>

#include "measure/length.hpp"

namespace stringcourse {

struct Volume {
  int128 cubic_nanometres = 0;

  [[nodiscard]] static constexpr Volume box(Length a, Length b, Length c) {
    return {static_cast<int128>(a.in_nanometres()) * b.in_nanometres() * c.in_nanometres()};
  }
  constexpr Volume& operator+=(const Volume& other) {
    cubic_nanometres += other.cubic_nanometres;
    return *this;
  }
  [[nodiscard]] friend constexpr Volume operator+(Volume a, const Volume& b) { return a += b; }
  friend constexpr bool operator==(const Volume&, const Volume&) = default;
  /// To the nearest; a tie goes up. Volumes here are not below zero.
  [[nodiscard]] constexpr std::int64_t in_cubic_centimetres() const {
    constexpr int128 kCubicCentimetre = static_cast<int128>(1'000'000'000'000) * 1'000'000'000;
    return static_cast<std::int64_t>((cubic_nanometres + kCubicCentimetre / 2) / kCubicCentimetre);
  }
};

}  // namespace stringcourse
