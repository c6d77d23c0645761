// Joint reinforcement: in which beds, from where to where, in how many pieces; corners; what is bought.
#include <algorithm>
#include <map>
#include <tuple>

#include "measure/digits.hpp"
#include "sheet/list_sheet.hpp"
#include "sheet/registry.hpp"
#include "steel/wires.hpp"
#include "words/language.hpp"

namespace stringcourse::sheet {
namespace {

using steel::WireEnd;
using steel::Wires;
using steel::WireStretch;

std::string length_text(const Context& context, Length length) {
  return both_forms(rounded_to(length, tape_step(context.tape())), context.tape());
}

/// A stretch, whatever its course.
using Alike = std::tuple<std::int32_t, Length, Length, WireEnd, WireEnd>;
Alike alike(const WireStretch& one) { return {one.wall, one.from, one.to, one.at_start, one.at_end}; }

/// Stretches alike with their courses, in the order in which they first come.
struct Row {
  const WireStretch* stretch = nullptr;
  std::vector<int> courses = {};
};

std::vector<Row> rows_of(const Wires& wires) {
  std::vector<Row> rows;
  std::map<Alike, std::size_t> known;
  for (const WireStretch& one : wires.stretches) {
    const auto [row, fresh] = known.try_emplace(alike(one), rows.size());
    if (fresh) rows.push_back({&one});
    rows[row->second].courses.push_back(one.course);
  }
  return rows;
}

std::string ends_text(const Context& context, const WireStretch& one) {
  const auto text = [&](WireEnd end) {
    return std::string(context.words.steel.wire_ends_are[static_cast<std::size_t>(end)]);
  };
  return one.at_start == one.at_end ? text(one.at_start) : text(one.at_start) + "; " + text(one.at_end);
}

void add_stretch(Table& table, const Context& context, const Row& row) {
  const WireStretch& one = *row.stretch;
  const words::SteelWords& words = context.words.steel;
  const bool none = one.pieces == 0;
  table.add_row({context.wall(one.wall).name, ranges_text(row.courses),
                 none ? std::string() : length_text(context, one.from) + " \u2013 " + length_text(context, one.to),
                 none ? std::string(words.wire_meet) : number_text(one.pieces),
                 none ? std::string() : length_text(context, one.last), ends_text(context, one)});
}

void add_sums(Table& table, const Context& context, const Wires& wires) {
  const words::SteelWords& words = context.words.steel;
  const auto sum = [&](std::string_view what, const std::string& count) {
    table.add_row({"", "", std::string(what), count, "", ""});
  };
  sum(words.wire_straight, number_text(wires.pieces));
  const bool bent = wires.corners_are == WireCorners::Bent;
  const Length leg = bent ? wires.leg.length * 2 : wires.leg.length;
  if (wires.corner_count > 0) {
    sum(words.wire_corners, words::fill_in(bent ? words.wire_bent : words.wire_bought,
                                           {number_text(wires.corner_count), length_text(context, leg)}));
  }
  if (wires.tee_count > 0)
    sum(words.wire_tees,
        words::fill_in(words.wire_tees_bought, {number_text(wires.tee_count), length_text(context, wires.leg.length)}));
  sum(words.wire_to_buy, number_text(wires.to_buy));
}

Table wire_table(const Context& context) {
  const words::SteelWords& words = context.words.steel;
  Table table = new_table(context.page.list.width(), words.title_wire,
                          {{context.words.side, 7},
                           {context.words.change_where, 14},
                           {words.wire_stretch, 36},
                           {words.wire_pieces, 10},
                           {words.wire_last, 15},
                           {words.wire_ends, 18}},
                          kSmallText);
  const Wires& wires = context.answer.wires;
  if (wires.stretches.empty()) return table;
  table.add_heading(words::fill_in(words.wire_course, {ranges_text({wires.courses.begin(), wires.courses.end()})}));
  for (const Row& row : rows_of(wires)) add_stretch(table, context, row);
  add_sums(table, context, wires);
  return table;
}

std::string stated_text(const Context& context, std::string_view pattern, const steel::StatedOr& value) {
  const words::BarWords& words = context.words.bars_cut;
  return words::fill_in(pattern, {length_text(context, value.length),
                                  std::string(value.stated ? words.note_stated : words.note_assumed)});
}

std::string wire_note(const Context& context) {
  const words::SteelWords& words = context.words.steel;
  const Wires& wires = context.answer.wires;
  return stated_text(context, words.note_stock, wires.stock) + " " + stated_text(context, words.note_lap, wires.lap) +
         " " + stated_text(context, words.note_leg, wires.leg) + " " + std::string(words.wire_note) + " " +
         words::cited("wire-lap", context.reader()) + ". " + words::cited("wire-stops", context.reader()) + ".";
}

}  // namespace

constinit const SheetKind kJointWireSheet{
    .name = "joint-reinforcement",
    .hold_point = HoldPoint::Grout,
    .purpose = &words::SheetWords::purpose_wire,
    .caution = {"engineer"},
    .table = wire_table,
    .made_note = wire_note,
    .under = {&kBarScheduleSheet, &kInspectionSheet},
};

}  // namespace stringcourse::sheet
