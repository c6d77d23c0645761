#include <algorithm>

#include "measure/sorting.hpp"
#include "setout/marks.hpp"
#include "setout/places.hpp"
#include "sheet/found.hpp"
#include "sheet/hook_words.hpp"
#include "sheet/running_labels.hpp"

namespace stringcourse::sheet {
namespace {

constexpr Micrometres kUnitHigh = 14'000;  // units are drawn so high, whatever their size
constexpr Micrometres kAboveInches = 52'000, kAboveMillimetres = 45'000;  // bed numbers, leaders and running marks
constexpr Micrometres kNumbers = 8'500;    // of that: bed numbers, between leaders that run plumb
constexpr Micrometres kLeader = 11'500;
constexpr Micrometres kGroundMost = 40'000, kUnderReading = 9'000;  // from the bed's top to the foot of the ground drawn
constexpr Lettering kNote{kSmallText, Weight::Regular, Anchor::Start, Ink::Black, 0}, kRule{kText, Weight::Bold, Anchor::Start, Ink::Black, 0};

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
  const Micrometres foot = profile.line - profile.ground;
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
    if (mark.kind == setout::MarkKind::BlockEnd && profile.part.holds(at)) labels.push_back({profile.view.at(at), mark.at, mark.bay, {}, {}});
  }
  const Area room = context.page.drawing;
  pad.add(draw_running_labels(labels, {room.left, profile.line + kUnitHigh, room.right, room.top}, {kLeader, kNumbers}, LabelSide::Above, context.tape()));
}

/// What is painted on the slab at one opening, a line each.
std::vector<std::string> paint_of(const Context& context, const ResolvedOpening& opening) {
  const Words& words = context.words;
  const Length step = tape_step(context.tape());
  const auto at = [&](Position place) { return tape_text(rounded_to(place.distance_from_start(), step), context.tape()); };
  const Position near = opening.from_in(1), far = opening.to_in(1);
  return {fill_in(words.opening_size, {height_text(context, far - near), height_text(context, opening.height())}),
          fill_in(words.paint_jambs, {at(near), at(far)}), fill_in(words.paint_head, {number_text(opening.last_course)})};
}

/// At each opening: name, hole, jambs, head course, in columns that stand clear of each other; led to their openings.
void draw_paint(Pad& pad, const Profile& profile) {
  const Context& context = profile.context;
  const Micrometres y = profile.line - profile.ground - 3'000;
  std::vector<const ResolvedOpening*> shown;
  std::vector<Micrometres> middles;
  for (const ResolvedOpening& opening : context.building.openings) {
    const Position near = opening.from_in(1), far = opening.to_in(1);
    const Length from = std::max(near.distance_from_start(), profile.part.from);
    const Length to = std::min(far.distance_from_start(), profile.part.to);
    if (opening.wall != profile.wall || from >= to) continue;
    const Micrometres left = profile.view.at(to), right = profile.view.at(from);
    pad.line({left, y}, {right, y}, {Pen::Medium}).line({left, y - 1'500}, {left, y + 1'500}, {Pen::Medium}).line({right, y - 1'500}, {right, y + 1'500}, {Pen::Medium});
    shown.push_back(&opening), middles.push_back(left + (right - left) / 2);
  }
  if (shown.empty()) return;
  std::vector<std::size_t> order(shown.size());
  for (std::size_t k = 0; k < order.size(); ++k) order[k] = k;
  sort_stably(order, {}, [&](std::size_t k) { return middles[k]; });
  std::vector<Micrometres> wanted;
  for (const std::size_t k : order) wanted.push_back(middles[k]);
  const Area room = context.page.drawing;
  const Micrometres pitch = std::min(60'000, room.width() / static_cast<Micrometres>(shown.size())), wide = pitch - 3'000;
  const auto places = spread(wanted, pitch, room.left + pitch / 2, room.right - pitch / 2);
  const Lettering name{kText, Weight::Bold, Anchor::Middle, Ink::Black, 0}, small{kSmallText, Weight::Regular, Anchor::Middle, Ink::Black, 0};
  for (std::size_t k = 0; k < order.size(); ++k) {
    const ResolvedOpening& opening = *shown[order[k]];
    pad.line({wanted[k], y}, {places[k], y - 3'000}, {Pen::Thin});
    const Setting named = fitting_name(context, opening.name, {wide, 2 * line_pitch(kText)}, name, kDrawingHeights);
    write_setting(pad, {places[k], y - 4'000 - named.height / 2}, named);
    Micrometres low = y - 4'500 - named.height;
    for (const std::string& line : paint_of(context, opening)) low = write_paragraph(pad, {places[k], low}, wide, line, small);
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
  return edges.empty() ? lines : lines + " " + fill_in(words.chalk_edges, {hook_text(context.building, profile.wall, words), edges});
}

std::string notes_of(const Profile& profile) {
  const Context& context = profile.context;
  const Words& words = context.words;
  const std::string numbers(context.tape() == Tape::Inches ? words.found_profile_note_inches : words.found_profile_note);
  const std::string limits = fill_in(words.found_profile_limits, {tape_text(profile.bed.range.least, context.tape()), tape_text(profile.bed.range.most, context.tape())});
  return marks_from_text(context.building, profile.wall, words) + " " + chalk_text(profile) + " " + numbers + " " + limits + " " + std::string(words.paint_note);
}

void write_notes(Pad& pad, const Profile& profile) {
  const Area room = profile.context.page.drawing;
  const std::string rule(profile.context.words.block_end_rule), notes = notes_of(profile);
  const Micrometres high = paragraph_height(rule, room.width(), kRule) + paragraph_height(notes, room.width(), kNote);
  const Micrometres y = write_paragraph(pad, {room.left, room.bottom + high}, room.width(), rule, kRule);
  write_paragraph(pad, {room.left, y}, room.width(), notes, kNote);
}

/// As deep as the lowest reading and its number ask.
Micrometres ground_under(const Profile& profile) {
  Micrometres deepest = full_size(profile.bed.range.most);
  for (const ground::BearingHeight& one : profile.bed.bearing) {
    if (one.wall == profile.wall) deepest = std::max(deepest, full_size(profile.bed.level.top - one.height));
  }
  return std::min(deepest + kUnderReading, kGroundMost);
}

void write_end_name(Pad& pad, const Profile& profile, const std::string& name, bool at_start) {
  const Area room = profile.context.page.drawing;
  const Lettering lettering{kLargeText, Weight::Bold, at_start ? Anchor::Start : Anchor::End, at_start ? Ink::Blue : Ink::Black, 0};
  const Micrometres x = at_start ? profile.right + 3'000 : profile.left - 3'000;
  const TextRoom beside{at_start ? room.right - x : x - room.left, 20'000};
  write_setting(pad, {x, profile.line + kUnitHigh / 2}, fitting_name(profile.context, name, beside, lettering, kLargeHeights));
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
  Profile profile{context, *bed, wall, part, {scale, right, part.from}, room.top - (context.tape() == Tape::Inches ? kAboveInches : kAboveMillimetres) - kUnitHigh, 0, right - wide, right};
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

}  // namespace stringcourse::sheet
