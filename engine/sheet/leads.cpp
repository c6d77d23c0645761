// The units of each corner's lead, course by course.
#include <algorithm>

#include "setout/laying_order.hpp"
#include "sheet/registry.hpp"

namespace stringcourse::sheet {
namespace {

Table lead_table(const Context& context) {
  const Words& words = context.words;
  Table table = new_table(context.page.drawing.width(), words.title_lead_table,
                          {{words.corner, 13}, {words.lead_units_heading, 27}}, kText);
  const int high = std::min(setout::kLeadCourses, static_cast<int>(context.building.courses.size()));
  for (int course = 1; course <= high; ++course) {
    table.columns.push_back({fill_in(words.lead_course, {number_text(course)}), 12, Anchor::Start});
  }
  for (const setout::Lead& lead : setout::leads(context.building, context.layout)) {
    const Corner& corner = context.building.corners[static_cast<std::size_t>(lead.corner)];
    std::vector<std::string> cells{corner.name,
                                   context.wall(corner.arriving).name + " + " + context.wall(corner.leaving).name};
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
    .note = &Words::lead_note,
    .under = &kGaugeRodSheet,
};

}  // namespace stringcourse::sheet
