#include "sheet/template.hpp"

#include <algorithm>

#include "setout/marks.hpp"
#include "setout/places.hpp"
#include "sheet/running_labels.hpp"

namespace stringcourse::sheet {
namespace {

constexpr Scale kFullSize{1};
constexpr Micrometres kBelowEdge = 16'000;   // under the form's edge: its name
constexpr Micrometres kColumn = 78'000;      // at the right: where the template is laid
constexpr Micrometres kBesideCell = 12'000;  // template beyond its outermost cell
constexpr Micrometres kEnds = 14'000;        // corner names at both ends of a board
constexpr Micrometres kLabels = 62'000, kLeader = 11'500, kPlumb = 4'000;
constexpr Lettering kSmall{kSmallText, Weight::Regular, Anchor::Middle, Ink::Black, 0};

struct Around {
  Length before, after;
  friend bool operator==(const Around&, const Around&) = default;
};

std::optional<Around> around(const steel::Dowel& dowel, const std::optional<steel::InCell>& cell) {
  if (!cell) return std::nullopt;
  return Around{dowel.along - cell->near, cell->far - dowel.along};
}

bool alike(const steel::Dowel& a, const steel::Dowel& b) {
  return a.off_face == b.off_face && around(a, a.first) == around(b, b.first) && around(a, a.second) == around(b, b.second);
}

std::string dowel_name(const Context& context, const steel::Dowel& dowel) { return context.wall(dowel.wall).name + " " + number_text(dowel.number); }

std::string mark_text(const Context& context, Length along) { return both_forms(rounded_to(along, tape_step(context.tape())), context.tape()); }

// The sheet of one template.
struct Full {
  const Context& context;
  const DowelTemplate& shown;
  Point cross;       // the dowel's centre
  Micrometres edge;  // paper y of the form's edge, or of the line that stands for it
  Length edge_off;   // that line's distance from the form's edge; zero: it is the edge
  Area strip;        // what is cut out

