#include "cli/sheets.hpp"

#include "ink/svg.hpp"
#include "solve/printed_set.hpp"

namespace stringcourse::cli {

namespace {

double share_of(std::size_t done, std::size_t all) { return static_cast<double>(done) / static_cast<double>(all + 1); }

}  // namespace

FileResult<void> write_sheets(SetFolder& set, const Answer& answer, paper::Paper paper, const sheet::Wanted& wanted,
                              ProgressBar& progress) {
  auto file = set.create(set_file_name(paper, wanted.only));
  if (!file) return std::unexpected(file.error());
  write_set(
      answer, paper, [&](std::string_view bytes) { file->write(bytes); },
      [&](std::size_t done, std::size_t all) { progress.show("drawing sheets", share_of(done, all)); },
      paper::embedded_fonts(), wanted);
  return file->finish();
}

FileResult<void> write_drawings(SetFolder& set, const Answer& answer, ProgressBar& progress) {
  const std::size_t all = sheet::drawing_names(answer.building).size();
  for (std::size_t index = 0; index < all; ++index) {
    const paper::Sheet drawing = sheet::make_drawing(answer, index);
    auto file = set.create("drawings/" + safe_file_name(drawing.name) + ".svg");
    if (!file) return std::unexpected(file.error());
    file->write(ink::svg_text(drawing));
    if (auto written = file->finish(); !written) return written;
    progress.show("drawing pictures", share_of(index + 1, all));
  }
  return {};
}

}  // namespace stringcourse::cli
