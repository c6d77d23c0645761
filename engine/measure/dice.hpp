#pragma once
// Drawn numbers that are alike on every machine.
#include <cstdint>

namespace stringcourse {

/// The next number of splitmix64 (Steele, Lea, Flood 2014); `state` is where it stands, any value begins.
[[nodiscard]] constexpr std::uint64_t drawn(std::uint64_t& state) {
  std::uint64_t mixed = (state += 0x9E3779B97F4A7C15ULL);
  mixed = (mixed ^ (mixed >> 30)) * 0xBF58476D1CE4E5B9ULL;
  mixed = (mixed ^ (mixed >> 27)) * 0x94D049BB133111EBULL;
  return mixed ^ (mixed >> 31);
}

}  // namespace stringcourse
