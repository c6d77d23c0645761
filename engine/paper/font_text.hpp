#pragma once
// UTF-8 to characters that can be drawn. Every reader of a sheet's texts (width, PDF, SVG) goes through here, so that
// they agree on what a text holds.
#include <string>
#include <string_view>

namespace stringcourse::paper {

/// Stands for bytes that are no UTF-8, and for noncharacters.
inline constexpr char32_t kReplacement = 0xFFFD;

/// The characters of `text` that take part in a drawing. Promises: never fails; each ill-formed sequence gives one
/// kReplacement; controls (C0, DEL, C1), zero-width characters and marks that turn the writing direction are left
/// out, because a drawing has no use for them and they can hide what a line says.
[[nodiscard]] std::u32string drawable_characters(std::string_view text);

/// UTF-8 of one character (a surrogate or a value above U+10FFFF gives kReplacement).
[[nodiscard]] std::string utf8_of(char32_t character);

}  // namespace stringcourse::paper
