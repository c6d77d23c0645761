// Bars that stand beside each other: enough grout between them.
#include <algorithm>

#include "walls/fixed_bars.hpp"

namespace stringcourse::walls {
namespace {

/// SOURCE: rule "bar-apart".
constexpr Length kLeastClear = Length::inches(1);

std::string place_of(const Draft& draft, const FixedBar& bar) { return say(draft, bar.centre.distance_from_start()); }

void find_too_near(Draft& draft, const FixedBar& one, const FixedBar& other) {
  const BarRules& rules = *draft.building.bars;
  const Length clear = other.centre - one.centre - rules.diameter, wanted = std::max(rules.diameter, kLeastClear);
  if (clear >= wanted) return;
  const Wall& wall = wall_at(draft, one.wall);
  const std::string left = clear > Length() ? joined({"leave ", say(draft, clear), " of grout between them"}) : std::string("meet");
  find(draft, "bars-too-near", other.place,
       joined({"On ", wall.name, " the bars at ", place_of(draft, one), " and ", place_of(draft, other), " from ", wall.start_name, " ", left,
               "; bars side by side want ", say_at_least(draft, wanted), ". Set them ", say_at_least(draft, wanted + rules.diameter),
               " apart or more, centre to centre, unless one laps the other and your drawings say so."}),
       cited("bar-apart"), HoldPoint::Pour);
}

}  // namespace

void check_bars_apart(Draft& draft) {
  if (!draft.building.bars) return;
  const std::vector<FixedBar> bars = draft.building.fixed_bars;  // in the order of their walls and places
  for (std::size_t i = 1; i < bars.size(); ++i) {
    if (bars[i - 1].wall == bars[i].wall && bars[i].corner < 0 && bars[i - 1].corner < 0) find_too_near(draft, bars[i - 1], bars[i]);
  }
}

}  // namespace stringcourse::walls
