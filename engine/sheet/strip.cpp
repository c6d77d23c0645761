#include "sheet/strip.hpp"

#include <algorithm>

#include "measure/digits.hpp"
#include "setout/cleanouts.hpp"
#include "setout/laying_order.hpp"
#include "sheet/strip_parts.hpp"

namespace stringcourse::sheet {
namespace {

constexpr Micrometres kEndRoom = 14'000;  // at each end: what the end is
constexpr Micrometres kArrow = 11'000;

constexpr Lettering kSmall{kSmallText, Weight::Regular, Anchor::Middle, Ink::Black, 0};

Strip strip_of(const Context& context, const Band& band, Scale scale, const Area& room) {
  const Part& part = band.part;
  const Micrometres wide = scale.paper(part.to) - scale.paper(part.from), right = room.centre().x + wide / 2;
  Strip strip{context, room, band.wall, band.course, part, scale, {scale, right, part.from}};
  strip.thick = scale.paper(context.building.series_of(context.wall(band.wall)).thickness);
  strip.face = room.bottom + kUnderStrip;
  strip.frame = {right - wide, room.bottom, right, room.top};
  strip.bars = bond::bars_on_wall(context.building, context.layout, band.wall);
  return strip;
}

bool holds_bar(const Strip& strip, Length from, Length to) {
  return std::any_of(strip.bars.begin(), strip.bars.end(), [&](const bond::WallBar& bar) {
    return stands_in(strip, bar) && bar.centre > from && bar.centre < to;
  });
}

// Number and letter of one unit, over its inner face; what there is no room for is left to hatch and label.
void write_number(Pad& pad, const Strip& strip, const Area& box, const Piece& piece, const std::string& letter) {
  const std::string number = number_text(piece.number);
  const Micrometres room = box.width() - 800, x = box.centre().x;
  const std::string whole = letter.empty() ? number : number + " " + letter;
  for (const auto& [text, height] :
       {std::pair(whole, kText), std::pair(whole, kSmallText), std::pair(number, kSmallText)}) {
    const Lettering lettering{height, Weight::Regular, Anchor::Middle, Ink::Black, 0};
    if (!fits(text, room, lettering)) continue;
    pad.write({x, strip.back() + 1'300}, text, lettering);
    // A mark that has no room beside the number stands over it.
    if (text != whole && fits(letter, box.width() + 800, lettering))
      pad.write({x, strip.back() + 2'100 + height}, letter, lettering);
    return;
  }
  const Lettering turned{kSmallText, Weight::Regular, Anchor::Start, Ink::Black, 1};
  if (box.width() >= kSmallText + 400) pad.write({x + kSmallText / 2, strip.back() + 1'000}, number, turned);
}

// The cells of a unit: thin, and medium round a bar.
void draw_cells(Pad& pad, const Strip& strip, const Piece& piece, const Area& box, const setout::OnWall& extent) {
  const Series& series = strip.context.building.series_of(strip.context.wall(strip.wall));
  const Micrometres low = strip.face + strip.scale.paper(extent.shallow + series.face_shell),
                    high = strip.face + strip.scale.paper(extent.deep - series.face_shell);
  const bool cut = bond::is_saw_cut(piece);
  for (const CellSpan& cell : bond::cells_of(series, piece)) {
    const Length start = piece.start.nearest_nanometre();
    const bool barred = holds_bar(strip, start + cell.from, start + cell.to);
    if (cut && !barred) continue;
    const Area inside = clipped_box({strip.view.at(start + cell.to), low, strip.view.at(start + cell.from), high}, box);
    pad.box(inside, {barred ? Pen::Medium : Pen::Thin}, Fill::White);
  }
}

// Length of a cut inside it, on white, level or turned.
void write_cut_length(Pad& pad, const Strip& strip, const Piece& piece, const Area& box) {
  const Length start = piece.start.nearest_nanometre();
  if (holds_bar(strip, start, start + piece.length)) return;
  const std::string text = saw_text(strip.context, piece.length);
  const Micrometres wide = text_width(text, kSmallText, Weight::Regular) / 2 + 500, high = kSmallText / 2 + 500;
  const Point middle = box.centre();
  Lettering lettering{kSmallText, Weight::Regular, Anchor::Middle, Ink::Black, 0};
  if (2 * wide < box.width() && 2 * high < box.height()) {
    pad.box({middle.x - wide, middle.y - high, middle.x + wide, middle.y + high}, {Pen::None}, Fill::White);
    pad.write({middle.x, middle.y - kSmallText / 2}, text, lettering);
  } else if (2 * high < box.width() && 2 * wide < box.height()) {
    lettering.quarter_turns = 1;
    pad.box({middle.x - high, middle.y - wide, middle.x + high, middle.y + wide}, {Pen::None}, Fill::White);
    pad.write({middle.x + kSmallText / 2, middle.y}, text, lettering);
  }
}

Group draw_unit(const Strip& strip, const Run& run, const Piece& piece) {
  const Context& context = strip.context;
  const setout::OnWall extent = setout::extent_of(context.building, run, piece);
  const Area box = strip.box(extent);
  Pad pad(Role::Figure, bond::piece_name(*context.as_named, run, piece));
  if (box.empty()) return std::move(pad).take();
  const Exception exception = exception_of(piece);
  const bool cut = bond::is_saw_cut(piece);
  pad.box(box, {Pen::Medium}, exception.fill == Fill::None ? Fill::White : exception.fill);
  draw_cells(pad, strip, piece, box, extent);
  if (cut) write_cut_length(pad, strip, piece, box);
  const bool far_end_shown = strip.part.holds(bond::far_end(piece).nearest_nanometre());
  const std::string letter = cut ? cut_mark(context, context.wall(strip.wall).series, piece) : exception.mark;
  if (far_end_shown) write_number(pad, strip, box, piece, letter);
  return std::move(pad).take();
}

void draw_units(Pad& pad, const Strip& strip) {
  for (const Run& run : bond::runs_in(strip.context.layout, strip.wall, strip.course)) {
    for (const Piece& piece : bond::pieces_of(strip.context.layout, run)) {
      Group unit = draw_unit(strip, run, piece);
      if (!unit.shapes.empty()) pad.add(std::move(unit));
      // A corner set's filler or short leg.
      const auto parts = setout::corner_parts_of(strip.context.building, run, piece);
      for (std::size_t k = 1; k < parts.size(); ++k) pad.box(strip.box(parts[k].place), {Pen::Medium}, Fill::White);
    }
  }
}

// Cleanouts: a black wedge at each bar's cell, in the face that it opens through.
void draw_cleanouts(Pad& pad, const Strip& strip) {
  for (const setout::WallCleanout& cleanout :
       setout::cleanouts_in(strip.context.building, strip.context.layout, strip.wall, strip.course)) {
    if (!strip.part.holds(cleanout.along)) continue;
    const Micrometres x = strip.view.at(cleanout.along), y = cleanout.outward ? strip.face : strip.back(),
                      way = cleanout.outward ? 1 : -1;
    pad.area({{x - 1'600, y}, {x + 1'600, y}, {x, y + way * 1'800}}, {Pen::Thin}, Fill::Black);
  }
}

void draw_bars(Pad& pad, const Strip& strip) {
  for (const bond::WallBar& bar : strip.bars) {
    if (!stands_in(strip, bar) || !strip.part.holds(bar.centre)) continue;
    pad.dot({strip.view.at(bar.centre), strip.face + strip.scale.paper(bar.off_face)}, 1'000);
  }
}

// Name over size; where both have no room, the name alone: sizes stand in the opening schedule.
void write_in_opening(Pad& pad, const Context& context, const Area& box, const std::string& name,
                      const std::string& size) {
  const Lettering bold{kText, Weight::Bold, Anchor::Middle, Ink::Black, 0};
  const Micrometres wide = box.width() - 2'000, high = box.height() - 1'000;
  const Micrometres under = kSmallText + 1'400;
  const auto said = set_in(size, {wide, kSmallText}, kSmall, std::span(kDrawingHeights).last(1));
  const Setting named = fitting_name(context, name, {wide, said ? high - under : high}, bold, kDrawingHeights);
  const bool both = said && named.height + under <= high;
  write_setting(pad, {box.centre().x, box.centre().y + (both ? under / 2 : 0)}, named);
  if (both) pad.write({box.centre().x, box.centre().y - (named.height + under) / 2}, said->lines.front(), kSmall);
}

void draw_openings(Pad& pad, const Strip& strip) {
  for (const ResolvedOpening& opening : strip.context.building.openings) {
    if (opening.wall != strip.wall || strip.course < opening.first_course || strip.course > opening.last_course)
      continue;
    const Position from = opening.from_in(strip.course), to = opening.to_in(strip.course);
    const Area box = strip.box(from.distance_from_start(), to.distance_from_start());
    if (box.empty()) continue;
    pad.box(box, {Pen::Thin, Dash::Dashed, Ink::Black});
    const std::string size =
        words::fill_in(strip.context.words.opening_size,
                       {height_text(strip.context, to - from), height_text(strip.context, opening.height())});
    write_in_opening(pad, strip.context, box, opening.name, size);
  }
}

/// Paper along the strip, from left to right.
struct Reach {
  Micrometres from, to;
};

// Where the arrows to the corners lie under the strip.
std::vector<Reach> end_arrows(const Strip& strip) {
  const auto runs = bond::runs_in(strip.context.layout, strip.wall, strip.course);
  const auto turns = [](RunEnd end) { return end == RunEnd::ThroughCorner || end == RunEnd::ButtCorner; };
  std::vector<Reach> arrows;
  if (runs.empty()) return arrows;
  const Micrometres length = std::min(kArrow, strip.frame.width());
  if (strip.part.first() && turns(runs.front().at_start)) {
    const Micrometres edge = strip.view.at(runs.front().start);
    arrows.push_back({edge - length, edge});
  }
  if (strip.part.last() && turns(runs.back().at_end)) {
    const Micrometres edge = strip.view.at(runs.back().end);
    arrows.push_back({edge, edge + length});
  }
  return arrows;
}

// The closing unit: blue marks where mortar is buttered, and the words at the strip's foot. Adds what the words take.
void draw_closures(Pad& pad, const Strip& strip, std::vector<Area>& taken) {
  const Layout& layout = strip.context.layout;
  for (const setout::Closure& closure : setout::closures(strip.context.building, layout, strip.course)) {
    if (layout.runs[static_cast<std::size_t>(closure.run)].wall != strip.wall) continue;
    const Piece& piece = layout.pieces[closure.piece];
    const Length from = piece.start.nearest_nanometre(), to = bond::far_end(piece).nearest_nanometre();
    const Length middle = from + (to - from).half_down();
    const Area box = strip.box(from, to);
    if (box.empty() || !strip.part.holds(middle)) continue;
    const Stroke blue{Pen::Heavy, Dash::Solid, Ink::Blue};
    pad.line({box.left, box.bottom}, {box.left, box.top}, blue)
        .line({box.right, box.bottom}, {box.right, box.top}, blue);
    // On one line under the boxes, within the masonry, where no other closure's words stand: the sheet tells what the
    // blue marks mean.
    const Micrometres before = 12'000, behind = 18'000;
    if (strip.frame.width() < before + behind) continue;
    const Micrometres x = std::clamp(strip.view.at(middle), strip.frame.left + before, strip.frame.right - behind);
    const Micrometres foot = strip.room.bottom + 1'000;
    const Area room{x - before, foot - 500, x + behind, foot + kSmallText + 500};
    if (std::ranges::any_of(taken, [&](const Area& area) { return meets(area, room); })) continue;
    Lettering words = kSmall;
    words.anchor = Anchor::End;
    pad.write({x - 600, foot}, std::string(strip.context.words.butter), words);
    words.anchor = Anchor::Start;
    pad.write({x + 600, foot}, std::string(strip.context.words.both_ends), words);
    taken.push_back(room);
  }
}

int other_wall(const Context& context, const WallEnd& end, int wall) {
  if (end.kind == EndKind::Corner) {
    const Corner& corner = context.building.corners[static_cast<std::size_t>(end.corner)];
    return corner.arriving == wall ? corner.leaving : corner.arriving;
  }
  return end.kind == EndKind::Junction ? context.building.junctions[static_cast<std::size_t>(end.junction)].main : -1;
}

std::string end_role(const Context& context, RunEnd end, const std::string& met) {
  if (end == RunEnd::ThroughCorner) return std::string(context.words.runs_through);
  if (end == RunEnd::ButtCorner) return words::fill_in(context.words.butts, {met});
  if (end == RunEnd::TiedJunction || end == RunEnd::LappedButt) return words::fill_in(context.words.meets, {met});
  return end == RunEnd::FreeEnd ? std::string(context.words.free_end) : std::string();
}

// An arrow under the outer face towards the corner: to the corner's face where this side runs through; stopped by a
// stroke at the joint where it butts.
void draw_end_arrow(Pad& pad, const Strip& strip, RunEnd kind, Micrometres edge, Micrometres outward) {
  if (kind != RunEnd::ThroughCorner && kind != RunEnd::ButtCorner) return;
  const Micrometres y = strip.face - 3'000;
  const Micrometres length = std::min(kArrow, strip.frame.width());
  pad.add(arrow({edge - outward * length, y}, {edge, y}, {Pen::Medium}));
  if (kind == RunEnd::ButtCorner) pad.line({edge, y - 1'800}, {edge, y + 1'800}, {Pen::Thick});
}

/// What the words under it take.
Area draw_end(Pad& pad, const Strip& strip, bool at_start, const Run& run) {
  const Context& context = strip.context;
  const Wall& wall = context.wall(strip.wall);
  const RunEnd kind = at_start ? run.at_start : run.at_end;
  // Where an opening stands at the wall's very end, the name stands beyond it.
  const Length place = at_start ? std::min(run.start, kind == RunEnd::Jamb ? Length() : run.start)
                                : std::max(run.end, kind == RunEnd::Jamb ? wall.actual : run.end);
  const int other = other_wall(context, at_start ? wall.start : wall.end, strip.wall);
  const std::string met = other < 0 ? std::string() : context.wall(other).name;
  const std::string short_met = short_name(context.names, met);
  const Micrometres outward = at_start ? 1 : -1;
  Micrometres edge = strip.view.at(place);
  draw_end_arrow(pad, strip, kind, edge, outward);
  if (kind == RunEnd::ButtCorner && other >= 0) {
    const Length leg =
        corner_leg(context.building.series_of(context.wall(other)), context.building.corner_sets_stocked);
    const Micrometres reach = edge + outward * strip.scale.paper(leg);
    const Area met_unit{std::min(edge, reach), strip.face, std::max(edge, reach), strip.back()};
    pad.box(met_unit, {Pen::Thin, Dash::Dashed, Ink::Black});
    edge = reach;
  }
  const Ink ink = at_start ? Ink::Blue : Ink::Black;
  // From the band's foot up, past the strip.
  const Lettering role{kSmallText, Weight::Regular, Anchor::Start, Ink::Black, 1};
  const Micrometres middle = strip.face + strip.thick / 2, high = 30'000;
  const std::string says = end_role(context, kind, met);
  const std::string told = fits(says, high, role) ? says : end_role(context, kind, short_met);
  const Micrometres beside = edge + outward * 3'500, foot = strip.room.bottom + 1'000;
  pad.write({beside + kSmallText / 2, foot}, told, role);
  const Lettering name{kLargeText, Weight::Bold, at_start ? Anchor::Start : Anchor::End, ink, 0};
  const Micrometres room = at_start ? strip.room.right - edge - 6'500 : edge - 6'500 - strip.room.left;
  write_setting(pad, {edge + outward * 6'500, middle},
                fitting_name(context, at_start ? wall.start_name : wall.end_name,
                             {room, strip.thick + 2 * kUnderStrip - 4'000}, name, kLargeHeights));
  return {beside - kSmallText / 2 - 700, foot, beside + kSmallText / 2 + 700,
          foot + text_width(told, role.height, role.weight)};
}

void draw_ends(Pad& pad, const Strip& strip, std::vector<Area>& taken) {
  const auto runs = bond::runs_in(strip.context.layout, strip.wall, strip.course);
  if (runs.empty()) return;
  for (const Reach& arrow : end_arrows(strip))
    taken.push_back({arrow.from - 1'000, strip.face - 5'000, arrow.to + 1'000, strip.face});
  if (strip.part.first()) taken.push_back(draw_end(pad, strip, true, runs.front()));
  if (strip.part.last()) taken.push_back(draw_end(pad, strip, false, runs.back()));
}

void draw_match_lines(Pad& pad, const Strip& strip) {
  const Stroke stroke{Pen::Medium, Dash::DashDot, Ink::Black};
  const Lettering lettering{kSmallText, Weight::Regular, Anchor::Start, Ink::Black, 1};
  const Micrometres foot = strip.room.bottom + 1'000;
  const auto draw = [&](Micrometres x, int number, Micrometres outward) {
    pad.line({x, strip.face - 4'000}, {x, strip.back() + 4'000}, stroke);
    const std::string text = words::fill_in(strip.context.words.match_line, {number_text(number)});
    pad.write({x + outward * 4'000 + kSmallText / 2, foot}, text, lettering);
  };
  if (!strip.part.first()) draw(strip.frame.right, strip.part.index - 1, 1);
  if (!strip.part.last()) draw(strip.frame.left, strip.part.index, -1);
}

// The unit of a lapped wall that fills the slot in this course.
void draw_slots(Pad& pad, const Strip& strip) {
  const Building& building = strip.context.building;
  for (const Junction& junction : building.junctions) {
    if (junction.main != strip.wall) continue;
    const Area box = strip.box(junction.from.distance_from_start(), junction.to.distance_from_start());
    const auto runs = bond::runs_in(strip.context.layout, strip.wall, strip.course);
    const Length middle = junction.from.distance_from_start() + (junction.to - junction.from).half_down();
    const bool filled =
        std::any_of(runs.begin(), runs.end(), [&](const Run& run) { return run.start < middle && middle < run.end; });
    if (box.empty() || filled) continue;
    pad.box(box, {Pen::Thin, Dash::Dashed, Ink::Black});
    const Lettering name{kSmallText, Weight::Bold, Anchor::Middle, Ink::Black, 1};
    write_setting(pad, box.centre(),
                  fitting_name(strip.context, strip.context.wall(junction.abutting).name,
                               {box.height() - 600, box.width()}, name, std::span(kDrawingHeights).last(1)));
  }
}

// Where a part may best end: at a block's end, so that no unit is torn in two; every part still fits.
Length snapped_border(const Context& context, int wall, int course, Length border, Length least, Length most) {
  Length best = border, off = Length::millimetres(10'000);
  for (const Run& run : bond::runs_in(context.layout, wall, course)) {
    for (const Piece& piece : bond::pieces_of(context.layout, run)) {
      const Length end = bond::far_end(piece).nearest_nanometre();
      const Length away = end > border ? end - border : border - end;
      if (end < least || end > most || away >= off) continue;
      best = end;
      off = away;
    }
  }
  return best;
}

// Every number of these courses has room in both forms in each part.
bool labels_have_room(const Context& context, int wall, std::span<const int> courses, const WallParts& parts) {
  for (const int course : courses) {
    for (const Part& part : parts.parts) {
      const Strip strip = strip_of(context, {wall, course, part}, parts.scale, context.page.drawing);
      if (!both_forms_fit(labels_of(strip), context.page.drawing.width(), context.tape())) return false;
    }
  }
  return true;
}

}  // namespace

WallParts parts_at_scale(const Context& context, int wall, int course, Scale scale) {
  const bond::WallReach reach = bond::reach_of_wall(context.building, context.layout, wall);
  const Length room = scale.shown(context.page.drawing.width() - 2 * kEndRoom);
  WallParts strip{scale,
                  parts_of(reach.from, reach.to, room, context.building.series_of(context.wall(wall)).full_pitch())};
  for (std::size_t index = 0; index + 1 < strip.parts.size(); ++index) {
    const Length rest = room * static_cast<std::int64_t>(strip.parts.size() - index - 1);
    Part& part = strip.parts[index];
    part.to = snapped_border(context, wall, course, part.to, reach.to - rest, part.from + room);
    strip.parts[index + 1].from = part.to;
  }
  return strip;
}

WallParts parts_of_strip(const Context& context, int wall, std::span<const int> courses) {
  std::optional<WallParts> best;
  for (const Scale scale : {Scale{30}, Scale{40}}) {  // larger ones leave too little height to numbers of 5 mm
    WallParts parts = parts_at_scale(context, wall, courses.front(), scale);
    if (best && (parts.parts.size() >= best->parts.size() || !labels_have_room(context, wall, courses, parts)))
      continue;
    best = std::move(parts);
  }
  return *best;
}

std::string strip_title(const Context& context, int wall, int course) {
  const Wall& side = context.wall(wall);
  return words::fill_in(side.interior ? context.words.title_strip_inside : context.words.title_strip,
                        {number_text(course), side.name});
}

Group draw_strip(const Context& context, const Band& band, Scale scale, const Area& room) {
  const Strip strip = strip_of(context, band, scale, room);
  Pad pad(Role::Figure, strip_title(context, band.wall, band.course));
  const Micrometres top = write_heading(pad, strip);
  draw_units(pad, strip);
  draw_openings(pad, strip);
  draw_slots(pad, strip);
  draw_cleanouts(pad, strip);
  draw_bars(pad, strip);
  std::vector<Area> taken;
  draw_ends(pad, strip, taken);
  draw_match_lines(pad, strip);
  draw_marks(pad, strip, top);
  draw_boxes(pad, strip, taken);
  draw_closures(pad, strip, taken);
  return std::move(pad).take();
}

}  // namespace stringcourse::sheet
