// The walls as planned, every taped line, and at each corner the way its peg is to be moved, in words and arrows.
#include <algorithm>

#include "measure/sorting.hpp"
#include "paper/legibility.hpp"
#include "paper/placing.hpp"
#include "sheet/bare.hpp"
#include "sheet/plan.hpp"
#include "sheet/registry.hpp"

namespace stringcourse::sheet {
namespace {

using ground::PegMove;
using ground::TapeAsFound;
using ground::TapedLine;

/// Paper points of all corners, where draw_plan() puts them.
std::vector<Point> corner_points(const Context& context, const Area& room, Scale scale) {
  std::vector<Point> points;
  for (const Corner& corner : context.building.corners) {
    const int wall = corner.leaving >= 0 ? corner.leaving : corner.arriving;
    const Wall& side = context.wall(wall);
    const Length at = corner.leaving >= 0 ? Length() : side.actual;
    const Area box = plan_box(context.building, room, scale, side, at, at);
    // The box is as long as the wall is thick, across it: the corner is its outer end.
    const Point step = step_along(side);
    const Point inward{step.y, -step.x};
    points.push_back({inward.x > 0   ? box.left
                      : inward.x < 0 ? box.right
                                     : box.left,
                      inward.y > 0   ? box.bottom
                      : inward.y < 0 ? box.top
                                     : box.bottom});
  }
  return points;
}

constexpr Micrometres kAround = 700;  // white round a text, which no other enters

/// A text on white at the first of its places that is free, or not at all: the table tells it too.
void write_where_free(Pad& pad, Placer& lettered, const std::string& text, const Lettering& lettering,
                      const std::vector<Point>& places) {
  const auto place = lettered.free_place(text, lettering, places);
  if (!place) return;
  const Box box = text_box({*place, text, lettering.height, lettering.weight, lettering.anchor, lettering.ink, 0});
  const Area ground{box.left - kAround, box.low - kAround, box.right + kAround, box.high + kAround};
  pad.box(ground, {Pen::None}, Fill::White);
  lettered.keep_clear(ground);
  lettered.write(pad, text, lettering, *place);
}

/// The walls as draw_plan() draws them.
std::vector<Area> walls_drawn(const Context& context, const Area& room, Scale scale) {
  std::vector<Area> walls;
  for (const Wall& wall : context.building.walls)
    walls.push_back(plan_box(context.building, room, scale, wall, Length(), wall.actual));
  return walls;
}

bool lies_on_a_wall(const std::vector<Area>& walls, const Box& box) {
  return std::ranges::any_of(walls, [&](const Area& wall) {
    return box.left < wall.right && wall.left < box.right && box.low < wall.top && wall.bottom < box.high;
  });
}

void draw_lines(Pad& pad, const Context& context, const TapeAsFound& tape, const std::vector<Point>& points,
                const std::vector<Area>& walls, Placer& lettered) {
  // All lines before all letters: no line crosses the white round a text.
  for (const TapedLine& line : tape.lines) {
    const bool out = line.slip || line.wrong;
    if (line.again) continue;
    pad.line(points[static_cast<std::size_t>(line.from)], points[static_cast<std::size_t>(line.to)],
             {Pen::Thin, out ? Dash::DashDot : Dash::Dashed, out ? Ink::Red : Ink::Black});
  }
  for (const TapedLine& line : tape.lines) {
    const Point a = points[static_cast<std::size_t>(line.from)], b = points[static_cast<std::size_t>(line.to)];
    const bool out = line.slip || line.wrong;
    // Diagonals are lettered where two of them do not meet; sides have their dimension.
    if (a.x == b.x || a.y == b.y) continue;
    std::vector<Point> places;
    for (const int tenths : {33, 67, 25, 75, 42, 58, 50, 18, 82}) {
      places.push_back({static_cast<Micrometres>(a.x + std::int64_t{b.x - a.x} * tenths / 100),
                        static_cast<Micrometres>(a.y + std::int64_t{b.y - a.y} * tenths / 100)});
    }
    const std::string text =
        corner_name(context, line.from) + corner_name(context, line.to) + "  " + both_forms(line.read, context.tape());
    const Lettering lettering{kSmallText, Weight::Regular, Anchor::Middle, out ? Ink::Red : Ink::Black, 0};
    // Off the walls where there is room.
    sort_stably(places, {}, [&](Point place) {
      return lies_on_a_wall(
          walls, text_box({place, text, lettering.height, lettering.weight, lettering.anchor, lettering.ink, 0}));
    });
    write_where_free(pad, lettered, text, lettering, places);
  }
}

/// Arrows from the peg, one along each axis of the plan; the longer way has the longer arrow.
void draw_move(Pad& pad, const PegMove& move, Point at) {
  constexpr Micrometres kLong = 16'000, kShort = 10'000, kOff = 1'500;
  const Length east = magnitude(move.east), north = magnitude(move.north);
  const auto worth = [&](Length part) {
    return 5 * part >= std::max(east, north) && part >= Length::nanometres(400'000);
  };
  const Stroke blue{Pen::Thick, Dash::Solid, Ink::Blue};
  if (worth(east)) {
    const Micrometres sign = move.east < Length() ? -1 : 1, length = east >= north ? kLong : kShort;
    pad.add(arrow({at.x + sign * kOff, at.y}, {at.x + sign * length, at.y}, blue));
  }
  if (worth(north)) {
    const Micrometres sign = move.north < Length() ? -1 : 1, length = north > east ? kLong : kShort;
    pad.add(arrow({at.x, at.y + sign * kOff}, {at.x, at.y + sign * length}, blue));
  }
}

/// Beside the corner, towards the middle of the plan first.
std::vector<Point> beside(Point at, Point middle) {
  const Micrometres side = at.x < middle.x ? 8'000 : -8'000, up = at.y < middle.y ? 10'000 : -10'000 - kText,
                    step = at.y < middle.y ? 6'000 : -6'000;
  std::vector<Point> places;
  for (int k = 0; k < 4; ++k) places.push_back({at.x + side, at.y + up + k * step});
  for (int k = 1; k < 3; ++k) places.push_back({at.x + k * 3 * side, at.y + up});
  return places;
}

/// The ellipse of a peg's doubt, a hundred times as large as to scale: a polygon of 24 points.
void draw_ellipse(Pad& pad, const PegMove& move, Point at, Scale scale) {
  // Cosines of 0, 15 ... 90 degrees; the others follow by symmetry.
  constexpr double kCosines[] = {1, 0.9659258, 0.8660254, 0.7071068, 0.5, 0.2588190, 0};
  const auto cosine = [&](int step) {
    step = (step % 24 + 24) % 24;
    if (step > 12) step = 24 - step;
    return step <= 6 ? kCosines[step] : -kCosines[12 - step];
  };
  std::vector<Point> ring;
  const double a = 100.0 * scale.paper(move.longer), b = 100.0 * scale.paper(move.shorter);
  for (int step = 0; step <= 24; ++step) {
    const double along = a * cosine(step), across = b * cosine(step - 6);
    ring.push_back({at.x + static_cast<Micrometres>(along * move.direction.x - across * move.direction.y),
                    at.y + static_cast<Micrometres>(along * move.direction.y + across * move.direction.x)});
  }
  pad.path(std::move(ring), {Pen::Thin, Dash::Solid, Ink::Blue});
}

void draw_moves(Pad& pad, const Context& context, const TapeAsFound& tape, const std::vector<Point>& points,
                Placer& lettered, Scale scale) {
  const words::SheetWords& words = context.words;
  Point middle{0, 0};
  for (const Point& point : points)
    middle.x += point.x / static_cast<Micrometres>(points.size()),
        middle.y += point.y / static_cast<Micrometres>(points.size());
  for (const PegMove& move : tape.moves) {
    const Point at = points[static_cast<std::size_t>(move.corner)];
    pad.dot(at, 1'400);
    const bool held = move.corner == tape.held;
    if (!held) draw_ellipse(pad, move, at, scale);
    if (!held && !move.within_doubt) draw_move(pad, move, at);
    const std::string text = held                ? std::string(words.found_held)
                             : move.within_doubt ? std::string(words.found_leave)
                                                 : context.told(ground::move_said(context.building, move));
    write_where_free(
        pad, lettered, text,
        {kText, Weight::Bold, at.x < middle.x ? Anchor::Start : Anchor::End, held ? Ink::Black : Ink::Blue, 0},
        beside(at, middle));
  }
}

Group draw_found_plan(const Context& context, const Area& room, Scale scale) {
  Pad pad(Role::Figure, std::string(context.words.title_found_plan));
  Group plan = draw_plan(context, 1, PlanDetail::Site, room, scale);
  Placer lettered(plan, room);
  pad.add(std::move(plan));
  if (!context.has_readings()) return std::move(pad).take();
  const std::vector<Point> points = corner_points(context, room, scale);
  // Lines first, so that the ways of the pegs lie over them; the pegs' words have the first choice of places.
  Pad moves(Role::Figure, std::string(context.words.found_moves));
  draw_moves(moves, context, context.answer.found.tape, points, lettered, scale);
  if (!context.answer.found.tape.moves.empty())
    pad.write({room.left, room.bottom}, std::string(context.words.found_ellipse_note), {kSmallText});
  draw_lines(pad, context, context.answer.found.tape, points, walls_drawn(context, room, scale), lettered);
  pad.add(std::move(moves).take());
  return std::move(pad).take();
}

std::vector<PlannedSheet> pegs_sheet(const Context& context) {
  return numbered_sheets(context, context.words.title_found_plan,
                         scale_of_plan(context.building, context.page.drawing));
}

Group draw_pegs_sheet(const Context& context, const PlannedSheet& sheet) {
  return draw_found_plan(context, context.page.drawing, *sheet.scale);
}

bool was_taped(const Context& context) { return context.has_readings() && !context.answer.found.tape.lines.empty(); }

Drawing pegs_drawing(const Context& context, SheetName name, int) {
  BarePlan bare = bare_plan(context.building, std::move(name));
  bare.sheet.groups.push_back(draw_found_plan(context, inside_rim(bare.sheet), bare.scale));
  return {std::move(bare.sheet), bare.scale, 1, -1, {}};
}

constinit const DrawingKind kPegsDrawing{
    .name = "pegs",
    .has = [](const Context& context, int) { return context.has_readings(); },
    .title = [](const Building&, const words::SheetWords& words, int) { return std::string(words.title_found_plan); },
    .draw = pegs_drawing,
};

}  // namespace

constinit const SheetKind kPegsSheet{
    .name = "pegs",
    .hold_point = HoldPoint::FirstCourse,
    .purpose = &words::SheetWords::purpose_pegs,
    .caution = {"engineer"},
    .applies = was_taped,
    .sheets = pegs_sheet,
    .draw = draw_pegs_sheet,
    .drawing = &kPegsDrawing,
};

}  // namespace stringcourse::sheet
