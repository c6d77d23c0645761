#pragma once
// A plain decimal and the unit behind it, as people write "10.3 MPa" or "12 lb".
#include <cstdint>
#include <optional>
#include <string_view>

namespace stringcourse {

/// digits / scale, exactly; scale is a power of ten. `unit`: the rest of the text, without blanks round it.
struct Decimal {
  std::int64_t digits = 0, scale = 1;
  std::string_view unit;
};

/// At most `before` digits before the point and `behind` behind it, together at most 18. None where the text begins
/// otherwise.
[[nodiscard]] std::optional<Decimal> read_decimal(std::string_view text, std::size_t before, std::size_t behind);

}  // namespace stringcourse
