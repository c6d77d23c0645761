#pragma once
// "23'-11 5/8\" actual": a length as it is typed, and whether it is meant on the nominal or the actual lines.
#include <string_view>

#include "job/job.hpp"

namespace stringcourse {

struct TypedLength {
  std::string_view text;  // of the length alone
  Basis basis = Basis::Nominal;
};

[[nodiscard]] constexpr TypedLength typed_length(std::string_view typed) {
  constexpr std::string_view kActual = "actual", kBlank = " \t";
  const auto trimmed = [=](std::string_view text) { return text.substr(0, text.find_last_not_of(kBlank) + 1); };
  std::string_view before = trimmed(typed);
  if (!before.ends_with(kActual)) return {typed};
  before.remove_suffix(kActual.size());
  const std::string_view length = trimmed(before);
  if (length.size() == before.size()) return {typed};
  return {length, Basis::Actual};
}

}  // namespace stringcourse
