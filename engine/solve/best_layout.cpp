#include "solve/best_layout.hpp"

#include <array>
#include <utility>

#include "bond/assemble.hpp"

namespace stringcourse {
namespace {

std::array<std::int64_t, 4> rank(const Cost& cost, BondWish bond) {
  if (bond == BondWish::Quarter) return {cost.conceded, cost.cuts, cost.short_pieces, cost.short_laps};
  return {cost.conceded, cost.short_laps, cost.cuts, cost.short_pieces};
}

bool relaxes_more(const Layout& one, const Layout& other) {
  return (one.relaxed_piece && !other.relaxed_piece) || (one.relaxed_bearing && !other.relaxed_bearing);
}

}  // namespace

Layout best_layout(const Building& building, bond::PanelMemo& memo) {
  Layout searched = bond::lay_out(building, memo);
  if (memo.is_quick() || searched.proven || !searched.stopped.empty()) return searched;
  bond::PanelMemo without_search(0);
  Layout at_once = bond::lay_out(building, without_search);
  const bool better = at_once.stopped.empty() && rank(at_once.cost, building.bond) < rank(searched.cost, building.bond);
  if (!better || relaxes_more(at_once, searched)) return searched;
  at_once.least_possible = searched.least_possible;
  return at_once;
}

}  // namespace stringcourse
