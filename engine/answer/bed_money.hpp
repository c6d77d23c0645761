#pragma once
// What the ways to bed the first course cost in money, of what is ordered for them: mortar by what its joints hold, and
// units. Work and tools have no price here; a way that takes concrete or more grout has none at all.
#include <optional>
#include <vector>

#include "answer/order.hpp"
#include "job/readings.hpp"

namespace stringcourse {

/// What one way costs beside laying level, which the order counts, tax in it; below zero: less.
struct BedMoney {
  BedRemedy what = BedRemedy::Level;
  Sum more;
};
/// Of the ways that are offered, in their order, laying level left out; none of one for which a price is missing.
[[nodiscard]] std::vector<BedMoney> bed_money(const Answer& answer);

/// "the order costs 12.40 USD more"; empty where it is not known.
[[nodiscard]] Fact bed_money_said(const Answer& answer, BedRemedy what);

}  // namespace stringcourse
