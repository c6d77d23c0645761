#pragma once
// Square roots in whole numbers.
#include <cmath>
#include <cstdint>

namespace stringcourse {

/// The whole part of a square root; `square` from 0 to 2^62. IEEE 754's root is rounded right on every machine; what is
/// lost where a double does not hold the square is put right in whole numbers.
[[nodiscard]] inline std::int64_t root_down(std::int64_t square) {
  auto root = static_cast<std::int64_t>(std::sqrt(static_cast<double>(square)));
  while (root * root > square) --root;
  while ((root + 1) * (root + 1) <= square) ++root;
  return root;
}

}  // namespace stringcourse
