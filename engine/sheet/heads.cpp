// Heads off a course line: what can be done with each, and what that takes.
#include "supply/heads.hpp"
#include "measure/digits.hpp"
#include "sheet/list_sheet.hpp"
#include "sheet/registry.hpp"

namespace stringcourse::sheet {
namespace {

std::string head_text(const Context& context, const supply::OffCourse& head) {
  const ResolvedOpening& opening = opening_of(context.building, head.opening);
  return words::fill_in(context.words.top.head_asked,
                        {opening.name, height_text(context, head.asked), height_text(context, opening.packing_head),
                         number_text(opening.last_course)});
}

Table heads_table(const Context& context) {
  const words::TopWords& words = context.words.top;
  Table table = new_table(
      context.page.list.width(), words.title_heads,
      {{"", 3}, {words.head_ways, 67}, {words.head_units, 15, Anchor::Middle}, {words.head_cuts, 15, Anchor::Middle}},
      kSmallText);
  table.pencil_boxes = true;
  for (const supply::OffCourse& head : context.answer.heads) {
    table.add_heading(head_text(context, head));
    for (const supply::HeadChoice& choice : head.choices)
      table.add_row(
          {"", words::fill_in(words.head_says[static_cast<std::size_t>(choice.way)], {height_text(context, choice.by)}),
           number_text(choice.units), number_text(choice.cuts)});
  }
  return table;
}

std::string heads_note(const Context& context) { return std::string(context.words.top.heads_note); }

}  // namespace

constinit const SheetKind kHeadsSheet{
    .name = "heads",
    .hold_point = HoldPoint::Lintels,
    .purpose = &words::SheetWords::purpose_openings,
    .caution = {"shores", &words::SheetWords::caution_lintel},
    .table = heads_table,
    .made_note = heads_note,
    .under = {&kOpeningsSheet, &kLintelBarsSheet},
};

}  // namespace stringcourse::sheet
