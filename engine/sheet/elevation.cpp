// One wall seen from outside, its start at the right, or from inside, its start at the left: courses, openings, beams,
// bars, control joints, every unit. Over 400 lines: one drawing, whose parts share its view.
#include <algorithm>
#include <optional>
#include <utility>

#include "bond/layout_parts.hpp"
#include "measure/digits.hpp"
#include "measure/sorting.hpp"
#include "setout/cleanouts.hpp"
#include "setout/marks.hpp"
#include "sheet/bare.hpp"
#include "sheet/brace_line.hpp"
#include "sheet/drawing_kinds.hpp"
#include "sheet/elevation_view.hpp"
#include "sheet/lintel_words.hpp"
#include "sheet/registry.hpp"

namespace stringcourse::sheet {
namespace {

// What letters and dimensions take round the courses.
constexpr Micrometres kElevationLeft = 32'000, kElevationRight = 14'000;
constexpr Micrometres kElevationAbove = 5'500, kElevationBelow = 33'400;

Length height_of_courses(const Building& building) { return building.courses.back().top - foot_of_course(building, 1); }

enum class Seen { Outside, Inside };

Elevation elevation_of(const Context& context, int wall, const Part& part, Scale scale, const Area& room, Seen seen) {
  const Micrometres wide = scale.paper(part.to) - scale.paper(part.from);
  const Micrometres high = scale.paper(height_of_courses(context.building));
  const Micrometres left = room.left + kElevationLeft;
  const Micrometres spare = room.right - kElevationRight - left - wide;
  const Micrometres frame_left = left + spare / 2;
  const bool inside = seen == Seen::Inside;
  const WallView view{scale, inside ? frame_left : frame_left + wide, part.from, inside};
  Elevation elevation{context, wall, part, view, 0, foot_of_course(context.building, 1), {}, room};
  const Micrometres spare_high = room.height() - kElevationAbove - kElevationBelow - high;
  elevation.ground = room.bottom + kElevationBelow + std::max(0, spare_high / 2);
  elevation.frame = {frame_left, elevation.ground, frame_left + wide, elevation.ground + high};
  return elevation;
}

using Lintels = std::vector<supply::LintelAsLaid>;

// What is said inside an opening, from the head down: what there is no room for stands in the schedule.
std::vector<std::string> opening_lines(const Context& context, const Lintels& lintels, std::size_t index) {
  const ResolvedOpening& opening = context.building.openings[index];
  const words::SheetWords& words = context.words;
  std::vector<std::string> lines{words::fill_in(
      words.opening_size, {height_text(context, opening.width()), height_text(context, opening.height())})};
  lines.push_back(words::fill_in(words.head, {height_text(context, opening.soffit)}));
  const bool floor = opening.first_course <= 1 && opening.use != OpeningUse::Window;
  lines.push_back(words::fill_in(floor ? words.floor : words.sill, {height_text(context, opening.underside)}));
  const supply::LintelAsLaid* placed = lintel_over(lintels, index);
  if (placed == nullptr) return lines;
  // A one-piece lintel carries its own length.
  if (placed->soffit != supply::Soffit::OnePiece) lines.push_back(span_text(context, *placed));
  lines.push_back(bearing_text(context, *placed));
  return lines;
}

void write_opening(Pad& pad, const Context& context, const Lintels& lintels, const Area& box, std::size_t index) {
  const Micrometres room = box.width() - 3'000;
  const Setting name = fitting_name(context, context.building.openings[index].name, {room, box.height() - 3'500},
                                    {kLargeText, Weight::Bold, Anchor::Middle, Ink::Black, 0}, kLargeHeights);
  Micrometres y = box.top - 2'500 - name.height;
  if (y < box.bottom + 1'000) return;
  write_setting(pad, {box.centre().x, y + name.height / 2}, name);
  y -= 1'500;
  for (const std::string& line : opening_lines(context, lintels, index)) {
    Lettering lettering{kText, Weight::Regular, Anchor::Middle, Ink::Black, 0};
    if (!fits(line, room, lettering)) lettering.height = kSmallText;
    const std::vector<std::string> pieces = wrapped(line, room, lettering);
    const Micrometres high = lettering.height * 8 / 5;
    if (y - high * static_cast<Micrometres>(pieces.size()) < box.bottom + 1'000) return;  // never half of a line
    for (const std::string& piece : pieces) {
      y -= high;
      pad.write({box.centre().x, y}, piece, lettering);
    }
  }
}

void draw_openings(Pad& pad, const Elevation& elevation) {
  const Building& building = elevation.context.building;
  const Lintels& lintels = elevation.context.answer.lintels;
  for (std::size_t index = 0; index < building.openings.size(); ++index) {
    const ResolvedOpening& opening = building.openings[index];
    if (opening.wall != elevation.wall) continue;
    const Length low = std::max(opening.underside, elevation.bearing);
    const Area box =
        elevation.box(opening.from.distance_from_start(), opening.to.distance_from_start(), low, opening.soffit);
    if (box.empty()) continue;
    pad.box(box, {Pen::Thick}, Fill::White);
    write_opening(pad, elevation.context, lintels, box, index);
  }
}

void draw_control_joints(Pad& pad, const Elevation& elevation) {
  for (const ControlJoint& joint : elevation.context.building.control_joints) {
    const Length middle = joint.from.distance_from_start() + (joint.to - joint.from).half_down();
    if (joint.wall != elevation.wall || !elevation.part.holds(middle)) continue;
    const Micrometres x = elevation.view.at(middle);
    pad.line({x, elevation.frame.bottom - 1'000}, {x, elevation.frame.top + 1'500},
             {Pen::Thick, Dash::DashDot, Ink::Black});
    pad.write({x, elevation.frame.bottom - 1'400 - kSmallText}, std::string(elevation.context.words.control_joint),
              {kSmallText, Weight::Bold, Anchor::Middle});
  }
}

constexpr Micrometres kHeightsOff = 10'000;  // heights end so far left of the wall

// Course numbers on both sides, heights of the tops on the left. Where courses are too low for a number each, every
// second (or fourth ...) is written.
void draw_courses(Pad& pad, const Elevation& elevation) {
  const Building& building = elevation.context.building;
  const Micrometres pitch = elevation.view.scale.paper(building.courses.back().unit_height + building.joint);
  const Micrometres room = kElevationLeft - kHeightsOff;
  const bool all_fit = std::ranges::all_of(building.courses, [&](const Course& course) {
    return fits(height_text(elevation.context, course.top), room, {kText});
  });
  const Micrometres height = pitch >= kText + 1'500 && all_fit ? kText : kSmallText;
  int every = 1;
  while (pitch * every < height + 800) every *= 2;
  // Courses may differ in height: numbers and heights each keep clear of those under them.
  Micrometres numbers_from = elevation.ground - 1'000'000, heights_from = numbers_from;
  for (const Course& course : building.courses) {
    const bool last = course.number == static_cast<int>(building.courses.size());
    const Micrometres middle = elevation.level(course.underside() + course.unit_height.half_down()) - height / 2;
    const Micrometres top = elevation.level(course.top);
    pad.line({elevation.frame.left - 9'000, top}, {elevation.frame.left - 7'000, top});
    if (course.number % every != 0 && !last) continue;
    if (middle >= numbers_from) {
      const std::string number = number_text(course.number);
      pad.write({elevation.frame.right + 1'500, middle}, course.wire ? number + " w" : number, {height});
      pad.write({elevation.frame.left - 1'500, middle}, number, {height, Weight::Regular, Anchor::End});
      numbers_from = middle + height + 700;
    }
    if (top - height / 2 < heights_from) continue;
    pad.write({elevation.frame.left - kHeightsOff, top - height / 2}, height_text(elevation.context, course.top),
              {height, Weight::Regular, Anchor::End});
    heights_from = top - height / 2 + height + 700;
  }
}

void draw_pour_stops(Pad& pad, const Elevation& elevation) {
  for (const int stop : elevation.context.building.pour_tops) {
    if (stop < 1 || stop > static_cast<int>(elevation.context.building.courses.size())) continue;
    const Micrometres y = elevation.level(elevation.context.building.courses[static_cast<std::size_t>(stop - 1)].top);
    pad.line({elevation.frame.left, y}, {elevation.frame.right, y}, {Pen::Medium, Dash::DashDot, Ink::Black});
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
  // From left to right on paper.
  sort_stably(edges, [&](Length a, Length b) { return elevation.inside() ? a < b : a > b; });
  edges.erase(std::unique(edges.begin(), edges.end()), edges.end());
  std::erase_if(edges, [&](Length edge) { return !elevation.part.holds(edge); });
  const Micrometres line = elevation.ground - 5'000;
  pad.line({elevation.frame.left, line}, {elevation.frame.right, line});
  if (elevation.part.first()) pad.dot({elevation.view.at(Length()), line}, 900, Fill::None);
  std::vector<Micrometres> wanted;
  for (const Length edge : edges) wanted.push_back(elevation.view.at(edge));
  Micrometres widest = 0;
  for (const Length edge : edges)
    widest = std::max(widest, text_width(height_text(context, edge), kText, Weight::Regular));
  const Micrometres half = widest / 2;
  const auto places = spread(wanted, widest + 2'500, elevation.room.left + half, elevation.room.right - half);
  for (std::size_t index = 0; index < edges.size(); ++index) {
    const Micrometres x = wanted[index];
    pad.line({x, elevation.ground - 1'500}, {x, line - 1'500});
    pad.line({x - 1'200, line - 1'200}, {x + 1'200, line + 1'200}, {Pen::Medium});
    pad.line({x, line - 1'500}, {places[index], line - 4'000});
    const Lettering lettering{kText, Weight::Regular, Anchor::Middle, Ink::Black, 0};
    const std::string text = height_text(context, edges[index]), inches = total_inches(edges[index]);
    pad.write({places[index], line - 4'600 - kText}, text, lettering);
    if (context.tape() == Tape::Inches && inches != text) {
      pad.write({places[index], line - 4'600 - kText - line_pitch(kText)}, inches, lettering);
    }
  }
}

void draw_outline(Pad& pad, const Elevation& elevation) {
  const Area& frame = elevation.frame;
  pad.line({frame.left - 5'000, frame.bottom}, {frame.right + 5'000, frame.bottom}, {Pen::Heavy});
  const Stroke match{Pen::Medium, Dash::DashDot, Ink::Black}, face{Pen::Thick};
  const Micrometres start = elevation.start_side(), end = elevation.end_side();
  pad.line({start, frame.bottom}, {start, frame.top}, elevation.part.first() ? face : match);
  pad.line({end, frame.bottom}, {end, frame.top}, elevation.part.last() ? face : match);
  const words::SheetWords& words = elevation.context.words;
  const Lettering low{kSmallText, Weight::Regular, Anchor::Middle, Ink::Black, 0};
  const Micrometres y = frame.top + 2'300;
  if (!elevation.part.first())
    pad.write({start, y}, words::fill_in(words.match_line, {number_text(elevation.part.index - 1)}), low);
  if (!elevation.part.last())
    pad.write({end, y}, words::fill_in(words.match_line, {number_text(elevation.part.index)}), low);
}

void write_corner_names(Pad& pad, const Elevation& elevation) {
  const Wall& wall = elevation.context.wall(elevation.wall);
  const Micrometres y = elevation.ground - 6'500;
  const auto write = [&](const std::string& name, bool at_right, Ink ink) {
    const Lettering lettering{kLargeText, Weight::Bold, at_right ? Anchor::Start : Anchor::End, ink, 0};
    const Micrometres x = at_right ? elevation.frame.right + 2'500 : elevation.frame.left - 2'500;
    const Micrometres room = at_right ? kElevationRight - 3'000 : kElevationLeft - 7'000;
    write_setting(pad, {x, y + kLargeText / 2},
                  fitting_name(elevation.context, name, {room, 9'000}, lettering, kLargeHeights));
  };
  if (elevation.part.first()) write(wall.start_name, !elevation.inside(), Ink::Blue);
  if (elevation.part.last()) write(wall.end_name, elevation.inside(), Ink::Black);
}

constexpr Micrometres kNotePitch = 4'400;
constexpr std::size_t kNoteLines = 3;  // under the dimensions

std::string_view seen_words(const Context& context, const Wall& wall, bool inside) {
  const words::SheetWords& words = context.words;
  if (wall.interior) return inside ? words.seen_other_side : words.seen_with_start;
  return inside ? words.seen_inside : words.seen_from;
}

void write_notes(Pad& pad, const Elevation& elevation) {
  const Context& context = elevation.context;
  const Wall& wall = context.wall(elevation.wall);
  std::string text =
      words::fill_in(seen_words(context, wall, elevation.inside()), {short_name(context.names, wall.start_name)});
  text += " " + std::string(context.words.datum_note);
  const auto& courses = context.building.courses;
  if (std::any_of(courses.begin(), courses.end(), [](const Course& course) { return course.wire; }))
    text += " " + std::string(context.words.wire_mark_note);
  if (!bond::bars_on_wall(context.building, context.layout, elevation.wall).empty())
    text += " " + std::string(context.words.elevation_note);
  if (!context.building.pour_tops.empty()) text += " " + std::string(context.words.pour_mark_note);
  if (!supply::floors_to_break_out(context.building, context.layout, elevation.wall).empty())
    text += " " + std::string(context.words.floor_mark_note);
  if (std::ranges::contains(context.answer.cleanouts, elevation.wall, &setout::WallCleanout::wall))
    text += " " + std::string(context.words.pour.cleanout_mark_note);
  if (const std::string brace = brace_line_note(context); !brace.empty()) text += " " + brace;
  std::vector<std::string> legend = legend_of(context, {elevation.wall, 0});
  const Lettering lettering{kSmallText};
  std::vector<std::string> lines;
  // Lengths of cuts come last, and stand in the saw list too: what there is no room for is left to it.
  while (true) {
    lines = wrapped(text + " " + joined(legend, "; "), elevation.room.width(), lettering);
    if (lines.size() <= kNoteLines || legend.empty() || legend.back().find(" = ") == std::string::npos) break;
    legend.pop_back();
  }
  Micrometres y = elevation.room.bottom + 2 * kNotePitch + 600;
  for (const std::string& line : lines) {
    pad.write({elevation.room.left, y}, line, lettering);
    y -= kNotePitch;
  }
}

bool has_cuts(const Context& context, int wall) {
  const auto runs = bond::runs_of_wall(context.layout, wall);
  return std::any_of(runs.begin(), runs.end(), [&](const Run& run) {
    const auto pieces = bond::pieces_of(context.layout, run);
    return std::any_of(pieces.begin(), pieces.end(), [](const Piece& piece) { return bond::is_saw_cut(piece); });
  });
}

/// One sheet where letters stay legible in every unit; saw cuts carry their lengths and ask for more.
Scale least_scale(const Context& context, int wall) { return has_cuts(context, wall) ? Scale{30} : Scale{50}; }

/// In rooms so high: in one where that leaves letters legible, else over several, as large as so many allow.
WallParts parts_of_elevation(const Context& context, int wall, Micrometres room) {
  const Micrometres high = room - kElevationAbove - kElevationBelow;
  const Micrometres wide = context.page.drawing.width() - kElevationLeft - kElevationRight;
  const bond::WallReach reach = bond::reach_of_wall(context.building, context.layout, wall);
  const Length length = reach.to - reach.from, height = height_of_courses(context.building);
  const Scale least = least_scale(context, wall);
  const Scale whole = fitting_scale(length, height, wide, high, {20});
  if (whole.denominator <= least.denominator) return {whole, {{reach.from, reach.to, 1, 1}}};
  const Scale tallest = fitting_scale(Length(), height, 1, high, {20});
  const Length grid = context.building.series_of(context.wall(wall)).full_pitch();
  const Scale smaller = least.denominator > tallest.denominator ? least : tallest;
  const std::size_t fewest = parts_of(reach.from, reach.to, smaller.shown(wide), grid).size();
  Scale scale = smaller;
  for (const Scale larger : kScales) {  // as large as the same number of sheets allows
    if (larger.denominator < tallest.denominator || larger.denominator > scale.denominator) continue;
    if (parts_of(reach.from, reach.to, larger.shown(wide), grid).size() == fewest) {
      scale = larger;
      break;
    }
  }
  return {scale, parts_of(reach.from, reach.to, scale.shown(wide), grid)};
}

/// Drawn into `room`, which is at least as wide and high as parts_of_elevation() counts on.
Group draw_elevation(const Context& context, int wall, const Part& part, Scale scale, const Area& room,
                     Seen seen = Seen::Outside) {
  const Elevation elevation = elevation_of(context, wall, part, scale, room, seen);
  Pad pad(Role::Figure, words::fill_in(context.words.title_elevation, {context.wall(wall).name}));
  draw_masonry(pad, elevation);
  draw_pour_stops(pad, elevation);
  draw_brace_line(pad, elevation);
  draw_openings(pad, elevation);
  draw_control_joints(pad, elevation);
  draw_outline(pad, elevation);
  draw_courses(pad, elevation);
  draw_running_dimensions(pad, elevation);
  write_corner_names(pad, elevation);
  write_notes(pad, elevation);
  return std::move(pad).take();
}

std::string elevation_title(const Building& building, const words::SheetWords& words, int number) {
  return words::fill_in(words.title_elevation, {building.walls[static_cast<std::size_t>(number - 1)].name});
}

int walls_of(const Building& building) { return static_cast<int>(building.walls.size()); }

constexpr Micrometres kHeading = 7'000;  // over each of two elevations of a sheet
constexpr Lettering kTitle{kText, Weight::Bold, Anchor::Start, Ink::Black, 0};

Micrometres half_of(const Context& context) { return context.page.drawing.height() / 2 - kHeading; }

/// Two to a sheet, where the letters of low walls stay legible so, and it takes no more parts.
std::optional<WallParts> half_parts(const Context& context, int wall) {
  const Length height = height_of_courses(context.building);
  const Micrometres high = half_of(context) - kElevationAbove - kElevationBelow;
  if (high <= 0 || fitting_scale(Length(), height, 1, high, {20}).denominator > least_scale(context, wall).denominator)
    return std::nullopt;
  WallParts parts = parts_of_elevation(context, wall, half_of(context));
  const std::size_t whole = parts_of_elevation(context, wall, context.page.drawing.height()).parts.size();
  return parts.parts.size() < 2 * whole ? std::optional(std::move(parts)) : std::nullopt;
}

PlannedSheet whole_sheet(const Context& context, int wall, const Part& part, Scale scale) {
  const std::string title = elevation_title(context.building, context.words, wall + 1);
  return {.title = part_title(context.words, title, part.index, part.of), .scale = scale, .wall = wall, .part = part};
}

/// One band alone has a sheet like any other.
PlannedSheet sheet_of_bands(const Context& context, std::vector<Band> bands, Scale scale) {
  if (bands.size() == 1) return whole_sheet(context, bands.front().wall, bands.front().part, scale);
  const auto title = [&](const Band& band) { return whole_sheet(context, band.wall, band.part, scale).title; };
  return {.title = words::fill_in(context.words.title_both_strips, {title(bands[0]), title(bands[1])}),
          .scale = scale,
          .bands = std::move(bands)};
}

std::vector<PlannedSheet> elevation_sheets(const Context& context) {
  std::vector<PlannedSheet> sheets;
  std::vector<Band> bands;
  Scale scale{1};
  const auto close = [&] {
    if (!bands.empty())
      sheets.push_back(sheet_of_bands(context, std::exchange(bands, {}), std::exchange(scale, Scale{1})));
  };
  for (int wall = 0; wall < walls_of(context.building); ++wall) {
    const std::optional<WallParts> half = half_parts(context, wall);
    if (!half) {
      close();
      const WallParts whole = parts_of_elevation(context, wall, context.page.drawing.height());
      for (const Part& part : whole.parts) sheets.push_back(whole_sheet(context, wall, part, whole.scale));
      continue;
    }
    for (const Part& part : half->parts) {
      bands.push_back({wall, 0, part});
      scale = std::max(scale, half->scale, [](Scale a, Scale b) { return a.denominator < b.denominator; });
      if (bands.size() == 2) close();
    }
  }
  close();
  return sheets;
}

Group draw_elevation_sheet(const Context& context, const PlannedSheet& sheet) {
  const Area& room = context.page.drawing;
  if (sheet.bands.empty()) return draw_elevation(context, sheet.wall, sheet.part, *sheet.scale, room);
  Pad pad(Role::Figure, sheet.title);
  Micrometres top = room.top;
  for (const Band& band : sheet.bands) {
    if (top != room.top) pad.line({room.left, top}, {room.right, top}, {Pen::Thin, Dash::Solid, Ink::Grey});
    const std::string title = elevation_title(context.building, context.words, band.wall + 1);
    write_paragraph(pad, {room.left, top}, room.width(), title, kTitle);
    pad.add(draw_elevation(context, band.wall, band.part, *sheet.scale,
                           {room.left, top - kHeading - half_of(context), room.right, top - kHeading}));
    top -= room.height() / 2;
  }
  return std::move(pad).take();
}

Drawing elevation_seen(const Context& context, SheetName name, int number, Seen seen) {
  const int wall = number - 1;
  const bond::WallReach reach = bond::reach_of_wall(context.building, context.layout, wall);
  const Length high = height_of_courses(context.building);
  const Scale scale = fitting_scale(reach.to - reach.from, high, kLargest, kLargest, {20});
  Sheet sheet =
      bare_sheet(std::move(name), scale.paper(reach.to - reach.from) + kElevationLeft + kElevationRight + 2 * kRim,
                 scale.paper(high) + kElevationAbove + kElevationBelow + 2 * kRim);
  const Area room = inside_rim(sheet);
  const Part part{reach.from, reach.to, 1, 1};
  sheet.groups.push_back(draw_elevation(context, wall, part, scale, room, seen));
  Drawing drawing{std::move(sheet), scale, 0, wall, {}};
  const Elevation elevation = elevation_of(context, wall, part, scale, room, seen);
  for (std::size_t index = 0; index < context.building.openings.size(); ++index) {
    const ResolvedOpening& opening = context.building.openings[index];
    if (opening.wall != wall) continue;
    const Area box = elevation.box(opening.from.distance_from_start(), opening.to.distance_from_start(),
                                   opening.underside, opening.soffit);
    drawing.handles.push_back(
        {Handle::What::Opening, static_cast<int>(index), box, seen == Seen::Inside ? 1 : -1, 0, true});
  }
  return drawing;
}

Drawing elevation_drawing(const Context& context, SheetName name, int number) {
  return elevation_seen(context, std::move(name), number, Seen::Outside);
}

Drawing elevation_from_inside(const Context& context, SheetName name, int number) {
  return elevation_seen(context, std::move(name), number, Seen::Inside);
}

}  // namespace

constinit const DrawingKind kElevationDrawing{
    .name = "elevation-",
    .has = [](const Context& context, int number) { return number <= walls_of(context.building); },
    .title = elevation_title,
    .draw = elevation_drawing,
    .draw_inside = elevation_from_inside,
    .in_every_set = walls_of,
};

constinit const SheetKind kElevationsSheet{
    .name = "elevation",
    .purpose = &words::SheetWords::purpose_elevations,
    .caution = {"brace-over-8-ft"},
    .sheets = elevation_sheets,
    .draw = draw_elevation_sheet,
    .drawing = &kElevationDrawing,
};

}  // namespace stringcourse::sheet
