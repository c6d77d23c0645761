#include "sheet/form_board.hpp"

#include <algorithm>

#include "bond/layout_parts.hpp"
#include "measure/digits.hpp"
#include "paper/running_labels.hpp"
#include "setout/marks.hpp"
#include "sheet/hook_words.hpp"
#include "sheet/registry.hpp"
#include "sheet/strip.hpp"

namespace stringcourse::sheet {
namespace {

constexpr Micrometres kEnds = 16'000;  // names at both ends of a board
constexpr Scale kScales[] = {{20}, {25}, {30}, {40}, {50}};
constexpr Micrometres kLeader = 8'500, kPlumb = 3'000;
constexpr std::size_t kBoardsOnSheet = 2;
constexpr Lettering kNote{kSmallText};

struct Board {
  const Context& context;
  Area room;  // the band of the sheet
  int wall;
  Part part;
  setout::FormEdge form;
  WallView view;
  Micrometres face, back, left, right;  // of the wall's own line
  Micrometres edge;                     // paper y of the form; the face where it is not said
};

bond::WallReach reach_of(const Context& context, int wall) {
  return bond::reach_of_wall(context.building, context.layout, wall);
}

std::string board_text(const Context& context, const setout::FormEdge& form);

Micrometres foot_of(const Context& context, const setout::FormEdge& form, Micrometres wide) {
  return paragraph_height(board_text(context, form), wide, kNote);
}

Board board_of(const Context& context, const Band& band, Scale scale, const Area& room) {
  const Part& part = band.part;
  const Micrometres wide = scale.paper(part.to) - scale.paper(part.from), right = room.centre().x + wide / 2;
  const Micrometres thick = scale.paper(context.building.series_of(context.wall(band.wall)).thickness);
  const setout::FormEdge form = setout::form_edge(context.building, context.setting_out(), band.wall);
  const Micrometres edge = room.bottom + foot_of(context, form, room.width()) + 4'500;
  const Micrometres face = edge + scale.paper(std::max(Length(), form.beyond_face.value_or(Length())));
  return {context, room,         band.wall,    part,  form, {scale, right, part.from},
          face,    face + thick, right - wide, right, edge};
}

/// A name beyond one end of the board, clear of what stands there.
void write_end_name(Pad& pad, const Board& board, const std::string& name, bool at_start) {
  const Lettering lettering{kLargeText, Weight::Bold, at_start ? Anchor::Start : Anchor::End,
                            at_start ? Ink::Blue : Ink::Black, 0};
  const Setting setting = fitting_name(board.context, name, {kEnds - 4'000, 20'000}, lettering, kLargeHeights);
  write_setting(pad, {at_start ? board.right + 3'500 : board.left - 3'500, board.face + (board.back - board.face) / 2},
                setting);
}

void draw_match_line(Pad& pad, const Board& board, Micrometres x, int number) {
  pad.line({x, board.edge - 3'000}, {x, board.back + 3'000}, {Pen::Medium, Dash::DashDot, Ink::Black});
  const Micrometres outward = x == board.right ? 4'000 + kSmallText : -4'000;
  pad.write({x + outward, board.face + (board.back - board.face) / 2},
            words::fill_in(board.context.words.match_line, {number_text(number)}),
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
                      words::fill_in(context.words.pour.board_dowel, {number_text(dowel.number)}),
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
                        words::fill_in(context.words.jamb, {opening.name}),
                        words::fill_in(context.words.jamb, {short_name(context.names, opening.name)})});
    }
  }
  return labels;
}

/// Dowels and jambs, in one row over the board.
std::vector<RunningLabel> board_labels(const Context& context, int wall, const Part& part, const WallView& view) {
  std::vector<RunningLabel> labels = dowel_labels(context, wall, part, view);
  for (RunningLabel& label : jamb_labels(context, wall, part, view)) labels.push_back(std::move(label));
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
std::string board_text(const Context& context, const setout::FormEdge& form) {
  const words::PourWords& words = context.words.pour;
  const Tape tape = context.tape();
  std::string text;
  if (form.beyond_face && *form.beyond_face > Length())
    text += " " + words::fill_in(words.board_form_line, {tape_text(*form.beyond_face, tape)});
  if (form.beyond_face && *form.beyond_face == Length()) text += " " + std::string(words.form_here);
  const std::optional<Length> before = form.before_start;
  if (before && *before > Length()) text += " " + words::fill_in(words.board_before, {tape_text(*before, tape)});
  if (before && *before < Length()) text += " " + words::fill_in(words.board_after, {tape_text(-*before, tape)});
  if (!before) text += " " + std::string(words.board_unknown);
  return text + " " + std::string(words.board_note);
}

/// True where dowels start on this wall.
bool has_form_board(const Context& context, int wall) {
  return std::ranges::contains(context.answer.dowels, wall, &steel::Dowel::wall);
}

std::string form_board_title(const Context& context, int wall, int = 0) {
  const Wall& side = context.wall(wall);
  return words::fill_in(side.interior ? context.words.pour.title_board_inner : context.words.title_form_board,
                        {side.name});
}

}  // namespace

