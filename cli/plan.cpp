#include <algorithm>
#include <span>
#include <utility>
#include <vector>

#include "cli/files.hpp"
#include "cli/set_folder.hpp"
#include "cli/sheets.hpp"
#include "cli/signals.hpp"
#include "cli/solved.hpp"
#include "cli/summary.hpp"
#include "cli/verb_actions.hpp"
#include "document/answer_json.hpp"
#include "document/calendar.hpp"
#include "document/order_csv.hpp"
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
  return std::unexpected(
      with_nearest("--paper is " + one_of_words(kPapers) + ", not " + quoted(word) + ".", word, kPapers));
}

constexpr HoldPoint kPoints[] = {HoldPoint::Order,   HoldPoint::Pour,  HoldPoint::FirstCourse,
                                 HoldPoint::Lintels, HoldPoint::Grout, HoldPoint::Top};

std::expected<sheet::Wanted, std::string> chosen_sheets(const Command& command) {
  sheet::Wanted wanted{.templates = command.has("--templates"), .standards = command.has("--standards")};
  const std::string word = command.value("--for").value_or("all");
  if (word == "all") return wanted;
  std::vector<std::string_view> names;
  for (const HoldPoint point : kPoints) {
    names.push_back(hold_point_name(point));
    if (word == names.back()) wanted.only = point;
  }
  names.push_back("all");
  if (wanted.only) return wanted;
  return std::unexpected(with_nearest("--for is " + one_of_words(names) + ", not " + quoted(word) + ".", word, names));
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
FileResult<void> fill_set(SetFolder& set, const Answer& answer, std::span<const Paper> papers,
                          const sheet::Wanted& wanted, ProgressBar& progress) {
  if (auto done = write_file(set, "job.json", write_job(answer.job)); !done) return done;
  if (auto done = write_answer_file(set, answer); !done) return done;
  if (auto done = write_file(set, "order.csv", order_csv(answer)); !done) return done;
  if (const std::string calendar = calendar_text(answer); !calendar.empty()) {
    if (auto done = write_file(set, "days.ics", calendar); !done) return done;
  }
  for (const Paper paper : papers) {
    if (auto done = write_sheets(set, answer, paper, wanted, progress); !done) return done;
  }
  return write_drawings(set, answer, progress);
}

// "24 sheets: order 2, pour 6 ..."
std::string counted_text(const std::vector<sheet::SheetName>& names) {
  std::string text = number_text(static_cast<long long>(names.size())) + (names.size() == 1 ? " sheet:" : " sheets:");
  bool first = true;
  for (const HoldPoint point : kPoints) {
    const auto count = std::ranges::count(names, point, &sheet::SheetName::hold_point);
    if (count == 0) continue;
    text += (std::exchange(first, false) ? " " : ", ") + std::string(hold_point_name(point)) + " " + number_text(count);
  }
  return text;
}

std::string written_text(const SetFolder& set, const std::string& place, const Answer& answer, Paper paper,
                         const sheet::Wanted& wanted) {
  const auto drawings =
      std::ranges::count_if(set.names(), [](const auto& name) { return name.starts_with("drawings/"); });
  std::string text = "\nwritten to " + printable(place) + ": ";
  for (const std::string& name : set.names()) {
    if (!name.starts_with("drawings/") && name != kMarkerName) text += name + ", ";
  }
  text += number_text(drawings) + " drawings\n" + counted_text(sheet_names(answer, paper, wanted)) + "\n";
  if (!wanted.templates && !answer.dowels.empty()) text += "--templates adds templates of the dowels at full size.\n";
  if (!wanted.standards) text += "--standards adds the rules used, each with its source.\n";
  return text;
}

// All that is wrong with what was typed, a line each.
std::string trouble_of(const Command& command) {
  std::string text;
  const auto add = [&](const std::string& line) { text += (text.empty() ? "" : "\n") + line; };
  if (command.value("--out").value_or("").empty()) add("'plan' wants --out DIR, the folder to write.");
  if (const auto papers = chosen_papers(command, Tape::Inches); !papers) add(papers.error());
  if (const auto wanted = chosen_sheets(command); !wanted) add(wanted.error());
  return text;
}

}  // namespace

ExitCode plan(const Command& command) {
  if (const std::string trouble = trouble_of(command); !trouble.empty()) return usage_trouble(trouble, command.verb);
  const std::string place = *command.value("--out");
  const sheet::Wanted wanted = *chosen_sheets(command);
  if (const auto free = SetFolder::check(place); !free) return file_trouble(free.error().text);

  const bool quiet = command.has("--quiet");
  ProgressBar progress(quiet ? ProgressBar::Wish::Quiet : ProgressBar::Wish::Shown);
  const auto answer = read_and_solve(command, progress);
  if (!answer) return answer.error();
  if (!answer->layout.stopped.empty()) {
    progress.wipe();
    if (const ExitCode printed = print_answer(*answer, command); printed != kDone) return printed;
    return say(stops_text(*answer) + "Nothing was written.\n"), kRefused;
  }

  const auto papers = chosen_papers(command, answer->job.tape);
  if (sheet_names(*answer, papers->front(), wanted).empty()) {
    progress.wipe();
    return say("This job has no sheet for the hold point " + std::string(hold_point_name(*wanted.only)) +
               ". Nothing was written.\n"),
           kRefused;
  }
  ask_before_stopping();
  auto set = SetFolder::begin(place);
  if (!set) return file_trouble(set.error().text);
  if (const auto filled = fill_set(*set, *answer, *papers, wanted, progress); !filled)
    return file_trouble(filled.error().text);
  if (const auto moved = set->finish(); !moved) return file_trouble(moved.error().text);
  progress.wipe();
  if (const ExitCode printed = print_answer(*answer, command); printed != kDone) return printed;
  if (!quiet) say(written_text(*set, place, *answer, papers->front(), wanted));
  return verdict_of(*answer, command);
}

}  // namespace stringcourse::cli
