// Work that hangs on other work, against a plain twin that follows every way through it.
#include "supply/task_network.hpp"

#include <gtest/gtest.h>

#include <functional>
#include <random>

namespace stringcourse::order_test {
namespace {

using supply::Link;
using supply::TaskTimes;
using supply::Work;

std::int64_t up(std::int64_t minute, std::int64_t day) { return (minute + day - 1) / day * day; }

/// Earliest finish by recursion over all that is before.
std::int64_t finish_of(std::int32_t work, const std::vector<Work>& works, const std::vector<Link>& links,
                       std::int64_t day) {
  std::int64_t start = 0;
  for (const Link& link : links) {
    if (link.after != work) continue;
    const std::int64_t finish = finish_of(link.before, works, links, day);
    start = std::max(start, link.next_day ? up(finish, day) : finish);
  }
  const Work& of = works[static_cast<std::size_t>(work)];
  return (of.whole_days ? up(start, day) : start) + of.minutes;
}

std::int64_t end_of(const std::vector<Work>& works, const std::vector<Link>& links, std::int64_t day) {
  std::int64_t end = 0;
  for (std::size_t k = 0; k < works.size(); ++k)
    end = std::max(end, finish_of(static_cast<std::int32_t>(k), works, links, day));
  return end;
}

struct Network {
  std::vector<Work> works;
  std::vector<Link> links;
  std::int64_t day = 60;
};

Network drawn(std::mt19937& dice) {
  Network network;
  const auto count = static_cast<std::int32_t>(2 + dice() % 8);
  for (std::int32_t k = 0; k < count; ++k) {
    const bool waits = dice() % 5 == 0;
    network.works.push_back(
        {waits ? 60 * static_cast<std::int64_t>(dice() % 3) : static_cast<std::int64_t>(dice() % 90), waits});
    for (std::int32_t before = 0; before < k; ++before) {
      if (dice() % 3 == 0) network.links.push_back({before, k, dice() % 4 == 0});
    }
  }
  return network;
}

TEST(TaskTimesOfANetwork, AgreeWithEveryWayThroughIt) {
  std::mt19937 dice(1);
  for (int k = 0; k < 4'000; ++k) {
    const Network network = drawn(dice);
    const auto times = supply::task_times(network.works, network.links, network.day);
    ASSERT_TRUE(times.has_value());
    for (std::size_t work = 0; work < network.works.size(); ++work) {
      EXPECT_EQ((*times)[work].finish,
                finish_of(static_cast<std::int32_t>(work), network.works, network.links, network.day));
    }
  }
}

/// What latest means: begun a minute later (a wait: a day), the end comes later; begun then, it does not.
TEST(TaskTimesOfANetwork, LatestIsTheLastThatKeepsTheEnd) {
  std::mt19937 dice(2);
  for (int k = 0; k < 1'500; ++k) {
    const Network network = drawn(dice);
    const auto times = *supply::task_times(network.works, network.links, network.day);
    const std::int64_t end = end_of(network.works, network.links, network.day);
    for (std::size_t work = 0; work < network.works.size(); ++work) {
      const auto end_if_begun = [&](std::int64_t start) {
        Network held = network;  // a work before it that lasts until then
        held.works.push_back({start, false});
        held.links.push_back(
            {static_cast<std::int32_t>(held.works.size()) - 1, static_cast<std::int32_t>(work), false});
        return end_of(held.works, held.links, held.day);
      };
      const TaskTimes& of = times[work];
      EXPECT_EQ(of.latest_finish - of.latest_start, network.works[work].minutes);
      EXPECT_LE(of.start, of.latest_start);
      EXPECT_EQ(end_if_begun(of.latest_start), end);
      EXPECT_GT(end_if_begun(of.latest_start + 1), end);
    }
  }
}

TEST(TaskTimesOfANetwork, LinksThatGoRoundHaveNone) {
  const std::vector<Work> works(3);
  EXPECT_FALSE(supply::task_times(works, std::vector<Link>{{0, 1}, {1, 2}, {2, 0}}, 60).has_value());
  EXPECT_FALSE(supply::task_times(works, std::vector<Link>{{0, 3}}, 60).has_value());
  EXPECT_TRUE(supply::task_times({}, {}, 60).has_value());
}

}  // namespace
}  // namespace stringcourse::order_test
