#pragma once
// Reading and writing of lengths in the trade's forms: 14'-7 5/16"  ·  175 5/16"  ·  4451 mm.
#include <expected>
#include <string>
#include <string_view>

#include "measure/fact.hpp"
#include "measure/length.hpp"

namespace stringcourse {

/// The tape a job is worked with: says how bare numbers are read and how lengths are printed.
enum class Tape { Inches, Millimetres };

/// The finest step of a tape: 1/16 in or 1 mm.
[[nodiscard]] constexpr Length tape_step(Tape tape) {
  return tape == Tape::Inches ? Length::sixteenths(1) : Length::millimetres(1);
}

/// Why a text is no length. `remedy` is a sentence that a user can act on.
struct NotationError {
  Fact reason;
  Fact remedy;
};

/// Reads one length. Accepts feet, inches and binary fractions to 1/64 (14'-7 5/16", 14' 7 5/16", 14 ft 7 5/16 in,
/// 175 5/16", 7/8"), decimal inches or feet that are exact in nanometres (7.625 in), and millimetres, centimetres
/// and metres (4451 mm, 4.451 m). Typographic primes and vulgar fractions (7 5/16, ½ ¼ ¾ ⅛ ⅜ ⅝ ⅞) are read too. A
/// number without a unit is inches or millimetres as `tape` says. Negative lengths only with a leading minus. Never
/// reads a text in two ways: anything left over, doubled or out of order is an error. |length| <= kLongest.
[[nodiscard]] std::expected<Length, NotationError> read_length(std::string_view text, Tape tape);

/// 14'-7 5/16" (rounded once, to the nearest sixteenth; a tie goes up). Under a foot: 7 5/16". Zero: 0".
[[nodiscard]] std::string feet_and_inches(Length length);
/// 175 5/16" (rounded once, to the nearest sixteenth).
[[nodiscard]] std::string total_inches(Length length);
/// 4451 mm (rounded once, to the nearest millimetre).
[[nodiscard]] std::string millimetres_text(Length length);
/// The job's own tape, one form: feet-and-inches or millimetres.
[[nodiscard]] std::string tape_text(Length length, Tape tape);
/// Both forms that a sheet shows: 14'-7 5/16" = 175 5/16"; in millimetres just 4451 mm.
[[nodiscard]] std::string both_forms(Length length, Tape tape);
/// Exact text that read_length gives back bit for bit: sixty-fourths where they fit, else decimal millimetres.
[[nodiscard]] std::string exact_text(Length length, Tape tape);

}  // namespace stringcourse
