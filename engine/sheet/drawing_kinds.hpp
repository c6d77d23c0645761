#pragma once
// Finding the drawing that is asked for by its name among some kinds. Internal to sheet/.
#include <optional>
#include <span>
#include <string_view>

#include "sheet/kind.hpp"

namespace stringcourse::sheet {

/// One drawing that can be asked for.
struct Asked {
  const DrawingKind& kind;
  int number = 1;
};
[[nodiscard]] SheetName drawing_name(const Asked& asked, const Building& building, const words::SheetWords& words);

[[nodiscard]] std::optional<Drawing> drawing_of_kinds(const Answer& answer, std::string_view name,
                                                      std::span<const DrawingKind* const> kinds);

extern const DrawingKind kPlanDrawing, kElevationDrawing;

}  // namespace stringcourse::sheet
