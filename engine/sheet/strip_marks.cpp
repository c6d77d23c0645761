#include <algorithm>
#include <array>
#include <span>

#include "setout/laying_order.hpp"
#include "setout/marks.hpp"
#include "sheet/hook_words.hpp"
#include "sheet/strip.hpp"
#include "sheet/strip_parts.hpp"

namespace stringcourse::sheet {
namespace {

constexpr Micrometres kNumbers = 6'000;  // unit numbers, between leaders that run plumb
constexpr Micrometres kLeader = 10'000;
constexpr Lettering kTitle{kText, Weight::Bold, Anchor::Start, Ink::Black, 0},
    kNote{kSmallText, Weight::Regular, Anchor::Start, Ink::Black, 0};

// What a mark that is no block's end marks.
RunningLabel label_of(const Strip& strip, const setout::Mark& mark) {
  const Context& context = strip.context;
  const words::SheetWords& words = context.words;
  RunningLabel label{strip.view.at(mark.exact.nearest_nanometre()), mark.at, false, {}, {}};
  if (mark.kind == setout::MarkKind::BlockEnd) label.bold = mark.third_unit;
  else if (mark.kind == setout::MarkKind::BarCentre) label.what = words.bar;
  else if (mark.opening < 0) label.what = words.joint_edge;
  else {
    const std::string& name = context.building.openings[static_cast<std::size_t>(mark.opening)].name;
    label.what = words::fill_in(words.jamb, {name});
    label.short_what = words::fill_in(words.jamb, {short_name(context.names, name)});
  }
  return label;
}

// A block that ends where a jamb or a face stands has one number, which says both.
void add(std::vector<RunningLabel>& labels, RunningLabel label) {
  const auto same = std::ranges::find_if(labels, [&](const RunningLabel& one) {
    return one.at == label.at && one.x == label.x && (one.what.empty() || label.what.empty());
  });
  if (same == labels.end()) return labels.push_back(std::move(label));
  same->bold = same->bold || label.bold;
  if (!label.what.empty()) same->what = label.what, same->short_what = label.short_what;
}

// Bars that start at the footing have their numbers in the dowel list.
bool has_number(const Context& context, const bond::WallBar& bar) {
  return bar.first_course > 1 || context.answer.dowels.empty();
}

void add_bars(std::vector<RunningLabel>& labels, const Strip& strip) {
  const Context& context = strip.context;
  const Length step = tape_step(context.tape());
  for (const bond::WallBar& bar : strip.bars) {
    if (!stands_in(strip, bar) || !strip.part.holds(bar.centre) || !has_number(context, bar)) continue;
    std::string what(context.words.bar);
    // Behind zero, in a re-entrant corner: measured back from it.
    if (bar.centre < Length())
      what = words::fill_in(context.words.pour.behind_corner,
                            {what, short_name(context.names, context.wall(strip.wall).start_name)});
    add(labels, {strip.view.at(bar.centre), rounded_to(magnitude(bar.centre), step), false, what, {}});
  }
}

// Both faces of every wall that abuts this one, seen from the side that it abuts.
void add_junctions(std::vector<RunningLabel>& labels, const Strip& strip) {
  const Context& context = strip.context;
  for (const Junction& junction : context.building.junctions) {
    if (junction.main != strip.wall) continue;
    const std::string& name = context.wall(junction.abutting).name;
    const std::string what = words::fill_in(context.words.face_of, {name}),
                      short_what = words::fill_in(context.words.face_of, {short_name(context.names, name)});
    for (const Position face : {junction.from, junction.to}) {
      const Length at = face.distance_from_start();
      if (strip.part.holds(at))
        add(labels, {strip.view.at(at), rounded_to(at, tape_step(context.tape())), false, what, short_what});
    }
  }
}

constexpr Micrometres kBehindTitle = 4'000;

/// Marks at which past or short is read: each third unit, and the last before an opening, a joint or a corner.
bool is_read(const Strip& strip, const setout::Mark& mark) {
  if (mark.kind != setout::MarkKind::BlockEnd || mark.at < Length()) return false;
  if (mark.third_unit) return true;
  const auto runs = bond::runs_in(strip.context.layout, strip.wall, strip.course);
  return std::ranges::any_of(runs, [&](const Run& run) {
    const auto pieces = bond::pieces_of(strip.context.layout, run);
    return !pieces.empty() && pieces.back().number == mark.piece;
  });
}

/// The first place at a mark's line, beside it or across it, then lower down, then off it, that nothing has; else the
/// last.
Area place_of_box(const Strip& strip, Micrometres x, const std::vector<Area>& taken) {
  Area box;
  // How far left of the line a box begins, in quarters of its width.
  constexpr std::array<Micrometres, 5> kAtLine{0, 4, 2, 1, 3};
  constexpr std::array<Micrometres, 6> kOffLine{-1, 5, -2, 6, -3, 7};
  const std::span<const Micrometres> places[] = {kAtLine, kOffLine};
  for (const auto quarters : places) {
    for (const Micrometres down : {1'500, 6'000}) {
      for (const Micrometres back : quarters) {
        const Micrometres left = x - kBoxWide * back / 4;
        box = {left, strip.face - down - kBoxHigh, left + kBoxWide, strip.face - down};
        const bool inside = box.left >= strip.room.left && box.right <= strip.room.right;
        if (inside && std::ranges::none_of(taken, [&](const Area& area) { return meets(area, box); })) return box;
      }
    }
  }
  return box;
}

}  // namespace

bool meets(const Area& a, const Area& b) {
  return a.left < b.right && b.left < a.right && a.bottom < b.top && b.bottom < a.top;
}

bool stands_in(const Strip& strip, const bond::WallBar& bar) {
  return strip.course >= bar.first_course && strip.course <= bar.last_course;
}

std::vector<RunningLabel> labels_of(const Strip& strip) {
  const Context& context = strip.context;
  std::vector<RunningLabel> labels;
  for (const setout::Mark& mark : setout::running_marks(context.building, context.layout, strip.wall, strip.course)) {
    // An end behind zero lies inside the wall that this one enters: no tape reads it there.
    const bool shown = mark.at >= Length() && strip.part.holds(mark.exact.nearest_nanometre());
    if (shown && mark.kind != setout::MarkKind::BarCentre) add(labels, label_of(strip, mark));
  }
  add_bars(labels, strip);
  add_junctions(labels, strip);
  return labels;
}

Micrometres write_band_heading(Pad& pad, const Area& room, const std::string& title, const std::string& from) {
  const Micrometres wide = text_width(title, kText, Weight::Bold) + kBehindTitle;
  const bool one_line = wide + text_width(from, kSmallText, Weight::Regular) <= room.width();
  const Micrometres under = write_paragraph(pad, {room.left, room.top}, room.width(), title, kTitle);
  if (!one_line) return write_paragraph(pad, {room.left, under}, room.width(), from, kNote);
  pad.write({room.left + wide, room.top - (line_pitch(kText) + kText) / 2}, from, kNote);
  return under;
}

Micrometres write_heading(Pad& pad, const Strip& strip) {
  return write_band_heading(pad, strip.room, strip_title(strip.context, strip.wall, strip.course),
                            marks_from_text(strip.context.building, strip.wall, strip.context.words));
}

void draw_marks(Pad& pad, const Strip& strip, Micrometres top) {
  const Area& room = strip.room;
  pad.add(draw_running_labels(labels_of(strip), {room.left, strip.back(), room.right, top},
                              {kLeader, kNumbers, WhatStands::Beside}, LabelSide::Above, strip.context.tape()));
}

void draw_boxes(Pad& pad, const Strip& strip, std::vector<Area>& taken) {
  const Context& context = strip.context;
  for (const setout::Mark& mark : setout::running_marks(context.building, context.layout, strip.wall, strip.course)) {
    if (!is_read(strip, mark) || !strip.part.holds(mark.exact.nearest_nanometre())) continue;
    const Micrometres x = strip.view.at(mark.exact.nearest_nanometre());
    const Area box = place_of_box(strip, x, taken);
    const Micrometres at = std::clamp(x, box.left, box.right);
    pad.line({x, strip.face}, {at, at == x ? box.bottom : box.top}).box(box);
    taken.push_back(box);
  }
}

}  // namespace stringcourse::sheet
