#pragma once
// Whole numbers in plain digits.
#include <charconv>
#include <concepts>
#include <string>

namespace stringcourse {

template <std::integral Number>
[[nodiscard]] std::string number_text(Number number) {
  char digits[24];
  const auto end = std::to_chars(digits, digits + sizeof digits, number).ptr;
  return std::string(digits, end);
}

}  // namespace stringcourse
