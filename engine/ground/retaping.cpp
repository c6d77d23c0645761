#include "ground/retaping.hpp"

#include <algorithm>
#include <cmath>
#include <map>
#include <optional>
#include <set>
#include <utility>

#include "measure/sorting.hpp"

namespace stringcourse::ground {
namespace {

double size_of(double value) { return value < 0 ? -value : value; }

std::vector<NetReading> without(const std::vector<NetReading>& readings, const std::vector<int>& wrong) {
  std::vector<NetReading> kept;
  for (std::size_t k = 0; k < readings.size(); ++k) {
    if (!std::ranges::contains(wrong, static_cast<int>(k))) kept.push_back(readings[k]);
  }
  return kept;
}

/// The kept readings' numbers among all.
std::vector<int> numbers_without(std::size_t count, const std::vector<int>& wrong) {
  std::vector<int> numbers;
  for (int k = 0; k < static_cast<int>(count); ++k) {
    if (!std::ranges::contains(wrong, k)) numbers.push_back(k);
  }
  return numbers;
}

constexpr double kAlike = 9.2103;  // 2 ln 100

struct Worst {
  std::size_t at = 0;
  double value = 0;
};

Worst worst_of(const std::vector<Residual>& residuals) {
  Worst worst;
  for (std::size_t k = 0; k < residuals.size(); ++k) {
    const double value = size_of(residuals[k].standardised);
    if (value > worst.value) worst = {k, value};
  }
  return worst;
}

bool fits(const Adjusted& adjusted) { return worst_of(adjusted.residuals).value <= kBlunderLimit; }

/// The readings nearly as likely to be wrong as the worst, that one included, the likeliest first.
std::vector<int> likely(const std::vector<Residual>& residuals) {
  const double worst = worst_of(residuals).value;
  std::vector<int> all;
  for (std::size_t k = 0; k < residuals.size(); ++k) {
    const double value = size_of(residuals[k].standardised);
    if (worst * worst - value * value < kAlike * (1 + 1e-9) && value > 0) all.push_back(static_cast<int>(k));
  }
  sort_stably(all, [&](int a, int b) {
    return size_of(residuals[static_cast<std::size_t>(a)].standardised) >
           size_of(residuals[static_cast<std::size_t>(b)].standardised);
  });
  if (all.size() > kMostWrong) all.resize(kMostWrong);
  return all;
}

/// In the order of their corrections.
void sort_by_correction(std::vector<int>& numbers, const std::vector<Residual>& residuals) {
  sort_stably(numbers, [&](int a, int b) {
    return size_of(residuals[static_cast<std::size_t>(a)].value) >
           size_of(residuals[static_cast<std::size_t>(b)].value) * (1 + 1e-6);
  });
}

using Pair = std::pair<int, int>;
Pair pair_of(const NetReading& reading) {
  return {std::min(reading.from, reading.to), std::max(reading.from, reading.to)};
}

/// Lines of which two tapings agree.
std::set<Pair> confirmed(const std::vector<NetReading>& readings) {
  std::map<Pair, const NetReading*> first;
  std::set<Pair> twice;
  for (const NetReading& reading : readings) {
    const auto [known, fresh] = first.try_emplace(pair_of(reading), &reading);
    if (!fresh && tapings_agree(*known->second, reading)) twice.insert(pair_of(reading));
  }
  return twice;
}

/// Each line once; those confirmed already only where there is no other.
std::vector<int> lines_once(const std::vector<int>& numbers, const std::vector<NetReading>& readings) {
  const std::set<Pair> twice = confirmed(readings);
  std::vector<int> once, again;
  std::set<Pair> seen;
  for (const int number : numbers) {
    const Pair pair = pair_of(readings[static_cast<std::size_t>(number)]);
    if (seen.insert(pair).second) (twice.contains(pair) ? again : once).push_back(number);
  }
  return once.empty() ? again : once;
}

/// The residuals of all readings against an adjustment of some of them.
std::vector<Residual> residuals_of_all(const std::vector<NetReading>& readings, const std::vector<int>& wrong,
                                       const Adjusted& adjusted) {
  std::vector<Residual> all;
  std::size_t next = 0;
  for (std::size_t k = 0; k < readings.size(); ++k) {
    if (!std::ranges::contains(wrong, static_cast<int>(k))) {
      all.push_back(adjusted.residuals[next++]);
      continue;
    }
    const Spot &a = adjusted.places[static_cast<std::size_t>(readings[k].from)],
               &b = adjusted.places[static_cast<std::size_t>(readings[k].to)];
    const double dx = b.x - a.x, dy = b.y - a.y;
    all.push_back({std::sqrt(dx * dx + dy * dy) - readings[k].length, 1, 0});
    all.back().standardised = all.back().value / readings[k].sigma;
  }
  return all;
}

/// A reading taken out is put back if it fits once the others are out.
void put_back(const std::vector<NetPoint>& points, const std::vector<NetReading>& readings, Datum datum,
              std::vector<int>& wrong) {
  if (wrong.size() < 2) return;
  for (std::size_t k = 0; k < wrong.size();) {
    std::vector<int> fewer = wrong;
    fewer.erase(fewer.begin() + static_cast<std::ptrdiff_t>(k));
    const auto adjusted = adjust(points, without(readings, fewer), datum);
    if (adjusted && fits(*adjusted)) wrong = std::move(fewer);
    else ++k;
  }
}

/// The search for what is wrong, step by step.
class Search {
 public:
  Search(const std::vector<NetPoint>& points, const std::vector<NetReading>& readings, Datum datum)
      : points_(points), readings_(readings), datum_(datum) {}

