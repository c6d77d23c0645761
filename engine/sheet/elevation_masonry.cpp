// Units, letters, lintels, beams and bars of an elevation.
#include <algorithm>

#include "bond/layout_parts.hpp"
#include "measure/sorting.hpp"
#include "setout/cleanouts.hpp"
#include "sheet/elevation_view.hpp"
#include "supply/lintels.hpp"

namespace stringcourse::sheet {
namespace {

constexpr Micrometres kInset = 500;

// Not as it was printed before: a heavy edge inside its own.
bool is_changed(const Context& context, const Piece& piece) {
  const std::vector<std::uint32_t>* changed = context.answer.as_built ? &context.answer.as_built->pieces : nullptr;
  return changed != nullptr &&
         std::ranges::binary_search(*changed, static_cast<std::uint32_t>(&piece - context.layout.pieces.data()));
}

void draw_unit(Pad& pad, const Elevation& elevation, const Run& run, const Piece& piece) {
  const Context& context = elevation.context;
  const Course& course = context.building.courses[static_cast<std::size_t>(run.course - 1)];
  const Area box = elevation.box(piece.start.nearest_nanometre(), bond::far_end(piece).nearest_nanometre(),
                                 course.underside(), course.top);
  if (box.empty()) return;
  const Exception exception = exception_of(piece);
  Pad unit(Role::Figure, bond::piece_name(*context.as_named, run, piece));
  unit.box(box, {Pen::Thin}, exception.fill == Fill::None ? Fill::White : exception.fill);
  constexpr Micrometres kEdge = 350;
  if (is_changed(context, piece))
    unit.box({box.left + kEdge, box.bottom + kEdge, box.right - kEdge, box.top - kEdge},
             {Pen::Thick, Dash::Solid, Ink::Blue});
  pad.add(std::move(unit).take());
}

// One label on a white ground in the middle of a box, level or turned. False: it does not fit.
bool write_label(Pad& pad, const Area& box, const std::string& text) {
  const Micrometres wide = text_width(text, kSmallText, Weight::Regular) / 2 + 350, high = kSmallText / 2 + 350;
  const Point middle = box.centre();
  Lettering lettering{kSmallText, Weight::Regular, Anchor::Middle, Ink::Black, 0};
  if (2 * wide <= box.width() && 2 * high <= box.height()) {
    pad.box({middle.x - wide, middle.y - high, middle.x + wide, middle.y + high}, {Pen::None}, Fill::White);
    pad.write({middle.x, middle.y - kSmallText / 2}, text, lettering);
    return true;
  }
  if (2 * high > box.width() || 2 * wide > box.height()) return false;
  lettering.quarter_turns = 1;
  pad.box({middle.x - high, middle.y - wide, middle.x + high, middle.y + wide}, {Pen::None}, Fill::White);
  pad.write({middle.x + kSmallText / 2, middle.y}, text, lettering);
  return true;
}

// The same in a box hardly wider than the letters are high: turned, its ground as wide as they.
bool write_turned_tight(Pad& pad, const Area& box, const std::string& text) {
  const Micrometres wide = text_width(text, kSmallText, Weight::Regular) / 2 + 150, high = kSmallText / 2 + 100;
  const Point middle = box.centre();
  if (2 * high > box.width() || 2 * wide > box.height()) return false;
  pad.box({middle.x - high, middle.y - wide, middle.x + high, middle.y + wide}, {Pen::None}, Fill::White);
  pad.write({middle.x + kSmallText / 2, middle.y}, text, {kSmallText, Weight::Regular, Anchor::Middle, Ink::Black, 1});
  return true;
}

// The widest part of a unit that no bar of its course crosses.
Area clear_of_bars(const Elevation& elevation, const std::vector<bond::WallBar>& bars, const Run& run,
                   const Area& unit) {
  Area widest{};
  Micrometres left = unit.left + kInset;
  const auto take = [&](Micrometres right) {
    if (right - left > widest.width()) widest = {left, unit.bottom + 200, right, unit.top - 200};
  };
  std::vector<Micrometres> crossings;
  for (const bond::WallBar& bar : bars) {
    const Micrometres x = elevation.view.at(bar.centre);
    if (run.course >= bar.first_course && run.course <= bar.last_course && x > unit.left && x < unit.right)
      crossings.push_back(x);
  }
  sort_stably(crossings);
  for (const Micrometres x : crossings) {
    take(x - kInset);
    left = x + kInset;
  }
  take(unit.right - kInset);
  return widest;
}

// A cut's mark and length in the fullest form that fits; any other exception's letter. Halves under a bar go without:
// their ground tells them. So do beam units under a beam's line.
void write_exception(Pad& pad, const Elevation& elevation, const std::vector<bond::WallBar>& bars, const Run& run,
                     const Piece& piece) {
  const Context& context = elevation.context;
  const Course& course = context.building.courses[static_cast<std::size_t>(run.course - 1)];
  const Area unit = elevation.box(piece.start.nearest_nanometre(), bond::far_end(piece).nearest_nanometre(),
                                  course.underside(), course.top);
  const std::string letter = exception_of(piece).mark;
  if (unit.empty() || letter.empty()) return;
  const Area room = clear_of_bars(elevation, bars, run, unit);
  if (room.empty()) return;
  if (!bond::is_saw_cut(piece)) {
    if (letter != "BB" || !course.bond_beam) write_label(pad, room, letter);
    return;
  }
  const std::string mark = cut_mark(context, context.wall(elevation.wall).series, piece);
  const std::string length = saw_text(context, piece.length);
  if (write_label(pad, room, mark + " " + length) || write_label(pad, room, length)) return;
  if (write_label(pad, room, mark) || write_label(pad, room, letter)) return;
  // A narrow piece that no bar crosses takes its mark turned, from edge to edge.
  if (room.width() + 2 * kInset == unit.width() && !write_turned_tight(pad, unit, mark))
    write_turned_tight(pad, unit, letter);
}

void write_exceptions(Pad& pad, const Elevation& elevation) {
  const auto bars = bond::bars_on_wall(elevation.context.building, elevation.context.layout, elevation.wall);
  for (const Run& run : bond::runs_of_wall(elevation.context.layout, elevation.wall)) {
    for (const Piece& piece : bond::pieces_of(elevation.context.layout, run))
      write_exception(pad, elevation, bars, run, piece);
  }
}

// Where this wall butts at an outside corner, the end of the other wall's unit shows.
void draw_met_ends(Pad& pad, const Elevation& elevation, const Run& run) {
  if (elevation.inside()) return;
  const Context& context = elevation.context;
  const Wall& wall = context.wall(elevation.wall);
  const Course& course = context.building.courses[static_cast<std::size_t>(run.course - 1)];
  const auto draw = [&](Length from, Length to) {
    pad.box(elevation.box(from, to, course.underside(), course.top), {Pen::Thin}, Fill::White);
  };
  if (run.at_start == RunEnd::ButtCorner && run.start > Length()) draw(Length(), run.start);
  if (run.at_end == RunEnd::ButtCorner && run.end < wall.actual) draw(run.end, wall.actual);
}

void draw_units(Pad& pad, const Elevation& elevation) {
  for (const Run& run : bond::runs_of_wall(elevation.context.layout, elevation.wall)) {
    draw_met_ends(pad, elevation, run);
    for (const Piece& piece : bond::pieces_of(elevation.context.layout, run)) draw_unit(pad, elevation, run, piece);
  }
}

// From inside, a wall that goes on from a convex corner stands before this one's end: cut through, from top to bottom.
void draw_walls_before(Pad& pad, const Elevation& elevation) {
  const Context& context = elevation.context;
  const Wall& wall = context.wall(elevation.wall);
  const auto draw = [&](const WallEnd& end, bool at_start) {
    if (end.kind != EndKind::Corner) return;
    const Corner& corner = context.building.corners[static_cast<std::size_t>(end.corner)];
    if (!corner.convex) return;
    const Wall& other = context.wall(at_start ? corner.arriving : corner.leaving);
    const Length thick = context.building.series_of(other).thickness;
    const Area box = at_start ? elevation.box(Length(), thick, elevation.bearing, context.building.courses.back().top)
                              : elevation.box(wall.actual - thick, wall.actual, elevation.bearing,
                                              context.building.courses.back().top);
    if (box.empty()) return;
    pad.box(box, {Pen::None}, Fill::White);
    pad.box(box, {Pen::Thick}, Fill::Hatch45);
  };
  draw(wall.start, true);
  draw(wall.end, false);
}

// The fullest of `texts` that fits, on a white ground in the middle of a lintel: none is ever cut.
void write_in_lintel(Pad& pad, const Area& box, const std::vector<std::string>& texts) {
  Lettering lettering{box.height() > 6'000 ? kText : kSmallText, Weight::Regular, Anchor::Middle, Ink::Black, 0};
  for (const std::string& text : texts) {
    for (const Micrometres height : {lettering.height, kSmallText}) {
      lettering.height = height;
      if (!fits(text, box.width() - 2'000, lettering)) continue;
      const Micrometres half = text_width(text, height, Weight::Regular) / 2 + 600, high = height / 2 + 500;
      const Point middle = box.centre();
      const Area ground{middle.x - half, middle.y - high, middle.x + half, middle.y + high};
      pad.box(clipped_box(ground, box), {Pen::None}, Fill::White);
      pad.write({middle.x, middle.y - height / 2}, text, lettering);
      return;
    }
  }
}

void draw_one_piece_lintel(Pad& pad, const Elevation& elevation, const PlacedLintel& placed) {
  const Building& building = elevation.context.building;
  const ResolvedOpening& opening = building.openings[static_cast<std::size_t>(placed.opening)];
  if (opening.wall != elevation.wall || !opening.lintel || opening.lintel->make != LintelMake::OnePiece) return;
  const ResolvedLintel& lintel = *opening.lintel;
  const auto last = std::min<std::size_t>(static_cast<std::size_t>(lintel.first_course + lintel.courses - 1),
                                          building.courses.size());
  const Length low = building.courses[static_cast<std::size_t>(lintel.first_course - 1)].underside();
  const Area box =
      elevation.box(opening.from.distance_from_start() - placed.start_bearing,
                    opening.to.distance_from_start() + placed.end_bearing, low, building.courses[last - 1].top);
  pad.box(box, {Pen::Medium}, Fill::Hatch135);
  if (box.empty()) return;
  const std::string length =
      height_text(elevation.context, opening.width() + placed.start_bearing + placed.end_bearing);
  const words::SheetWords& words = elevation.context.words;
  write_in_lintel(
      pad, box,
      {words::fill_in(words.lintel_one_piece, {length}), words::fill_in(words.lintel_length, {length}), length});
}

void draw_bars(Pad& pad, const Elevation& elevation) {
  const Building& building = elevation.context.building;
  for (const bond::WallBar& bar : bond::bars_on_wall(building, elevation.context.layout, elevation.wall)) {
    if (!elevation.part.holds(bar.centre)) continue;
    const Micrometres x = elevation.view.at(bar.centre);
    const Length low = foot_of_course(building, bar.first_course), high = top_of_course(building, bar.last_course);
    pad.line({x, elevation.level(low)}, {x, elevation.level(high)}, {Pen::Medium, Dash::Dashed, Ink::Black});
  }
}

// Where a bar passes the floor of a lintel unit: a black triangle at the unit's foot, its point up along the bar.
void draw_floor_marks(Pad& pad, const Elevation& elevation) {
  const Building& building = elevation.context.building;
  constexpr Micrometres kHalf = 900, kHigh = 1'600;
  for (const supply::BarThrough& bar :
       supply::floors_to_break_out(building, elevation.context.layout, elevation.wall)) {
    if (bar.wall != elevation.wall || !elevation.part.holds(bar.centre)) continue;
    const Micrometres x = elevation.view.at(bar.centre);
    const Micrometres y = elevation.level(building.courses[static_cast<std::size_t>(bar.course - 1)].underside());
    pad.area({{x - kHalf, y}, {x + kHalf, y}, {x, y + kHigh}}, {Pen::Thin}, Fill::Black);
  }
}

// A cleanout: a square at its unit's foot under the bar, black where it opens to this side.
void draw_cleanouts(Pad& pad, const Elevation& elevation) {
  const Building& building = elevation.context.building;
  constexpr Micrometres kHalf = 800, kHigh = 1'600;
  for (const setout::WallCleanout& cleanout : elevation.context.answer.cleanouts) {
    if (cleanout.wall != elevation.wall || !elevation.part.holds(cleanout.along)) continue;
    const Micrometres x = elevation.view.at(cleanout.along);
    const Micrometres y = elevation.level(building.courses[static_cast<std::size_t>(cleanout.course - 1)].underside());
    pad.box({x - kHalf, y, x + kHalf, y + kHigh}, {Pen::Thin},
            cleanout.outward != elevation.inside() ? Fill::Black : Fill::White);
  }
}

void draw_beams(Pad& pad, const Elevation& elevation) {
  for (const Course& course : elevation.context.building.courses) {
    if (!course.bond_beam) continue;
    const Micrometres y = elevation.level(course.underside() + course.unit_height.half_down());
    pad.line({elevation.frame.left, y}, {elevation.frame.right, y}, {Pen::Medium, Dash::Dashed, Ink::Black});
  }
}

}  // namespace

void draw_masonry(Pad& pad, const Elevation& elevation) {
  draw_units(pad, elevation);
  draw_beams(pad, elevation);
  draw_bars(pad, elevation);
  draw_floor_marks(pad, elevation);
  draw_cleanouts(pad, elevation);
  write_exceptions(pad, elevation);
  for (const PlacedLintel& lintel : elevation.context.layout.lintels) draw_one_piece_lintel(pad, elevation, lintel);
  if (elevation.inside()) draw_walls_before(pad, elevation);
}

}  // namespace stringcourse::sheet
