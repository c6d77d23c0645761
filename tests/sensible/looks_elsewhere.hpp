#pragma once
// STRINGCOURSE_FIRST_SEED and STRINGCOURSE_SENSIBLE: other seeds, and more of them, than a test takes by itself.
#include <cstdint>
#include <cstdlib>

namespace stringcourse::property {

inline std::uint64_t number_from(const char* name, std::uint64_t otherwise) {
  const char* text = std::getenv(name);
  return text != nullptr ? std::strtoull(text, nullptr, 10) : otherwise;
}

struct Seeds {
  std::uint64_t first, count;
  [[nodiscard]] std::uint64_t beyond() const { return first + count; }
};

inline Seeds seeds(std::uint64_t otherwise) {
  return {number_from("STRINGCOURSE_FIRST_SEED", 1), number_from("STRINGCOURSE_SENSIBLE", otherwise)};
}

}  // namespace stringcourse::property
