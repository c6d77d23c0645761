#include <algorithm>
#include <cmath>

#include "catalogue/rules.hpp"
#include "ground/bed_as_found.hpp"
#include "ground/rod_log.hpp"
#include "ground/tape_doubt.hpp"
#include "measure/metres.hpp"
#include "measure/sorting.hpp"

namespace stringcourse::ground {
namespace {

std::vector<LoopVerdict> verdicts_of(const Levelled& levelled, const RodLog& log) {
  std::vector<LoopVerdict> verdicts;
  for (const Loop& loop : levelled.loops) {
    LoopVerdict verdict{{}, length_of(loop.misclosure), length_of(kBlunderLimit * loop.doubt), true};
    for (const int reading : loop.readings) verdict.entries.push_back(log.entries[static_cast<std::size_t>(reading)]);
    verdict.closes = verdict.misclosure <= verdict.allowed && -verdict.misclosure <= verdict.allowed;
    verdicts.push_back(std::move(verdict));
  }
  return verdicts;
}

/// Bearings that lie far from the middle of all were read wrong: with the rod upside down, in another unit, elsewhere.
void find_far(std::vector<Station>& stations, const Building& building, const RodLog& log, const Levelled& levelled,
              const std::vector<std::size_t>& first_reading) {
  std::vector<Length> heights;
  for (const Station& one : stations) {
    if (is_bearing(building, one)) heights.push_back(one.height);
  }
  if (heights.size() < 3) return;
  sort_stably(heights);
  const Length middle = heights[heights.size() / 2];
  const Length far = limit_of("rod-far", building.tape);
  for (std::size_t k = 0; k < stations.size(); ++k) {
    const Length off = stations[k].height - middle;
    if (!is_bearing(building, stations[k]) || (off <= far && -off <= far)) continue;
    stations[k].far = true;
    const RodReading& reading = log.readings[first_reading[k]];
    const Length expected = length_of(levelled.instruments[static_cast<std::size_t>(reading.setup)]) - middle;
    stations[k].slip = likely_slip(length_of(reading.rod), expected, Length::inches(4));
  }
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
  const Length limit = limit_of("door-floor", building.tape);
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
    // Course 1 lies where the bed is best: as long as that is not read, nor is what the opening will be.
    const Length over = std::max(high - opening.underside, opening.underside - low);
    door.verdict = levels.bed->units_without > 0 ? Verdict::NotRead : judged(limit - over, door.doubt);
    doors.push_back(door);
  }
  return doors;
}

/// The points of the wall's top by wall, then along it, over the design height of the last course's top.
std::vector<TopPoint> top_points(const Building& building, const LevelsAsFound& levels) {
  const Length design = levels.bed->level.top + building.courses.front().unit_height + building.courses.back().top;
  std::vector<TopPoint> points;
  for (std::size_t k = 0; k < levels.stations.size(); ++k) {
    const Station& station = levels.stations[k];
    if (station.surface != Surface::Top || !station.place) continue;
    points.push_back({static_cast<std::int32_t>(k), station.height - design, {}, TopWork::Stands, Verdict::NotRead});
  }
  sort_stably(points, {}, [&](const TopPoint& point) {
    const WallPlace& place = *levels.stations[static_cast<std::size_t>(point.station)].place;
    return std::pair(place.wall, place.along);
  });
  return points;
}

/// What is left of rule "bed-level" at one point: of its height, and against each point of its wall within its stretch.
Length top_margin(const Tolerance& level, const std::vector<Station>& stations, const TopAsFound& top,
                  const TopPoint& point) {
  const auto place_of = [&](const TopPoint& one) { return *stations[static_cast<std::size_t>(one.station)].place; };
  const WallPlace here = place_of(point);
  Length margin = level.most - magnitude(point.off);
  for (const TopPoint& other : top.points) {
    const WallPlace there = place_of(other);
    if (there.wall != here.wall || magnitude(there.along - here.along) > level.over) continue;
    margin = std::min(margin, level.within - magnitude(other.off - point.off));
  }
  return margin;
}

/// Thinner than the thinnest bed it is packed, else bedded; what a reading cannot tell is left.
TopWork work_for(Length off, Length step) {
  if (magnitude(off) < step) return TopWork::Stands;
  if (off > Length()) return TopWork::Plane;
  return -off < first_bed_range(FirstCourse::Hollow).least ? TopWork::Pack : TopWork::Bed;
}

std::optional<TopAsFound> top_as_found(const Job& job, const Building& building, const LevelsAsFound& levels) {
  if (!levels.bed || building.courses.empty()) return std::nullopt;
  TopAsFound top;
  top.points = top_points(building, levels);
  if (top.points.empty()) return std::nullopt;
  const Tolerance level = tolerance_of("bed-level", building.tape);
  const auto [low, high] = std::ranges::minmax(top.points, {}, &TopPoint::off);
  top.lowest = low.off, top.highest = high.off;
  top.bearing = std::clamp(top.highest, -level.most, level.most);
  for (TopPoint& point : top.points) {
    const Station& station = levels.stations[static_cast<std::size_t>(point.station)];
    top.doubt = std::max(top.doubt, station.doubt);
    const Length off = point.off - top.bearing;
    point.work = work_for(off, rod_reading_error(job));
    if (point.work != TopWork::Stands) point.by = magnitude(off);
  }
  for (TopPoint& point : top.points) point.verdict = judged(top_margin(level, levels.stations, top, point), top.doubt);
  return top;
}

}  // namespace

