#include "measure/mass.hpp"

#include "measure/decimal.hpp"
#include "measure/digits.hpp"
#include "measure/length.hpp"

namespace stringcourse {
std::optional<Mass> read_mass(std::string_view text) {
  constexpr std::int64_t kMost = 1'000'000;
  const auto decimal = read_decimal(text, 7, 2);
  if (!decimal || (decimal->unit != "lb" && decimal->unit != "kg")) return std::nullopt;
  if (decimal->digits == 0 || decimal->digits > kMost * decimal->scale) return std::nullopt;
  const int128 units = static_cast<int128>((decimal->unit == "lb" ? kPound : kKilogram).units) * decimal->digits;
  return Mass{static_cast<std::int64_t>((units + decimal->scale / 2) / decimal->scale)};
}

std::string mass_text(Mass mass, Tape tape) {
  const bool pounds = tape == Tape::Inches;
  const std::int64_t one = (pounds ? kPound : kKilogram).units;
  return number_text((mass.units + one - 1) / one) + ' ' + (pounds ? "lb" : "kg");
}

}  // namespace stringcourse
