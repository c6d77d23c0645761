#pragma once
// Exact lengths. One Length is a whole number of nanometres: 1/64 in is 396,875 nm exactly and
// 1 mm is 1,000,000 nm, so every mark of either tape is exact. Nothing here rounds unless its name says so.
#include <compare>
#include <cstdint>

namespace stringcourse {

using int128 = __int128;

/// A displacement along a line, in whole nanometres. Range by contract: |length| <= 10 km (kLongest),
/// checked where a length is read in; sums of a building's lengths then stay far inside 64 bits.
class Length {
 public:
  constexpr Length() = default;
  static constexpr Length nanometres(std::int64_t count) { return Length(count); }
  static constexpr Length millimetres(std::int64_t count) { return Length(count * 1'000'000); }
  static constexpr Length inches(std::int64_t count) { return Length(count * 25'400'000); }
  static constexpr Length feet(std::int64_t count) { return Length(count * 304'800'000); }
  /// Sixteenths and sixty-fourths of an inch, exact.
  static constexpr Length sixteenths(std::int64_t count) { return Length(count * 1'587'500); }
  static constexpr Length sixty_fourths(std::int64_t count) { return Length(count * 396'875); }

  constexpr std::int64_t in_nanometres() const { return nanometres_; }

  constexpr Length operator-() const { return Length(-nanometres_); }
  constexpr Length& operator+=(Length other) {
    nanometres_ += other.nanometres_;
    return *this;
  }
  constexpr Length& operator-=(Length other) {
    nanometres_ -= other.nanometres_;
    return *this;
  }
  friend constexpr Length operator+(Length a, Length b) { return Length(a.nanometres_ + b.nanometres_); }
  friend constexpr Length operator-(Length a, Length b) { return Length(a.nanometres_ - b.nanometres_); }
  friend constexpr Length operator*(Length a, std::int64_t n) { return Length(a.nanometres_ * n); }
  friend constexpr Length operator*(std::int64_t n, Length a) { return a * n; }
  friend constexpr auto operator<=>(Length, Length) = default;

  /// Whole multiples of `step` in this length, rounded towards minus infinity. step > 0.
  constexpr std::int64_t whole_multiples(Length step) const {
    const std::int64_t quotient = nanometres_ / step.nanometres_;
    return quotient - ((nanometres_ % step.nanometres_ != 0) && (nanometres_ < 0) ? 1 : 0);
  }
  constexpr bool is_multiple_of(Length step) const { return nanometres_ % step.nanometres_ == 0; }
  /// Half of this length, rounded towards minus infinity to a whole nanometre.
  constexpr Length half_down() const { return Length(nanometres_ >> 1); }

 private:
  explicit constexpr Length(std::int64_t count) : nanometres_(count) {}
  std::int64_t nanometres_ = 0;
};

inline constexpr Length kLongest = Length::nanometres(10'000'000'000'000);  // 10 km

/// The length without its sign.
constexpr Length magnitude(Length length) { return length < Length() ? -length : length; }

/// Nearest whole multiple of `step` (a tie goes up). Used once, on the way to paper.
constexpr Length rounded_to(Length length, Length step) {
  return step * (length + step.half_down()).whole_multiples(step);
}

/// A place along a wall, measured from that wall's first corner (outer face). Position - Position is a Length.
class Position {
 public:
  constexpr Position() = default;
  static constexpr Position from_start(Length distance) { return Position(distance); }
  constexpr Length distance_from_start() const { return distance_; }
  friend constexpr Position operator+(Position p, Length l) { return Position(p.distance_ + l); }
  friend constexpr Position operator-(Position p, Length l) { return Position(p.distance_ - l); }
  friend constexpr Length operator-(Position a, Position b) { return a.distance_ - b.distance_; }
  friend constexpr auto operator<=>(Position, Position) = default;

 private:
  explicit constexpr Position(Length distance) : distance_(distance) {}
  Length distance_;
};

/// A place that need not be a whole nanometre: numerator / denominator nanometres from the wall's start.
/// Exact; denominators are at most twice the number of joints in a run.
struct ExactPosition {
  std::int64_t numerator = 0;
  std::int64_t denominator = 1;  // > 0

  friend constexpr std::strong_ordering operator<=>(const ExactPosition& a, const ExactPosition& b) {
    const int128 left = static_cast<int128>(a.numerator) * b.denominator;
    const int128 right = static_cast<int128>(b.numerator) * a.denominator;
    return left <=> right;
  }
  friend constexpr bool operator==(const ExactPosition& a, const ExactPosition& b) {
    return (a <=> b) == std::strong_ordering::equal;
  }
  /// The nearest whole nanometre (a tie goes up): a mark's value before it is rounded to the tape.
  constexpr Length nearest_nanometre() const {
    const int128 doubled = 2 * static_cast<int128>(numerator) + denominator;
    const int128 divisor = 2 * static_cast<int128>(denominator);
    int128 quotient = doubled / divisor;
    if (doubled % divisor != 0 && doubled < 0) --quotient;
    return Length::nanometres(static_cast<std::int64_t>(quotient));
  }
};

}  // namespace stringcourse
