#include "sheet/template.hpp"

#include <algorithm>

#include "measure/digits.hpp"
#include "setout/marks.hpp"
#include "sheet/hook_words.hpp"
#include "sheet/registry.hpp"

namespace stringcourse::sheet {
namespace {

constexpr Scale kFullSize{1};
constexpr Micrometres kBelowEdge = 16'000;    // under the face line: its name
constexpr Micrometres kColumn = 78'000;       // at the right: where the template is laid
constexpr Micrometres kLeastColumn = 36'000;  // what it is cut down to where a template is wide
constexpr Micrometres kBesideCell = 12'000;   // template beyond its outermost cell
constexpr Lettering kNote{kSmallText, Weight::Regular, Anchor::Start, Ink::Black, 0};

/// A cell round its dowel: how far it reaches each way along the wall, and in from the face.
using Around = setout::OnWall;

std::optional<Around> around(const steel::Dowel& dowel, const std::optional<steel::InCell>& cell) {
  if (!cell) return std::nullopt;
  return Around{dowel.along - cell->clear.from, cell->clear.to - dowel.along, cell->clear.shallow, cell->clear.deep};
}

/// How far the outer face line of the wall round an outside corner lies from the corner's dowel, each way along the
/// wall.
struct OtherFace {
  std::optional<Length> before, after;
  friend bool operator==(const OtherFace&, const OtherFace&) = default;
};

OtherFace other_face(const Context& context, const steel::Dowel& dowel) {
  if (dowel.corner < 0) return {};
  const Corner& corner = context.building.corners[static_cast<std::size_t>(dowel.corner)];
  if (!corner.convex) return {};
  if (corner.arriving == dowel.wall) return {std::nullopt, context.wall(dowel.wall).actual - dowel.along};
  return {dowel.along, std::nullopt};
}

bool alike(const Context& context, const steel::Dowel& a, const steel::Dowel& b) {
  return context.wall(a.wall).interior == context.wall(b.wall).interior && a.off_face == b.off_face &&
         around(a, a.first) == around(b, b.first) && around(a, a.second) == around(b, b.second) &&
         other_face(context, a) == other_face(context, b);
}

// The sheet of one template.
struct Full {
  const Context& context;
  const DowelTemplate& shown;
  OtherFace other;
  Point cross;       // the dowel's centre
  Micrometres edge;  // paper y of the face line, or of the line that stands for it
  Length edge_off;   // that line's distance from the face line; zero: it is the face line
  Area strip;        // what is cut out

