#pragma once
// The ordered cost as one comparable, addable key: four words compared in order. Addition is word by word, so keys of
// parts of a wall add up to the key of the wall and the search can use them like numbers.
#include <array>
#include <compare>
#include <cstdint>
#include <limits>

#include "bond/layout.hpp"

namespace stringcourse::bond {

/// Which order the terms are compared in.
enum class Order { HalfBond, QuarterBond, Weighted };

/// Counts are held in 32 bits each; a panel has fewer than 2^31 joints by the bounds of the job reader.
struct Key {
  std::array<std::uint64_t, 4> words{};

  friend constexpr auto operator<=>(const Key&, const Key&) = default;
  friend constexpr Key operator+(const Key& a, const Key& b) {
    Key sum;
    for (std::size_t i = 0; i < 4; ++i) sum.words[i] = a.words[i] + b.words[i];
    return sum;
  }
  /// No layout: greater than every cost. Never added to.
  static constexpr Key impossible() { return Key{{std::numeric_limits<std::uint64_t>::max(), 0, 0, 0}}; }
  constexpr bool is_impossible() const { return words[0] == std::numeric_limits<std::uint64_t>::max(); }
};

/// Parts of a cost that come up while laying one piece or one joint.
struct Charge {
  std::uint32_t conceded = 0;  // weight of the rules given up (bond/concessions.hpp): above everything
  std::uint32_t short_laps = 0, cuts = 0, short_pieces = 0, shifted = 0;
  std::uint64_t deviation = 0, units = 0;
  std::uint32_t lintels = 0;  // half units that one-piece lintels are longer than they must be, and unequal ends
  std::uint32_t changed =
      0;  // pieces not as they were printed before: below all that makes a layout good, above its size
};

/// The second word holds 24 bits of each of two counts and 16 for lintels; the third 20 for shifted joints above the
/// deviation: 2^44 nm are 17 km of it.
inline constexpr int kThirdBits = 24, kLintelBits = 16, kDeviationBits = 44;

[[nodiscard]] constexpr Key key_of(const Charge& charge, Order order) {
  const auto pair = [](std::uint32_t high, std::uint32_t low) {
    return (static_cast<std::uint64_t>(high) << 32) | low;
  };
  const auto counts = [&](std::uint32_t second, std::uint32_t third) {
    return static_cast<std::uint64_t>(second) << (kThirdBits + kLintelBits) |
           static_cast<std::uint64_t>(third) << kLintelBits | charge.lintels;
  };
  const std::uint64_t below = static_cast<std::uint64_t>(charge.shifted) << kDeviationBits | charge.deviation;
  switch (order) {
    case Order::HalfBond:
      return Key{{pair(charge.conceded, charge.short_laps), counts(charge.cuts, charge.short_pieces), below,
                  pair(charge.changed, static_cast<std::uint32_t>(charge.units))}};
    case Order::QuarterBond:
      return Key{{pair(charge.conceded, charge.cuts), counts(charge.short_pieces, charge.short_laps), below,
                  pair(charge.changed, static_cast<std::uint32_t>(charge.units))}};
    case Order::Weighted: break;
  }
  return Key{{charge.units, 0, 0, 0}};
}

/// The key read back as a Cost; extra bars are counted elsewhere, changed pieces nowhere. Weighted sums are reported as
/// short_laps.
[[nodiscard]] constexpr Cost cost_of(const Key& key, Order order) {
  const auto high = [](std::uint64_t word) { return static_cast<std::int64_t>(word >> 32); };
  const auto low = [](std::uint64_t word) { return static_cast<std::int64_t>(word & 0xffffffffU); };
  Cost cost;
  if (order == Order::Weighted) {
    cost.short_laps = static_cast<std::int64_t>(key.words[0]);
    return cost;
  }
  const bool laps_first = order == Order::HalfBond;
  const auto second = static_cast<std::int64_t>(key.words[1] >> (kThirdBits + kLintelBits));
  const auto third = static_cast<std::int64_t>(key.words[1] >> kLintelBits & ((std::uint64_t{1} << kThirdBits) - 1));
  cost.conceded = high(key.words[0]);
  cost.short_laps = laps_first ? low(key.words[0]) : third;
  cost.cuts = laps_first ? second : low(key.words[0]);
  cost.short_pieces = laps_first ? third : second;
  cost.shifted_joints = static_cast<std::int64_t>(key.words[2] >> kDeviationBits);
  cost.joint_deviation = static_cast<std::int64_t>(key.words[2] & ((std::uint64_t{1} << kDeviationBits) - 1));
  cost.units = low(key.words[3]);
  return cost;
}

/// A cost of whole panels as a key, to compare and add (extra bars left out).
[[nodiscard]] constexpr Key key_of(const Cost& cost, Order order) {
  if (order == Order::Weighted) return Key{{static_cast<std::uint64_t>(cost.short_laps), 0, 0, 0}};
  return key_of(Charge{.conceded = static_cast<std::uint32_t>(cost.conceded),
                       .short_laps = static_cast<std::uint32_t>(cost.short_laps),
                       .cuts = static_cast<std::uint32_t>(cost.cuts),
                       .short_pieces = static_cast<std::uint32_t>(cost.short_pieces),
                       .shifted = static_cast<std::uint32_t>(cost.shifted_joints),
                       .deviation = static_cast<std::uint64_t>(cost.joint_deviation),
                       .units = static_cast<std::uint64_t>(cost.units)},
                order);
}

}  // namespace stringcourse::bond
