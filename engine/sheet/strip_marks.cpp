#include <algorithm>

#include "paper/running_labels.hpp"
#include "setout/laying_order.hpp"
#include "setout/marks.hpp"
#include "sheet/hook_words.hpp"
#include "sheet/strip_parts.hpp"

namespace stringcourse::sheet {
namespace {

constexpr Micrometres kNumbers = 6'000;     // of that: unit numbers, between leaders that run plumb
constexpr Micrometres kLeader = 11'500;
constexpr Micrometres kLowLeader = 13'000;  // under the strip, room for arrows and the closure's words
constexpr Micrometres kLowPlumb = 7'500;

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
    const std::string behind =
        fill_in(context.words.pour.behind_corner,
                {std::string(context.words.bar), short_name(context.names, context.wall(strip.wall).start_name)});
    labels.push_back(
        {strip.view.at(bar.centre), rounded_to(-bar.centre, tape_step(context.tape())), false, behind, {}});
  }
}

// Both faces of every wall that abuts this one, seen from the side that it abuts.
void add_junction_labels(std::vector<RunningLabel>& labels, const Strip& strip) {
  const Context& context = strip.context;
  for (const Junction& junction : context.building.junctions) {
    if (junction.main != strip.wall) continue;
    const std::string& name = context.wall(junction.abutting).name;
    const std::string what = fill_in(context.words.face_of, {name}),
                      short_what = fill_in(context.words.face_of, {short_name(context.names, name)});
    for (const Position face : {junction.from, junction.to}) {
      const Length at = face.distance_from_start();
      if (strip.part.holds(at))
        labels.push_back({strip.view.at(at), rounded_to(at, tape_step(context.tape())), false, what, short_what});
    }
  }
}

// What the sheet's marks, arrows and letters mean: under the drawing, the rule large.
struct Notes {
  std::string rule, from, meanings;
};

Notes notes_of(const Context& context, int wall, int course) {
  const Words& words = context.words;
  std::vector<std::string> meanings{std::string(words.arrow_note)};
  if (!setout::closures_on(context.building, context.layout, wall, course).empty())
    meanings.emplace_back(words.closure_note);
  if (!setout::bars_on_wall(context.building, context.layout, wall).empty()) meanings.emplace_back(words.bar_note);
  meanings.push_back(joined(legend_of(context, {wall, course}), "; "));
  return {std::string(words.block_end_rule), marks_from_text(context.building, wall, words), joined(meanings, " ")};
}

constexpr Lettering kRule{kText, Weight::Bold, Anchor::Start, Ink::Black, 0},
    kMeaning{kSmallText, Weight::Regular, Anchor::Start, Ink::Black, 0};

// Rule and origin on one line where they fit it.
bool on_one_line(const Notes& notes, Micrometres width) {
  return text_width(notes.rule, kText, Weight::Bold) + 2'500 + text_width(notes.from, kText, Weight::Regular) <= width;
}

Micrometres height_of(const Notes& notes, Micrometres width) {
  const Micrometres from = on_one_line(notes, width) ? 0 : paragraph_height(notes.from, width, {kText});
  return line_pitch(kText) + from + paragraph_height(notes.meanings, width, kMeaning);
}

}  // namespace

bool stands_in(const Strip& strip, const setout::WallBar& bar) {
  return strip.course >= bar.first_course && strip.course <= bar.last_course;
}

void draw_marks(Pad& pad, const Strip& strip) {
  std::vector<RunningLabel> above, below;
  const Context& context = strip.context;
  for (const setout::Mark& mark : setout::running_marks(context.building, context.layout, strip.wall, strip.course)) {
    // An end behind zero lies inside the wall that this one enters: no tape reads it there.
    if (mark.at < Length() || !strip.part.holds(mark.exact.nearest_nanometre())) continue;
    const Micrometres x = strip.view.at(mark.exact.nearest_nanometre());
    if (mark.kind == setout::MarkKind::BlockEnd) above.push_back({x, mark.at, mark.third_unit, {}, {}});
    else below.push_back(low_label(strip, mark));
  }
  add_bars_behind(below, strip);
  add_junction_labels(below, strip);
  const Area room = context.page.drawing;
  pad.add(draw_running_labels(std::move(above), {room.left, strip.back(), room.right, room.top}, {kLeader, kNumbers},
                              LabelSide::Above, context.tape()));
  pad.add(draw_running_labels(std::move(below), {room.left, room.bottom + strip.foot, room.right, strip.face},
                              {kLowLeader, kLowPlumb}, LabelSide::Below, context.tape()));
}

void write_notes(Pad& pad, const Strip& strip) {
  const Area room = strip.context.page.drawing;
  const Notes notes = notes_of(strip.context, strip.wall, strip.course);
  const Micrometres top = room.bottom + height_of(notes, room.width());
  Micrometres y = write_paragraph(pad, {room.left, top}, room.width(), notes.rule, kRule);
  const Micrometres offset = text_width(notes.rule, kText, Weight::Bold) + 2'500;
  if (on_one_line(notes, room.width()))
    write_paragraph(pad, {room.left + offset, top}, room.width() - offset, notes.from, {kText});
  else y = write_paragraph(pad, {room.left, y}, room.width(), notes.from, {kText});
  write_paragraph(pad, {room.left, y}, room.width(), notes.meanings, kMeaning);
}

Micrometres notes_height(const Context& context, int wall, int course) {
  return height_of(notes_of(context, wall, course), context.page.drawing.width());
}

}  // namespace stringcourse::sheet
