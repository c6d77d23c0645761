#pragma once
// The sheets of a set as PDF, and its drawings as pictures. Written one at a time: one sheet is in memory.
#include "cli/files.hpp"
#include "cli/set_folder.hpp"
#include "cli/terminal.hpp"
#include "paper/display.hpp"
#include "sheet/sheets.hpp"
#include "solve/solve.hpp"

namespace stringcourse::cli {

/// Writes set-letter.pdf or set-a4.pdf; of one hold point set-pour-letter.pdf ...
[[nodiscard]] FileResult<void> write_sheets(SetFolder& set, const Answer& answer, paper::Paper paper,
                                            const sheet::Wanted& wanted, ProgressBar& progress);

/// Writes drawings/NAME.svg for every drawing.
[[nodiscard]] FileResult<void> write_drawings(SetFolder& set, const Answer& answer, ProgressBar& progress);

}  // namespace stringcourse::cli
