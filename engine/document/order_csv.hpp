#pragma once
// The order list for a yard's own programs.
#include <string>

#include "answer/answer.hpp"
#include "words/language.hpp"

namespace stringcourse {

/// Comma-separated values by RFC 4180, the first line with the columns' names; lines end with CR LF. A cell that a
/// spreadsheet would take for a formula begins with an apostrophe.
[[nodiscard]] std::string order_csv(const Answer& answer, const words::Language& language = words::english());

}  // namespace stringcourse
