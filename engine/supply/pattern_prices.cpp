#include "supply/pattern_prices.hpp"

#include <algorithm>
#include <cmath>
#include <optional>

#include "measure/length.hpp"

namespace stringcourse::supply {
namespace {

// Some pieces of one size, taken together or not at all: 1, 2, 4 ... and the rest make every number of them.
struct Bundle {
  std::size_t size;
  std::int64_t pieces;
};

std::vector<Bundle> bundles_of(const CutTask& task) {
  std::vector<Bundle> bundles;
  for (std::size_t size = 0; size < task.sizes.size(); ++size) {
    std::int64_t left = std::min<std::int64_t>(task.counts[size], task.room / task.sizes[size]);
    for (std::int64_t pieces = 1; left > 0; pieces *= 2) {
      bundles.push_back({size, std::min(pieces, left)});
      left -= bundles.back().pieces;
    }
  }
  return bundles;
}

// One column of the relaxation's basis: a pattern, or what may be cut beyond what is wanted of one size.
struct Column {
  Cuts cuts;  // of a surplus: -1 of its size
  bool surplus = false;
};

constexpr double kTiny = 1e-9;
constexpr double kPriceOfBar = 1e9;  // prices are whole billionths of a bar

// Revised simplex with the inverse of its basis written out. One row for each size.
class Master {
 public:
  explicit Master(const CutTask& task) : size_(task.sizes.size()), inverse_(size_ * size_, 0.0) {
    for (std::size_t row = 0; row < size_; ++row) {
      Cuts cuts(size_, 0);
      cuts[row] = std::min<std::int64_t>(task.room / task.sizes[row], task.counts[row]);
      inverse_[row * size_ + row] = 1.0 / static_cast<double>(cuts[row]);
      times_.push_back(static_cast<double>(task.counts[row]) / static_cast<double>(cuts[row]));
      columns_.push_back({std::move(cuts), false});
    }
  }

  [[nodiscard]] std::vector<double> prices() const {
    std::vector<double> prices(size_, 0.0);
    for (std::size_t row = 0; row < size_; ++row) {
      if (columns_[row].surplus) continue;
      for (std::size_t column = 0; column < size_; ++column) prices[column] += inverse_[row * size_ + column];
    }
    return prices;
  }

  // False: it would go on for ever, or nothing holds it.
  bool enter(Column column) {
    std::vector<double> way(size_, 0.0);
    for (std::size_t row = 0; row < size_; ++row) {
      for (std::size_t k = 0; k < size_; ++k)
        way[row] += inverse_[row * size_ + k] * static_cast<double>(column.cuts[k]);
    }
    std::optional<std::size_t> leaving;
    for (std::size_t row = 0; row < size_; ++row) {
      if (way[row] > kTiny && (!leaving || times_[row] * way[*leaving] < times_[*leaving] * way[row])) leaving = row;
    }
    if (!leaving) return false;
    pivot(*leaving, way);
    columns_[*leaving] = std::move(column);
    return true;
  }

  [[nodiscard]] Relaxed taken() const {
    Relaxed relaxed;
    for (std::size_t row = 0; row < size_; ++row) {
      if (columns_[row].surplus || times_[row] < kTiny) continue;
      relaxed.patterns.push_back(columns_[row].cuts);
      relaxed.times.push_back(times_[row]);
    }
    return relaxed;
  }

 private:
  void pivot(std::size_t leaving, const std::vector<double>& way) {
    const double step = std::max(0.0, times_[leaving] / way[leaving]);
    for (std::size_t k = 0; k < size_; ++k) inverse_[leaving * size_ + k] /= way[leaving];
    for (std::size_t row = 0; row < size_; ++row) {
      if (row == leaving) continue;
      times_[row] = std::max(0.0, times_[row] - way[row] * step);
      for (std::size_t k = 0; k < size_; ++k) inverse_[row * size_ + k] -= way[row] * inverse_[leaving * size_ + k];
    }
    times_[leaving] = step;
  }

  std::size_t size_;
  std::vector<double> inverse_;
  std::vector<Column> columns_;
  std::vector<double> times_;
};

// All that is wanted, at these prices, over what the best bar holds: no plan takes fewer bars.
std::int64_t least_at(const CutTask& task, std::span<const std::int64_t> worth, std::int64_t best) {
  if (best <= 0) return 0;
  int128 all = 0;
  for (std::size_t size = 0; size < worth.size(); ++size) all += static_cast<int128>(worth[size]) * task.counts[size];
  return static_cast<std::int64_t>((all + best - 1) / best);
}

}  // namespace

BestCuts best_cuts(const CutTask& task, std::span<const std::int64_t> worth) {
  const std::vector<Bundle> bundles = bundles_of(task);
  const auto rooms = static_cast<std::size_t>(task.room) + 1;
  std::vector<std::int64_t> best(rooms, 0);  // within so much room
  std::vector<char> taken(bundles.size() * rooms, 0);
  for (std::size_t at = 0; at < bundles.size(); ++at) {
    const auto [size, pieces] = bundles[at];
    const auto wide = static_cast<std::size_t>(task.sizes[size] * pieces);
    const std::int64_t more = worth[size] * pieces;
    if (more == 0) continue;
    for (std::size_t room = rooms - 1; room >= wide; --room) {
      if (best[room - wide] + more <= best[room]) continue;
      best[room] = best[room - wide] + more;
      taken[at * rooms + room] = 1;
    }
  }
  BestCuts found{Cuts(task.sizes.size(), 0), best.back()};
  std::size_t room = rooms - 1;
  for (std::size_t at = bundles.size(); at-- > 0;) {
    if (taken[at * rooms + room] == 0) continue;
    found.cuts[bundles[at].size] += bundles[at].pieces;
    room -= static_cast<std::size_t>(task.sizes[bundles[at].size] * bundles[at].pieces);
  }
  return found;
}

Relaxed relaxed(const CutTask& task, std::int64_t& budget) {
  Master master(task);
  Relaxed bound;
  const auto looks = static_cast<std::int64_t>(bundles_of(task).size() + task.sizes.size()) * (task.room + 1);
  while (budget > 0) {
    budget -= looks;
    const std::vector<double> prices = master.prices();
    const auto lowest = std::ranges::min_element(prices);
    if (*lowest < -kTiny) {
      Cuts cuts(prices.size(), 0);
      cuts[static_cast<std::size_t>(lowest - prices.begin())] = -1;
      if (!master.enter({std::move(cuts), true})) break;
      continue;
    }
    std::vector<std::int64_t> worth;
    for (const double price : prices) worth.push_back(std::llround(std::clamp(price, 0.0, 1.0) * kPriceOfBar));
    BestCuts found = best_cuts(task, worth);
    if (const std::int64_t least = least_at(task, worth, found.worth); least > bound.least)
      bound.least = least, bound.prices = worth;
    // Each price is off by half a billionth at most, and a bar holds no more pieces than units of room.
    if (static_cast<double>(found.worth) <= kPriceOfBar + static_cast<double>(task.room)) break;
    if (!master.enter({std::move(found.cuts), false})) break;
  }
  Relaxed result = master.taken();
  result.least = bound.least;
  result.prices = std::move(bound.prices);
  return result;
}

}  // namespace stringcourse::supply
