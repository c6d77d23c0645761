#include "cli/sheets.hpp"

#include "ink/pdf.hpp"
#include "ink/svg.hpp"
#include "sheet/sheets.hpp"

namespace stringcourse::cli {

namespace {

sheet::SheetWords words_of(const Answer& answer) {
  sheet::SheetWords words;
  words.name = answer.job.name;
  words.notes = answer.job.notes;
  words.issued = answer.job.issued;
  words.drawn_by = answer.job.drawn_by;
  words.findings = answer.findings;
  return words;
}

double share_of(std::size_t done, std::size_t all) { return static_cast<double>(done) / static_cast<double>(all + 1); }

}  // namespace

FileResult<void> write_sheets(SetFolder& set, const Answer& answer, sheet::Paper paper, ProgressBar& progress) {
  auto file = set.create(paper == sheet::Paper::Letter ? "set-letter.pdf" : "set-a4.pdf");
  if (!file) return std::unexpected(file.error());
  const sheet::SheetWords words = words_of(answer);
  const std::size_t all = sheet::sheet_names(answer.building, answer.layout, words, paper).size();
  std::size_t done = 0;
  ink::PdfWriter writer([&](std::string_view bytes) { file->write(bytes); }, {.title = answer.job.name});
  sheet::for_each_sheet(answer.building, answer.layout, words, paper, [&](const sheet::Sheet& sheet) {
    writer.add(sheet);
    progress.show("drawing sheets", share_of(++done, all));
  });
  writer.finish();
  return file->finish();
}

FileResult<void> write_drawings(SetFolder& set, const Answer& answer, ProgressBar& progress) {
  const sheet::SheetWords words = words_of(answer);
  const std::size_t all = sheet::drawing_names(answer.building, words).size();
  for (std::size_t index = 0; index < all; ++index) {
    const sheet::Sheet drawing = sheet::make_drawing(answer.building, answer.layout, words, index);
    auto file = set.create("drawings/" + safe_file_name(drawing.name) + ".svg");
    if (!file) return std::unexpected(file.error());
    file->write(ink::svg_text(drawing));
    if (auto written = file->finish(); !written) return written;
    progress.show("drawing pictures", share_of(index + 1, all));
  }
  return {};
}

}  // namespace stringcourse::cli
