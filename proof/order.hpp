#pragma once
// The order list, counted again from the placed pieces: units by kind, mortar in the joints, money.
#include "answer/order.hpp"
#include "proof/rules.hpp"

namespace stringcourse::proof {

/// Every kind that is laid has its article, and no other has: whole pieces and what the saw needs (two cuts of one unit
/// where both and a kerf fit into it, no more pairs being possible), breakage rounded up, and not a pallet too many or
/// too few. The joints hold the mortar that it says, to the cubic nanometre, where no bed was read. Every cost is its
/// article's price times its amount, rounded once, and the sums are the sums.
Violations check_order(const Job& job, const Building& building, const Layout& layout, const Order& order);

}  // namespace stringcourse::proof
