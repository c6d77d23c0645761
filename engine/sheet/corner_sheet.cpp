// Corners from above, course 1 beside course 2: their units with names, the bar and its distances from both outer
// faces.
#include <algorithm>

#include "measure/digits.hpp"
#include "setout/marks.hpp"
#include "setout/over.hpp"
#include "sheet/registry.hpp"
#include "words/language.hpp"

namespace stringcourse::sheet {
namespace {

using setout::OnWall;

constexpr Scale kCornerScale{10};
constexpr std::size_t kCornersOnSheet = 2;
constexpr Length kBeyond = Length::millimetres(250);  // of each wall, past the other's thickness
constexpr Micrometres kDimension = 6'000;             // from the outer face to a distance's line
constexpr Micrometres kWithText = 11'000;             // and with its number
constexpr Micrometres kFigure = 74'000;               // wide, with its distances
constexpr Lettering kName{kSmallText, Weight::Regular, Anchor::Middle, Ink::Black, 0};

const Corner& corner_of(const Context& context, std::size_t corner) { return context.building.corners[corner]; }

const PlacedBar* bar_at(const Context& context, std::size_t corner) {
  const auto bar = std::ranges::find_if(context.layout.bars, [&](const PlacedBar& one) {
    return one.reason == BarReason::Corner && one.corner == static_cast<int>(corner);
  });
  return bar == context.layout.bars.end() ? nullptr : &*bar;
}

struct Turning {
  const Run* run = nullptr;
  const Piece* piece = nullptr;
};

/// The piece that turns the corner in a course.
Turning turning_at(const Context& context, std::size_t corner, int course) {
  for (const int wall : {corner_of(context, corner).arriving, corner_of(context, corner).leaving}) {
    for (const Run& run : bond::runs_in(context.layout, wall, course)) {
      for (const Piece& piece : bond::pieces_of(context.layout, run)) {
        if (std::ranges::contains(setout::corners_turned_by(context.building, run, piece), static_cast<int>(corner)))
          return {&run, &piece};
      }
    }
  }
  return {};
}

int courses_shown(const Context& context) {
  return std::min<int>(2, static_cast<int>(context.building.courses.size()));
}

/// One corner in one course on paper, turned as in the plan.
struct Figure {
  const Context& context;
  std::size_t corner;
  int course;
  Point origin;  // paper point of the corner
  Area window;   // units end at it

