#include "cli/files.hpp"
#include "cli/solved.hpp"
#include "cli/summary.hpp"
#include "cli/verb_actions.hpp"

namespace stringcourse::cli {

ExitCode look(const Command& command) {
  std::expected<Answer, ExitCode> answer = [&] {
    ProgressBar progress(ProgressBar::Wish::Shown);
    return read_and_solve(command, progress);
  }();
  if (!answer) return answer.error();
  if (const ExitCode printed = print_answer(*answer, command); printed != kDone) return printed;
  if (!answer->layout.stopped.empty()) return say(stops_text(*answer)), kRefused;
  return verdict_of(*answer, command);
}

}  // namespace stringcourse::cli
