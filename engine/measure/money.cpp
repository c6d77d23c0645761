#include "measure/money.hpp"

#include "measure/digits.hpp"

namespace stringcourse {
namespace {

bool is_digit(char c) { return '0' <= c && c <= '9'; }

/// Digits with at most `places` behind a point, as a whole number of the last place; the whole text.
std::expected<std::int64_t, NoMoney> scaled(std::string_view text, int places, std::int64_t most) {
  if (text.starts_with('-')) return std::unexpected(NoMoney::BelowZero);
  if (text.contains(',')) return std::unexpected(NoMoney::DecimalComma);
  std::int64_t value = 0;
  int behind = -1;  // -1: no point yet
  bool digits = false;
  for (const char c : text) {
    if (c == '.' && behind < 0) {
      behind = 0;
      continue;
    }
    if (!is_digit(c)) return std::unexpected(NoMoney::NotANumber);
    digits = true;
    if (behind >= 0 && ++behind > places) return std::unexpected(NoMoney::TooFine);
    value = value * 10 + (c - '0');
    if (value > most) return std::unexpected(NoMoney::TooMuch);
  }
  if (!digits || text.ends_with('.')) return std::unexpected(NoMoney::NotANumber);
  for (int k = behind < 0 ? 0 : behind; k < places; ++k) value *= 10;
  if (value > most) return std::unexpected(NoMoney::TooMuch);
  return value;
}

std::string_view trimmed(std::string_view text) {
  while (text.starts_with(' ')) text.remove_prefix(1);
  while (text.ends_with(' ')) text.remove_suffix(1);
  return text;
}

}  // namespace

std::expected<Money, NoMoney> read_money(std::string_view text, int decimals) {
  text = trimmed(text);
  std::size_t end = text.size();
  while (end > 0 && text[end - 1] >= 'A' && text[end - 1] <= 'Z') --end;
  const auto units = scaled(trimmed(text.substr(0, end)), decimals, kMostMoney);
  if (!units) return std::unexpected(units.error());
  return Money{*units, text.substr(end)};
}

std::string money_text(std::int64_t units, int decimals) {
  std::string digits = number_text(units);
  const std::size_t places = static_cast<std::size_t>(decimals);
  if (places == 0) return digits;
  if (digits.size() <= places) digits.insert(0, places + 1 - digits.size(), '0');
  digits.insert(digits.size() - places, ".");
  return digits;
}

std::expected<std::int64_t, NoMoney> read_hundredths(std::string_view text) {
  return scaled(trimmed(text), 4, 1'000'000);
}

}  // namespace stringcourse
