// The order in which grout goes in, lift by lift: cell after cell with its amount, and room for the time.
#include <algorithm>

#include "measure/digits.hpp"
#include "sheet/list_sheet.hpp"
#include "sheet/registry.hpp"
#include "words/language.hpp"
#include "words/volume.hpp"

namespace stringcourse::sheet {
namespace {

constexpr std::size_t kInARow = 3;
constexpr std::string_view kBox = "\u2610", kTicked = "\u2611";

std::string amount_text(const Context& context, const Volume& volume) {
  return words::volume_text(volume.in_cubic_centimetres(), context.reader());
}

/// To the foot, or the tenth of a metre.
std::string walk_text(const Context& context, Length walk) {
  const bool inches = context.tape() == Tape::Inches;
  return tape_text(rounded_to(walk, inches ? Length::feet(1) : Length::millimetres(100)), context.tape());
}

/// Whether its side has several troughs of this beam.
bool is_one_of_several(const LiftCard& card, const GroutStep& beam) {
  return std::ranges::count_if(card.steps, [&](const GroutStep& one) {
           return one.into == GroutInto::Beam && one.wall == beam.wall && one.of == beam.of;
         }) > 1;
}

std::string step_text(const Context& context, const LiftCard& card, const GroutStep& step) {
  const words::SteelWords& words = context.words.steel;
  const std::string& side = context.wall(step.wall).name;
  switch (step.into) {
    case GroutInto::Cell: return words::fill_in(words.cell_of, {side, step.name});
    case GroutInto::Beam:
      return words::fill_in(is_one_of_several(card, step) ? words.beam_from : words.beam_of,
                            {side, step.name, height_text(context, rounded_to(step.at, tape_step(context.tape())))});
    case GroutInto::Lintel: return words::fill_in(words.lintel_of, {step.name, side});
  }
  return {};
}

/// The time as the log has it, or a box to write it beside; one more where it is consolidated again.
std::string done_text(const Context& context, const LiftCard& card, const GroutStep& step) {
  const auto when = [&](std::int32_t entry) {
    if (entry < 0) return std::string(kBox);
    const std::string& text = context.answer.job.laid[static_cast<std::size_t>(entry)].when;
    const std::size_t space = text.rfind(' ');
    return std::string(kTicked) + "\u00A0" + (space == std::string::npos ? text : text.substr(space + 1));
  };
  return when(step.filled) + (card.again ? "  " + when(step.again) : "");
}

std::string corner_of_start(const Context& context) { return context.wall(0).start_name; }

std::string heading_of(const Context& context, const LiftCard& card) {
  const words::SteelWords& words = context.words.steel;
  const std::string walk = words::fill_in(
      words.order_walk, {walk_text(context, card.walk), short_name(context.names, corner_of_start(context))});
  return words::fill_in(
      words.lift_of,
      {number_text(card.pour), number_text(card.lift), number_text(card.first_course), number_text(card.last_course),
       both_forms(card.height, context.tape()),
       words::volume_by_foot_text(card.steps.back().total.in_cubic_centimetres(), context.reader()), walk,
       card.again
           ? words::fill_in(words.order_again, {number_text(again_within().from), number_text(again_within().by)})
           : std::string()});
}

void add_steps(Table& table, const Context& context, const LiftCard& card) {
  for (std::size_t k = 0; k < card.steps.size(); k += kInARow) {
    std::vector<std::string> row;
    for (std::size_t at = k; at < std::min(k + kInARow, card.steps.size()); ++at) {
      const GroutStep& step = card.steps[at];
      for (std::string cell : {step_text(context, card, step), amount_text(context, step.volume),
                               amount_text(context, step.total), done_text(context, card, step)})
        row.push_back(std::move(cell));
    }
    row.resize(4 * kInARow);
    table.add_row(row);
  }
}

Table order_table(const Context& context) {
  const words::SteelWords& words = context.words.steel;
  const ColumnWords name{words.cell, 11}, now{words.fill_now, 7}, all{words.fill_so_far, 8}, done{words.filled_at, 7};
  Table table = new_table(context.page.list.width(), words.title_order,
                          {name, now, all, done, name, now, all, done, name, now, all, done}, kSmallText);
  for (const LiftCard& card : context.answer.pour_cards) {
    table.add_heading(heading_of(context, card));
    add_steps(table, context, card);
  }
  return table;
}

std::string order_note(const Context& context) {
  return std::string(context.words.steel.order_note) + " " + words::cited("grout-again", context.reader()) + ". " +
         words::cited("grout-again-when", context.reader()) + ".";
}

}  // namespace

constinit const SheetKind kPourOrderSheet{
    .name = "pour-order",
    .hold_point = HoldPoint::Grout,
    .purpose = &words::SheetWords::purpose_filling,
    .caution = {"grout-pressure"},
    .table = order_table,
    .made_note = order_note,
};

}  // namespace stringcourse::sheet
