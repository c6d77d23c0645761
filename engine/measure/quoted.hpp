#pragma once
// The user's own words inside a message, made safe to show.
#include <string>
#include <string_view>

namespace stringcourse::notation {

/// Longest piece of a user's text that a message repeats, in characters.
inline constexpr int kQuotedLength = 40;

/// `text` between double angle marks, e.g. «14' 7'»: valid UTF-8 whatever the bytes were, at most kQuotedLength
/// characters inside (a longer one ends in ...); control, direction and broken characters are shown as '?'.
[[nodiscard]] std::string quoted(std::string_view text);

}  // namespace stringcourse::notation
