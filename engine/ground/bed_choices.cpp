#include "ground/bed_choices.hpp"

#include <algorithm>

#include "job/words.hpp"
#include "measure/metres.hpp"
#include "measure/notation.hpp"

namespace stringcourse::ground {
namespace {

using What = BedChoice::What;

constexpr Length kLeastCurb = Length::inches(2);
constexpr Length kLeastCurbMetric = Length::millimetres(50);
constexpr double kSteepest = 1.0 / 480;  // 1/4 in in 10 ft
constexpr int kMostNamed = 6;

const Wall& wall_of(const Bearing& bearing, int wall) { return bearing.building.walls[static_cast<std::size_t>(wall)]; }

/// Something as long as a unit and as wide as its wall, so thick: cubic metres.
double volume(const Bearing& bearing, const UnitBed& unit, double thick) {
  return thick <= 0 ? 0 : metres(unit.to - unit.from) * metres(bearing.building.series_of(wall_of(bearing, unit.wall)).thickness) * thick;
}

std::int64_t cubic_centimetres(double cubic_metres) { return static_cast<std::int64_t>(cubic_metres * 1e6 + 0.5); }

struct Site {
  const BedAsFound& bed;
  const Bearing& bearing;
  Length low, high;  // of what was read

  Tape tape() const { return bearing.building.tape; }
  /// A unit's bed when the bed's top is at `top`.
  Length thinnest(const UnitBed& unit, Length top) const { return unit.thinnest + (top - bed.level.top); }
  Length thickest(const UnitBed& unit, Length top) const { return unit.thickest + (top - bed.level.top); }
  double mean(const UnitBed& unit, Length top) const { return metres(thinnest(unit, top) + thickest(unit, top)) / 2; }
};

/// Mortar of full beds under the units read, with the bed's top at `top`.
std::int64_t mortar(const Site& site, Length top) {
  double sum = 0;
  for (const UnitBed& unit : site.bed.units) sum += volume(site.bearing, unit, site.mean(unit, top));
  return cubic_centimetres(sum);
}

/// "AB 3: 1/8 in, AB 4: 3/16 in and 2 more"; what the tape cannot tell is not named.
class Named {
 public:
  explicit Named(Tape tape) : tape_(tape) {}
  void add(const std::string& name, Length amount) {
    ++count_;
    most_ = std::max(most_, amount);
    if (rounded_to(amount, tape_step(tape_)) == Length() || named_ == kMostNamed) return;
    ++named_;
    text_ += (text_.empty() ? "" : ", ") + name + ": " + tape_text(amount, tape_);
  }
  void put(BedChoice& choice) const {
    choice.units = count_, choice.most = most_;
    choice.where = count_ > named_ ? text_ + " and " + number_text(count_ - named_) + " more" : text_;
  }

