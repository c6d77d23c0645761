// The top of each side from above: pieces of plate, their bolts with running distances from one corner, trusses, bars
// and laps that stand there, and stretches in which no bolt can stand.
#include <algorithm>

#include "bond/layout_parts.hpp"
#include "measure/digits.hpp"
#include "paper/running_labels.hpp"
#include "sheet/bare.hpp"
#include "sheet/hook_words.hpp"
#include "sheet/registry.hpp"
#include "sheet/strip.hpp"

namespace stringcourse::sheet {
namespace {

constexpr std::size_t kBandsOnSheet = 2;
constexpr Micrometres kEnds = 16'000;   // at each end of a band: the corner's name
constexpr Micrometres kUnder = 18'500;  // under the wall: lengths of pieces, stretches without a bolt, trusses
constexpr Micrometres kPieces = 6'000;  // of that: to the line of the pieces' lengths
constexpr Micrometres kLeader = 8'000, kPlumb = 3'000, kBolt = 1'300, kTruss = 2'500;
constexpr Scale kLargestTop{20}, kSmallestTop{50};
constexpr Lettering kNote{kSmallText, Weight::Regular, Anchor::Start, Ink::Black, 0},
    kMiddle{kSmallText, Weight::Regular, Anchor::Middle, Ink::Black, 0};

using setout::PlatePiece;

/// What stands on the drawings of a sheet, so that its notes tell of nothing else.
struct Drawn {
  bool bars = false, laps = false, trusses = false, gaps = false;
};

/// One side's top, or a part of it.
struct TopView {
  const Context& context;
  int wall;
  Part part;
  WallView view;
  Micrometres face, back;  // the outer face is the lower one
  Drawn drawn = {};

