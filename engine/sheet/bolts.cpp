// The plate's anchor bolts: running places from one corner of each side, with boxes to tick.
#include "catalogue/rules.hpp"
#include "measure/digits.hpp"
#include "sheet/hook_words.hpp"
#include "sheet/list_sheet.hpp"
#include "sheet/registry.hpp"

namespace stringcourse::sheet {
namespace {

using setout::PlatePiece;

std::string place_text(const Context& context, Length at) {
  return both_forms(rounded_to(at, tape_step(context.tape())), context.tape());
}

/// One bolt's place is not torn at the end of a line.
std::string unbroken(const std::string& text) {
  std::string whole;
  for (const char one : text) whole += one == ' ' ? "\u00A0" : std::string(1, one);
  return whole;
}

std::string bolts_text(const Context& context, const PlatePiece& piece) {
  const words::TopWords& words = context.words.top;
  std::vector<std::string> parts;
  for (const setout::Bolt& bolt : piece.bolts) parts.push_back(unbroken("\u2610 " + place_text(context, bolt.at)));
  std::string text = joined(parts, "  ");
  for (const setout::NoBolt& none : piece.without) {
    text += (text.empty() ? "" : "\n") +
            words::fill_in(words.none_between, {place_text(context, none.after), place_text(context, none.by)});
    if (none.next) text += words::fill_in(words.nearest_behind, {place_text(context, *none.next)});
  }
  return text;
}

Table bolts_table(const Context& context) {
  const words::SheetWords& words = context.words;
  Table table =
      new_table(context.page.list.width(), words.top.title_bolts,
                {{words.top.plate, 30}, {words.top.bolts, 6, Anchor::Middle}, {words.top.bolts_at, 64}}, kSmallText);
  int wall = -1;
  for (const PlatePiece& piece : context.answer.plates) {
    const std::string& name = context.wall(piece.wall).name;
    if (piece.wall != wall) table.add_heading(name + ": " + marks_from_text(context.building, piece.wall, words));
    wall = piece.wall;
    table.add_row(
        {words::fill_in(words.top.plate_from, {name, place_text(context, piece.from), place_text(context, piece.to)}),
         number_text(piece.bolts.size()), bolts_text(context, piece)});
  }
  return table;
}

std::string or_none(const Context& context, const std::string& text) {
  return text.empty() ? std::string(context.words.none) : text;
}

/// What was asked, in the drawings' own figures; what a code says beside that.
std::string bolts_note(const Context& context) {
  const words::TopWords& words = context.words.top;
  if (!context.building.top) return {};
  const ResolvedTop& top = *context.building.top;
  const auto length = [&](Length of) { return height_text(context, of); };
  std::vector<std::string> parts{words::fill_in(
      words.bolts_asked, {or_none(context, top.plate), or_none(context, top.bolts.size), length(top.bolts.spacing),
                          length(top.bolts.end_least), length(top.bolts.end_most)})};
  if (top.bolts.clear_of_bars > Length())
    parts.push_back(words::fill_in(words.bolts_asked_bars, {length(top.bolts.clear_of_bars)}));
  for (const ResolvedTrusses& trusses : top.trusses)
    parts.push_back(
        words::fill_in(words.bolts_asked_trusses, {context.wall(trusses.wall).name, length(trusses.clear)}));
  if (top.bolts.grout_assumed) parts.push_back(words::fill_in(words.bolts_grout, {length(top.bolts.grout_round)}));
  parts.emplace_back(words.bolts_note);
  for (const std::string_view id : {"sill-bolts", "roof-bolts"})
    parts.push_back(words::cited(id, context.reader()) + ".");
  return joined(parts, " ");
}

}  // namespace

constinit const SheetKind kBoltsSheet{
    .name = "bolts",
    .hold_point = HoldPoint::Top,
    .purpose = &words::SheetWords::purpose_bolts,
    .caution = {"engineer"},
    .table = bolts_table,
    .made_note = bolts_note,
    .under = {&kTopCardSheet, &kInspectionSheet},
};

}  // namespace stringcourse::sheet
