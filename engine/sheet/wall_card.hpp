#pragma once
// At the wall: the marks of the courses in hand with boxes for what is read there, and the laid log with what it comes to.
#include "paper/table.hpp"
#include "sheet/context.hpp"

namespace stringcourse::sheet {

/// Each wall's next course and the one after it: marks, what they mark, what was read, the next joints. No lines without
/// the laid log's reading of the building.
[[nodiscard]] Table marks_table(const Context& context);
/// What is not as it was printed: walls and courses, and their units. No lines where nothing changed.
[[nodiscard]] Table changes_table(const Context& context);
/// The laid log, struck entries too; how far the work is. No lines where nothing was entered.
[[nodiscard]] Table laid_table(const Context& context);

}  // namespace stringcourse::sheet
