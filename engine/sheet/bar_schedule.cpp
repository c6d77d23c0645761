// Bars as they are cut: mark by mark with shape and length, where each goes, all of each size, and what the lap rules
// come to.
#include <algorithm>
#include <array>
#include <map>

#include "catalogue/rules.hpp"
#include "measure/digits.hpp"
#include "sheet/list_sheet.hpp"
#include "sheet/registry.hpp"
#include "steel/bar_pieces.hpp"
#include "words/language.hpp"

namespace stringcourse::sheet {
namespace {

using steel::BarMark;
using steel::BarPiece;
using steel::BarUse;

std::string length_of(const Context& context, Length length) { return both_forms(length, context.tape()); }

std::string courses_text(const Context& context, int first, int last, const std::string& what) {
  const words::BarWords& words = context.words.bars_cut;
  return first == last ? words::fill_in(words.in_course, {number_text(first), what})
                       : words::fill_in(words.in_courses, {number_text(first), number_text(last), what});
}

/// Pieces of one wall: by their dowels, else by their places along it; "" of none.
std::string in_wall(const Context& context, int wall, const std::vector<const BarPiece*>& pieces) {
  std::vector<int> dowels;
  std::vector<std::string> places, parts;
  for (const BarPiece* piece : pieces) {
    if (piece->wall != wall) continue;
    const PlacedBar& bar = context.layout.bars[static_cast<std::size_t>(piece->bar)];
    if (const int number = dowel_number(context.answer, bar); number > 0) dowels.push_back(number);
    else places.push_back(both_forms(rounded_to(bar.centre, tape_step(context.tape())), context.tape()));
  }
  const std::string& name = context.wall(wall).name;
  if (!dowels.empty()) parts.push_back(name + " " + ranges_text(dowels));
  if (!places.empty()) parts.push_back(words::fill_in(context.words.bars_cut.at_places, {name, joined(places, ", ")}));
  return joined(parts, ", ");
}

/// The walls of pieces alike in their courses.
std::string where_upright(const Context& context, const std::vector<const BarPiece*>& pieces) {
  std::map<std::pair<int, int>, std::vector<const BarPiece*>> by_courses;
  for (const BarPiece* piece : pieces) by_courses[{piece->first_course, piece->last_course}].push_back(piece);
  std::vector<std::string> parts;
  for (const auto& [courses, there] : by_courses) {
    std::vector<std::string> walls;
    for (int wall = 0; wall < static_cast<int>(context.building.walls.size()); ++wall) {
      if (std::string one = in_wall(context, wall, there); !one.empty()) walls.push_back(std::move(one));
    }
    parts.push_back(courses_text(context, courses.first, courses.second, joined(walls, ", ")));
  }
  return joined(parts, "; ");
}

std::string name_of(const Context& context, const BarPiece& piece) {
  if (piece.use == BarUse::Corner) return corner_name(context, piece.corner);
  if (piece.use == BarUse::Lintel) return context.building.openings[static_cast<std::size_t>(piece.opening)].name;
  return context.wall(piece.wall).name;
}

/// Courses, and in each the walls, corners or openings, each once.
std::string where_level(const Context& context, const std::vector<const BarPiece*>& pieces) {
  const words::BarWords& words = context.words.bars_cut;
  std::map<int, std::vector<std::string>> by_course;
  for (const BarPiece* piece : pieces) {
    std::vector<std::string>& names = by_course[piece->first_course];
    if (std::string name = name_of(context, *piece); !std::ranges::contains(names, name))
      names.push_back(std::move(name));
  }
  std::vector<std::string> parts;
  for (const auto& [course, names] : by_course) {
    std::string what = joined(names, ", ");
    if (pieces.front()->use == BarUse::Corner) what = words::fill_in(words.at_corners, {what});
    if (pieces.front()->use == BarUse::Lintel) what = words::fill_in(words.over_openings, {what});
    parts.push_back(courses_text(context, course, course, what));
  }
  return joined(parts, "; ");
}

std::string where_text(const Context& context, std::size_t mark) {
  std::vector<const BarPiece*> pieces;
  for (const BarPiece& piece : context.answer.bar_pieces.pieces) {
    if (piece.mark == static_cast<std::int32_t>(mark)) pieces.push_back(&piece);
  }
  const BarUse use = pieces.front()->use;
  return use == BarUse::Dowel || use == BarUse::Upright ? where_upright(context, pieces) : where_level(context, pieces);
}

std::string shape_text(const Context& context, const BarMark& mark) {
  const words::BarWords& words = context.words.bars_cut;
  if (mark.use != BarUse::Corner) return std::string(words.straight);
  return words::fill_in(words.bent, {length_of(context, mark.length.half_down())});
}

void add_marks(Table& table, const Context& context) {
  const auto& marks = context.answer.bar_pieces.marks;
  for (std::size_t k = 0; k < marks.size(); ++k) {
    const BarMark& mark = marks[k];
    if (k == 0 || marks[k - 1].use != mark.use)
      table.add_heading(std::string(context.words.bars_cut.uses[static_cast<std::size_t>(mark.use)]));
    table.add_row({"", number_text(k + 1), mark.size, number_text(mark.count), shape_text(context, mark),
                   length_of(context, mark.length), where_text(context, k)});
  }
}

/// To the nearest pound or kilogram.
std::string mass_text(const Context& context, std::int64_t grams) {
  const words::BarWords& words = context.words.bars_cut;
  constexpr std::int64_t kPound = 45'359'237;  // hundred thousandths of a gram
  if (context.tape() == Tape::Inches)
    return words::fill_in(words.pounds, {number_text((grams * 100'000 + kPound / 2) / kPound)});
  return words::fill_in(words.kilograms, {number_text((grams + 500) / 1'000)});
}

void add_totals(Table& table, const Context& context) {
  const auto& totals = context.answer.bar_pieces.totals;
  if (!totals.empty()) table.add_heading(std::string(context.words.bars_cut.total));
  for (const steel::BarTotal& total : totals) {
    table.add_row({"", "", total.size, number_text(total.count), "", length_of(context, total.length),
                   mass_text(context, total.grams)});
  }
}

/// Whole psi, or tenths of a megapascal.
std::string stress_text(const Context& context, Stress stress) {
  const words::BarWords& words = context.words.bars_cut;
  const auto nearest = [&](std::int64_t part) { return (stress.parts + part / 2) / part; };
  if (context.tape() == Tape::Inches) return words::fill_in(words.psi, {number_text(nearest(Stress::kPerPsi))});
  const std::int64_t tenths = nearest(Stress::kPerMegapascal / 10);
  return words::fill_in(words.megapascals, {number_text(tenths / 10) + "." + number_text(tenths % 10)});
}

std::string rule_text(const Context& context, const steel::LapBy& by) {
  const std::string_view name = context.words.bars_cut.rules[static_cast<std::size_t>(by.rule)];
  return words::fill_in(name, {by.rule == LapRule::Ibc && by.steel ? stress_text(context, *by.steel) : ""});
}

/// The rule that the job names, with all that it needs.
bool has_rule(const Context& context) {
  const std::optional<Lap>& lap = context.answer.job.steel.lap;
  return lap && steel::lap_lacks(steel::lap_by(*lap)).empty();
}

std::string heading_of(const Context& context, const steel::LapTable& laps) {
  const words::BarWords& words = context.words.bars_cut;
  const std::string clear = length_of(context, rounded_to(laps.clear, tape_step(context.tape())));
  return laps.wall < 0 ? words::fill_in(words.laps_beam, {laps.size, clear})
                       : words::fill_in(words.laps_upright, {laps.size, context.wall(laps.wall).name, clear});
}

/// What each rule comes to, until one is picked.
void add_laps(Table& table, const Context& context) {
  if (has_rule(context)) return;
  for (const steel::LapTable& laps : context.answer.bar_pieces.laps) {
    table.add_heading(heading_of(context, laps));
    for (const steel::LapChoice& choice : laps.choices) {
      table.add_row({"", "", laps.size, "", "", length_of(context, choice.length), rule_text(context, choice.by)});
    }
  }
}

Table bar_table_in(const Context& context, Micrometres height_of_text) {
  const words::BarWords& words = context.words.bars_cut;
  Table table = new_table(context.page.list.width(), words.title,
                          {{"", 3},
                           {words.mark, 6},
                           {words.size, 6},
                           {words.count, 7},
                           {words.shape, 17},
                           {words.length, 19},
                           {words.where, 42}},
                          height_of_text);
  table.pencil_boxes = table.whole_groups = true;
  add_marks(table, context);
  add_totals(table, context);
  add_laps(table, context);
  return table;
}

std::string stated_text(const Context& context, std::string_view pattern, const steel::StatedOr& value) {
  const words::BarWords& words = context.words.bars_cut;
  return words::fill_in(
      pattern, {length_of(context, value.length), std::string(value.stated ? words.note_stated : words.note_assumed)});
}

bool is_equation(LapRule rule) {
  return rule == LapRule::Tms402To2008 || rule == LapRule::Tms402From2011 || rule == LapRule::Florida2017;
}

/// What the equations are filled with: of the rule picked, or what is assumed for those to choose from.
std::string strengths_text(const Context& context) {
  const auto& laps = context.answer.bar_pieces.laps;
  const words::BarWords& words = context.words.bars_cut;
  if (laps.empty()) return {};
  const std::optional<Lap>& lap = context.answer.job.steel.lap;
  const bool picked = has_rule(context), by_equation = picked && is_equation(lap->rule);
  if (picked && !by_equation) return {};
  const steel::LapBy& by = laps.front().choices.front().by;
  const std::string text =
      words::fill_in(words.at_stress, {stress_text(context, *by.masonry), stress_text(context, *by.steel)});
  return words::fill_in(by_equation ? words.stated : words.assumed, {text}) + " ";
}

std::string lap_rule_note(const Context& context) {
  const std::optional<Lap>& lap = context.answer.job.steel.lap;
  return lap ? words::cited(steel::lap_rule_id(lap->rule), context.reader()) + "." : std::string();
}

std::string bar_note(const Context& context) {
  const words::BarWords& words = context.words.bars_cut;
  const steel::BarPieces& bars = context.answer.bar_pieces;
  const auto has = [&](BarUse use) { return std::ranges::contains(bars.marks, use, &BarMark::use); };
  std::string text(words.note);
  text += " ";
  for (const steel::Unsaid& one : bars.unsaid) text += context.told(one.says) + " ";
  if (has(BarUse::Upright) || has(BarUse::Beam)) text += stated_text(context, words.note_stock, bars.stock) + " ";
  if (!bars.totals.empty()) text += stated_text(context, words.note_cover, bars.end_cover) + " ";
  if (has(BarUse::Dowel)) text += std::string(words.note_dowels) + " ";
  if (has(BarUse::Upright)) text += std::string(words.note_uprights) + " ";
  if (has(BarUse::Beam)) text += std::string(words.note_beams) + " ";
  return text + strengths_text(context) + lap_rule_note(context);
}

/// In small letters where that saves a sheet.
Table bar_table(const Context& context) {
  Table large = bar_table_in(context, kText), small = bar_table_in(context, kSmallText);
  if (large.lines.empty()) return large;
  const std::string note = bar_note(context);
  const auto sheets = [&](const Table& table) { return sheets_of_list(context, {table, note}).size(); };
  return sheets(small) < sheets(large) ? small : large;
}

Table small_bar_table(const Context& context) { return bar_table_in(context, kSmallText); }

}  // namespace

constinit const SheetKind kBarScheduleSheet{
    .name = "bars",
    .hold_point = HoldPoint::Grout,
    .purpose = &words::SheetWords::purpose_bars,
    .caution = {"engineer"},
    .table = bar_table,
    .small_table = small_bar_table,
    .made_note = bar_note,
    .under = {&kPourCardSheet, &kInspectionSheet},
};

}  // namespace stringcourse::sheet
