#include "measure/force.hpp"

#include "measure/decimal.hpp"

namespace stringcourse {
namespace {

constexpr double kPound = 4.4482216152605;  // N, exactly (0.45359237 kg x 9.80665 m/s^2)
constexpr double kKilogram = 9.80665;
constexpr double kFoot = 0.3048;

struct Measured {
  double number = 0;
  std::string_view unit;
};

std::optional<Measured> measured(std::string_view text) {
  const auto read = read_decimal(text, 9, 6);
  if (!read) return std::nullopt;
  return Measured{static_cast<double>(read->digits) / static_cast<double>(read->scale), read->unit};
}

}  // namespace

std::optional<double> read_force(std::string_view text) {
  const auto value = measured(text);
  if (!value) return std::nullopt;
  double newtons = 0;
  if (value->unit == "lb" || value->unit == "lbf") newtons = value->number * kPound;
  else if (value->unit == "N") newtons = value->number;
  else if (value->unit == "kg" || value->unit == "kgf") newtons = value->number * kKilogram;
  return newtons > 0 && newtons <= 1e6 ? std::optional(newtons) : std::nullopt;
}

std::optional<double> read_line_weight(std::string_view text) {
  const auto value = measured(text);
  if (!value) return std::nullopt;
  double weight = 0;
  if (value->unit == "lb/ft") weight = value->number * kPound / kFoot;
  else if (value->unit == "g/m") weight = value->number * kKilogram / 1000;
  else if (value->unit == "N/m") weight = value->number;
  return weight > 0 && weight <= 1e4 ? std::optional(weight) : std::nullopt;
}

}  // namespace stringcourse
