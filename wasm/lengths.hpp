#pragma once
// Lengths read and written without a building: what the page has to understand before it asks for a change, and what it
// shows while a length is counted up and down.
#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "document/json_out.hpp"
#include "job/trouble.hpp"
#include "measure/notation.hpp"

namespace stringcourse::border {

struct LengthsAsked {
  Tape tape = Tape::Inches;
  std::optional<std::string> read;  // as it may be typed for a side
  std::vector<std::int64_t> write;  // in steps of the tape
};

/// Why the text to be read is no length: one refusal at "/lengths/read", or none.
[[nodiscard]] Refusals unread(const LengthsAsked& asked);

/// {"read": {"nm", "basis"}, "written": [texts]}. Inches are written without feet, as they are read off a tape. Only
/// where nothing is unread.
void write_lengths(JsonOut& out, const LengthsAsked& asked);

}  // namespace stringcourse::border
