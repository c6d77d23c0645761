#include "sheet/strip.hpp"

#include <algorithm>

#include "setout/corner_sets.hpp"
#include "setout/laying_order.hpp"
#include "setout/marks.hpp"
#include "setout/places.hpp"
#include "sheet/hook_words.hpp"
#include "sheet/running_labels.hpp"

namespace stringcourse::sheet {
namespace {

constexpr Micrometres kEndRoom = 14'000;    // at each end: what the end is
constexpr Micrometres kAboveInches = 55'000, kAboveMillimetres = 48'000;  // numbers, leaders and labels over the strip
constexpr Micrometres kNumbers = 6'000;     // of that: unit numbers, between leaders that run plumb
constexpr Micrometres kLeader = 11'500;
constexpr Micrometres kLowLeader = 13'000;  // under the strip, room for arrows and the closure's words
constexpr Micrometres kLowPlumb = 7'500;
constexpr Micrometres kArrow = 11'000;

constexpr Lettering kSmall{kSmallText, Weight::Regular, Anchor::Middle, Ink::Black, 0};

struct Strip {
  const Context& context;
  int wall, course;
  Part part;
  Scale scale;
  WallView view;
  Micrometres face;   // paper y of the outer face
  Micrometres thick;  // thickness on paper
  Micrometres foot;     // height of the notes at the foot of the sheet
  Area frame;           // what is drawn lies inside
  std::vector<setout::WallBar> bars;