  const steel::Dowel& dowel() const { return *shown.dowels.front(); }
};

/// The face line at the strip's foot if the dowel's depth leaves an inch of paper beyond it.
Full full_of(const Context& context, const DowelTemplate& shown) {
  const Area room = context.page.drawing;
  Full full{context, shown, {}, room.bottom + kBelowEdge, {}, {}};
  const Length depth = shown.dowels.front()->off_face;
  const Micrometres most = room.height() - kBelowEdge - 25'400;
  while (kFullSize.paper(depth - full.edge_off) > most) full.edge_off = full.edge_off + (context.tape() == Tape::Inches ? Length::inches(1) : Length::millimetres(20));
  Length before = Length::inches(2), after = Length::inches(2);
  for (const auto& cell : {around(*shown.dowels.front(), shown.dowels.front()->first), around(*shown.dowels.front(), shown.dowels.front()->second)}) {
    if (cell) before = std::max(before, cell->before), after = std::max(after, cell->after);
  }
  // Seen from above with the outer face towards the reader: the side's start is at the right, as on all strips.
  full.strip = {room.left, full.edge, room.left + kFullSize.paper(before + after) + 2 * kBesideCell, room.top};
  full.cross = {full.strip.right - kBesideCell - kFullSize.paper(before), full.edge + kFullSize.paper(depth - full.edge_off)};
  return full;
}

void draw_cell(Pad& pad, const Full& full, const std::optional<Around>& cell, Stroke stroke) {
  if (!cell) return;
  const Length inner = full.shown.thickness - full.shown.shell;
  const Area box{full.cross.x - kFullSize.paper(cell->after), full.edge + kFullSize.paper(full.shown.shell - full.edge_off), full.cross.x + kFullSize.paper(cell->before),
                 full.edge + kFullSize.paper(inner - full.edge_off)};
  pad.box(clipped_box(box, full.strip), stroke);
}

void draw_cross(Pad& pad, const Full& full) {
  constexpr Micrometres kArm = 12'000;
  const Stroke stroke{Pen::Thin, Dash::DashDot, Ink::Black};
  pad.line({full.cross.x, full.edge}, {full.cross.x, std::min(full.cross.y + kArm, full.strip.top)}, stroke);
  pad.line({full.cross.x - kArm, full.cross.y}, {full.cross.x + kArm, full.cross.y}, stroke);
  pad.dot(full.cross, 1'200);
}

void write_edge(Pad& pad, const Full& full) {
  const Words& words = full.context.words;
  const Tape tape = full.context.tape();
  pad.line({full.strip.left, full.edge}, {full.strip.right, full.edge}, {Pen::Heavy});
  const std::string edge = full.edge_off == Length() ? std::string(words.template_edge) : fill_in(words.template_parallel, {tape_text(full.edge_off, tape)});
  pad.write({full.strip.left, full.edge - 5'500}, clipped(edge, full.strip.width(), {kText}), {kText, Weight::Bold, Anchor::Start, Ink::Black, 0});
  pad.add(arrow({full.strip.right - 26'000, full.edge - 10'500}, {full.strip.right - 2'000, full.edge - 10'500}, {Pen::Medium}));
  pad.write({full.strip.right - 28'000, full.edge - 11'700}, std::string(words.template_to_corner), {kSmallText, Weight::Regular, Anchor::End, Ink::Black, 0});
  pad.write({full.cross.x + 2'000, full.edge + (full.cross.y - full.edge) / 2}, both_forms(full.dowel().off_face, tape), {kSmallText, Weight::Regular, Anchor::Start, Ink::Black, 0});
}

/// "AB 1-3, 7; BC 2: places in the dowel list".
std::string numbers_by_side(const Full& full) {
  std::string text;
  std::vector<int> numbers;
  int wall = -1;
  const auto finish = [&] {
    if (wall >= 0) text += (text.empty() ? "" : "; ") + full.context.wall(wall).name + " " + ranges_text(numbers);
    numbers.clear();
  };
  for (const steel::Dowel* dowel : full.shown.dowels) {
    if (dowel->wall != wall) finish();
    wall = dowel->wall;
    numbers.push_back(dowel->number);
  }
  finish();
  return fill_in(full.context.words.template_list, {text});
}

void write_places(Pad& pad, const Full& full) {
  const Context& context = full.context;
  const Words& words = context.words;
  const Area room = context.page.drawing;
  const Micrometres left = std::max(full.strip.right + 6'000, room.right - kColumn), wide = room.right - left;
  Micrometres y = room.top - 6'000;
  const auto write = [&](const std::string& text, Lettering lettering) {
    for (const std::string& line : wrapped(text, wide, lettering)) {
      if (y < room.bottom) return;
      pad.write({left, y}, line, lettering);
      y -= line_pitch(lettering.height);
    }
  };
  write(std::string(words.template_use), {kSmallText});
  y -= 2'000;
  // Each with its mark where there is room for all of them, else by their numbers in the dowel list.
  const Lettering bold{kSmallText, Weight::Bold, Anchor::Start, Ink::Black, 0};
  std::vector<std::string> places;
  std::size_t lines = 0;
  for (const steel::Dowel* dowel : full.shown.dowels) {
    places.push_back(dowel_name(context, *dowel) + ": " + mark_text(context, dowel->along) + " " + fill_in(words.template_from, {start_corner_name(context, dowel->wall)}));
    lines += wrapped(places.back(), wide, bold).size();
  }
  if (static_cast<Micrometres>(lines) * line_pitch(kSmallText) > y - room.bottom) places = {numbers_by_side(full)};
  for (const std::string& place : places) write(place, bold);
}

// The form board of one side.
struct Board {
  const Context& context;
  int wall;
  WallView view;
  Micrometres face, back, left, right;
};

Board board_of(const Context& context, int wall) {
  const Area room = context.page.drawing;
  const Scale scale = scale_of_form_board(context, wall);
  const Length actual = context.wall(wall).actual;
  const Micrometres wide = scale.paper(actual), right = room.centre().x + wide / 2;
  const Micrometres thick = scale.paper(context.building.series_of(context.wall(wall)).thickness);
  const Micrometres face = room.top - kLabels - thick;
  return {context, wall, {scale, right, Length()}, face, face + thick, right - wide, right};
}

void draw_board(Pad& pad, const Board& board) {
  const Wall& wall = board.context.wall(board.wall);
  pad.box({board.left, board.face, board.right, board.back}, {Pen::Thin, Dash::Dashed, Ink::Black});
  pad.line({board.left, board.face}, {board.right, board.face}, {Pen::Heavy});
  const Micrometres middle = board.face + (board.back - board.face) / 2 - kLargeText / 2;
  const Lettering start{kLargeText, Weight::Bold, Anchor::Start, Ink::Blue, 0}, end{kLargeText, Weight::Bold, Anchor::End, Ink::Black, 0};
  pad.write({board.right + 3'000, middle}, clipped(wall.start_name, 10'000, start), start);
  pad.write({board.left - 3'000, middle}, clipped(wall.end_name, 10'000, end), end);
}

void draw_board_openings(Pad& pad, const Board& board) {
  const Context& context = board.context;
  const Micrometres y = board.face - 9'000;
  for (const ResolvedOpening& opening : context.building.openings) {
    if (opening.wall != board.wall) continue;
    const Micrometres left = board.view.at(opening.to.distance_from_start()), right = board.view.at(opening.from.distance_from_start());
    pad.line({left, y}, {right, y}, {Pen::Medium}).line({left, y - 1'500}, {left, board.face}, {Pen::Thin}).line({right, y - 1'500}, {right, board.face}, {Pen::Thin});
    const Lettering name{kText, Weight::Bold, Anchor::Middle, Ink::Black, 0};
    const Micrometres wide = right - left - 1'000, x = left + (right - left) / 2;
    pad.write({x, y - 5'500}, clipped(opening.name, wide, name), name);
    const Length step = tape_step(context.tape());
    const auto at = [&](Position place) { return tape_text(rounded_to(place.distance_from_start(), step), context.tape()); };
    for (const auto& [text, line] : {std::pair(at(opening.from), 0), std::pair(at(opening.to), 1)}) {
      pad.write({x, y - 10'000 - line * 4'200}, clipped(text, wide, kSmall), kSmall);
    }
  }
}

}  // namespace

std::vector<DowelTemplate> dowel_templates(const Context& context) {
  std::vector<DowelTemplate> all;
  if (context.job.dowels == nullptr) return all;
  for (const steel::Dowel& dowel : *context.job.dowels) {
    const Series& series = context.building.series_of(context.wall(dowel.wall));
    const auto same = std::find_if(all.begin(), all.end(), [&](const DowelTemplate& one) {
      return one.thickness == series.thickness && one.shell == series.face_shell && alike(*one.dowels.front(), dowel);
    });
    if (same != all.end()) same->dowels.push_back(&dowel);
    else all.push_back({{&dowel}, series.thickness, series.face_shell});
  }
  return all;
}

Group draw_dowel_template(const Context& context, const DowelTemplate& shown) {
  const Full full = full_of(context, shown);
  Pad pad(Role::Figure, std::string(context.words.title_template));
  draw_cell(pad, full, around(full.dowel(), full.dowel().second), {Pen::Thin, Dash::Dashed, Ink::Black});
  draw_cell(pad, full, around(full.dowel(), full.dowel().first), {Pen::Medium});
  pad.line({full.strip.left, full.edge}, {full.strip.left, full.strip.top}, {Pen::Thin, Dash::Dashed, Ink::Black});
  pad.line({full.strip.right, full.edge}, {full.strip.right, full.strip.top}, {Pen::Thin, Dash::Dashed, Ink::Black});
  draw_cross(pad, full);
  write_edge(pad, full);
  write_places(pad, full);
  return std::move(pad).take();
}

bool has_form_board(const Context& context, int wall) {
  return context.job.dowels != nullptr && std::any_of(context.job.dowels->begin(), context.job.dowels->end(), [&](const steel::Dowel& dowel) { return dowel.wall == wall; });
}

Scale scale_of_form_board(const Context& context, int wall) {
  return fitting_scale(context.wall(wall).actual, Length(), context.page.drawing.width() - 2 * kEnds, context.page.drawing.height(), {20});
}

Group draw_form_board(const Context& context, int wall) {
  const Board board = board_of(context, wall);
  Pad pad(Role::Figure, fill_in(context.words.title_form_board, {context.wall(wall).name}));
  draw_board(pad, board);
  draw_board_openings(pad, board);
  std::vector<RunningLabel> labels;
  for (const steel::Dowel& dowel : *context.job.dowels) {
    if (dowel.wall != wall) continue;
    const Micrometres x = board.view.at(dowel.along);
    pad.dot({x, board.face + board.view.scale.paper(dowel.off_face)}, 1'000);
    labels.push_back({x, rounded_to(dowel.along, tape_step(context.tape())), false, {}});
    pad.write({x, board.face - 4'500}, number_text(dowel.number), {kSmallText, Weight::Bold, Anchor::Middle, Ink::Black, 0});
  }
  const Area room = context.page.drawing;
  pad.add(draw_running_labels(labels, {room.left, board.back, room.right, room.top}, {kLeader, kPlumb}, LabelSide::Above, context.tape()));
  const Words& words = context.words;
  Micrometres y = room.bottom + 12'000;
  for (const std::string& line : wrapped(fill_in(words.measured_from, {start_corner_name(context, wall)}) + " " + std::string(words.form_board_note), room.width(), {kText})) {
    pad.write({room.left, y}, line, {kText});
    y -= line_pitch(kText);
  }
  return std::move(pad).take();
}

}  // namespace stringcourse::sheet
