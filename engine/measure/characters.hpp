#pragma once
// Characters of UTF-8 texts that others wrote: where they begin, and which of them could hide or turn what stands round
// them.
#include <cstddef>
#include <cstdint>
#include <string>
#include <string_view>

namespace stringcourse {

/// How many bytes from the start are valid UTF-8 (RFC 3629: no overlong forms, no surrogates, at most U+10FFFF).
[[nodiscard]] std::size_t valid_utf8_prefix(std::string_view text);

/// Characters (code points) in a UTF-8 text.
[[nodiscard]] std::size_t count_characters(std::string_view text);

/// The whole character that starts at or covers this byte of a text; one byte where no valid character does.
[[nodiscard]] std::string_view character_at(std::string_view text, std::size_t offset);

/// Bytes at the start of a text that begin no valid character but belong together: a first byte with what follows of
/// those that it announces.
[[nodiscard]] std::size_t broken_size(std::string_view text);

/// The code point of one character as character_at gives it; kBroken of a byte that belongs to none.
[[nodiscard]] std::uint32_t code_point(std::string_view character);
inline constexpr std::uint32_t kBroken = 0xFFFFFFFF;

/// U+0000..001F, U+007F..009F.
[[nodiscard]] bool is_control(std::uint32_t point);
/// Control characters, and all that turn the direction of writing, break lines or cannot be seen.
[[nodiscard]] bool is_unshown(std::uint32_t point);

/// "\u202E"; beyond U+FFFF "\u{E0041}". Of a broken byte "?".
[[nodiscard]] std::string spelled(std::uint32_t point);
/// The text with what is_unshown spelled.
[[nodiscard]] std::string with_unshown_spelled(std::string_view text);

}  // namespace stringcourse
