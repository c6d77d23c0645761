#include <algorithm>
#include <cstdlib>
#include <expected>
#include <string>
#include <vector>

#include "cli/files.hpp"
#include "cli/named.hpp"
#include "cli/signals.hpp"
#include "cli/solved.hpp"
#include "cli/summary.hpp"
#include "cli/text_block.hpp"
#include "cli/verb_actions.hpp"
#include "edits/begun.hpp"
#include "job/read.hpp"
#include "job/words.hpp"
#include "job/write.hpp"
#include "walls/resolve.hpp"
#include "words/language.hpp"

namespace stringcourse::cli {

namespace {

struct OpeningOption {
  std::string_view name;
  NewOpening what;
};
constexpr OpeningOption kOpenings[] = {
    {"--door", NewOpening::Door}, {"--overhead", NewOpening::Overhead}, {"--window", NewOpening::Window}};

// In the order in which they were typed.
struct TypedOption {
  std::string option, text;
};

std::vector<TypedOption> opening_options(const Command& command) {
  std::vector<TypedOption> all;
  for (const auto& [name, value] : command.options) {
    if (std::ranges::contains(kOpenings, name, &OpeningOption::name)) all.push_back({name, value});
  }
  return all;
}

Measures typed_measures(const Command& command) {
  Measures measures{.name = command.value("--name").value_or(""),
                    .length = command.value("--length").value_or(""),
                    .width = command.value("--width").value_or(""),
                    .height = command.value("--height").value_or(""),
                    .series = command.value("--series").value_or("us-8")};
  for (const TypedOption& typed : opening_options(command))
    measures.openings.push_back({std::ranges::find(kOpenings, typed.option, &OpeningOption::name)->what, typed.text});
  return measures;
}

// "--length", or "--door BC:4-0:3-0x6-8".
std::string option_at(const std::string& place, const std::vector<TypedOption>& openings) {
  const std::string last = place.substr(place.rfind('/') + 1);
  if (!place.starts_with("/begin/opening/")) return "--" + last;
  const TypedOption& typed = openings[static_cast<std::size_t>(std::atoi(last.c_str()))];
  return typed.option + " " + typed.text;
}

// A line for each thing that is missing or refused.
std::expected<Job, std::string> rectangle(const Command& command) {
  std::string text;
  const auto add = [&](const std::string& line) { text += (text.empty() ? "" : "\n") + line; };
  for (const std::string_view option : {"--length", "--width", "--height"}) {
    if (!command.has(option)) add("'begin' wants " + std::string(option) + ".");
  }
  auto job = begun_job(typed_measures(command));
  if (job && text.empty()) return *std::move(job);
  if (!job) {
    const words::Reader reader{job.error().tape};
    for (const Refusal& refusal : job.error().shown) {
      const std::string option = option_at(refusal.place, opening_options(command));
      const bool of_opening = option.find(' ') != std::string::npos;
      if (!of_opening && option != "--series" && !command.has(option)) continue;  // missing, and said so above
      add(option + " " + words::told(refusal.reason, reader) +
          (refusal.remedy.empty() ? "" : " " + words::told(refusal.remedy, reader)));
    }
  }
  if (text.contains('\''))
    text += "\nA shell takes 24ft and 24in as they are; 24' and 24\" want quotation marks round them.";
  return std::unexpected(text);
}

// What can be built but can hardly be meant: a box of a building, an opening as high as its wall.
void add_hardly_meant(std::vector<std::string>& doubts, const Job& job) {
  const auto building = resolve(job);
  if (!building) return;
  for (const Finding& finding : building->findings) {
    if (finding.code != "building-implausible" && finding.code != "no-lintel") continue;
    const words::Reader reader{building->tape};
    const Fact named = named_place(job, finding.place);
    const std::string says = words::told(finding.says, reader);
    const std::string doubt = named.empty() ? says : words::told(named, reader) + ": " + says;
    if (!std::ranges::contains(doubts, doubt)) doubts.push_back(doubt);
  }
}

// Of the building alone and with each opening by itself: what stops two of them together hides nothing.
std::string hardly_meant(const Job& job) {
  std::vector<std::string> doubts;
  Job one = job;
  one.openings.clear();
  add_hardly_meant(doubts, one);
  for (const Opening& opening : job.openings) {
    one.openings = {opening};
    add_hardly_meant(doubts, one);
  }
  std::string text;
  for (const std::string& doubt : doubts)
    text += "refused: this can hardly be meant\n" + wrapped("  ", printable(doubt));
  return text;
}

std::string next_steps(const std::string& path) {
  const std::string job = path == "-" ? "JOB" : printable(path);
  return "next: stringcourse look " + job + "                 what it takes, and what to settle first\n" +
         "      stringcourse add " + job + " --help           put in openings and inner walls\n" +
         "      stringcourse plan " + job + " --out DIR       print the sheets\n";
}

}  // namespace

ExitCode begin(const Command& command) {
  const auto job = rectangle(command);
  if (!job) return usage_trouble(job.error(), command.verb);
  ask_before_stopping();
  const std::string text = write_job(*job);
  const auto read_back = read_job(text);
  if (!read_back) return say(refusals_text(read_back.error())), kRefused;
  const auto building = resolve(*read_back);
  const std::string refused =
      (building ? std::string() : refusals_text(building.error(), &*read_back)) + hardly_meant(*read_back);
  if (!refused.empty()) return say(refused), kRefused;
  const std::string path = command.value("--out").value_or("-");
  if (path == "-") return write_stdout(text) ? kDone : file_trouble("cannot write to stdout");
  const ExitCode written = write_new_file(path, text);
  if (written == kDone) say(next_steps(path));
  return written;
}

}  // namespace stringcourse::cli
