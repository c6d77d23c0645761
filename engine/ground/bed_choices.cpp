#include "ground/bed_choices.hpp"

#include <algorithm>
#include <tuple>

#include "catalogue/rules.hpp"
#include "job/words.hpp"
#include "measure/metres.hpp"
#include "measure/sorting.hpp"

namespace stringcourse::ground {
namespace {

using What = BedChoice::What;

constexpr std::size_t kMostNamed = 6;

/// Something as long as a unit and as wide as its wall, so thick: cubic metres.
double volume(const Bearing& bearing, const UnitBed& unit, double thick) {
  return thick <= 0 ? 0
                    : metres(unit.to - unit.from) *
                          metres(bearing.building.series_of(wall_of(bearing.building, unit.wall)).thickness) * thick;
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

/// How a sloping first course may fall or rise: so much for each metre.
double steepest() {
  const auto [within, over, most] = tolerance_of("bed-level");
  return static_cast<double>(within.in_nanometres()) / static_cast<double>(over.in_nanometres());
}

/// "AB 3: 1/8 in, AB 4: 3/16 in and 2 more"; what the tape cannot tell is not named.
class Named {
 public:
  explicit Named(Tape tape) : tape_(tape) {}
  void add(const std::string& name, Length amount) {
    ++count_;
    most_ = std::max(most_, amount);
    if (rounded_to(amount, tape_step(tape_)) == Length() || named_.size() == kMostNamed) return;
    named_.push_back(fact("choice-at", {name, amount}));
  }
  void put(BedChoice& choice) const {
    choice.units = count_, choice.most = most_;
    if (named_.empty()) return;
    const FactValue all = listed(FactValue::Kind::Commas, named_);
    const std::size_t more = static_cast<std::size_t>(count_) - named_.size();
    choice.where = more > 0 ? fact("choice-at-and-more", {all, more}) : fact("choice-at-all", {all});
  }

 private:
  Tape tape_;
  std::vector<Fact> named_;
  int count_ = 0;
  Length most_;
};

std::string unit_name(const Site& site, const UnitBed& unit) {
  return wall_of(site.bearing.building, unit.wall).name + " " + number_text(unit.number);
}

BedChoice choice_at(const Site& site, What what, Length top) {
  BedChoice choice;
  choice.what = what, choice.top = top, choice.mortar_cubic_centimetres = mortar(site, top);
  return choice;
}

int units_of(const Site& site) { return static_cast<int>(site.bed.units.size()); }

BedChoice grouted_course(const Site& site) {
  const BedLevel wider = best_level({site.low, site.high}, first_bed_range(FirstCourse::Grouted));
  BedChoice choice = choice_at(site, What::GroutFirstCourse, wider.top);
  choice.margin = wider.margin, choice.most = first_bed_range(FirstCourse::Grouted).most;
  choice.keeps = choice.margin >= Length(), choice.work = units_of(site);
  return choice;
}

/// "falls 3/16 in along AB, rises 1/8 in along BC".
Fact slope_said(const Site& site, const TiltedBed& tilted) {
  std::vector<Fact> sides;
  for (const Wall& wall : site.bearing.building.walls) {
    const PlanPoint from = plan_point(wall, Length(), Length()), to = plan_point(wall, wall.actual, Length());
    const Length rise = length_of(metres(to.x - from.x) * tilted.along_x + metres(to.y - from.y) * tilted.along_y);
    if (&wall - site.bearing.building.walls.data() > 1) break;  // two sides tell the plane of a right-angled plan
    const Length size = magnitude(rise), step = tape_step(site.tape());
    const bool level = rounded_to(size, step) == Length();
    sides.push_back(level ? fact("slope-level", {wall.name})
                          : fact(rise < Length() ? "slope-falls" : "slope-rises", {size, wall.name}));
  }
  return fact("slope", {listed(FactValue::Kind::Commas, sides)});
}

void add_tilted(std::vector<BedChoice>& choices, const Site& site) {
  std::vector<PlanHeight> heights;
  for (const BearingHeight& one : site.bearing.heights) {
    const PlanPoint at = plan_point(wall_of(site.bearing.building, one.wall), one.along, Length());
    heights.push_back({metres(at.x), metres(at.y), metres(one.height)});
  }
  if (heights.size() < 4) return;
  const auto tilted = best_plane(heights, metres(site.bed.range.least), metres(site.bed.range.most), steepest());
  if (!tilted || length_of(tilted->margin) <= site.bed.level.margin + Length::sixteenths(1).half_down()) return;
  BedChoice choice;
  choice.what = What::TiltCourse;
  choice.margin = length_of(tilted->margin);
  choice.keeps = choice.margin >= Length(), choice.work = units_of(site);
  choice.where = slope_said(site, *tilted);
  double sum = 0;
  for (const UnitBed& unit : site.bed.units) {
    const PlanPoint at =
        plan_point(wall_of(site.bearing.building, unit.wall), unit.from + (unit.to - unit.from).half_down(), Length());
    const double top = tilted->top + tilted->along_x * metres(at.x) + tilted->along_y * metres(at.y);
    sum += volume(site.bearing, unit, top - (metres(site.bed.level.top) - site.mean(unit, site.bed.level.top)));
  }
  choice.mortar_cubic_centimetres = cubic_centimetres(sum);
  const PlanPoint corner = plan_point(wall_of(site.bearing.building, 0), Length(), Length());
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
  grind.work = rip.work = rip.cuts = rip.units;
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
    concrete += volume(site.bearing, unit, thick),
        beds += volume(site.bearing, unit, site.mean(unit, up) - std::max(0.0, thick));
  }
  units.put(strip);
  strip.work = strip.units;
  strip.concrete_cubic_centimetres = cubic_centimetres(concrete),
  strip.mortar_cubic_centimetres = cubic_centimetres(beds);
  choices.push_back(std::move(strip));
}

/// A layer of units so high, with a bed of its own, where the bearing lies low enough for it.
void add_layer(std::vector<BedChoice>& choices, const Site& site, What what, Length high) {
  const Length up = site.high + site.bed.range.least;
  BedChoice choice = choice_at(site, what, up);
  Named units(site.tape());
  double beds = 0;
  const BedRange& range = site.bed.range;
  for (const UnitBed& unit : site.bed.units) {
    const bool takes = site.thinnest(unit, up) >= high + 2 * range.least;
    // A layer has a bed of its own under it; what takes none keeps one bed.
    choice.keeps = choice.keeps && site.thickest(unit, up) <= (takes ? high + 2 * range.most : range.most);
    if (takes) units.add(unit_name(site, unit), site.thickest(unit, up));
    beds += volume(site.bearing, unit, site.mean(unit, up) - (takes ? metres(high) : 0));
  }
  units.put(choice);
  choice.work = choice.units;
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
  const Length least = limit_of("least-curb", site.tape());
  const Length curb = site.high + least, bed = (site.bed.range.least + site.bed.range.most).half_down();
  BedChoice choice;
  choice.what = What::Curb, choice.top = curb + bed, choice.most = curb - site.low;
  choice.units = choice.work = units_of(site);
  double concrete = 0, beds = 0;
  for (const UnitBed& unit : site.bed.units) {
    concrete += volume(site.bearing, unit, site.mean(unit, curb)), beds += volume(site.bearing, unit, metres(bed));
  }
  choice.concrete_cubic_centimetres = cubic_centimetres(concrete),
  choice.mortar_cubic_centimetres = cubic_centimetres(beds);
  choices.push_back(std::move(choice));
}

/// Deeper than this nobody grinds where there is another way.
bool too_deep(const BedChoice& choice, Tape tape) {
  return choice.what == What::Grind && choice.most > limit_of("grind-deepest", tape);
}

/// What keeps the range first; then the fewest units that are handled otherwise, and the least mortar and concrete:
/// this program's own order.
void rank(std::vector<BedChoice>& choices, Tape tape) {
  const auto key = [&](const BedChoice& one) {
    return std::tuple(!one.keeps, too_deep(one, tape), one.work,
                      one.mortar_cubic_centimetres + one.concrete_cubic_centimetres);
  };
  sort_stably(choices, {}, key);
  choices.front().recommended = choices.front().keeps;
}

}  // namespace

std::vector<BedChoice> bed_choices(const BedAsFound& bed, const Bearing& bearing, FirstCourse course) {
  const auto [low, high] = std::ranges::minmax(bearing.read, {}, &ReadHeight::height);
  const Site site{bed, bearing, low.height, high.height};
  std::vector<BedChoice> choices{choice_at(site, What::Level, bed.level.top)};
  choices[0].margin = bed.level.margin, choices[0].keeps = bed.level.margin >= Length();
  if (bed.verdict != Verdict::Fits) {
    if (course == FirstCourse::Hollow) choices.push_back(grouted_course(site));
    add_tilted(choices, site);
  }
  if (site.high - site.low > bed.range.most - bed.range.least) {
    add_taking_off(choices, site);
    add_strip(choices, site);
    add_layers(choices, site);
    add_curb(choices, site);
  }
  rank(choices, site.tape());
  return choices;
}

Fact choice_said(const BedChoice& choice) {
  const Fact where = choice.where.empty() ? Fact() : fact("choice-where", {choice.where});
  switch (choice.what) {
    case What::Level: return fact("choice-level");
    case What::GroutFirstCourse: return fact("choice-grout", {choice.most});
    case What::TiltCourse: return fact("choice-tilt", {where});
    case What::Grind: return fact("choice-grind", {choice.units, choice.most, where});
    case What::RipUnits: return fact("choice-rip", {choice.units, choice.most, where});
    case What::LevellingStrip: return fact("choice-strip", {choice.units, choice.most, where});
    case What::HalfHigh: return fact("choice-half-high", {choice.units, where});
    case What::Step: return fact("choice-step", {choice.units, where});
    case What::Curb: return fact("choice-curb", {choice.most});
  }
  return {};
}

Fact gives_up_said(const BedChoice& choice) {
  switch (choice.what) {
    case What::Level: return choice.keeps ? Fact() : fact("gives-up-range");
    case What::GroutFirstCourse: return fact(choice.keeps ? "gives-up-grout" : "gives-up-range");
    case What::TiltCourse: return fact(choice.keeps ? "gives-up-level" : "gives-up-range");
    case What::Grind: return fact("gives-up-grind");
    case What::RipUnits: return fact("gives-up-rip");
    case What::LevellingStrip: return fact("gives-up-strip");
    case What::HalfHigh: return fact(choice.keeps ? "gives-up-half-high" : "gives-up-some-beds");
    case What::Step: return fact(choice.keeps ? "gives-up-step" : "gives-up-some-beds");
    case What::Curb: return fact("gives-up-curb");
  }
  return {};
}

}  // namespace stringcourse::ground
