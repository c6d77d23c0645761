#include <expected>
#include <string>

#include "cli/files.hpp"
#include "cli/signals.hpp"
#include "cli/solved.hpp"
#include "cli/summary.hpp"
#include "cli/verb_actions.hpp"
#include "edits/begun.hpp"
#include "job/read.hpp"
#include "job/words.hpp"
#include "job/write.hpp"
#include "walls/resolve.hpp"

namespace stringcourse::cli {

namespace {

// The measures that were typed, or which one is missing.
std::expected<Measures, std::string> typed_measures(const Command& command) {
  for (const std::string_view option : {"--length", "--width", "--height"}) {
    if (!command.has(option)) return std::unexpected("'begin' wants " + std::string(option) + ".");
  }
  return Measures{.name = command.value("--name").value_or(""),
                  .length = *command.value("--length"),
                  .width = *command.value("--width"),
                  .height = *command.value("--height"),
                  .series = command.value("--series").value_or("us-8")};
}

// One line for each option that is refused.
std::string told(const Refusal& refusal) {
  const std::string option = "--" + refusal.place.substr(refusal.place.rfind('/') + 1);
  return option + " " + refusal.reason + (refusal.remedy.empty() ? "" : " " + refusal.remedy);
}

std::expected<Job, std::string> rectangle(const Command& command) {
  const auto measures = typed_measures(command);
  if (!measures) return std::unexpected(measures.error());
  auto job = begun_job(*measures);
  if (job) return *std::move(job);
  std::string text;
  for (const Refusal& refusal : job.error().shown) text += (text.empty() ? "" : "\n") + told(refusal);
  if (text.contains('\'')) text += "\nA shell takes 24ft and 24in as they are; 24' and 24\" want quotation marks round them.";
  return std::unexpected(text);
}

}  // namespace

ExitCode begin(const Command& command) {
  const auto job = rectangle(command);
  if (!job) return usage_trouble(job.error(), command.verb);
  ask_before_stopping();
  const std::string text = write_job(*job);
  const auto read_back = read_job(text);
  if (!read_back) return say(refusals_text(read_back.error())), kRefused;
  if (const auto building = resolve(*read_back); !building) return say(refusals_text(building.error())), kRefused;
  const std::string path = command.value("--out").value_or("-");
  if (path != "-") return write_new_file(path, text);
  return write_stdout(text) ? kDone : file_trouble("cannot write to stdout");
}

}  // namespace stringcourse::cli
