// What is read on the concrete before the first course, to be written in by hand: as long as nothing was read.
#include "measure/digits.hpp"
#include "setout/boards.hpp"
#include "sheet/registry.hpp"

namespace stringcourse::sheet {
namespace {

constexpr int kBlankDowels = 6;

// What the rod must read on the concrete, where the job says how high the instrument stands.
std::string rod_text(const Context& context) {
  for (const setout::RodReadingWanted& wanted : context.answer.rod_readings) {
    if (wanted.place == setout::RodPlace::Bearing && wanted.reading >= Length())
      return both_forms(wanted.reading, context.tape());
  }
  return {};
}

void add_rod(Table& table, const Context& context) {
  const words::SheetWords& words = context.words;
  const std::string wanted = rod_text(context);
  table.add_heading(std::string(words.form_rod));
  table.add_row({"", std::string(words.found_benchmark), "", "", ""});
  for (const Corner& corner : context.building.corners)
    table.add_row({"", words::fill_in(words.form_corner, {corner.name}), wanted, "", ""});
  for (const Wall& wall : context.building.walls)
    table.add_row({"", words::fill_in(words.form_middle, {wall.name}), wanted, "", ""});
}

void add_dowels(Table& table, const Context& context) {
  if (context.answer.dowels.empty()) return;
  table.add_heading(std::string(context.words.form_dowels));
  for (int row = 0; row < kBlankDowels; ++row) table.add_row({"", "", "", "", ""});
}

Table reading_table(const Context& context) {
  const words::SheetWords& words = context.words;
  Table table = new_table(
      context.page.list.width(), words.title_reading_form,
      {{"", 3}, {words.card_what, 29}, {words.card_wanted, 26}, {words.card_read, 21}, {words.form_again, 21}},
      kSmallText);
  table.pencil_boxes = true;
  add_rod(table, context);
  add_dowels(table, context);
  return table;
}

}  // namespace

constinit const SheetKind kReadingFormSheet{
    .name = "reading-form",
    .hold_point = HoldPoint::Pour,
    .purpose = &words::SheetWords::purpose_reading_form,
    .caution = {"engineer"},
    .applies = [](const Context& context) { return !context.has_readings(); },
    .table = reading_table,
    .note = &words::SheetWords::form_note,
    .under = {&kSettingOutSheet},
};

}  // namespace stringcourse::sheet