 private:
  Tape tape_;
  std::string text_;
  int count_ = 0, named_ = 0;
  Length most_;
};

std::string unit_name(const Site& site, const UnitBed& unit) { return wall_of(site.bearing, unit.wall).name + " " + number_text(unit.number); }

BedChoice choice_at(const Site& site, What what, Length top) {
  BedChoice choice;
  choice.what = what, choice.top = top, choice.mortar_cubic_centimetres = mortar(site, top);
  return choice;
}

BedChoice grouted_course(const Site& site) {
  const BedLevel wider = best_level({site.low, site.high}, kGroutedBed);
  BedChoice choice = choice_at(site, What::GroutFirstCourse, wider.top);
  choice.margin = wider.margin;
  return choice;
}

/// "falls 3/16 in along AB, rises 1/8 in along BC".
std::string slope_words(const Site& site, const TiltedBed& tilted) {
  std::string text;
  for (const Wall& wall : site.bearing.building.walls) {
    const PlanPoint from = plan_point(wall, Length(), Length()), to = plan_point(wall, wall.actual, Length());
    const Length rise = length_of(metres(to.x - from.x) * tilted.along_x + metres(to.y - from.y) * tilted.along_y);
    if (&wall - site.bearing.building.walls.data() > 1) break;  // two sides tell the plane of a right-angled plan
    const Length size = magnitude(rise), step = tape_step(site.tape());
    const bool level = rounded_to(size, step) == Length();
    text += (text.empty() ? "" : ", ") + (level ? std::string("level") : (rise < Length() ? "falls " : "rises ") + tape_text(size, site.tape())) + " along " + wall.name;
  }
  return text;
}

void add_tilted(std::vector<BedChoice>& choices, const Site& site) {
  std::vector<PlanHeight> heights;
  for (const BearingHeight& one : site.bearing.heights) {
    const PlanPoint at = plan_point(wall_of(site.bearing, one.wall), one.along, Length());
    heights.push_back({metres(at.x), metres(at.y), metres(one.height)});
  }
  if (heights.size() < 4) return;
  const auto tilted = best_plane(heights, metres(site.bed.range.least), metres(site.bed.range.most), kSteepest);
  if (!tilted || length_of(tilted->margin) <= site.bed.level.margin + Length::sixteenths(1).half_down()) return;
  BedChoice choice;
  choice.what = What::TiltCourse;
  choice.margin = length_of(tilted->margin);
  choice.where = slope_words(site, *tilted);
  double sum = 0;
  for (const UnitBed& unit : site.bed.units) {
    const PlanPoint at = plan_point(wall_of(site.bearing, unit.wall), unit.from + (unit.to - unit.from).half_down(), Length());
    const double top = tilted->top + tilted->along_x * metres(at.x) + tilted->along_y * metres(at.y);
    sum += volume(site.bearing, unit, top - (metres(site.bed.level.top) - site.mean(unit, site.bed.level.top)));
  }
  choice.mortar_cubic_centimetres = cubic_centimetres(sum);
  const PlanPoint corner = plan_point(wall_of(site.bearing, 0), Length(), Length());
  choice.top = length_of(tilted->top + tilted->along_x * metres(corner.x) + tilted->along_y * metres(corner.y));
  choices.push_back(std::move(choice));
}

/// Low places at the thickest bed that is allowed: what stands too high is ground off, or its units are ripped.
void add_taking_off(std::vector<BedChoice>& choices, const Site& site) {
  const BedRange& range = site.bed.range;
  const Length down = site.low + range.most;
  BedChoice grind = choice_at(site, What::Grind, down), rip = choice_at(site, What::RipUnits, down);
  Named spots(site.tape()), units(site.tape());
  for (const ReadHeight& one : site.bearing.read) {
    const Length over = range.least - (down - one.height);
    if (over > Length()) spots.add(one.station, over);
  }
  for (const UnitBed& unit : site.bed.units) {
    const Length over = range.least - site.thinnest(unit, down);
    if (over > Length()) units.add(unit_name(site, unit), over);
  }
  spots.put(grind), units.put(rip);
  choices.push_back(std::move(grind));
  choices.push_back(std::move(rip));
}

/// High places at the thinnest bed: what lies too low is brought up by a strip first.
void add_strip(std::vector<BedChoice>& choices, const Site& site) {
  const Length up = site.high + site.bed.range.least;
  BedChoice strip = choice_at(site, What::LevellingStrip, up);
  Named units(site.tape());
  double concrete = 0, beds = 0;
  for (const UnitBed& unit : site.bed.units) {
    const Length over = site.thickest(unit, up) - site.bed.range.most;
    if (over > Length()) units.add(unit_name(site, unit), over);
    const double thick = over > Length() ? site.mean(unit, up) - metres(site.bed.range.most) : 0;
    concrete += volume(site.bearing, unit, thick), beds += volume(site.bearing, unit, site.mean(unit, up) - std::max(0.0, thick));
  }
  units.put(strip);
  strip.concrete_cubic_centimetres = cubic_centimetres(concrete), strip.mortar_cubic_centimetres = cubic_centimetres(beds);
  choices.push_back(std::move(strip));
}

/// A layer of units so high, with a bed of its own, where the bearing lies low enough for it.
void add_layer(std::vector<BedChoice>& choices, const Site& site, What what, Length high) {
  const Length up = site.high + site.bed.range.least;
  BedChoice choice = choice_at(site, what, up);
  Named units(site.tape());
  double beds = 0;
  for (const UnitBed& unit : site.bed.units) {
    const bool takes = site.thinnest(unit, up) >= high + 2 * site.bed.range.least;
    if (takes) units.add(unit_name(site, unit), site.thickest(unit, up));
    beds += volume(site.bearing, unit, site.mean(unit, up) - (takes ? metres(high) : 0));
  }
  units.put(choice);
  if (choice.units == 0) return;
  choice.mortar_cubic_centimetres = cubic_centimetres(beds);
  choices.push_back(std::move(choice));
}

void add_layers(std::vector<BedChoice>& choices, const Site& site) {
  if (site.bearing.building.courses.empty() || site.bearing.building.series.empty()) return;
  const Series& series = site.bearing.building.series.front();
  if (series.half_high > Length()) add_layer(choices, site, What::HalfHigh, series.half_high);
  add_layer(choices, site, What::Step, series.height);
}

/// A level curb under all walls, for what is too far out to bed over.
void add_curb(std::vector<BedChoice>& choices, const Site& site) {
  const Length least = site.tape() == Tape::Inches ? kLeastCurb : kLeastCurbMetric;
  const Length curb = site.high + least, bed = (site.bed.range.least + site.bed.range.most).half_down();
  BedChoice choice;
  choice.what = What::Curb, choice.top = curb + bed, choice.most = curb - site.low;
  choice.units = static_cast<int>(site.bed.units.size());
  double concrete = 0, beds = 0;
  for (const UnitBed& unit : site.bed.units) {
    concrete += volume(site.bearing, unit, site.mean(unit, curb)), beds += volume(site.bearing, unit, metres(bed));
  }
  choice.concrete_cubic_centimetres = cubic_centimetres(concrete), choice.mortar_cubic_centimetres = cubic_centimetres(beds);
  choices.push_back(std::move(choice));
}

std::string units_text(int count) { return number_text(count) + (count == 1 ? " unit" : " units"); }

}  // namespace

std::vector<BedChoice> bed_choices(const BedAsFound& bed, const Bearing& bearing, bool grouted) {
  const auto [low, high] = std::ranges::minmax(bearing.read, {}, &ReadHeight::height);
  const Site site{bed, bearing, low.height, high.height};
  std::vector<BedChoice> choices{choice_at(site, What::Level, bed.level.top)};
  choices[0].margin = bed.level.margin;
  if (bed.verdict == Verdict::Fits) return choices;
  if (!grouted) choices.push_back(grouted_course(site));
  add_tilted(choices, site);
  if (site.high - site.low <= bed.range.most - bed.range.least) return choices;
  add_taking_off(choices, site);
  add_strip(choices, site);
  add_layers(choices, site);
  add_curb(choices, site);
  return choices;
}

std::string choice_text(const BedChoice& choice, Tape tape) {
  const std::string most = tape_text(choice.most, tape), where = choice.where.empty() ? "" : ": " + choice.where;
  switch (choice.what) {
    case What::Level: return "lay to the best level";
    case What::GroutFirstCourse: return "grout the whole first course, so that its bed may be up to 1 1/4 in (32 mm)";
    case What::TiltCourse: return "let the first course follow a slope, which the next beds take out again" + where;
    case What::Grind: return "grind high spots at " + number_text(choice.units) + (choice.units == 1 ? " reading" : " readings") + ", at most " + most + where;
    case What::RipUnits: return "rip " + units_text(choice.units) + ", at most " + most + " off" + where;
    case What::LevellingStrip: return "pour a strip of mortar or concrete, or lay solid units, under " + units_text(choice.units) + ", at most " + most + " thick" + where;
    case What::HalfHigh: return "lay a half-high unit under " + units_text(choice.units) + ", where the bed would be this thick" + where;
    case What::Step: return "step down a course under " + units_text(choice.units) + ", where the bed would be this thick" + where;
    case What::Curb: return "pour a level curb under all walls, at most " + most + " high";
  }
  return {};
}

}  // namespace stringcourse::ground
