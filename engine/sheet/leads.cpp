// The units of each corner's lead, course by course.
#include <algorithm>

#include "setout/laying_order.hpp"
#include "sheet/registry.hpp"

namespace stringcourse::sheet {
namespace {

Table lead_table(const Context& context) {
  const Words& words = context.words;
  std::vector<Column> columns{column(words.corner, 13), column(words.lead_units_heading, 27)};
  const int high = std::min(setout::kLeadCourses, static_cast<int>(context.building.courses.size()));
  for (int course = 1; course <= high; ++course) {
    columns.push_back({fill_in(words.lead_course, {number_text(course)}), 12, Anchor::Start});
  }
  Table table = new_table(context.page.drawing.width(), words.title_lead_table, std::move(columns), kText);
  for (const setout::Lead& lead : setout::leads(context.building, context.layout)) {
    const Corner& corner = context.building.corners[static_cast<std::size_t>(lead.corner)];
    std::vector<std::string> cells{corner.name, context.wall(corner.arriving).name + " + " + context.wall(corner.leaving).name};
    for (const setout::LeadCourse& course : lead.courses) {
      cells.push_back(number_text(course.arriving_units) + " + " + number_text(course.leaving_units));
    }
    table.add_row(cells);
  }
  return table;
}

}  // namespace

constinit const SheetKind kLeadsSheet{
    .name = "leads",
    .hold_point = HoldPoint::FirstCourse,
    .caution = {"limited-access-zone"},
    .table = lead_table,
    .note = [](const Context& context) { return std::string(context.words.lead_note); },
    .under = &kGaugeRodSheet,
};

}  // namespace stringcourse::sheet
