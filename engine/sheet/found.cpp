#include "sheet/found.hpp"

#include <algorithm>

#include "measure/metres.hpp"
#include "measure/volume.hpp"
#include "paper/legibility.hpp"
#include "paper/placing.hpp"
#include "sheet/plan.hpp"

namespace stringcourse::sheet {
namespace {

using ground::AsFound;
using ground::PegMove;
using ground::TapeAsFound;
using ground::TapedLine;

const std::string& corner_name(const Context& context, int corner) {
  return context.building.corners[static_cast<std::size_t>(corner)].name;
}

/// Paper points of all corners, where draw_plan() puts them.
std::vector<Point> corner_points(const Context& context, const Area& room, Scale scale) {
  std::vector<Point> points;
  for (const Corner& corner : context.building.corners) {
    const int wall = corner.leaving >= 0 ? corner.leaving : corner.arriving;
    const Wall& side = context.wall(wall);
    const Length at = corner.leaving >= 0 ? Length() : side.actual;
    const Area box = plan_box(context.building, room, scale, side, at, at);
    // The box is as long as the wall is thick, across it: the corner is its outer end.
    const Point step = step_along(side);
    const Point inward{step.y, -step.x};
    points.push_back({inward.x > 0 ? box.left : inward.x < 0 ? box.right : box.left, inward.y > 0 ? box.bottom : inward.y < 0 ? box.top : box.bottom});
  }
  return points;
}

constexpr Micrometres kAround = 700;  // white round a text, which no other enters

/// A text on white at the first of its places that is free, or not at all: the table tells it too.
void write_where_free(Pad& pad, Placer& lettered, const std::string& text, const Lettering& lettering, const std::vector<Point>& places) {
  const auto place = lettered.free_place(text, lettering, places);
  if (!place) return;
  const Box box = text_box({*place, text, lettering.height, lettering.weight, lettering.anchor, lettering.ink, 0});
  const Area ground{box.left - kAround, box.low - kAround, box.right + kAround, box.high + kAround};
  pad.box(ground, {Pen::None}, Fill::White);
  lettered.keep_clear(ground);
  lettered.write(pad, text, lettering, *place);
}

/// The walls as draw_plan() draws them.
std::vector<Area> walls_drawn(const Context& context, const Area& room, Scale scale) {
  std::vector<Area> walls;
  for (const Wall& wall : context.building.walls) walls.push_back(plan_box(context.building, room, scale, wall, Length(), wall.actual));
  return walls;
}

bool lies_on_a_wall(const std::vector<Area>& walls, const Box& box) {
  return std::ranges::any_of(walls, [&](const Area& wall) {
    return box.left < wall.right && wall.left < box.right && box.low < wall.top && wall.bottom < box.high;
  });
}

void draw_lines(Pad& pad, const Context& context, const TapeAsFound& tape, const std::vector<Point>& points,
                const std::vector<Area>& walls, Placer& lettered) {
  // All lines before all letters: no line crosses the white round a text.
  for (const TapedLine& line : tape.lines) {
    const bool out = line.slip || line.wrong;
    if (line.again) continue;
    pad.line(points[static_cast<std::size_t>(line.from)], points[static_cast<std::size_t>(line.to)],
             {Pen::Thin, out ? Dash::DashDot : Dash::Dashed, out ? Ink::Red : Ink::Black});
  }
  for (const TapedLine& line : tape.lines) {
    const Point a = points[static_cast<std::size_t>(line.from)], b = points[static_cast<std::size_t>(line.to)];
    const bool out = line.slip || line.wrong;
    // Diagonals are lettered where two of them do not meet; sides have their dimension.
    if (a.x == b.x || a.y == b.y) continue;
    std::vector<Point> places;
    for (const int tenths : {33, 67, 25, 75, 42, 58, 50, 18, 82}) {
      places.push_back({static_cast<Micrometres>(a.x + std::int64_t{b.x - a.x} * tenths / 100), static_cast<Micrometres>(a.y + std::int64_t{b.y - a.y} * tenths / 100)});
    }
    const std::string text = corner_name(context, line.from) + corner_name(context, line.to) + "  " + both_forms(line.read, context.tape());
    const Lettering lettering{kSmallText, Weight::Regular, Anchor::Middle, out ? Ink::Red : Ink::Black, 0};
    // Off the walls where there is room.
    std::ranges::stable_partition(places, [&](Point place) {
      return !lies_on_a_wall(walls, text_box({place, text, lettering.height, lettering.weight, lettering.anchor, lettering.ink, 0}));
    });
    write_where_free(pad, lettered, text, lettering, places);
  }
}

/// Arrows from the peg, one along each axis of the plan; the longer way has the longer arrow.
void draw_move(Pad& pad, const PegMove& move, Point at) {
  constexpr Micrometres kLong = 16'000, kShort = 10'000, kOff = 1'500;
  const Length east = magnitude(move.east), north = magnitude(move.north);
  const auto worth = [&](Length part) { return 5 * part >= std::max(east, north) && part >= Length::nanometres(400'000); };
  const Stroke blue{Pen::Thick, Dash::Solid, Ink::Blue};
  if (worth(east)) {
    const Micrometres sign = move.east < Length() ? -1 : 1, length = east >= north ? kLong : kShort;
    pad.add(arrow({at.x + sign * kOff, at.y}, {at.x + sign * length, at.y}, blue));
  }
  if (worth(north)) {
    const Micrometres sign = move.north < Length() ? -1 : 1, length = north > east ? kLong : kShort;
    pad.add(arrow({at.x, at.y + sign * kOff}, {at.x, at.y + sign * length}, blue));
  }
}

/// Beside the corner, towards the middle of the plan first.
std::vector<Point> beside(Point at, Point middle) {
  const Micrometres side = at.x < middle.x ? 8'000 : -8'000, up = at.y < middle.y ? 10'000 : -10'000 - kText, step = at.y < middle.y ? 6'000 : -6'000;
  std::vector<Point> places;
  for (int k = 0; k < 4; ++k) places.push_back({at.x + side, at.y + up + k * step});
  for (int k = 1; k < 3; ++k) places.push_back({at.x + k * 3 * side, at.y + up});
  return places;
}

/// The ellipse of a peg's doubt, a hundred times as large as to scale: a polygon of 24 points.
void draw_ellipse(Pad& pad, const PegMove& move, Point at, Scale scale) {
  // Cosines of 0, 15 ... 90 degrees; the others follow by symmetry.
  constexpr double kCosines[] = {1, 0.9659258, 0.8660254, 0.7071068, 0.5, 0.2588190, 0};
  const auto cosine = [&](int step) {
    step = (step % 24 + 24) % 24;
    if (step > 12) step = 24 - step;
    return step <= 6 ? kCosines[step] : -kCosines[12 - step];
  };
  std::vector<Point> ring;
  const double a = 100.0 * scale.paper(move.longer), b = 100.0 * scale.paper(move.shorter);
  for (int step = 0; step <= 24; ++step) {
    const double along = a * cosine(step), across = b * cosine(step - 6);
    ring.push_back({at.x + static_cast<Micrometres>(along * move.direction.x - across * move.direction.y), at.y + static_cast<Micrometres>(along * move.direction.y + across * move.direction.x)});
  }
  pad.path(std::move(ring), {Pen::Thin, Dash::Solid, Ink::Blue});
}

void draw_moves(Pad& pad, const Context& context, const TapeAsFound& tape, const std::vector<Point>& points, Placer& lettered, Scale scale) {
  const Words& words = context.words;
  Point middle{0, 0};
  for (const Point& point : points) middle.x += point.x / static_cast<Micrometres>(points.size()), middle.y += point.y / static_cast<Micrometres>(points.size());
  for (const PegMove& move : tape.moves) {
    const Point at = points[static_cast<std::size_t>(move.corner)];
    pad.dot(at, 1'400);
    const bool held = move.corner == tape.held;
    if (!held) draw_ellipse(pad, move, at, scale);
    if (!held && !move.within_doubt) draw_move(pad, move, at);
    const std::string text = held               ? std::string(words.found_held)
                             : move.within_doubt ? std::string(words.found_leave)
                                                 : ground::move_text(context.building, move);
    write_where_free(pad, lettered, text, {kText, Weight::Bold, at.x < middle.x ? Anchor::Start : Anchor::End, held ? Ink::Black : Ink::Blue, 0}, beside(at, middle));
  }
}

/// A correction: what rounds to nothing is "under 1/16\"".
std::string correction_text(const Context& context, Length length) {
  const Length step = tape_step(context.tape());
  if (length != Length() && rounded_to(length, step) == Length()) return fill_in(context.words.found_under, {tape_text(step, context.tape())});
  return tape_text(length, context.tape());
}

/// How well a reading fits, by how many times its doubt it is adjusted: up to once, up to twice, or more (a blunder's limit
/// is beyond three).
std::string_view fit_word(const Words& words, double standardised) {
  const double times = standardised < 0 ? -standardised : standardised;
  return words.found_fits[times <= 1 ? 0 : times <= 2 ? 1 : 2];
}

/// Lines that are lacking for a verdict.
void add_missing(Table& table, const Context& context, const TapeAsFound& tape) {
  if (tape.missing.empty()) return;
  std::vector<std::string> lines;
  for (const auto& [from, to] : tape.missing) lines.push_back(corner_name(context, from) + " - " + corner_name(context, to));
  table.add_row({std::string(context.words.found_tape_too), "", "", joined(lines, ", ")});
}

void add_diagonals(Table& table, const Context& context, const TapeAsFound& tape) {
  const Words& words = context.words;
  const auto name = [&](const std::array<int, 2>& ends) { return corner_name(context, ends[0]) + corner_name(context, ends[1]); };
  for (const ground::Diagonals& pair : tape.diagonals) {
    table.add_row({fill_in(words.found_diagonals, {name(pair.one), name(pair.other)}),
                   fill_in(words.found_longer, {name(pair.one), tape_text(pair.difference, context.tape())}),
                   fill_in(words.found_allowed, {tape_text(pair.allowed, context.tape()), tape_text(pair.doubt, context.tape())}),
                   ground::verdict_text(pair.verdict)});
  }
}

void add_tapings(Table& table, const Context& context, const TapeAsFound& tape) {
  const Words& words = context.words;
  if (tape.lines.empty()) return;
  table.add_heading(fill_in(words.found_tapings, {ground::verdict_text(tape.verdict)}));
  for (const TapedLine& line : tape.lines) {
    const bool adjusted = tape.state == TapeAsFound::State::Adjusted && !line.slip;
    const std::string says = line.slip    ? fill_in(words.found_slip, {ground::slip_text(line.slip->slip), both_forms(line.slip->length, context.tape())})
                             : line.wrong ? std::string(words.found_blunder)
                             : adjusted   ? fill_in(words.found_correction, {correction_text(context, length_of(line.residual.value)), std::string(fit_word(words, line.residual.standardised))})
                                          : std::string();
    const std::string both = !line.again ? says : fill_in(words.found_second, {says, std::string(line.agrees ? words.found_second_agrees : words.found_second_not)});
    table.add_row({corner_name(context, line.from) + " - " + corner_name(context, line.to), both_forms(line.read, context.tape()), both_forms(line.expected, context.tape()), both});
  }
  add_missing(table, context, tape);
  add_diagonals(table, context, tape);
  if (tape.suspicion == ground::Suspicion::NotLocatable) {
    std::string order;
    for (const std::size_t line : tape.tape_again) {
      order += (order.empty() ? "" : ", ") + corner_name(context, tape.lines[line].from) + corner_name(context, tape.lines[line].to);
    }
    table.add_row({std::string(words.found_tape_again), "", "", order});
    table.add_row({std::string(words.found_moves), "", "", std::string(words.found_no_moves)});
  }
}

void add_moves(Table& table, const Context& context, const TapeAsFound& tape) {
  const Words& words = context.words;
  if (tape.moves.empty()) return;
  table.add_heading(std::string(words.found_moves));
  for (const PegMove& move : tape.moves) {
    const bool held = move.corner == tape.held;
    const std::string text = held ? std::string(words.found_held) : ground::move_text(context.building, move);
    const std::string doubt = held ? std::string() : "± " + tape_text(move.doubt, context.tape());
    const std::string axes = held ? std::string() : fill_in(words.found_ellipse, {tape_text(move.longer, context.tape()), tape_text(move.shorter, context.tape())});
    const std::string says = move.within_doubt && !held ? text + ": " + std::string(words.found_within_doubt) : text;
    table.add_row({corner_name(context, move.corner), doubt, axes, says});
  }
}

void add_levels(Table& table, const Context& context, const ground::LevelsAsFound& levels) {
  const Words& words = context.words;
  const auto name_of = [&](const std::string& station) { return station == "datum" ? std::string(words.found_benchmark) : station; };
  table.add_heading(fill_in(words.found_levels, {name_of(levels.datum)}));
  for (const ground::Station& station : levels.stations) {
    const std::string place = station.place ? context.wall(station.place->wall).name + " " + tape_text(station.place->along, context.tape()) : std::string();
    table.add_row({name_of(station.name), tape_text(station.height, context.tape()), "± " + tape_text(station.doubt, context.tape()), place});
  }
  for (const ground::LoopVerdict& loop : levels.loops) {
    table.add_row({std::string(words.found_loop), tape_text(loop.misclosure, context.tape()), "± " + tape_text(loop.allowed, context.tape()),
                   std::string(loop.closes ? words.found_closes : words.found_does_not_close)});
  }
}

void add_instrument(Table& table, const Context& context, const ground::LevelsAsFound& levels) {
  if (!levels.instrument) return;
  const Words& words = context.words;
  const ground::Instrument& one = *levels.instrument;
  const std::string_view looks = one.over < Length() ? words.found_instrument_down : words.found_instrument_up;
  table.add_row({std::string(words.found_instrument), fill_in(looks, {tape_text(magnitude(one.over), context.tape()), tape_text(one.sight, context.tape())}),
                 "± " + tape_text(one.doubt, context.tape()), one.level ? std::string(words.found_instrument_level) : std::string()});
}

void add_doors(Table& table, const Context& context, const ground::LevelsAsFound& levels) {
  const Words& words = context.words;
  for (const ground::DoorFloor& door : levels.doors) {
    const ResolvedOpening& opening = context.building.openings[static_cast<std::size_t>(door.opening)];
    table.add_row({fill_in(words.found_door, {opening.name}), fill_in(words.found_door_tall, {both_forms(door.tall_least, context.tape()), both_forms(door.tall_most, context.tape())}),
                   both_forms(opening.height(), context.tape()) + " ± " + tape_text(door.doubt, context.tape()), ground::verdict_text(door.verdict)});
  }
}

void add_bed(Table& table, const Context& context, const ground::LevelsAsFound& levels) {
  const Words& words = context.words;
  const ground::BedAsFound& bed = *levels.bed;
  table.add_heading(fill_in(words.found_bed, {tape_text(bed.range.least, context.tape()), tape_text(bed.range.most, context.tape()), ground::verdict_text(bed.verdict)}));
  if (!bed.lacks.empty()) table.add_row({std::string(words.found_read_too), "", "", joined(bed.lacks, ", ")});
  for (const ground::BedChoice& choice : bed.choices) {
    const Tape tape = context.tape();
    const std::string mortar = bagged_text(choice.mortar_cubic_centimetres, Bagged::Mortar, tape);
    const std::string concrete = bagged_text(choice.concrete_cubic_centimetres, Bagged::Concrete, tape);
    const bool poured = choice.concrete_cubic_centimetres > 0;
    table.add_row({ground::choice_text(choice, tape), fill_in(words.found_bed_top, {tape_text(choice.top, tape)}),
                   fill_in(words.found_margin, {tape_text(choice.margin, tape)}),
                   poured ? fill_in(words.found_concrete, {mortar, concrete}) : fill_in(words.found_mortar, {mortar})});
  }
  if (!bed.choices.empty() && context.tape() == Tape::Inches) table.add_row({"", "", "", std::string(words.found_bags)});
  if (bed.units_without > 0) return;
  // What the rod must read on the top of course 1, from each set-up.
  const Length height = context.building.courses.empty() ? Length() : context.building.courses[0].unit_height;
  for (std::size_t k = 0; k < levels.setups.size(); ++k) {
    const Length reading = levels.instruments[k] - (bed.level.top + height);
    table.add_row({fill_in(words.found_rod, {levels.setups[k]}), tape_text(reading, context.tape()), "", ""});
  }
}

/// "1 mm off its place toward B, 97 mm in from the face": which way, never a sign.
std::string off_place_text(const Context& context, const steel::FoundDowel& dowel) {
  const Words& words = context.words;
  const std::string in = tape_text(dowel.off_face, context.tape());
  if (!dowel.has_bar) return fill_in(words.found_off_face, {in});
  if (rounded_to(magnitude(dowel.off_place), tape_step(context.tape())) == Length()) return fill_in(words.found_at_place, {in});
  const Wall& wall = context.wall(dowel.wall);
  const std::string& toward = dowel.off_place < Length() ? wall.start_name : wall.end_name;
  return fill_in(words.found_off, {tape_text(magnitude(dowel.off_place), context.tape()), toward, in});
}

void add_dowels(Table& table, const Context& context) {
  const Words& words = context.words;
  if (context.job.found_dowels == nullptr || context.job.found_dowels->empty()) return;
  table.add_heading(std::string(words.found_dowels));
  for (const steel::FoundDowel& dowel : *context.job.found_dowels) {
    const std::string name = context.wall(dowel.wall).name + (dowel.number > 0 ? " " + number_text(dowel.number) : "");
    table.add_row({name, both_forms(dowel.along, context.tape()), off_place_text(context, dowel), steel::action_text(dowel, context.tape())});
  }
}

void add_saving(Table& table, const Context& context) {
  if (context.job.dowel_search == nullptr) return;
  const Words& words = context.words;
  const steel::DowelSearch& search = *context.job.dowel_search;
  for (const steel::DowelLayout& layout : search.layouts) {
    table.add_row({std::string(words.found_saving), fill_in(words.found_saving_now, {number_text(search.stands), number_text(search.found)}), "", steel::dowel_layout_text(layout)});
  }
}

void add_fit(Table& table, const Context& context) {
  if (context.job.slab_lacks != nullptr) {
    const std::string unread = ground::verdict_text(ground::Verdict::NotRead);
    table.add_heading(std::string(context.words.found_fit) + ": " + unread);
    table.add_row({std::string(context.words.found_fit_lacks), "", "", joined(*context.job.slab_lacks, ", ")});
  }
  if (context.job.fit == nullptr || context.building.walls.empty()) return;
  const Words& words = context.words;
  const ground::SlabFit& fit = *context.job.fit;
  const auto towards = [&](Length way, std::string_view positive, std::string_view negative) {
    return fill_in(way < Length() ? negative : positive, {tape_text(magnitude(way), context.tape())});
  };
  table.add_heading(std::string(words.found_fit));
  table.add_row({std::string(words.found_fit_shift), towards(fit.east, words.found_east, words.found_west), "", towards(fit.north, words.found_north, words.found_south)});
  const Wall& side = context.wall(0);
  // The first side runs west from where the building is shifted: turned to the left, its far end goes south.
  const Length way = length_of(-fit.turn * static_cast<double>(side.actual.in_nanometres()) * 1e-9);
  table.add_row({fill_in(words.found_fit_turn, {side.name}),
                 fill_in(words.found_fit_turned, {towards(way, words.found_north, words.found_south), side.end_name}), "", ""});
  table.add_row({std::string(words.found_fit_room), tape_text(fit.room, context.tape()), tape_text(fit.room_before, context.tape()), ""});
}

}  // namespace

Group draw_found_plan(const Context& context, const Area& room, Scale scale) {
  Pad pad(Role::Figure, std::string(context.words.title_found_plan));
  Group plan = draw_plan(context, 1, PlanDetail::Site, room, scale);
  Placer lettered(plan, room);
  pad.add(std::move(plan));
  if (context.job.found == nullptr) return std::move(pad).take();
  const std::vector<Point> points = corner_points(context, room, scale);
  // Lines first, so that the ways of the pegs lie over them; the pegs' words have the first choice of places.
  Pad moves(Role::Figure, std::string(context.words.found_moves));
  draw_moves(moves, context, context.job.found->tape, points, lettered, scale);
  if (!context.job.found->tape.moves.empty()) pad.write({room.left, room.bottom}, std::string(context.words.found_ellipse_note), {kSmallText});
  draw_lines(pad, context, context.job.found->tape, points, walls_drawn(context, room, scale), lettered);
  pad.add(std::move(moves).take());
  return std::move(pad).take();
}

Table found_table(const Context& context) {
  const Words& words = context.words;
  Table table = new_table(context.page.drawing.width(), words.title_found, {{std::string(words.found_what), 26}, {std::string(words.found_read), 22}, {std::string(words.found_against), 22}, {std::string(words.found_says), 30}}, kSmallText);
  if (context.job.found == nullptr) return table;
  const AsFound& found = *context.job.found;
  add_tapings(table, context, found.tape);
  add_moves(table, context, found.tape);
  if (found.levels) add_levels(table, context, *found.levels), add_instrument(table, context, *found.levels), add_doors(table, context, *found.levels);
  if (found.levels && found.levels->bed) add_bed(table, context, *found.levels);
  add_dowels(table, context);
  add_saving(table, context);
  add_fit(table, context);
  return table;
}

}  // namespace stringcourse::sheet
