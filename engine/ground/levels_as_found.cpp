#include <algorithm>
#include <cmath>

#include "ground/bed_choices.hpp"
#include "ground/tape_doubt.hpp"
#include "measure/metres.hpp"
#include "measure/sorting.hpp"

namespace stringcourse::ground {
namespace {

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
  std::vector<std::string> two_places;  // stations
};

/// A station's place: said by any of its readings; a corner's name is a place by itself.
void put_place(Taken& taken, const Building& building, const stringcourse::RodReading& rod, int station) {
  const std::size_t at = static_cast<std::size_t>(station);
  if (taken.places.size() <= at) taken.places.resize(at + 1), taken.surfaces.resize(at + 1, Surface::Bearing);
  if (rod.surface) taken.surfaces[at] = *rod.surface;
  if (!rod.on) return;
  const auto place = wall_place(building, *rod.on, rod.from, rod.at.value_or(Length()));
  const auto& before = taken.places[at];
  if (before && place && (before->wall != place->wall || before->along != place->along)) taken.two_places.push_back(rod.station);
  taken.places[at] = place;
}

double sight_error_of(const TwoPegReading& test) {
  return sight_error(metres(test.midway_b - test.midway_a), metres(test.close_b - test.close_a), metres(test.sight_a), metres(test.sight_b));
}

/// The last two-peg test that counts; sights of one length tell nothing.
std::optional<std::size_t> two_peg_test(const Job& job, const std::vector<bool>& counts) {
  std::optional<std::size_t> last;
  for (std::size_t k = 0; k < job.readings.size(); ++k) {
    const auto& test = job.readings[k].two_peg;
    if (counts[k] && test && test->sight_a != test->sight_b) last = k;
  }
  return last;
}

Taken taken_from(const Job& job, const Building& building, const std::vector<bool>& counts) {
  Taken taken;
  const auto test = two_peg_test(job, counts);
  const double error = test ? sight_error_of(*job.readings[*test].two_peg) : 0;
  const double sigma = standard_doubt(rod_reading_error(job));
  for (std::size_t k = 0; k < job.readings.size(); ++k) {
    if (!counts[k] || !job.readings[k].rod) continue;
    const stringcourse::RodReading& rod = *job.readings[k].rod;
    const int station = taken.stations.number(rod.station);
    put_place(taken, building, rod, station);
    taken.readings.push_back({taken.setups.number(rod.setup), station, without_sight_error(metres(rod.rod), error, metres(rod.sight.value_or(Length()))), sigma});
    taken.entries.push_back(k);
  }
  return taken;
}

bool is_bearing(const Building& building, const Station& station) {
  const bool corner = std::ranges::any_of(building.corners, [&](const Corner& one) { return one.name == station.name; });
  return station.surface == Surface::Bearing && !station.far && (station.place || corner);
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
  kept.two_places = std::move(taken.two_places);
  for (const int point : loose) names.push_back(taken.stations.all[static_cast<std::size_t>(point)]);
  taken = std::move(kept);
  return names;
}

std::vector<LoopVerdict> verdicts_of(const Levelled& levelled, const Taken& taken) {
  std::vector<LoopVerdict> verdicts;
  for (const Loop& loop : levelled.loops) {
    LoopVerdict verdict{{}, length_of(loop.misclosure), length_of(kBlunderLimit * loop.doubt), true};
    for (const int reading : loop.readings) verdict.entries.push_back(taken.entries[static_cast<std::size_t>(reading)]);
    verdict.closes = verdict.misclosure <= verdict.allowed && -verdict.misclosure <= verdict.allowed;
    verdicts.push_back(std::move(verdict));
  }
  return verdicts;
}

/// Bearings that lie far from the middle of all were read wrong: with the rod upside down, in another unit, elsewhere.
void find_far(std::vector<Station>& stations, const Building& building, const Taken& taken, const Levelled& levelled) {
  std::vector<Length> heights;
  for (const Station& one : stations) if (is_bearing(building, one)) heights.push_back(one.height);
  if (heights.size() < 3) return;
  sort_stably(heights);
  const Length middle = heights[heights.size() / 2], far = building.tape == Tape::Inches ? Length::feet(2) : Length::millimetres(600);
  for (Station& one : stations) {
    const Length off = one.height - middle;
    if (!is_bearing(building, one) || (off <= far && -off <= far)) continue;
    one.far = true;
    for (std::size_t k = 0; k < taken.readings.size(); ++k) {
      const RodReading& reading = taken.readings[k];
      if (taken.stations.all[static_cast<std::size_t>(reading.point)] != one.name) continue;
      const Length expected = length_of(levelled.instruments[static_cast<std::size_t>(reading.setup)]) - middle;
      one.slip = likely_slip(length_of(reading.rod), expected, Length::inches(4));
      break;
    }
  }
}

/// Heights of the bearing along the walls. A corner's height is that of both its walls.
std::vector<BearingHeight> bearing_of(const Building& building, const std::vector<Station>& stations) {
  std::vector<BearingHeight> heights;
  for (const Station& station : stations) {
    if (station.surface != Surface::Bearing || station.far) continue;
    if (station.place) heights.push_back({station.place->wall, station.place->along, station.height});
    for (const Corner& corner : building.corners) {
      if (corner.name != station.name || station.place) continue;
      if (corner.leaving >= 0) heights.push_back({corner.leaving, Length(), station.height});
      if (corner.arriving >= 0) heights.push_back({corner.arriving, building.walls[static_cast<std::size_t>(corner.arriving)].actual, station.height});
    }
  }
  return heights;
}

std::vector<ReadHeight> heights_read(const Building& building, const std::vector<Station>& stations) {
  std::vector<ReadHeight> heights;
  for (const Station& station : stations) {
    if (is_bearing(building, station)) heights.push_back({station.name, station.height});
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

std::optional<BedAsFound> bed_of(const Job& job, const Building& building, const Layout& layout, const std::vector<Station>& stations) {
  const Bearing bearing{building, layout, bearing_of(building, stations), heights_read(building, stations)};
  if (bearing.read.empty()) return std::nullopt;
  std::vector<Length> heights;
  for (const ReadHeight& one : bearing.read) heights.push_back(one.height);
  const bool grouted = job.ground && job.ground->first_course_grouted.value_or(false);
  BedAsFound bed;
  bed.range = grouted ? kGroutedBed : kPlainBed;
  bed.level = best_level(heights, bed.range);
  // Two readings of one set-up against one another, k = 2.
  bed.doubt = length_of(2 * std::sqrt(2.0) * standard_doubt(rod_reading_error(job)));
  // The margin is half of what the range leaves of the difference between two readings.
  bed.verdict = judged(bed.level.margin, bed.doubt.half_down());
  put_units(bed, bearing);
  bed.choices = bed_choices(bed, bearing, grouted);
  bed.bearing = bearing.heights;
  return bed;
}

std::optional<Instrument> instrument_of(const Job& job, const std::vector<bool>& counts) {
  const auto test = two_peg_test(job, counts);
  if (!test) return std::nullopt;
  const TwoPegReading& pegs = *job.readings[*test].two_peg;
  Instrument instrument;
  instrument.entry = *test;
  instrument.sight = job.tape == Tape::Inches ? Length::feet(100) : Length::millimetres(30'000);
  const double sight = metres(instrument.sight), apart = metres(pegs.sight_b - pegs.sight_a);
  instrument.over = length_of(sight_error_of(pegs) * sight);
  // Four readings, each with its doubt: GUM 5.1.2.
  const double doubt = 2 * 2 * standard_doubt(rod_reading_error(job)) * sight / apart;
  instrument.doubt = length_of(doubt < 0 ? -doubt : doubt);
  instrument.level = instrument.over <= instrument.doubt && -instrument.over <= instrument.doubt;
  for (std::size_t k = 0; k < job.readings.size(); ++k) {
    if (counts[k] && job.readings[k].rod && job.readings[k].rod->sight) ++instrument.corrected;
  }
  return instrument;
}

/// Floors read between the jambs of a doorway.
std::vector<DoorFloor> doors_of(const Building& building, const LevelsAsFound& levels) {
  std::vector<DoorFloor> doors;
  if (!levels.bed || building.courses.empty()) return doors;
  const Length first_top = levels.bed->level.top + building.courses[0].unit_height;
  const Length limit = building.tape == Tape::Inches ? Length::sixteenths(2) : Length::millimetres(3);
  for (std::size_t k = 0; k < building.openings.size(); ++k) {
    const ResolvedOpening& opening = building.openings[k];
    std::vector<Length> heights;
    DoorFloor door;
    for (const Station& station : levels.stations) {
      if (station.surface != Surface::Floor || !station.place || station.place->wall != opening.wall) continue;
      const Position at = Position::from_start(station.place->along);
      if (at < opening.from || at > opening.to) continue;
      heights.push_back(station.height - first_top);
      door.doubt = std::max(door.doubt, station.doubt);
    }
    if (heights.empty()) continue;
    const auto [low, high] = std::ranges::minmax(heights);
    door.opening = static_cast<std::int32_t>(k), door.lowest = low, door.highest = high;
    door.tall_least = opening.soffit - high, door.tall_most = opening.soffit - low;
    door.verdict = judged(limit - std::max(high - opening.underside, opening.underside - low), door.doubt);
    doors.push_back(door);
  }
  return doors;
}

}  // namespace

Length rod_reading_error(const Job& job) {
  if (job.ground && job.ground->rod_reading) return *job.ground->rod_reading;
  return tape_step(job.tape);
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
    Station station;
    station.name = taken.stations.all[k], station.place = taken.places[k], station.surface = taken.surfaces[k];
    station.height = length_of(levelled->heights[k]), station.doubt = length_of(2 * levelled->doubts[k]);
    station.two_places = std::ranges::contains(taken.two_places, station.name);
    for (std::size_t reading = taken.readings.size(); reading-- > 0;) {
      if (taken.readings[reading].point == static_cast<int>(k)) station.entry = taken.entries[reading];
    }
    found.stations.push_back(std::move(station));
  }
  find_far(found.stations, building, taken, *levelled);
  found.loops = verdicts_of(*levelled, taken);
  found.setups = taken.setups.all;
  for (const double height : levelled->instruments) found.instruments.push_back(length_of(height));
  found.bed = bed_of(job, building, layout, found.stations);
  found.instrument = instrument_of(job, counts);
  found.doors = doors_of(building, found);
  return found;
}

}  // namespace stringcourse::ground
