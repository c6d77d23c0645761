#pragma once
// The programme for a calendar.
#include <string>

#include "answer/answer.hpp"
#include "words/language.hpp"

namespace stringcourse {

/// iCalendar (RFC 5545): a whole-day event for each working day. "" where the job does not state its first day. The
/// engine has no clock: every stamp is the first day's.
[[nodiscard]] std::string calendar_text(const Answer& answer, const words::Language& language = words::english());

}  // namespace stringcourse
