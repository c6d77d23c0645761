#include "answer/bar_cutting.hpp"

#include <algorithm>

namespace stringcourse {
namespace {

/// Looks for one size (supply::cut_from_stock()): some ten milliseconds at most, a hundred times what a small building
/// takes.
constexpr std::int64_t kBudget = 20'000'000;

}  // namespace

std::vector<BarsFromStock> bars_from_stock(const steel::BarPieces& bars) {
  std::vector<BarsFromStock> all;
  for (std::size_t k = 0; k < bars.marks.size(); ++k) {
    const steel::BarMark& mark = bars.marks[k];
    if (mark.use == steel::BarUse::Dowel || mark.length > bars.stock.length) continue;
    auto size = std::ranges::find(all, mark.size, &BarsFromStock::size);
    if (size == all.end()) size = all.insert(all.end(), {mark.size, {}, {}});
    size->marks.push_back(static_cast<std::int32_t>(k));
  }
  for (BarsFromStock& size : all) {
    std::vector<supply::PieceWanted> wanted;
    for (const std::int32_t mark : size.marks) {
      const steel::BarMark& of = bars.marks[static_cast<std::size_t>(mark)];
      wanted.push_back({of.length, of.count});
    }
    if (auto plan = supply::cut_from_stock(wanted, bars.stock.length, bars.kerf.length, kBudget))
      size.plan = *std::move(plan);
  }
  std::erase_if(all, [](const BarsFromStock& size) { return size.plan.bars == 0; });
  return all;
}

}  // namespace stringcourse
