#pragma once
// Bars from stock lengths: which pieces are cut from one bar, and how often, so that as few bars as can be are bought.
// A plan is exact. How few would do is bounded from below by whole numbers too: where both agree, none does with fewer.
#include <cstdint>
#include <expected>
#include <span>
#include <vector>

#include "measure/length.hpp"

namespace stringcourse::supply {

struct PieceWanted {
  Length length;
  std::int64_t count = 0;
};

/// One way to cut a bar, done `times` over.
struct CutPattern {
  std::int64_t times = 0;
  std::vector<std::int64_t> cuts;  // of each piece wanted, in their order
  Length left;                     // what remains of one bar
  friend bool operator==(const CutPattern&, const CutPattern&) = default;
};

struct CuttingPlan {
  std::vector<CutPattern> patterns;  // the longest pieces first
  std::int64_t bars = 0;             // all patterns' times
  std::int64_t least = 0;            // no plan takes fewer
  /// Why: at these prices of the pieces wanted, all of them over what the best bar holds, rounded up, is `least`.
  std::vector<std::int64_t> prices = {};
  [[nodiscard]] bool proven() const { return bars == least; }
};

enum class CannotCut {
  NoStock,          // stock or a piece is not above zero, or the saw takes less than nothing
  LongerThanStock,  // a piece
  TooMany,          // pieces times lengths are more than kMostCuts: what a plan may have to hold
};
inline constexpr std::int64_t kMostCuts = 10'000'000;

/// `kerf`: what the saw takes between two pieces, and between the last and what is left. `budget`: so many
/// places of a bar are looked at (each length at each place is one look for each price that is tried); with none of it
/// left the best plan until then stands.
[[nodiscard]] std::expected<CuttingPlan, CannotCut> cut_from_stock(std::span<const PieceWanted> pieces, Length stock,
                                                                   Length kerf, std::int64_t budget = 1'000'000'000);

}  // namespace stringcourse::supply
