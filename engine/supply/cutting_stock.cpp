#include "supply/cutting_stock.hpp"

#include <algorithm>
#include <cmath>
#include <functional>
#include <map>
#include <numeric>
#include <optional>
#include <utility>

#include "supply/pattern_prices.hpp"

namespace stringcourse::supply {
namespace {

// Rooms beyond so many units are counted in larger ones.
constexpr std::int64_t kMostUnits = 20'000;

using Patterns = std::map<Cuts, std::int64_t, std::greater<>>;  // how often each; those of the longest pieces first

std::int64_t bars_of(const Patterns& patterns) {
  return std::accumulate(patterns.begin(), patterns.end(), std::int64_t{0},
                         [](std::int64_t sum, const auto& one) { return sum + one.second; });
}

// The lengths, each once, falling.
struct Sorted {
  std::vector<Length> lengths;
  std::vector<std::int64_t> counts;
};

Sorted sorted(std::span<const PieceWanted> pieces) {
  std::map<Length, std::int64_t, std::greater<>> counts;
  for (const PieceWanted& piece : pieces) {
    if (piece.count > 0) counts[piece.length] += piece.count;
  }
  Sorted all;
  for (const auto& [length, count] : counts) {
    all.lengths.push_back(length);
    all.counts.push_back(count);
  }
  return all;
}

enum class Round { Up, Down };

// In units that leave the room small enough. Rounded up, whatever fits, fits in truth; rounded down, whatever does not
// fit, does not in truth.
CutTask task_of(const Sorted& all, Length stock, Length kerf, Round round) {
  std::int64_t unit = (stock + kerf).in_nanometres();
  for (const Length length : all.lengths) unit = std::gcd(unit, (length + kerf).in_nanometres());
  unit = std::max(unit, ((stock + kerf).in_nanometres() + kMostUnits - 1) / kMostUnits);
  const auto up = [&](Length length) { return (length.in_nanometres() + unit - 1) / unit; };
  const auto down = [&](Length length) { return length.in_nanometres() / unit; };
  CutTask task;
  task.counts = all.counts;
  for (const Length length : all.lengths) {
    const std::int64_t size = round == Round::Up ? up(length + kerf) : std::max<std::int64_t>(1, down(length + kerf));
    task.sizes.push_back(static_cast<std::int32_t>(size));
  }
  task.room = static_cast<std::int32_t>(round == Round::Up ? down(stock + kerf) : up(stock + kerf));
  return task;
}

// What is still wanted: sizes with none left go.
struct Rest {
  CutTask task;
  std::vector<std::size_t> of;  // which of all sizes each is
};

Rest rest_of(const CutTask& task, const Cuts& left) {
  Rest rest;
  rest.task.room = task.room;
  for (std::size_t size = 0; size < left.size(); ++size) {
    if (left[size] <= 0) continue;
    rest.task.sizes.push_back(task.sizes[size]);
    rest.task.counts.push_back(left[size]);
    rest.of.push_back(size);
  }
  return rest;
}

// So much of a pattern as is still wanted, in the order of all sizes.
Cuts wanted_of(const Rest& rest, const Cuts& pattern, const Cuts& left) {
  Cuts cuts(left.size(), 0);
  for (std::size_t at = 0; at < pattern.size(); ++at) cuts[rest.of[at]] = std::min(pattern[at], left[rest.of[at]]);
  return cuts;
}

void use(Patterns& patterns, Cuts& left, const Cuts& cuts) {
  for (std::size_t size = 0; size < left.size(); ++size) left[size] -= cuts[size];
  ++patterns[cuts];
}

bool any(const Cuts& cuts) {
  return std::ranges::any_of(cuts, [](std::int64_t count) { return count > 0; });
}

// Each piece into the first bar that has room, the longest first.
void first_fit(const CutTask& task, Cuts left, Patterns& patterns) {
  struct Bar {
    Cuts cuts;
    std::int32_t room;
  };
  std::vector<Bar> bars;
  for (std::size_t size = 0; size < left.size(); ++size) {
    for (std::size_t bar = 0; left[size] > 0; ++bar) {  // one that has no room now has none for the next of its size
      if (bar == bars.size()) bars.push_back({Cuts(left.size(), 0), task.room});
      const std::int64_t pieces = std::min<std::int64_t>(left[size], bars[bar].room / task.sizes[size]);
      bars[bar].cuts[size] += pieces, left[size] -= pieces;
      bars[bar].room -= static_cast<std::int32_t>(pieces * task.sizes[size]);
    }
  }
  for (const Bar& bar : bars) ++patterns[bar.cuts];
}

// Rounds the relaxation down, what is left again, and so on; where nothing is whole, one pattern is taken once.
// `choice` says which the first time: 0 is the one most nearly whole.
class Dive {
 public:
  Dive(const CutTask& task, std::int64_t& budget) : task_(task), budget_(budget) {}

  Patterns run(std::size_t choice) {
    Patterns patterns;
    Cuts left = task_.counts;
    Patterns best = closed(patterns, left);
    while (any(left) && budget_ > 0) {
      const Rest rest = rest_of(task_, left);
      const Relaxed now = relaxed(rest.task, budget_);
      if (!take_whole(rest, now, patterns, left) && !take_one(rest, now, patterns, left, std::exchange(choice, 0)))
        break;
      Patterns further = closed(patterns, left);
      if (bars_of(further) < bars_of(best)) best = std::move(further);
    }
    return best;
  }