  const steel::Dowel& dowel() const { return *shown.dowels.front(); }
};

/// The face line at the strip's foot if the dowel's depth leaves an inch of paper beyond it.
Full full_of(const Context& context, const DowelTemplate& shown) {
  const Area room = context.page.drawing;
  const steel::Dowel& dowel = *shown.dowels.front();
  Full full{context, shown, other_face(context, dowel), {}, room.bottom + kBelowEdge, {}, {}};
  const Micrometres most = room.height() - kBelowEdge - 25'400;
  const Length step = context.tape() == Tape::Inches ? Length::inches(1) : Length::millimetres(20);
  while (kFullSize.paper(dowel.off_face - full.edge_off) > most) full.edge_off = full.edge_off + step;
  Length before = Length::inches(2), after = Length::inches(2);
  for (const auto& cell : {around(dowel, dowel.first), around(dowel, dowel.second)}) {
    if (cell) before = std::max(before, cell->from), after = std::max(after, cell->to);
  }
  // Seen from above with the outer face towards the reader: the wall's start is at the right, as on all strips.
  Micrometres right = full.other.before ? kFullSize.paper(*full.other.before) : kFullSize.paper(before) + kBesideCell;
  Micrometres left = full.other.after ? kFullSize.paper(*full.other.after) : kFullSize.paper(after) + kBesideCell;
  // Where both cells reach far to either side the template ends within them: their near edges are what is measured by.
  const Micrometres widest = room.width() - kLeastColumn - 6'000;
  if (right > widest / 2 && left + right > widest) {
    right = std::max(widest - left, widest / 2);
    full.other.before.reset();
  }
  if (left + right > widest) {
    left = widest - right;
    full.other.after.reset();
  }
  full.strip = {room.left, full.edge, room.left + left + right, room.top};
  full.cross = {full.strip.right - right, full.edge + kFullSize.paper(dowel.off_face - full.edge_off)};
  return full;
}

void draw_cell(Pad& pad, const Full& full, const std::optional<Around>& cell, Stroke stroke) {
  if (!cell) return;
  const Area box{full.cross.x - kFullSize.paper(cell->to), full.edge + kFullSize.paper(cell->shallow - full.edge_off),
                 full.cross.x + kFullSize.paper(cell->from), full.edge + kFullSize.paper(cell->deep - full.edge_off)};
  // A web beyond the template's end is not drawn: no line of its own stands there.
  const Area seen = clipped_box(box, full.strip);
  if (seen.left == box.left && seen.right == box.right) {
    pad.box(seen, stroke);
    return;
  }
  for (const Micrometres x : {box.left, box.right}) {
    if (x == seen.left || x == seen.right) pad.line({x, seen.bottom}, {x, seen.top}, stroke);
  }
  for (const Micrometres y : {box.bottom, box.top}) {
    if (y == seen.bottom || y == seen.top) pad.line({seen.left, y}, {seen.right, y}, stroke);
  }
}

void draw_cross(Pad& pad, const Full& full) {
  constexpr Micrometres kArm = 12'000;
  const Stroke stroke{Pen::Thin, Dash::DashDot, Ink::Black};
  pad.line({full.cross.x, full.edge}, {full.cross.x, std::min(full.cross.y + kArm, full.strip.top)}, stroke);
  pad.line({full.cross.x - kArm, full.cross.y}, {full.cross.x + kArm, full.cross.y}, stroke);
  pad.dot(full.cross, 1'200);
}

/// What the heavy edge is, and where the form stands from it.
std::string edge_text(const Full& full) {
  const words::PourWords& words = full.context.words.pour;
  const Tape tape = full.context.tape();
  if (full.edge_off != Length()) return words::fill_in(words.template_parallel, {tape_text(full.edge_off, tape)});
  if (full.context.wall(full.dowel().wall).interior) return std::string(words.template_inner_line);
  const std::optional<Length> form =
      setout::form_edge(full.context.building, full.context.setting_out(), full.dowel().wall).beyond_face;
  const std::string line(words.template_line);
  if (!form) return line + " " + std::string(words.template_form_unknown);
  if (*form == Length()) return line + " " + std::string(words.template_is_form);
  return line + " " + words::fill_in(words.template_form_at, {tape_text(*form, tape)});
}

/// How deep the dowel stands: from the face line, from the line drawn where that is another, and from the form.
void write_depths(Pad& pad, const Full& full) {
  const words::PourWords& words = full.context.words.pour;
  const Tape tape = full.context.tape();
  const Length depth = rounded_to(full.dowel().off_face, tape_step(tape));
  std::vector<std::string> lines{words::fill_in(words.template_from_line, {tape_text(depth, tape)})};
  if (full.edge_off != Length())
    lines.push_back(words::fill_in(words.template_from_this, {tape_text(depth - full.edge_off, tape)}));
  const std::optional<Length> form =
      setout::form_edge(full.context.building, full.context.setting_out(), full.dowel().wall).beyond_face;
  if (form && *form != Length())
    lines.push_back(words::fill_in(words.template_from_form, {tape_text(depth + *form, tape)}));
  Micrometres y = full.edge + (full.cross.y - full.edge) / 2;
  for (const std::string& line : lines)
    y = write_paragraph(pad, {full.cross.x + 2'000, y}, full.strip.right - full.cross.x, line, kNote);
}

/// The lines that are laid on the face lines, and what each is.
void write_edges(Pad& pad, const Full& full) {
  const Area& strip = full.strip;
  pad.line({strip.left, full.edge}, {strip.right, full.edge}, {Pen::Heavy});
  const Setting edge = *set_in(edge_text(full), {full.context.page.drawing.width() - kColumn - 2'000, 8'000},
                               {kText, Weight::Bold, Anchor::Start, Ink::Black, 0}, kDrawingHeights);
  write_setting(pad, {strip.left, full.edge - 1'500 - edge.height / 2 - 500}, edge);
  pad.add(arrow({strip.right - 26'000, full.edge - 12'500}, {strip.right - 2'000, full.edge - 12'500}, {Pen::Medium}));
  const std::string corner(full.context.words.template_to_corner);
  pad.write({strip.right - 28'000, full.edge - 13'700}, corner,
            {kSmallText, Weight::Regular, Anchor::End, Ink::Black, 0});
  const Corner* turned =
      full.dowel().corner < 0 ? nullptr : &full.context.building.corners[static_cast<std::size_t>(full.dowel().corner)];
  for (const Micrometres x : {strip.left, strip.right}) {
    const bool face = x == strip.left ? full.other.after.has_value() : full.other.before.has_value();
    pad.line({x, full.edge}, {x, strip.top}, face ? Stroke{Pen::Heavy} : Stroke{Pen::Thin, Dash::Dashed, Ink::Black});
    if (!face || turned == nullptr) continue;
    const int other = turned->arriving == full.dowel().wall ? turned->leaving : turned->arriving;
    const words::PourWords& words = full.context.words.pour;
    const std::string line = full.shown.dowels.size() > 1
                                 ? std::string(words.template_other_lines)
                                 : words::fill_in(words.template_other_line, {full.context.wall(other).name});
    const Lettering up{kSmallText, Weight::Bold, Anchor::Middle, Ink::Black, 1};
    const Micrometres beside = x == strip.left ? 1'500 + kSmallText : -1'500;
    pad.write({x + beside, full.edge + (strip.top - full.edge) / 2}, line, up);
  }
}

/// "AB 1-3, 7; BC 2: their places stand in the dowel list".
std::string numbers_by_wall(const Full& full) {
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
  return words::fill_in(full.context.words.template_list, {text});
}

/// One line for each dowel under what its wall's numbers are measured from.
std::vector<std::string> places_by_wall(const Full& full) {
  const Context& context = full.context;
  const words::PourWords& words = context.words.pour;
  const Tape tape = context.tape();
  std::vector<std::string> lines;
  int wall = -1;
  for (const steel::Dowel* dowel : full.shown.dowels) {
    if (dowel->wall != wall)
      lines.push_back(words::fill_in(words.template_places, {context.wall(dowel->wall).name,
                                                             hook_text(context.building, dowel->wall, context.words)}));
    wall = dowel->wall;
    lines.push_back(context.wall(wall).name + " " + number_text(dowel->number) + ": " +
                    saw_text(context, rounded_to(dowel->along, tape_step(tape))));
  }
  return lines;
}

/// The walls of its dowels whose form boards begin before their corner.
std::string board_starts(const Full& full) {
  const Context& context = full.context;
  std::string text;
  int wall = -1;
  for (const steel::Dowel* dowel : full.shown.dowels) {
    if (dowel->wall == wall) continue;
    wall = dowel->wall;
    const auto before = setout::form_edge(context.building, context.setting_out(), wall).before_start;
    if (before && *before > Length())
      text += (text.empty() ? "" : " ") + words::fill_in(context.words.pour.template_board,
                                                         {context.wall(wall).name, tape_text(*before, context.tape())});
  }
  return text;
}

void write_places(Pad& pad, const Full& full) {
  const Context& context = full.context;
  const Area room = context.page.drawing;
  const Micrometres left = std::max(full.strip.right + 6'000, room.right - kColumn), wide = room.right - left;
  Micrometres y =
      write_paragraph(pad, {left, room.top - 2'000}, wide, std::string(context.words.pour.template_use), kNote) - 1'500;
  // Each with its mark where there is room for all of them, else by their numbers in the dowel list.
  const Lettering bold{kSmallText, Weight::Bold, Anchor::Start, Ink::Black, 0};
  std::vector<std::string> lines = places_by_wall(full);
  const std::string board = board_starts(full);
  Micrometres high = board.empty() ? 0 : paragraph_height(board, wide, kNote) + 1'500;
  for (const std::string& line : lines) high += paragraph_height(line, wide, bold);
  if (high > y - room.bottom) lines = {numbers_by_wall(full)};
  for (const std::string& line : lines) y = write_paragraph(pad, {left, y}, wide, line, bold);
  if (lines.size() > 1) write_paragraph(pad, {left, y - 1'500}, wide, board, kNote);
}

}  // namespace

std::vector<DowelTemplate> dowel_templates(const Context& context) {
  std::vector<DowelTemplate> all;
  for (const steel::Dowel& dowel : context.answer.dowels) {
    const auto same =
        std::ranges::find_if(all, [&](const DowelTemplate& one) { return alike(context, *one.dowels.front(), dowel); });
    if (same != all.end()) same->dowels.push_back(&dowel);
    else all.push_back({{&dowel}});
  }
  return all;
}

Group draw_dowel_template(const Context& context, const DowelTemplate& shown) {
  const Full full = full_of(context, shown);
  Pad pad(Role::Figure, std::string(context.words.title_template));
  draw_cell(pad, full, around(full.dowel(), full.dowel().second), {Pen::Thin, Dash::Dashed, Ink::Black});
  draw_cell(pad, full, around(full.dowel(), full.dowel().first), {Pen::Medium});
  draw_cross(pad, full);
  write_edges(pad, full);
  write_depths(pad, full);
  write_places(pad, full);
  return std::move(pad).take();
}

namespace {

std::vector<PlannedSheet> template_sheets(const Context& context) {
  const std::vector<DowelTemplate> templates = dowel_templates(context);
  std::vector<PlannedSheet> sheets =
      numbered_sheets(context, context.words.title_template, kFullSize, templates.size());
  for (std::size_t index = 0; index < templates.size(); ++index) {
    for (const steel::Dowel* dowel : templates[index].dowels) {
      sheets[index].shown.push_back(static_cast<std::size_t>(dowel - context.answer.dowels.data()));
    }
  }
  return sheets;
}

Group draw_template(const Context& context, const PlannedSheet& sheet) {
  DowelTemplate shown;
  for (const std::size_t dowel : sheet.shown) shown.dowels.push_back(&context.answer.dowels[dowel]);
  return draw_dowel_template(context, shown);
}

}  // namespace

constinit const SheetKind kTemplatesSheet{
    .name = "template",
    .hold_point = HoldPoint::Pour,
    .purpose = &words::SheetWords::purpose_templates,
    .on_request = &Wanted::templates,
    .caution = {{}, &words::SheetWords::caution_dowels},
    .sheets = template_sheets,
    .draw = draw_template,
};

}  // namespace stringcourse::sheet
