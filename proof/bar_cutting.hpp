#pragma once
// Bars cut from stock, counted again.
#include "answer/bar_cutting.hpp"
#include "job/job.hpp"
#include "proof/rules.hpp"

namespace stringcourse::proof {

/// Every mark that fits into the stock, dowels left out, is cut as often as it is wanted, of its own size; no bar is
/// longer than the stock with a cut between its pieces; what is left is what is left; and no plan takes fewer than
/// `least`: at the plan's prices all that is wanted is worth more than so many bars less one can hold.
Violations check_bar_cutting(const Job& job, const steel::BarPieces& bars, const std::vector<BarsFromStock>& cutting);

}  // namespace stringcourse::proof
