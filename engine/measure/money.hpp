#pragma once
// Money as whole smallest units, read from what people write and written back; exact.
#include <cstdint>
#include <expected>
#include <string>
#include <string_view>

namespace stringcourse {

/// The most that one amount may be, in smallest units: sums of a job then stay far inside 64 bits.
inline constexpr std::int64_t kMostMoney = 1'000'000'000'000;

struct Money {
  std::int64_t units = 0;     // smallest units
  std::string_view currency;  // as it stands behind the amount; may be empty
};

enum class NoMoney { NotANumber, DecimalComma, TooFine, BelowZero, TooMuch };

/// "2.45", "2.45 USD", "12" with `decimals` places at most behind the point. Nothing is rounded.
[[nodiscard]] std::expected<Money, NoMoney> read_money(std::string_view text, int decimals);
/// "2.45"; the smallest units as a decimal.
[[nodiscard]] std::string money_text(std::int64_t units, int decimals);

/// Hundredths with at most four places behind the point, in ten-thousandths: "8.25" is 82'500. At most 100.
[[nodiscard]] std::expected<std::int64_t, NoMoney> read_hundredths(std::string_view text);

/// Nearest whole number to a * b / c, a tie up; a, b >= 0, c > 0.
[[nodiscard]] constexpr std::int64_t share_of(std::int64_t a, std::int64_t b, std::int64_t c) {
  return static_cast<std::int64_t>((static_cast<__int128>(a) * b * 2 + c) / (2 * static_cast<__int128>(c)));
}

}  // namespace stringcourse
