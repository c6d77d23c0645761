#pragma once
// Words for refusals: numbers, pointers, guessing a mistyped name.
#include <cstddef>
#include <span>
#include <string>
#include <string_view>

#include "measure/characters.hpp"
#include "measure/digits.hpp"
#include "measure/quoted.hpp"

namespace stringcourse {

/// One reference token of a JSON pointer (RFC 6901): ~ becomes ~0, / becomes ~1. More than 80 characters are clipped.
[[nodiscard]] std::string pointer_token(std::string_view key);

/// Fewest single-character changes (insert, delete, replace) from one text to the other, counted in bytes.
[[nodiscard]] std::size_t edit_distance(std::string_view from, std::string_view to);

/// The known name nearest to a mistyped one; empty if none is near (two changes at most, and at most half its letters).
[[nodiscard]] std::string_view nearest_name(std::string_view typed, std::span<const std::string_view> known);

}  // namespace stringcourse
