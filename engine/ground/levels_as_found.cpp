#include <algorithm>
#include <cmath>

#include "ground/as_found.hpp"
#include "ground/tape_doubt.hpp"

namespace stringcourse::ground {
namespace {

constexpr double kMetre = 1e9;
double metres(Length length) { return static_cast<double>(length.in_nanometres()) / kMetre; }
Length nanometres_of(double value) {
  const double scaled = value * kMetre;
  return Length::nanometres(static_cast<std::int64_t>(scaled < 0 ? scaled - 0.5 : scaled + 0.5));
}

/// Names in the order in which they first come.
class Names {
 public:
  int number(const std::string& name) {
    const auto at = std::ranges::find(all, name);
    if (at == all.end()) all.push_back(name);
    return static_cast<int>(std::ranges::find(all, name) - all.begin());
  }
  std::vector<std::string> all;
};

struct Taken {
  Names stations, setups;
  std::vector<RodReading> readings;
  std::vector<std::size_t> entries;
  std::vector<std::optional<WallPlace>> places;
  std::vector<Surface> surfaces;
};

/// A station's place: said by any of its readings; a corner's name is a place by itself.
void put_place(Taken& taken, const Building& building, const stringcourse::RodReading& rod, int station) {
  const std::size_t at = static_cast<std::size_t>(station);
  if (taken.places.size() <= at) taken.places.resize(at + 1), taken.surfaces.resize(at + 1, Surface::Bearing);
  if (rod.surface) taken.surfaces[at] = *rod.surface;
  if (rod.on) taken.places[at] = wall_place(building, *rod.on, rod.from, rod.at.value_or(Length()));
}

Taken taken_from(const Job& job, const Building& building, const std::vector<bool>& counts) {
  Taken taken;
  const double sigma = standard_doubt(rod_reading_error(job));
  for (std::size_t k = 0; k < job.readings.size(); ++k) {
    if (!counts[k] || !job.readings[k].rod) continue;
    const stringcourse::RodReading& rod = *job.readings[k].rod;
    const int station = taken.stations.number(rod.station);
    put_place(taken, building, rod, station);
    taken.readings.push_back({taken.setups.number(rod.setup), station, metres(rod.rod), sigma});
    taken.entries.push_back(k);
  }
  return taken;
}

/// Keeps what hangs on the datum; the rest is named.
std::vector<std::string> drop_loose(Taken& taken, int datum) {
  std::vector<std::string> names;
  const auto levelled = adjust_levels(static_cast<int>(taken.stations.all.size()), static_cast<int>(taken.setups.all.size()), taken.readings, datum, 0);
  if (levelled) return names;
  const std::vector<int>& loose = levelled.error().points;
  Taken kept;
  for (std::size_t k = 0; k < taken.readings.size(); ++k) {
    const RodReading& reading = taken.readings[k];
    const std::size_t old = static_cast<std::size_t>(reading.point);
    if (std::ranges::contains(loose, reading.point)) continue;
    const int station = kept.stations.number(taken.stations.all[old]);
    if (kept.places.size() <= static_cast<std::size_t>(station)) {
      kept.places.push_back(taken.places[old]), kept.surfaces.push_back(taken.surfaces[old]);
    }
    kept.readings.push_back({kept.setups.number(taken.setups.all[static_cast<std::size_t>(reading.setup)]), station, reading.rod, reading.sigma});
    kept.entries.push_back(taken.entries[k]);
  }
  for (const int point : loose) names.push_back(taken.stations.all[static_cast<std::size_t>(point)]);
  taken = std::move(kept);
  return names;
}

std::vector<LoopVerdict> verdicts_of(const Levelled& levelled, const Taken& taken) {
  std::vector<LoopVerdict> verdicts;
  for (const Loop& loop : levelled.loops) {
    LoopVerdict verdict{{}, nanometres_of(loop.misclosure), nanometres_of(kBlunderLimit * loop.doubt), true};
    for (const int reading : loop.readings) verdict.entries.push_back(taken.entries[static_cast<std::size_t>(reading)]);
    verdict.closes = verdict.misclosure <= verdict.allowed && -verdict.misclosure <= verdict.allowed;
    verdicts.push_back(std::move(verdict));
  }
  return verdicts;
}

/// Heights of the bearing along the walls. A corner's height is that of both its walls.
std::vector<BearingHeight> bearing_of(const Building& building, const std::vector<Station>& stations) {
  std::vector<BearingHeight> heights;
  for (const Station& station : stations) {
    if (station.surface != Surface::Bearing) continue;
    if (station.place) heights.push_back({station.place->wall, station.place->along, station.height});
    for (const Corner& corner : building.corners) {
      if (corner.name != station.name || station.place) continue;
      if (corner.leaving >= 0) heights.push_back({corner.leaving, Length(), station.height});
      if (corner.arriving >= 0) heights.push_back({corner.arriving, building.walls[static_cast<std::size_t>(corner.arriving)].actual, station.height});
    }
  }
  return heights;
}

struct Bearing {
  const Building& building;
  const Layout& layout;
  std::vector<BearingHeight> heights;  // along the walls: a corner's on both
  std::vector<Length> read;            // one for each station
};

std::vector<Length> heights_read(const Building& building, const std::vector<Station>& stations) {
  std::vector<Length> heights;
  for (const Station& station : stations) {
    const bool corner = std::ranges::any_of(building.corners, [&](const Corner& one) { return one.name == station.name; });
    if (station.surface == Surface::Bearing && (station.place || corner)) heights.push_back(station.height);
  }
  return heights;
}

/// Bearing heights under a unit: at its ends and at readings between. Empty where it is not read.
std::vector<Length> under(const Bearing& bearing, int wall, Length from, Length to) {
  const auto start = height_at(bearing.heights, wall, from), end = height_at(bearing.heights, wall, to);
  if (!start || !end) return {};
  std::vector<Length> all{*start, *end};
  for (const BearingHeight& one : bearing.heights) {
    if (one.wall == wall && one.along > from && one.along < to) all.push_back(one.height);
  }
  return all;
}

void put_units(BedAsFound& bed, const Bearing& bearing) {
  for (const Run& run : bearing.layout.runs) {
    if (run.course != 1) continue;
    for (std::uint32_t k = 0; k < run.piece_count; ++k) {
      const Piece& piece = bearing.layout.pieces[run.first_piece + k];
      // A unit at a corner that reaches past the wall's own line stands on the corner's height.
      const Length actual = bearing.building.walls[static_cast<std::size_t>(run.wall)].actual;
      const Length from = std::clamp(piece.start.nearest_nanometre(), Length(), actual);
      const Length to = std::clamp(from + piece.length, Length(), actual);
      const std::vector<Length> heights = under(bearing, run.wall, from, to);
      if (heights.empty()) { ++bed.units_without; continue; }
      const auto [low, high] = std::ranges::minmax(heights);
      bed.units.push_back({run.wall, piece.number, from, to, bed.level.top - high, bed.level.top - low});
    }
  }
}

/// Mortar of full beds under the units read, cubic centimetres: length x wall x mean bed.
std::int64_t mortar_at(const BedAsFound& bed, const Bearing& bearing, Length top) {
  double cubic_metres = 0;
  for (const UnitBed& unit : bed.units) {
    const Wall& wall = bearing.building.walls[static_cast<std::size_t>(unit.wall)];
    const double mean = metres(unit.thinnest + unit.thickest) / 2 + metres(top - bed.level.top);
    cubic_metres += metres(unit.to - unit.from) * metres(bearing.building.series_of(wall).thickness) * std::max(0.0, mean);
  }
  return static_cast<std::int64_t>(cubic_metres * 1e6 + 0.5);
}

int count_units(const BedAsFound& bed, Length top, Length limit, bool thinner) {
  return static_cast<int>(std::ranges::count_if(bed.units, [&](const UnitBed& unit) {
    const Length shift = top - bed.level.top;
    return thinner ? unit.thinnest + shift < limit : unit.thickest + shift > limit;
  }));
}

void put_choices(BedAsFound& bed, const Bearing& bearing, bool grouted) {
  const std::vector<Length>& heights = bearing.read;
  const auto [low, high] = std::ranges::minmax(heights);
  using What = BedChoice::What;
  bed.choices.push_back({What::Level, bed.level.top, bed.level.margin, {}, 0, mortar_at(bed, bearing, bed.level.top)});
  if (bed.verdict == Verdict::Fits) return;
  if (!grouted) {
    const BedLevel wider = best_level(heights, kGroutedBed);
    bed.choices.push_back({What::GroutFirstCourse, wider.top, wider.margin, {}, 0, mortar_at(bed, bearing, wider.top)});
  }
  // Low places at the thickest bed that is allowed: what stands too high is ground off, or its units are ripped.
  const Length down = low + bed.range.most, over = high - (down - bed.range.least);
  if (over > Length()) {
    const auto spots = std::ranges::count_if(heights, [&](Length height) { return down - height < bed.range.least; });
    bed.choices.push_back({What::Grind, down, {}, over, static_cast<int>(spots), mortar_at(bed, bearing, down)});
    bed.choices.push_back({What::RipUnits, down, {}, over, count_units(bed, down, bed.range.least, true), mortar_at(bed, bearing, down)});
    // High places at the thinnest bed: what lies too low is brought up by a strip first.
    const Length up = high + bed.range.least, under_by = up - bed.range.most - low;
    bed.choices.push_back({What::LevellingStrip, up, {}, under_by, count_units(bed, up, bed.range.most, false), mortar_at(bed, bearing, up)});
  }
}

std::optional<BedAsFound> bed_of(const Job& job, const Building& building, const Layout& layout, const std::vector<Station>& stations) {
  const Bearing bearing{building, layout, bearing_of(building, stations), heights_read(building, stations)};
  if (bearing.read.empty()) return std::nullopt;
  const bool grouted = job.ground && job.ground->first_course_grouted.value_or(false);
  BedAsFound bed;
  bed.range = grouted ? kGroutedBed : kPlainBed;
  bed.level = best_level(bearing.read, bed.range);
  // Two readings of one set-up against one another, k = 2.
  bed.doubt = nanometres_of(2 * std::sqrt(2.0) * standard_doubt(rod_reading_error(job)));
  // The margin is half of what the range leaves of the difference between two readings.
  bed.verdict = judged(bed.level.margin, bed.doubt.half_down());
  put_units(bed, bearing);
  put_choices(bed, bearing, grouted);
  bed.bearing = bearing.heights;
  return bed;
}

}  // namespace

Length rod_reading_error(const Job& job) {
  if (job.ground && job.ground->rod_reading) return *job.ground->rod_reading;
  return job.tape == Tape::Inches ? Length::sixteenths(1) : Length::millimetres(1);
}

std::optional<LevelsAsFound> levels_as_found(const Job& job, const Building& building, const Layout& layout, const std::vector<bool>& counts) {
  Taken taken = taken_from(job, building, counts);
  if (taken.readings.empty()) return std::nullopt;
  const auto named = std::ranges::find(taken.stations.all, "datum");
  const std::string datum = named == taken.stations.all.end() ? taken.stations.all[0] : "datum";
  LevelsAsFound found;
  found.datum = datum;
  found.loose = drop_loose(taken, taken.stations.number(datum));
  const int points = static_cast<int>(taken.stations.all.size()), setups = static_cast<int>(taken.setups.all.size());
  const auto levelled = adjust_levels(points, setups, taken.readings, taken.stations.number(datum), 0);
  if (!levelled) return std::nullopt;  // cannot be: what is loose was dropped
  for (std::size_t k = 0; k < taken.stations.all.size(); ++k) {
    found.stations.push_back({taken.stations.all[k], taken.places[k], taken.surfaces[k], nanometres_of(levelled->heights[k]), nanometres_of(2 * levelled->doubts[k])});
  }
  found.loops = verdicts_of(*levelled, taken);
  found.setups = taken.setups.all;
  for (const double height : levelled->instruments) found.instruments.push_back(nanometres_of(height));
  found.bed = bed_of(job, building, layout, found.stations);
  return found;
}

}  // namespace stringcourse::ground
