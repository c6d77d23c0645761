#pragma once
// Words for refusals: numbers, pointers, guessing a mistyped name.
#include <concepts>
#include <charconv>
#include <cstddef>
#include <span>
#include <string>
#include <string_view>

#include "measure/characters.hpp"
#include "measure/quoted.hpp"

namespace stringcourse {

/// A whole number in plain digits.
template <std::integral Number>
[[nodiscard]] std::string number_text(Number number) {
  char digits[24];
  const auto end = std::to_chars(digits, digits + sizeof digits, number).ptr;
  return std::string(digits, end);
}

/// One reference token of a JSON pointer (RFC 6901): ~ becomes ~0, / becomes ~1. More than 80 characters are clipped.
[[nodiscard]] std::string pointer_token(std::string_view key);

/// Fewest single-character changes (insert, delete, replace) from one text to the other, counted in bytes.
[[nodiscard]] std::size_t edit_distance(std::string_view from, std::string_view to);

/// The known name nearest to a mistyped one; empty if none is near (two changes at most, and at most half its letters).
[[nodiscard]] std::string_view nearest_name(std::string_view typed, std::span<const std::string_view> known);

/// "a, b or c".
[[nodiscard]] std::string one_of_words(std::span<const std::string_view> names);

}  // namespace stringcourse
