#pragma once
// A good layout quickly, not proven: every row laid as well as it can be beside the rows that lie already, again and
// again until none gets better. Rows have at most one cut in a run. A bound for the search that proves, and what is
// shown while an opening is dragged.
#include <cstdint>
#include <optional>
#include <vector>

#include "bond/key.hpp"
#include "bond/row_graph.hpp"

namespace stringcourse::bond {

struct RoughLayout {
  Key cost;
  std::vector<std::vector<std::vector<Chosen>>> rows;  // [row][run][piece]
};

/// A lawful layout, the best found from so many rows to begin with; nothing where this way finds none (which proves
/// nothing). Ordered panels only. Fewer ways to lay a row are looked at where all of them have no room; one layout of
/// whole pieces and make-ups is laid whatever room there is: it takes looks in proportion to the pieces.
[[nodiscard]] std::optional<RoughLayout> lay_row_by_row(const Panel& panel, std::size_t most_starts, Room& room);

}  // namespace stringcourse::bond
