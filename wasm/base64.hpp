#pragma once
// Bytes inside a JSON text. SOURCE: RFC 4648, 4.
#include <cstdint>
#include <optional>
#include <string_view>
#include <vector>

namespace stringcourse::border {

/// Nothing if the text is not whole groups of four letters, padded at the end only.
[[nodiscard]] std::optional<std::vector<std::uint8_t>> from_base64(std::string_view text);

}  // namespace stringcourse::border
