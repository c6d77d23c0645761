#pragma once
// The printed set of a job, by hold point: what each of them needs on as few full pages as it can. Made from an answer
// alone; no file, no clock. For Letter or A4, landscape.
#include <cstddef>
#include <functional>
#include <optional>
#include <string>
#include <vector>

#include "answer/answer.hpp"
#include "paper/display.hpp"
#include "sheet/on_paper.hpp"
#include "words/sheet_words.hpp"

namespace stringcourse::sheet {

/// Name and title of one sheet: "01-summary", "Summary". Names are unique, rising and made of a-z, A-Z, 0-9 and "-".
struct SheetName {
  std::string name, title;
  HoldPoint hold_point = HoldPoint::Order;  // what it is printed for; of a drawing it says nothing
  std::optional<HoldPoint> also = {};       // and what a list is for that stands under the sheet's own
  friend bool operator==(const SheetName&, const SheetName&) = default;
};

/// What a set is to hold.
struct Wanted {
  std::optional<HoldPoint> only = {};  // the sheets of one hold point alone, numbered as in the whole set
  bool templates = false;              // with full-size templates of the dowels
  bool standards = false;              // with the rules used, each with its source
};

/// The set in the order of registry.hpp, which is that of the hold points. Long walls and tables go over several
/// sheets.
[[nodiscard]] std::vector<SheetName> sheet_names(const Answer& answer, Paper paper, const Wanted& wanted = {});
[[nodiscard]] std::vector<Sheet> make_sheets(const Answer& answer, Paper paper,
                                             const words::Language& language = words::english(),
                                             const Wanted& wanted = {});
/// The same sheets one at a time, in order: only one is in memory.
void for_each_sheet(const Answer& answer, Paper paper, const std::function<void(const Sheet&)>& take,
                    const words::Language& language = words::english(), const Wanted& wanted = {});

/// Drawings without a frame, each as large as what it shows, at 1:50 or a smaller round scale: "plan-course-1",
/// "plan-course-2", then "elevation-1", "elevation-2" ... in the order of the walls. For pages and pictures.
[[nodiscard]] std::vector<SheetName> drawing_names(const Building& building);
/// One of them by its place in drawing_names().
[[nodiscard]] Sheet make_drawing(const Answer& answer, std::size_t index);

}  // namespace stringcourse::sheet
