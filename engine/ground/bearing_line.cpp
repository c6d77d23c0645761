#include "ground/bearing_line.hpp"

#include <algorithm>

#include "measure/sorting.hpp"

namespace stringcourse::ground {

BearingLines::BearingLines(const std::vector<BearingHeight>& readings) {
  for (const BearingHeight& one : readings) walls_[one.wall].push_back(one);
  for (auto& [wall, all] : walls_) sort_stably(all, {}, &BearingHeight::along);
}

std::span<const BearingHeight> BearingLines::of(int wall) const {
  const auto found = walls_.find(wall);
  return found == walls_.end() ? std::span<const BearingHeight>() : std::span(found->second);
}

std::optional<Length> BearingLines::at(int wall, Length along) const {
  const std::span<const BearingHeight> all = of(wall);
  const auto after = std::ranges::lower_bound(all, along, {}, &BearingHeight::along);
  if (after == all.end()) return std::nullopt;
  if (after->along == along) return after->height;
  if (after == all.begin()) return std::nullopt;
  // Of several at one place the first.
  const auto before = std::ranges::lower_bound(all, (after - 1)->along, {}, &BearingHeight::along);
  return height_between(*before, *after, along);
}

std::span<const BearingHeight> BearingLines::between(int wall, Length from, Length to) const {
  const std::span<const BearingHeight> all = of(wall);
  const auto first = std::ranges::upper_bound(all, from, {}, &BearingHeight::along);
  const auto last = std::ranges::lower_bound(first, all.end(), to, {}, &BearingHeight::along);
  return {first, last};
}

}  // namespace stringcourse::ground
