// Dowels before the pour, by wall, each wall under what its numbers are measured from: running distance, how far in
// from which face, the cells of courses 1 and 2 and whose units they are in, how far it may be out.
#include "measure/digits.hpp"
#include "sheet/hook_words.hpp"
#include "sheet/list_sheet.hpp"
#include "sheet/poured.hpp"
#include "sheet/registry.hpp"

namespace stringcourse::sheet {
namespace {

std::string cell_text(const Context& context, const steel::Dowel& dowel, const std::optional<steel::InCell>& cell) {
  const words::PourWords& words = context.words.pour;
  if (!cell) return std::string(words.no_cell);
  const std::string unit = number_text(cell->unit), number = number_text(cell->cell);
  return cell->wall == dowel.wall ? words::fill_in(words.cell_own, {unit, number})
                                  : words::fill_in(words.cell_other, {context.wall(cell->wall).name, unit, number});
}

/// Rounded inwards; nothing less than none.
std::string room_text(const Context& context, Length room) {
  return tape_text(std::max(Length(), steel::usable(room, context.tape())), context.tape());
}

std::string heading_of(const Context& context, int wall) {
  const words::PourWords& words = context.words.pour;
  return words::fill_in(words.list_heading,
                        {context.wall(wall).name, hook_text(context.building, wall, context.words),
                         face_text(context.building, wall, context.words),
                         std::string(context.wall(wall).interior ? words.from_either : words.from_outer)});
}

void add_dowel(Table& table, const Context& context, const steel::Dowel& dowel) {
  const Tape tape = context.tape();
  const std::string none(context.words.pour.no_cell);
  const auto room = [&](Length steel::DowelRoom::* way) {
    return dowel.room ? room_text(context, (*dowel.room).*way) : none;
  };
  const std::string across =
      dowel.room ? room_text(context, std::min(dowel.room->to_outer, dowel.room->to_inner)) : none;
  table.add_row({"", context.wall(dowel.wall).name + " " + number_text(dowel.number),
                 both_forms(rounded_to(dowel.along, tape_step(tape)), tape),
                 tape_text(rounded_to(dowel.off_face, tape_step(tape)), tape), cell_text(context, dowel, dowel.first),
                 cell_text(context, dowel, dowel.second), room(&steel::DowelRoom::to_start),
                 room(&steel::DowelRoom::to_end), across});
}

Table dowel_table_in(const Context& context, Micrometres height_of_text) {
  const words::PourWords& words = context.words.pour;
  // Widths: a number such as 31'-7 13/16" = 379 13/16" on one line of a Letter sheet, and one such as 1 13/16".
  Table table = new_table(context.page.drawing.width(), context.words.title_dowels,
                          {{"", 3},
                           {context.words.dowel, 8},
                           {words.centre_at, 27},
                           {words.in_from_line, 10},
                           {words::fill_in(words.cell_of_course, {"1"}), 11},
                           {words::fill_in(words.cell_of_course, {"2"}), 11},
                           {words.room_to_start, 10},
                           {words.room_to_end, 10},
                           {words.room_across, 10}},
                          height_of_text);
  table.pencil_boxes = table.whole_groups = true;
  add_poured_heading(table, context);
  int wall = -1;
  for (const steel::Dowel& dowel : context.answer.dowels) {
    if (dowel.wall != wall) table.add_heading(heading_of(context, dowel.wall));
    wall = dowel.wall;
    add_dowel(table, context, dowel);
  }
  add_poured_since(table, context);
  return table;
}

std::string dowel_note(const Context& context);

/// How far dowels stand up where the job names a lap rule; "" where it names none.
std::string dowels_by_rule(const Context& context) {
  const words::BarWords& words = context.words.bars_cut;
  std::vector<Length> up;
  for (const steel::BarMark& mark : context.answer.bar_pieces.marks) {
    if (mark.use == steel::BarUse::Dowel) up.push_back(mark.length);
  }
  if (up.empty()) return {};
  const auto [least, most] = std::ranges::minmax(up);
  if (least == most) return " " + words::fill_in(words.dowels_up, {tape_text(least, context.tape())});
  return " " + words::fill_in(words.dowels_up_to, {tape_text(least, context.tape()), tape_text(most, context.tape())});
}

/// In small letters where that saves a sheet.
Table dowel_table(const Context& context) {
  Table large = dowel_table_in(context, kText), small = dowel_table_in(context, kSmallText);
  if (large.lines.empty()) return large;
  const std::string note = dowel_note(context);
  const auto sheets = [&](const Table& table) { return sheets_of_list(context, {table, note}).size(); };
  return sheets(small) < sheets(large) ? small : large;
}

/// What the numbers go to, and where the form stands.
std::string dowel_note(const Context& context) {
  const words::PourWords& words = context.words.pour;
  const Tape tape = context.tape();
  std::string note;
  if (context.building.bars)
    note = words::fill_in(words.list_note, {tape_text(context.building.bars->clearance, tape)});
  if (context.answer.job.steel.dowel_lap)
    note += " " + words::fill_in(words.lap_note, {tape_text(*context.answer.job.steel.dowel_lap, tape)});
  else note += dowels_by_rule(context);
  const SettingOut* asked = context.setting_out();
  const std::optional<Length> form = asked == nullptr ? std::nullopt : asked->footing_outside;
  if (!form) return note + " " + std::string(words.form_unknown);
  return note + " " +
         (*form == Length() ? std::string(words.form_here) : words::fill_in(words.form_at, {tape_text(*form, tape)}));
}

}  // namespace

constinit const SheetKind kDowelsSheet{
    .name = "dowels",
    .hold_point = HoldPoint::Pour,
    .purpose = &words::SheetWords::purpose_dowels,
    .caution = {{}, &words::SheetWords::caution_dowels},
    .table = dowel_table,
    .made_note = dowel_note,
};

}  // namespace stringcourse::sheet
