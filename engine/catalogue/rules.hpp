#pragma once
// The rules: where each stands, how it is known, and its limits as numbers: lengths, temperatures, winds, times. Code
// reads a limit here, and the sentence that people read (words/english_rules.cpp) is filled with the same numbers.
#include <compare>
#include <cstdint>
#include <span>
#include <string_view>
#include <variant>
#include <vector>

#include "catalogue/series.hpp"
#include "measure/notation.hpp"

namespace stringcourse {

/// A temperature as US documents state it: whole degrees.
struct Fahrenheit {
  std::int32_t degrees = 0;
  friend constexpr auto operator<=>(Fahrenheit, Fahrenheit) = default;
};
/// The speed of wind as US documents state it: whole miles in an hour.
struct MilesPerHour {
  std::int32_t miles = 0;
  friend constexpr auto operator<=>(MilesPerHour, MilesPerHour) = default;
};
/// Time, in whole minutes.
struct Minutes {
  std::int32_t count = 0;
  friend constexpr auto operator<=>(Minutes, Minutes) = default;
};
/// A limit that is no length.
using RuleFigure = std::variant<Fahrenheit, MilesPerHour, Minutes>;

struct Rule {
  std::string_view id;                   // "cleanout-pour", "control-joint-us", ...
  Source source;                         // none: a rule of the job itself
  std::vector<Length> limits = {};       // as its document states them, in the order of its sentence's {0}, {1} ...
  std::vector<Length> metric = {};       // where a metric tape has limits of its own
  bool standing = true;                  // told among the standards of every set; else only where a finding names it
  std::vector<RuleFigure> figures = {};  // further limits, behind the lengths in the order of its sentence
  [[nodiscard]] const std::vector<Length>& limits_for(Tape tape) const {
    return tape == Tape::Millimetres && !metric.empty() ? metric : limits;
  }
};
[[nodiscard]] std::span<const Rule> catalogue_rules();
/// Null if there is no such rule.
[[nodiscard]] const Rule* find_rule(std::string_view id);

/// One limit of a rule. Stops if the rule or the limit is not there.
[[nodiscard]] Length limit_of(std::string_view id, Tape tape = Tape::Inches, std::size_t which = 0);
/// The same of what is no length. Stops too if the limit is of another sort.
[[nodiscard]] Fahrenheit temperature_of(std::string_view id, std::size_t which = 0);
[[nodiscard]] MilesPerHour wind_of(std::string_view id, std::size_t which = 0);
[[nodiscard]] Minutes minutes_of(std::string_view id, std::size_t which = 0);
/// So much within such a length, and never more: the first three limits of a rule.
struct Tolerance {
  Length within, over, most;
};
[[nodiscard]] Tolerance tolerance_of(std::string_view id, Tape tape = Tape::Inches);

}  // namespace stringcourse