  const Corner& at() const { return corner_of(context, corner); }
  Point paper(PlanPoint point) const {
    return {origin.x + kCornerScale.paper(point.x - at().point.x),
            origin.y + kCornerScale.paper(point.y - at().point.y)};
  }
  Area box(const Wall& wall, const OnWall& place) const {
    const Point a = paper(plan_point(wall, place.from, place.shallow)),
                b = paper(plan_point(wall, place.to, place.deep));
    return {std::min(a.x, b.x), std::min(a.y, b.y), std::max(a.x, b.x), std::max(a.y, b.y)};
  }
};

/// The stretch of each of the corner's two walls that is drawn.
OnWall shown_of(const Context& context, const Corner& corner, int wall) {
  const Wall& here = context.wall(wall);
  const Length thick = context.building.series_of(here).thickness;
  const Length other =
      context.building.series_of(context.wall(corner.arriving == wall ? corner.leaving : corner.arriving)).thickness;
  const Length inward = corner.convex ? other + kBeyond : kBeyond, outward = corner.convex ? Length() : other;
  return corner.arriving == wall ? OnWall{here.actual - inward, here.actual + outward, Length(), thick}
                                 : OnWall{-outward, inward, Length(), thick};
}

Area united(const Area& a, const Area& b) {
  return {std::min(a.left, b.left), std::min(a.bottom, b.bottom), std::max(a.right, b.right), std::max(a.top, b.top)};
}

/// The sides of a figure on which the bar's distances stand: those nearer to it.
struct Sides {
  bool left = false, below = false;
};

Point dot_of(const Figure& figure, const PlacedBar& bar) {
  return figure.paper(plan_point(figure.context.wall(bar.wall), bar.centre, bar.off_face));
}

Sides sides_of(const Figure& figure, const Area& drawn) {
  const PlacedBar* bar = bar_at(figure.context, figure.corner);
  if (bar == nullptr) return {};
  const Point dot = dot_of(figure, *bar);
  return {dot.x < drawn.centre().x, dot.y < drawn.centre().y};
}

/// In the left part of its room, with the distances beside it.
Figure figure_in(const Context& context, std::size_t corner, int course, const Area& room) {
  Figure figure{context, corner, course, {0, 0}, {}};
  const Corner& at = figure.at();
  const Area drawn = united(figure.box(context.wall(at.arriving), shown_of(context, at, at.arriving)),
                            figure.box(context.wall(at.leaving), shown_of(context, at, at.leaving)));
  const Sides sides = sides_of(figure, drawn);
  const Micrometres left = sides.left ? kWithText : 0, below = sides.below ? kWithText : 0;
  figure.origin = {room.left + left - drawn.left,
                   room.centre().y - (drawn.height() + kWithText) / 2 + below - drawn.bottom};
  figure.window = {drawn.left + figure.origin.x, drawn.bottom + figure.origin.y, drawn.right + figure.origin.x,
                   drawn.top + figure.origin.y};
  return figure;
}

/// Level or turned in the first of the areas that has room; nowhere where none has: the words beside the figure tell
/// it.
void write_in(Pad& pad, std::span<const Area> areas, const std::string& text, Weight weight) {
  for (const Area& area : areas) {
    for (const int turns : {0, 1}) {
      Lettering lettering = kName;
      lettering.weight = weight, lettering.quarter_turns = turns;
      const Micrometres along = turns == 0 ? area.width() : area.height(),
                        across = turns == 0 ? area.height() : area.width();
      const auto setting = set_in(text, {along - 600, across - 600}, lettering, std::span(kDrawingHeights).last(1));
      if (!setting) continue;
      write_setting(pad, area.centre(), *setting);
      return;
    }
  }
}

bool holds(const Area& area, Point point) {
  return point.x > area.left && point.x < area.right && point.y > area.bottom && point.y < area.top;
}

std::string unit_name(const Figure& figure, const Run& run, const Piece& piece) {
  return short_name(figure.context.names, figure.context.wall(run.wall).name) + "-" + number_text(run.course) + "-" +
         number_text(piece.number);
}

void draw_piece(Pad& pad, const Figure& figure, const Run& run, const Piece& piece, bool turns) {
  const Context& context = figure.context;
  const Wall& wall = context.wall(run.wall);
  const Series& series = context.building.series_of(wall);
  const OnWall extent = setout::extent_of(context.building, run, piece);
  const Area whole = figure.box(wall, extent), shown = clipped_box(whole, figure.window);
  if (shown.empty()) return;
  pad.box(shown, {turns ? Pen::Thick : Pen::Medium}, Fill::White);
  // Its name stands in a cell without a bar.
  const PlacedBar* bar = bar_at(context, figure.corner);
  std::vector<Area> free;
  for (const CellSpan& cell : bond::cells_of(series, piece)) {
    const OnWall clear{extent.from + cell.from, extent.from + cell.to, extent.shallow + series.face_shell,
                       extent.deep - series.face_shell};
    const Area inside = clipped_box(figure.box(wall, clear), figure.window);
    pad.box(inside, {Pen::Thin});
    if (!inside.empty() && (bar == nullptr || !holds(inside, dot_of(figure, *bar)))) free.push_back(inside);
  }
  if (bond::cells_of(series, piece).empty()) free.push_back(shown);
  write_in(pad, free, unit_name(figure, run, piece), turns ? Weight::Bold : Weight::Regular);
  const auto parts = setout::corner_parts_of(context.building, run, piece);
  for (std::size_t k = 1; k < parts.size(); ++k) {
    const Area part = clipped_box(figure.box(wall, parts[k].place), figure.window);
    pad.box(part, {Pen::Thick}, Fill::White);
    if (parts[k].filler)
      write_in(pad, std::span(&part, 1), words::told(parts[k].name, context.reader()), Weight::Regular);
  }
}

void draw_pieces(Pad& pad, const Figure& figure) {
  const Turning turning = turning_at(figure.context, figure.corner, figure.course);
  for (const int wall : {figure.at().arriving, figure.at().leaving}) {
    for (const Run& run : bond::runs_in(figure.context.layout, wall, figure.course)) {
      for (const Piece& piece : bond::pieces_of(figure.context.layout, run)) {
        if (&piece != turning.piece) draw_piece(pad, figure, run, piece, false);
      }
    }
  }
  if (turning.piece != nullptr) draw_piece(pad, figure, *turning.run, *turning.piece, true);
}

/// The bar's distance from the outer face of one of the two walls.
struct Distance {
  int wall;
  Length from_face;
};

std::vector<Distance> distances(const Figure& figure, const PlacedBar& bar) {
  const PlanPoint point = plan_point(figure.context.wall(bar.wall), bar.centre, bar.off_face);
  std::vector<Distance> both;
  for (const int wall : {figure.at().arriving, figure.at().leaving})
    both.push_back({wall, bond::seen_from(figure.context.wall(wall), point).depth});
  return both;
}

std::string distance_text(const Figure& figure, Length distance) {
  return tape_text(rounded_to(distance, tape_step(figure.context.tape())), figure.context.tape());
}

/// A distance from a face to the bar, on a line beside the masonry, its number beyond it.
void draw_distance(Pad& pad, Point face, Point dot, Micrometres line, bool level, const std::string& text) {
  const auto at = [&](Point point) { return level ? Point{point.x, line} : Point{line, point.y}; };
  constexpr Micrometres kStroke = 1'000;
  const bool before = line < (level ? dot.y : dot.x);
  pad.line(at(face), at(dot));
  for (const Point point : {face, dot}) {
    const Point end = at(point);
    const Micrometres over = before ? -kStroke : kStroke;
    pad.line(point, level ? Point{end.x, end.y + over} : Point{end.x + over, end.y});
    pad.line({end.x - kStroke, end.y - kStroke}, {end.x + kStroke, end.y + kStroke}, {Pen::Medium});
  }
  Lettering lettering = kName;
  lettering.quarter_turns = level ? 0 : 1;
  const Point middle{(at(face).x + at(dot).x) / 2, (at(face).y + at(dot).y) / 2};
  const Micrometres off = 2'000;
  if (level) pad.write({middle.x, before ? middle.y - off - kSmallText : middle.y + off}, text, lettering);
  else pad.write({before ? middle.x - off : middle.x + off + kSmallText, middle.y}, text, lettering);
}

/// The dot, and how far it is from each outer face.
void draw_bar(Pad& pad, const Figure& figure) {
  const PlacedBar* bar = bar_at(figure.context, figure.corner);
  if (bar == nullptr || figure.course < bar->first_course || figure.course > bar->last_course) return;
  const Point dot = dot_of(figure, *bar);
  pad.dot(dot, 1'000);
  const Sides sides = sides_of(figure, figure.window);
  for (const Distance& distance : distances(figure, *bar)) {
    const Wall& wall = figure.context.wall(distance.wall);
    const bool upright = wall.heading == Heading::West || wall.heading == Heading::East;  // its face is level
    const Point corner = figure.paper(figure.at().point);
    const std::string text = distance_text(figure, distance.from_face);
    if (upright)
      draw_distance(pad, {dot.x, corner.y}, dot,
                    sides.left ? figure.window.left - kDimension : figure.window.right + kDimension, false, text);
    else
      draw_distance(pad, {corner.x, dot.y}, dot,
                    sides.below ? figure.window.bottom - kDimension : figure.window.top + kDimension, true, text);
  }
}

/// "8 in unit + 4 in filler"; a plain unit by its kind.
std::string made_of(const Context& context, const Run& run, const Piece& piece) {
  const auto parts = setout::corner_parts_of(context.building, run, piece);
  std::string made = parts.empty() || parts.front().name.empty()
                         ? std::string(context.words.kinds[static_cast<std::size_t>(piece.kind)])
                         : words::told(parts.front().name, context.reader());
  for (const setout::SetPart& part : parts) {
    if (part.filler) made += " + " + words::told(part.name, context.reader());
  }
  return made;
}

/// What stands there, in words.
std::vector<std::string> lines_of(const Figure& figure) {
  const Context& context = figure.context;
  const words::PourWords& words = context.words.pour;
  std::vector<std::string> lines;
  const Turning turning = turning_at(context, figure.corner, figure.course);
  if (turning.piece != nullptr) {
    lines.push_back(words::fill_in(words.corner_runs, {context.wall(turning.run->wall).name}));
    lines.push_back(words::fill_in(words.corner_unit, {unit_name(figure, *turning.run, *turning.piece),
                                                       made_of(context, *turning.run, *turning.piece)}));
  }
  const PlacedBar* bar = bar_at(context, figure.corner);
  if (bar == nullptr) return lines;
  const std::vector<Distance> both = distances(figure, *bar);
  lines.push_back(
      words::fill_in(words.corner_bar, {distance_text(figure, both[0].from_face), context.wall(both[0].wall).name,
                                        distance_text(figure, both[1].from_face), context.wall(both[1].wall).name}));
  const bond::SeenFrom place{bar->centre, bar->off_face};
  const auto cell = setout::what_stands_over(context.building, context.layout, bar->wall, figure.course, place).cell;
  if (cell)
    lines.push_back(words::fill_in(words.corner_cell,
                                   {context.wall(cell->wall).name, number_text(cell->unit), number_text(cell->cell)}));
  return lines;
}

void draw_figure(Pad& pad, const Context& context, std::size_t corner, int course, const std::string& same,
                 const Area& room) {
  const Figure figure = figure_in(context, corner, course, room);
  draw_pieces(pad, figure);
  draw_bar(pad, figure);
  const Micrometres left = room.left + kFigure + 2'000, wide = room.right - left;
  const std::string title = words::fill_in(context.words.pour.corner_course, {figure.at().name, number_text(course)});
  Micrometres y =
      write_paragraph(pad, {left, room.top - 4'000}, wide, title, {kText, Weight::Bold, Anchor::Start, Ink::Black, 0}) -
      1'000;
  std::vector<std::string> lines = lines_of(figure);
  if (!same.empty()) lines.push_back(words::fill_in(context.words.pour.corner_alike, {same}));
  for (const std::string& line : lines) y = write_paragraph(pad, {left, y}, wide, line, {kSmallText}) - 800;
}

/// How far a corner's bar is from the outer faces of the wall that arrives and of that which leaves; none: no bar.
std::vector<Length> bar_off_faces(const Context& context, std::size_t corner) {
  const PlacedBar* bar = bar_at(context, corner);
  if (bar == nullptr) return {};
  const PlanPoint point = plan_point(context.wall(bar->wall), bar->centre, bar->off_face);
  std::vector<Length> both;
  for (const int wall : {corner_of(context, corner).arriving, corner_of(context, corner).leaving})
    both.push_back(bond::seen_from(context.wall(wall), point).depth);
  return both;
}

/// Whether two corners are built alike, as seen along their own walls.
bool alike(const Context& context, std::size_t a, std::size_t b) {
  const Corner &one = corner_of(context, a), &other = corner_of(context, b);
  const auto series = [&](int wall) { return context.wall(wall).series; };
  if (one.convex != other.convex || series(one.arriving) != series(other.arriving) ||
      series(one.leaving) != series(other.leaving))
    return false;
  if (bar_off_faces(context, a) != bar_off_faces(context, b)) return false;
  for (int course = 1; course <= courses_shown(context); ++course) {
    const Turning x = turning_at(context, a, course), y = turning_at(context, b, course);
    if ((x.piece == nullptr) != (y.piece == nullptr)) return false;
    if (x.piece == nullptr) continue;
    if ((x.run->wall == one.arriving) != (y.run->wall == other.arriving) || x.piece->kind != y.piece->kind ||
        x.piece->length != y.piece->length)
      return false;
  }
  return true;
}

bool needs_drawing(const Context& context, std::size_t corner) {
  if (bar_at(context, corner) != nullptr) return true;
  for (int course = 1; course <= courses_shown(context); ++course) {
    const Turning turning = turning_at(context, corner, course);
    if (turning.piece == nullptr) continue;
    const auto parts = setout::corner_parts_of(context.building, *turning.run, *turning.piece);
    if (!parts.empty() && (parts.size() > 1 || !parts.front().name.empty())) return true;
  }
  return false;
}

/// Those with a bar and those made by a corner set.
std::vector<std::size_t> corners_to_show(const Context& context) {
  std::vector<std::size_t> all;
  for (std::size_t corner = 0; corner < context.building.corners.size(); ++corner) {
    const Corner& at = corner_of(context, corner);
    if (at.arriving >= 0 && at.leaving >= 0 && needs_drawing(context, corner)) all.push_back(corner);
  }
  return all;
}

/// Where there are more than a sheet holds, one of each kind.
std::vector<std::size_t> corners_drawn(const Context& context) {
  const std::vector<std::size_t> all = corners_to_show(context);
  if (all.size() <= kCornersOnSheet) return all;
  std::vector<std::size_t> kinds;
  for (const std::size_t corner : all) {
    if (std::ranges::none_of(kinds, [&](std::size_t drawn) { return alike(context, drawn, corner); }))
      kinds.push_back(corner);
  }
  return kinds;
}

/// Names of the corners that are not drawn because this one is: "C, D".
std::string drawn_by(const Context& context, std::size_t drawn) {
  const std::vector<std::size_t> shown = corners_drawn(context);
  std::vector<std::string> names;
  for (const std::size_t corner : corners_to_show(context)) {
    if (!std::ranges::contains(shown, corner) && alike(context, drawn, corner))
      names.push_back(short_name(context.names, corner_of(context, corner).name));
  }
  return joined(names, ", ");
}

Group draw_corners(const Context& context, std::span<const std::size_t> corners) {
  const Area room = context.page.drawing;
  Pad pad(Role::Figure, std::string(context.words.pour.title_corners));
  const Micrometres foot = line_pitch(kSmallText) * 2,
                    high = (room.height() - foot) / static_cast<Micrometres>(kCornersOnSheet), wide = room.width() / 2;
  for (std::size_t row = 0; row < corners.size(); ++row) {
    const Micrometres top = room.top - static_cast<Micrometres>(row) * high;
    for (int course = 1; course <= courses_shown(context); ++course) {
      draw_figure(pad, context, corners[row], course, drawn_by(context, corners[row]),
                  {room.left + (course - 1) * wide, top - high, room.left + course * wide - 2'000, top});
    }
  }
  write_paragraph(pad,
                  {room.left, room.bottom + paragraph_height(std::string(context.words.pour.corner_note), room.width(),
                                                             {kSmallText})},
                  room.width(), std::string(context.words.pour.corner_note), {kSmallText});
  return std::move(pad).take();
}

std::vector<PlannedSheet> corner_sheets(const Context& context) {
  const std::vector<std::size_t> corners = corners_drawn(context);
  std::vector<PlannedSheet> sheets = numbered_sheets(context, context.words.pour.title_corners, kCornerScale,
                                                     (corners.size() + kCornersOnSheet - 1) / kCornersOnSheet);
  for (std::size_t index = 0; index < corners.size(); ++index) {
    sheets[index / kCornersOnSheet].shown.push_back(corners[index]);
  }
  return sheets;
}

}  // namespace

constinit const SheetKind kCornersSheet{
    .name = "corners",
    .hold_point = HoldPoint::FirstCourse,
    .purpose = &words::SheetWords::purpose_corners,
    .caution = {{}, &words::SheetWords::caution_dowels},
    .sheets = corner_sheets,
    .draw = [](const Context& context, const PlannedSheet& sheet) { return draw_corners(context, sheet.shown); },
};

}  // namespace stringcourse::sheet
