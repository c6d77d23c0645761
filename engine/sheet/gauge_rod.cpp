#include <span>

#include "setout/gauge_rod.hpp"
#include "sheet/registry.hpp"

namespace stringcourse::sheet {
namespace {

// Marks of one event at one height: the event once, then whose it is.
std::string rod_text(const Context& context, std::span<const setout::RodMark> marks) {
  const Words& words = context.words;
  std::string name;
  for (const setout::RodMark& mark : marks) {
    if (mark.opening < 0) continue;
    name += (name.empty() ? "" : ", ") + context.building.openings[static_cast<std::size_t>(mark.opening)].name;
  }
  switch (marks.front().event) {
    case setout::RodEvent::Floor: return fill_in(words.floor, {name});
    case setout::RodEvent::Sill: return fill_in(words.sill, {name});
    case setout::RodEvent::CourseTop: return std::string(words.rod_course);
    case setout::RodEvent::Wire: return std::string(words.wire);
    case setout::RodEvent::Head: return fill_in(words.head, {name});
    case setout::RodEvent::LintelCourse: return fill_in(words.rod_lintel, {name});
    case setout::RodEvent::BondBeam: return std::string(words.rod_bond_beam);
    case setout::RodEvent::PourStop: return std::string(words.pour_stop);
    case setout::RodEvent::Top: return std::string(words.rod_top);
  }
  return {};
}

Table gauge_rod_table(const Context& context) {
  const Words& words = context.words;
  Table table = new_table(context.page.drawing.width(), words.title_gauge_rod,
                          {{"", 3}, {words.height, 30}, {words.course, 12, Anchor::End},
                           {words.rod_event, 55}},
                          kText);
  table.pencil_boxes = true;
  const std::vector<setout::RodMark>& rod = context.answer.gauge_rod;
  for (std::size_t first = 0; first < rod.size();) {  // one row for all that stands at one height
    std::string course, events;
    std::size_t next = first;
    while (next < rod.size() && rod[next].at == rod[first].at) {
      std::size_t end = next;
      while (end < rod.size() && rod[end].at == rod[first].at && rod[end].event == rod[next].event) ++end;
      if (rod[next].event == setout::RodEvent::CourseTop) course = number_text(rod[next].course);
      if (!events.empty()) events += "; ";
      events += rod_text(context, std::span(rod).subspan(next, end - next));
      next = end;
    }
    table.add_row({"", both_forms(rod[first].at, context.tape()), course, events});
    first = next;
  }
  return table;
}

}  // namespace

constinit const SheetKind kGaugeRodSheet{
    .name = "gauge-rod",
    .hold_point = HoldPoint::FirstCourse,
    .caution = {"limited-access-zone"},
    .table = gauge_rod_table,
    .note = &Words::rod_note,
};

}  // namespace stringcourse::sheet
