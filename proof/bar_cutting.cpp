#include "proof/bar_cutting.hpp"

#include <algorithm>
#include <map>
#include <numeric>

namespace stringcourse::proof {
namespace {

Violation wrong(const std::string& where, std::string text) { return violation(kBars, where, std::move(text)); }

struct Saw {
  std::int64_t stock = 0, kerf = 0;  // nanometres
};

/// What the most precious bar holds: over every length of a bar, one piece after the other. In units of the lengths'
/// common measure; above kMostRooms of them in coarser ones, pieces rounded down, so that it holds no less.
std::int64_t most_precious(const Saw& saw, const std::vector<std::int64_t>& lengths,
                           const std::vector<std::int64_t>& counts, const std::vector<std::int64_t>& prices) {
  constexpr std::int64_t kMostRooms = 50'000;
  std::int64_t unit = saw.stock + saw.kerf;
  for (const std::int64_t length : lengths) unit = std::gcd(unit, length + saw.kerf);
  if ((saw.stock + saw.kerf) / unit > kMostRooms) unit = (saw.stock + saw.kerf) / kMostRooms + 1;
  const std::int64_t rooms = (saw.stock + saw.kerf + unit - 1) / unit;
  std::vector<std::int64_t> worth(static_cast<std::size_t>(rooms) + 1, 0);
  for (std::size_t k = 0; k < lengths.size(); ++k) {
    const std::int64_t wide = std::max<std::int64_t>(1, (lengths[k] + saw.kerf) / unit);
    // One more of this piece each time round, until the bar holds no more of it.
    for (std::int64_t more = 0; more < std::min(counts[k], rooms / wide); ++more) {
      for (std::int64_t room = rooms; room >= wide; --room) {
        auto& here = worth[static_cast<std::size_t>(room)];
        here = std::max(here, worth[static_cast<std::size_t>(room - wide)] + prices[k]);
      }
    }
  }
  return worth.back();
}

Violations check_patterns(const Saw& saw, const BarsFromStock& size, const std::vector<std::int64_t>& lengths,
                          const std::vector<std::int64_t>& counts) {
  const std::string where = "bars " + size.size;
  Violations found;
  std::vector<std::int64_t> cut(lengths.size(), 0);
  std::int64_t all = 0;
  for (const supply::CutPattern& pattern : size.plan.patterns) {
    if (pattern.cuts.size() != lengths.size() || pattern.times <= 0) return {wrong(where, "a way to cut nothing")};
    std::int64_t used = 0, pieces = 0;
    for (std::size_t k = 0; k < lengths.size(); ++k) {
      if (pattern.cuts[k] < 0) return {wrong(where, "fewer pieces than none")};
      cut[k] += pattern.cuts[k] * pattern.times;
      used += pattern.cuts[k] * lengths[k];
      pieces += pattern.cuts[k];
    }
    const std::int64_t with_cuts = used + (pieces - 1) * saw.kerf;
    if (pieces == 0 || with_cuts > saw.stock) found.push_back(wrong(where, "a bar is cut longer than it is"));
    if (pattern.left.in_nanometres() != std::max<std::int64_t>(0, saw.stock - with_cuts - saw.kerf))
      found.push_back(wrong(where, "another length is left over"));
    all += pattern.times;
  }
  if (cut != counts) found.push_back(wrong(where, "not every piece is cut as often as it is wanted"));
  if (all != size.plan.bars) found.push_back(wrong(where, "another number of bars"));
  return found;
}

Violations check_size(const Saw& saw, const steel::BarPieces& bars, const BarsFromStock& size) {
  const std::string where = "bars " + size.size;
  std::vector<std::int64_t> lengths, counts;
  for (const std::int32_t mark : size.marks) {
    if (mark < 0 || static_cast<std::size_t>(mark) >= bars.marks.size())
      return {wrong(where, "a mark that is not there")};
    const steel::BarMark& of = bars.marks[static_cast<std::size_t>(mark)];
    if (of.size != size.size) return {wrong(where, "a mark of another size")};
    lengths.push_back(of.length.in_nanometres());
    counts.push_back(of.count);
  }
  Violations found = check_patterns(saw, size, lengths, counts);
  const std::vector<std::int64_t>& prices = size.plan.prices;
  if (prices.size() != lengths.size() || std::ranges::any_of(prices, [](std::int64_t price) { return price < 0; }))
    return {wrong(where, "no prices that show how few bars would do")};
  const std::int64_t most = most_precious(saw, lengths, counts, prices);
  std::int64_t all = 0;
  for (std::size_t k = 0; k < prices.size(); ++k) all += prices[k] * counts[k];
  // More than `least - 1` bars can hold: then `least` are needed.
  if (size.plan.least > 1 && (most <= 0 || all <= most * (size.plan.least - 1)))
    found.push_back(wrong(where, "fewer bars may do than it says"));
  if (size.plan.least > size.plan.bars) found.push_back(wrong(where, "fewer bars than are needed"));
  return found;
}

}  // namespace

Violations check_bar_cutting(const Job& job, const steel::BarPieces& bars, const std::vector<BarsFromStock>& cutting) {
  const bool inches = job.tape == Tape::Inches;
  const Length stock = job.steel.bar_stock.value_or(inches ? Length::feet(20) : Length::millimetres(6'000));
  const Length kerf = job.steel.bar_kerf.value_or(inches ? Length::sixteenths(2) : Length::millimetres(3));
  Violations found;
  std::map<std::int32_t, int> listed;
  for (const BarsFromStock& size : cutting) {
    for (const std::int32_t mark : size.marks) ++listed[mark];
    const Violations wrongs = check_size({stock.in_nanometres(), kerf.in_nanometres()}, bars, size);
    found.insert(found.end(), wrongs.begin(), wrongs.end());
  }
  for (std::size_t k = 0; k < bars.marks.size(); ++k) {
    const steel::BarMark& mark = bars.marks[k];
    const bool cut = mark.use != steel::BarUse::Dowel && mark.length <= stock;
    if (listed[static_cast<std::int32_t>(k)] != (cut ? 1 : 0))
      found.push_back(wrong("bars", "mark " + std::to_string(k + 1) + " is cut from no bar, or from two lists"));
  }
  return found;
}

}  // namespace stringcourse::proof
