// What is sawn, where it goes, and which cuts share a unit.
#include <algorithm>

#include "bond/layout_parts.hpp"
#include "measure/digits.hpp"
#include "setout/saw_list.hpp"
#include "sheet/registry.hpp"

namespace stringcourse::sheet {
namespace {

// Places of one saw group go in rows of at most so many, so that a table's line list stays small beside its text.
constexpr std::size_t kPlacesInARow = 400;

void add_saw_group(Table& table, const Context& context, const setout::SawGroup& group, std::size_t number) {
  const words::SheetWords& words = context.words;
  for (std::size_t first = 0; first < group.places.size(); first += kPlacesInARow) {
    std::string places;
    const std::size_t last = std::min(group.places.size(), first + kPlacesInARow);
    for (std::size_t index = first; index < last; ++index) {
      const setout::SawPlace& place = group.places[index];
      if (!places.empty()) places += ", ";
      places += bond::piece_name(context.building, context.layout.runs[static_cast<std::size_t>(place.run)],
                                 context.layout.pieces[place.piece]);
      places += '(';
      places += place.cut == CutEnd::End ? words.factory_start : words.factory_end;
      places += ')';
    }
    if (first > 0) {
      table.add_row({"", "", "", "", "", "", places});
      continue;
    }
    const std::string from =
        std::string(words.kinds[static_cast<std::size_t>(group.from)]) + " " + saw_text(context, group.from_length);
    table.add_row({"", cut_mark(static_cast<std::size_t>(number - 1)), both_forms(group.length, context.tape()),
                   number_text(static_cast<long long>(group.places.size())), from, saw_text(context, group.offcut),
                   places});
  }
}

Table saw_table(const Context& context) {
  const words::SheetWords& words = context.words;
  Table table = new_table(context.page.drawing.width(), words.title_saw,
                          {{"", 3},
                           {words.cut_key, 6},
                           {words.piece_length, 18},
                           {words.pieces, 8, Anchor::End},
                           {words.cut_from, 16},
                           {words.offcut, 10},
                           {words.places, 39}},
                          kText);
  table.pencil_boxes = true;
  std::size_t number = 0;
  for (const setout::SawGroup& group : context.answer.saw_list.groups) {
    add_saw_group(table, context, group, ++number);
  }
  return table;
}

std::string saw_note(const Context& context) {
  const words::SheetWords& words = context.words;
  const setout::SawList& list = context.answer.saw_list;
  std::string pairs;
  for (const setout::SawPair& pair : list.pairs) {
    const auto& first = list.groups[static_cast<std::size_t>(pair.first)];
    const auto& second = list.groups[static_cast<std::size_t>(pair.second)];
    if (!pairs.empty()) pairs += "; ";
    pairs += words::fill_in(words.pairs_with, {tape_text(first.length, context.tape()), number_text(pair.units),
                                               tape_text(second.length, context.tape())});
  }
  if (!pairs.empty()) pairs += '.';
  return words::fill_in(words.saw_rule, {tape_text(setout::saw_kerf(context.tape()), context.tape()), pairs});
}

}  // namespace

constinit const SheetKind kSawListSheet{
    .name = "saw-list",
    .purpose = &words::SheetWords::purpose_saw,
    .caution = {"saw-dust", &words::SheetWords::caution_saw},
    .table = saw_table,
    .made_note = saw_note,
};

}  // namespace stringcourse::sheet