  std::expected<Suspects, NetTrouble> run() {
    auto adjusted = adjust(points_, readings_, datum_);
    if (!adjusted && adjusted.error().kind == NetTrouble::Kind::ImpossibleTriangle)
      adjusted = without_one_of(adjusted.error());
    if (!adjusted) return std::unexpected(std::move(adjusted.error()));
    adjusted_ = *std::move(adjusted);
    while (found_.suspicion != Suspicion::NotLocatable && !fits(adjusted_)) step();
    if (found_.suspicion == Suspicion::Located) {
      put_back(points_, readings_, datum_, found_.wrong);
      auto rest = adjust(points_, without(readings_, found_.wrong), datum_);
      if (!rest) return std::unexpected(std::move(rest.error()));
      adjusted_ = *std::move(rest);
    }
    found_.adjusted = std::move(adjusted_);
    found_.adjusted.residuals = residuals_of_all(readings_, found_.wrong, found_.adjusted);
    return std::move(found_);
  }

 private:
  /// With one reading fewer than those that are out already, `number` among all.
  std::expected<Adjusted, NetTrouble> also_without(int number) const {
    std::vector<int> more = found_.wrong;
    more.push_back(number);
    return adjust(points_, without(readings_, more), datum_);
  }

  /// Takes out the worst, or says that it cannot be told.
  void step() {
    const std::vector<int> numbers = numbers_without(readings_.size(), found_.wrong);
    std::vector<int> would_do, all = likely(adjusted_.residuals);
    std::optional<Adjusted> best;
    bool checked = true;  // the rest, without the worst
    for (std::size_t k = 0; k < all.size(); ++k) {
      auto next = also_without(numbers[static_cast<std::size_t>(all[k])]);
      const bool does = !next || next->freedom <= 0 || fits(*next);
      if (k == 0) checked = next && next->freedom > 0;
      if (does) would_do.push_back(all[k]);
      if (k == 0 && next) best = *std::move(next);
      if (k == 0 && !does) break;  // several are wrong: the worst goes first
    }
    if (!checked || would_do.size() > 1 || found_.wrong.size() == kMostWrong) return cannot_tell(would_do, numbers);
    found_.wrong.push_back(numbers[static_cast<std::size_t>(all[0])]);
    found_.suspicion = Suspicion::Located;
    adjusted_ = *std::move(best);
  }

  void cannot_tell(std::vector<int> which, const std::vector<int>& numbers) {
    sort_by_correction(which, adjusted_.residuals);
    for (int& one : which) one = numbers[static_cast<std::size_t>(one)];
    found_.suspicion = Suspicion::NotLocatable;
    found_.tape_again = lines_once(which, readings_);
  }

  /// Of three readings that no triangle has: without one of them, if the rest holds the shape.
  std::expected<Adjusted, NetTrouble> without_one_of(const NetTrouble& trouble) {
    std::optional<Adjusted> best;
    int wrong = -1;
    std::vector<int> would_do;
    for (const int number : trouble.readings) {
      auto rest = also_without(number);
      if (!rest) continue;
      if (fits(*rest) || rest->freedom <= 0) would_do.push_back(number);
      if (!best || rest->square_sum < best->square_sum) best = *std::move(rest), wrong = number;
    }
    if (!best) return std::unexpected(trouble);
    found_.wrong = {wrong};
    found_.suspicion = Suspicion::Located;
    if (would_do.size() > 1 || best->freedom <= 0) {
      found_.suspicion = Suspicion::NotLocatable;
      found_.tape_again = lines_once(trouble.readings, readings_);
    }
    return *std::move(best);
  }

  const std::vector<NetPoint>& points_;
  const std::vector<NetReading>& readings_;
  const Datum datum_;
  Suspects found_;
  Adjusted adjusted_;
};

}  // namespace

std::expected<Suspects, NetTrouble> suspects_of(const std::vector<NetPoint>& points,
                                                const std::vector<NetReading>& readings, Datum datum) {
  return Search(points, readings, datum).run();
}

bool tapings_agree(const NetReading& first, const NetReading& second) {
  const double doubt = std::sqrt(first.sigma * first.sigma + second.sigma * second.sigma);
  return size_of(first.length - second.length) <= kBlunderLimit * doubt;
}

}  // namespace stringcourse::ground
