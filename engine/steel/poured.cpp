#include "steel/poured.hpp"

#include <algorithm>

#include "catalogue/rules.hpp"

namespace stringcourse::steel {
namespace {

/// The entry of `list` on this wall that lies nearest; none where the nearest is farther than `most`.
std::optional<std::size_t> nearest(const std::vector<Dowel>& list, std::int32_t wall, Length along, Length most) {
  std::optional<std::size_t> best;
  const auto first = std::ranges::lower_bound(list, wall, {}, &Dowel::wall);
  for (auto one = first; one != list.end() && one->wall == wall; ++one) {
    const Length off = magnitude(one->along - along);
    const auto index = static_cast<std::size_t>(one - list.begin());
    if (off <= most && (!best || off < magnitude(list[*best].along - along))) best = index;
  }
  return best;
}

}  // namespace

DowelsNow dowels_now(const std::vector<Dowel>& poured, const std::vector<Dowel>& now,
                     const std::vector<FoundDowel>& found) {
  DowelsNow result;
  for (std::size_t k = 0; k < poured.size(); ++k) result.dowels.push_back({k, {}, {}});
  // A reading is of the dowel that it lies nearest to, as far as the two bars of a lap may stand apart.
  const Length most = limit_of("lap-apart");
  for (const FoundDowel& dowel : found) {
    result.read.push_back(nearest(poured, dowel.wall, dowel.along, most));
    if (result.read.back()) result.dowels[*result.read.back()].found = dowel.along;
  }
  const Length off_dowel = limit_of("bar-place");
  std::vector<bool> has_dowel(now.size(), false);
  for (const FoundDowel& dowel : found) {
    if (const auto bar = nearest(now, dowel.wall, dowel.along, most)) has_dowel[*bar] = true;
  }
  for (DowelNow& one : result.dowels) {
    const Dowel& stands = poured[one.dowel];
    const auto bar = nearest(now, stands.wall, one.found.value_or(stands.along), off_dowel);
    if (bar) one.bar = now[*bar].along, has_dowel[*bar] = true;
  }
  for (std::size_t k = 0; k < now.size(); ++k) {
    if (!has_dowel[k]) result.without.push_back(now[k]);
  }
  return result;
}

}  // namespace stringcourse::steel
