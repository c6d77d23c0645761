#pragma once
// The choices of a whole building: sides cost each other only through the bits they share, so the best choice of all
// bits is found by eliminating one bit after another (min-plus), exactly.
#include <cstdint>
#include <vector>

#include "bond/key.hpp"

namespace stringcourse::bond {

/// What one panel costs for each set of values of its bits: costs[v], bit i of v being the value of bits[i].
struct Factor {
  std::vector<std::int32_t> bits;  // ascending
  std::vector<Key> costs;          // 2^bits; impossible() where nothing lays
};

struct Assignment {
  std::vector<std::uint8_t> values;  // by bit
  Key cost;                          // impossible() when no assignment is possible
  bool exact = true;                 // false: some bits were settled one by one, being too entangled
};

/// The assignment of least total cost; among equals the one found first by a fixed order. Exact up to kWidest bits
/// joined at a time; beyond that bits are settled greedily and `exact` is false.
inline constexpr std::size_t kWidest = 14;
[[nodiscard]] Assignment best_assignment(std::vector<Factor> factors, std::size_t bit_count);

}  // namespace stringcourse::bond
