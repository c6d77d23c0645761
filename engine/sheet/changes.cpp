// What is not as it was printed: walls and courses, and their units.
#include "sheet/registry.hpp"

namespace stringcourse::sheet {
namespace {

Table changes_table(const Context& context) {
  const words::SheetWords& words = context.words;
  Table table = new_table(context.page.drawing.width(), words.title_changes,
                          {{"", 5}, {words.change_where, 45}, {words.change_units, 50}}, kText);
  table.pencil_boxes = true;
  if (!context.answer.as_built) return table;
  for (const CourseChange& change : context.answer.as_built->changes) {
    const std::string units =
        change.units.empty() ? std::string(words.change_none) : joined(context.told(change.units), "; ");
    table.add_row({"", context.told(change_said(context.answer.building, change)), units});
  }
  return table;
}

}  // namespace

constinit const SheetKind kChangesSheet{
    .name = "changes",
    .hold_point = HoldPoint::FirstCourse,
    .purpose = &words::SheetWords::purpose_changes,
    .caution = {"wet-cement"},
    .table = changes_table,
    .note = &words::SheetWords::change_note,
};

}  // namespace stringcourse::sheet
