// The cheapest assignment against trying all: on every small table, and proven by its prices on larger ones.
#include "supply/assignment.hpp"

#include <gtest/gtest.h>

#include <algorithm>
#include <numeric>
#include <random>
#include <tuple>

namespace stringcourse {
namespace {

using supply::Assignment;
using supply::CostTable;

/// Tries every way to give each row a column of its own.
std::int64_t least_of_all(const CostTable& costs) {
  std::vector<std::size_t> columns(costs.front().size());
  std::iota(columns.begin(), columns.end(), 0U);
  std::int64_t best = INT64_MAX;
  do {
    std::int64_t sum = 0;
    for (std::size_t row = 0; row < costs.size(); ++row) sum += costs[row][columns[row]];
    best = std::min(best, sum);
    std::reverse(columns.begin() + static_cast<std::ptrdiff_t>(costs.size()), columns.end());  // skips like rests
  } while (std::ranges::next_permutation(columns).found);
  return best;
}

void expect_proven(const CostTable& costs, const Assignment& found) {
  std::vector<bool> used(costs.front().size());
  std::int64_t sum = 0, prices = 0;
  for (std::size_t row = 0; row < costs.size(); ++row) {
    const auto column = static_cast<std::size_t>(found.column_of[row]);
    EXPECT_FALSE(used[column]);
    used[column] = true;
    sum += costs[row][column];
    prices += found.row_prices[row];
    for (std::size_t k = 0; k < used.size(); ++k)
      EXPECT_LE(found.row_prices[row] + found.column_prices[k], costs[row][k]);
  }
  for (std::size_t k = 0; k < used.size(); ++k) {
    EXPECT_LE(found.column_prices[k], 0);
    if (!used[k]) EXPECT_EQ(found.column_prices[k], 0);
    prices += found.column_prices[k];
  }
  EXPECT_EQ(sum, found.cost);
  EXPECT_EQ(prices, found.cost);
}

CostTable drawn(std::mt19937& dice, std::size_t rows, std::size_t columns, std::int64_t most) {
  CostTable costs(rows, std::vector<std::int64_t>(columns));
  for (auto& row : costs) {
    for (std::int64_t& cost : row)
      cost = static_cast<std::int64_t>(dice() % static_cast<std::uint64_t>(2 * most + 1)) - most;
  }
  return costs;
}

/// All tables of a shape whose entries are 0 to `most`, one by one.
void expect_least_of_every(std::size_t rows, std::size_t columns, int most) {
  int tables = 1;
  for (std::size_t k = 0; k < rows * columns; ++k) tables *= most + 1;
  for (int table = 0; table < tables; ++table) {
    CostTable costs(rows, std::vector<std::int64_t>(columns));
    int rest = table;
    for (auto& row : costs) {
      for (std::int64_t& cost : row) cost = rest % (most + 1), rest /= most + 1;
    }
    const Assignment found = *supply::cheapest_assignment(costs);
    ASSERT_EQ(found.cost, least_of_all(costs)) << rows << " x " << columns << ", table " << table;
    expect_proven(costs, found);
  }
}

/// Every table of two or three rows, as far as there are few enough of them: 3^9, 4^6, 5^4, 2^12 ...
TEST(CheapestAssignment, OfEverySmallTable) {
  for (std::size_t columns = 1; columns <= 7; ++columns) expect_least_of_every(1, columns, columns <= 5 ? 4 : 2);
  for (const auto& [rows, columns, most] : {std::tuple{2U, 2U, 8},
                                            {2U, 3U, 3},
                                            {2U, 4U, 2},
                                            {2U, 5U, 1},
                                            {2U, 6U, 1},
                                            {2U, 7U, 1},
                                            {3U, 3U, 2},
                                            {3U, 4U, 1},
                                            {3U, 5U, 1},
                                            {4U, 4U, 1}})
    expect_least_of_every(rows, columns, most);
}

/// Ties in plenty, none, costs below zero, and rows that go nowhere but to a few columns: what is not allowed costs
/// more than all that is, so that it is taken only where nothing else is left.
CostTable drawn_as(std::mt19937& dice, std::size_t rows, std::size_t columns, int kind) {
  CostTable costs = drawn(dice, rows, columns, kind == 0 ? 3 : 1'000'000);
  if (kind < 2) return costs;
  constexpr std::int64_t kForbidden = std::int64_t{1} << 40;
  for (auto& row : costs) {
    for (std::int64_t& cost : row) {
      if (dice() % 3 == 0) cost = kForbidden;
    }
  }
  if (kind == 3) costs.back() = costs.front();  // two rows alike
  return costs;
}

TEST(CheapestAssignment, OfAllSizesUpToSevenBySeven) {
  std::mt19937 dice(12);
  for (std::size_t rows = 1; rows <= 7; ++rows) {
    for (std::size_t columns = rows; columns <= 7; ++columns) {
      for (int k = 0; k < 120; ++k) {
        const CostTable costs = drawn_as(dice, rows, columns, k % 4);
        const Assignment found = *supply::cheapest_assignment(costs);
        ASSERT_EQ(found.cost, least_of_all(costs)) << rows << " x " << columns << ", " << k;
        expect_proven(costs, found);
      }
    }
  }
}

TEST(CheapestAssignment, OfLargeTablesIsProvenByItsPrices) {
  std::mt19937 dice(13);
  for (const auto& [rows, columns] : {std::pair{40U, 40U}, {60U, 130U}, {1U, 200U}}) {
    const CostTable costs = drawn(dice, rows, columns, 50'000'000);
    expect_proven(costs, *supply::cheapest_assignment(costs));
  }
}

TEST(CheapestAssignment, IsNoneOfATableThatIsNone) {
  EXPECT_TRUE(supply::cheapest_assignment({}).has_value());
  EXPECT_FALSE(supply::cheapest_assignment({{1}, {2}}).has_value()) << "more rows than columns";
  EXPECT_FALSE(supply::cheapest_assignment({{1, 2}, {2}}).has_value()) << "rows of unlike length";
  EXPECT_FALSE(supply::cheapest_assignment({{(std::int64_t{1} << 40) + 1}}).has_value()) << "too large";
}

}  // namespace
}  // namespace stringcourse
