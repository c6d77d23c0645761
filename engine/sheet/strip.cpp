#include "sheet/strip.hpp"

#include <algorithm>

#include "setout/laying_order.hpp"
#include "setout/marks.hpp"
#include "setout/places.hpp"
#include "sheet/running_labels.hpp"

namespace stringcourse::sheet {
namespace {

constexpr Micrometres kEndRoom = 14'000;    // at each end: what the end is
constexpr Micrometres kAbove = 52'000;      // labels and leaders over the strip
constexpr Micrometres kLeader = 9'000;
constexpr Micrometres kLowLeader = 12'000;  // under the strip, room for the closure's words

constexpr Lettering kSmall{kSmallText, Weight::Regular, Anchor::Middle, Ink::Black, 0};
constexpr Lettering kBlueSmall{kSmallText, Weight::Regular, Anchor::Middle, Ink::Blue, 0};

struct Strip {
  const Context& context;
  int wall, course;
  Part part;
  WallView view;
  Micrometres face;   // paper y of the outer face
  Micrometres thick;  // thickness on paper
  Area frame;           // what is drawn lies inside
  std::vector<setout::WallBar> bars;

  Micrometres back() const { return face + thick; }
  Area box(Length from, Length to) const { return clipped_box({view.at(to), face, view.at(from), back()}, frame); }
};

Strip strip_of(const Context& context, int wall, int course, const Part& part) {
  const Area room = context.page.drawing;
  const Micrometres wide = kStripScale.paper(part.to) - kStripScale.paper(part.from);
  Strip strip{context, wall, course, part, {kStripScale, 0, part.from}, 0, 0, {}, setout::bars_on_wall(context.building, context.layout, wall)};
  strip.view.right = room.centre().x + wide / 2;
  strip.thick = kStripScale.paper(context.building.series_of(context.wall(wall)).thickness);
  strip.face = room.top - kAbove - strip.thick;
  strip.frame = {strip.view.right - wide, room.bottom, strip.view.right, room.top};
  return strip;
}

// Number and letter of one unit, as large as its box lets it be; a narrow piece's is turned. `ground` White: on a
// white patch, for hatched units.
void write_number(Pad& pad, const Area& box, const std::string& text, bool barred, Fill ground) {
  Lettering lettering{barred ? kSmallText : kText, Weight::Regular, Anchor::Middle, Ink::Black, 0};
  if (!fits(text, box.width() - 800, lettering)) lettering.height = kSmallText;
  if (fits(text, box.width() - 800, lettering)) {
    const Micrometres half = text_width(text, lettering.height, Weight::Regular) / 2 + 500;
    if (ground == Fill::White) {
      pad.box({box.centre().x - half, box.centre().y - 2'400, box.centre().x + half, box.centre().y + 2'400}, {Pen::None}, ground);
    }
    const Micrometres y = barred ? box.top - 700 - lettering.height : box.centre().y - lettering.height / 2;
    pad.write({box.centre().x, y}, text, lettering);
  } else if (box.width() >= kSmallText + 400 && fits(text, box.height() - 600, lettering)) {
    lettering.quarter_turns = 1;
    pad.write({box.centre().x + lettering.height / 2, box.centre().y}, text, lettering);
  }
}

bool bar_at_middle(const Strip& strip, const Piece& piece) {
  const Length middle = piece.start.nearest_nanometre() + piece.length.half_down();
  return std::any_of(strip.bars.begin(), strip.bars.end(), [&](const setout::WallBar& bar) {
    const Length off = bar.centre > middle ? bar.centre - middle : middle - bar.centre;
    return kStripScale.paper(off) < 3'500;
  });
}

Group draw_unit(const Strip& strip, const Run& run, const Piece& piece) {
  Area box = strip.box(piece.start.nearest_nanometre(), setout::far_end(piece).nearest_nanometre());
  const auto& set = strip.context.building.series_of(strip.context.wall(strip.wall)).corner_set;
  if (piece.kind == Kind::CornerSet && set) box.top = std::min(box.top, strip.face + kStripScale.paper(set->short_leg));
  Pad pad(Role::Figure, setout::piece_name(strip.context.building, run, piece));
  if (box.empty()) return std::move(pad).take();
  const Exception exception = exception_of(piece);
  pad.box(box, {Pen::Medium}, exception.fill == Fill::None ? Fill::White : exception.fill);
  std::string text = number_text(piece.number);
  if (!exception.letter.empty()) text += " " + exception.letter;
  write_number(pad, box, text, bar_at_middle(strip, piece), setout::is_saw_cut(piece) ? Fill::White : Fill::None);
  return std::move(pad).take();
}

void draw_units(Pad& pad, const Strip& strip) {
  for (const Run& run : setout::runs_in(strip.context.layout, strip.wall, strip.course)) {
    for (const Piece& piece : setout::pieces_of(strip.context.layout, run)) {
      Group unit = draw_unit(strip, run, piece);
      if (!unit.shapes.empty()) pad.add(std::move(unit));
    }
  }
}

void draw_bars(Pad& pad, const Strip& strip) {
  for (const setout::WallBar& bar : strip.bars) {
    if (strip.course < bar.first_course || strip.course > bar.last_course || !strip.part.holds(bar.centre)) continue;
    pad.dot({strip.view.at(bar.centre), strip.face + strip.thick / 2}, 1'000);
  }
}

void draw_openings(Pad& pad, const Strip& strip) {
  for (const ResolvedOpening& opening : strip.context.building.openings) {
    if (opening.wall != strip.wall || strip.course < opening.first_course || strip.course > opening.last_course) continue;
    const Area box = strip.box(opening.from.distance_from_start(), opening.to.distance_from_start());
    if (box.empty()) continue;
    pad.box(box, {Pen::Thin, Dash::Dashed, Ink::Black});
    const std::string size = fill_in(strip.context.words.opening_size, {height_text(strip.context, opening.width()),
                                                                        height_text(strip.context, opening.height())});
    const Lettering name{kText, Weight::Bold, Anchor::Middle, Ink::Black, 0};
    const Micrometres room = box.width() - 2'000;
    pad.write({box.centre().x, box.centre().y + 600}, clipped(opening.name, room, name), name);
    pad.write({box.centre().x, box.centre().y - 1'500 - kSmallText}, clipped(size, room, kSmall), kSmall);
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
    pad.write({x, top}, std::string(strip.context.words.butter), kBlueSmall);
    pad.write({x, top - 3'400}, std::string(strip.context.words.both_ends), kBlueSmall);
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

void draw_end(Pad& pad, const Strip& strip, bool at_start, const Run& run) {
  const Context& context = strip.context;
  const Wall& wall = context.wall(strip.wall);
  const RunEnd kind = at_start ? run.at_start : run.at_end;
  const Length place = at_start ? run.start : run.end;
  const int other = other_wall(context, at_start ? wall.start : wall.end, strip.wall);
  const std::string met = other < 0 ? std::string() : context.wall(other).name;
  const Micrometres outward = at_start ? 1 : -1;
  Micrometres edge = strip.view.at(place);
  if (kind == RunEnd::ButtCorner && other >= 0) {
    const Length leg = corner_leg(context.building.series_of(context.wall(other)), context.building.corner_sets_stocked);
    const Micrometres reach = edge + outward * kStripScale.paper(leg);
    const Area met_unit{std::min(edge, reach), strip.face, std::max(edge, reach), strip.back()};
    pad.box(met_unit, {Pen::Thin, Dash::Dashed, Ink::Black});
    edge = reach;
  }
  const Ink ink = at_start ? Ink::Blue : Ink::Black;
  const Lettering role{kSmallText, Weight::Regular, Anchor::Middle, Ink::Black, 1};
  const Micrometres x = edge + outward * 3'500;
  pad.write({x + kSmallText / 2, strip.face + strip.thick / 2}, clipped(end_role(context, kind, met), 30'000, role), role);
  const Lettering name{kLargeText, Weight::Bold, at_start ? Anchor::Start : Anchor::End, ink, 0};
  pad.write({edge + outward * 6'500, strip.face + strip.thick / 2 - kLargeText / 2},
            clipped(at_start ? wall.start_name : wall.end_name, 9'000, name), name);
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

std::string kind_of_mark(const Strip& strip, const setout::Mark& mark) {
  const Words& words = strip.context.words;
  if (mark.kind == setout::MarkKind::BarCentre) return std::string(words.bar);
  if (mark.opening < 0) return std::string(words.joint_edge);
  return fill_in(words.jamb, {strip.context.building.openings[static_cast<std::size_t>(mark.opening)].name});
}

void draw_marks(Pad& pad, const Strip& strip) {
  std::vector<RunningLabel> above, below;
  const Context& context = strip.context;
  for (const setout::Mark& mark : setout::running_marks(context.building, context.layout, strip.wall, strip.course)) {
    if (!strip.part.holds(mark.exact.nearest_nanometre())) continue;
    const Micrometres x = strip.view.at(mark.exact.nearest_nanometre());
    if (mark.kind == setout::MarkKind::BlockEnd) above.push_back({x, mark.at, mark.bay, {}});
    else below.push_back({x, mark.at, false, kind_of_mark(strip, mark)});
  }
  const Area room = context.page.drawing;
  pad.add(draw_running_labels(above, {room.left, strip.back(), room.right, room.top}, kLeader, LabelSide::Above,
                              context.tape()));
  const Micrometres notes = room.bottom + 12'000;
  pad.add(draw_running_labels(below, {room.left, notes, room.right, strip.face}, kLowLeader, LabelSide::Below,
                              context.tape()));
}

void write_notes(Pad& pad, const Strip& strip) {
  const Context& context = strip.context;
  const Area room = context.page.drawing;
  const Lettering lettering{kText, Weight::Regular, Anchor::Start, Ink::Black, 0};
  const bool inside = context.wall(strip.wall).start.kind == EndKind::Junction;
  const std::string first = std::string(context.words.block_end_rule) + " " +
                            fill_in(inside ? context.words.measured_from_wall : context.words.measured_from,
                                    {start_corner_name(context, strip.wall)});
  std::string second(context.words.bar_note);
  if (strip.course == 1) second = std::string(context.words.closure_note) + " " + second;
  pad.write({room.left, room.bottom + 6'800}, clipped(first, room.width(), lettering), lettering);
  pad.write({room.left, room.bottom + 600}, clipped(second, room.width(), lettering), lettering);
}

}  // namespace

std::vector<Part> strip_parts(const Context& context, int wall) {
  const setout::Reach reach = setout::reach_of_wall(context.building, context.layout, wall);
  const Length room = kStripScale.shown(context.page.drawing.width() - 2 * kEndRoom);
  return parts_of(reach.from, reach.to, room, context.building.series_of(context.wall(wall)).full_pitch());
}

std::string strip_title(const Context& context, int wall, int course) {
  const Wall& side = context.wall(wall);
  return fill_in(side.interior ? context.words.title_strip_inside : context.words.title_strip, {number_text(course), side.name});
}

Group draw_strip(const Context& context, int wall, int course, const Part& part) {
  const Strip strip = strip_of(context, wall, course, part);
  Pad pad(Role::Figure, strip_title(context, wall, course));
  draw_units(pad, strip);
  draw_openings(pad, strip);
  draw_bars(pad, strip);
  if (course == 1) draw_closures(pad, strip);
  draw_ends(pad, strip);
  draw_match_lines(pad, strip);
  draw_marks(pad, strip);
  write_notes(pad, strip);
  return std::move(pad).take();
}

}  // namespace stringcourse::sheet
