#include "solve/printed_set.hpp"

#include <utility>

#include "ink/pdf.hpp"

namespace stringcourse {

std::string set_file_name(paper::Paper paper, std::optional<HoldPoint> only) {
  const std::string part = only ? std::string(hold_point_name(*only)) + "-" : std::string();
  return "set-" + part + (paper == paper::Paper::Letter ? "letter.pdf" : "a4.pdf");
}

void write_set(const Answer& answer, paper::Paper paper, ink::Sink sink,
               const std::function<void(std::size_t, std::size_t)>& page_done, const paper::FontFiles& fonts,
               const sheet::Wanted& wanted) {
  const std::size_t all = page_done ? sheet::sheet_names(answer, paper, wanted).size() : 0;
  std::size_t done = 0;
  ink::PdfWriter writer(std::move(sink), {.title = answer.job.name, .fonts = fonts});
  const auto take = [&](const paper::Sheet& sheet) {
    writer.add(sheet);
    if (page_done) page_done(++done, all);
  };
  sheet::for_each_sheet(answer, paper, take, words::english(), wanted);
  writer.finish();
}

}  // namespace stringcourse
