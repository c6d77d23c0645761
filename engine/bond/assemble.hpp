#pragma once
// From a building to its layout: panels solved for every choice of their bits, the choices settled together, the pieces
// placed, the bars put in their cells.
#include <cstdint>

#include "bond/layout.hpp"
#include "bond/panel_memo.hpp"
#include "walls/building.hpp"

namespace stringcourse::bond {

/// The best layout of the whole building (docs: the bond model). Where a panel has no lawful layout for any choice,
/// Layout::stopped says which rule stops it and what would mend it; the rest is laid all the same.
/// `memo` may hold panels solved before: it changes the time, never the answer.
[[nodiscard]] Layout lay_out(const Building& building, PanelMemo& memo);

/// The same with corners and junctions as in `like`, where that lays everything: for a building that was changed a
/// little, when the time is short. Not proven.
[[nodiscard]] Layout lay_out_like(const Layout& like, const Building& building, PanelMemo& memo);

/// For a building that was found a little otherwise than printed: corners and junctions as printed, the courses that
/// Building::laid_to says are laid with their very pieces, and above and beside them, of all layouts that are equally
/// good, one that changes the fewest pieces. Where that does not lay, Layout::stopped says so.
[[nodiscard]] Layout lay_out_from(const Layout& printed, const Building& building, PanelMemo& memo);

}  // namespace stringcourse::bond
