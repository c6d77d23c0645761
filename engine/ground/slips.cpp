#include "ground/slips.hpp"

#include <vector>

namespace stringcourse::ground {
namespace {

Length apart(Length a, Length b) { return a < b ? b - a : a - b; }

Length scaled(Length length, std::int64_t times, std::int64_t parts) {
  const int128 product = static_cast<int128>(length.in_nanometres()) * times;
  return Length::nanometres(static_cast<std::int64_t>((2 * product + parts) / (2 * parts)));
}

/// Everything that a reading may have been meant for; those beyond the longest length are left out.
std::vector<Meant> meanings(Length read) {
  std::vector<Meant> all;
  const auto times = [&](Slip slip, std::int64_t up, std::int64_t down) {
    const int128 most = static_cast<int128>(kLongest.in_nanometres()) * down;
    if (static_cast<int128>(read.in_nanometres()) * up <= most) all.push_back({slip, scaled(read, up, down)});
  };
  times(Slip::FeetForInches, 12, 1), times(Slip::InchesForFeet, 1, 12);
  times(Slip::InchesForMillimetres, 254, 10), times(Slip::MillimetresForInches, 10, 254);
  times(Slip::FeetForMillimetres, 3048, 10), times(Slip::MillimetresForFeet, 10, 3048);
  for (const Length by : {Length::feet(1), Length::feet(-1)}) all.push_back({Slip::FootLost, read + by});
  for (const Length by : {Length::inches(1), Length::inches(-1)}) all.push_back({Slip::InchBurnt, read + by});
  return all;
}

}  // namespace

std::optional<Meant> likely_slip(Length read, Length expected, Length near) {
  if (read <= Length() || apart(read, expected) <= near) return std::nullopt;
  std::optional<Meant> best;
  for (const Meant& meant : meanings(read)) {
    if (apart(meant.length, expected) > near) continue;
    if (!best || apart(meant.length, expected) < apart(best->length, expected)) best = meant;
  }
  return best;
}

}  // namespace stringcourse::ground
