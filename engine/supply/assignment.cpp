#include "supply/assignment.hpp"

#include <algorithm>
#include <limits>

namespace stringcourse::supply {
namespace {

constexpr std::int64_t kFar = std::numeric_limits<std::int64_t>::max() / 4;

bool is_as_described(const CostTable& costs) {
  constexpr std::int64_t kMost = std::int64_t{1} << 40;
  return std::ranges::all_of(costs, [&](const std::vector<std::int64_t>& row) {
    return row.size() == costs.front().size() && row.size() >= costs.size() &&
           std::ranges::all_of(row, [](std::int64_t cost) { return -kMost <= cost && cost <= kMost; });
  });
}

/// Rows and columns count from 1; column 0 is where a row that is being placed starts from.
class Placer {
 public:
  explicit Placer(const CostTable& costs)
      : costs_(costs),
        columns_(costs.front().size()),
        row_price_(costs.size() + 1),
        column_price_(columns_ + 1),
        row_in_(columns_ + 1) {}

  Assignment place_all() {
    for (std::size_t row = 1; row <= costs_.size(); ++row) place(row);
    Assignment found;
    found.column_of.resize(costs_.size());
    for (std::size_t column = 1; column <= columns_; ++column) {
      if (row_in_[column] == 0) continue;
      const std::size_t row = row_in_[column] - 1;
      found.column_of[row] = static_cast<std::int32_t>(column) - 1;
      found.cost += costs_[row][column - 1];
    }
    found.row_prices.assign(row_price_.begin() + 1, row_price_.end());
    found.column_prices.assign(column_price_.begin() + 1, column_price_.end());
    return found;
  }

 private:
  /// Along the shortest way of exchanges to a column that is free.
  void place(std::size_t row) {
    row_in_[0] = row;
    std::vector<std::int64_t> distance(columns_ + 1, kFar);
    std::vector<std::size_t> came_from(columns_ + 1, 0);
    std::vector<bool> reached(columns_ + 1, false);
    std::size_t at = 0;
    while (row_in_[at] != 0) {
      reached[at] = true;
      const std::size_t next = nearest(at, distance, came_from, reached);
      const std::int64_t step = distance[next];
      for (std::size_t column = 0; column <= columns_; ++column) {
        if (reached[column]) row_price_[row_in_[column]] += step, column_price_[column] -= step;
        else distance[column] -= step;
      }
      at = next;
    }
    for (; at != 0; at = came_from[at]) row_in_[at] = row_in_[came_from[at]];
  }

  std::size_t nearest(std::size_t at, std::vector<std::int64_t>& distance, std::vector<std::size_t>& came_from,
                      const std::vector<bool>& reached) const {
    const std::size_t row = row_in_[at];
    std::size_t best = 0;
    for (std::size_t column = 1; column <= columns_; ++column) {
      if (reached[column]) continue;
      const std::int64_t over = costs_[row - 1][column - 1] - row_price_[row] - column_price_[column];
      if (over < distance[column]) distance[column] = over, came_from[column] = at;
      if (best == 0 || distance[column] < distance[best]) best = column;
    }
    return best;
  }

  const CostTable& costs_;
  std::size_t columns_;
  std::vector<std::int64_t> row_price_, column_price_;
  std::vector<std::size_t> row_in_;  // by column; 0: none
};

}  // namespace

std::optional<Assignment> cheapest_assignment(const CostTable& costs) {
  if (costs.empty()) return Assignment();
  if (!is_as_described(costs)) return std::nullopt;
  return Placer(costs).place_all();
}

}  // namespace stringcourse::supply
