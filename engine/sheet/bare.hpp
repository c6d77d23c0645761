#pragma once
// Drawings without a frame: the sheet is as large as what it shows.
#include "paper/pad.hpp"
#include "paper/scale.hpp"
#include "sheet/on_paper.hpp"
#include "sheet/sheets.hpp"

namespace stringcourse::sheet {

inline constexpr Micrometres kRim = 7'000;          // what desk printers leave blank
inline constexpr Micrometres kLargest = 1'000'000;  // one metre of paper at most, each way

[[nodiscard]] Sheet bare_sheet(SheetName name, Micrometres width, Micrometres height);
[[nodiscard]] Area inside_rim(const Sheet& sheet);

/// A sheet for a plan of the whole building at 1:50, or the largest smaller scale at which it fits.
struct BarePlan {
  Sheet sheet;
  Scale scale;
};
[[nodiscard]] BarePlan bare_plan(const Building& building, SheetName name);

}  // namespace stringcourse::sheet
