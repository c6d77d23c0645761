#pragma once
// A list as sheets: which lines stand on which, the note at the foot, and a short list under another one.
#include <span>
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
/// Lists that stand under the last line of another one, from the top.
using ListsUnder = std::span<const List* const>;
/// Whether one more list, and all notes, fit under the last lines of the upper one and those that stand there already.
[[nodiscard]] bool fits_under(const Context& context, const List& above, ListsUnder under, const List& below);
/// The lines of the sheet with the note at its foot; `under_last`: the lists that stand under this one's last line.
[[nodiscard]] Group draw_list(const Context& context, const PlannedSheet& sheet, const List& list,
                              ListsUnder under_last);

}  // namespace stringcourse::sheet
