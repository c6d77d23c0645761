#include <algorithm>

#include "measure/sorting.hpp"
#include "setout/marks.hpp"
#include "setout/places.hpp"
#include "sheet/found.hpp"
#include "sheet/running_labels.hpp"

namespace stringcourse::sheet {
namespace {

constexpr Micrometres kUnitHigh = 14'000;  // units are drawn so high, whatever their size
constexpr Micrometres kAboveInches = 52'000, kAboveMillimetres = 45'000;  // bed numbers, leaders and running marks
constexpr Micrometres kNumbers = 8'500;    // of that: bed numbers, between leaders that run plumb
constexpr Micrometres kLeader = 11'500;
constexpr Micrometres kGround = 40'000;    // from the bed's top to the foot of the ground drawn

const ground::BedAsFound* bed_of(const Context& context) {
  const ground::AsFound* found = context.job.found;
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
  Micrometres line;  // paper y of the bed's top
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
  for (const ground::UnitBed& unit : profile.bed.units) {
    if (unit.wall != profile.wall || unit.to <= profile.part.from || unit.from >= profile.part.to) continue;
    const Length from = std::max(unit.from, profile.part.from), to = std::min(unit.to, profile.part.to);
    const Area box{profile.view.at(to), profile.line, profile.view.at(from), profile.line + kUnitHigh};
    pad.box(box, {Pen::Thin}, Fill::White);
    pad.write({box.centre().x, box.bottom + 2'000}, number_text(unit.number), {kSmallText, Weight::Regular, Anchor::Middle, Ink::Grey, 0});
    const bool out = out_of_range(profile, unit);
    const std::string text = bed_text(profile.context, unit);
    const Lettering lettering{fits(text, box.width(), {kText}) ? kText : kSmallText, out ? Weight::Bold : Weight::Regular, Anchor::Middle, Ink::Black, 0};
    pad.write({box.centre().x, box.top + 2'200}, text, lettering);
    if (!out) continue;
    const Micrometres half = text_width(text, lettering.height, lettering.weight) / 2 + 1'000;
    pad.box({box.centre().x - half, box.top + 1'000, box.centre().x + half, box.top + 3'600 + lettering.height}, {Pen::Thick, Dash::Solid, Ink::Red});
  }
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
    points.push_back({profile.view.at(along), profile.line - full_size(profile.bed.level.top - height)});
  };
  const Length from = std::max(profile.part.from, heights.front().along), to = std::min(profile.part.to, heights.back().along);
  if (to <= from) return;
  add(from, *ground::height_at(heights, profile.wall, from));
  for (const ground::BearingHeight& one : heights) {
    if (one.along > from && one.along < to) add(one.along, one.height);
  }
  add(to, *ground::height_at(heights, profile.wall, to));
  std::vector<Point> body = points;
  const Micrometres foot = profile.line - kGround;
  body.push_back({points.back().x, foot}), body.push_back({points.front().x, foot});
  pad.area(body, {Pen::None}, Fill::Tint);
  pad.path(points, {Pen::Thick});
  for (const ground::BearingHeight& one : heights) {
    if (one.along < from || one.along > to) continue;
    const Point at{profile.view.at(one.along), profile.line - full_size(profile.bed.level.top - one.height)};
    pad.dot(at, 1'100);
    pad.write({at.x, at.y - 6'500}, tape_text(profile.bed.level.top - one.height, profile.context.tape()), {kSmallText, Weight::Regular, Anchor::Middle, Ink::Black, 0});
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
    if (mark.kind == setout::MarkKind::BlockEnd && profile.part.holds(at)) labels.push_back({profile.view.at(at), mark.at, mark.bay, {}});
  }
  const Area room = context.page.drawing;
  pad.add(draw_running_labels(labels, {room.left, profile.line + kUnitHigh, room.right, room.top}, {kLeader, kNumbers}, LabelSide::Above, context.tape()));
}

/// What is painted on the slab at each opening: name, hole, jambs, head course.
void draw_paint(Pad& pad, const Profile& profile) {
  const Context& context = profile.context;
  const Words& words = context.words;
  const Micrometres y = profile.line - kGround - 9'000;
  for (const ResolvedOpening& opening : context.building.openings) {
    const Position near = opening.from_in(1), far = opening.to_in(1);
    const Length from = std::max(near.distance_from_start(), profile.part.from);
    const Length to = std::min(far.distance_from_start(), profile.part.to);
    if (opening.wall != profile.wall || from >= to) continue;
    const Micrometres left = profile.view.at(to), right = profile.view.at(from), middle = left + (right - left) / 2;
    pad.line({left, y}, {right, y}, {Pen::Medium}).line({left, y - 1'500}, {left, y + 1'500}, {Pen::Medium}).line({right, y - 1'500}, {right, y + 1'500}, {Pen::Medium});
    const Length step = tape_step(context.tape());
    const auto at = [&](Position place) { return tape_text(rounded_to(place.distance_from_start(), step), context.tape()); };
    const Lettering name{kText, Weight::Bold, Anchor::Middle, Ink::Black, 0}, small{kSmallText, Weight::Regular, Anchor::Middle, Ink::Black, 0};
    const Micrometres wide = std::max(right - left, Micrometres{44'000});
    const std::string size = fill_in(words.opening_size,
                                     {height_text(context, far - near), height_text(context, opening.height())});
    const Micrometres x = std::clamp(middle, profile.left + wide / 2, std::max(profile.left + wide / 2, profile.right - wide / 2));
    pad.write({x, y + 2'300}, clipped(opening.name + "  " + size, wide, name), name);
    pad.write({x, y - 5'000}, clipped(fill_in(words.paint_jambs, {at(near), at(far)}), wide, small), small);
    pad.write({x, y - 9'000}, clipped(fill_in(words.paint_head, {number_text(opening.last_course)}), wide, small), small);
  }
}

/// A second chalk line that mortar does not bury: in from the outer face, the wall's thickness and 4 in or 100 mm.
Length offset_line(const Context& context, int wall) {
  const bool inches = context.tape() == Tape::Inches;
  const Length whole = context.building.series_of(context.wall(wall)).thickness + (inches ? Length::inches(4) : Length::millimetres(100));
  const Length step = inches ? Length::inches(1) : Length::millimetres(10);
  return step * -(-whole).whole_multiples(step);
}

std::string chalk_text(const Profile& profile) {
  const Context& context = profile.context;
  const Words& words = context.words;
  std::string edges;
  if (context.job.face_lines != nullptr) {
    for (const steel::FaceLine& line : *context.job.face_lines) {
      if (line.wall != profile.wall) continue;
      edges += (edges.empty() ? "" : ", ") + fill_in(words.chalk_edge, {tape_text(line.from_edge, context.tape()), tape_text(line.along, context.tape())});
    }
  }
  const Wall& wall = context.wall(profile.wall);
  const std::string lines = fill_in(words.chalk_lines, {wall.name, tape_text(offset_line(context, profile.wall), context.tape())});
  return edges.empty() ? lines : lines + " " + fill_in(words.chalk_edges, {start_corner_name(context, profile.wall), edges});
}

void write_notes(Pad& pad, const Profile& profile) {
  const Context& context = profile.context;
  const Words& words = context.words;
  const Area room = context.page.drawing;
  const Lettering small{kSmallText, Weight::Regular, Anchor::Start, Ink::Black, 0}, bold{kText, Weight::Bold, Anchor::Start, Ink::Black, 0};
  pad.write({room.left, room.bottom + 20'000}, clipped(std::string(words.block_end_rule), room.width(), bold), bold);
  const std::string numbers(context.tape() == Tape::Inches ? words.found_profile_note_inches : words.found_profile_note);
  const std::string limits = fill_in(words.found_profile_limits, {tape_text(profile.bed.range.least, context.tape()), tape_text(profile.bed.range.most, context.tape())});
  const std::string text = chalk_text(profile) + " " + fill_in(words.measured_from, {start_corner_name(context, profile.wall)}) + " " + numbers + " " + limits + " " + std::string(words.paint_note);
  Micrometres y = room.bottom + 15'000;
  for (const std::string& line : wrapped(text, room.width(), small)) {
    if (y < room.bottom - 1'700) break;
    pad.write({room.left, y}, line, small);
    y -= 4'000;
  }
}

}  // namespace

bool has_bed_profile(const Context& context, int wall) {
  const ground::BedAsFound* bed = bed_of(context);
  return bed != nullptr && std::ranges::any_of(bed->units, [&](const ground::UnitBed& unit) { return unit.wall == wall; });
}

StripPlan plan_bed_profile(const Context& context, int wall) { return plan_strip(context, wall, 1); }

Group draw_bed_profile(const Context& context, int wall, const Part& part, Scale scale) {
  Pad pad(Role::Figure, fill_in(context.words.title_bed_profile, {context.wall(wall).name}));
  const ground::BedAsFound* bed = bed_of(context);
  if (bed == nullptr) return std::move(pad).take();
  const Area room = context.page.drawing;
  const Micrometres wide = scale.paper(part.to) - scale.paper(part.from);
  const Micrometres right = room.centre().x + wide / 2;
  const Profile profile{context, *bed, wall, part, {scale, right, part.from}, room.top - (context.tape() == Tape::Inches ? kAboveInches : kAboveMillimetres) - kUnitHigh, right - wide, right};
  draw_ground(pad, profile);
  draw_limits(pad, profile);
  draw_units(pad, profile);
  draw_marks(pad, profile);
  draw_paint(pad, profile);
  write_notes(pad, profile);
  const Wall& side = context.wall(wall);
  const Lettering name{kLargeText, Weight::Bold, Anchor::Middle, Ink::Blue, 0};
  if (part.first()) pad.write({right + 6'000, profile.line + 4'000}, clipped(side.start_name, 10'000, name), name);
  if (part.last()) pad.write({right - wide - 6'000, profile.line + 4'000}, clipped(side.end_name, 10'000, name), {kLargeText, Weight::Bold, Anchor::Middle, Ink::Black, 0});
  return std::move(pad).take();
}

}  // namespace stringcourse::sheet
