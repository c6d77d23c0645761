#include "sheet/elevation.hpp"

#include <algorithm>

#include "setout/marks.hpp"
#include "setout/places.hpp"

namespace stringcourse::sheet {
namespace {

struct Elevation {
  const Context& context;
  int wall;
  Part part;
  WallView view;
  Micrometres ground;  // paper y of the bearing
  Length bearing;      // its height from the datum
  Area frame;           // the masonry shown
  Area room;

  Micrometres level(Length height) const { return ground + view.scale.paper(height - bearing); }
  Area box(Length from, Length to, Length low, Length high) const {
    return clipped_box({view.at(to), level(low), view.at(from), level(high)}, frame);
  }
};

Length bearing_of(const Building& building) { return building.courses.front().underside() - building.joint; }

Elevation elevation_of(const Context& context, int wall, const Part& part, Scale scale, const Area& room) {
  const Micrometres wide = scale.paper(part.to) - scale.paper(part.from);
  const Micrometres high = scale.paper(height_of_courses(context.building));
  const Micrometres left = room.left + kElevationLeft;
  const Micrometres spare = room.right - kElevationRight - left - wide;
  Elevation elevation{context, wall, part, {scale, left + spare / 2 + wide, part.from}, 0, bearing_of(context.building), {}, room};
  const Micrometres spare_high = room.height() - kElevationAbove - kElevationBelow - high;
  elevation.ground = room.bottom + kElevationBelow + std::max(0, spare_high / 2);
  elevation.frame = {elevation.view.right - wide, elevation.ground, elevation.view.right, elevation.ground + high};
  return elevation;
}

bool is_hatched(Fill fill) { return fill == Fill::Hatch45 || fill == Fill::Hatch135 || fill == Fill::CrossHatch; }

// Lines of small text at the lower left of a unit, the last one lowest, clear of bars. False: they do not fit.
bool write_level(Pad& pad, const Area& box, const std::vector<std::string>& lines, Fill fill) {
  const Micrometres inset = 600, pitch = 3'600;
  Micrometres wide = 0;
  for (const std::string& line : lines) wide = std::max(wide, text_width(line, kSmallText, Weight::Regular));
  const Micrometres high = kSmallText + pitch * static_cast<Micrometres>(lines.size() - 1);
  if (wide + 2 * inset > box.width() || high + 2 * inset > box.height()) return false;
  if (is_hatched(fill)) {
    pad.box({box.left + 300, box.bottom + 300, box.left + wide + 1'100, box.bottom + high + 1'100}, {Pen::None}, Fill::White);
  }
  Micrometres y = box.bottom + inset + high - kSmallText;
  for (const std::string& line : lines) {
    pad.write({box.left + inset, y}, line, {kSmallText});
    y -= pitch;
  }
  return true;
}

bool write_turned(Pad& pad, const Area& box, const std::string& text, Fill fill) {
  const Micrometres wide = text_width(text, kSmallText, Weight::Regular);
  if (wide + 1'000 > box.height() || kSmallText + 800 > box.width()) return false;
  const Point centre = box.centre();
  if (is_hatched(fill)) {
    pad.box({centre.x - 1'600, centre.y - wide / 2 - 300, centre.x + 1'600, centre.y + wide / 2 + 300}, {Pen::None}, Fill::White);
  }
  pad.write({centre.x + kSmallText / 2, centre.y}, text, {kSmallText, Weight::Regular, Anchor::Middle, Ink::Black, 1});
  return true;
}

// A unit's letter and a cut's length, in the fullest form that fits.
void write_exception(Pad& pad, const Context& context, const Area& box, const Piece& piece, const Exception& exception) {
  const std::string& letter = exception.letter;
  const bool under_beam_line = letter == "B" && box.height() < 6'000;  // the beam's dashes say it, and leave no room
  if (letter.empty() || under_beam_line) return;
  if (setout::is_saw_cut(piece)) {
    const std::string length = tape_text(piece.length, context.tape());
    if (write_level(pad, box, {letter + " " + length}, exception.fill)) return;
    if (write_level(pad, box, {letter, length}, exception.fill)) return;
    if (write_turned(pad, box, letter + " " + length, exception.fill)) return;
    if (write_turned(pad, box, length, exception.fill)) return;
  }
  if (!write_level(pad, box, {letter}, exception.fill)) write_turned(pad, box, letter, exception.fill);
}

void draw_unit(Pad& pad, const Elevation& elevation, const Run& run, const Piece& piece) {
  const Context& context = elevation.context;
  const Course& course = context.building.courses[static_cast<std::size_t>(run.course - 1)];
  const Area box = elevation.box(piece.start.nearest_nanometre(), setout::far_end(piece).nearest_nanometre(),
                                course.underside(), course.top);
  if (box.empty()) return;
  const Exception exception = exception_of(piece);
  Pad unit(Role::Figure, setout::piece_name(context.building, run, piece));
  unit.box(box, {Pen::Thin}, exception.fill == Fill::None ? Fill::White : exception.fill);
  write_exception(unit, context, box, piece, exception);
  pad.add(std::move(unit).take());
}

// Where this wall butts at an outside corner, the end of the other wall's unit shows.
void draw_met_ends(Pad& pad, const Elevation& elevation, const Run& run) {
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
  for (const Run& run : setout::runs_of_wall(elevation.context.layout, elevation.wall)) {
    draw_met_ends(pad, elevation, run);
    for (const Piece& piece : setout::pieces_of(elevation.context.layout, run)) draw_unit(pad, elevation, run, piece);
  }
}

void draw_one_piece_lintel(Pad& pad, const Elevation& elevation, const PlacedLintel& placed) {
  const Building& building = elevation.context.building;
  const ResolvedOpening& opening = building.openings[static_cast<std::size_t>(placed.opening)];
  if (opening.wall != elevation.wall || !opening.lintel || opening.lintel->make != LintelMake::OnePiece) return;
  const ResolvedLintel& lintel = *opening.lintel;
  const auto last = std::min<std::size_t>(static_cast<std::size_t>(lintel.first_course + lintel.courses - 1), building.courses.size());
  const Length low = building.courses[static_cast<std::size_t>(lintel.first_course - 1)].underside();
  const Area box = elevation.box(opening.from.distance_from_start() - placed.start_bearing,
                                opening.to.distance_from_start() + placed.end_bearing, low, building.courses[last - 1].top);
  pad.box(box, {Pen::Medium}, Fill::Hatch135);
  if (box.empty()) return;
  pad.box({box.centre().x - 2'500, box.centre().y - 2'300, box.centre().x + 2'500, box.centre().y + 2'300}, {Pen::None}, Fill::White);
  pad.write({box.centre().x, box.centre().y - kText / 2}, "L", {kText, Weight::Bold, Anchor::Middle});
}

const PlacedLintel* lintel_over(const Layout& layout, std::size_t opening) {
  for (const PlacedLintel& lintel : layout.lintels) {
    if (lintel.opening == static_cast<std::int32_t>(opening)) return &lintel;
  }
  return nullptr;
}

// What is said inside an opening, from the head down: what there is no room for stands in the schedule.
std::vector<std::string> opening_lines(const Context& context, std::size_t index) {
  const ResolvedOpening& opening = context.building.openings[index];
  const Words& words = context.words;
  std::vector<std::string> lines{fill_in(words.opening_size, {height_text(context, opening.width()), height_text(context, opening.height())})};
  lines.push_back(fill_in(words.head, {height_text(context, opening.soffit)}));
  const bool floor = opening.first_course <= 1 && opening.use != OpeningUse::Window;
  lines.push_back(fill_in(floor ? words.floor : words.sill, {height_text(context, opening.underside)}));
  const PlacedLintel* placed = lintel_over(context.layout, index);
  if (!placed || !opening.lintel) return lines;
  const Length whole = opening.width() + placed->start_bearing + placed->end_bearing;
  lines.push_back(opening.lintel->make == LintelMake::BuiltUp ? std::string(words.lintel_built_up)
                                                              : fill_in(words.lintel_one_piece, {height_text(context, whole)}));
  lines.push_back(fill_in(words.lintel_bearing, {height_text(context, placed->start_bearing), height_text(context, placed->end_bearing)}));
  return lines;
}

void write_opening(Pad& pad, const Context& context, const Area& box, std::size_t index) {
  const Lettering name{kLargeText, Weight::Bold, Anchor::Middle, Ink::Black, 0};
  const Micrometres room = box.width() - 3'000;
  Micrometres y = box.top - 2'500 - kLargeText;
  if (y < box.bottom + 1'000) return;
  pad.write({box.centre().x, y}, clipped(context.building.openings[index].name, room, name), name);
  y -= 1'500;
  for (const std::string& line : opening_lines(context, index)) {
    Lettering lettering{kText, Weight::Regular, Anchor::Middle, Ink::Black, 0};
    if (!fits(line, room, lettering)) lettering.height = kSmallText;
    for (const std::string& piece : wrapped(line, room, lettering)) {
      y -= lettering.height * 8 / 5;
      if (y < box.bottom + 1'000) return;
      pad.write({box.centre().x, y}, piece, lettering);
    }
  }
}

void draw_openings(Pad& pad, const Elevation& elevation) {
  const Building& building = elevation.context.building;
  for (std::size_t index = 0; index < building.openings.size(); ++index) {
    const ResolvedOpening& opening = building.openings[index];
    if (opening.wall != elevation.wall) continue;
    const Length low = std::max(opening.underside, elevation.bearing);
    const Area box = elevation.box(opening.from.distance_from_start(), opening.to.distance_from_start(), low, opening.soffit);
    if (box.empty()) continue;
    pad.box(box, {Pen::Thick}, Fill::White);
    write_opening(pad, elevation.context, box, index);
  }
}

void draw_bars(Pad& pad, const Elevation& elevation) {
  const Building& building = elevation.context.building;
  for (const setout::WallBar& bar : setout::bars_on_wall(building, elevation.context.layout, elevation.wall)) {
    if (!elevation.part.holds(bar.centre)) continue;
    const Micrometres x = elevation.view.at(bar.centre);
    const Length low = building.courses[static_cast<std::size_t>(bar.first_course - 1)].underside() - building.joint;
    const Length high = building.courses[static_cast<std::size_t>(bar.last_course - 1)].top;
    pad.line({x, elevation.level(low)}, {x, elevation.level(high)}, {Pen::Thick, Dash::Dashed, Ink::Black});
  }
}

void draw_beams(Pad& pad, const Elevation& elevation) {
  for (const Course& course : elevation.context.building.courses) {
    if (!course.bond_beam) continue;
    const Micrometres y = elevation.level(course.underside() + course.unit_height.half_down());
    pad.line({elevation.frame.left, y}, {elevation.frame.right, y}, {Pen::Thick, Dash::Dashed, Ink::Black});
  }
}

void draw_control_joints(Pad& pad, const Elevation& elevation) {
  for (const ControlJoint& joint : elevation.context.building.control_joints) {
    const Length middle = joint.from.distance_from_start() + (joint.to - joint.from).half_down();
    if (joint.wall != elevation.wall || !elevation.part.holds(middle)) continue;
    const Micrometres x = elevation.view.at(middle);
    pad.line({x, elevation.frame.bottom - 1'000}, {x, elevation.frame.top + 1'500}, {Pen::Thick, Dash::DashDot, Ink::Black});
    pad.write({x, elevation.frame.bottom - 1'400 - kSmallText}, std::string(elevation.context.words.control_joint), {kSmallText, Weight::Bold, Anchor::Middle});
  }
}

// Course numbers on both sides, heights of the tops on the left. Where courses are too low for a number each, every
// second (or fourth ...) is written.
void draw_courses(Pad& pad, const Elevation& elevation) {
  const Building& building = elevation.context.building;
  const Micrometres pitch = elevation.view.scale.paper(building.courses.back().unit_height + building.joint);
  const Micrometres height = pitch >= kText + 1'500 ? kText : kSmallText;
  int every = 1;
  while (pitch * every < height + 800) every *= 2;
  Micrometres free_from = elevation.ground - 1'000'000;
  for (const Course& course : building.courses) {
    const bool last = course.number == static_cast<int>(building.courses.size());
    const Micrometres middle = elevation.level(course.underside() + course.unit_height.half_down()) - height / 2;
    const Micrometres top = elevation.level(course.top);
    pad.line({elevation.frame.left - 9'000, top}, {elevation.frame.left - 7'000, top});
    if ((course.number % every != 0 && !last) || middle < free_from) continue;
    std::string number = number_text(course.number);
    if (course.wire) number += " w";
    pad.write({elevation.frame.right + 1'500, middle}, number, {height});
    pad.write({elevation.frame.left - 1'500, middle}, number_text(course.number), {height, Weight::Regular, Anchor::End});
    pad.write({elevation.frame.left - 10'000, top - height / 2}, height_text(elevation.context, course.top),
              {height, Weight::Regular, Anchor::End});
    free_from = middle + height + 700;
  }
}

void draw_pour_stops(Pad& pad, const Elevation& elevation) {
  for (const int stop : elevation.context.building.pour_tops) {
    if (stop < 1 || stop > static_cast<int>(elevation.context.building.courses.size())) continue;
    const Micrometres y = elevation.level(elevation.context.building.courses[static_cast<std::size_t>(stop - 1)].top);
    pad.line({elevation.frame.left - 6'000, y}, {elevation.frame.right + 6'000, y}, {Pen::Medium, Dash::DashDot, Ink::Black});
  }
}

struct Edge {
  Length at;
  const ResolvedOpening* opening;
};

// Jambs and the wall's end, measured from its start corner: each rounded once.
void draw_running_dimensions(Pad& pad, const Elevation& elevation) {
  const Context& context = elevation.context;
  std::vector<Length> edges;
  for (const ResolvedOpening& opening : context.building.openings) {
    if (opening.wall != elevation.wall) continue;
    for (const Position edge : {opening.from, opening.to}) edges.push_back(edge.distance_from_start());
  }
  edges.push_back(context.wall(elevation.wall).actual);
  std::sort(edges.begin(), edges.end(), [](Length a, Length b) { return a > b; });  // from left to right on paper
  edges.erase(std::unique(edges.begin(), edges.end()), edges.end());
  std::erase_if(edges, [&](Length edge) { return !elevation.part.holds(edge); });
  const Micrometres line = elevation.ground - 5'000;
  pad.line({elevation.frame.left, line}, {elevation.frame.right, line});
  if (elevation.part.first()) pad.dot({elevation.view.at(Length()), line}, 900, Fill::None);
  std::vector<Micrometres> wanted;
  Micrometres widest = 0;
  for (const Length edge : edges) {
    wanted.push_back(elevation.view.at(edge));
    widest = std::max(widest, text_width(height_text(context, edge), kText, Weight::Regular));
  }
  const Micrometres half = widest / 2;
  const auto places = spread(wanted, widest + 2'500, elevation.room.left + half, elevation.room.right - half);
  for (std::size_t index = 0; index < edges.size(); ++index) {
    const Micrometres x = wanted[index];
    pad.line({x, elevation.ground - 1'500}, {x, line - 1'500});
    pad.line({x - 1'200, line - 1'200}, {x + 1'200, line + 1'200}, {Pen::Medium});
    pad.line({x, line - 1'500}, {places[index], line - 4'000});
    pad.write({places[index], line - 4'600 - kText}, height_text(context, edges[index]), {kText, Weight::Regular, Anchor::Middle});
  }
}

void draw_outline(Pad& pad, const Elevation& elevation) {
  const Area& frame = elevation.frame;
  pad.line({frame.left - 5'000, frame.bottom}, {frame.right + 5'000, frame.bottom}, {Pen::Heavy});
  const Stroke match{Pen::Medium, Dash::DashDot, Ink::Black}, face{Pen::Thick};
  pad.line({frame.right, frame.bottom}, {frame.right, frame.top}, elevation.part.first() ? face : match);
  pad.line({frame.left, frame.bottom}, {frame.left, frame.top}, elevation.part.last() ? face : match);
  const Words& words = elevation.context.words;
  const Lettering low{kSmallText, Weight::Regular, Anchor::Middle, Ink::Black, 0};
  const Micrometres y = frame.top + 2'300;
  if (!elevation.part.first()) pad.write({frame.right, y}, fill_in(words.match_line, {number_text(elevation.part.index - 1)}), low);
  if (!elevation.part.last()) pad.write({frame.left, y}, fill_in(words.match_line, {number_text(elevation.part.index)}), low);
}

void write_corner_names(Pad& pad, const Elevation& elevation) {
  const Wall& wall = elevation.context.wall(elevation.wall);
  const Micrometres y = elevation.ground - 6'500;
  const Lettering start{kLargeText, Weight::Bold, Anchor::Start, Ink::Blue, 0};
  const Lettering end{kLargeText, Weight::Bold, Anchor::End, Ink::Black, 0};
  if (elevation.part.first()) pad.write({elevation.frame.right + 2'500, y}, clipped(wall.start_name, 11'000, start), start);
  if (elevation.part.last()) pad.write({elevation.frame.left - 2'500, y}, clipped(wall.end_name, 25'000, end), end);
}

void write_notes(Pad& pad, const Elevation& elevation) {
  const Context& context = elevation.context;
  const Wall& wall = context.wall(elevation.wall);
  std::string text = fill_in(wall.interior ? context.words.seen_from_inside : context.words.seen_from, {wall.start_name});
  text += " " + std::string(context.words.datum_note);
  for (const std::string& entry : legend_of(context)) text += "  " + entry + ".";
  const Lettering lettering{kSmallText};
  pad.write({elevation.room.left, elevation.room.bottom + 800}, clipped(text, elevation.room.width(), lettering), lettering);
}

}  // namespace

Length height_of_courses(const Building& building) {
  return building.courses.back().top - bearing_of(building);
}

ElevationPlan plan_elevation(const Context& context, int wall) {
  const Micrometres high = context.page.drawing.height() - kElevationAbove - kElevationBelow;
  const Scale scale = fitting_scale(Length(), height_of_courses(context.building), 1, high, {20});
  const setout::Reach reach = setout::reach_of_wall(context.building, context.layout, wall);
  const Length room = scale.shown(context.page.drawing.width() - kElevationLeft - kElevationRight);
  return {scale, parts_of(reach.from, reach.to, room, context.building.series_of(context.wall(wall)).full_pitch())};
}

Group draw_elevation(const Context& context, int wall, const Part& part, Scale scale, const Area& room) {
  const Elevation elevation = elevation_of(context, wall, part, scale, room);
  Pad pad(Role::Figure, fill_in(context.words.title_elevation, {context.wall(wall).name}));
  draw_units(pad, elevation);
  for (const PlacedLintel& lintel : context.layout.lintels) draw_one_piece_lintel(pad, elevation, lintel);
  draw_beams(pad, elevation);
  draw_bars(pad, elevation);
  draw_pour_stops(pad, elevation);
  draw_openings(pad, elevation);
  draw_control_joints(pad, elevation);
  draw_outline(pad, elevation);
  draw_courses(pad, elevation);
  draw_running_dimensions(pad, elevation);
  write_corner_names(pad, elevation);
  write_notes(pad, elevation);
  return std::move(pad).take();
}

}  // namespace stringcourse::sheet
