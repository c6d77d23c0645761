// The first sheet: where the job stands. Key plan on the left, tallies on the right.
#include "sheet/summary.hpp"

#include <algorithm>

#include "measure/digits.hpp"
#include "paper/stack.hpp"
#include "sheet/plan.hpp"
#include "sheet/registry.hpp"
#include "sheet/sides.hpp"
#include "supply/counts.hpp"
#include "supply/lintels.hpp"
#include "words/language.hpp"

namespace stringcourse::sheet {
namespace {

std::string text_of(std::int64_t value) { return number_text(value); }

void add_courses(Table& table, const Context& context) {
  const words::SheetWords& words = context.words;
  const Building& building = context.building;
  std::vector<int> half_high;
  for (const Course& course : building.courses) {
    if (course.half_high) half_high.push_back(course.number);
  }
  std::string courses = text_of(static_cast<std::int64_t>(building.courses.size()));
  if (!half_high.empty()) courses += " (" + words::fill_in(words.half_high_courses, {ranges_text(half_high)}) + ")";
  table.add_row({std::string(words.courses), courses});
  table.add_row({std::string(words.height_to_top), both_forms(building.courses.back().top, context.tape())});
}

void add_lintels_of_units(Table& table, const Context& context) {
  const words::SheetWords& words = context.words;
  const auto& lintels = context.answer.lintels;
  const auto of_units =
      std::ranges::count_if(lintels, [](const auto& lintel) { return lintel.soffit != supply::Soffit::OnePiece; });
  const std::size_t floors = supply::floors_to_break_out(context.building, context.layout).size();
  if (of_units == 0) return;
  const auto pattern = floors > 0 ? words.lintel_tally_floors : words.lintel_tally;
  table.add_row({std::string(words.lintels),
                 words::fill_in(pattern, {text_of(of_units), text_of(static_cast<std::int64_t>(floors))})});
}

std::string cleanout_text(const words::PourWords& words, const supply::CleanoutCount& count) {
  if (count.cut == 0) return words::fill_in(words.cleanouts_bought, {text_of(count.all())});
  if (count.bought == 0) return words::fill_in(words.cleanouts_cut, {text_of(count.all())});
  return words::fill_in(words.cleanouts_both, {text_of(count.all()), text_of(count.bought), text_of(count.cut)});
}

void add_tallies(Table& table, const Context& context) {
  const words::SheetWords& words = context.words;
  const Cost& cost = context.layout.cost;
  table.add_row({std::string(words.units_laid), text_of(static_cast<std::int64_t>(context.layout.pieces.size()))});
  table.add_row({std::string(words.saw_cuts),
                 cost.cuts == 0
                     ? text_of(0)
                     : words::fill_in(words.cut_lengths, {text_of(cost.cuts), text_of(context.layout.cut_lengths)})});
  table.add_row({std::string(words.short_laps), text_of(cost.short_laps)});
  if (cost.short_pieces > 0) table.add_row({std::string(words.short_pieces), text_of(cost.short_pieces)});
  if (cost.shifted_joints > 0) table.add_row({std::string(words.shifted_joints), text_of(cost.shifted_joints)});
  const supply::BarCount& bars = context.answer.tallies.bars;
  table.add_row({std::string(words.bars),
                 bars.bars == 0 ? std::string(words.bars_none)
                                : words::fill_in(words.bar_length, {text_of(bars.bars), bars.size,
                                                                    tape_text(bars.total, context.tape())})});
  const supply::CleanoutCount& cleanouts = context.answer.tallies.cleanouts;
  if (cleanouts.all() > 0) table.add_row({std::string(words.pour.cleanouts), cleanout_text(words.pour, cleanouts)});
  add_lintels_of_units(table, context);
  for (const supply::LintelCount& lintel : context.answer.tallies.one_piece_lintels) {
    table.add_row(
        {std::string(words.lintels),
         words::fill_in(words.lintel_entry, {text_of(lintel.count), tape_text(lintel.length, context.tape())})});
  }
}

std::string proof_text(const Context& context) {
  const Layout& layout = context.layout;
  if (layout.cost.conceded != 0)
    return std::string(layout.proven ? context.words.proof_conceded : context.words.proof_conceded_gap);
  if (layout.proven) return std::string(context.words.proof_whole);
  if (layout.cost.short_laps == layout.least_possible.short_laps && layout.cost.cuts == layout.least_possible.cuts) {
    return words::fill_in(context.words.proof_laps_and_cuts,
                          {text_of(layout.cost.short_laps), text_of(layout.cost.cuts)});
  }
  return words::fill_in(context.words.proof_gap,
                        {text_of(layout.cost.short_laps), text_of(layout.least_possible.short_laps),
                         text_of(layout.cost.cuts), text_of(layout.least_possible.cuts)});
}

std::string series_prefix(const Context& context, std::int32_t series) {
  return context.building.series.size() < 2 ? "" : context.building.series[static_cast<std::size_t>(series)].id + " ";
}

Table tally_table(const Context& context, const Area& box, Micrometres height) {
  const words::SheetWords& words = context.words;
  Table table = new_table(box.width(), words.tallies, {{"", 38}, {"", 62}}, height);
  table.add_heading(std::string(words.tallies));
  add_courses(table, context);
  add_tallies(table, context);
  const std::size_t findings = context.answer.findings.size();
  table.add_row({std::string(words.findings),
                 findings == 0
                     ? text_of(0)
                     : words::fill_in(words.findings_behind, {number_text(static_cast<long long>(findings))})});
  return table;
}

std::string part_text(const Context& context, const supply::PartCount& part) {
  const std::string name = words::told(part.part, context.reader());
  switch (part.work) {
    case supply::PartWork::AsBought: break;
    case supply::PartWork::WebsCutDown: return words::fill_in(context.words.part_webs_cut, {name});
    case supply::PartWork::SawnHalfHigh: return words::fill_in(context.words.part_half_high, {name});
  }
  return name;
}

Table unit_table(const Context& context, const Area& box, Micrometres height) {
  const words::SheetWords& words = context.words;
  Table table = new_table(box.width(), words.units,
                          {{words.units, 52}, {words.count, 24, Anchor::End}, {words.to_buy, 24, Anchor::End}}, height);
  for (const supply::Purchase& purchase : context.answer.tallies.to_buy) {
    table.add_row(
        {series_prefix(context, purchase.series) + std::string(words.kinds[static_cast<std::size_t>(purchase.kind)]),
         text_of(purchase.whole), text_of(purchase.to_buy())});
  }
  for (const supply::PartCount& part : context.answer.tallies.corner_set_parts) {
    table.add_row({part_text(context, part), text_of(part.count), text_of(part.to_buy())});
  }
  // Cuts come last: what there is no room for stands in the saw list.
  const supply::Counts& counts = context.answer.tallies.units;
  for (const supply::CutCount& cut : counts.cuts) {
    table.add_row({words::fill_in(words.cut_entry, {tape_text(cut.length, context.tape()),
                                                    std::string(words.kinds[static_cast<std::size_t>(cut.from)])}),
                   text_of(cut.pieces), ""});
  }
  return table;
}

struct SummaryTables {
  Table tallies, units, sides;
};

// The tables of the summary, in letters as large as the room allows.
SummaryTables summary_tables(const Context& context, const Area& box) {
  SummaryTables tables;
  for (const Micrometres height : {kText, kSmallText}) {
    tables = {tally_table(context, box, height), unit_table(context, box, height),
              side_sizes_table(context, box.width(), height)};
    Micrometres taken = 20'000;  // sentences and gaps between
    for (const Table* table : {&tables.tallies, &tables.units, &tables.sides})
      taken += table_height(*table, table->lines.size()) + 3'000;
    if (taken <= box.height()) break;
  }
  return tables;
}

// What must not go on is red, and says so in words.
void write_troubles(Stack& stack, const Context& context) {
  const words::SheetWords& words = context.words;
  if (context.layout.relaxed_piece) {
    const std::string piece = tape_text(context.building.series.front().relaxed_piece, context.tape());
    stack.write(words::fill_in(words.relaxed_piece, {piece}), Weight::Regular);
  }
  if (context.layout.relaxed_bearing) stack.write(std::string(words.relaxed_bearing), Weight::Regular);
  if (!context.layout.conceded.empty()) {
    const std::string count = number_text(static_cast<long long>(context.layout.conceded.size()));
    stack.write(words::fill_in(words.conceded, {count}), Weight::Bold, Ink::Red);
  }
  const words::Reader reader = context.reader();
  for (const Stopped& stopped : context.layout.stopped) {
    stack.write(words::fill_in(words.stopped_run, {context.wall(stopped.wall).name, text_of(stopped.first_course),
                                                   text_of(stopped.last_course), words::told(stopped.rule, reader),
                                                   words::told(stopped.remedy, reader)}),
                Weight::Bold, Ink::Red);
  }
}

// What "buy" adds to what is laid.
std::string buy_text(const Context& context) {
  const words::SheetWords& words = context.words;
  const Breakage& breakage = context.building.breakage;
  if (breakage.percent == 0) return std::string(words.buy_no_breakage);
  return words::fill_in(breakage.stated ? words.buy_breakage_stated : words.buy_breakage_assumed,
                        {text_of(breakage.percent)});
}

constexpr int kSummaryShare = 54;  // of the width: the plan

// What the set leaves out as long as nobody asks for it.
std::string on_request_text(const Context& context) {
  return context.wanted.standards && context.wanted.templates ? std::string() : std::string(context.words.on_request);
}

// What stands beside the plan. False: the sides' sizes found no room and are left to a list behind.
bool write_summary(Pad& pad, const Context& context) {
  const Area box = right_part(context.page.drawing, kSummaryShare);
  const SummaryTables tables = summary_tables(context, box);
  Stack stack(pad, box, std::string(context.words.more_follow), on_request_text(context));
  stack.hang(tables.tallies);
  stack.write(proof_text(context), Weight::Bold);
  write_troubles(stack, context);
  stack.write(buy_text(context), Weight::Regular);
  stack.hang(tables.units);
  const bool sides = stack.has_room(tables.sides);
  if (sides) stack.hang(tables.sides);
  stack.finish();
  return sides;
}

// The sides' sizes where they stand under the plan: beside it they found no room, and they take a third of its height
// at most.
struct UnderPlan {
  Table sides;
  Micrometres high = 0;  // 0: they do not stand there
};

UnderPlan under_plan(const Context& context) {
  Pad scratch(Role::Figure);
  const Area left = left_part(context.page.drawing, kSummaryShare);
  if (write_summary(scratch, context)) return {};
  UnderPlan under{side_sizes_table(context, left.width() - 6'000, kSmallText)};
  const Micrometres high = table_height(under.sides, under.sides.lines.size()) + 3'000;
  if (high * 3 <= left.height()) under.high = high;
  return under;
}

Area room_of_plan(const Context& context, const UnderPlan& under) {
  Area room = left_part(context.page.drawing, kSummaryShare);
  room.bottom += under.high;
  return room;
}

Scale scale_of_summary(const Context& context) {
  return scale_of_plan(context.building, room_of_plan(context, under_plan(context)));
}

Group draw_summary(const Context& context) {
  Pad pad(Role::Figure, std::string(context.words.title_summary));
  const UnderPlan under = under_plan(context);
  const Area room = room_of_plan(context, under);
  pad.add(draw_plan(context, 1, PlanDetail::Walls, room, scale_of_plan(context.building, room)));
  if (under.high > 0) pad.add(draw_table(under.sides, {room.left, room.bottom - 3'000}, 0, under.sides.lines.size()));
  write_summary(pad, context);
  return std::move(pad).take();
}

}  // namespace

bool summary_holds_sides(const Context& context) {
  Pad scratch(Role::Figure);
  return write_summary(scratch, context) || under_plan(context).high > 0;
}

constinit const SheetKind kSummarySheet{
    .name = "summary",
    .purpose = &words::SheetWords::purpose_summary,
    .caution = {"engineer"},
    .sheets =
        [](const Context& context) {
          return numbered_sheets(context, context.words.title_summary, scale_of_summary(context));
        },
    .draw = [](const Context& context, const PlannedSheet&) { return draw_summary(context); },
};

}  // namespace stringcourse::sheet
