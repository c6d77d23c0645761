// Two phones' documents of one job into one.
#include "cli/files.hpp"
#include "cli/solved.hpp"
#include "cli/summary.hpp"
#include "cli/verb_actions.hpp"
#include "job/read.hpp"
#include "job/words.hpp"
#include "job/write.hpp"
#include "laying/merge_jobs.hpp"

namespace stringcourse::cli {

namespace {

std::expected<Job, ExitCode> read(const std::string& path) {
  const auto text = read_job_text(path);
  if (!text) return std::unexpected(file_trouble(text.error().text));
  auto job = read_job(text->text);
  if (job) return *std::move(job);
  say(printable(path) + ":\n" + refusals_text(job.error()));
  return std::unexpected(kRefused);
}

std::string told(const laying::MergedJobs& merged) {
  std::string text = number_text(merged.from_first) + " entries only in the first, " + number_text(merged.from_second) +
                     " only in the second.\n";
  for (const std::string& id : merged.conflicts)
    text += "The entry " + quoted(id) + " says two different things: both are kept.\n";
  return text;
}

}  // namespace

ExitCode merge(const Command& command) {
  const auto first = read(command.operands[0]);
  if (!first) return first.error();
  const auto second = read(command.operands[1]);
  if (!second) return second.error();
  const auto merged = laying::merged_jobs(*first, *second);
  if (!merged) {
    std::string places;
    for (const std::string& place : merged.error()) places += (places.empty() ? "" : ", ") + place;
    say(printable_lines("These are not two logs of one job: they differ in " + places +
                        ".\nTake one building into both (the log of each stays its own), then merge again.\n"));
    return kRefused;
  }
  const std::string text = write_job(merged->job), path = command.value("--out").value_or("-");
  if (path == "-") {
    if (!write_stdout(text)) return file_trouble("cannot write to stdout");
  } else if (const ExitCode written = write_new_file(path, text); written != kDone) {
    return written;
  }
  say(told(*merged));
  return kDone;
}

}  // namespace stringcourse::cli
