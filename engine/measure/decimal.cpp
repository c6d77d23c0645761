#include "measure/decimal.hpp"

namespace stringcourse {

std::optional<Decimal> read_decimal(std::string_view text, std::size_t before, std::size_t behind) {
  Decimal found;
  std::size_t at = 0, whole = 0, parts = 0;
  bool point = false;
  for (; at < text.size(); ++at) {
    const char c = text[at];
    if (c == '.' && !point) {
      point = true;
      continue;
    }
    if (c < '0' || c > '9') break;
    if (++(point ? parts : whole) > (point ? behind : before)) return std::nullopt;
    found.digits = found.digits * 10 + (c - '0');
    if (point) found.scale *= 10;
  }
  if (whole + parts == 0) return std::nullopt;
  while (at < text.size() && text[at] == ' ') ++at;
  while (text.size() > at && text.back() == ' ') text.remove_suffix(1);
  found.unit = text.substr(at);
  return found;
}

}  // namespace stringcourse
