#pragma once
// From a job file's name to its answer: the first half of `plan` and `look`.
#include <expected>
#include <string>
#include <string_view>

#include "cli/arguments.hpp"
#include "cli/exit_code.hpp"
#include "cli/terminal.hpp"
#include "solve/solve.hpp"

namespace stringcourse::cli {

/// Reads the command's job. Says on stderr what is wrong with it; with --json the refusals go to stdout.
[[nodiscard]] std::expected<Job, ExitCode> read_command_job(const Command& command);
/// Reads and solves the command's job. Says on stderr what is wrong with it; with --json the refusals go to stdout.
[[nodiscard]] std::expected<Answer, ExitCode> read_and_solve(const Command& command, ProgressBar& progress);

/// Prints the answer document or the summary on stdout, as the command asks.
[[nodiscard]] ExitCode print_answer(const Answer& answer, const Command& command);

/// kDone, or kFindings when there are findings and --strict is given.
[[nodiscard]] ExitCode verdict_of(const Answer& answer, const Command& command);

/// Says a file's trouble on stderr.
[[nodiscard]] ExitCode file_trouble(const std::string& text);
/// A file that did not exist before; says that it was written.
[[nodiscard]] ExitCode write_new_file(const std::string& path, std::string_view text);
/// Says on stderr what was not understood, and where the help is.
[[nodiscard]] ExitCode usage_trouble(const std::string& text, const VerbSpec* verb);

}  // namespace stringcourse::cli
