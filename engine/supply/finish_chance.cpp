#include "supply/finish_chance.hpp"

#include <algorithm>

#include "measure/dice.hpp"

namespace stringcourse::supply {
namespace {

constexpr std::int64_t kOne = 65'536;  // of a standard deviation

std::int64_t day_up(std::int64_t tick, std::int64_t day) { return (tick + day - 1) / day * day; }

/// The network laid out for running through it again and again: works in an order in which each follows what it waits
/// for, links by the work that they lead to.
struct Passage {
  struct Step {
    std::size_t work = 0, first = 0, last = 0;  // its links
    std::int64_t ticks = 0;
    bool waits = false, paced = false;
  };
  std::vector<Step> steps;
  std::vector<Link> links;
};

Passage passage_of(std::span<const Work> works, std::span<const Link> links, const std::vector<bool>& paced,
                   const std::vector<std::size_t>& order) {
  std::vector<std::vector<Link>> into(works.size());
  for (const Link& link : links) into[static_cast<std::size_t>(link.after)].push_back(link);
  Passage passage;
  for (const std::size_t work : order) {
    const std::size_t first = passage.links.size();
    passage.links.insert(passage.links.end(), into[work].begin(), into[work].end());
    passage.steps.push_back({work, first, passage.links.size(), works[work].minutes * kTicks, works[work].whole_days,
                             work < paced.size() && paced[work]});
  }
  return passage;
}

std::int64_t time_of(const Passage::Step& step, Unsure unsure, std::int64_t pace, std::uint64_t& state) {
  if (step.waits) return step.ticks;
  const std::int64_t at_pace = step.paced ? drawn_time(step.ticks, unsure.all, pace) : step.ticks;
  return drawn_time(at_pace, unsure.each, drawn_deviation(state));
}

std::int64_t run_through(const Passage& passage, std::vector<std::int64_t>& finish, std::int64_t day, Unsure unsure,
                         std::uint64_t& state) {
  const std::int64_t pace = drawn_deviation(state);
  std::int64_t end = 0;
  for (const Passage::Step& step : passage.steps) {
    std::int64_t start = 0;
    for (std::size_t k = step.first; k < step.last; ++k) {
      const Link& link = passage.links[k];
      const std::int64_t before = finish[static_cast<std::size_t>(link.before)];
      start = std::max(start, link.next_day ? day_up(before, day) : before);
    }
    if (step.waits) start = day_up(start, day);
    finish[step.work] = start + time_of(step, unsure, pace, state);
    end = std::max(end, finish[step.work]);
  }
  return end;
}

}  // namespace

std::int64_t drawn_deviation(std::uint64_t& state) {
  const std::uint64_t bits = drawn(state);
  const auto sum = static_cast<std::int64_t>((bits & 0xFFFF) + ((bits >> 16) & 0xFFFF) + ((bits >> 32) & 0xFFFF));
  return 2 * sum - 3 * (kOne - 1);
}

std::int64_t drawn_time(std::int64_t ticks, std::int64_t hundredths, std::int64_t deviation) {
  constexpr std::int64_t kWhole = 100 * kOne;
  return (ticks * (kWhole + hundredths * deviation) + kWhole / 2) / kWhole;
}

std::optional<std::vector<std::int64_t>> drawn_ends(std::span<const Work> works, std::span<const Link> links,
                                                    const std::vector<bool>& paced, std::int64_t day, Unsure unsure,
                                                    int runs, std::uint64_t seed) {
  const auto order = work_order(works.size(), links);
  if (!order) return std::nullopt;
  const Passage passage = passage_of(works, links, paced, *order);
  std::vector<std::int64_t> finish(works.size()), ends;
  ends.reserve(static_cast<std::size_t>(runs));
  std::uint64_t state = seed;
  for (int run = 0; run < runs; ++run) ends.push_back(run_through(passage, finish, day * kTicks, unsure, state));
  return ends;
}

}  // namespace stringcourse::supply
