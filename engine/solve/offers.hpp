#pragma once
// Offers: what a moved opening or a changed side would save, found by solving the changed job.
#include "bond/panel_memo.hpp"
#include "solve/solve.hpp"

namespace stringcourse {

/// Fills answer.offers and answer.free_places. Openings are moved up to one unit each way by half units and to the
/// nearest places that lay without a cut; sides are made longer and shorter by up to one unit, by half units.
/// Only changes that save something by the order of the cost are offered. Stops early when wishes.progress says so;
/// then what was found so far stands.
void find_offers(Answer& answer, bond::PanelMemo& memo, const Wishes& wishes);

}  // namespace stringcourse
