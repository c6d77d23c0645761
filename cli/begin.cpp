#include <expected>
#include <vector>

#include "catalogue/series.hpp"
#include "cli/files.hpp"
#include "cli/solved.hpp"
#include "cli/summary.hpp"
#include "cli/verb_actions.hpp"
#include "job/read.hpp"
#include "job/words.hpp"
#include "job/write.hpp"
#include "measure/notation.hpp"
#include "walls/resolve.hpp"

namespace stringcourse::cli {

namespace {

constexpr std::string_view kActual = " actual";

// A measure as a job states it: nominal unless it ends with "actual".
std::expected<StatedLength, std::string> read_measure(const Command& command, std::string_view option, Tape tape) {
  const auto typed = command.value(option);
  if (!typed) return std::unexpected("'begin' wants " + std::string(option) + ".");
  std::string_view text = *typed;
  const Basis basis = text.ends_with(kActual) ? Basis::Actual : Basis::Nominal;
  if (basis == Basis::Actual) text.remove_suffix(kActual.size());
  const auto length = read_length(text, tape);
  if (!length) return std::unexpected(std::string(option) + ": " + length.error().reason + " " + length.error().remedy);
  return StatedLength{*length, basis};
}

std::expected<const Series*, std::string> chosen_series(const Command& command) {
  const std::string id = command.value("--series").value_or("us-8");
  if (const Series* series = find_series(id)) return series;
  std::vector<std::string_view> known;
  for (const Series& series : catalogue_series()) known.push_back(series.id);
  const std::string_view nearest = nearest_name(id, known);
  return std::unexpected("There is no series " + quoted(id) + ": " + one_of_words(known) + "." +
                         (nearest.empty() ? "" : " Did you mean '" + std::string(nearest) + "'?"));
}

std::expected<Job, std::string> rectangle(const Command& command) {
  const auto series = chosen_series(command);
  if (!series) return std::unexpected(series.error());
  const Tape tape = (*series)->tape;
  const auto length = read_measure(command, "--length", tape);
  if (!length) return std::unexpected(length.error());
  const auto width = read_measure(command, "--width", tape);
  if (!width) return std::unexpected(width.error());
  const auto height = read_measure(command, "--height", tape);
  if (!height) return std::unexpected(height.error());
  Job job;
  job.name = command.value("--name").value_or("");
  job.tape = tape;
  job.units.series = (*series)->id;
  job.heights.height = *height;
  job.outline.sides = {{"", "A", "B", *length, Turn::Right, std::nullopt},
                       {"", "B", "C", *width, Turn::Right, std::nullopt},
                       {"", "C", "D", *length, Turn::Right, std::nullopt},
                       {"", "D", "A", *width, Turn::Right, std::nullopt}};
  return job;
}

ExitCode write_new_file(const std::string& path, std::string_view text) {
  auto file = NewFile::create(path);
  if (!file) return file_trouble(file.error().text);
  file->write(text);
  if (const auto written = file->finish(); !written) return file_trouble(written.error().text);
  say("written: " + printable(path) + "\n");
  return kDone;
}

}  // namespace

ExitCode begin(const Command& command) {
  const auto job = rectangle(command);
  if (!job) return usage_trouble(job.error(), command.verb);
  const std::string text = write_job(*job);
  const auto read_back = read_job(text);
  if (!read_back) return say(refusals_text(read_back.error())), kRefused;
  if (const auto building = resolve(*read_back); !building) return say(refusals_text(building.error())), kRefused;
  const std::string path = command.value("--out").value_or("-");
  if (path != "-") return write_new_file(path, text);
  return write_stdout(text) ? kDone : file_trouble("cannot write to stdout");
}

}  // namespace stringcourse::cli
