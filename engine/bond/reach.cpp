#include "bond/reach.hpp"

#include <algorithm>
#include <numeric>

namespace stringcourse::bond {
namespace {

constexpr std::int64_t kLargestTable = 1'000'000;  // 8 MB; 400 m of wall in 64ths of an inch

void relax(std::int32_t& least, std::int32_t& most, std::int32_t from_least, std::int32_t from_most) {
  least = least < 0 ? from_least + 1 : std::min(least, from_least + 1);
  most = std::max(most, from_most + 1);
}

bool same_lengths(const Menu& a, const Menu& b) {
  return std::ranges::equal(a.choices, b.choices, {}, &PieceChoice::length, &PieceChoice::length);
}

}  // namespace

Reach::Reach(const Menu& menu, std::int64_t joint, std::int64_t longest) {
  std::int64_t grain = 0;
  for (const PieceChoice& choice : menu.choices) grain = std::gcd(grain, choice.length + joint);
  grain_ = grain > 0 ? grain : longest + 1;  // nothing to lay: only the empty sum
  const std::int64_t size = longest / grain_ + 1;
  too_large_ = size > kLargestTable;
  const auto entries = static_cast<std::size_t>(too_large_ ? 1 : std::max<std::int64_t>(size, 1));
  least_.assign(entries, -1);
  most_.assign(entries, -1);
  least_[0] = most_[0] = 0;
  for (std::size_t sum = 1; sum < entries; ++sum) {
    for (const PieceChoice& choice : menu.choices) {
      const auto step = static_cast<std::size_t>((choice.length + joint) / grain_);
      if (step > sum || least_[sum - step] < 0) continue;
      relax(least_[sum], most_[sum], least_[sum - step], most_[sum - step]);
    }
  }
}

std::vector<std::shared_ptr<const Reach>> reaches_of(const std::vector<Menu>& menus, std::int64_t joint,
                                                     std::int64_t longest) {
  std::vector<std::shared_ptr<const Reach>> all;
  for (std::size_t i = 0; i < menus.size(); ++i) {
    std::size_t same = 0;
    while (same < i && !same_lengths(menus[same], menus[i])) ++same;
    all.push_back(same < i ? all[same] : std::make_shared<const Reach>(menus[i], joint, longest));
  }
  return all;
}

}  // namespace stringcourse::bond
