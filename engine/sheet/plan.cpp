// Over 400 lines: one drawing, whose parts share its view and its ladders of dimensions.
#include "sheet/plan.hpp"

#include <algorithm>
#include <optional>

#include "bond/layout_parts.hpp"
#include "measure/digits.hpp"
#include "paper/placing.hpp"
#include "setout/cleanouts.hpp"
#include "setout/corner_sets.hpp"

namespace stringcourse::sheet {
namespace {

constexpr Micrometres kDimensionIn = 7'500;
constexpr Micrometres kDimensionOut = 12'000;  // first dimension line from the outline (ISO 129: at least 10 mm)

struct Way {
  int x, y;
};
// Along a wall, and into the building: a quarter turn to the right.
constexpr Way way_of(Heading heading) {
  switch (heading) {
    case Heading::West: return {-1, 0};
    case Heading::North: return {0, 1};
    case Heading::East: return {1, 0};
    case Heading::South: return {0, -1};
  }
  return {1, 0};
}
constexpr Way right_of(Way way) { return {way.y, -way.x}; }

struct PlanView {
  Scale scale;
  Point origin;  // paper point of `base`
  PlanPoint base;
  Point at(PlanPoint point) const {
    return {origin.x + scale.paper(point.x - base.x), origin.y + scale.paper(point.y - base.y)};
  }
  Area box(const Wall& wall, const setout::OnWall& place) const {
    return box(wall, place.from, place.to, place.shallow, place.deep);
  }
  Area box(const Wall& wall, Length from, Length to, Length near, Length far) const {
    const Point a = at(plan_point(wall, from, near)), b = at(plan_point(wall, to, far));
    return {std::min(a.x, b.x), std::min(a.y, b.y), std::max(a.x, b.x), std::max(a.y, b.y)};
  }
};

bool upright(const Wall& wall) { return wall.heading == Heading::North || wall.heading == Heading::South; }

// A text in a box, level if it fits, else turned, else left out.
void write_inside(Pad& pad, const Area& box, const std::string& text, Lettering lettering) {
  lettering.anchor = Anchor::Middle;
  const Point centre = box.centre();
  if (fits(text, box.width() - 400, lettering) && lettering.height <= box.height() - 400) {
    pad.write({centre.x, centre.y - lettering.height / 2}, text, lettering);
  } else if (fits(text, box.height() - 400, lettering) && lettering.height <= box.width() - 400) {
    lettering.quarter_turns = 1;
    pad.write({centre.x + lettering.height / 2, centre.y}, text, lettering);
  }
}

bool convex_end(const Context& context, const WallEnd& end) {
  return end.kind == EndKind::Corner && context.building.corners[static_cast<std::size_t>(end.corner)].convex;
}

// The corner's legs and fillers beside the unit itself.
void draw_corner_parts(Pad& pad, const Context& context, const PlanView& view, const Run& run, const Piece& piece) {
  const auto parts = setout::corner_parts_of(context.building, run, piece);
  for (std::size_t k = 1; k < parts.size(); ++k)
    pad.box(view.box(context.wall(run.wall), parts[k].place), {Pen::Thin}, Fill::White);
}

// Where a unit's number goes: its middle, or moved off its bar. Nowhere if the bar stands in the middle.
std::optional<Area> room_for_number(const PlanView& view, const Wall& wall, const setout::OnWall& extent,
                                    const std::vector<bond::WallBar>& bars) {
  Length from = extent.from, to = extent.to;
  const Length middle = from + (to - from).half_down(), clear = Length::millimetres(45);
  for (const bond::WallBar& bar : bars) {
    if (bar.centre < from || bar.centre > to) continue;
    if (bar.centre > middle - clear && bar.centre < middle + clear) return std::nullopt;
    if (bar.centre < middle) from = bar.centre + clear;
    else to = bar.centre - clear;
  }
  return view.box(wall, {from, to, extent.shallow, extent.deep});
}

// Number and letter, on white where the unit is hatched; at least the letter of an exception.
void write_unit(Pad& pad, const Area& room, const Piece& piece, const std::string& letter) {
  const std::string number = number_text(piece.number);
  const Lettering lettering{kSmallText};
  const Micrometres along = std::max(room.width(), room.height()) - 400;
  const std::string whole = letter.empty() ? number : number + " " + letter;
  const std::string text = fits(whole, along, lettering) || letter.empty() ? whole : letter;
  if (bond::is_saw_cut(piece) && fits(text, along, lettering)) {
    const Micrometres half = text_width(text, kSmallText, Weight::Regular) / 2 + 300, high = kSmallText / 2 + 250;
    const bool level = room.width() >= room.height();
    const Point middle = room.centre();
    const Micrometres x = level ? half : high, y = level ? high : half;
    pad.box(clipped_box({middle.x - x, middle.y - y, middle.x + x, middle.y + y}, room), {Pen::None}, Fill::White);
  }
  write_inside(pad, room, text, lettering);
}

void draw_unit(Pad& pad, const Context& context, const PlanView& view, const Run& run, const Piece& piece,
               const std::vector<bond::WallBar>& bars) {
  const Wall& wall = context.wall(run.wall);
  const setout::OnWall extent = setout::extent_of(context.building, run, piece);
  const Area box = view.box(wall, extent);
  const Exception exception = exception_of(piece);
  Pad unit(Role::Figure, bond::piece_name(*context.as_named, run, piece));
  unit.box(box, {Pen::Thin}, exception.fill == Fill::None ? Fill::White : exception.fill);
  const auto room = room_for_number(view, wall, extent, bars);
  if (room && view.scale.denominator <= kSmallestNumbered.denominator) write_unit(unit, *room, piece, exception.mark);
  pad.add(std::move(unit).take());
  draw_corner_parts(pad, context, view, run, piece);
}

void draw_units(Pad& pad, const Context& context, const PlanView& view, int course) {
  for (std::size_t wall = 0; wall < context.building.walls.size(); ++wall) {
    const auto bars = bond::bars_on_wall(context.building, context.layout, static_cast<int>(wall));
    for (const Run& run : bond::runs_in(context.layout, static_cast<int>(wall), course)) {
      for (const Piece& piece : bond::pieces_of(context.layout, run)) draw_unit(pad, context, view, run, piece, bars);
    }
  }
}

// A key plan shows each stretch of masonry as one white body with a thick outline.
void draw_walls(Pad& pad, const Context& context, const PlanView& view, int course) {
  for (const Run& run : context.layout.runs) {
    if (run.course != course) continue;
    const Wall& wall = context.wall(run.wall);
    const Area box = view.box(wall, run.start, run.end, Length(), context.building.series_of(wall).thickness);
    pad.box(box, {Pen::Medium}, Fill::Tint);
  }
}

void draw_bars(Pad& pad, const Context& context, const PlanView& view, int course) {
  for (const PlacedBar& bar : context.layout.bars) {
    if (course < bar.first_course || course > bar.last_course) continue;
    const Wall& wall = context.wall(bar.wall);
    pad.dot(view.at(plan_point(wall, bar.centre, bar.off_face)), view.scale.denominator <= 50 ? 800 : 600);
  }
}

// Cleanouts: a wedge at each bar's cell, in the face that it opens through.
void draw_cleanouts(Pad& pad, const Context& context, const PlanView& view, int course) {
  for (const setout::WallCleanout& cleanout : context.answer.cleanouts) {
    if (cleanout.course != course) continue;
    const Wall& wall = context.wall(cleanout.wall);
    const Length face = cleanout.outward ? Length() : context.building.series_of(wall).thickness;
    const Point at = view.at(plan_point(wall, cleanout.along, face));
    const Way way = way_of(wall.heading), right = right_of(way);
    const int inward = cleanout.outward ? 1 : -1;
    constexpr Micrometres kHalf = 900, kDeep = 1'100;
    pad.area({{at.x - way.x * kHalf, at.y - way.y * kHalf},
              {at.x + way.x * kHalf, at.y + way.y * kHalf},
              {at.x + right.x * inward * kDeep, at.y + right.y * inward * kDeep}},
             {Pen::Thin}, Fill::Black);
  }
}

/// Where a name beside a wall may stand: on the wall's inner side, then outside, each a little along it and farther
/// off.
std::vector<Point> beside_wall(const Area& box, Way in, Way way, Micrometres high) {
  std::vector<Point> places;
  const Point middle = box.centre();
  const Micrometres half = (in.x != 0 ? box.width() : box.height()) / 2;
  for (const int side : {1, -1}) {
    for (const int line : {0, 1, 2}) {
      for (const int step : {0, 1, -1, 2, -2, 3, -3}) {
        const Micrometres off = half + 1'200 + line * (high + 1'500);
        const Micrometres x = middle.x + side * in.x * off + way.x * step * 4'000,
                          y = middle.y + side * in.y * off + way.y * step * 4'000;
        // Baselines: level text hangs below or stands above; turned text reads upwards, its capitals to the left.
        if (in.x == 0) places.push_back({x, side * in.y > 0 ? y : y - high});
        else places.push_back({side * in.x > 0 ? x + high : x, y});
      }
    }
  }
  return places;
}

/// The whole name where one of its places is free, else its key there; where none is free, the key at the first.
void write_beside_wall(Pad& pad, Placer& placer, const Context& context, const Wall& wall, const Area& box,
                       const std::string& name, Lettering lettering) {
  const Way way = way_of(wall.heading);
  lettering.quarter_turns = upright(wall) ? 1 : 0;
  const std::vector<Point> places = beside_wall(box, right_of(way), way, lettering.height);
  for (const std::string& text : {name, short_name(context.names, name)}) {
    const auto place = placer.free_place(text, lettering, places);
    if (!place && text != short_name(context.names, name)) continue;
    placer.write(pad, text, lettering, place.value_or(places.front()));
    return;
  }
}

void draw_opening_names(Pad& pad, Placer& placer, const Context& context, const PlanView& view, int course) {
  for (const ResolvedOpening& opening : context.building.openings) {
    if (course < opening.first_course || course > opening.last_course) continue;
    const Wall& wall = context.wall(opening.wall);
    const Length thick = context.building.series_of(wall).thickness;
    const Length from = opening.from_in(course).distance_from_start(), to = opening.to_in(course).distance_from_start();
    const Area box = view.box(wall, from, to, Length(), thick);
    write_beside_wall(pad, placer, context, wall, box, opening.name,
                      {kSmallText, Weight::Bold, Anchor::Middle, Ink::Black, 0});
  }
}

/// One place for a side's dimension line: its wall's face, and how far off it.
struct DimensionPlace {
  Length face;
  Micrometres off;  // outwards from the building where positive
};

/// Outside; but two sides that meet in a re-entrant corner would share the room there: the first is dimensioned inside.
std::vector<DimensionPlace> dimension_places(const Context& context, const Wall& wall) {
  const Length thick = context.building.series_of(wall).thickness;
  const bool inside_first = wall.end.kind == EndKind::Corner && !convex_end(context, wall.end);
  const std::vector<DimensionPlace> out{
      {Length(), kDimensionOut}, {Length(), kDimensionOut + 5'000}, {Length(), kDimensionIn}};
  const std::vector<DimensionPlace> in{{thick, -kDimensionIn}, {thick, -kDimensionIn - 5'000}};
  std::vector<DimensionPlace> places = inside_first ? in : out;
  for (const DimensionPlace& place : inside_first ? out : in) places.push_back(place);
  return places;
}

/// A side's dimension line: between two points of a face, so far along or up the paper.
struct DimensionLine {
  Point a, b;
  Micrometres line;
  Point text;  // the middle of its text's foot
};

DimensionLine dimension_line(const PlanView& view, const Wall& wall, const DimensionPlace& place) {
  const Way in = right_of(way_of(wall.heading));
  const Point a = view.at(plan_point(wall, Length(), place.face)),
              b = view.at(plan_point(wall, wall.actual, place.face));
  const Micrometres line = upright(wall) ? a.x - in.x * place.off : a.y - in.y * place.off;
  return {a, b, line,
          upright(wall) ? upright_dimension_text(a, b, line, kText) : level_dimension_text(a, b, line, kText)};
}

/// What a dimension's text covers, with a rim round it, clear of the corners: there the next side's begins.
Area around_text(const PlanView& view, const Wall& wall, Point foot, const std::string& text) {
  constexpr Micrometres kRimAlong = 2'500, kRimAcross = 1'550, kCorner = 4'500;
  const Micrometres room = std::max(kText, view.scale.paper(wall.actual) - 2 * kCorner);
  const Micrometres half = std::min(text_width(text, kText, Weight::Regular) + 2 * kRimAlong, room) / 2;
  if (upright(wall)) return {foot.x - kText - kRimAcross, foot.y - half, foot.x + kRimAcross, foot.y + half};
  return {foot.x - half, foot.y - kRimAcross, foot.x + half, foot.y + kText + kRimAcross};
}

// Name and length of each side on a dimension line beside it: once for each side, clear of what is lettered so far.
// Where its text stands; where there is no room for one it would stand on the first line.
Area draw_side_dimension(Pad& pad, Placer& placer, const Context& context, const PlanView& view, const Wall& wall) {
  const Micrometres room = view.scale.paper(wall.actual) - 3'000;
  Lettering lettering{kText, Weight::Regular, Anchor::Middle, Ink::Black, upright(wall) ? 1 : 0};
  const std::string length = tape_text(wall.actual, context.tape());
  for (const std::string& text :
       {wall.name + "  " + both_forms(wall.actual, context.tape()), wall.name + "  " + length, length, wall.name}) {
    if (!fits(text, room, lettering)) continue;
    for (const DimensionPlace& place : dimension_places(context, wall)) {
      const auto [a, b, line, at] = dimension_line(view, wall, place);
      if (!placer.free_place(text, lettering, std::span(&at, 1))) continue;
      placer.take(text, lettering, at);
      pad.add(upright(wall) ? upright_dimension(a, b, line, text, {kText})
                            : level_dimension(a, b, line, text, {kText}));
      return around_text(view, wall, at, text);
    }
  }  // else its length stands in the table of sizes
  return around_text(view, wall, dimension_line(view, wall, dimension_places(context, wall).front()).text, wall.name);
}

// Blue arrow at the start of each side: the way the side is walked and measured.
void draw_order_arrow(Pad& pad, const PlanView& view, const Wall& wall) {
  const Way way = way_of(wall.heading), in = right_of(way);
  const Point start = view.at(wall.start_point);
  const Micrometres length = std::min(14'000, view.scale.paper(wall.actual) * 2 / 3);
  const Point from{start.x - in.x * 3'500 + way.x * 2'000, start.y - in.y * 3'500 + way.y * 2'000};
  pad.add(arrow(from, {from.x + way.x * length, from.y + way.y * length}, {Pen::Medium, Dash::Solid, Ink::Blue}));
}

// Which side runs through, at one end of a side: an arrow to the end of its own units, on the outside of an outside
// corner and on the inside of a re-entrant one; stopped by a stroke and named where it butts.
void draw_corner_arrow(Pad& pad, const Context& context, const PlanView& view, const Run& run, int towards_end) {
  const Wall& wall = context.wall(run.wall);
  const RunEnd kind = towards_end > 0 ? run.at_end : run.at_start;
  if (kind != RunEnd::ThroughCorner && kind != RunEnd::ButtCorner) return;
  const bool outside = convex_end(context, towards_end > 0 ? wall.end : wall.start);
  const Way way = way_of(wall.heading), in = right_of(way);
  const Way off = outside ? Way{-in.x, -in.y} : in;
  const Length face = outside ? Length() : context.building.series_of(wall).thickness;
  const Point corner = view.at(plan_point(wall, towards_end > 0 ? run.end : run.start, face));
  const Micrometres away = 2'400, length = std::min(10'000, view.scale.paper(run.end - run.start) / 2);
  const Point head{corner.x + off.x * away, corner.y + off.y * away};
  const Point tail{head.x - way.x * length * towards_end, head.y - way.y * length * towards_end};
  pad.add(arrow(tail, head, {Pen::Medium}));
  if (kind != RunEnd::ButtCorner) return;
  pad.line({head.x - in.x * 1'500, head.y - in.y * 1'500}, {head.x + in.x * 1'500, head.y + in.y * 1'500},
           {Pen::Thick});
}

void draw_corner_arrows(Pad& pad, const Context& context, const PlanView& view, int course) {
  for (std::size_t wall = 0; wall < context.building.walls.size(); ++wall) {
    const auto runs = bond::runs_in(context.layout, static_cast<int>(wall), course);
    if (runs.empty()) continue;
    draw_corner_arrow(pad, context, view, runs.front(), -1);
    draw_corner_arrow(pad, context, view, runs.back(), 1);
  }
}

struct NamedEnd {
  Point at;
  Way outward;  // diagonal at corners, outward and along at free ends
  std::string name;
  bool start;  // where the walk round the building begins
};

void draw_named_end(Pad& pad, Placer& placer, const Context& context, const NamedEnd& end) {
  const Point place{end.at.x + end.outward.x * 5'500, end.at.y + end.outward.y * 5'500 - kText / 2};
  const Lettering name{kText, Weight::Bold, Anchor::Middle, end.start ? Ink::Blue : Ink::Black, 0};
  const Setting setting = fitting_name(context, end.name, {10'000, kText}, name, kDrawingHeights);
  const std::string& line = setting.lines.front();
  // Where two corners are close: on, along the way out, or aside.
  std::vector<Point> places;
  const Micrometres low = place.y + kText / 2 - setting.height / 2, on = setting.height + 1'200,
                    aside = setting.width + 1'200;
  for (const auto& [x, y] : {std::pair(0, 0), {0, 1}, {1, 0}, {1, 1}, {0, 2}, {2, 0}})
    places.push_back({place.x + end.outward.x * x * aside, low + end.outward.y * y * on});
  placer.write(pad, line, setting.lettering,
               placer.free_place(line, setting.lettering, places).value_or(places.front()));
}

/// Beside the name of the corner where the walk round the building begins, where there is room.
void draw_start(Pad& pad, Placer& placer, const Context& context, const NamedEnd& end) {
  const Point name{end.at.x + end.outward.x * 5'500, end.at.y + end.outward.y * 5'500 - kText / 2};
  const std::string text(context.words.start_corner);
  const Lettering word{kSmallText, Weight::Regular, Anchor::Middle, Ink::Blue, 0};
  const Micrometres aside = text_width(text, kSmallText, Weight::Regular) / 2 + 3'000;
  const std::vector<Point> places{{name.x, name.y - kSmallText - 1'800},
                                  {name.x, name.y + kText + 1'800},
                                  {name.x - aside, name.y},
                                  {name.x + aside, name.y}};
  if (const auto place = placer.free_place(text, word, places)) placer.write(pad, text, word, *place);
}

NamedEnd named_corner(const Context& context, const PlanView& view, std::size_t index) {
  const Corner& corner = context.building.corners[index];
  const int a = corner.arriving >= 0 ? corner.arriving : corner.leaving;
  const int b = corner.leaving >= 0 ? corner.leaving : corner.arriving;
  const Way in_a = right_of(way_of(context.wall(a).heading)), in_b = right_of(way_of(context.wall(b).heading));
  const WallEnd& first = context.building.walls.front().start;
  const bool start = first.kind == EndKind::Corner && first.corner == static_cast<int>(index);
  return {view.at(corner.point), {-in_a.x - in_b.x, -in_a.y - in_b.y}, corner.name, start};
}

// An open outline's ends have names too, and its walk begins at one of them.
void add_free_ends(std::vector<NamedEnd>& ends, const Context& context, const PlanView& view, const Wall& wall) {
  const Way way = way_of(wall.heading), in = right_of(way);
  const bool first = &wall == &context.building.walls.front();
  if (wall.start.kind == EndKind::Free)
    ends.push_back({view.at(wall.start_point), {-way.x - in.x, -way.y - in.y}, wall.start_name, first});
  if (wall.end.kind == EndKind::Free)
    ends.push_back(
        {view.at(plan_point(wall, wall.actual, Length())), {way.x - in.x, way.y - in.y}, wall.end_name, false});
}

std::vector<NamedEnd> named_ends(const Context& context, const PlanView& view) {
  std::vector<NamedEnd> ends;
  for (std::size_t index = 0; index < context.building.corners.size(); ++index)
    ends.push_back(named_corner(context, view, index));
  for (const Wall& wall : context.building.walls) {
    if (!wall.interior) add_free_ends(ends, context, view, wall);
  }
  return ends;
}

void draw_interior_name(Pad& pad, Placer& placer, const Context& context, const PlanView& view, const Wall& wall) {
  const Length thick = context.building.series_of(wall).thickness;
  write_beside_wall(pad, placer, context, wall, view.box(wall, Length(), wall.actual, Length(), thick), wall.name,
                    {kText, Weight::Regular, Anchor::Middle, Ink::Black, 0});
}

PlanView view_of(const Building& building, const Area& room, Scale scale) {
  const PlanExtent extent = extent_of_plan(building);
  const Micrometres wide = scale.paper(extent.high.x - extent.low.x), high = scale.paper(extent.high.y - extent.low.y);
  return {scale, {room.centre().x - wide / 2, room.centre().y - high / 2}, extent.low};
}

}  // namespace

PlanExtent extent_of_plan(const Building& building) {
  PlanExtent extent;
  bool empty = true;
  for (const Wall& wall : building.walls) {
    const Length thick = building.series_of(wall).thickness;
    for (const PlanPoint point : {plan_point(wall, Length(), Length()), plan_point(wall, wall.actual, thick)}) {
      if (empty) extent = {point, point};
      empty = false;
      extent.low = {std::min(extent.low.x, point.x), std::min(extent.low.y, point.y)};
      extent.high = {std::max(extent.high.x, point.x), std::max(extent.high.y, point.y)};
    }
  }
  return extent;
}

Scale scale_of_plan(const Building& building, const Area& room) {
  const PlanExtent extent = extent_of_plan(building);
  return fitting_scale(extent.high.x - extent.low.x, extent.high.y - extent.low.y, room.width() - 2 * kPlanBorder,
                       room.height() - 2 * kPlanBorder, kLargestPlan);
}

Area plan_box(const Building& building, const Area& room, Scale scale, const Wall& wall, Length from, Length to) {
  return view_of(building, room, scale).box(wall, from, to, Length(), building.series_of(wall).thickness);
}

Point step_along(const Wall& wall) {
  const Way way = way_of(wall.heading);
  return {way.x, way.y};
}

Group draw_plan(const Context& context, int course, PlanDetail detail, const Area& room, Scale scale) {
  return drawn_plan(context, course, detail, room, scale).group;
}

DrawnPlan drawn_plan(const Context& context, int course, PlanDetail detail, const Area& room, Scale scale) {
  const PlanView view = view_of(context.building, room, scale);
  Pad pad(Role::Figure, words::fill_in(context.words.title_plan, {number_text(course)}));
  if (detail == PlanDetail::Units) draw_units(pad, context, view, course);
  else draw_walls(pad, context, view, course);
  draw_cleanouts(pad, context, view, course);
  draw_bars(pad, context, view, course);
  const std::vector<NamedEnd> ends = named_ends(context, view);
  Placer placer(pad.so_far(), room);
  std::vector<Area> lengths;
  for (const NamedEnd& end : ends) draw_named_end(pad, placer, context, end);
  for (const Wall& wall : context.building.walls) {
    lengths.emplace_back();
    if (wall.interior) continue;
    lengths.back() = draw_side_dimension(pad, placer, context, view, wall);
    if (detail == PlanDetail::Walls) draw_order_arrow(pad, view, wall);
  }
  for (const NamedEnd& end : ends) {
    if (end.start) draw_start(pad, placer, context, end);
  }
  if (detail == PlanDetail::Units) draw_corner_arrows(pad, context, view, course);
  for (const Wall& wall : context.building.walls) {
    placer.keep_clear(view.box(wall, Length(), wall.actual, Length(), context.building.series_of(wall).thickness));
  }
  for (const Wall& wall : context.building.walls) {
    if (wall.interior) draw_interior_name(pad, placer, context, view, wall);
  }
  draw_opening_names(pad, placer, context, view, course);
  return {std::move(pad).take(), std::move(lengths)};
}

}  // namespace stringcourse::sheet
