#include "measure/stress.hpp"

#include "measure/decimal.hpp"

namespace stringcourse {

std::optional<Stress> read_stress(std::string_view text) {
  constexpr std::int64_t kMost = 200'000;  // psi
  const auto value = read_decimal(text, 6, 3);
  if (!value) return std::nullopt;
  const std::int64_t thousandths = value->digits * (1'000 / value->scale);
  if (thousandths <= 0) return std::nullopt;
  if (value->unit == "MPa" || value->unit == "N/mm2") {
    constexpr std::int64_t kPart = Stress::kPerMegapascal / 1'000;
    if (thousandths > Stress::psi(kMost).parts / kPart) return std::nullopt;
    return Stress{thousandths * kPart};
  }
  std::int64_t psi = 0;
  if (value->unit == "ksi") psi = thousandths;
  else if (value->unit == "psi" && thousandths % 1'000 == 0) psi = thousandths / 1'000;
  return psi > 0 && psi <= kMost ? std::optional(Stress::psi(psi)) : std::nullopt;
}

}  // namespace stringcourse
