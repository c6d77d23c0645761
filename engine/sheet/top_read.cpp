// The top of the walls as read: point by point what is done so that the plate bears level.
#include "measure/digits.hpp"
#include "sheet/list_sheet.hpp"
#include "sheet/registry.hpp"
#include "words/language.hpp"

namespace stringcourse::sheet {
namespace {

using ground::TopAsFound;
using ground::TopPoint;

const TopAsFound* top_of(const Context& context) {
  const auto& levels = context.answer.found.levels;
  return levels && levels->top ? &*levels->top : nullptr;
}

std::string to_tape(const Context& context, Length length) {
  return tape_text(rounded_to(magnitude(length), tape_step(context.tape())), context.tape());
}

/// "1/8\" over", "right".
std::string off_text(const Context& context, Length off) {
  const words::SteelWords& words = context.words.steel;
  if (rounded_to(off, tape_step(context.tape())) == Length()) return std::string(words.top_right);
  return words::fill_in(off < Length() ? words.top_under : words.top_over, {to_tape(context, off)});
}

Table top_read_table(const Context& context) {
  const words::SteelWords& words = context.words.steel;
  Table table = new_table(context.page.list.width(), words.title_top_read,
                          {{"", 3},
                           {context.words.side, 9},
                           {words.read_point, 24},
                           {words.read_off, 18},
                           {words.read_work, 28},
                           {words.read_verdict, 18}},
                          kSmallText);
  table.pencil_boxes = true;
  const TopAsFound* top = top_of(context);
  if (top == nullptr) return table;
  table.add_heading(words::fill_in(words.top_bearing, {off_text(context, top->bearing), to_tape(context, top->doubt)}));
  for (const TopPoint& point : top->points) {
    const ground::Station& station = context.answer.found.levels->stations[static_cast<std::size_t>(point.station)];
    table.add_row(
        {"", context.wall(station.place->wall).name,
         station.name + ", " + both_forms(rounded_to(station.place->along, tape_step(context.tape())), context.tape()),
         off_text(context, point.off),
         words::fill_in(words.works[static_cast<std::size_t>(point.work)], {to_tape(context, point.by)}),
         std::string(words.top_verdicts[static_cast<std::size_t>(point.verdict)])});
  }
  return table;
}

std::string top_read_note(const Context& context) {
  return std::string(context.words.steel.top_read_note) + " " + words::cited("bed-level", context.reader()) + ".";
}

}  // namespace

constinit const SheetKind kTopReadSheet{
    .name = "top-read",
    .hold_point = HoldPoint::Top,
    .purpose = &words::SheetWords::purpose_top_read,
    .caution = {"engineer"},
    .table = top_read_table,
    .made_note = top_read_note,
    .under = {&kTopCardSheet, &kBoltsSheet},
};

}  // namespace stringcourse::sheet
