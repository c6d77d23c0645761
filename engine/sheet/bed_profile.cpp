#include <algorithm>

#include "measure/sorting.hpp"
#include "setout/places.hpp"
#include "sheet/found.hpp"

namespace stringcourse::sheet {
namespace {

constexpr Micrometres kUnitHigh = 14'000;  // units are drawn so high, whatever their size
constexpr Micrometres kAbove = 40'000;
constexpr Micrometres kEnds = 14'000;      // corner names at both ends

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
  const Length step = context.tape() == Tape::Inches ? Length::sixteenths(1) : Length::millimetres(1);
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
  const Micrometres foot = profile.line - 60'000;
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
  const Words& words = profile.context.words;
  pad.line({profile.left, profile.line}, {profile.right, profile.line}, {Pen::Medium});
  for (const Length limit : {profile.bed.range.least, profile.bed.range.most}) {
    const Micrometres y = profile.line - full_size(limit);
    pad.line({profile.left, y}, {profile.right, y}, {Pen::Thin, Dash::Dashed, Ink::Black});
  }
  const Lettering small{kSmallText, Weight::Regular, Anchor::Start, Ink::Black, 0};
  const Area room = profile.context.page.drawing;
  const bool inches = profile.context.tape() == Tape::Inches;
  pad.write({room.left, room.bottom + 8'000}, std::string(inches ? words.found_profile_note_inches : words.found_profile_note), small);
  pad.write({room.left, room.bottom + 3'500}, fill_in(words.found_profile_limits, {tape_text(profile.bed.range.least, profile.context.tape()), tape_text(profile.bed.range.most, profile.context.tape())}), small);
}

}  // namespace

bool has_bed_profile(const Context& context, int wall) {
  const ground::BedAsFound* bed = bed_of(context);
  return bed != nullptr && std::ranges::any_of(bed->units, [&](const ground::UnitBed& unit) { return unit.wall == wall; });
}

StripPlan plan_bed_profile(const Context& context, int wall) {
  const setout::Reach reach = setout::reach_of_wall(context.building, context.layout, wall);
  for (const Scale scale : {Scale{20}, Scale{25}, Scale{30}, Scale{40}}) {
    if (scale.paper(reach.to - reach.from) <= context.page.drawing.width() - 2 * kEnds) return {scale, {{reach.from, reach.to, 1, 1}}};
  }
  return plan_strip(context, wall, 1);
}

Group draw_bed_profile(const Context& context, int wall, const Part& part, Scale scale) {
  Pad pad(Role::Figure, fill_in(context.words.title_bed_profile, {context.wall(wall).name}));
  const ground::BedAsFound* bed = bed_of(context);
  if (bed == nullptr) return std::move(pad).take();
  const Area room = context.page.drawing;
  const Micrometres wide = scale.paper(part.to) - scale.paper(part.from);
  const Micrometres right = room.centre().x + wide / 2;
  const Profile profile{context, *bed, wall, part, {scale, right, part.from}, room.top - std::min(kAbove, room.height() / 8) - kUnitHigh, right - wide, right};
  draw_ground(pad, profile);
  draw_limits(pad, profile);
  draw_units(pad, profile);
  const Wall& side = context.wall(wall);
  const Lettering name{kLargeText, Weight::Bold, Anchor::Middle, Ink::Blue, 0};
  if (part.first()) pad.write({right + 6'000, profile.line + 4'000}, clipped(side.start_name, 10'000, name), name);
  if (part.last()) pad.write({right - wide - 6'000, profile.line + 4'000}, clipped(side.end_name, 10'000, name), {kLargeText, Weight::Bold, Anchor::Middle, Ink::Black, 0});
  return std::move(pad).take();
}

}  // namespace stringcourse::sheet
