#pragma once
#include <string>

#include "cli/arguments.hpp"

namespace stringcourse::cli {

/// The whole help: every verb in a line, and the exit codes.
[[nodiscard]] std::string general_help();
/// One verb's help with its options and examples.
[[nodiscard]] std::string verb_help(const VerbSpec& verb);

}  // namespace stringcourse::cli
