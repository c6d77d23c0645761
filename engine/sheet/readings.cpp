// All readings with what they come to: tapings, moves, levels and the choices for the bed.
#include <algorithm>

#include "measure/digits.hpp"
#include "measure/metres.hpp"
#include "sheet/registry.hpp"
#include "words/volume.hpp"

namespace stringcourse::sheet {
namespace {

using ground::AsFound;
using ground::PegMove;
using ground::TapeAsFound;
using ground::TapedLine;

/// A correction: what rounds to nothing is "under 1/16\"".
std::string correction_text(const Context& context, Length length) {
  const Length step = tape_step(context.tape());
  if (length != Length() && rounded_to(length, step) == Length())
    return words::fill_in(context.words.found_under, {tape_text(step, context.tape())});
  return tape_text(length, context.tape());
}

/// How well a reading fits, by how many times its doubt it is adjusted: up to once, up to twice, or more (a blunder's
/// limit is beyond three).
std::string_view fit_word(const words::SheetWords& words, double standardised) {
  const double times = standardised < 0 ? -standardised : standardised;
  return words.found_fits[times <= 1 ? 0 : times <= 2 ? 1 : 2];
}

/// Lines that are lacking for a verdict.
void add_missing(Table& table, const Context& context, const TapeAsFound& tape) {
  if (tape.missing.empty()) return;
  std::vector<std::string> lines;
  for (const auto& [from, to] : tape.missing)
    lines.push_back(corner_name(context, from) + " - " + corner_name(context, to));
  table.add_row({std::string(context.words.found_tape_too), "", "", joined(lines, ", ")});
}

void add_diagonals(Table& table, const Context& context, const TapeAsFound& tape) {
  const words::SheetWords& words = context.words;
  const auto name = [&](const std::array<int, 2>& ends) {
    return corner_name(context, ends[0]) + corner_name(context, ends[1]);
  };
  for (const ground::Diagonals& pair : tape.diagonals) {
    table.add_row({words::fill_in(words.found_diagonals, {name(pair.one), name(pair.other)}),
                   words::fill_in(words.found_longer, {name(pair.one), tape_text(pair.difference, context.tape())}),
                   words::fill_in(words.found_allowed,
                                  {tape_text(pair.allowed, context.tape()), tape_text(pair.doubt, context.tape())}),
                   context.told(ground::verdict_said(pair.verdict))});
  }
}

void add_tapings(Table& table, const Context& context, const TapeAsFound& tape) {
  const words::SheetWords& words = context.words;
  if (tape.lines.empty()) return;
  table.add_heading(words::fill_in(words.found_tapings, {context.told(ground::verdict_said(tape.verdict))}));
  for (const TapedLine& line : tape.lines) {
    const bool adjusted = tape.state == TapeAsFound::State::Adjusted && !line.slip;
    const std::string says =
        line.slip    ? words::fill_in(words.found_slip, {context.told(ground::slip_said(line.slip->slip)),
                                                         both_forms(line.slip->length, context.tape())})
        : line.wrong ? std::string(words.found_blunder)
        : adjusted ? words::fill_in(words.found_correction, {correction_text(context, length_of(line.residual.value)),
                                                             std::string(fit_word(words, line.residual.standardised))})
                   : std::string();
    const std::string both =
        !line.again
            ? says
            : words::fill_in(words.found_second,
                             {says, std::string(line.agrees ? words.found_second_agrees : words.found_second_not)});
    table.add_row({corner_name(context, line.from) + " - " + corner_name(context, line.to),
                   both_forms(line.read, context.tape()), both_forms(line.expected, context.tape()), both});
  }
  add_missing(table, context, tape);
  add_diagonals(table, context, tape);
  if (tape.suspicion == ground::Suspicion::NotLocatable) {
    std::string order;
    for (const std::size_t line : tape.tape_again) {
      order += (order.empty() ? "" : ", ") + corner_name(context, tape.lines[line].from) +
               corner_name(context, tape.lines[line].to);
    }
    table.add_row({std::string(words.found_tape_again), "", "", order});
    table.add_row({std::string(words.found_moves), "", "", std::string(words.found_no_moves)});
  }
}

void add_moves(Table& table, const Context& context, const TapeAsFound& tape) {
  const words::SheetWords& words = context.words;
  if (tape.moves.empty()) return;
  table.add_heading(std::string(words.found_moves));
  for (const PegMove& move : tape.moves) {
    const bool held = move.corner == tape.held;
    const std::string text =
        held ? std::string(words.found_held) : context.told(ground::move_said(context.building, move));
    const std::string doubt = held ? std::string() : "± " + tape_text(move.doubt, context.tape());
    const std::string axes = held ? std::string()
                                  : words::fill_in(words.found_ellipse, {tape_text(move.longer, context.tape()),
                                                                         tape_text(move.shorter, context.tape())});
    const std::string says = move.within_doubt && !held ? text + ": " + std::string(words.found_within_doubt) : text;
    table.add_row({corner_name(context, move.corner), doubt, axes, says});
  }
}

/// What the job has chosen, and what was read since that says otherwise.
void add_chosen(Table& table, const Context& context, const std::optional<ground::ChosenNow>& chosen) {
  if (!chosen) return;
  const std::string against = context.told(chosen->against);
  table.add_row({std::string(context.words.found_chosen), "", "",
                 context.told(chosen->says) + (against.empty() ? "" : ". " + against)});
}

void add_corners(Table& table, const Context& context, const AsFound& found) {
  const words::SheetWords& words = context.words;
  if (found.tape.choices.empty() && !found.shape_chosen) return;
  table.add_heading(std::string(words.found_corners));
  for (const ground::ShapeChoice& choice : found.tape.choices) {
    const std::string gives_up = context.told(choice.gives_up);
    table.add_row({std::string(choice.recommended ? words.found_recommended_one : words.found_else), "", "",
                   context.told(choice.says) + (gives_up.empty() ? "" : "; " + gives_up)});
  }
  add_chosen(table, context, found.shape_chosen);
}

void add_levels(Table& table, const Context& context, const ground::LevelsAsFound& levels) {
  const words::SheetWords& words = context.words;
  const auto name_of = [&](const std::string& station) {
    return station == "datum" ? std::string(words.found_benchmark) : station;
  };
  table.add_heading(words::fill_in(words.found_levels, {name_of(levels.datum)}));
  for (const ground::Station& station : levels.stations) {
    const std::string place =
        station.place ? context.wall(station.place->wall).name + " " + tape_text(station.place->along, context.tape())
                      : std::string();
    table.add_row({name_of(station.name), tape_text(station.height, context.tape()),
                   "± " + tape_text(station.doubt, context.tape()), place});
  }
  for (const ground::LoopVerdict& loop : levels.loops) {
    table.add_row({std::string(words.found_loop), tape_text(loop.misclosure, context.tape()),
                   "± " + tape_text(loop.allowed, context.tape()),
                   std::string(loop.closes ? words.found_closes : words.found_does_not_close)});
  }
}

void add_instrument(Table& table, const Context& context, const ground::LevelsAsFound& levels) {
  if (!levels.instrument) return;
  const words::SheetWords& words = context.words;
  const ground::Instrument& one = *levels.instrument;
  const std::string_view looks = one.over < Length() ? words.found_instrument_down : words.found_instrument_up;
  table.add_row(
      {std::string(words.found_instrument),
       words::fill_in(looks, {tape_text(magnitude(one.over), context.tape()), tape_text(one.sight, context.tape())}),
       "± " + tape_text(one.doubt, context.tape()),
       one.level ? std::string(words.found_instrument_level) : std::string()});
}

void add_doors(Table& table, const Context& context, const ground::LevelsAsFound& levels) {
  const words::SheetWords& words = context.words;
  for (const ground::DoorFloor& door : levels.doors) {
    const ResolvedOpening& opening = context.building.openings[static_cast<std::size_t>(door.opening)];
    table.add_row({words::fill_in(words.found_door, {opening.name}),
                   words::fill_in(words.found_door_tall, {both_forms(door.tall_least, context.tape()),
                                                          both_forms(door.tall_most, context.tape())}),
                   both_forms(opening.height(), context.tape()) + " ± " + tape_text(door.doubt, context.tape()),
                   context.told(ground::verdict_said(door.verdict))});
  }
}

void add_bed(Table& table, const Context& context, const ground::LevelsAsFound& levels) {
  const words::SheetWords& words = context.words;
  const ground::BedAsFound& bed = *levels.bed;
  table.add_heading(words::fill_in(
      words.found_bed, {tape_text(bed.range.least, context.tape()), tape_text(bed.range.most, context.tape()),
                        context.told(ground::verdict_said(bed.verdict))}));
  if (!bed.lacks.empty())
    table.add_row({std::string(words.found_read_too), "", "", joined(context.told(bed.lacks), ", ")});
  for (const ground::BedChoice& choice : bed.choices) {
    const Tape tape = context.tape();
    const std::string mortar =
        words::bagged_text(choice.mortar_cubic_centimetres, words::Bagged::Mortar, context.reader());
    const std::string concrete =
        words::bagged_text(choice.concrete_cubic_centimetres, words::Bagged::Concrete, context.reader());
    const bool poured = choice.concrete_cubic_centimetres > 0;
    const std::string says = context.told(ground::choice_said(choice));
    const bool best = choice.recommended && bed.choices.size() > 1;
    const std::string takes = poured ? words::fill_in(words.found_concrete, {mortar, concrete})
                                     : words::fill_in(words.found_mortar, {mortar});
    const std::string money = context.told(bed_money_said(context.answer, choice.what));
    table.add_row({best ? words::fill_in(words.found_recommended, {says}) : says,
                   words::fill_in(words.found_bed_top, {tape_text(choice.top, tape)}),
                   words::fill_in(words.found_margin, {tape_text(choice.margin, tape)}),
                   money.empty() ? takes : takes + "; " + money});
  }
  if (!bed.choices.empty() && context.tape() == Tape::Inches)
    table.add_row({"", "", "", std::string(words.found_bags)});
  add_chosen(table, context, context.answer.found.bed_chosen);
  if (bed.units_without > 0) return;
  // What the rod must read on the top of course 1, from each set-up.
  const Length height = context.building.courses.empty() ? Length() : context.building.courses[0].unit_height;
  for (std::size_t k = 0; k < levels.setups.size(); ++k) {
    const Length reading = levels.instruments[k] - (bed.level.top + height);
    table.add_row({words::fill_in(words.found_rod, {levels.setups[k]}), tape_text(reading, context.tape()), "", ""});
  }
}

/// "1 mm off its place toward B, 97 mm in from the face": which way, never a sign.
std::string off_place_text(const Context& context, const steel::FoundDowel& dowel) {
  const words::SheetWords& words = context.words;
  const std::string in = tape_text(dowel.off_face, context.tape());
  if (!dowel.has_bar) return words::fill_in(words.found_off_face, {in});
  if (rounded_to(magnitude(dowel.off_place), tape_step(context.tape())) == Length())
    return words::fill_in(words.found_at_place, {in});
  const Wall& wall = context.wall(dowel.wall);
  const std::string& toward = dowel.off_place < Length() ? wall.start_name : wall.end_name;
  return words::fill_in(words.found_off, {tape_text(magnitude(dowel.off_place), context.tape()), toward, in});
}

void add_dowels(Table& table, const Context& context) {
  const words::SheetWords& words = context.words;
  if (!context.has_readings() || context.answer.found_dowels.empty()) return;
  table.add_heading(std::string(words.found_dowels));
  for (const steel::FoundDowel& dowel : context.answer.found_dowels) {
    const std::string name = context.wall(dowel.wall).name + (dowel.number > 0 ? " " + number_text(dowel.number) : "");
    table.add_row({name, both_forms(dowel.along, context.tape()), off_place_text(context, dowel),
                   context.told(steel::action_said(dowel))});
  }
}

void add_saving(Table& table, const Context& context) {
  if (!context.has_readings()) return;
  const words::SheetWords& words = context.words;
  const steel::DowelSearch& search = context.answer.dowel_search;
  for (const steel::DowelLayout& layout : search.layouts) {
    table.add_row({std::string(words.found_saving),
                   words::fill_in(words.found_saving_now, {number_text(search.stands), number_text(search.found)}), "",
                   context.told(steel::dowel_layout_said(layout))});
  }
}

void add_fit(Table& table, const Context& context) {
  if (!context.answer.slab.lacks.empty()) {
    const std::string unread = context.told(ground::verdict_said(ground::Verdict::NotRead));
    table.add_heading(std::string(context.words.found_fit) + ": " + unread);
    table.add_row(
        {std::string(context.words.found_fit_lacks), "", "", joined(context.told(context.answer.slab.lacks), ", ")});
  }
  if (!context.answer.slab.fit || context.building.walls.empty()) return;
  const words::SheetWords& words = context.words;
  const ground::SlabFit& fit = *context.answer.slab.fit;
  const auto towards = [&](Length way, std::string_view positive, std::string_view negative) {
    return words::fill_in(way < Length() ? negative : positive, {tape_text(magnitude(way), context.tape())});
  };
  table.add_heading(std::string(words.found_fit));
  table.add_row({std::string(words.found_fit_shift), towards(fit.east, words.found_east, words.found_west), "",
                 towards(fit.north, words.found_north, words.found_south)});
  const Wall& side = context.wall(0);
  // The first side runs west from where the building is shifted: turned to the left, its far end goes south.
  const Length way = length_of(-fit.turn * static_cast<double>(side.actual.in_nanometres()) * 1e-9);
  table.add_row(
      {words::fill_in(words.found_fit_turn, {side.name}),
       words::fill_in(words.found_fit_turned, {towards(way, words.found_north, words.found_south), side.end_name}), "",
       ""});
  table.add_row({std::string(words.found_fit_room), tape_text(fit.room, context.tape()),
                 tape_text(fit.room_before, context.tape()), ""});
}

Table found_table(const Context& context) {
  const words::SheetWords& words = context.words;
  Table table = new_table(
      context.page.drawing.width(), words.title_found,
      {{words.found_what, 26}, {words.found_read, 22}, {words.found_against, 22}, {words.found_says, 30}}, kSmallText);
  if (!context.has_readings()) return table;
  const AsFound& found = context.answer.found;
  add_tapings(table, context, found.tape);
  add_moves(table, context, found.tape);
  add_corners(table, context, found);
  if (found.levels)
    add_levels(table, context, *found.levels), add_instrument(table, context, *found.levels),
        add_doors(table, context, *found.levels);
  if (found.levels && found.levels->bed) add_bed(table, context, *found.levels);
  add_dowels(table, context);
  add_saving(table, context);
  add_fit(table, context);
  return table;
}

}  // namespace

constinit const SheetKind kReadingsSheet{
    .name = "readings",
    .hold_point = HoldPoint::FirstCourse,
    .purpose = &words::SheetWords::purpose_readings,
    .caution = {"engineer"},
    .table = found_table,
};

}  // namespace stringcourse::sheet
