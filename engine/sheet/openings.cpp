// The opening schedule.
#include "sheet/hook_words.hpp"
#include "sheet/lintel_words.hpp"
#include "sheet/registry.hpp"

namespace stringcourse::sheet {
namespace {

std::string size_text(const Context& context, Length width, Length height) {
  return words::fill_in(context.words.opening_size, {height_text(context, width), height_text(context, height)});
}

std::string use_text(const words::SheetWords& words, OpeningUse use) {
  switch (use) {
    case OpeningUse::Door: return std::string(words.use_door);
    case OpeningUse::Overhead: return std::string(words.use_overhead);
    case OpeningUse::Window: return std::string(words.use_window);
    case OpeningUse::Plain: return std::string(words.use_plain);
  }
  return {};
}

// Filler to be packed where the hole is larger than what was asked.
std::string packed_text(const Context& context, const ResolvedOpening& opening) {
  std::vector<std::string> parts;
  const auto add = [&](std::string_view words, Length packing) {
    if (packing > Length()) parts.push_back(words::fill_in(words, {height_text(context, packing)}));
  };
  add(context.words.packed_each_side, opening.packing_each_side);
  add(context.words.packed_head, opening.packing_head);
  return parts.empty() ? std::string() : "\n" + std::string(context.words.packed) + " " + joined(parts, ", ");
}

void add_opening(Table& table, const Context& context, const std::vector<supply::LintelAsLaid>& lintels,
                 std::size_t index) {
  const words::SheetWords& words = context.words;
  const Tape tape = context.tape();
  const ResolvedOpening& opening = context.building.openings[index];
  const Wall& wall = context.wall(opening.wall);
  const bool floor = opening.first_course <= 1 && opening.use != OpeningUse::Window;
  const std::string size = words::fill_in(words.wide, {both_forms(opening.width(), tape)}) + "\n" +
                           words::fill_in(words.high, {both_forms(opening.height(), tape)});
  const std::string jambs = words::fill_in(words.from_named, {hook_text(context.building, opening.wall, words)}) +
                            "\n" + both_forms(opening.from.distance_from_start(), tape) + "\n" +
                            both_forms(opening.to.distance_from_start(), tape);
  const std::string heights = words::fill_in(floor ? words.floor : words.sill, {both_forms(opening.underside, tape)}) +
                              "\n" + words::fill_in(words.head, {both_forms(opening.soffit, tape)});
  const std::string asked =
      opening.asked_width > Length() ? size_text(context, opening.asked_width, opening.asked_height) : "";
  const supply::LintelAsLaid* placed = lintel_over(lintels, index);
  std::string lintel = placed != nullptr ? lintel_text(context, *placed) : std::string(words.none);
  if (!opening.note.empty()) lintel += "\n" + opening.note;
  table.add_row({opening.name + "\n" + use_text(words, opening.use) + ", " + wall.name, size, jambs, heights,
                 asked + packed_text(context, opening), lintel});
}

Table opening_schedule_in(const Context& context, Micrometres height_of_text) {
  const words::SheetWords& words = context.words;
  Table table = new_table(context.page.drawing.width(), words.title_openings,
                          {{words.opening, 10},
                           {words.masonry_opening, 17},
                           {words.from_corner, 17},
                           {words.underside, 19},
                           {words.asked, 13},
                           {words.lintel, 24}},
                          height_of_text);
  const auto& lintels = context.answer.lintels;
  for (std::size_t index = 0; index < context.building.openings.size(); ++index)
    add_opening(table, context, lintels, index);
  return table;
}

Table opening_schedule(const Context& context) { return opening_schedule_in(context, kText); }
Table small_schedule(const Context& context) { return opening_schedule_in(context, kSmallText); }

}  // namespace

constinit const SheetKind kOpeningsSheet{
    .name = "openings",
    .hold_point = HoldPoint::Lintels,
    .purpose = &words::SheetWords::purpose_openings,
    .caution = {"shores", &words::SheetWords::caution_lintel},
    .table = opening_schedule,
    .small_table = small_schedule,
    .note = &words::SheetWords::schedule_note,
};

}  // namespace stringcourse::sheet
