#pragma once
// What reaches the program from outside, and its own end when a check inside fails.

namespace stringcourse::cli {

/// From now on a failed check (an assertion, a trap, memory used up) ends with kFault and one sentence on stderr,
/// and a reader of stdout that has gone or a file that may not grow is an ordinary write error.
void catch_faults();

/// From now on the first Ctrl-C or SIGTERM only asks to stop, so that a half-written set is taken away again.
void ask_before_stopping();
/// Ctrl-C or SIGTERM has come.
[[nodiscard]] bool stop_asked();

}  // namespace stringcourse::cli
