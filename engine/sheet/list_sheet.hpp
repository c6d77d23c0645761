#pragma once
// A list as sheets: which lines stand on which, the note at the foot, and a short list under another one.
#include <string>
#include <vector>

#include "sheet/kind.hpp"

namespace stringcourse::sheet {

/// A list, laid out once for a set, with what is said under it.
struct List {
  Table table;
  std::string note;
};

/// As few sheets as hold it. Rows stay whole unless one is longer than a sheet.
[[nodiscard]] std::vector<PlannedSheet> sheets_of_list(const Context& context, const List& list);
/// Whether both lists and both notes fit one sheet.
[[nodiscard]] bool fits_under(const Context& context, const List& above, const List& below);
/// The lines of the sheet with the note at its foot; `under`: the list that stands under this one, or null.
[[nodiscard]] Group draw_list(const Context& context, const PlannedSheet& sheet, const List& list, const List* under);

}  // namespace stringcourse::sheet
