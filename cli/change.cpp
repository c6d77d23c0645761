// Things put into a job file without writing JSON: openings and inner walls (add), readings and log entries (enter).
#include <algorithm>
#include <cstdlib>
#include <functional>
#include <vector>

#include "cli/files.hpp"
#include "cli/named.hpp"
#include "cli/signals.hpp"
#include "cli/solved.hpp"
#include "cli/summary.hpp"
#include "cli/text_block.hpp"
#include "cli/verb_actions.hpp"
#include "edits/typed_entry.hpp"
#include "edits/typed_opening.hpp"
#include "job/words.hpp"
#include "job/write.hpp"
#include "words/language.hpp"

namespace stringcourse::cli {

namespace {

/// One option that puts something in: the job with it, or why not.
using Put = std::function<std::expected<Job, Refusals>(const Job&, const std::string& text)>;
struct PutOption {
  std::string_view name;
  Put put;
};

struct Changed {
  Job job;
  std::string wrong;  // a line for each option that is refused
  int count = 0;
};

Changed changed_by(Job job, const Command& command, const std::vector<PutOption>& options) {
  Changed changed{std::move(job), {}, 0};
  for (const auto& [name, text] : command.options) {
    const auto option = std::ranges::find(options, name, &PutOption::name);
    if (option == options.end()) continue;
    ++changed.count;
    auto with = option->put(changed.job, text);
    if (with) {
      changed.job = *std::move(with);
      continue;
    }
    const words::Reader reader{changed.job.tape};
    for (const Refusal& refusal : with.error().shown) {
      changed.wrong += (changed.wrong.empty() ? "" : "\n") + name + " " + printable(text) + " " +
                       words::told(refusal.reason, reader) +
                       (refusal.remedy.empty() ? "" : " " + words::told(refusal.remedy, reader));
    }
  }
  return changed;
}

std::string finding_text(const Answer& answer, const Finding& finding) {
  const words::Reader reader{answer.building.tape};
  const Fact named = named_place(answer.job, finding.place);
  const std::string says = words::told(finding.says, reader);
  return wrapped("  - ", printable(named.empty() ? says : says + " [" + words::told(named, reader) + "]"));
}

// What is found now and was not before.
std::string new_findings(const Answer& before, const Answer& after) {
  std::string text;
  for (const Finding& finding : after.findings) {
    if (!std::ranges::contains(before.findings, finding)) text += finding_text(after, finding);
  }
  return text.empty() ? "no new finding\n" : "found now:\n" + text;
}

ExitCode written(const Command& command, const std::string& text) {
  if (command.has("--replace")) {
    const std::string& path = command.operands[0];
    if (const auto done = replace_file(path, text); !done) return file_trouble(done.error().text);
    say("written over: " + printable(path) + "; as it was: " + printable(path) + ".previous\n");
    return kDone;
  }
  const std::string path = command.value("--out").value_or("-");
  if (path != "-") return write_new_file(path, text);
  return write_stdout(text) ? kDone : file_trouble("cannot write to stdout");
}

std::string trouble_of(const Command& command) {
  if (command.has("--out") && command.has("--replace")) return "--out and --replace exclude each other.";
  if (command.has("--replace") && command.operands[0] == "-") return "stdin cannot be written over.";
  return {};
}

ExitCode change(const Command& command, const std::vector<PutOption>& options) {
  if (const std::string trouble = trouble_of(command); !trouble.empty()) return usage_trouble(trouble, command.verb);
  auto job = read_command_job(command);
  if (!job) return job.error();
  const Job before = *job;
  const Changed changed = changed_by(*std::move(job), command, options);
  if (!changed.wrong.empty()) return usage_trouble(changed.wrong, command.verb);
  if (changed.count == 0) return usage_trouble("Nothing is given to put in.", command.verb);
  const Wishes wishes{.offers = false, .save_dowels = false};
  const auto answer = solve(changed.job, wishes);
  if (!answer) return say(refusals_text(answer.error(), &changed.job) + "Nothing was written.\n"), kRefused;
  ask_before_stopping();
  if (const ExitCode code = written(command, write_job(changed.job)); code != kDone) return code;
  if (const auto was = solve(before, wishes)) say(new_findings(*was, *answer));
  return kDone;
}

Put opening(NewOpening what) {
  return [what](const Job& job, const std::string& text) { return with_typed_opening(job, {what, text}, "/typed"); };
}

Put entry(const Command& command, EntryWhat what) {
  TypedEntry typed{.what = what,
                   .text = {},
                   .when = command.value("--when").value_or(""),
                   .by = command.value("--by").value_or(""),
                   .note = command.value("--note").value_or("")};
  return [typed](const Job& job, const std::string& text) {
    TypedEntry one = typed;
    one.text = text;
    return with_typed_entry(job, one, "/typed");
  };
}

}  // namespace

ExitCode add(const Command& command) {
  const Put wall = [](const Job& job, const std::string& text) { return with_typed_wall(job, text, "/typed"); };
  return change(command, {{"--door", opening(NewOpening::Door)},
                          {"--overhead", opening(NewOpening::Overhead)},
                          {"--window", opening(NewOpening::Window)},
                          {"--wall", wall}});
}

ExitCode enter(const Command& command) {
  return change(command, {{"--tape", entry(command, EntryWhat::Tape)},
                          {"--rod", entry(command, EntryWhat::Rod)},
                          {"--dowel", entry(command, EntryWhat::Dowel)},
                          {"--edge", entry(command, EntryWhat::Edge)},
                          {"--mark", entry(command, EntryWhat::Mark)},
                          {"--course", entry(command, EntryWhat::Course)},
                          {"--gauge", entry(command, EntryWhat::Gauge)},
                          {"--jamb", entry(command, EntryWhat::Jamb)},
                          {"--strike", entry(command, EntryWhat::Strike)}});
}

}  // namespace stringcourse::cli
