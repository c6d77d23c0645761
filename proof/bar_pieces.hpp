#pragma once
// Bars as they are cut, measured again from the placed bars and pieces.
#include "proof/rules.hpp"
#include "steel/bar_pieces.hpp"

namespace stringcourse::proof {

/// Upright bars run from the bearing (or their first unit) to their cover under their last course without a gap, lapped
/// on course tops by the job's rule and by less than a step of the tape more; each pour's stop that has room for a lap
/// has one; none is longer than the stock where a course would shorten it. Bars in beams fill every stretch of their
/// course, laps of bars side by side apart; corner bars lap both walls' bars; bars in lintels span them. Dowels stand
/// up as asked. Marks and totals are what the pieces come to. Without a lap rule there are no lapped pieces.
Violations check_bar_pieces(const Job& job, const Building& building, const Layout& layout,
                            const steel::BarPieces& bars);

}  // namespace stringcourse::proof
