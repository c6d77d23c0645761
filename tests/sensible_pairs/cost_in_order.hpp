#pragma once
// What a layout costs, in the order in which layouts are compared (docs/bond-model.md), read from the answer.
#include <array>
#include <cstdint>
#include <string>

#include "solve/solve.hpp"

namespace stringcourse::property {

/// Stopped stretches, rules given up, short laps, cuts, short pieces: what a bound speaks of.
using FirstTerms = std::array<std::int64_t, 5>;
[[nodiscard]] FirstTerms first_terms(const Layout& layout);
/// The same of Layout::least_possible.
[[nodiscard]] FirstTerms least_first_terms(const Layout& layout);

/// Stopped stretches, rules given up, rules relaxed, then the other first terms: what more budget never makes worse.
using RulesAndFirstTerms = std::array<std::int64_t, 6>;
[[nodiscard]] RulesAndFirstTerms rules_and_first_terms(const Layout& layout);

/// The first terms, then lintels longer than they must be and their unequal ends, joints that shift, bars beyond the
/// spacing's least, deviation of the joints, units. Only for half bond.
using CostInOrder = std::array<std::int64_t, 10>;
[[nodiscard]] CostInOrder cost_in_order(const Answer& answer);

template <std::size_t count>
[[nodiscard]] std::string listed(const std::array<std::int64_t, count>& terms) {
  std::string text;
  for (const std::int64_t term : terms) text += (text.empty() ? "" : " ") + std::to_string(term);
  return text;
}

}  // namespace stringcourse::property
