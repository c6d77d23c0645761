#pragma once
// The programme, worked out again: every piece laid once, nothing before its time, earliest and latest by a plain twin,
// dates on working days.
#include "answer/pour_card.hpp"
#include "answer/programme.hpp"
#include "proof/rules.hpp"
#include "supply/grout.hpp"
#include "supply/shores.hpp"

namespace stringcourse::proof {

/// What is held: each work lasts as long as the job, the pace or the usual times say; the crew does one thing after
/// another, in the list's order, shores beside it; no wall rises by more courses in a day than are allowed; a pour's
/// courses stand before it sets, it sets before it is filled, and is filled before the next course; shores stand before
/// their lintel is laid, and not before its jambs. Times are the longest ways through the links, found by going round
/// until nothing changes; latest ones keep the end and no later ones do. Days hold all pieces, and their dates are
/// worked ones with none between left out. What the laid log tells of is behind and in none of these; waits that have
/// begun are shorter by the days since (proof/behind.hpp).
Violations check_programme(const Job& job, const Building& building, const Layout& layout,
                           const std::vector<supply::GroutPour>& pours, const std::vector<supply::Bridged>& bridged,
                           const std::vector<LiftCard>& cards, const Programme& programme);

}  // namespace stringcourse::proof
