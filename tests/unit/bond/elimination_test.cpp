// Eliminating bits one by one finds what trying every assignment finds.
#include <gtest/gtest.h>

#include <algorithm>
#include <set>

#include "bond/elimination.hpp"
#include "property/dice.hpp"

namespace stringcourse::bond {
namespace {

using property::Dice;

Key cost_of_all(const std::vector<Factor>& factors, std::uint32_t assignment) {
  Key total;
  for (const Factor& factor : factors) {
    std::uint32_t index = 0;
    for (std::size_t i = 0; i < factor.bits.size(); ++i) index |= ((assignment >> factor.bits[i]) & 1U) << i;
    if (factor.costs[index].is_impossible()) return Key::impossible();
    total = total + factor.costs[index];
  }
  return total;
}

Key least_by_trying(const std::vector<Factor>& factors, std::size_t bits) {
  Key least = Key::impossible();
  for (std::uint32_t assignment = 0; assignment < (1U << bits); ++assignment)
    least = std::min(least, cost_of_all(factors, assignment));
  return least;
}

Factor random_factor(Dice& dice, std::size_t bits) {
  std::set<std::int32_t> chosen;
  for (std::int64_t count = dice.between(1, 4); count > 0; --count)
    chosen.insert(static_cast<std::int32_t>(dice.below(static_cast<std::int64_t>(bits))));
  Factor factor{{chosen.begin(), chosen.end()}, {}};
  for (std::size_t i = 0; i < (std::size_t{1} << chosen.size()); ++i) {
    const auto word = [&] { return static_cast<std::uint64_t>(dice.below(4)); };
    factor.costs.push_back(dice.one_in(8) ? Key::impossible() : Key{{word(), word(), word(), word()}});
  }
  return factor;
}

TEST(Elimination, FindsTheLeastOfAllAssignments) {
  Dice dice(4);
  int possible = 0;
  for (int round = 0; round < 500; ++round) {
    const std::size_t bits = static_cast<std::size_t>(dice.between(1, 10));
    std::vector<Factor> factors;
    for (std::int64_t count = dice.between(1, 12); count > 0; --count) factors.push_back(random_factor(dice, bits));
    const Assignment found = best_assignment(factors, bits);
    ASSERT_TRUE(found.exact);
    const Key least = least_by_trying(factors, bits);
    ASSERT_EQ(found.cost, least) << "round " << round;
    if (least.is_impossible()) continue;
    ++possible;
    std::uint32_t assignment = 0;
    for (std::size_t i = 0; i < bits; ++i) assignment |= static_cast<std::uint32_t>(found.values[i]) << i;
    ASSERT_EQ(cost_of_all(factors, assignment), least) << "round " << round;
  }
  EXPECT_GT(possible, 200);
}

// A ring of 40 sides, as of a building with 40 corners: each side costs nothing only if its two corners differ.
TEST(Elimination, ClosesALongRing) {
  std::vector<Factor> factors;
  const Key none, one{{1, 0, 0, 0}};
  for (std::int32_t i = 0; i < 40; ++i) {
    const std::int32_t next = (i + 1) % 40;
    factors.push_back({{std::min(i, next), std::max(i, next)}, {one, none, none, one}});
  }
  const Assignment found = best_assignment(factors, 40);
  EXPECT_TRUE(found.exact);
  EXPECT_EQ(found.cost, none);
  for (std::size_t i = 1; i < 40; ++i) EXPECT_NE(found.values[i], found.values[i - 1]);
}

}  // namespace
}  // namespace stringcourse::bond
