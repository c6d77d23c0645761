// The gauge rod's marks, and beside them the corner leads as they are built.
#include <algorithm>
#include <span>

#include "measure/digits.hpp"
#include "setout/gauge_rod.hpp"
#include "setout/laying_order.hpp"
#include "sheet/leads.hpp"
#include "sheet/registry.hpp"

namespace stringcourse::sheet {
namespace {

constexpr int kRodShare = 50;  // of the width: the rod
constexpr Lettering kNote{kSmallText, Weight::Regular, Anchor::Start, Ink::Black, 0};

// Marks of one event at one height: the event once, then whose it is.
std::string rod_text(const Context& context, std::span<const setout::RodMark> marks) {
  const words::SheetWords& words = context.words;
  std::string name;
  for (const setout::RodMark& mark : marks) {
    if (mark.opening < 0) continue;
    name += (name.empty() ? "" : ", ") + context.building.openings[static_cast<std::size_t>(mark.opening)].name;
  }
  switch (marks.front().event) {
    case setout::RodEvent::Floor: return words::fill_in(words.floor, {name});
    case setout::RodEvent::Sill: return words::fill_in(words.sill, {name});
    case setout::RodEvent::CourseTop: return std::string(words.rod_course);
    case setout::RodEvent::Wire: return std::string(words.wire);
    case setout::RodEvent::Head: return words::fill_in(words.head, {name});
    case setout::RodEvent::LintelCourse: return words::fill_in(words.rod_lintel, {name});
    case setout::RodEvent::BondBeam: return std::string(words.rod_bond_beam);
    case setout::RodEvent::PourStop: return std::string(words.pour_stop);
    case setout::RodEvent::Top: return std::string(words.rod_top);
  }
  return {};
}

Table gauge_rod_table(const Context& context, Micrometres height_of_text) {
  const words::SheetWords& words = context.words;
  Table table =
      new_table(left_part(context.page.list, kRodShare).width(), words.title_gauge_rod,
                {{"", 6}, {words.height, 37}, {words.course, 15, Anchor::End}, {words.rod_event, 42}}, height_of_text);
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

std::string foot_note(const Context& context) {
  return std::string(context.words.rod_note) + " " + std::string(context.words.lead_note);
}

/// The sheet without its foot.
Area room_of(const Context& context) {
  Area room = context.page.list;
  room.top -= 2'000;
  room.bottom += paragraph_height(foot_note(context), room.width(), kNote) + 2'000;
  return room;
}

/// In letters as large as one sheet allows, if it does.
Table rod_on_sheets(const Context& context) {
  Table table = gauge_rod_table(context, kText);
  if (table_height(table, table.lines.size()) > room_of(context).height()) table = gauge_rod_table(context, kSmallText);
  return table;
}

std::vector<PlannedSheet> rod_sheets(const Context& context) {
  const Table table = rod_on_sheets(context);
  const std::vector<std::size_t> ends = ends_of_sheets(table, room_of(context).height());
  const std::size_t leads = setout::leads(context.building, context.layout).size(),
                    of_leads = (leads + kLeadsOnSheet - 1) / kLeadsOnSheet;
  std::vector<PlannedSheet> sheets =
      numbered_sheets(context, context.words.title_gauge_rod, std::nullopt, std::max(ends.size(), of_leads));
  for (std::size_t index = 0; index < sheets.size(); ++index) {
    if (index < ends.size())
      sheets[index].first_line = index == 0 ? 0 : ends[index - 1], sheets[index].last_line = ends[index];
    for (std::size_t lead = index * kLeadsOnSheet; lead < std::min(leads, (index + 1) * kLeadsOnSheet); ++lead)
      sheets[index].shown.push_back(lead);
  }
  return sheets;
}

Group draw_rod_sheet(const Context& context, const PlannedSheet& sheet) {
  const Area room = room_of(context);
  Pad pad(Role::Figure, sheet.title);
  const Table table = rod_on_sheets(context);
  if (sheet.last_line > sheet.first_line)
    pad.add(draw_table(table, {room.left, room.top}, sheet.first_line, sheet.last_line));
  pad.add(draw_leads(context, sheet.shown, right_part(room, kRodShare)));
  write_paragraph(pad, {room.left, room.bottom - 2'000}, room.width(), foot_note(context), kNote);
  return std::move(pad).take();
}

}  // namespace

constinit const SheetKind kGaugeRodSheet{
    .name = "gauge-rod",
    .hold_point = HoldPoint::FirstCourse,
    .purpose = &words::SheetWords::purpose_rod,
    .caution = {"limited-access-zone"},
    .sheets = rod_sheets,
    .draw = draw_rod_sheet,
};

}  // namespace stringcourse::sheet
