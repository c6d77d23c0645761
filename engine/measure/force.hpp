#pragma once
// Forces and weights of lines as people write them.
#include <optional>
#include <string_view>

namespace stringcourse {

/// "20 lb", "90 N", "9 kg" in newtons. None for anything else, for nothing or less, and above 1,000,000 N.
[[nodiscard]] std::optional<double> read_force(std::string_view text);
/// "0.001 lb/ft", "1.5 g/m", "0.015 N/m" in newtons for each metre.
[[nodiscard]] std::optional<double> read_line_weight(std::string_view text);

}  // namespace stringcourse
