#pragma once
// A second, slow reading of lengths: one regular expression for each form, long-hand arithmetic. Shares no code with
// engine/measure; the tests hold the two to each other, both ways.
#include <cstdint>
#include <optional>
#include <string>

namespace slow_grammar {

/// Nanometres of `text`, or nothing if no form fits. `inch_tape` says how a bare number is read.
std::optional<std::int64_t> nanometres(const std::string& text, bool inch_tape);

}  // namespace slow_grammar
