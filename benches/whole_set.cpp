#include "benches/whole_set.hpp"

#include <stdlib.h>

#include <chrono>
#include <filesystem>
#include <string>

#include "benches/figure.hpp"
#include "cli/set_folder.hpp"
#include "cli/sheets.hpp"
#include "document/answer_json.hpp"
#include "job/write.hpp"
#include "words/language.hpp"

namespace stringcourse::benches {

namespace {

using cli::FileResult;
using cli::SetFolder;

FileResult<void> write_text(SetFolder& set, const std::string& name, std::string_view text) {
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

FileResult<void> write_set(const std::string& place, const Answer& answer) {
  cli::ProgressBar silent(cli::ProgressBar::Wish::Quiet);
  auto set = SetFolder::begin(place);
  if (!set) return std::unexpected(set.error());
  if (auto done = write_text(*set, "job.json", write_job(answer.job)); !done) return done;
  if (auto done = write_answer_file(*set, answer); !done) return done;
  if (auto done = cli::write_sheets(*set, answer, paper::Paper::Letter, {}, silent); !done) return done;
  if (auto done = cli::write_drawings(*set, answer, silent); !done) return done;
  return set->finish();
}

// In memory where there is such a place, so that the figure is the program's and not the disk's: every file is synced.
std::string temporary_place() {
  std::error_code ignored;
  if (std::filesystem::is_directory("/dev/shm", ignored)) return "/dev/shm";
  return std::filesystem::temp_directory_path().string();
}

}  // namespace

Answer solved(const Job& job) {
  auto answer = solve(job, {});
  if (!answer)
    give_up("refused: " + answer.error().shown[0].place + ": " +
            words::told(answer.error().shown[0].reason, {Tape::Inches}));
  if (!answer->layout.stopped.empty())
    give_up("stopped: " + words::told(answer->layout.stopped[0].rule, {Tape::Inches}));
  return *std::move(answer);
}

double seconds_to_write(const Answer& answer) {
  std::string folder = temporary_place() + "/stringcourse-bench-XXXXXX";
  if (::mkdtemp(folder.data()) == nullptr) give_up("cannot make a temporary folder");
  FileResult<void> written;
  const double seconds = median_seconds(1, [&] { written = write_set(folder + "/set", answer); });
  std::error_code ignored;
  std::filesystem::remove_all(folder, ignored);
  if (!written) give_up(written.error().text);
  return seconds;
}

}  // namespace stringcourse::benches
