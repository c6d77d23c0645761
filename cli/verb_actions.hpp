#pragma once
// What each verb does. Every one gives the code that the program ends with.
#include "cli/arguments.hpp"
#include "cli/exit_code.hpp"

namespace stringcourse::cli {

[[nodiscard]] ExitCode plan(const Command& command);
[[nodiscard]] ExitCode begin(const Command& command);
[[nodiscard]] ExitCode add(const Command& command);
[[nodiscard]] ExitCode enter(const Command& command);
[[nodiscard]] ExitCode look(const Command& command);
[[nodiscard]] ExitCode marks(const Command& command);
[[nodiscard]] ExitCode order(const Command& command);
[[nodiscard]] ExitCode days(const Command& command);
[[nodiscard]] ExitCode merge(const Command& command);
[[nodiscard]] ExitCode schema(const Command& command);

}  // namespace stringcourse::cli