WallParts parts_of_form_board(const Context& context, int wall) {
  const bond::WallReach reach = reach_of(context, wall);
  const Micrometres room = context.page.drawing.width(), paper = room - 2 * kEnds;
  const Length grid = context.building.series_of(context.wall(wall)).full_pitch();
  const auto all_fit = [&](const WallParts& board) {
    return std::ranges::all_of(board.parts, [&](const Part& part) {
      return both_forms_fit(board_labels(context, wall, part, {board.scale, 0, part.from}), room, context.tape());
    });
  };
  std::optional<WallParts> best;
  for (const Scale scale : kScales) {
    WallParts board{scale, parts_of(reach.from, reach.to, scale.shown(paper), grid)};
    if (!best || (board.parts.size() < best->parts.size() && all_fit(board))) best = std::move(board);
  }
  return *best;
}

Group draw_form_board(const Context& context, const Band& band, Scale scale, const Area& room) {
  const Board board = board_of(context, band, scale, room);
  const std::string title = form_board_title(context, band.wall);
  Pad pad(Role::Figure, title);
  draw_board(pad, board);
  draw_openings(pad, board);
  for (const steel::Dowel& dowel : context.answer.dowels) {
    if (dowel.wall == band.wall && band.part.holds(dowel.along))
      pad.dot({board.view.at(dowel.along), board.face + board.view.scale.paper(dowel.off_face)}, 1'000);
  }
  const std::string from = marks_from_text(context.building, band.wall, context.words);
  const Micrometres top = write_band_heading(pad, room, title, from);
  pad.add(draw_running_labels(board_labels(context, band.wall, band.part, board.view),
                              {room.left, board.back, room.right, top}, {kLeader, kPlumb, WhatStands::Beside},
                              LabelSide::Above, context.tape()));
  write_paragraph(pad, {room.left, room.bottom + foot_of(context, board.form, room.width())}, room.width(),
                  board_text(context, board.form), kNote);
  return std::move(pad).take();
}

namespace {

// "Form boards: AB, BC".
std::string title_of(const Context& context, std::span<const Band> bands) {
  if (bands.size() == 1) return form_board_title(context, bands.front().wall);
  std::vector<std::string> names;
  for (const Band& band : bands) {
    const std::string& name = context.wall(band.wall).name;
    if (!std::ranges::contains(names, name)) names.push_back(name);
  }
  return words::fill_in(context.words.pour.title_form_boards, {joined(names, ", ")});
}

/// Where the band on a sheet lies.
Area band_room(const Area& sheet, std::size_t index) {
  const Micrometres high = sheet.height() / static_cast<Micrometres>(kBoardsOnSheet);
  const Micrometres top = sheet.top - high * static_cast<Micrometres>(index);
  return {sheet.left, top - high + 1'000, sheet.right, top};
}

/// Whether every number has room over its board at its full height.
bool numbers_stand(const Context& context, const PlannedSheet& sheet, Scale scale) {
  const Tape tape = context.tape();
  const Micrometres heading = line_pitch(kText) + line_pitch(kSmallText);
  for (std::size_t index = 0; index < sheet.bands.size(); ++index) {
    const Band& band = sheet.bands[index];
    const Area room = band_room(context.page.drawing, index);
    const Board board = board_of(context, band, scale, room);
    const Micrometres high = room.top - heading - board.back - kLeader - 1'000;
    for (const RunningLabel& label : board_labels(context, band.wall, band.part, board.view)) {
      const std::string number = tape == Tape::Inches ? total_inches(label.at) : millimetres_text(label.at);
      if (text_width(number, kLargeText, Weight::Regular) > high) return false;
    }
  }
  return true;
}

std::vector<PlannedSheet> form_sheets(const Context& context) {
  std::vector<PlannedSheet> sheets;
  for (int wall = 0; wall < static_cast<int>(context.building.walls.size()); ++wall) {
    if (!has_form_board(context, wall)) continue;
    const WallParts board = parts_of_form_board(context, wall);
    for (const Part& part : board.parts) {
      if (sheets.empty() || sheets.back().bands.size() == kBoardsOnSheet) sheets.push_back({.scale = board.scale});
      PlannedSheet& sheet = sheets.back();
      sheet.bands.push_back({wall, 0, part});
      if (board.scale.denominator > sheet.scale->denominator) sheet.scale = board.scale;
    }
  }
  for (PlannedSheet& sheet : sheets) {
    sheet.title = title_of(context, sheet.bands);
    // A smaller board leaves more room over it.
    for (const Scale smaller : kScales) {
      if (smaller.denominator > sheet.scale->denominator && !numbers_stand(context, sheet, *sheet.scale))
        sheet.scale = smaller;
    }
  }
  return sheets;
}

Group draw_form_sheet(const Context& context, const PlannedSheet& sheet) {
  const Area& room = context.page.drawing;
  Pad pad(Role::Figure, sheet.title);
  for (std::size_t index = 0; index < sheet.bands.size(); ++index) {
    const Area band = band_room(room, index);
    if (index > 0) pad.line({band.left, band.top}, {band.right, band.top}, {Pen::Thin, Dash::Solid, Ink::Grey});
    pad.add(draw_form_board(context, sheet.bands[index], *sheet.scale, band));
  }
  return std::move(pad).take();
}

}  // namespace

constinit const SheetKind kFormBoardsSheet{
    .name = "form",
    .hold_point = HoldPoint::Pour,
    .purpose = &words::SheetWords::purpose_forms,
    .caution = {{}, &words::SheetWords::caution_dowels},
    .sheets = form_sheets,
    .draw = draw_form_sheet,
};

}  // namespace stringcourse::sheet
