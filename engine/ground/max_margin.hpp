#pragma once
// The largest margin that all of many limits can keep at once: a small linear program, solved by the simplex method.
#include <array>
#include <optional>
#include <vector>

namespace stringcourse::ground {

/// a . x + share * margin <= limit. share 0: a limit that must be kept, without margin; its limit is 0 or more.
struct Limit {
  std::array<double, 3> a{};
  double share = 1;
  double limit = 0;
};

struct BestMargin {
  std::array<double, 3> x{};
  double margin = 0;         // below 0: the limits cannot all be kept; this is the least that is missing
  std::vector<int> binding;  // limits that stop it from being larger
};

/// Maximises the margin over x (three unknowns, any sign) and margin. None where it grows without end, or where it
/// would take more than 20 million rows passed (this program's limit). Deterministic (Bland's rule), + - x / only.
/// Limits of one size (all about 1) keep about 1e-9 of it.
[[nodiscard]] std::optional<BestMargin> best_margin(const std::vector<Limit>& limits);

}  // namespace stringcourse::ground
