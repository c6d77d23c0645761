#pragma once
// A brief answer as a JSON document: the members of the answer document that shown_answer.hpp calls brief, in its
// order.
#include <string>

#include "answer/answer.hpp"

namespace stringcourse {

/// Of an answer of brief_answer(): each member as answer_text() writes it without what is placed (Placed::Omit).
[[nodiscard]] std::string brief_text(const Answer& answer);

}  // namespace stringcourse
