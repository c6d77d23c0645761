#pragma once
// The order in which grout goes in, checked against the amounts and against every way of walking.
#include "answer/pour_card.hpp"
#include "proof/rules.hpp"
#include "supply/grout.hpp"

namespace stringcourse::proof {

/// Each lift of each pour has a card, in order; on it each cell and each trough of its courses once, with the amount
/// that the pour has there; totals add up; cells before troughs. The cells' round is as long as it says, and no order
/// of visiting them, walked along the outer faces from the first corner, is shorter: every stretch round that corner
/// and either end of it is tried.
Violations check_pour_cards(const Building& building, const Layout& layout, const std::vector<supply::GroutPour>& pours,
                            const std::vector<LiftCard>& cards);

}  // namespace stringcourse::proof
