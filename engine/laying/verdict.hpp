#pragma once
// Pass, fail, or "this tape can't tell": readings against limits, with their own doubt.
#include <optional>
#include <string_view>

#include "catalogue/rules.hpp"
#include "ground/bed.hpp"
#include "ground/tape_doubt.hpp"
#include "job/laid.hpp"
#include "measure/length.hpp"

namespace stringcourse::laying {

using ground::together;
using ground::Verdict;

/// A reading of a tape: standard doubt, metres, of what it says of the length. Permitted error and reading error each
/// lie anywhere within their half widths (GUM 4.3.7).
[[nodiscard]] double tape_doubt(TapeMake tape, Length length, Length reading_error);

/// Limits that a value must keep; either may be absent.
struct Limits {
  std::optional<double> least, most;
};

/// By guard bands of the expanded doubt (k = 2): fits if inside both limits by it, does not fit if outside one by it.
/// SOURCE: ISO 14253-1. The reading is not rounded before.
[[nodiscard]] Verdict judged(double value, const Limits& limits, double expanded_doubt);

/// How probable it is that the true value keeps the limits, the value being normal with this standard doubt.
/// SOURCE: JCGM 106:2012, 7. Absolute error at most 1e-12.
[[nodiscard]] double conformance(double value, const Limits& limits, double standard_doubt);

/// The rules that a wall is judged by, by their names in the table of rules.
struct WallRules {
  std::string_view bed_level, plumb, true_to_line, position;  // tolerances, either way
  std::string_view bed_joint;                                 // either way of the bed as planned
};
[[nodiscard]] WallRules wall_rules(WallRuleSet rules);
/// The allowed deviation over so much wall: in proportion to the length, at most the tolerance's own `most`.
[[nodiscard]] Length allowed(const Tolerance& tolerance, Length length);

}  // namespace stringcourse::laying
