#include "solve/printed_set.hpp"

#include <utility>

#include "ink/pdf.hpp"

namespace stringcourse {

std::string_view set_file_name(paper::Paper paper) {
  return paper == paper::Paper::Letter ? "set-letter.pdf" : "set-a4.pdf";
}

void write_set(const Answer& answer, paper::Paper paper, ink::Sink sink,
               const std::function<void(std::size_t, std::size_t)>& page_done, const paper::FontFiles& fonts) {
  const std::size_t all = page_done ? sheet::sheet_names(answer, paper).size() : 0;
  std::size_t done = 0;
  ink::PdfWriter writer(std::move(sink), {.title = answer.job.name, .fonts = fonts});
  sheet::for_each_sheet(answer, paper, [&](const paper::Sheet& sheet) {
    writer.add(sheet);
    if (page_done) page_done(++done, all);
  });
  writer.finish();
}

}  // namespace stringcourse
