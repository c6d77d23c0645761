#include "proof/lap_rule.hpp"

#include <algorithm>
#include <charconv>
#include <string>
#include <vector>

namespace stringcourse::proof {
namespace {

/// A whole number of any size: digits of base ten thousand, lowest first.
using Number = std::vector<std::int64_t>;
constexpr std::int64_t kBase = 10'000;

Number number(std::int64_t value) {
  Number digits;
  for (; value > 0; value /= kBase) digits.push_back(value % kBase);
  return digits;
}

Number operator*(const Number& a, const Number& b) {
  Number sum(a.size() + b.size() + 1, 0);
  for (std::size_t i = 0; i < a.size(); ++i) {
    for (std::size_t k = 0; k < b.size(); ++k) sum[i + k] += a[i] * b[k];
  }
  for (std::size_t i = 0; i + 1 < sum.size(); ++i) {
    sum[i + 1] += sum[i] / kBase;
    sum[i] %= kBase;
  }
  while (!sum.empty() && sum.back() == 0) sum.pop_back();
  return sum;
}

bool no_less(const Number& a, const Number& b) {
  if (a.size() != b.size()) return a.size() > b.size();
  for (std::size_t i = a.size(); i-- > 0;) {
    if (a[i] != b[i]) return a[i] > b[i];
  }
  return true;
}

/// Pounds on the square inch, as a quotient.
struct Psi {
  Number over, under;
};

std::optional<Psi> psi(const std::optional<std::string>& text) {
  if (!text) return std::nullopt;
  std::int64_t whole = 0, scale = 1;
  bool behind = false;
  std::string unit;
  for (const char c : *text) {
    if (c == '.' && unit.empty()) behind = true;
    else if (c >= '0' && c <= '9' && unit.empty()) whole = whole * 10 + (c - '0'), scale *= behind ? 10 : 1;
    else if (c != ' ') unit += c;
  }
  if (unit == "psi") return Psi{number(whole), number(scale)};
  if (unit == "ksi") return Psi{number(whole * 1'000), number(scale)};
  // 1 MPa = 1,000,000 x 0.0254^2 / 4.4482216152605 psi
  if (unit == "MPa" || unit == "Nmm" || unit == "N/mm2")
    return Psi{number(whole) * number(645'160'000'000) * number(10'000), number(scale) * number(44'482'216'152'605)};
  return std::nullopt;
}

enum class Step { ToFive, ToSeven, Beyond };

Step step_of(const std::string& size) {
  int mark = 0;
  std::from_chars(size.data() + 1, size.data() + size.size(), mark);
  if (size.front() != '#') return mark <= 16 ? Step::ToFive : Step::ToSeven;
  return mark <= 5 ? Step::ToFive : mark <= 7 ? Step::ToSeven : Step::Beyond;
}

/// lap >= (parts / 10000) db^2 fy / (K sqrt f'm).
bool keeps_equation(std::int64_t parts, const LapAsked& asked, Length k, const Psi& masonry, const Psi& steel,
                    Length lap) {
  const Number db = number(asked.diameter.in_nanometres()), l = number(lap.in_nanometres());
  const Number around = number(k.in_nanometres()), share = number(parts), whole = number(10'000);
  const Number left = l * l * around * around * whole * whole * masonry.over * steel.under * steel.under;
  const Number right = share * share * db * db * db * db * steel.over * steel.over * masonry.under;
  return no_less(left, right);
}

bool keeps_tms_402(const Lap& rule, const LapAsked& asked, int diameters, Length lap) {
  constexpr std::int64_t kParts[] = {1'300, 1'690, 1'950};
  const Length k = std::min(asked.around, asked.diameter * diameters);
  return lap >= Length::inches(12) && keeps_equation(kParts[static_cast<int>(step_of(asked.size))], asked, k,
                                                     *psi(rule.masonry), *psi(rule.steel), lap);
}

bool keeps_florida(const Lap& rule, const LapAsked& asked, Length lap) {
  constexpr std::int64_t kParts[] = {1'300, 1'352, 1'560};
  const Length db = asked.diameter, k = std::min(asked.around, db * 5);
  if (lap < db * 40) return false;
  return lap >= db * 72 || keeps_equation(kParts[static_cast<int>(step_of(asked.size))], asked, k, *psi(rule.masonry),
                                          *psi(rule.steel), lap);
}

bool keeps_ibc(const Lap& rule, const LapAsked& asked, Length lap) {
  const Psi stress = *psi(rule.steel);
  const Number left = number(500) * number(lap.in_nanometres()) * stress.under;
  return lap >= Length::inches(12) && lap >= asked.diameter * 40 &&
         no_less(left, number(asked.diameter.in_nanometres()) * stress.over);
}

}  // namespace

bool gives_laps(const Steel& steel) {
  if (!steel.lap) return false;
  const Lap& lap = *steel.lap;
  switch (lap.rule) {
    case LapRule::AsDrawn: return lap.length.has_value();
    case LapRule::Ibc: return lap.steel.has_value();
    case LapRule::FortyBars:
    case LapRule::FortyEightBars: return true;
    case LapRule::Tms402To2008:
    case LapRule::Tms402From2011:
    case LapRule::Florida2017: return lap.masonry && lap.steel;
  }
  return false;
}

bool is_long_enough(const Lap& rule, const LapAsked& asked, Length lap) {
  switch (rule.rule) {
    case LapRule::Tms402To2008: return keeps_tms_402(rule, asked, 5, lap);
    case LapRule::Tms402From2011: return keeps_tms_402(rule, asked, 9, lap);
    case LapRule::Florida2017: return keeps_florida(rule, asked, lap);
    case LapRule::Ibc: return keeps_ibc(rule, asked, lap);
    case LapRule::FortyBars: return lap >= asked.diameter * 40;
    case LapRule::FortyEightBars: return lap >= asked.diameter * 48;
    case LapRule::AsDrawn: return lap >= *rule.length;
  }
  return false;
}

}  // namespace stringcourse::proof
