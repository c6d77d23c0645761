#include "ground/rod_log.hpp"

#include "ground/tape_doubt.hpp"
#include "measure/metres.hpp"

namespace stringcourse::ground {
namespace {

/// A station's place: said by any of its readings; a corner's name is a place by itself.
void put_place(RodLog& log, const Building& building, const stringcourse::RodReading& rod, int station) {
  const std::size_t at = static_cast<std::size_t>(station);
  if (log.places.size() <= at) log.places.resize(at + 1), log.surfaces.resize(at + 1, Surface::Bearing);
  if (rod.surface) log.surfaces[at] = *rod.surface;
  if (!rod.on) return;
  const auto place = wall_place(building, *rod.on, rod.from, rod.at.value_or(Length()));
  const auto& before = log.places[at];
  if (before && place && (before->wall != place->wall || before->along != place->along)) log.two_places.insert(station);
  log.places[at] = place;
}

}  // namespace

int Names::number(const std::string& name) {
  const auto [known, fresh] = numbers_.try_emplace(name, count());
  if (fresh) all_.push_back(name);
  return known->second;
}

std::optional<int> Names::find(const std::string& name) const {
  const auto known = numbers_.find(name);
  return known == numbers_.end() ? std::nullopt : std::optional(known->second);
}

double sight_error_of(const TwoPegReading& test) {
  return sight_error(metres(test.midway_b - test.midway_a), metres(test.close_b - test.close_a), metres(test.sight_a),
                     metres(test.sight_b));
}

std::optional<std::size_t> two_peg_test(const Job& job, const std::vector<bool>& counts) {
  std::optional<std::size_t> last;
  for (std::size_t k = 0; k < job.readings.size(); ++k) {
    const auto& test = job.readings[k].two_peg;
    if (counts[k] && test && test->sight_a != test->sight_b) last = k;
  }
  return last;
}

RodLog rod_log(const Job& job, const Building& building, const std::vector<bool>& counts) {
  RodLog log;
  const auto test = two_peg_test(job, counts);
  const double error = test ? sight_error_of(*job.readings[*test].two_peg) : 0;
  const double sigma = standard_doubt(rod_reading_error(job));
  for (std::size_t k = 0; k < job.readings.size(); ++k) {
    if (!counts[k] || !job.readings[k].rod) continue;
    const stringcourse::RodReading& rod = *job.readings[k].rod;
    const int station = log.stations.number(rod.station);
    put_place(log, building, rod, station);
    const double read = without_sight_error(metres(rod.rod), error, metres(rod.sight.value_or(Length())));
    log.readings.push_back({log.setups.number(rod.setup), station, read, sigma});
    log.entries.push_back(k);
  }
  return log;
}

std::vector<std::string> drop_loose(RodLog& log, int datum) {
  const std::vector<int> loose = loose_points(log.stations.count(), log.setups.count(), log.readings, datum);
  if (loose.empty()) return {};
  const std::set<int> dropped(loose.begin(), loose.end());
  RodLog kept;
  for (std::size_t k = 0; k < log.readings.size(); ++k) {
    const RodReading& reading = log.readings[k];
    const std::size_t old = static_cast<std::size_t>(reading.point);
    if (dropped.contains(reading.point)) continue;
    const int station = kept.stations.number(log.stations.all()[old]);
    if (kept.places.size() <= static_cast<std::size_t>(station)) {
      kept.places.push_back(log.places[old]), kept.surfaces.push_back(log.surfaces[old]);
    }
    if (log.two_places.contains(reading.point)) kept.two_places.insert(station);
    const int setup = kept.setups.number(log.setups.all()[static_cast<std::size_t>(reading.setup)]);
    kept.readings.push_back({setup, station, reading.rod, reading.sigma});
    kept.entries.push_back(log.entries[k]);
  }
  std::vector<std::string> names;
  for (const int point : loose) names.push_back(log.stations.all()[static_cast<std::size_t>(point)]);
  log = std::move(kept);
  return names;
}

}  // namespace stringcourse::ground
