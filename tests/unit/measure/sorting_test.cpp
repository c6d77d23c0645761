#include "measure/sorting.hpp"

#include <gtest/gtest.h>

#include <algorithm>
#include <random>
#include <string>

namespace stringcourse {
namespace {

TEST(Sorting, GivesWhatTheLibrarysStableSortGives) {
  std::minstd_rand dice(1);
  for (std::size_t size = 0; size < 200; ++size) {
    std::vector<std::pair<int, std::size_t>> list;
    for (std::size_t k = 0; k < size; ++k) list.emplace_back(static_cast<int>(dice() % 20), k);
    auto expected = list;
    std::ranges::stable_sort(expected, {}, &std::pair<int, std::size_t>::first);
    sort_stably(list, {}, &std::pair<int, std::size_t>::first);
    EXPECT_EQ(list, expected);
  }
}

TEST(Sorting, MovesWhatOwnsMemoryAndObeysTheGivenOrder) {
  std::vector<std::string> list{"short", "a text that is too long to live inside its own object", "", "middling"};
  sort_stably(list, [](const std::string& a, const std::string& b) { return a.size() > b.size(); });
  EXPECT_TRUE(std::ranges::is_sorted(list, std::greater{}, &std::string::size));
  EXPECT_EQ(list.back(), "");
}

TEST(Sorting, AMillionInTheWorstOrderTakeNoSquareOfIt) {
  // 20 rounds of a million steps; a sort that took the square of it would not end.
  std::vector<int> list(1'000'000);
  for (std::size_t k = 0; k < list.size(); ++k) list[k] = static_cast<int>(list.size() - k);
  sort_stably(list);
  EXPECT_TRUE(std::ranges::is_sorted(list));
}

}  // namespace
}  // namespace stringcourse
