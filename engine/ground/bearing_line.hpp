#pragma once
// Heights of the bearing along each wall, sorted once: what lies under a place or a unit is looked up.
#include <map>
#include <optional>
#include <span>
#include <vector>

#include "ground/bed.hpp"

namespace stringcourse::ground {

class BearingLines {
 public:
  explicit BearingLines(const std::vector<BearingHeight>& readings);

  /// As height_at(): between two readings of that wall, the first of those at one place; none beyond the outermost two.
  [[nodiscard]] std::optional<Length> at(int wall, Length along) const;
  /// The readings strictly between two places of a wall, in order.
  [[nodiscard]] std::span<const BearingHeight> between(int wall, Length from, Length to) const;
  /// All of a wall's, in order.
  [[nodiscard]] std::span<const BearingHeight> of(int wall) const;

 private:
  std::map<int, std::vector<BearingHeight>> walls_;
};

}  // namespace stringcourse::ground
