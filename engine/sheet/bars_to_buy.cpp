// Bars to buy in stock lengths, size by size, and which pieces are cut from each: a list that a helper with a saw
// follows.
#include "measure/digits.hpp"
#include "sheet/list_sheet.hpp"
#include "sheet/registry.hpp"

namespace stringcourse::sheet {
namespace {

/// "2 of 6'-9 3/16\" (mark 2), 1 of 3'-0\" (mark 5)"
std::string cuts_text(const Context& context, const BarsFromStock& size, const supply::CutPattern& pattern) {
  std::vector<std::string> cuts;
  for (std::size_t at = 0; at < pattern.cuts.size(); ++at) {
    if (pattern.cuts[at] == 0) continue;
    const std::int32_t mark = size.marks[at];
    const Length length = context.answer.bar_pieces.marks[static_cast<std::size_t>(mark)].length;
    cuts.push_back(
        words::fill_in(context.words.bars_cut.cut_of,
                       {number_text(pattern.cuts[at]), tape_text(length, context.tape()), number_text(mark + 1)}));
  }
  return joined(cuts, ", ");
}

void add_size(Table& table, const Context& context, const BarsFromStock& size) {
  const words::BarWords& words = context.words.bars_cut;
  const std::string fewest =
      size.plan.proven() ? std::string(words.fewest) : words::fill_in(words.at_least, {number_text(size.plan.least)});
  const std::string stock = both_forms(context.answer.bar_pieces.stock.length, context.tape());
  table.add_heading(words::fill_in(words.to_buy, {size.size, number_text(size.plan.bars), stock, fewest}));
  for (const supply::CutPattern& pattern : size.plan.patterns) {
    table.add_row(
        {"", number_text(pattern.times), cuts_text(context, size, pattern), both_forms(pattern.left, context.tape())});
  }
}

Table buy_table_in(const Context& context, Micrometres height_of_text) {
  const words::BarWords& words = context.words.bars_cut;
  Table table = new_table(context.page.list.width(), words.title_to_buy,
                          {{"", 3}, {words.bars, 8}, {words.cut_each, 71}, {words.left_over, 18}}, height_of_text);
  table.pencil_boxes = true;
  for (const BarsFromStock& size : context.answer.bars_from_stock) add_size(table, context, size);
  return table;
}

Table buy_table(const Context& context) { return buy_table_in(context, kText); }

Table small_buy_table(const Context& context) { return buy_table_in(context, kSmallText); }

std::string buy_note(const Context& context) {
  const words::BarWords& words = context.words.bars_cut;
  const steel::StatedOr& kerf = context.answer.bar_pieces.kerf;
  return words::fill_in(words.note_kerf, {both_forms(kerf.length, context.tape()),
                                          std::string(kerf.stated ? words.note_stated : words.note_assumed)});
}

}  // namespace

constinit const SheetKind kBarsToBuySheet{
    .name = "bars-to-buy",
    .purpose = &words::SheetWords::purpose_bars_to_buy,
    .caution = {"engineer"},
    .table = buy_table,
    .small_table = small_buy_table,
    .made_note = buy_note,
    .under = {&kSawListSheet, &kFindingsSheet, &kReckoningSheet},
};

}  // namespace stringcourse::sheet
