#pragma once
// Patterns of cuts by what they save: the linear relaxation of cutting from stock, column by column. Internal to
// supply/cutting_stock.cpp. Prices are doubles and only ever proposals: what follows from them is counted exactly.
#include <cstdint>
#include <span>
#include <vector>

namespace stringcourse::supply {

/// Pieces in whole units of length, each with the saw's cut beside it; so has the stock's `room`.
struct CutTask {
  std::vector<std::int32_t> sizes;   // falling; none above `room`
  std::vector<std::int64_t> counts;  // above zero
  std::int32_t room = 0;
};

using Cuts = std::vector<std::int64_t>;  // of each size

struct BestCuts {
  Cuts cuts;
  std::int64_t worth = 0;
};
/// The cuts of one bar that are worth most, none of a size oftener than it is wanted. Exact. `worth` of each size is
/// not below zero, and all of a bar's together are below 2^62.
[[nodiscard]] BestCuts best_cuts(const CutTask& task, std::span<const std::int64_t> worth);

struct Relaxed {
  std::vector<Cuts> patterns;
  std::vector<double> times;         // of each pattern
  std::int64_t least = 0;            // bars that are needed at least; exact
  std::vector<std::int64_t> prices;  // of each size, at which this is seen
};
/// Counts its looks down from `budget` (cut_from_stock()), and tries no price with none left.
[[nodiscard]] Relaxed relaxed(const CutTask& task, std::int64_t& budget);

}  // namespace stringcourse::supply
