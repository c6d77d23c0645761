#pragma once
// Exact places along a wall with the whole nanometre kept beside the fraction, so that nearly every comparison is one
// subtraction of whole numbers and only a near tie is multiplied out.
#include <cstdint>

#include "measure/length.hpp"

namespace stringcourse::bond {

/// numerator / denominator nanometres, denominator > 0; whole = floor(numerator / denominator).
struct Exact {
  std::int64_t numerator = 0;
  std::int64_t denominator = 1;
  std::int64_t whole = 0;

  static constexpr Exact make(int128 numerator, std::int64_t denominator) {
    const auto narrow =
        static_cast<std::int64_t>(numerator);  // fits: places lie within 10 km, denominators within 2^20
    std::int64_t quotient = narrow / denominator;
    if (narrow % denominator != 0 && narrow < 0) --quotient;
    return Exact{narrow, denominator, quotient};
  }
  static constexpr Exact at(std::int64_t nanometres) { return Exact{nanometres, 1, nanometres}; }
  /// This place moved by whole nanometres.
  constexpr Exact moved(std::int64_t nanometres) const {
    return Exact{numerator + nanometres * denominator, denominator, whole + nanometres};
  }
};

/// Sign of (a - b) - offset, exactly: -1, 0 or 1.
[[nodiscard]] constexpr int compare(const Exact& a, const Exact& b, std::int64_t offset = 0) {
  const std::int64_t floors = a.whole - b.whole - offset;  // a - b - offset lies within (floors - 1, floors + 1)
  if (floors >= 1) return 1;
  if (floors <= -1) return -1;
  if (a.denominator == b.denominator) {
    const int128 difference =
        static_cast<int128>(a.numerator) - b.numerator - static_cast<int128>(offset) * a.denominator;
    return difference > 0 ? 1 : difference < 0 ? -1 : 0;
  }
  const int128 left = static_cast<int128>(a.numerator) * b.denominator;
  const int128 right =
      static_cast<int128>(b.numerator) * a.denominator + static_cast<int128>(offset) * a.denominator * b.denominator;
  return left > right ? 1 : left < right ? -1 : 0;
}

/// |a - b| < limit.
[[nodiscard]] constexpr bool closer_than(const Exact& a, const Exact& b, std::int64_t limit) {
  return compare(a, b, limit) < 0 && compare(b, a, limit) < 0;
}
/// |a - b| <= limit.
[[nodiscard]] constexpr bool within(const Exact& a, const Exact& b, std::int64_t limit) {
  return compare(a, b, limit) <= 0 && compare(b, a, limit) <= 0;
}

}  // namespace stringcourse::bond