  Micrometres back() const { return face + thick; }
  Area box(Length from, Length to) const { return clipped_box({view.at(to), face, view.at(from), back()}, frame); }
  Area box(const setout::OnWall& place) const {
    return clipped_box({view.at(place.to), face + scale.paper(place.shallow), view.at(place.from), face + scale.paper(place.deep)}, frame);
  }
};

Strip strip_of(const Context& context, int wall, int course, const Part& part, Scale scale) {
  const Area room = context.page.drawing;
  const Micrometres wide = scale.paper(part.to) - scale.paper(part.from);
  Strip strip{context, wall, course, part, scale, {scale, 0, part.from}, 0, 0, 0, {}, setout::bars_on_wall(context.building, context.layout, wall)};
  strip.view.right = room.centre().x + wide / 2;
  strip.thick = scale.paper(context.building.series_of(context.wall(wall)).thickness);
  const Micrometres above = context.tape() == Tape::Inches ? kAboveInches : kAboveMillimetres;
  strip.face = room.top - above - strip.thick;
  strip.frame = {strip.view.right - wide, room.bottom, strip.view.right, room.top};
  return strip;
}

bool stands_in(const Strip& strip, const setout::WallBar& bar) {
  return strip.course >= bar.first_course && strip.course <= bar.last_course;
}

bool holds_bar(const Strip& strip, Length from, Length to) {
  return std::any_of(strip.bars.begin(), strip.bars.end(), [&](const setout::WallBar& bar) {
    return stands_in(strip, bar) && bar.centre > from && bar.centre < to;
  });
}

// Number and letter of one unit, over its inner face; what there is no room for is left to hatch and label.
void write_number(Pad& pad, const Strip& strip, const Area& box, const Piece& piece, const std::string& letter) {
  const std::string number = number_text(piece.number);
  const Micrometres room = box.width() - 800, x = box.centre().x;
  const std::string whole = letter.empty() ? number : number + " " + letter;
  for (const auto& [text, height] : {std::pair(whole, kText), std::pair(whole, kSmallText), std::pair(number, kSmallText)}) {
    const Lettering lettering{height, Weight::Regular, Anchor::Middle, Ink::Black, 0};
    if (!fits(text, room, lettering)) continue;
    pad.write({x, strip.back() + 1'300}, text, lettering);
    return;
  }
  const Lettering turned{kSmallText, Weight::Regular, Anchor::Start, Ink::Black, 1};
  if (box.width() >= kSmallText + 400) pad.write({x + kSmallText / 2, strip.back() + 1'000}, number, turned);
}

// The cells of a unit: thin, and medium round a bar.
void draw_cells(Pad& pad, const Strip& strip, const Piece& piece, const Area& box, const setout::OnWall& extent) {
  const Series& series = strip.context.building.series_of(strip.context.wall(strip.wall));
  const Micrometres low = strip.face + strip.scale.paper(extent.shallow + series.face_shell), high = strip.face + strip.scale.paper(extent.deep - series.face_shell);
  const bool cut = setout::is_saw_cut(piece);
  for (const CellSpan& cell : setout::cells_of(series, piece)) {
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

// A cleanout's opening: a black wedge at the inner face.
void draw_cleanout(Pad& pad, const Strip& strip, const Area& box) {
  const Micrometres x = box.centre().x, y = strip.back();
  pad.area({{x - 1'600, y}, {x + 1'600, y}, {x, y - 1'800}}, {Pen::Thin}, Fill::Black);
}

Group draw_unit(const Strip& strip, const Run& run, const Piece& piece) {
  const Context& context = strip.context;
  const setout::OnWall extent = setout::extent_of(context.building, run, piece);
  const Area box = strip.box(extent);
  Pad pad(Role::Figure, setout::piece_name(*context.as_named, run, piece));
  if (box.empty()) return std::move(pad).take();
  const Exception exception = exception_of(piece);
  const bool cut = setout::is_saw_cut(piece);
  pad.box(box, {Pen::Medium}, exception.fill == Fill::None ? Fill::White : exception.fill);
  draw_cells(pad, strip, piece, box, extent);
  if (cut) write_cut_length(pad, strip, piece, box);
  if (piece.kind == Kind::Cleanout || piece.kind == Kind::CleanoutHalf) draw_cleanout(pad, strip, box);
  const bool far_end_shown = strip.part.holds(setout::far_end(piece).nearest_nanometre());
  const std::string letter = cut ? cut_mark(context, context.wall(strip.wall).series, piece) : exception.mark;
  if (far_end_shown) write_number(pad, strip, box, piece, letter);
  return std::move(pad).take();
}

void draw_units(Pad& pad, const Strip& strip) {
  for (const Run& run : setout::runs_in(strip.context.layout, strip.wall, strip.course)) {
    for (const Piece& piece : setout::pieces_of(strip.context.layout, run)) {
      Group unit = draw_unit(strip, run, piece);
      if (!unit.shapes.empty()) pad.add(std::move(unit));
      // A corner set's filler or short leg.
      for (const setout::SetPart& part : setout::parts_of_set(strip.context.building, run, piece)) {
        if (!(part.place == setout::extent_of(strip.context.building, run, piece))) pad.box(strip.box(part.place), {Pen::Medium}, Fill::White);
      }
    }
  }
}

void draw_bars(Pad& pad, const Strip& strip) {
  for (const setout::WallBar& bar : strip.bars) {
    if (!stands_in(strip, bar) || !strip.part.holds(bar.centre)) continue;
    pad.dot({strip.view.at(bar.centre), strip.face + strip.scale.paper(bar.off_face)}, 1'000);
  }
}

// Name over size; where both have no room, the name alone: sizes stand in the opening schedule.
void write_in_opening(Pad& pad, const Context& context, const Area& box, const std::string& name, const std::string& size) {
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
    if (opening.wall != strip.wall || strip.course < opening.first_course || strip.course > opening.last_course) continue;
    const Position from = opening.from_in(strip.course), to = opening.to_in(strip.course);
    const Area box = strip.box(from.distance_from_start(), to.distance_from_start());
    if (box.empty()) continue;
    pad.box(box, {Pen::Thin, Dash::Dashed, Ink::Black});
    const std::string size = fill_in(strip.context.words.opening_size, {height_text(strip.context, to - from),
                                                                        height_text(strip.context, opening.height())});
    write_in_opening(pad, strip.context, box, opening.name, size);
  }
}

// The closing unit: blue marks where mortar is buttered, and the words under the outer face.
void draw_closures(Pad& pad, const Strip& strip) {
  const Layout& layout = strip.context.layout;
  for (const setout::Closure& closure : setout::closures(strip.context.building, layout, strip.course)) {
    if (layout.runs[static_cast<std::size_t>(closure.run)].wall != strip.wall) continue;
    const Piece& piece = layout.pieces[closure.piece];
    const Length from = piece.start.nearest_nanometre(), to = setout::far_end(piece).nearest_nanometre();
    const Length middle = from + (to - from).half_down();
    const Area box = strip.box(from, to);
    if (box.empty() || !strip.part.holds(middle)) continue;
    const Stroke blue{Pen::Heavy, Dash::Solid, Ink::Blue};
    pad.line({box.left, box.bottom}, {box.left, box.top}, blue).line({box.right, box.bottom}, {box.right, box.top}, blue);
    const Micrometres top = strip.face - 1'200 - kSmallText;
    const Micrometres room = 9'000;  // half of the words' width: they stay off the match lines
    const Micrometres x = std::clamp(strip.view.at(middle), strip.frame.left + room, strip.frame.right - room);
    pad.write({x, top}, std::string(strip.context.words.butter), kSmall);
    pad.write({x, top - 3'400}, std::string(strip.context.words.both_ends), kSmall);
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
  if (end == RunEnd::ButtCorner) return fill_in(context.words.butts, {met});
  if (end == RunEnd::TiedJunction || end == RunEnd::LappedButt) return fill_in(context.words.meets, {met});
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

void draw_end(Pad& pad, const Strip& strip, bool at_start, const Run& run) {
  const Context& context = strip.context;
  const Wall& wall = context.wall(strip.wall);
  const RunEnd kind = at_start ? run.at_start : run.at_end;
  const Length place = at_start ? run.start : run.end;
  const int other = other_wall(context, at_start ? wall.start : wall.end, strip.wall);
  const std::string met = other < 0 ? std::string() : context.wall(other).name;
  const std::string short_met = short_name(context.names, met);
  const Micrometres outward = at_start ? 1 : -1;
  Micrometres edge = strip.view.at(place);
  draw_end_arrow(pad, strip, kind, edge, outward);
  if (kind == RunEnd::ButtCorner && other >= 0) {
    const Length leg = corner_leg(context.building.series_of(context.wall(other)), context.building.corner_sets_stocked);
    const Micrometres reach = edge + outward * strip.scale.paper(leg);
    const Area met_unit{std::min(edge, reach), strip.face, std::max(edge, reach), strip.back()};
    pad.box(met_unit, {Pen::Thin, Dash::Dashed, Ink::Black});
    edge = reach;
  }
  const Ink ink = at_start ? Ink::Blue : Ink::Black;
  const Lettering role{kSmallText, Weight::Regular, Anchor::Middle, Ink::Black, 1};
  const Micrometres middle = strip.face + strip.thick / 2, high = 30'000;
  const std::string says = end_role(context, kind, met);
  const std::string told = fits(says, high, role) ? says : end_role(context, kind, short_met);
  pad.write({edge + outward * 3'500 + kSmallText / 2, middle}, told, role);
  const Lettering name{kLargeText, Weight::Bold, at_start ? Anchor::Start : Anchor::End, ink, 0};
  const Micrometres room = at_start ? strip.context.page.drawing.right - edge - 6'500 : edge - 6'500 - strip.context.page.drawing.left;
  write_setting(pad, {edge + outward * 6'500, middle}, fitting_name(context, at_start ? wall.start_name : wall.end_name, {room, high}, name, kLargeHeights));
}

void draw_ends(Pad& pad, const Strip& strip) {
  const auto runs = setout::runs_in(strip.context.layout, strip.wall, strip.course);
  if (runs.empty()) return;
  if (strip.part.first()) draw_end(pad, strip, true, runs.front());
  if (strip.part.last()) draw_end(pad, strip, false, runs.back());
}

void draw_match_lines(Pad& pad, const Strip& strip) {
  const Stroke stroke{Pen::Medium, Dash::DashDot, Ink::Black};
  const Lettering lettering{kSmallText, Weight::Regular, Anchor::Middle, Ink::Black, 1};
  const Micrometres middle = strip.face + strip.thick / 2;
  const auto draw = [&](Micrometres x, int number, Micrometres outward) {
    pad.line({x, strip.face - 4'000}, {x, strip.back() + 4'000}, stroke);
    const std::string text = fill_in(strip.context.words.match_line, {number_text(number)});
    pad.write({x + outward * 4'000 + kSmallText / 2, middle}, text, lettering);
  };
  if (!strip.part.first()) draw(strip.frame.right, strip.part.index - 1, 1);
  if (!strip.part.last()) draw(strip.frame.left, strip.part.index, -1);
}

// A mark under the strip: what it marks.
RunningLabel low_label(const Strip& strip, const setout::Mark& mark) {
  const Context& context = strip.context;
  const Words& words = context.words;
  RunningLabel label{strip.view.at(mark.exact.nearest_nanometre()), mark.at, false, {}, {}};
  if (mark.kind == setout::MarkKind::BarCentre) label.what = words.bar;
  else if (mark.opening < 0) label.what = words.joint_edge;
  else {
    const std::string& name = context.building.openings[static_cast<std::size_t>(mark.opening)].name;
    label.what = fill_in(words.jamb, {name});
    label.short_what = fill_in(words.jamb, {short_name(context.names, name)});
  }
  return label;
}

// A bar behind zero, in a re-entrant corner: measured back from it.
void add_bars_behind(std::vector<RunningLabel>& labels, const Strip& strip) {
  const Context& context = strip.context;
  for (const setout::WallBar& bar : strip.bars) {
    if (bar.centre >= Length() || !stands_in(strip, bar) || !strip.part.holds(bar.centre)) continue;
    const std::string behind = fill_in(context.words.pour.behind_corner, {std::string(context.words.bar), short_name(context.names, context.wall(strip.wall).start_name)});
    labels.push_back({strip.view.at(bar.centre), rounded_to(-bar.centre, tape_step(context.tape())), false, behind, {}});
  }
}

// The unit of a lapped wall that fills the slot in this course.
void draw_slots(Pad& pad, const Strip& strip) {
  const Building& building = strip.context.building;
  for (const Junction& junction : building.junctions) {
    if (junction.main != strip.wall) continue;
    const Area box = strip.box(junction.from.distance_from_start(), junction.to.distance_from_start());
    const auto runs = setout::runs_in(strip.context.layout, strip.wall, strip.course);
    const Length middle = junction.from.distance_from_start() + (junction.to - junction.from).half_down();
    const bool filled = std::any_of(runs.begin(), runs.end(), [&](const Run& run) { return run.start < middle && middle < run.end; });
    if (box.empty() || filled) continue;
    pad.box(box, {Pen::Thin, Dash::Dashed, Ink::Black});
    const Lettering name{kSmallText, Weight::Bold, Anchor::Middle, Ink::Black, 1};
    write_setting(pad, box.centre(), fitting_name(strip.context, strip.context.wall(junction.abutting).name, {box.height() - 600, box.width()}, name, std::span(kDrawingHeights).last(1)));
  }
}

// Both faces of every wall that abuts this one, seen from the side that it abuts.
void add_junction_labels(std::vector<RunningLabel>& labels, const Strip& strip) {
  const Context& context = strip.context;
  for (const Junction& junction : context.building.junctions) {
    if (junction.main != strip.wall) continue;
    const std::string& name = context.wall(junction.abutting).name;
    const std::string what = fill_in(context.words.face_of, {name}), short_what = fill_in(context.words.face_of, {short_name(context.names, name)});
    for (const Position face : {junction.from, junction.to}) {
      const Length at = face.distance_from_start();
      if (strip.part.holds(at)) labels.push_back({strip.view.at(at), rounded_to(at, tape_step(context.tape())), false, what, short_what});
    }
  }
}

void draw_marks(Pad& pad, const Strip& strip) {
  std::vector<RunningLabel> above, below;
  const Context& context = strip.context;
  for (const setout::Mark& mark : setout::running_marks(context.building, context.layout, strip.wall, strip.course)) {
    if (!strip.part.holds(mark.exact.nearest_nanometre())) continue;
    const Micrometres x = strip.view.at(mark.exact.nearest_nanometre());
    if (mark.kind == setout::MarkKind::BlockEnd) above.push_back({x, mark.at, mark.third_unit, {}, {}});
    else below.push_back(low_label(strip, mark));
  }
  add_bars_behind(below, strip);
  add_junction_labels(below, strip);
  const Area room = context.page.drawing;
  pad.add(draw_running_labels(above, {room.left, strip.back(), room.right, room.top}, {kLeader, kNumbers}, LabelSide::Above,
                              context.tape()));
  pad.add(draw_running_labels(below, {room.left, room.bottom + strip.foot, room.right, strip.face}, {kLowLeader, kLowPlumb},
                              LabelSide::Below, context.tape()));
}

// What the sheet's marks, arrows and letters mean: under the drawing, the rule large.
struct Notes {
  std::string rule, from, meanings;
};

Notes notes_of(const Context& context, int wall, int course) {
  const Words& words = context.words;
  std::vector<std::string> meanings{std::string(words.arrow_note)};
  if (course == 1) meanings.emplace_back(words.closure_note);
  if (!setout::bars_on_wall(context.building, context.layout, wall).empty()) meanings.emplace_back(words.bar_note);
  meanings.push_back(joined(legend_of(context, {wall, course}), "; "));
  return {std::string(words.block_end_rule), marks_from_text(context.building, wall, words), joined(meanings, " ")};
}

constexpr Lettering kRule{kText, Weight::Bold, Anchor::Start, Ink::Black, 0}, kMeaning{kSmallText, Weight::Regular, Anchor::Start, Ink::Black, 0};

// Rule and origin on one line where they fit it.
bool on_one_line(const Notes& notes, Micrometres width) {
  return text_width(notes.rule, kText, Weight::Bold) + 2'500 + text_width(notes.from, kText, Weight::Regular) <= width;
}

Micrometres notes_height(const Notes& notes, Micrometres width) {
  const Micrometres from = on_one_line(notes, width) ? 0 : paragraph_height(notes.from, width, {kText});
  return line_pitch(kText) + from + paragraph_height(notes.meanings, width, kMeaning);
}

void write_notes(Pad& pad, const Strip& strip) {
  const Area room = strip.context.page.drawing;
  const Notes notes = notes_of(strip.context, strip.wall, strip.course);
  const Micrometres top = room.bottom + notes_height(notes, room.width());
  Micrometres y = write_paragraph(pad, {room.left, top}, room.width(), notes.rule, kRule);
  const Micrometres offset = text_width(notes.rule, kText, Weight::Bold) + 2'500;
  if (on_one_line(notes, room.width())) write_paragraph(pad, {room.left + offset, top}, room.width() - offset, notes.from, {kText});
  else y = write_paragraph(pad, {room.left, y}, room.width(), notes.from, {kText});
  write_paragraph(pad, {room.left, y}, room.width(), notes.meanings, kMeaning);
}

// Where a part may best end: at a block's end, so that no unit is torn in two; every part still fits.
Length snapped_border(const Context& context, int wall, int course, Length border, Length least, Length most) {
  Length best = border, off = Length::millimetres(10'000);
  for (const Run& run : setout::runs_in(context.layout, wall, course)) {
    for (const Piece& piece : setout::pieces_of(context.layout, run)) {
      const Length end = setout::far_end(piece).nearest_nanometre();
      const Length away = end > border ? end - border : border - end;
      if (end < least || end > most || away >= off) continue;
      best = end;
      off = away;
    }
  }
  return best;
}

Scale fewest_parts(Length whole, Micrometres room) {
  const auto parts = [&](Scale scale) { return -(-whole).whole_multiples(scale.shown(room)); };
  const Scale large{20}, small{25};  // below that two columns of numbers do not fit over a unit
  return parts(small) < parts(large) ? small : large;
}

}  // namespace

StripPlan plan_strip(const Context& context, int wall, int course) {
  const setout::Reach reach = setout::reach_of_wall(context.building, context.layout, wall);
  const Micrometres paper = context.page.drawing.width() - 2 * kEndRoom;
  const Scale scale = fewest_parts(reach.to - reach.from, paper);
  const Length room = scale.shown(paper);
  StripPlan plan{scale, parts_of(reach.from, reach.to, room, context.building.series_of(context.wall(wall)).full_pitch())};
  for (std::size_t index = 0; index + 1 < plan.parts.size(); ++index) {
    const Length rest = room * static_cast<std::int64_t>(plan.parts.size() - index - 1);
    Part& part = plan.parts[index];
    part.to = snapped_border(context, wall, course, part.to, reach.to - rest, part.from + room);
    plan.parts[index + 1].from = part.to;
  }
  return plan;
}

std::string strip_title(const Context& context, int wall, int course) {
  const Wall& side = context.wall(wall);
  return fill_in(side.interior ? context.words.title_strip_inside : context.words.title_strip, {number_text(course), side.name});
}

Group draw_strip(const Context& context, int wall, int course, const Part& part, Scale scale) {
  Strip strip = strip_of(context, wall, course, part, scale);
  strip.foot = notes_height(notes_of(context, wall, course), context.page.drawing.width());
  Pad pad(Role::Figure, strip_title(context, wall, course));
  draw_units(pad, strip);
  draw_openings(pad, strip);
  draw_slots(pad, strip);
  draw_bars(pad, strip);
  if (course == 1) draw_closures(pad, strip);
  draw_ends(pad, strip);
  draw_match_lines(pad, strip);
  draw_marks(pad, strip);
  write_notes(pad, strip);
  return std::move(pad).take();
}

}  // namespace stringcourse::sheet
