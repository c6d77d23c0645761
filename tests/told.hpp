#pragma once
// Facts in words, for tests that look at them.
#include <string>

#include "words/language.hpp"

namespace stringcourse::test {

/// English, for a reader with that tape.
[[nodiscard]] inline std::string told(const Fact& fact, Tape tape = Tape::Inches) { return words::told(fact, {tape}); }

}  // namespace stringcourse::test
