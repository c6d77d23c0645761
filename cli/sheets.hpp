#pragma once
// The sheets of a set: one PDF for each paper, and every drawing as a picture of its own.
#include "cli/files.hpp"
#include "cli/set_folder.hpp"
#include "cli/terminal.hpp"
#include "sheet/display.hpp"
#include "solve/solve.hpp"

namespace stringcourse::cli {

enum class Pictures { Drawn, None };

/// Writes set-letter.pdf or set-a4.pdf and, if asked, drawings/NAME.svg for every sheet. One sheet is held at a time.
[[nodiscard]] FileResult<void> write_sheets(SetFolder& set, const Answer& answer, sheet::Paper paper, Pictures pictures,
                                            ProgressBar& progress);

}  // namespace stringcourse::cli
