#include "laying/gauge.hpp"

#include <algorithm>

#include "laying/even_joints.hpp"
#include "measure/sorting.hpp"

namespace stringcourse::laying {

std::optional<Beds> equal_beds(const BedsWanted& wanted) {
  const int count = static_cast<int>(wanted.units.size());
  Length beds = wanted.target - wanted.now;
  for (const Length unit : wanted.units) beds = beds - unit;
  if (count == 0) return std::nullopt;
  const Length planned = wanted.bed * count, off = beds - planned, near = rounded_to(off, wanted.step);
  const Steps steps{wanted.bed.whole_multiples(wanted.step),
                    -(-(wanted.bed - wanted.either_way)).whole_multiples(wanted.step),
                    (wanted.bed + wanted.either_way).whole_multiples(wanted.step)};
  // What must be made up is what a course that short must gain.
  const auto widths = even_joints(count, -near.whole_multiples(wanted.step), steps);
  if (!widths) return std::nullopt;
  Beds found;
  for (const std::int64_t width : *widths)
    found.beds.push_back(wanted.step * width + (wanted.bed - wanted.step * steps.joint));
  found.left = off - near;
  return found;
}

UnitAdvice advise(const UnitReadings& readings) {
  UnitAdvice advice;
  const Length spare = readings.thinnest_bed - readings.least_bed;
  for (std::size_t k = 0; k < readings.high.size(); ++k) {
    const Length high = readings.high[k];
    if (high <= -readings.step || (high >= readings.step && high > spare)) advice.lift = true;
    else if (high >= readings.step) advice.taps.push_back({static_cast<UnitCorner>(k), high});
  }
  if (advice.lift) advice.taps.clear();
  sort_stably(advice.taps, [](const Tap& a, const Tap& b) { return a.down > b.down; });
  return advice;
}

}  // namespace stringcourse::laying
