// What goes over each opening: head, seats, shores, bond beams.
#include "supply/shores.hpp"
#include "measure/digits.hpp"
#include "sheet/list_sheet.hpp"
#include "sheet/registry.hpp"

namespace stringcourse::sheet {
namespace {

using supply::Bridged;

std::string course_text(std::string_view words, std::int32_t course) {
  return words::fill_in(words, {number_text(course)});
}

std::string heads_text(const Context& context, const Bridged& over) {
  const words::TopWords& words = context.words.top;
  const ResolvedOpening& opening = opening_of(context.building, over.opening);
  const bool floor = opening.first_course <= 1 && opening.use != OpeningUse::Window;
  return words::fill_in(floor ? words.over_floor : words.over_sill, {both_forms(over.over_foot, context.tape())}) +
         "\n" + words::fill_in(words.over_bearing, {both_forms(over.over_bearing, context.tape())});
}

std::string seat_text(const Context& context, const Wall& wall, const supply::Seat& seat, const std::string& toward) {
  const words::TopWords& words = context.words.top;
  if (seat.units.empty()) return words::fill_in(words.no_seat, {toward});
  return words::fill_in(
      words.seat, {wall.name, number_text(seat.course), ranges_text({seat.units.begin(), seat.units.end()}), toward});
}

std::string seats_text(const Context& context, const Bridged& over) {
  if (over.lintel < 0) return std::string(context.words.top.no_lintel);
  const Wall& wall = context.wall(opening_of(context.building, over.opening).wall);
  return seat_text(context, wall, over.start, wall.start_name) + "\n" +
         seat_text(context, wall, over.end, wall.end_name);
}

std::string held_text(const Context& context, const Bridged& over) {
  const words::TopWords& words = context.words.top;
  if (over.lintel < 0) return {};
  if (!over.shored) return std::string(words.lifted_in);
  if (!over.shores) return course_text(words.shores_unstated, over.first_course);
  const Length spacing = *opening_of(context.building, over.opening).lintel->shore_spacing;
  return words::fill_in(words.shores_stated,
                        {number_text(over.first_course), number_text(*over.shores), height_text(context, spacing)});
}

std::string beams_text(const Context& context, const Bridged& over) {
  const words::TopWords& words = context.words.top;
  std::vector<std::string> parts;
  for (const std::int32_t course : over.beams_cut) parts.push_back(course_text(words.beam_cut, course));
  for (const std::int32_t course : over.beams_in) parts.push_back(course_text(words.beam_in, course));
  if (over.beam_over > 0) parts.push_back(course_text(words.beam_over, over.beam_over));
  return parts.empty() ? std::string(context.words.none) : joined(parts, "\n");
}

Table shores_table(const Context& context) {
  const words::SheetWords& words = context.words;
  Table table = new_table(context.page.list.width(), words.top.title_shores,
                          {{"", 3},
                           {words.opening, 9},
                           {words.top.head_over, 31},
                           {words.top.bears_on, 16},
                           {words.top.held, 29},
                           {words.top.beams_there, 12}},
                          kSmallText);
  table.pencil_boxes = true;
  for (const Bridged& over : context.answer.bridged)
    table.add_row({"", opening_of(context.building, over.opening).name, heads_text(context, over),
                   seats_text(context, over), held_text(context, over), beams_text(context, over)});
  return table;
}

std::string shores_note(const Context& context) { return std::string(context.words.top.shores_note); }

}  // namespace

constinit const SheetKind kShoresSheet{
    .name = "shores",
    .hold_point = HoldPoint::Lintels,
    .purpose = &words::SheetWords::purpose_shores,
    .caution = {"shores", &words::SheetWords::caution_lintel},
    .table = shores_table,
    .made_note = shores_note,
    .under = {&kOpeningsSheet},
};

}  // namespace stringcourse::sheet
