#pragma once
// Words for refusals: quoting what stands in a document safely, counting characters, guessing a mistyped name.
#include <concepts>
#include <charconv>
#include <cstddef>
#include <span>
#include <string>
#include <string_view>

namespace stringcourse {

/// A whole number in plain digits.
template <std::integral Number>
[[nodiscard]] std::string number_text(Number number) {
  char digits[24];
  const auto end = std::to_chars(digits, digits + sizeof digits, number).ptr;
  return std::string(digits, end);
}

/// How many bytes from the start are valid UTF-8 (RFC 3629: no overlong forms, no surrogates, at most U+10FFFF).
[[nodiscard]] std::size_t valid_utf8_prefix(std::string_view text);

/// Characters (code points) in a UTF-8 text.
[[nodiscard]] std::size_t count_characters(std::string_view text);

/// The whole character that starts at or covers this byte of a UTF-8 text.
[[nodiscard]] std::string_view character_at(std::string_view text, std::size_t offset);

/// U+0000..001F, U+007F..009F. `offset` is where a character starts.
[[nodiscard]] bool is_control_character(std::string_view text, std::size_t offset);

/// The text between double angle marks, at most 40 characters of it; control, direction-changing and invisible characters are
/// spelled as \u202E.
[[nodiscard]] std::string quoted(std::string_view text);

/// One reference token of a JSON pointer (RFC 6901): ~ becomes ~0, / becomes ~1. More than 80 characters are clipped.
[[nodiscard]] std::string pointer_token(std::string_view key);

/// Fewest single-character changes (insert, delete, replace) from one text to the other, counted in bytes.
[[nodiscard]] std::size_t edit_distance(std::string_view from, std::string_view to);

/// The known name nearest to a mistyped one; empty if none is near (two changes at most, and at most half its letters).
[[nodiscard]] std::string_view nearest_name(std::string_view typed, std::span<const std::string_view> known);

/// "a, b or c".
[[nodiscard]] std::string one_of_words(std::span<const std::string_view> names);

}  // namespace stringcourse
