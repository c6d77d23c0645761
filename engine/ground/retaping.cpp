#include "ground/retaping.hpp"

#include <algorithm>
#include <cmath>

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

struct Worst {
  std::size_t at = 0;
  double value = 0;
  bool alone = true;  // no other reading's is as large
};

Worst worst_of(const std::vector<Residual>& residuals) {
  Worst worst;
  for (std::size_t k = 0; k < residuals.size(); ++k) {
    const double value = size_of(residuals[k].standardised);
    if (value > worst.value) worst = {k, value, true};
  }
  for (std::size_t k = 0; k < residuals.size(); ++k) {
    if (k != worst.at && size_of(residuals[k].standardised) > worst.value * (1 - 1e-6)) worst.alone = false;
  }
  return worst;
}

std::vector<int> by_correction(const std::vector<Residual>& residuals) {
  std::vector<int> order = numbers_without(residuals.size(), {});
  sort_stably(order, [&](int a, int b) {
    return size_of(residuals[static_cast<std::size_t>(a)].value) > size_of(residuals[static_cast<std::size_t>(b)].value) * (1 + 1e-6);
  });
  return order;
}

/// The residuals of all readings against an adjustment of some of them.
std::vector<Residual> residuals_of_all(const std::vector<NetReading>& readings, const std::vector<int>& wrong, const Adjusted& adjusted) {
  std::vector<Residual> all;
  std::size_t next = 0;
  for (std::size_t k = 0; k < readings.size(); ++k) {
    if (!std::ranges::contains(wrong, static_cast<int>(k))) { all.push_back(adjusted.residuals[next++]); continue; }
    const Spot &a = adjusted.places[static_cast<std::size_t>(readings[k].from)], &b = adjusted.places[static_cast<std::size_t>(readings[k].to)];
    const double dx = b.x - a.x, dy = b.y - a.y;
    all.push_back({std::sqrt(dx * dx + dy * dy) - readings[k].length, 1, 0});
    all.back().standardised = all.back().value / readings[k].sigma;
  }
  return all;
}

/// A reading taken out is put back if it fits once the others are out.
void put_back(const std::vector<NetPoint>& points, const std::vector<NetReading>& readings, Datum datum, std::vector<int>& wrong) {
  if (wrong.size() < 2) return;
  for (std::size_t k = 0; k < wrong.size();) {
    std::vector<int> fewer = wrong;
    fewer.erase(fewer.begin() + static_cast<std::ptrdiff_t>(k));
    const auto adjusted = adjust(points, without(readings, fewer), datum);
    if (adjusted && worst_of(adjusted->residuals).value <= kBlunderLimit) wrong = std::move(fewer);
    else ++k;
  }
}

}  // namespace

std::expected<Suspects, NetTrouble> suspects_of(const std::vector<NetPoint>& points, const std::vector<NetReading>& readings, Datum datum) {
  auto adjusted = adjust(points, readings, datum);
  if (!adjusted) return std::unexpected(std::move(adjusted.error()));
  Suspects suspects;
  while (true) {
    const Worst worst = worst_of(adjusted->residuals);
    if (worst.value <= kBlunderLimit) break;
    if (!worst.alone) {
      suspects.suspicion = Suspicion::NotLocatable;
      for (const int number : by_correction(adjusted->residuals)) {
        suspects.tape_again.push_back(numbers_without(readings.size(), suspects.wrong)[static_cast<std::size_t>(number)]);
      }
      break;
    }
    std::vector<int> more = suspects.wrong;
    more.push_back(numbers_without(readings.size(), suspects.wrong)[worst.at]);
    auto next = adjust(points, without(readings, more), datum);
    if (!next) break;  // the shape hangs on it
    suspects.wrong = std::move(more);
    suspects.suspicion = Suspicion::Located;
    adjusted = std::move(next);
  }
  if (suspects.suspicion == Suspicion::Located) {
    put_back(points, readings, datum, suspects.wrong);
    adjusted = adjust(points, without(readings, suspects.wrong), datum);
    if (!adjusted) return std::unexpected(std::move(adjusted.error()));
  }
  suspects.adjusted = *std::move(adjusted);
  suspects.adjusted.residuals = residuals_of_all(readings, suspects.wrong, suspects.adjusted);
  return suspects;
}

bool tapings_agree(const NetReading& first, const NetReading& second) {
  const double doubt = std::sqrt(first.sigma * first.sigma + second.sigma * second.sigma);
  return size_of(first.length - second.length) <= kBlunderLimit * doubt;
}

}  // namespace stringcourse::ground