 private:
  // What is not cut yet goes by first fit.
  Patterns closed(Patterns patterns, const Cuts& left) const {
    first_fit(task_, left, patterns);
    return patterns;
  }

  static bool take_whole(const Rest& rest, const Relaxed& now, Patterns& patterns, Cuts& left) {
    bool took = false;
    for (std::size_t at = 0; at < now.patterns.size(); ++at) {
      for (auto times = static_cast<std::int64_t>(std::floor(now.times[at] + 1e-6)); times > 0; --times) {
        const Cuts cuts = wanted_of(rest, now.patterns[at], left);
        if (!any(cuts)) break;
        use(patterns, left, cuts);
        took = true;
      }
    }
    return took;
  }

  static bool take_one(const Rest& rest, const Relaxed& now, Patterns& patterns, Cuts& left, std::size_t choice) {
    std::vector<std::size_t> order(now.patterns.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::ranges::stable_sort(order, std::greater<>(), [&](std::size_t at) { return now.times[at]; });
    if (order.empty()) return false;
    const Cuts cuts = wanted_of(rest, now.patterns[order[choice % order.size()]], left);
    if (!any(cuts)) return false;
    use(patterns, left, cuts);
    return true;
  }

  const CutTask& task_;
  std::int64_t& budget_;
};

CutPattern pattern_of(std::span<const PieceWanted> pieces, const Sorted& all, const Cuts& cuts, std::int64_t times,
                      Length stock, Length kerf) {
  CutPattern pattern{times, std::vector<std::int64_t>(pieces.size(), 0), stock};
  for (std::size_t size = 0; size < cuts.size(); ++size) {
    pattern.left -= (all.lengths[size] + kerf) * cuts[size];
    const auto at = std::ranges::find_if(
        pieces, [&](const PieceWanted& piece) { return piece.length == all.lengths[size] && piece.count > 0; });
    pattern.cuts[static_cast<std::size_t>(at - pieces.begin())] = cuts[size];
  }
  pattern.left = std::max(Length(), pattern.left);  // a bar cut up wholly needs no last cut
  return pattern;
}

// Each length stands in one piece wanted so far: pieces of the same length that are listed apart share its cuts.
void share(std::span<const PieceWanted> pieces, std::vector<CutPattern>& patterns) {
  std::vector<CutPattern> shared;
  Cuts left;
  for (const PieceWanted& piece : pieces) left.push_back(std::max<std::int64_t>(0, piece.count));
  for (const CutPattern& pattern : patterns) {
    for (std::int64_t bar = 0; bar < pattern.times; ++bar) {
      CutPattern one{1, std::vector<std::int64_t>(pieces.size(), 0), pattern.left};
      for (std::size_t first = 0; first < pieces.size(); ++first) {
        std::int64_t cuts = pattern.cuts[first];
        for (std::size_t at = first; at < pieces.size() && cuts > 0; ++at) {
          if (pieces[at].length != pieces[first].length) continue;
          const std::int64_t here = std::min(cuts, left[at]);
          one.cuts[at] += here, left[at] -= here, cuts -= here;
        }
      }
      if (!shared.empty() && shared.back().cuts == one.cuts) ++shared.back().times;
      else shared.push_back(std::move(one));
    }
  }
  patterns = std::move(shared);
}

std::optional<CannotCut> refused(std::span<const PieceWanted> pieces, Length stock, Length kerf) {
  if (stock <= Length() || kerf < Length()) return CannotCut::NoStock;
  const auto lengths = static_cast<std::int64_t>(pieces.size());
  if (lengths > kMostCuts) return CannotCut::TooMany;
  std::int64_t all = 0;
  for (const PieceWanted& piece : pieces) {
    if (piece.count <= 0) continue;
    if (piece.length <= Length()) return CannotCut::NoStock;
    if (piece.length > stock) return CannotCut::LongerThanStock;
    if (piece.count > kMostCuts / lengths - all) return CannotCut::TooMany;
    all += piece.count;
  }
  return std::nullopt;
}

}  // namespace

std::expected<CuttingPlan, CannotCut> cut_from_stock(std::span<const PieceWanted> pieces, Length stock, Length kerf,
                                                     std::int64_t budget) {
  if (const auto why = refused(pieces, stock, kerf)) return std::unexpected(*why);
  CuttingPlan plan;
  const Sorted all = sorted(pieces);
  if (all.lengths.empty()) return plan;
  const CutTask task = task_of(all, stock, kerf, Round::Up);
  const Relaxed bound = relaxed(task_of(all, stock, kerf, Round::Down), budget);
  plan.least = bound.least;
  for (const PieceWanted& piece : pieces) {
    const auto size = std::ranges::find(all.lengths, piece.length) - all.lengths.begin();
    const bool priced = piece.count > 0 && !bound.prices.empty();
    plan.prices.push_back(priced ? bound.prices[static_cast<std::size_t>(size)] : 0);
  }
  Patterns best;
  first_fit(task, task.counts, best);
  for (std::size_t choice = 0; bars_of(best) > plan.least && budget > 0 && choice < task.sizes.size(); ++choice) {
    Patterns tried = Dive(task, budget).run(choice);
    if (bars_of(tried) < bars_of(best)) best = std::move(tried);
  }
  plan.bars = bars_of(best);
  for (const auto& [cuts, times] : best) plan.patterns.push_back(pattern_of(pieces, all, cuts, times, stock, kerf));
  if (all.lengths.size() < pieces.size()) share(pieces, plan.patterns);
  return plan;
}

}  // namespace stringcourse::supply
