#pragma once
// The user's own words inside a message, made safe to show.
#include <cstddef>
#include <string>
#include <string_view>

namespace stringcourse {

/// Longest piece of a user's text that a message repeats, in characters.
inline constexpr std::size_t kQuotedLength = 40;

/// `text` between quotation marks, e.g. “14' 7'”: valid UTF-8 whatever the bytes were, at most kQuotedLength characters
/// inside (a longer one ends in ...); control, direction-changing and invisible characters are spelled as \u202E.
[[nodiscard]] std::string quoted(std::string_view text);

}  // namespace stringcourse
