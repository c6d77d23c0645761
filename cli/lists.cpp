// The order list and the days, for other programs: on stdout or into a file.
#include "cli/files.hpp"
#include "cli/solved.hpp"
#include "cli/verb_actions.hpp"
#include "document/calendar.hpp"
#include "document/order_csv.hpp"

namespace stringcourse::cli {

namespace {

std::expected<Answer, ExitCode> whole_answer(const Command& command) {
  ProgressBar progress(ProgressBar::Wish::Shown);
  auto answer = read_and_solve(command, progress);
  progress.wipe();
  if (!answer) return answer;
  if (answer->layout.stopped.empty()) return answer;
  say("This job has stretches without a layout: see 'look'. Nothing was written.\n");
  return std::unexpected(kRefused);
}

ExitCode put(const Command& command, std::string_view text) {
  if (const auto out = command.value("--out")) return write_new_file(*out, text);
  return write_stdout(text) ? kDone : file_trouble("cannot write to stdout");
}

}  // namespace

ExitCode order(const Command& command) {
  const auto answer = whole_answer(command);
  return answer ? put(command, order_csv(*answer)) : answer.error();
}

ExitCode days(const Command& command) {
  const auto answer = whole_answer(command);
  if (!answer) return answer.error();
  const std::string calendar = calendar_text(*answer);
  if (!calendar.empty()) return put(command, calendar);
  const bool all_done = answer->programme.done && answer->programme.tasks.empty();
  if (all_done) say("By its log nothing is left of the job: there are no days ahead. Nothing was written.\n");
  else
    say("The job does not state its first day: put \"days\": {\"start\": \"2027-05-03\"} into it. Nothing was "
        "written.\n");
  return kRefused;
}

}  // namespace stringcourse::cli
