#include "bond/elimination.hpp"

#include <algorithm>
#include <set>

namespace stringcourse::bond {
namespace {

struct Elimination {
  std::int32_t bit = 0;
  std::vector<std::int32_t> others;  // bits that its best value depends on
  std::vector<std::uint8_t> best;    // by values of `others`
};

/// The values of `bits` inside an assignment of `all`, as a factor's index.
std::uint32_t index_in(const std::vector<std::int32_t>& bits, const std::vector<std::int32_t>& all,
                       std::uint32_t values) {
  std::uint32_t index = 0;
  for (std::size_t i = 0; i < bits.size(); ++i) {
    const auto place = std::ranges::lower_bound(all, bits[i]) - all.begin();
    index |= ((values >> place) & 1U) << i;
  }
  return index;
}

Key sum(const Key& a, const Key& b) { return a.is_impossible() || b.is_impossible() ? Key::impossible() : a + b; }

class Eliminator {
 public:
  Eliminator(std::vector<Factor> factors, std::size_t bit_count) : bit_count_(bit_count) {
    touching_.resize(bit_count);
    for (Factor& factor : factors) add(std::move(factor));
  }

  Assignment run() {
    Assignment result;
    result.values.assign(bit_count_, 0);
    std::vector<char> gone(bit_count_, 0);
    std::set<std::pair<std::size_t, std::int32_t>> order;  // width, bit: the narrowest next
    std::vector<std::size_t> width(bit_count_);
    for (std::size_t bit = 0; bit < bit_count_; ++bit) {
      width[bit] = neighbours(static_cast<std::int32_t>(bit)).size();
      order.insert({width[bit], static_cast<std::int32_t>(bit)});
    }
    while (!order.empty()) {
      const std::int32_t bit = order.begin()->second;
      order.erase(order.begin());
      const std::vector<std::int32_t> others = neighbours(bit);
      gone[static_cast<std::size_t>(bit)] = 1;
      if (others.size() + 1 > kWidest) {
        settle(bit);
        result.exact = false;
      } else {
        eliminate(bit, others);
      }
      for (const std::int32_t other : others) {
        if (gone[static_cast<std::size_t>(other)]) continue;
        order.erase({width[static_cast<std::size_t>(other)], other});
        width[static_cast<std::size_t>(other)] = neighbours(other).size();
        order.insert({width[static_cast<std::size_t>(other)], other});
      }
    }
    result.cost = constant_;
    for (auto step = steps_.rbegin(); step != steps_.rend(); ++step) {
      std::uint32_t index = 0;
      for (std::size_t i = 0; i < step->others.size(); ++i) {
        index |= static_cast<std::uint32_t>(result.values[static_cast<std::size_t>(step->others[i])]) << i;
      }
      result.values[static_cast<std::size_t>(step->bit)] = step->best[index];
    }
    return result;
  }

 private:
  void add(Factor factor) {
    if (factor.bits.empty()) {
      constant_ = sum(constant_, factor.costs[0]);
      return;
    }
    const auto index = static_cast<std::int32_t>(factors_.size());
    for (const std::int32_t bit : factor.bits) touching_[static_cast<std::size_t>(bit)].push_back(index);
    factors_.push_back(std::move(factor));
    live_.push_back(1);
  }

  [[nodiscard]] std::vector<std::int32_t> neighbours(std::int32_t bit) const {
    std::vector<std::int32_t> others;
    for (const std::int32_t f : touching_[static_cast<std::size_t>(bit)]) {
      if (!live_[static_cast<std::size_t>(f)]) continue;
      for (const std::int32_t other : factors_[static_cast<std::size_t>(f)].bits) {
        if (other != bit) others.push_back(other);
      }
    }
    std::ranges::sort(others);
    others.erase(std::unique(others.begin(), others.end()), others.end());
    return others;
  }

  void eliminate(std::int32_t bit, const std::vector<std::int32_t>& others) {
    std::vector<std::int32_t> all = others;
    all.insert(std::ranges::lower_bound(all, bit), bit);
    const auto place = static_cast<std::uint32_t>(std::ranges::lower_bound(all, bit) - all.begin());
    Factor joined{others, std::vector<Key>(std::size_t{1} << others.size(), Key::impossible())};
    Elimination step{bit, others, std::vector<std::uint8_t>(joined.costs.size(), 0)};
    for (std::uint32_t values = 0; values < (1U << all.size()); ++values) {
      Key cost;
      for (const std::int32_t f : touching_[static_cast<std::size_t>(bit)]) {
        if (!live_[static_cast<std::size_t>(f)]) continue;
        const Factor& factor = factors_[static_cast<std::size_t>(f)];
        cost = sum(cost, factor.costs[index_in(factor.bits, all, values)]);
      }
      const std::uint32_t low = values & ((1U << place) - 1U);
      const std::uint32_t index = low | ((values >> (place + 1)) << place);
      if (!(cost < joined.costs[index])) continue;
      joined.costs[index] = cost;
      step.best[index] = static_cast<std::uint8_t>((values >> place) & 1U);
    }
    for (const std::int32_t f : touching_[static_cast<std::size_t>(bit)]) live_[static_cast<std::size_t>(f)] = 0;
    steps_.push_back(std::move(step));
    add(std::move(joined));
  }

  /// Settles one bit by the least of what its factors cost at best, then drops it from them.
  void settle(std::int32_t bit) {
    Key least[2];
    const std::vector<std::int32_t> touching = touching_[static_cast<std::size_t>(bit)];
    for (std::uint32_t value = 0; value < 2; ++value) {
      for (const std::int32_t f : touching) {
        if (live_[static_cast<std::size_t>(f)])
          least[value] = sum(least[value], least_with(factors_[static_cast<std::size_t>(f)], bit, value));
      }
    }
    const auto value = static_cast<std::uint8_t>(least[1] < least[0] ? 1 : 0);
    steps_.push_back(Elimination{bit, {}, {value}});
    for (const std::int32_t f : touching) {
      if (!live_[static_cast<std::size_t>(f)]) continue;
      live_[static_cast<std::size_t>(f)] = 0;
      add(with(factors_[static_cast<std::size_t>(f)], bit, value));
    }
  }

  static Factor with(const Factor& factor, std::int32_t bit, std::uint32_t value) {
    const auto place = static_cast<std::uint32_t>(std::ranges::lower_bound(factor.bits, bit) - factor.bits.begin());
    Factor rest{factor.bits, {}};
    rest.bits.erase(rest.bits.begin() + place);
    for (std::uint32_t values = 0; values < factor.costs.size(); ++values) {
      if (((values >> place) & 1U) == value) rest.costs.push_back(factor.costs[values]);
    }
    return rest;
  }

  static Key least_with(const Factor& factor, std::int32_t bit, std::uint32_t value) {
    return std::ranges::min(with(factor, bit, value).costs);
  }

  std::size_t bit_count_;
  Key constant_;
  std::vector<Factor> factors_;
  std::vector<char> live_;
  std::vector<std::vector<std::int32_t>> touching_;  // by bit
  std::vector<Elimination> steps_;
};

}  // namespace

Assignment best_assignment(std::vector<Factor> factors, std::size_t bit_count) {
  return Eliminator(std::move(factors), bit_count).run();
}

}  // namespace stringcourse::bond
