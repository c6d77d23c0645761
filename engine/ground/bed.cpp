#include "ground/bed.hpp"

#include <algorithm>

#include "catalogue/rules.hpp"
#include "ground/max_margin.hpp"

namespace stringcourse::ground {

BedRange first_bed_range(FirstCourse course) {
  const std::size_t most = course == FirstCourse::Grouted ? 2 : 1;
  return {limit_of("first-bed"), limit_of("first-bed", Tape::Inches, most)};
}

BedLevel best_level(const std::vector<Length>& heights, const BedRange& range) {
  const auto [lowest, highest] = std::ranges::minmax(heights);
  BedLevel level;
  level.top = (lowest + highest + range.least + range.most).half_down();
  level.thinnest = level.top - highest, level.thickest = level.top - lowest;
  level.margin = std::min(level.thinnest - range.least, range.most - level.thickest);
  return level;
}

std::optional<TiltedBed> best_plane(const std::vector<PlanHeight>& heights, double least, double most,
                                    double steepest) {
  // Bed = top + x sx + y sy - height, kept `margin` inside the range at every reading.
  double far = 1;
  for (const PlanHeight& one : heights) far = std::max({far, one.x, -one.x, one.y, -one.y});
  std::vector<Limit> limits;
  for (const PlanHeight& one : heights) {
    const double x = one.x / far, y = one.y / far;
    limits.push_back({{1, x, y}, 1, most + one.height});
    limits.push_back({{-1, -x, -y}, 1, -least - one.height});
  }
  for (const double sign : {1.0, -1.0}) {
    limits.push_back({{0, sign, 0}, 0, steepest * far});
    limits.push_back({{0, 0, sign}, 0, steepest * far});
  }
  const auto best = best_margin(limits);
  if (!best) return std::nullopt;
  return TiltedBed{best->x[0], best->x[1] / far, best->x[2] / far, best->margin};
}

std::optional<Length> height_at(const std::vector<BearingHeight>& readings, int wall, Length along) {
  const BearingHeight *before = nullptr, *after = nullptr;
  for (const BearingHeight& reading : readings) {
    if (reading.wall != wall) continue;
    if (reading.along <= along && (before == nullptr || reading.along > before->along)) before = &reading;
    if (reading.along >= along && (after == nullptr || reading.along < after->along)) after = &reading;
  }
  if (before == nullptr || after == nullptr) return std::nullopt;
  return height_between(*before, *after, along);
}

Length height_between(const BearingHeight& before, const BearingHeight& after, Length along) {
  const Length span = after.along - before.along, up = after.height - before.height;
  if (span == Length()) return before.height;
  const int128 rise = static_cast<int128>(up.in_nanometres()) * (along - before.along).in_nanometres();
  const int128 run = span.in_nanometres();
  const int128 doubled = 2 * rise + run;
  const int128 rest = doubled % (2 * run);
  return before.height + Length::nanometres(static_cast<std::int64_t>(doubled / (2 * run) - (rest < 0 ? 1 : 0)));
}

}  // namespace stringcourse::ground
