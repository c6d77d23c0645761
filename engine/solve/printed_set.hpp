#pragma once
// The printed set of an answer: its sheets as one PDF.
#include <optional>
#include <string>

#include "ink/pdf_objects.hpp"
#include "paper/font.hpp"
#include "sheet/sheets.hpp"
#include "solve/solve.hpp"

namespace stringcourse {

/// "set-letter.pdf", "set-a4.pdf"; of one hold point "set-pour-letter.pdf".
[[nodiscard]] std::string set_file_name(paper::Paper paper, std::optional<HoldPoint> only = {});

/// Writes the set, page by page, with the memory of one page. `page_done` is called after each page with how many are
/// done and how many there are; it may be empty. `fonts`: whole.
void write_set(const Answer& answer, paper::Paper paper, ink::Sink sink,
               const std::function<void(std::size_t done, std::size_t all)>& page_done = {},
               const paper::FontFiles& fonts = paper::embedded_fonts(), const sheet::Wanted& wanted = {});

}  // namespace stringcourse
