// The setting-out card: what the tape must read, the square check at each corner, kerfs of the boards, the line of each
// side.
#include <algorithm>
#include <span>

#include "measure/digits.hpp"
#include "measure/force.hpp"
#include "setout/boards.hpp"
#include "setout/line.hpp"
#include "setout/marks.hpp"
#include "setout/trigs.hpp"
#include "sheet/hook_words.hpp"
#include "sheet/registry.hpp"

namespace stringcourse::sheet {
namespace {

using setout::KerfKind;

std::string_view kerf_name(const words::SheetWords& words, KerfKind kind) {
  switch (kind) {
    case KerfKind::FootingOutside: return words.kerf_footing_outside;
    case KerfKind::OuterFace: return words.kerf_outer_face;
    case KerfKind::DowelLine: return words.kerf_dowel_line;
    case KerfKind::InnerFace: return words.kerf_inner_face;
    case KerfKind::FootingInside: return words.kerf_footing_inside;
  }
  return {};
}

void add_tapes(Table& table, const Context& context) {
  const words::SheetWords& words = context.words;
  table.add_heading(std::string(words.card_tapes));
  for (const setout::ExpectedTape& tape : setout::expected_tapes(context.building)) {
    table.add_row({"", corner_name(context, tape.from) + " - " + corner_name(context, tape.to),
                   both_forms(tape.length, context.tape()),
                   std::string(tape.side ? words.card_side : words.card_diagonal), ""});
  }
}

void add_squares(Table& table, const Context& context) {
  const words::SheetWords& words = context.words;
  const auto checks = setout::square_checks(context.building, context.answer.job.setting_out->room);
  if (checks.empty()) return;
  table.add_heading(std::string(words.card_squares));
  for (const setout::SquareCheck& check : checks) {
    const std::string legs = tape_text(check.leg_a, context.tape()) + ", " + tape_text(check.leg_b, context.tape()) +
                             ", " + tape_text(check.hypotenuse, context.tape());
    table.add_row({"", corner_name(context, check.corner), legs,
                   words::fill_in(words.card_slip, {tape_text(tape_step(context.tape()), context.tape()),
                                                    tape_text(check.slip_costs, context.tape())}),
                   ""});
  }
}

bool alike(const setout::SideBoards& a, const setout::SideBoards& b) {
  return a.beyond == b.beyond && std::ranges::equal(a.kerfs, b.kerfs, [](const auto& one, const auto& other) {
           return one.kind == other.kind && one.at == other.at;
         });
}

/// Sides whose boards are nicked alike under one heading.
void add_boards(Table& table, const Context& context, const std::vector<setout::SideBoards>& boards) {
  const words::SheetWords& words = context.words;
  for (std::size_t first = 0; first < boards.size(); ++first) {
    const setout::SideBoards& side = boards[first];
    const auto same = [&](const setout::SideBoards& one) { return alike(one, side); };
    if (std::any_of(boards.begin(), boards.begin() + static_cast<std::ptrdiff_t>(first), same)) continue;
    std::vector<std::string> names;
    for (const setout::SideBoards& one : boards) {
      if (same(one)) names.push_back(context.wall(one.wall).name);
    }
    table.add_heading(words::fill_in(words.card_boards, {joined(names, ", "), tape_text(side.beyond, context.tape())}));
    for (const setout::Kerf& kerf : side.kerfs) {
      table.add_row({"", std::string(kerf_name(words, kerf.kind)), both_forms(kerf.at, context.tape()), "", ""});
    }
  }
}

std::string rod_place(const Context& context, const setout::RodReadingWanted& wanted, const std::string& names) {
  const words::SheetWords& words = context.words;
  switch (wanted.place) {
    case setout::RodPlace::Boards: return std::string(words.card_boards_top);
    case setout::RodPlace::Bearing: return std::string(words.card_bearing);
    case setout::RodPlace::CourseOne: return std::string(words.card_course_one);
    case setout::RodPlace::Event: break;
  }
  if (!wanted.mark || wanted.mark->opening < 0) return std::string(words.rod_top);
  const std::string_view what = wanted.mark->event == setout::RodEvent::Head   ? words.card_head
                                : wanted.mark->event == setout::RodEvent::Sill ? words.card_sill
                                                                               : words.card_floor;
  return words::fill_in(what, {names});
}

/// Whether two readings are one row: the same of two openings.
bool same_row(const setout::RodReadingWanted& a, const setout::RodReadingWanted& b) {
  return a.place == setout::RodPlace::Event && b.place == a.place && a.mark && b.mark && a.mark->opening >= 0 &&
         b.mark->opening >= 0 && a.mark->event == b.mark->event && a.reading == b.reading && a.height == b.height;
}

/// "D1, D2": the openings of one row.
std::string openings_of(const Context& context, std::span<const setout::RodReadingWanted> all,
                        const setout::RodReadingWanted& row) {
  std::vector<std::string> names;
  for (const setout::RodReadingWanted& one : all) {
    if (same_row(row, one))
      names.push_back(context.building.openings[static_cast<std::size_t>(one.mark->opening)].name);
  }
  return joined(names, ", ");
}

void add_rod(Table& table, const Context& context) {
  if (!context.answer.job.setting_out || context.answer.rod_readings.empty()) return;
  const words::SheetWords& words = context.words;
  table.add_heading(words::fill_in(
      words.card_rod, {tape_text(context.answer.job.setting_out->backsight.value_or(Length()), context.tape())}));
  const std::vector<setout::RodReadingWanted>& all = context.answer.rod_readings;
  for (std::size_t index = 0; index < all.size(); ++index) {
    const setout::RodReadingWanted& wanted = all[index];
    const auto before = std::span(all).first(index);
    if (std::ranges::any_of(before, [&](const auto& one) { return same_row(one, wanted); })) continue;
    const Length size = magnitude(wanted.reading);
    const std::string reading = wanted.reading < Length()
                                    ? words::fill_in(words.card_rod_over, {tape_text(size, context.tape())})
                                    : both_forms(size, context.tape());
    table.add_row({"", rod_place(context, wanted, openings_of(context, all, wanted)), reading,
                   words::fill_in(wanted.height < Length() ? words.card_rod_under : words.card_rod_reads,
                                  {height_text(context, magnitude(wanted.height))}),
                   ""});
  }
}

/// Micrometres are enough for a line's sag.
Length length_of(double metres) { return Length::nanometres(static_cast<std::int64_t>(metres * 1e6 + 0.5) * 1000); }

/// What rounds to nothing is "under 1/16\"".
std::string sag_text(const Context& context, Length sag) {
  const Length step = tape_step(context.tape());
  return rounded_to(sag, step) == Length()
             ? words::fill_in(context.words.found_under, {tape_text(step, context.tape())})
             : tape_text(sag, context.tape());
}

std::string pounds(double newtons, Tape tape) {
  const double number = tape == Tape::Inches ? newtons / 4.4482216152605 : newtons;
  return number_text(static_cast<long long>(number + 0.5)) + (tape == Tape::Inches ? " lb" : " N");
}

/// Where the line is held up, each place from the side's own zero.
std::string trig_text(const Context& context, int wall, const setout::Trigs& trigs) {
  const words::SheetWords& words = context.words;
  if (trigs.at.empty() && trigs.holds) return std::string(words.card_no_support);
  std::vector<std::string> places;
  for (const Length at : trigs.at)
    places.push_back(tape_text(rounded_to(at, tape_step(context.tape())), context.tape()));
  std::string text =
      words::fill_in(words.card_supports, {joined(places, ", "), hook_text(context.building, wall, words)});
  if (trigs.at.empty()) text.clear();
  return trigs.holds ? text : text + (text.empty() ? "" : "; ") + std::string(words.card_too_wide);
}

void add_lines(Table& table, const Context& context) {
  const words::SheetWords& words = context.words;
  const SettingOut& asked = *context.answer.job.setting_out;
  const auto force = [](const std::optional<std::string>& text, std::string_view otherwise) {
    return read_force(text ? std::string_view(*text) : otherwise).value_or(0);
  };
  const setout::LineFacts line{
      read_line_weight(asked.line_weight ? std::string_view(*asked.line_weight) : "0.001 lb/ft").value_or(0),
      force(asked.line_pull, "20 lb"), asked.line_strength ? force(asked.line_strength, "") : 0};
  if (line.weight <= 0 || line.pull <= 0) return;
  const Length most = asked.line_sag.value_or(context.tape() == Tape::Inches ? Length::sixteenths(1).half_down()
                                                                             : Length::millimetres(1));
  table.add_heading(
      words::fill_in(words.card_line, {pounds(line.pull, context.tape()), exact_text(most, context.tape())}));
  const Length longest = setout::longest_span(line, static_cast<double>(most.in_nanometres()) * 1e-9);
  for (int index = 0; index < static_cast<int>(context.building.walls.size()); ++index) {
    const Wall& wall = context.wall(index);
    if (wall.interior) continue;
    const setout::LineSpan span = setout::line_over(static_cast<double>(wall.actual.in_nanometres()) * 1e-9, line,
                                                    static_cast<double>(most.in_nanometres()) * 1e-9);
    const setout::Trigs trigs = setout::trigs_of(context.building, index, longest);
    std::string without = words::fill_in(words.card_pull_without, {pounds(span.pull_without, context.tape())});
    if (span.bears == setout::LineSpan::Bears::No) without += std::string(words.card_too_much);
    const bool none = trigs.at.empty() && trigs.holds;
    table.add_row({"", wall.name, words::fill_in(words.card_sag, {sag_text(context, length_of(span.sag))}),
                   trig_text(context, index, trigs), none ? std::string() : without});
  }
}

Table setting_out_table(const Context& context) {
  const words::SheetWords& words = context.words;
  Table table =
      new_table(context.page.drawing.width(), words.title_setting_out,
                {{"", 5}, {words.card_what, 16}, {words.card_wanted, 26}, {words.card_says, 33}, {words.card_read, 20}},
                kSmallText);
  table.pencil_boxes = true;
  add_tapes(table, context);
  if (!context.answer.job.setting_out) return table;
  add_squares(table, context);
  add_boards(table, context, context.answer.boards);
  add_rod(table, context);
  add_lines(table, context);
  return table;
}

}  // namespace

constinit const SheetKind kSettingOutSheet{
    .name = "setting-out",
    .hold_point = HoldPoint::Pour,
    .purpose = &words::SheetWords::purpose_setting_out,
    .caution = {"engineer"},
    .table = setting_out_table,
    .note = &words::SheetWords::card_note,
};

}  // namespace stringcourse::sheet
