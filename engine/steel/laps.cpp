#include "steel/laps.hpp"

#include <algorithm>
#include <span>

#include "catalogue/rules.hpp"
#include "catalogue/steel.hpp"

namespace stringcourse::steel {
namespace {

using Limbs = std::vector<std::uint64_t>;  // lowest first
using Wide = unsigned __int128;

/// A product of whole numbers above zero, however large.
Limbs product(std::initializer_list<std::int64_t> factors) {
  Limbs limbs{1};
  for (const std::int64_t factor : factors) {
    Wide carry = 0;
    for (std::uint64_t& limb : limbs) {
      carry += static_cast<Wide>(limb) * static_cast<std::uint64_t>(factor);
      limb = static_cast<std::uint64_t>(carry);
      carry >>= 64;
    }
    if (carry > 0) limbs.push_back(static_cast<std::uint64_t>(carry));
  }
  return limbs;
}

bool at_least(const Limbs& a, const Limbs& b) {
  if (a.size() != b.size()) return a.size() > b.size();
  return !std::lexicographical_compare(a.rbegin(), a.rend(), b.rbegin(), b.rend());
}

/// The least multiple of `step` that is enough.
template <class Enough>
Length least_step(Length step, Enough enough) {
  std::int64_t low = 0, high = 1;
  while (!enough(step * high)) low = high, high *= 2;
  while (high - low > 1) {
    const std::int64_t middle = low + (high - low) / 2;
    (enough(step * middle) ? high : low) = middle;
  }
  return step * high;
}

/// coefficient / 10000 x db^2 fy / (K sqrt f'm) in inches and psi: both sides squared, so that nothing is rounded.
Length by_equation(std::int64_t coefficient, Length diameter, Length k, Stress masonry, Stress steel, Length step) {
  const std::int64_t db = diameter.in_nanometres(), around = k.in_nanometres();
  const Limbs wanted = product({coefficient, coefficient, db, db, db, db, steel.parts, steel.parts});
  return least_step(step, [&](Length lap) {
    const std::int64_t l = lap.in_nanometres();
    return at_least(product({10'000, 10'000, l, l, around, around, masonry.parts, Stress::kPerPsi}), wanted);
  });
}

/// 0.002 db fs, fs in psi.
Length by_stress(Length diameter, Stress steel, Length step) {
  const Limbs wanted = product({2, diameter.in_nanometres(), steel.parts});
  return least_step(
      step, [&](Length lap) { return at_least(product({1'000, lap.in_nanometres(), Stress::kPerPsi}), wanted); });
}

Length up_to_step(Length length, Length step) {
  return step * (length + step - Length::nanometres(1)).whole_multiples(step);
}

/// Bars round a bar count no further off than so many of its diameters.
Length k_of(const LapOf& of, int diameters) { return std::min(of.clear, of.bar.diameter * diameters); }

struct Values {
  Stress masonry, steel;
};

Length tms_402(const LapOf& of, const Values& values, int diameters, std::string_view rule, Length step) {
  const Length lap = by_equation(lap_coefficient(of.bar).tms402, of.bar.diameter, k_of(of, diameters), values.masonry,
                                 values.steel, step);
  return std::max(lap, up_to_step(limit_of(rule), step));
}

Length florida(const LapOf& of, const Values& values, Length step) {
  const Length db = of.bar.diameter;
  const Length lap =
      by_equation(lap_coefficient(of.bar).florida2017, db, k_of(of, 5), values.masonry, values.steel, step);
  return std::clamp(lap, up_to_step(db * 40, step), up_to_step(db * 72, step));
}

Length ibc(const LapOf& of, Stress steel, Length step) {
  const Length least = std::max(limit_of("lap-ibc"), of.bar.diameter * 40);
  return std::max(by_stress(of.bar.diameter, steel, step), up_to_step(least, step));
}

bool needs_masonry(LapRule rule) {
  return rule == LapRule::Tms402To2008 || rule == LapRule::Tms402From2011 || rule == LapRule::Florida2017;
}

LapBy assumed(LapRule rule, const LapBy& stated) {
  LapBy by{rule, stated.masonry.value_or(kAssumedMasonry), kAssumedSteel, std::nullopt};
  if (stated.rule != LapRule::Ibc) by.steel = stated.steel.value_or(kAssumedSteel);
  return by;
}

/// IBC at both allowable stresses that editions have, unless the job names its own.
std::vector<LapBy> ibc_choices(const LapBy& stated) {
  if (stated.rule == LapRule::Ibc && stated.steel) return {{LapRule::Ibc, std::nullopt, stated.steel, std::nullopt}};
  return {{LapRule::Ibc, std::nullopt, Stress::psi(24'000), std::nullopt},
          {LapRule::Ibc, std::nullopt, Stress::psi(32'000), std::nullopt}};
}

}  // namespace

LapBy lap_by(const Lap& lap) {
  return {lap.rule, lap.masonry ? read_stress(*lap.masonry) : std::nullopt,
          lap.steel ? read_stress(*lap.steel) : std::nullopt, lap.length};
}

std::string_view lap_lacks(const LapBy& by) {
  if (by.rule == LapRule::AsDrawn) return by.length ? std::string_view() : "lap-lacks-length";
  if (by.rule == LapRule::Ibc) return by.steel ? std::string_view() : "lap-lacks-stress";
  if (!needs_masonry(by.rule)) return {};
  if (by.masonry && by.steel) return {};
  if (!by.masonry && !by.steel) return "lap-lacks-both";
  return by.masonry ? "lap-lacks-yield" : "lap-lacks-masonry";
}

std::optional<Length> lap_length(const LapBy& by, const LapOf& of, Tape tape) {
  if (!lap_lacks(by).empty()) return std::nullopt;
  const Length step = tape_step(tape);
  const Values values{by.masonry.value_or(Stress{}), by.steel.value_or(Stress{})};
  switch (by.rule) {
    case LapRule::Tms402To2008: return tms_402(of, values, 5, lap_rule_id(by.rule), step);
    case LapRule::Tms402From2011: return tms_402(of, values, 9, lap_rule_id(by.rule), step);
    case LapRule::Ibc: return ibc(of, values.steel, step);
    case LapRule::Florida2017: return florida(of, values, step);
    case LapRule::FortyBars: return up_to_step(of.bar.diameter * 40, step);
    case LapRule::FortyEightBars: return up_to_step(of.bar.diameter * 48, step);
    case LapRule::AsDrawn: return up_to_step(*by.length, step);
  }
  return std::nullopt;
}

std::string_view lap_rule_id(LapRule rule) {
  switch (rule) {
    case LapRule::Tms402To2008: return "lap-tms-402-to-2008";
    case LapRule::Tms402From2011: return "lap-tms-402-from-2011";
    case LapRule::Ibc: return "lap-ibc";
    case LapRule::Florida2017: return "lap-florida-2017";
    case LapRule::FortyBars: return "lap-40-bars";
    case LapRule::FortyEightBars: return "lap-48-bars";
    case LapRule::AsDrawn: return "lap-as-drawn";
  }
  return {};
}

std::vector<LapChoice> lap_choices(const std::optional<Lap>& stated, const LapOf& of, Tape tape) {
  const LapBy own = stated ? lap_by(*stated) : LapBy{};
  std::vector<LapBy> rules{assumed(LapRule::Tms402To2008, own), assumed(LapRule::Tms402From2011, own)};
  for (const LapBy& by : ibc_choices(own)) rules.push_back(by);
  for (const LapRule rule : {LapRule::Florida2017, LapRule::FortyBars, LapRule::FortyEightBars})
    rules.push_back(assumed(rule, own));
  if (own.length) rules.push_back({LapRule::AsDrawn, std::nullopt, std::nullopt, own.length});
  std::vector<LapChoice> choices;
  for (const LapBy& by : rules) choices.push_back({by, *lap_length(by, of, tape)});
  return choices;
}

}  // namespace stringcourse::steel
