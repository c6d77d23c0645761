#pragma once
// Which goes where, so that the sum is least: each row gets a column of its own. Exact; with the prices that prove it.
#include <cstdint>
#include <optional>
#include <vector>

namespace stringcourse::supply {

/// costs[row][column], whole numbers within 2^40 either way, every row as long, no more rows than columns.
using CostTable = std::vector<std::vector<std::int64_t>>;

struct Assignment {
  std::vector<std::int32_t> column_of;  // by row
  std::int64_t cost = 0;
  /// Proof: row_price + column_price is nowhere above the cost, column prices are not above zero and zero where nothing
  /// goes, and all prices together are the cost. Any other assignment then costs as much at least.
  std::vector<std::int64_t> row_prices, column_prices;
};

/// By the method of Kuhn and Munkres, a row at a time along a shortest way (Jonker and Volgenant 1987): work grows as
/// rows squared times columns. None of a table that is not as described.
[[nodiscard]] std::optional<Assignment> cheapest_assignment(const CostTable& costs);

}  // namespace stringcourse::supply
