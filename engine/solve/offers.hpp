#pragma once
// Offers: what small changes of openings and sides would save, found by solving the changed job.
#include "bond/panel_memo.hpp"
#include "solve/solve.hpp"

namespace stringcourse {

/// Fills answer.offers and answer.free_places with what solve/offer_changes.hpp finds worth a try. Offered is what
/// saves cuts or short laps, by the order of the cost, or brings a hole's head onto a course at no cost of these; fewer
/// bars alone are no offer. The best come first, of alike ones the smaller change; a larger change of the same thing
/// that saves no more is left out. Each number is one that solving the changed job finds as well. Of large buildings
/// not every change is tried (answer.offers_complete). Stops early when wishes.progress says so; then what was found so
/// far stands.
void find_offers(Answer& answer, bond::PanelMemo& memo, const Wishes& wishes);

}  // namespace stringcourse
