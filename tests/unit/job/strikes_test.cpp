#include "job/strikes.hpp"

#include <algorithm>
#include <random>
#include <string>

#include "gtest/gtest.h"

namespace stringcourse::test {
namespace {

using Log = std::vector<Striking>;

TEST(Strikes, AStrikeThatIsStruckGivesBackWhatItStruck) {
  EXPECT_EQ(entries_standing(Log{{"a", ""}}), (std::vector{true}));
  EXPECT_EQ(entries_standing(Log{{"a", ""}, {"s", "a"}}), (std::vector{false, true}));
  EXPECT_EQ(entries_standing(Log{{"a", ""}, {"s", "a"}, {"t", "s"}}), (std::vector{true, false, true}));
  EXPECT_EQ(entries_standing(Log{{"a", ""}, {"s", "a"}, {"t", "s"}, {"u", "t"}}),
            (std::vector{false, true, false, true}));
  // Struck twice and given back once it is still struck.
  EXPECT_EQ(entries_standing(Log{{"a", ""}, {"s", "a"}, {"r", "a"}, {"t", "s"}}),
            (std::vector{false, false, true, true}));
}

TEST(Strikes, ARingStrikesNothingElseAndAStrikeFromOutsideOpensIt) {
  EXPECT_EQ(entries_standing(Log{{"s", "s"}, {"a", ""}}), (std::vector{false, true}));
  EXPECT_EQ(entries_standing(Log{{"s", "t"}, {"t", "s"}, {"a", ""}}), (std::vector{false, false, true}));
  EXPECT_EQ(entries_standing(Log{{"s", "t"}, {"t", "s"}, {"u", "s"}}), (std::vector{false, true, true}));
  EXPECT_EQ(entries_standing(Log{{"s", "nobody"}}), (std::vector{true}));
}

/// Slowly, from what is promised: a log without rings has one answer, found by asking each entry for its strikers.
bool stands(const Log& log, std::size_t k) {
  return std::ranges::none_of(log, [&](const Striking& other) {
    return !other.strikes.empty() && other.strikes == log[k].id &&
           stands(log, static_cast<std::size_t>(&other - log.data()));
  });
}

TEST(Strikes, AgreesWithTheSlowTwinInEveryOrder) {
  std::mt19937 dice(5);
  const std::vector<std::string> ids{"0", "1", "2", "3", "4", "5", "6", "7", "8", "9"};
  for (int round = 0; round < 300; ++round) {
    Log log;
    for (std::size_t k = 0; k < ids.size(); ++k) {
      const std::size_t target = dice() % (k + 1);  // an earlier one: no rings; its own place: no strike
      log.push_back({ids[k], target == k ? std::string_view() : std::string_view(ids[target])});
    }
    std::ranges::shuffle(log, dice);
    const std::vector<bool> found = entries_standing(log);
    for (std::size_t k = 0; k < log.size(); ++k) EXPECT_EQ(found[k], stands(log, k)) << round << " " << log[k].id;
  }
}

}  // namespace
}  // namespace stringcourse::test
