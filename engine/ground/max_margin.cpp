#include "ground/max_margin.hpp"

#include <cstddef>

namespace stringcourse::ground {
namespace {

constexpr double kZero = 1e-11;
constexpr std::size_t kFree = 4;           // x0 x1 x2 margin
constexpr std::size_t kSplit = 2 * kFree;  // each as the difference of two that are not negative
constexpr int kMostPivots = 10'000;
constexpr std::size_t kMostWork = 20'000'000;  // rows passed over all pivots

/// Rows: [columns of the split unknowns | slacks | right side]; the slack columns that are basic are not stored: a
/// pivot swaps a column's owner with the row's.
struct Tableau {
  std::vector<std::vector<double>> rows;  // kSplit entries and the right side
  std::vector<double> gain;               // reduced gains, and minus the value
  std::vector<int> row_owner, column_owner;

  void pivot(std::size_t row, std::size_t column) {
    std::vector<double>& p = rows[row];
    const double by = p[column];
    p[column] = 1;
    for (double& value : p) value /= by;
    const auto clear = [&](std::vector<double>& other) {
      const double times = other[column];
      if (times == 0) return;
      other[column] = 0;
      for (std::size_t k = 0; k < p.size(); ++k) other[k] -= times * p[k];
    };
    for (std::size_t k = 0; k < rows.size(); ++k) {
      if (k != row) clear(rows[k]);
    }
    clear(gain);
    std::swap(row_owner[row], column_owner[column]);
  }
};

Tableau tableau_of(const std::vector<Limit>& limits) {
  Tableau tableau;
  for (std::size_t k = 0; k < limits.size(); ++k) {
    const Limit& limit = limits[k];
    const std::array<double, kFree> a{limit.a[0], limit.a[1], limit.a[2], limit.share};
    std::vector<double> row;
    for (const double value : a) row.push_back(value), row.push_back(-value);
    row.push_back(limit.limit);
    tableau.rows.push_back(std::move(row));
    tableau.row_owner.push_back(static_cast<int>(kSplit + k));
  }
  for (std::size_t k = 0; k < kSplit; ++k) tableau.column_owner.push_back(static_cast<int>(k));
  tableau.gain.assign(kSplit + 1, 0.0);
  tableau.gain[6] = 1, tableau.gain[7] = -1;
  return tableau;
}

/// A margin so small that every limit is kept: one pivot on the limit that misses most.
void make_lawful(Tableau& tableau, const std::vector<Limit>& limits) {
  std::size_t worst = limits.size();
  for (std::size_t k = 0; k < limits.size(); ++k) {
    if (limits[k].share <= 0 || limits[k].limit >= 0) continue;
    if (worst == limits.size() || limits[k].limit / limits[k].share < limits[worst].limit / limits[worst].share)
      worst = k;
  }
  if (worst < limits.size()) tableau.pivot(worst, 7);
}

/// The column to enter, by Bland's rule on its owner; kSplit where there is no gain left.
std::size_t entering(const Tableau& tableau) {
  std::size_t best = kSplit;
  for (std::size_t k = 0; k < kSplit; ++k) {
    if (tableau.gain[k] <= kZero) continue;
    if (best == kSplit || tableau.column_owner[k] < tableau.column_owner[best]) best = k;
  }
  return best;
}

std::size_t leaving(const Tableau& tableau, std::size_t column) {
  std::size_t best = tableau.rows.size();
  double least = 0;
  for (std::size_t k = 0; k < tableau.rows.size(); ++k) {
    const double rate = tableau.rows[k][column];
    if (rate <= kZero) continue;
    const double step = tableau.rows[k][kSplit] / rate;
    const bool first = best == tableau.rows.size();
    if (first || step < least - kZero || (step <= least + kZero && tableau.row_owner[k] < tableau.row_owner[best])) {
      if (first || step < least) least = step;
      best = k;
    }
  }
  return best;
}

BestMargin read_off(const Tableau& tableau) {
  std::array<double, kSplit> values{};
  for (std::size_t k = 0; k < tableau.rows.size(); ++k) {
    const int owner = tableau.row_owner[k];
    if (owner < static_cast<int>(kSplit)) values[static_cast<std::size_t>(owner)] = tableau.rows[k][kSplit];
  }
  BestMargin best{{values[0] - values[1], values[2] - values[3], values[4] - values[5]}, values[6] - values[7], {}};
  for (const int owner : tableau.column_owner) {
    if (owner >= static_cast<int>(kSplit)) best.binding.push_back(owner - static_cast<int>(kSplit));
  }
  return best;
}

}  // namespace

std::optional<BestMargin> best_margin(const std::vector<Limit>& limits) {
  Tableau tableau = tableau_of(limits);
  make_lawful(tableau, limits);
  for (int pivots = 0; pivots < kMostPivots; ++pivots) {
    if (static_cast<std::size_t>(pivots) * limits.size() > kMostWork) break;
    const std::size_t column = entering(tableau);
    if (column == kSplit) return read_off(tableau);
    const std::size_t row = leaving(tableau, column);
    if (row == tableau.rows.size()) return std::nullopt;
    tableau.pivot(row, column);
  }
  return std::nullopt;
}

}  // namespace stringcourse::ground
