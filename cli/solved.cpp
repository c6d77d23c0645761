#include "cli/solved.hpp"

#include "cli/files.hpp"
#include "cli/summary.hpp"
#include "document/answer_json.hpp"
#include "document/refusals_json.hpp"
#include "job/read.hpp"
#include "job/words.hpp"

namespace stringcourse::cli {

namespace {

ExitCode tell_refusals(const Refusals& refusals, const Command& command, const Job* job = nullptr) {
  say(refusals_text(refusals, job));
  if (command.has("--json") && !write_stdout(refusals_json(refusals))) return file_trouble("cannot write to stdout");
  return kRefused;
}

// How large the rest is nobody looked: the reader would give the size of what was read.
Refusals size_refusal() {
  Refusals refusals;
  refusals.add({"too-large", "/", fact("document-too-long", {kLargestDocument}), fact("document-split")});
  return refusals;
}

std::string cuts_text(const Layout& layout) {
  return number_text(layout.cost.cuts) + (layout.cost.cuts == 1 ? " saw cut" : " saw cuts");
}

/// What somebody who waits is told: the layout that is there at once, and what the search made of it. To lay the job
/// once more, without a search, takes its time only where somebody watches.
void tell_layouts(const Job& job, Wishes& wishes, ProgressBar& progress) {
  if (!progress.has_watcher()) return;
  std::string first;
  const auto at_once = solve(job, Wishes{.save_dowels = false, .at_rest = false, .search_budget = 0});
  if (at_once && at_once->layout.stopped.empty()) first = cuts_text(at_once->layout);
  if (!first.empty()) progress.tell("laying: first layout " + first + ", looking for a better one");
  wishes.laid = [first, &progress](const Layout& layout) {
    if (!layout.stopped.empty()) return;
    const std::string best = cuts_text(layout);
    const std::string before = first.empty() || first == best ? "" : "first " + first + ", now ";
    progress.tell("laid: " + before + best + (layout.proven ? ", proven" : ", not proven"));
  };
}

}  // namespace

std::expected<Job, ExitCode> read_command_job(const Command& command) {
  const std::string& path = command.operands[0];
  const auto read = read_job_text(path);
  if (!read) return std::unexpected(file_trouble(read.error().text));
  if (read->too_large) return std::unexpected(tell_refusals(size_refusal(), command));
  auto job = read_job(read->text);
  if (!job) return std::unexpected(tell_refusals(job.error(), command));
  return *std::move(job);
}

std::expected<Answer, ExitCode> read_and_solve(const Command& command, ProgressBar& progress) {
  auto job = read_command_job(command);
  if (!job) return std::unexpected(job.error());
  Wishes wishes;
  wishes.offers = !command.has("--no-offers");
  wishes.progress = [&](double share) {
    progress.show("offers", share);
    return true;
  };
  tell_layouts(*job, wishes, progress);
  auto answer = solve(*job, wishes);
  if (!answer) return std::unexpected(tell_refusals(answer.error(), command, &*job));
  return *std::move(answer);
}

ExitCode print_answer(const Answer& answer, const Command& command) {
  const bool written = command.has("--json")
                           ? write_answer(answer, write_stdout)
                           : command.has("--quiet") || write_stdout(summary_text(answer, stdout_emphasis()));
  return written ? kDone : file_trouble("cannot write to stdout");
}

ExitCode verdict_of(const Answer& answer, const Command& command) {
  return command.has("--strict") && !answer.findings.empty() ? kFindings : kDone;
}

ExitCode file_trouble(const std::string& text) {
  say("stringcourse: " + printable(text) + "\n");
  return kFile;
}

ExitCode write_new_file(const std::string& path, std::string_view text) {
  if (const auto written = write_whole_file(path, text); !written) return file_trouble(written.error().text);
  say("written: " + printable(path) + "\n");
  return kDone;
}

ExitCode usage_trouble(const std::string& text, const VerbSpec* verb) {
  const std::string help = verb == nullptr ? "stringcourse help" : "stringcourse help " + std::string(verb->name);
  say("stringcourse: " + printable_lines(text) + "\n'" + help + "' says more.\n");
  return kUsage;
}

}  // namespace stringcourse::cli
