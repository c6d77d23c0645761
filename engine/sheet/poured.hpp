#pragma once
// What the dowel list says once the concrete is poured: that it is as poured, and what differs since.
#include "paper/table.hpp"
#include "sheet/context.hpp"

namespace stringcourse::sheet {

/// The list's first line once it is poured; nothing before.
void add_poured_heading(Table& table, const Context& context);

/// Dowels found elsewhere than poured to, bars that come down beside their dowel, dowels without a bar and bars without
/// a dowel, by the tape's steps. Nothing where nothing differs. Columns as the dowel list's: a pencil box, the name,
/// the place.
void add_poured_since(Table& table, const Context& context);

}  // namespace stringcourse::sheet
