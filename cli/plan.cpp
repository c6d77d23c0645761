#include <algorithm>
#include <span>
#include <vector>

#include "cli/files.hpp"
#include "cli/set_folder.hpp"
#include "cli/sheets.hpp"
#include "cli/signals.hpp"
#include "cli/solved.hpp"
#include "cli/summary.hpp"
#include "cli/verb_actions.hpp"
#include "document/answer_json.hpp"
#include "job/words.hpp"
#include "job/write.hpp"

namespace stringcourse::cli {

namespace {

using paper::Paper;

std::expected<std::vector<Paper>, std::string> chosen_papers(const Command& command, Tape tape) {
  constexpr std::string_view kPapers[] = {"letter", "a4", "both"};
  const std::string word = command.value("--paper").value_or(tape == Tape::Inches ? "letter" : "a4");
  if (word == "letter") return std::vector{Paper::Letter};
  if (word == "a4") return std::vector{Paper::A4};
  if (word == "both") return std::vector{Paper::Letter, Paper::A4};
  return std::unexpected("--paper is " + one_of_words(kPapers) + ", not " + quoted(word) + ".");
}

FileResult<void> write_file(SetFolder& set, const std::string& name, std::string_view text) {
  auto file = set.create(name);
  if (!file) return std::unexpected(file.error());
  file->write(text);
  return file->finish();
}

FileResult<void> write_answer_file(SetFolder& set, const Answer& answer) {
  auto file = set.create("answer.json");
  if (!file) return std::unexpected(file.error());
  (void)write_answer(answer, [&](std::string_view bytes) { return file->write(bytes); });
  return file->finish();
}

// Everything of the set, in the order in which a reader meets it.
FileResult<void> fill_set(SetFolder& set, const Answer& answer, std::span<const Paper> papers, ProgressBar& progress) {
  if (auto done = write_file(set, "job.json", write_job(answer.job)); !done) return done;
  if (auto done = write_answer_file(set, answer); !done) return done;
  for (const Paper paper : papers) {
    if (auto done = write_sheets(set, answer, paper, progress); !done) return done;
  }
  return write_drawings(set, answer, progress);
}

std::string written_text(const SetFolder& set, const std::string& place) {
  const auto drawings = std::ranges::count_if(set.names(), [](const auto& name) { return name.starts_with("drawings/"); });
  std::string text = "\nwritten to " + printable(place) + ": ";
  for (const std::string& name : set.names()) {
    if (!name.starts_with("drawings/") && name != kMarkerName) text += name + ", ";
  }
  return text + number_text(drawings) + " drawings\n";
}

}  // namespace

ExitCode plan(const Command& command) {
  const auto place = command.value("--out");
  if (!place || place->empty()) return usage_trouble("'plan' wants --out DIR, the folder to write.", command.verb);
  if (const auto papers = chosen_papers(command, Tape::Inches); !papers) return usage_trouble(papers.error(), command.verb);
  if (const auto free = SetFolder::check(*place); !free) return file_trouble(free.error().text);

  const bool quiet = command.has("--quiet");
  ProgressBar progress(quiet ? ProgressBar::Wish::Quiet : ProgressBar::Wish::Shown);
  const auto answer = read_and_solve(command, progress);
  if (!answer) return answer.error();
  if (!answer->layout.stopped.empty()) {
    progress.wipe();
    if (const ExitCode printed = print_answer(*answer, command); printed != kDone) return printed;
    return say(stops_text(*answer) + "Nothing was written.\n"), kRefused;
  }

  ask_before_stopping();
  auto set = SetFolder::begin(*place);
  if (!set) return file_trouble(set.error().text);
  const auto papers = chosen_papers(command, answer->job.tape);
  if (const auto filled = fill_set(*set, *answer, *papers, progress); !filled) return file_trouble(filled.error().text);
  if (const auto moved = set->finish(); !moved) return file_trouble(moved.error().text);
  progress.wipe();
  if (const ExitCode printed = print_answer(*answer, command); printed != kDone) return printed;
  if (!quiet) say(written_text(*set, *place));
  return verdict_of(*answer, command);
}

}  // namespace stringcourse::cli