  [[nodiscard]] Micrometres middle() const { return (face + back) / 2; }
  [[nodiscard]] Area box(Length from, Length to, Micrometres low, Micrometres high) const {
    return {view.at(std::min(to, part.to)), low, view.at(std::max(from, part.from)), high};
  }
  [[nodiscard]] int top_course() const { return static_cast<int>(context.building.courses.size()); }
};

bool has_plate(const Context& context, int wall) {
  return std::ranges::contains(context.answer.plates, wall, &PlatePiece::wall);
}

std::vector<const PlatePiece*> pieces_shown(const TopView& top) {
  std::vector<const PlatePiece*> pieces;
  for (const PlatePiece& piece : top.context.answer.plates) {
    if (piece.wall == top.wall && piece.from < top.part.to && piece.to > top.part.from) pieces.push_back(&piece);
  }
  return pieces;
}

void draw_masonry(Pad& pad, const TopView& top) {
  for (const Run& run : bond::runs_in(top.context.layout, top.wall, top.top_course())) {
    const Area box = top.box(run.start, run.end, top.face, top.back);
    if (!box.empty()) pad.box(box, {Pen::Medium}, Fill::Tint);
  }
}

/// Half as deep as the wall, for the job does not say how wide a plate is; its length to scale.
void draw_plates(Pad& pad, const TopView& top) {
  const Micrometres rim = (top.back - top.face) / 4;
  for (const PlatePiece* piece : pieces_shown(top))
    pad.box(top.box(piece->from, piece->to, top.face + rim, top.back - rim), {Pen::Thick}, Fill::White);
}

void draw_trusses(Pad& pad, TopView& top) {
  const Length reach = top.context.wall(top.wall).actual;
  for (const ResolvedTrusses& trusses : top.context.building.top->trusses) {
    if (trusses.wall != top.wall) continue;
    for (Length at = trusses.first.distance_from_start(); Length() <= at && at <= reach; at += trusses.step) {
      if (!top.part.holds(at)) continue;
      const Micrometres x = top.view.at(at);
      pad.line({x, top.face - kTruss}, {x, top.back + kTruss}, {Pen::Thin, Dash::Dashed, Ink::Black});
      top.drawn.trusses = true;
    }
  }
}

void draw_bars(Pad& pad, TopView& top) {
  const auto runs = bond::runs_in(top.context.layout, top.wall, top.top_course());
  for (const bond::WallBar& bar : bond::bars_on_wall(top.context.building, top.context.layout, top.wall)) {
    if (bar.last_course != top.top_course() || !top.part.holds(bar.centre)) continue;
    // One in the square of a corner that the other side runs through is drawn on that side.
    const bool here =
        std::ranges::any_of(runs, [&](const Run& run) { return run.start <= bar.centre && bar.centre <= run.end; });
    if (!here) continue;
    pad.dot({top.view.at(bar.centre), top.face + top.view.scale.paper(bar.off_face)}, 700);
    top.drawn.bars = true;
  }
}

/// Where bars of a bond beam in the top course lie side by side: between the plate and the inner face.
void draw_laps(Pad& pad, TopView& top) {
  for (const steel::BarPiece& piece : top.context.answer.bar_pieces.pieces) {
    if (piece.use != steel::BarUse::Beam || piece.wall != top.wall || piece.first_course != top.top_course()) continue;
    if (piece.lap <= Length()) continue;
    const Area box = top.box(piece.to - piece.lap, piece.to, top.face, top.back);
    if (box.empty()) continue;
    const Micrometres y = top.back - (top.back - top.face) / 8;
    pad.line({box.left, y}, {box.right, y}, {Pen::Heavy});
    top.drawn.laps = true;
  }
}

void draw_bolts(Pad& pad, const TopView& top) {
  const Micrometres y = top.middle();
  for (const PlatePiece* piece : pieces_shown(top)) {
    for (const setout::Bolt& bolt : piece->bolts) {
      if (!top.part.holds(bolt.at)) continue;
      const Micrometres x = top.view.at(bolt.at);
      pad.dot({x, y}, kBolt, Fill::White);
      Pad cross(Role::Figure);  // over the circle: dots of a group lie over its lines
      cross.line({x - kBolt, y}, {x + kBolt, y}, {Pen::Medium}).line({x, y - kBolt}, {x, y + kBolt}, {Pen::Medium});
      pad.add(std::move(cross).take());
    }
  }
}

/// A bolt is asked for there and none can stand: a bar under the wall with its words.
void draw_gaps(Pad& pad, TopView& top) {
  const std::string text(top.context.words.top.no_bolt_here);
  for (const PlatePiece* piece : pieces_shown(top)) {
    for (const setout::NoBolt& gap : piece->without) {
      const Area box = top.box(gap.after, std::max(gap.by, gap.next.value_or(gap.by)), top.face, top.back);
      if (box.right < box.left) continue;
      const Micrometres y = top.face - kPieces - 2'500;
      pad.line({box.left, y}, {box.right, y}, {Pen::Heavy, Dash::Solid, Ink::Red})
          .line({box.left, y}, {box.left, top.face}, {Pen::Thin})
          .line({box.right, y}, {box.right, top.face}, {Pen::Thin});
      const Micrometres half = text_width(text, kSmallText, Weight::Bold) / 2;
      const Micrometres x = std::clamp(box.centre().x, top.view.at(top.part.to) + half,
                                       std::max(top.view.at(top.part.from) - half, top.view.at(top.part.to) + half));
      pad.write({x, y - kSmallText - 1'200}, text, {kSmallText, Weight::Bold, Anchor::Middle, Ink::Black, 0});
      top.drawn.gaps = true;
    }
  }
}

void draw_piece_lengths(Pad& pad, const TopView& top) {
  const Tape tape = top.context.tape();
  for (const PlatePiece* piece : pieces_shown(top)) {
    // What a match line cuts through is dimensioned where it begins.
    if (!top.part.holds(piece->from) && !(top.part.first() && piece->from <= top.part.from)) continue;
    if (piece->to > top.part.to && !top.part.last()) continue;
    const std::string length = tape_text(rounded_to(piece->to - piece->from, tape_step(tape)), tape);
    pad.add(level_dimension({top.view.at(piece->to), top.face}, {top.view.at(piece->from), top.face},
                            top.face - kPieces, length, kMiddle));
  }
}

/// Bolts by their running distances; ends of pieces too, told as such.
void draw_marks(Pad& pad, const TopView& top, const Area& room) {
  const Length step = tape_step(top.context.tape());
  std::vector<RunningLabel> labels;
  const auto add = [&](Length at, std::string_view what) {
    if (!top.part.holds(at)) return;
    const Length mark = rounded_to(at, step);
    const bool known = std::ranges::any_of(labels, [&](const RunningLabel& one) { return one.at == mark; });
    if (!known) labels.push_back({top.view.at(at), mark, what.empty(), std::string(what), {}});
  };
  for (const PlatePiece* piece : pieces_shown(top)) {
    for (const setout::Bolt& bolt : piece->bolts) add(bolt.at, {});
  }
  for (const PlatePiece* piece : pieces_shown(top)) {
    for (const Length end : {piece->from, piece->to}) {
      if (end > Length()) add(end, top.context.words.top.plate_ends);
    }
  }
  std::ranges::sort(labels, {}, &RunningLabel::at);
  pad.add(draw_running_labels(std::move(labels), room, {kLeader, kPlumb, WhatStands::Beside}, LabelSide::Above,
                              top.context.tape()));
}

/// "Trusses: the first at 2'-0", then every 2'-0" toward B."
std::string trusses_text(const TopView& top) {
  const Context& context = top.context;
  const Wall& wall = context.wall(top.wall);
  std::vector<std::string> parts;
  for (const ResolvedTrusses& trusses : context.building.top->trusses) {
    if (trusses.wall != top.wall) continue;
    const Length step = tape_step(context.tape());
    const auto text = [&](Length length) { return both_forms(rounded_to(length, step), context.tape()); };
    parts.push_back(
        words::fill_in(context.words.top.trusses_given,
                       {text(trusses.first.distance_from_start()), text(magnitude(trusses.step)),
                        short_name(context.names, trusses.step > Length() ? wall.end_name : wall.start_name)}));
  }
  return joined(parts, " ");
}

void write_corners(Pad& pad, const TopView& top) {
  const Wall& wall = top.context.wall(top.wall);
  const auto write = [&](const std::string& name, Micrometres x, Anchor anchor, Ink ink) {
    write_setting(pad, {x, top.middle()},
                  fitting_name(top.context, name, {kEnds - 4'000, 8'000}, {kText, Weight::Bold, anchor, ink, 0},
                               kDrawingHeights));
  };
  if (top.part.first()) write(wall.start_name, top.view.at(top.part.from) + 3'000, Anchor::Start, Ink::Blue);
  if (top.part.last()) write(wall.end_name, top.view.at(top.part.to) - 3'000, Anchor::End, Ink::Black);
}

/// A part ends at a match line.
void draw_match_lines(Pad& pad, const TopView& top) {
  const auto line = [&](Length at) {
    const Micrometres x = top.view.at(at);
    pad.line({x, top.face - 4'000}, {x, top.back + 4'000}, {Pen::Thin, Dash::Dashed, Ink::Blue});
  };
  if (!top.part.first()) line(top.part.from);
  if (!top.part.last()) line(top.part.to);
}

std::string title_of(const Building& building, const words::SheetWords& words, int wall) {
  return words::fill_in(words.top.title_plate, {building.walls[static_cast<std::size_t>(wall)].name});
}

Drawn draw_top(Pad& sheet, const Context& context, const Band& band, Scale scale, const Area& room) {
  const Part& part = band.part;
  const Micrometres wide = scale.paper(part.to) - scale.paper(part.from), right = room.centre().x + wide / 2;
  const Micrometres face = room.bottom + kUnder,
                    back = face + scale.paper(context.building.series_of(context.wall(band.wall)).thickness);
  TopView top{context, band.wall, part, {scale, right, part.from}, face, back};
  const std::string title = title_of(context.building, context.words, band.wall);
  Pad pad(Role::Figure, title);
  const Micrometres under = write_band_heading(pad, room, part_title(context.words, title, part.index, part.of),
                                               marks_from_text(context.building, band.wall, context.words));
  draw_masonry(pad, top);
  draw_plates(pad, top);
  draw_trusses(pad, top);
  draw_bars(pad, top);
  draw_laps(pad, top);
  draw_bolts(pad, top);
  draw_gaps(pad, top);
  draw_piece_lengths(pad, top);
  draw_match_lines(pad, top);
  draw_marks(pad, top, {room.left, back, room.right, under - 1'500});
  write_corners(pad, top);
  const std::string trusses = trusses_text(top);
  if (!trusses.empty())
    write_paragraph(pad, {room.left, room.bottom + paragraph_height(trusses, room.width(), kNote)}, room.width(),
                    trusses, kNote);
  sheet.add(std::move(pad).take());
  return top.drawn;
}

/// What a sheet's marks mean, each where one of them stands on it.
std::string notes_of(const Context& context, const Drawn& drawn) {
  const words::TopWords& words = context.words.top;
  std::vector<std::string> parts{std::string(words.plan_bolts)};
  const auto add = [&](bool stands, std::string_view text) {
    if (stands) parts.emplace_back(text);
  };
  add(drawn.bars, words.plan_bars), add(drawn.trusses, words.plan_trusses), add(drawn.laps, words.plan_laps);
  parts.emplace_back(words.plan_plate);
  add(drawn.gaps, words.plan_gaps);
  return joined(parts, " ");
}

/// With all of it.
Micrometres notes_height(const Context& context, const Area& room) {
  return paragraph_height(notes_of(context, {true, true, true, true}), room.width(), kNote);
}

WallParts parts_of_top(const Context& context, int wall) {
  const bond::WallReach reach = bond::reach_of_wall(context.building, context.layout, wall);
  const Micrometres room = context.page.drawing.width() - 2 * kEnds;
  const Scale scale = fitting_scale(reach.to - reach.from, Length(), room, room, kLargestTop);
  if (scale.denominator <= kSmallestTop.denominator) return {scale, {{reach.from, reach.to, 1, 1}}};
  return {kSmallestTop, parts_of(reach.from, reach.to, kSmallestTop.shown(room), tape_step(context.tape()))};
}

std::string title_of(const Context& context, const std::vector<Band>& bands) {
  std::string title = title_of(context.building, context.words, bands.front().wall);
  if (bands.back().wall != bands.front().wall)
    title = words::fill_in(context.words.title_both_strips,
                           {title, title_of(context.building, context.words, bands.back().wall)});
  return title;
}

std::vector<PlannedSheet> top_sheets(const Context& context) {
  std::vector<PlannedSheet> sheets;
  PlannedSheet sheet{.scale = Scale{1}};
  const auto close = [&] {
    if (sheet.bands.empty()) return;
    sheet.title = title_of(context, sheet.bands);
    sheets.push_back(std::exchange(sheet, PlannedSheet{.scale = Scale{1}}));
  };
  for (int wall = 0; wall < static_cast<int>(context.building.walls.size()); ++wall) {
    if (!has_plate(context, wall)) continue;
    const WallParts parts = parts_of_top(context, wall);
    for (const Part& part : parts.parts) {
      if (sheet.scale->denominator < parts.scale.denominator) sheet.scale = parts.scale;
      sheet.bands.push_back({wall, 0, part});
      if (sheet.bands.size() == kBandsOnSheet) close();
    }
  }
  close();
  return sheets;
}

Group draw_top_sheet(const Context& context, const PlannedSheet& sheet) {
  const Area& room = context.page.drawing;
  Pad pad(Role::Figure, sheet.title);
  const Micrometres foot = notes_height(context, room) + 1'500;
  const Micrometres high = (room.height() - foot) / static_cast<Micrometres>(kBandsOnSheet);
  Drawn drawn;
  Micrometres top = room.top;
  for (const Band& band : sheet.bands) {
    if (top != room.top) pad.line({room.left, top}, {room.right, top}, {Pen::Thin, Dash::Solid, Ink::Grey});
    const Drawn here = draw_top(pad, context, band, *sheet.scale, {room.left, top - high, room.right, top});
    drawn = {drawn.bars || here.bars, drawn.laps || here.laps, drawn.trusses || here.trusses, drawn.gaps || here.gaps};
    top -= high;
  }
  const std::string notes = notes_of(context, drawn);
  write_paragraph(pad, {room.left, room.bottom + paragraph_height(notes, room.width(), kNote)}, room.width(), notes,
                  kNote);
  return std::move(pad).take();
}

/// One side's whole top, as wide as it is.
Drawing top_drawing(const Context& context, SheetName name, int number) {
  const int wall = number - 1;
  const bond::WallReach reach = bond::reach_of_wall(context.building, context.layout, wall);
  const Scale scale = fitting_scale(reach.to - reach.from, Length(), kLargest, kLargest, Scale{25});
  const Micrometres wide = std::max(scale.paper(reach.to - reach.from) + 2 * kEnds, Micrometres{190'000});
  Sheet sheet = bare_sheet(std::move(name), wide + 2 * kRim, 105'000);
  Context on_sheet = context;
  on_sheet.page.drawing = inside_rim(sheet);
  Area room = on_sheet.page.drawing;
  Pad pad(Role::Figure, sheet.title);
  const Micrometres foot = notes_height(context, room) + 1'500;
  const Drawn drawn = draw_top(pad, on_sheet, {wall, 0, {reach.from, reach.to, 1, 1}}, scale,
                               {room.left, room.bottom + foot, room.right, room.top});
  const std::string notes = notes_of(context, drawn);
  write_paragraph(pad, {room.left, room.bottom + paragraph_height(notes, room.width(), kNote)}, room.width(), notes,
                  kNote);
  sheet.groups.push_back(std::move(pad).take());
  return {std::move(sheet), scale, 0, wall, {}};
}

constinit const DrawingKind kTopDrawing{
    .name = "plate-",
    .has =
        [](const Context& context, int number) {
          return number <= static_cast<int>(context.building.walls.size()) && has_plate(context, number - 1);
        },
    .title = [](const Building& building, const words::SheetWords& words,
                int number) { return title_of(building, words, number - 1); },
    .draw = top_drawing,
};

}  // namespace

constinit const SheetKind kPlatePlanSheet{
    .name = "plate",
    .hold_point = HoldPoint::Top,
    .purpose = &words::SheetWords::purpose_bolts,
    .caution = {"engineer"},
    .sheets = top_sheets,
    .draw = draw_top_sheet,
    .drawing = &kTopDrawing,
};

}  // namespace stringcourse::sheet
