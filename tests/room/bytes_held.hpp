#pragma once
// Bytes that this program holds, counted by its own operator new.
#include <cstdint>

namespace stringcourse::room_test {

/// Asked for and not given back.
[[nodiscard]] std::int64_t bytes_held();
/// The most that was held at one time since the last count_from_now().
[[nodiscard]] std::int64_t most_held();
void count_from_now();

}  // namespace stringcourse::room_test
