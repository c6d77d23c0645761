#include "sheet/form_board.hpp"

#include <algorithm>

#include "paper/running_labels.hpp"
#include "setout/marks.hpp"
#include "setout/places.hpp"
#include "sheet/hook_words.hpp"
#include "sheet/registry.hpp"

namespace stringcourse::sheet {
namespace {

constexpr Micrometres kEnds = 16'000;  // names at both ends of a board
constexpr Micrometres kLabels = 60'000, kLeader = 8'500, kPlumb = 3'000;
constexpr Lettering kFrom{kText, Weight::Bold, Anchor::Start, Ink::Black, 0}, kNote{kSmallText};

struct Board {
  const Context& context;
  int wall;
  Part part;
  setout::FormEdge form;
  WallView view;
  Micrometres face, back, left, right;  // of the wall's own line
  Micrometres edge;                     // paper y of the form; the face where it is not said
};

setout::Reach reach_of(const Context& context, int wall) {
  return setout::reach_of_wall(context.building, context.layout, wall);
}

Board board_of(const Context& context, int wall, const Part& part, Scale scale) {
  const Area room = context.page.drawing;
  const Micrometres wide = scale.paper(part.to) - scale.paper(part.from), right = room.centre().x + wide / 2;
  const Micrometres thick = scale.paper(context.building.series_of(context.wall(wall)).thickness);
  const Micrometres face = room.top - kLabels - thick;
  const setout::FormEdge form = setout::form_edge(context.building, context.setting_out(), wall);
  return {context, wall,         part,         form,  {scale, right, part.from},
          face,    face + thick, right - wide, right, face - scale.paper(form.beyond_face.value_or(Length()))};
}

/// A name beyond one end of the board, clear of what stands there.
void write_end_name(Pad& pad, const Board& board, const std::string& name, bool at_start) {
  const Lettering lettering{kLargeText, Weight::Bold, at_start ? Anchor::Start : Anchor::End,
                            at_start ? Ink::Blue : Ink::Black, 0};
  const Setting setting = fitting_name(board.context, name, {kEnds - 4'000, 30'000}, lettering, kLargeHeights);
  write_setting(pad, {at_start ? board.right + 3'500 : board.left - 3'500, board.face + (board.back - board.face) / 2},
                setting);
}

void draw_match_line(Pad& pad, const Board& board, Micrometres x, int number) {
  pad.line({x, board.edge - 3'000}, {x, board.back + 3'000}, {Pen::Medium, Dash::DashDot, Ink::Black});
  const Micrometres outward = x == board.right ? 4'000 + kSmallText : -4'000;
  pad.write({x + outward, board.face + (board.back - board.face) / 2},
            fill_in(board.context.words.match_line, {number_text(number)}),
            {kSmallText, Weight::Regular, Anchor::Middle, Ink::Black, 1});
}

/// The form's own line, from where its board begins to where it ends, as far as the job says it.
void draw_form(Pad& pad, const Board& board) {
  if (board.edge >= board.face) return;
  const Length from = -board.form.before_start.value_or(Length()),
               to = board.context.wall(board.wall).actual + board.form.past_end.value_or(Length());
  const Micrometres right = board.part.first() ? board.view.at(from) : board.right,
                    left = board.part.last() ? board.view.at(to) : board.left;
  pad.line({left, board.edge}, {right, board.edge}, {Pen::Medium});
}

void draw_board(Pad& pad, const Board& board) {
  const Wall& wall = board.context.wall(board.wall);
  pad.box({board.left, board.face, board.right, board.back}, {Pen::Thin, Dash::Dashed, Ink::Black});
  pad.line({board.left, board.face}, {board.right, board.face}, {Pen::Heavy});
  draw_form(pad, board);
  // Zero, where it is not the end of what is drawn.
  const Micrometres zero = board.view.at(Length());
  if (board.part.first() && zero != board.right)
    pad.line({zero, board.edge - 3'000}, {zero, board.back + 3'000}, {Pen::Medium, Dash::Solid, Ink::Blue});
  if (board.part.first()) write_end_name(pad, board, wall.start_name, true);
  else draw_match_line(pad, board, board.right, board.part.index - 1);
  if (board.part.last()) write_end_name(pad, board, wall.end_name, false);
  else draw_match_line(pad, board, board.left, board.part.index);
}

std::vector<RunningLabel> dowel_labels(const Context& context, int wall, const Part& part, const WallView& view) {
  std::vector<RunningLabel> labels;
  for (const steel::Dowel& dowel : context.answer.dowels) {
    if (dowel.wall != wall || !part.holds(dowel.along)) continue;
    labels.push_back({view.at(dowel.along),
                      rounded_to(dowel.along, tape_step(context.tape())),
                      false,
                      fill_in(context.words.pour.board_dowel, {number_text(dowel.number)}),
                      {}});
  }
  return labels;
}

std::vector<RunningLabel> jamb_labels(const Context& context, int wall, const Part& part, const WallView& view) {
  std::vector<RunningLabel> labels;
  for (const ResolvedOpening& opening : context.building.openings) {
    for (const Position jamb : {opening.from, opening.to}) {
      const Length at = jamb.distance_from_start();
      if (opening.wall != wall || !part.holds(at)) continue;
      labels.push_back({view.at(at), rounded_to(at, tape_step(context.tape())), false,
                        fill_in(context.words.jamb, {opening.name}),
                        fill_in(context.words.jamb, {short_name(context.names, opening.name)})});
    }
  }
  return labels;
}

/// A line under the board from jamb to jamb of each opening.
void draw_openings(Pad& pad, const Board& board) {
  const Micrometres y = board.edge - 3'000;
  for (const ResolvedOpening& opening : board.context.building.openings) {
    const Length from = std::max(opening.from.distance_from_start(), board.part.from),
                 to = std::min(opening.to.distance_from_start(), board.part.to);
    if (opening.wall == board.wall && from < to)
      pad.line({board.view.at(to), y}, {board.view.at(from), y}, {Pen::Thick});
  }
}

/// How far the place that the numbers start from is from the board's own end and edge.
std::string board_text(const Board& board) {
  const Context& context = board.context;
  const PourWords& words = context.words.pour;
  const Tape tape = context.tape();
  std::string text;
  if (board.form.beyond_face && *board.form.beyond_face > Length())
    text += " " + fill_in(words.board_form_line, {tape_text(*board.form.beyond_face, tape)});
  if (board.form.beyond_face && *board.form.beyond_face == Length()) text += " " + std::string(words.form_here);
  const std::optional<Length> before = board.form.before_start;
  if (before && *before > Length()) text += " " + fill_in(words.board_before, {tape_text(*before, tape)});
  if (before && *before < Length()) text += " " + fill_in(words.board_after, {tape_text(-*before, tape)});
  if (!before) text += " " + std::string(words.board_unknown);
  return text + " " + std::string(words.board_note);
}

/// True where dowels start on this wall.
bool has_form_board(const Context& context, int wall) {
  return std::ranges::contains(context.answer.dowels, wall, &steel::Dowel::wall);
}

std::string form_board_title(const Context& context, int wall, int = 0) {
  const Wall& side = context.wall(wall);
  return fill_in(side.interior ? context.words.pour.title_board_inner : context.words.title_form_board, {side.name});
}

}  // namespace

WallParts parts_of_form_board(const Context& context, int wall) {
  const setout::Reach reach = reach_of(context, wall);
  const Micrometres paper = context.page.drawing.width() - 2 * kEnds;
  const Length grid = context.building.series_of(context.wall(wall)).full_pitch();
  const auto all_fit = [&](const WallParts& board) {
    return std::ranges::all_of(board.parts, [&](const Part& part) {
      const WallView view{board.scale, 0, part.from};
      const Micrometres room = context.page.drawing.width();
      return labels_fit(dowel_labels(context, wall, part, view).size(), room) &&
             labels_fit(jamb_labels(context, wall, part, view).size(), room);
    });
  };
  std::optional<WallParts> best;
  for (const Scale scale : {Scale{20}, Scale{25}, Scale{30}, Scale{40}, Scale{50}}) {
    WallParts board{scale, parts_of(reach.from, reach.to, scale.shown(paper), grid)};
    if (!best || (board.parts.size() < best->parts.size() && all_fit(board))) best = std::move(board);
  }
  return *best;
}

Group draw_form_board(const Context& context, int wall, const Part& part, Scale scale) {
  const Board board = board_of(context, wall, part, scale);
  const Area room = context.page.drawing;
  Pad pad(Role::Figure, form_board_title(context, wall));
  draw_board(pad, board);
  draw_openings(pad, board);
  for (const steel::Dowel& dowel : context.answer.dowels) {
    if (dowel.wall == wall && part.holds(dowel.along))
      pad.dot({board.view.at(dowel.along), board.face + board.view.scale.paper(dowel.off_face)}, 1'000);
  }
  const std::string from = marks_from_text(context.building, wall, context.words), text = board_text(board);
  const Micrometres foot = paragraph_height(from, room.width(), kFrom) + paragraph_height(text, room.width(), kNote);
  pad.add(draw_running_labels(dowel_labels(context, wall, part, board.view),
                              {room.left, board.back, room.right, room.top}, {kLeader, kPlumb}, LabelSide::Above,
                              context.tape()));
  pad.add(draw_running_labels(jamb_labels(context, wall, part, board.view),
                              {room.left, room.bottom + foot, room.right, board.edge - 3'000}, {kLeader, kPlumb},
                              LabelSide::Below, context.tape()));
  const Micrometres under = write_paragraph(pad, {room.left, room.bottom + foot}, room.width(), from, kFrom);
  write_paragraph(pad, {room.left, under}, room.width(), text, kNote);
  return std::move(pad).take();
}

namespace {

WallParts board_parts(const Context& context, int wall, int) {
  return has_form_board(context, wall) ? parts_of_form_board(context, wall) : WallParts{};
}

std::vector<PlannedSheet> form_sheets(const Context& context) {
  return sheets_of_walls(context, {form_board_title, board_parts});
}

Group draw_form_sheet(const Context& context, const PlannedSheet& sheet) {
  return draw_form_board(context, sheet.wall, sheet.part, *sheet.scale);
}

}  // namespace

constinit const SheetKind kFormBoardsSheet{
    .name = "form",
    .hold_point = HoldPoint::Pour,
    .caution = {{}, &Words::caution_dowels},
    .sheets = form_sheets,
    .draw = draw_form_sheet,
};

}  // namespace stringcourse::sheet
