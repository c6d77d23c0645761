#pragma once
// Which bars are bought, and what is cut from each: the marks of the bar schedule in stock lengths, size by size.
#include <cstdint>
#include <string>
#include <vector>

#include "steel/bar_pieces.hpp"
#include "supply/cutting_stock.hpp"

namespace stringcourse {

struct BarsFromStock {
  std::string size;
  std::vector<std::int32_t> marks;  // index into BarPieces::marks, in the order of a pattern's cuts
  supply::CuttingPlan plan;
};

/// By size, in the order of the schedule. Without dowels, whose lower part is as the drawings say, and without what is
/// longer than the stock, which has its finding.
[[nodiscard]] std::vector<BarsFromStock> bars_from_stock(const steel::BarPieces& bars);

}  // namespace stringcourse
