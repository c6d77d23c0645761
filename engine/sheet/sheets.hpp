#pragma once
// The printed set of a job: summary, plans of the first two courses, elevations, schedules. Made from building and
// layout alone; no file, no clock. For Letter or A4, landscape.
#include <cstddef>
#include <functional>
#include <string>
#include <vector>

#include "answer/answer.hpp"
#include "paper/display.hpp"
#include "sheet/on_paper.hpp"
#include "sheet/words.hpp"

namespace stringcourse::sheet {

/// Name and title of one sheet: "01-summary", "Summary". Names are unique, rising and made of a-z, A-Z, 0-9 and "-".
struct SheetName {
  std::string name, title;
  friend bool operator==(const SheetName&, const SheetName&) = default;
};

/// The set in the order of registry.hpp: summary, findings and standards, what the pour needs, what was found on the
/// ground, plans of the first two courses whole and by side, elevations, lists. Long walls and tables go over several
/// sheets.
[[nodiscard]] std::vector<SheetName> sheet_names(const Answer& answer, Paper paper);
[[nodiscard]] std::vector<Sheet> make_sheets(const Answer& answer, Paper paper);
/// The same sheets one at a time, in order: only one is in memory.
void for_each_sheet(const Answer& answer, Paper paper, const std::function<void(const Sheet&)>& take);

/// Drawings without a frame, each as large as what it shows, at 1:50 or a smaller round scale: "plan-course-1",
/// "plan-course-2", then "elevation-1", "elevation-2" ... in the order of the walls. For pages and pictures.
[[nodiscard]] std::vector<SheetName> drawing_names(const Building& building);
/// One of them by its place in drawing_names().
[[nodiscard]] Sheet make_drawing(const Answer& answer, std::size_t index);

}  // namespace stringcourse::sheet
