// Bars that stand beside each other: enough grout between them.
#include <algorithm>

#include "catalogue/rules.hpp"
#include "walls/fixed_bars.hpp"

namespace stringcourse::walls {
namespace {

FactValue place_of(const FixedBar& bar) { return marked(bar.centre.distance_from_start()); }

/// `wanted`: the least clear distance.
Fact too_near(const Draft& draft, const FixedBar& one, const FixedBar& other, Length clear, Length wanted) {
  const Wall& wall = wall_at(draft, one.wall);
  const FactValue want = at_least(wanted), apart = at_least(wanted + draft.building.bars->diameter);
  if (clear <= Length())
    return fact("bars-meet", {wall.name, place_of(one), place_of(other), wall.start_name, want, apart});
  return fact("bars-too-near",
              {wall.name, place_of(one), place_of(other), wall.start_name, marked(clear), want, apart});
}

}  // namespace

void check_bars_apart(Draft& draft) {
  if (!draft.building.bars) return;
  const Length diameter = draft.building.bars->diameter, wanted = std::max(diameter, limit_of("bar-apart"));
  const std::vector<FixedBar> bars = draft.building.fixed_bars;  // in the order of their walls and places
  for (std::size_t i = 1; i < bars.size(); ++i) {
    const FixedBar &one = bars[i - 1], &other = bars[i];
    const Length clear = other.centre - one.centre - diameter;
    if (one.wall != other.wall || one.corner >= 0 || other.corner >= 0 || clear >= wanted) continue;
    find(draft, "bars-too-near", other.place, too_near(draft, one, other, clear, wanted), "bar-apart", HoldPoint::Pour);
  }
}

}  // namespace stringcourse::walls
