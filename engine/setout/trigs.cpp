#include "setout/trigs.hpp"

#include <algorithm>
#include <optional>

#include "measure/sorting.hpp"

namespace stringcourse::setout {
namespace {

constexpr Length kLongestLine = Length::feet(3'000);  // no wall is longer

struct Stretch {
  Length from, to;
};

/// Where the middle of a trig may stand: on half a unit of masonry at least, in whatever course the line is.
std::vector<Stretch> ground_for_trigs(const Building& building, int wall) {
  const Wall& line = building.walls[static_cast<std::size_t>(wall)];
  std::vector<Stretch> holes;
  for (const ResolvedOpening& opening : building.openings) {
    if (opening.wall == wall) holes.push_back({opening.from.distance_from_start(), opening.to.distance_from_start()});
  }
  sort_stably(holes, {}, &Stretch::from);
  const Length half = building.series_of(line).half.half_down();
  std::vector<Stretch> ground;
  Length from;
  holes.push_back({line.actual, line.actual});
  for (const Stretch& hole : holes) {
    if (from + half <= hole.from - half) ground.push_back({from + half, hole.from - half});
    from = std::max(from, hole.to);
  }
  return ground;
}

/// The farthest place for a trig that is no farther on than `span`; none if there is none beyond `last`.
std::optional<Length> farthest(const std::vector<Stretch>& ground, Length last, Length span) {
  std::optional<Length> best;
  for (const Stretch& stretch : ground) {
    const Length at = std::min(stretch.to, last + span);
    if (at >= stretch.from && at > last) best = at;
  }
  return best;
}

std::optional<Length> next_beyond(const std::vector<Stretch>& ground, Length last, Length span) {
  for (const Stretch& stretch : ground) {
    if (stretch.from > last + span) return stretch.from;
  }
  return std::nullopt;
}

/// From the start on, each as far as the span allows.
Trigs as_far_as(const std::vector<Stretch>& ground, Length whole, Length span) {
  Trigs trigs;
  Length last;
  while (whole - last > span) {
    std::optional<Length> at = farthest(ground, last, span);
    if (!at) trigs.holds = false, at = next_beyond(ground, last, span);
    if (!at) break;
    trigs.at.push_back(*at);
    trigs.longest = std::max(trigs.longest, *at - last);
    last = *at;
  }
  trigs.longest = std::max(trigs.longest, whole - last);
  return trigs;
}

}  // namespace

Length longest_span(const LineFacts& line, double most_sag) {
  std::int64_t low = 0, high = kLongestLine.in_nanometres();
  while (high - low > 1) {
    const std::int64_t middle = low + (high - low) / 2;
    (catenary_sag(static_cast<double>(middle) * 1e-9, line.weight, line.pull) <= most_sag ? low : high) = middle;
  }
  return Length::nanometres(low);
}

Trigs trigs_of(const Building& building, int wall, Length span) {
  const std::vector<Stretch> ground = ground_for_trigs(building, wall);
  const Length whole = building.walls[static_cast<std::size_t>(wall)].actual;
  const Trigs fewest = as_far_as(ground, whole, span);
  if (!fewest.holds || fewest.at.empty()) return fewest;
  // The shortest span that still needs no more of them makes the parts even.
  std::int64_t low = 0, high = span.in_nanometres();
  while (high - low > 1) {
    const std::int64_t middle = low + (high - low) / 2;
    const Trigs tried = as_far_as(ground, whole, Length::nanometres(middle));
    (tried.holds && tried.at.size() <= fewest.at.size() ? high : low) = middle;
  }
  return as_far_as(ground, whole, Length::nanometres(high));
}

}  // namespace stringcourse::setout
