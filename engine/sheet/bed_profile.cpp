// The bed under every unit of the first course. Over 400 lines: one drawing, whose parts share its two scales.
#include <algorithm>
#include <array>

#include "bond/layout_parts.hpp"
#include "measure/digits.hpp"
#include "measure/sorting.hpp"
#include "paper/placing.hpp"
#include "paper/running_labels.hpp"
#include "setout/marks.hpp"
#include "sheet/bare.hpp"
#include "sheet/hook_words.hpp"
#include "sheet/registry.hpp"
#include "sheet/strip.hpp"

namespace stringcourse::sheet {
namespace {

constexpr Micrometres kUnitHigh = 14'000;  // units are drawn so high, whatever their size
constexpr Micrometres kAboveInches = 52'000, kAboveMillimetres = 45'000;  // bed numbers, leaders and running marks
constexpr Micrometres kNumbers = 8'500;  // of that: bed numbers, between leaders that run plumb
constexpr Micrometres kLeader = 11'500;
constexpr Micrometres kGroundMost = 40'000,
                      kUnderReading = 9'000;  // from the bed's top to the foot of the ground drawn
constexpr Lettering kNote{kSmallText, Weight::Regular, Anchor::Start, Ink::Black, 0},
    kRule{kText, Weight::Bold, Anchor::Start, Ink::Black, 0};

const ground::BedAsFound* bed_of(const Context& context) {
  const ground::AsFound* found = context.has_readings() ? &context.answer.found : nullptr;
  return found != nullptr && found->levels && found->levels->bed ? &*found->levels->bed : nullptr;
}

/// Beds stand at full height: 1/4 in is 1/4 in on paper.
Micrometres full_size(Length length) { return static_cast<Micrometres>((length.in_nanometres() + 500) / 1000); }

struct Profile {
  const Context& context;
  const ground::BedAsFound& bed;
  int wall;
  const Part& part;
  WallView view;
  Micrometres line;    // paper y of the bed's top
  Micrometres ground;  // how far under it the ground is drawn
  Micrometres left, right;
};

bool out_of_range(const Profile& profile, const ground::UnitBed& unit) {
  return unit.thinnest < profile.bed.range.least || unit.thickest > profile.bed.range.most;
}

/// Sixteenths or millimetres, rounded; two numbers where the ends differ.
std::string bed_text(const Context& context, const ground::UnitBed& unit) {
  const Length step = tape_step(context.tape());
  const auto count = [&](Length length) { return rounded_to(length, step).whole_multiples(step); };
  const std::int64_t thin = count(unit.thinnest), thick = count(unit.thickest);
  return thin == thick ? number_text(thin) : number_text(thin) + "-" + number_text(thick);
}

void draw_units(Pad& pad, const Profile& profile) {
  Placer numbers{Group()};
  for (const ground::UnitBed& unit : profile.bed.units) {
    if (unit.wall != profile.wall || unit.to <= profile.part.from || unit.from >= profile.part.to) continue;
    const Length from = std::max(unit.from, profile.part.from), to = std::min(unit.to, profile.part.to);
    const Area box{profile.view.at(to), profile.line, profile.view.at(from), profile.line + kUnitHigh};
    pad.box(box, {Pen::Thin}, Fill::White);
    pad.write({box.centre().x, box.bottom + 2'000}, number_text(unit.number),
              {kSmallText, Weight::Regular, Anchor::Middle, Ink::Grey, 0});
    const bool out = out_of_range(profile, unit);
    const std::string text = bed_text(profile.context, unit);
    const Lettering lettering{fits(text, box.width(), {kText}) ? kText : kSmallText,
                              out ? Weight::Bold : Weight::Regular, Anchor::Middle, Ink::Black, 0};
    // Over its unit; where the neighbour's is as wide as both units, a line higher.
    const Point places[] = {{box.centre().x, box.top + 2'200}, {box.centre().x, box.top + 2'900 + kText}};
    const Point place = numbers.free_place(text, lettering, places).value_or(places[0]);
    numbers.write(pad, text, lettering, place);
    if (!out) continue;
    const Micrometres half = text_width(text, lettering.height, lettering.weight) / 2 + 1'000;
    pad.box({box.centre().x - half, place.y - 1'200, box.centre().x + half, place.y + 1'400 + lettering.height},
            {Pen::Thick, Dash::Solid, Ink::Red});
  }
}

/// Paper y of the ground at a height; what lies deeper than is drawn stands at its foot, its number true.
Micrometres ground_at(const Profile& profile, Length height) {
  return profile.line - std::min(full_size(profile.bed.level.top - height), profile.ground - kUnderReading);
}

/// Whether a line of letters that stands on this height meets the line of one of the bed's limits.
bool on_a_limit(const Profile& profile, Micrometres baseline) {
  return std::ranges::any_of(std::array{profile.bed.range.least, profile.bed.range.most}, [&](Length limit) {
    const Micrometres line = profile.line - full_size(limit);
    return baseline - 400 < line && line < baseline + kSmallText + 400;
  });
}

/// The ground between the readings, and the readings.
void draw_ground(Pad& pad, const Profile& profile) {
  std::vector<ground::BearingHeight> heights;
  for (const ground::BearingHeight& one : profile.bed.bearing) {
    if (one.wall == profile.wall) heights.push_back(one);
  }
  sort_stably(heights, {}, &ground::BearingHeight::along);
  std::vector<Point> points;
  const auto add = [&](Length along, Length height) {
    points.push_back({profile.view.at(along), ground_at(profile, height)});
  };
  const Length from = std::max(profile.part.from, heights.front().along),
               to = std::min(profile.part.to, heights.back().along);
  if (to <= from) return;
  add(from, *ground::height_at(heights, profile.wall, from));
  for (const ground::BearingHeight& one : heights) {
    if (one.along > from && one.along < to) add(one.along, one.height);
  }
  add(to, *ground::height_at(heights, profile.wall, to));
  std::vector<Point> body = points;
  const Micrometres foot = profile.line - profile.ground;
  body.push_back({points.back().x, foot}), body.push_back({points.front().x, foot});
  pad.area(body, {Pen::None}, Fill::Tint);
  pad.path(points, {Pen::Thick});
  Placer numbers{Group()};
  for (const ground::BearingHeight& one : heights) {
    if (one.along < from || one.along > to) continue;
    const Point at{profile.view.at(one.along), ground_at(profile, one.height)};
    pad.dot(at, 1'100);
    const std::string text = tape_text(profile.bed.level.top - one.height, profile.context.tape());
    const Lettering lettering{kSmallText, Weight::Regular, Anchor::Middle, Ink::Black, 0};
    const Micrometres y = std::min(at.y, profile.line) - 6'500, next = kSmallText + 1'000;
    // Off the bed's limits where there is room.
    std::vector<Point> places{{at.x, y}, {at.x, y - next}, {at.x, y + next}, {at.x, y - 2 * next}};
    sort_stably(places, {}, [&](Point place) { return on_a_limit(profile, place.y); });
    numbers.write(pad, text, lettering, numbers.free_place(text, lettering, places).value_or(places[0]));
  }
}

void draw_limits(Pad& pad, const Profile& profile) {
  pad.line({profile.left, profile.line}, {profile.right, profile.line}, {Pen::Medium});
  for (const Length limit : {profile.bed.range.least, profile.bed.range.most}) {
    const Micrometres y = profile.line - full_size(limit);
    pad.line({profile.left, y}, {profile.right, y}, {Pen::Thin, Dash::Dashed, Ink::Black});
  }
}

/// Where each unit's far end comes, as on the course's strip.
void draw_marks(Pad& pad, const Profile& profile) {
  const Context& context = profile.context;
  std::vector<RunningLabel> labels;
  for (const setout::Mark& mark : setout::running_marks(context.building, context.layout, profile.wall, 1)) {
    const Length at = mark.exact.nearest_nanometre();
    if (mark.kind == setout::MarkKind::BlockEnd && mark.at >= Length() && profile.part.holds(at))
      labels.push_back({profile.view.at(at), mark.at, mark.third_unit, {}, {}});
  }
  const Area room = context.page.drawing;
  pad.add(draw_running_labels(std::move(labels), {room.left, profile.line + kUnitHigh, room.right, room.top},
                              {kLeader, kNumbers}, LabelSide::Above, context.tape()));
}

/// What is painted on the slab at one opening, a line each.
std::vector<std::string> paint_of(const Context& context, const ResolvedOpening& opening) {
  const words::SheetWords& words = context.words;
  const Length step = tape_step(context.tape());
  const auto at = [&](Position place) {
    return tape_text(rounded_to(place.distance_from_start(), step), context.tape());
  };
  const Position near = opening.from_in(1), far = opening.to_in(1);
  return {
      words::fill_in(words.opening_size, {height_text(context, far - near), height_text(context, opening.height())}),
      words::fill_in(words.paint_jambs, {at(near), at(far)}),
      words::fill_in(words.paint_head, {number_text(opening.last_course)})};
}

constexpr Micrometres kPaintLead =
    3'000;  // from the ground's foot to the openings' lines, and from those to their words
constexpr Lettering kPaint{kSmallText, Weight::Regular, Anchor::Middle, Ink::Black, 0};

/// What is written for one opening, in a column of its own.
struct Painted {
  const ResolvedOpening* opening;
  Micrometres left, right, place;  // of the opening; the column's middle
  Setting name;
  std::vector<std::string> lines;
};

struct PaintColumns {
  std::vector<Painted> columns;
  Micrometres wide = 0;
};

std::vector<Painted> openings_shown(const Profile& profile) {
  std::vector<Painted> shown;
  for (const ResolvedOpening& opening : profile.context.building.openings) {
    const Position near = opening.from_in(1), far = opening.to_in(1);
    const Length from = std::max(near.distance_from_start(), profile.part.from),
                 to = std::min(far.distance_from_start(), profile.part.to);
    if (opening.wall == profile.wall && from < to)
      shown.push_back({&opening, profile.view.at(to), profile.view.at(from), 0, {}, {}});
  }
  sort_stably(shown, {}, [](const Painted& one) { return one.left + one.right; });
  return shown;
}

PaintColumns paint_columns(const Profile& profile) {
  const Context& context = profile.context;
  PaintColumns paint{openings_shown(profile), 0};
  if (paint.columns.empty()) return paint;
  const Area room = context.page.drawing;
  const Micrometres pitch = std::min(60'000, room.width() / static_cast<Micrometres>(paint.columns.size()));
  paint.wide = pitch - 3'000;
  std::vector<Micrometres> wanted;
  for (const Painted& one : paint.columns) wanted.push_back((one.left + one.right) / 2);
  const auto places = spread(wanted, pitch, room.left + pitch / 2, room.right - pitch / 2);
  for (std::size_t k = 0; k < places.size(); ++k) {
    Painted& one = paint.columns[k];
    one.place = places[k];
    one.name = fitting_name(context, one.opening->name, {paint.wide, 2 * line_pitch(kText)},
                            {kText, Weight::Bold, Anchor::Middle, Ink::Black, 0}, kDrawingHeights);
    one.lines = paint_of(context, *one.opening);
  }
  return paint;
}

/// From the ground's foot down.
Micrometres paint_height(const PaintColumns& paint) {
  Micrometres highest = 0;
  for (const Painted& one : paint.columns) {
    Micrometres high = 2 * kPaintLead + 1'500 + one.name.height;
    for (const std::string& line : one.lines) high += paragraph_height(line, paint.wide, kPaint);
    highest = std::max(highest, high);
  }
  return highest;
}

/// At each opening: name, hole, jambs, head course, in columns that stand clear of each other; led to their openings.
void draw_paint(Pad& pad, const Profile& profile) {
  const Micrometres y = profile.line - profile.ground - kPaintLead;
  const PaintColumns paint = paint_columns(profile);
  for (const Painted& one : paint.columns) {
    pad.line({one.left, y}, {one.right, y}, {Pen::Medium})
        .line({one.left, y - 1'500}, {one.left, y + 1'500}, {Pen::Medium})
        .line({one.right, y - 1'500}, {one.right, y + 1'500}, {Pen::Medium});
    pad.line({(one.left + one.right) / 2, y}, {one.place, y - kPaintLead}, {Pen::Thin});
    write_setting(pad, {one.place, y - kPaintLead - 1'000 - one.name.height / 2}, one.name);
    Micrometres low = y - kPaintLead - 1'500 - one.name.height;
    for (const std::string& line : one.lines) low = write_paragraph(pad, {one.place, low}, paint.wide, line, kPaint);
  }
}

/// A second chalk line that mortar does not bury: in from the outer face, the wall's thickness and 4 in or 100 mm.
Length offset_line(const Context& context, int wall) {
  const bool inches = context.tape() == Tape::Inches;
  const Length whole = context.building.series_of(context.wall(wall)).thickness +
                       (inches ? Length::inches(4) : Length::millimetres(100));
  const Length step = inches ? Length::inches(1) : Length::millimetres(10);
  return step * -(-whole).whole_multiples(step);
}

std::string chalk_text(const Profile& profile) {
  const Context& context = profile.context;
  const words::SheetWords& words = context.words;
  std::string edges;
  if (context.answer.slab.fit) {
    for (const steel::FaceLine& line : context.answer.slab.face_lines) {
      if (line.wall != profile.wall) continue;
      edges += (edges.empty() ? "" : ", ") +
               words::fill_in(words.chalk_edge,
                              {tape_text(line.from_edge, context.tape()), tape_text(line.along, context.tape())});
    }
  }
  const Wall& wall = context.wall(profile.wall);
  const std::string lines =
      words::fill_in(words.chalk_lines, {wall.name, tape_text(offset_line(context, profile.wall), context.tape())});
  return edges.empty()
             ? lines
             : lines + " " +
                   words::fill_in(words.chalk_edges, {hook_text(context.building, profile.wall, words), edges});
}

std::string notes_of(const Profile& profile) {
  const Context& context = profile.context;
  const words::SheetWords& words = context.words;
  const std::string numbers(context.tape() == Tape::Inches ? words.found_profile_note_inches
                                                           : words.found_profile_note);
  const std::string limits = words::fill_in(
      words.found_profile_limits,
      {tape_text(profile.bed.range.least, context.tape()), tape_text(profile.bed.range.most, context.tape())});
  return marks_from_text(context.building, profile.wall, words) + " " + chalk_text(profile) + " " + numbers + " " +
         limits + " " + std::string(words.paint_note);
}

Micrometres notes_height(const Profile& profile) {
  const Micrometres width = profile.context.page.drawing.width();
  return paragraph_height(std::string(profile.context.words.block_end_rule), width, kRule) +
         paragraph_height(notes_of(profile), width, kNote);
}

void write_notes(Pad& pad, const Profile& profile) {
  const Area room = profile.context.page.drawing;
  const Micrometres y = write_paragraph(pad, {room.left, room.bottom + notes_height(profile)}, room.width(),
                                        std::string(profile.context.words.block_end_rule), kRule);
  write_paragraph(pad, {room.left, y}, room.width(), notes_of(profile), kNote);
}

/// As deep as the lowest reading and its number ask, as far as the words under it leave room.
Micrometres ground_under(const Profile& profile) {
  Micrometres deepest = full_size(profile.bed.range.most);
  for (const ground::BearingHeight& one : profile.bed.bearing) {
    if (one.wall == profile.wall) deepest = std::max(deepest, full_size(profile.bed.level.top - one.height));
  }
  const Micrometres foot =
      profile.context.page.drawing.bottom + notes_height(profile) + paint_height(paint_columns(profile));
  return std::min({deepest + kUnderReading, kGroundMost, profile.line - foot});
}

void write_end_name(Pad& pad, const Profile& profile, const std::string& name, bool at_start) {
  const Area room = profile.context.page.drawing;
  const Lettering lettering{kLargeText, Weight::Bold, at_start ? Anchor::Start : Anchor::End,
                            at_start ? Ink::Blue : Ink::Black, 0};
  const Micrometres x = at_start ? profile.right + 3'000 : profile.left - 3'000;
  const TextRoom beside{at_start ? room.right - x : x - room.left, 20'000};
  write_setting(pad, {x, profile.line + kUnitHigh / 2},
                fitting_name(profile.context, name, beside, lettering, kLargeHeights));
}

bool has_bed_profile(const Context& context, int wall) {
  const ground::BedAsFound* bed = bed_of(context);
  // As long as a reading is lacking the level is not known, nor is any bed.
  return bed != nullptr && bed->units_without == 0 &&
         std::ranges::any_of(bed->units, [&](const ground::UnitBed& unit) { return unit.wall == wall; });
}

Group draw_bed_profile(const Context& context, int wall, const Part& part, Scale scale) {
  Pad pad(Role::Figure, words::fill_in(context.words.title_bed_profile, {context.wall(wall).name}));
  const ground::BedAsFound* bed = bed_of(context);
  if (bed == nullptr) return std::move(pad).take();
  const Area room = context.page.drawing;
  const Micrometres wide = scale.paper(part.to) - scale.paper(part.from);
  const Micrometres right = room.centre().x + wide / 2;
  Profile profile{context,
                  *bed,
                  wall,
                  part,
                  {scale, right, part.from},
                  room.top - (context.tape() == Tape::Inches ? kAboveInches : kAboveMillimetres) - kUnitHigh,
                  0,
                  right - wide,
                  right};
  profile.ground = ground_under(profile);
  draw_ground(pad, profile);
  draw_limits(pad, profile);
  draw_units(pad, profile);
  draw_marks(pad, profile);
  draw_paint(pad, profile);
  write_notes(pad, profile);
  const Wall& side = context.wall(wall);
  if (part.first()) write_end_name(pad, profile, side.start_name, true);
  if (part.last()) write_end_name(pad, profile, side.end_name, false);
  return std::move(pad).take();
}

std::string bed_title(const Building& building, const words::SheetWords& words, int number) {
  return words::fill_in(words.title_bed_profile, {building.walls[static_cast<std::size_t>(number - 1)].name});
}

bool has_bed_drawing(const Context& context, int number) {
  return number <= static_cast<int>(context.building.walls.size()) && has_bed_profile(context, number - 1);
}

WallParts bed_parts(const Context& context, int wall, int) {
  if (!has_bed_profile(context, wall)) return {};
  WallParts large = parts_at_scale(context, wall, 1, Scale{20}), small = parts_at_scale(context, wall, 1, Scale{25});
  return small.parts.size() < large.parts.size() ? small : large;
}

/// Each wall in the parts of its strip.
std::vector<PlannedSheet> bed_sheets(const Context& context) {
  const auto title = [](const Context& of, int wall, int) { return bed_title(of.building, of.words, wall + 1); };
  return sheets_of_walls(context, {title, bed_parts});
}

Group draw_bed_sheet(const Context& context, const PlannedSheet& sheet) {
  return draw_bed_profile(context, sheet.wall, sheet.part, *sheet.scale);
}

// The bed under a whole wall, as wide as it is.
Drawing bed_drawing(const Context& context, SheetName name, int number) {
  const int wall = number - 1;
  const bond::WallReach reach = bond::reach_of_wall(context.building, context.layout, wall);
  const Scale scale = fitting_scale(reach.to - reach.from, reach.to - reach.from, kLargest, kLargest, {20});
  const Micrometres wide = std::max(scale.paper(reach.to - reach.from) + 30'000, Micrometres{190'000});
  Sheet sheet = bare_sheet(std::move(name), wide + 2 * kRim, 175'000);
  Context on_sheet = context;
  on_sheet.page.drawing = inside_rim(sheet);
  sheet.groups.push_back(draw_bed_profile(on_sheet, wall, {reach.from, reach.to, 1, 1}, scale));
  return {std::move(sheet), scale, 0, wall, {}};
}

constinit const DrawingKind kBedDrawing{
    .name = "bed-",
    .has = has_bed_drawing,
    .title = bed_title,
    .draw = bed_drawing,
};

}  // namespace

constinit const SheetKind kBedProfilesSheet{
    .name = "bed",
    .hold_point = HoldPoint::FirstCourse,
    .purpose = &words::SheetWords::purpose_beds,
    .caution = {"wet-cement"},
    .sheets = bed_sheets,
    .draw = draw_bed_sheet,
    .drawing = &kBedDrawing,
};

}  // namespace stringcourse::sheet
