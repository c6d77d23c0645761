#pragma once
// The marks of a written length, one after another. Private to measure/: read_length puts them together.
#include <cstdint>
#include <string_view>
#include <vector>

namespace stringcourse::notation {

/// What one token is. Other: anything that no length is written with. End: always the last token.
enum class Mark { Number, Vulgar, Slash, Hyphen, Feet, Inch, Millimetre, Centimetre, Metre, Other, End };

/// Numbers keep their digits apart, so that nothing is lost before it is known to be exact.
struct Token {
  Mark mark = Mark::End;
  bool spaced = false;     // a space stands before it
  std::string_view text;   // as written
  std::int64_t whole = 0;  // Number: digits before the point (held at kTooMany). Vulgar: numerator
  std::int64_t parts = 0;  // Number: digits after the point, trailing zeros dropped. Vulgar: denominator
  int places = 0;          // Number: how many digits `parts` has (held at kTooFine)
  bool decimal = false;    // Number: written with a point
};

/// A whole part of ten digits or more: over 10 km in every unit.
inline constexpr std::int64_t kTooMany = 1'000'000'000;
/// More places than any unit has exact ones: a metre, the longest decimal unit, has nine down to the nanometre.
inline constexpr int kTooFine = 10;

/// All tokens of `text`; the last is End. Typographic marks count as their plain ones. Never fails.
[[nodiscard]] std::vector<Token> tokens_of(std::string_view text);

}  // namespace stringcourse::notation