Length rod_reading_error(const Job& job) {
  if (job.ground && job.ground->rod_reading) return *job.ground->rod_reading;
  return tape_step(job.tape);
}

namespace {

std::vector<Station> stations_of(const RodLog& log, const Levelled& levelled,
                                 const std::vector<std::size_t>& first_reading) {
  std::vector<Station> stations;
  for (std::size_t k = 0; k < log.stations.all().size(); ++k) {
    Station station;
    station.name = log.stations.all()[k], station.place = log.places[k], station.surface = log.surfaces[k];
    station.height = length_of(levelled.heights[k]), station.doubt = length_of(2 * levelled.doubts[k]);
    station.two_places = log.two_places.contains(static_cast<int>(k));
    station.entry = log.entries[first_reading[k]];
    stations.push_back(std::move(station));
  }
  return stations;
}

/// By station, its first reading.
std::vector<std::size_t> first_readings(const RodLog& log) {
  std::vector<std::size_t> first(log.stations.all().size(), 0);
  for (std::size_t k = log.readings.size(); k-- > 0;) first[static_cast<std::size_t>(log.readings[k].point)] = k;
  return first;
}

}  // namespace

std::optional<LevelsAsFound> levels_as_found(const Job& job, const Building& building, const Layout& layout,
                                             const std::vector<bool>& counts) {
  RodLog log = rod_log(job, building, counts);
  if (log.readings.empty()) return std::nullopt;
  LevelsAsFound found;
  found.datum = log.stations.find("datum") ? "datum" : log.stations.all()[0];
  found.too_many_setups = log.setups.count() > kMostSetups;
  if (found.too_many_setups) return found;
  found.loose = drop_loose(log, log.stations.number(found.datum));
  const auto levelled =
      adjust_levels(log.stations.count(), log.setups.count(), log.readings, log.stations.number(found.datum), 0);
  if (!levelled) return std::nullopt;  // cannot be: what is loose was dropped
  const std::vector<std::size_t> first = first_readings(log);
  found.stations = stations_of(log, *levelled, first);
  find_far(found.stations, building, log, *levelled, first);
  found.loops = verdicts_of(*levelled, log);
  found.setups = log.setups.all();
  for (const double height : levelled->instruments) found.instruments.push_back(length_of(height));
  found.bed = bed_as_found(job, building, layout, found.stations);
  found.instrument = instrument_of(job, counts);
  found.doors = doors_of(building, found);
  found.top = top_as_found(job, building, found);
  return found;
}

}  // namespace stringcourse::ground
