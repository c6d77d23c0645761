#include "supply/task_network.hpp"

#include <algorithm>

namespace stringcourse::supply {
namespace {

std::int64_t day_up(std::int64_t minute, std::int64_t day) { return (minute + day - 1) / day * day; }
std::int64_t day_down(std::int64_t minute, std::int64_t day) {
  return minute >= 0 ? minute / day * day : -day_up(-minute, day);
}

}  // namespace

std::optional<std::vector<std::size_t>> work_order(std::size_t count, std::span<const Link> links) {
  std::vector<std::size_t> waits(count), order;
  std::vector<std::vector<std::size_t>> next(count);
  for (const Link& link : links) {
    if (link.before < 0 || link.after < 0) return std::nullopt;
    const auto before = static_cast<std::size_t>(link.before), after = static_cast<std::size_t>(link.after);
    if (before >= count || after >= count) return std::nullopt;
    next[before].push_back(after);
    ++waits[after];
  }
  for (std::size_t k = 0; k < count; ++k) {
    if (waits[k] == 0) order.push_back(k);
  }
  for (std::size_t k = 0; k < order.size(); ++k) {
    for (const std::size_t after : next[order[k]]) {
      if (--waits[after] == 0) order.push_back(after);
    }
  }
  if (order.size() < count) return std::nullopt;
  return order;
}

std::optional<std::vector<TaskTimes>> task_times(std::span<const Work> works, std::span<const Link> links,
                                                 std::int64_t day) {
  const auto order = work_order(works.size(), links);
  if (!order) return std::nullopt;
  std::vector<std::vector<Link>> into(works.size()), out_of(works.size());
  for (const Link& link : links) {
    into[static_cast<std::size_t>(link.after)].push_back(link);
    out_of[static_cast<std::size_t>(link.before)].push_back(link);
  }
  std::vector<TaskTimes> times(works.size());
  std::int64_t end = 0;
  for (const std::size_t work : *order) {
    std::int64_t earliest = 0;
    for (const Link& link : into[work]) {
      const std::int64_t finish = times[static_cast<std::size_t>(link.before)].finish;
      earliest = std::max(earliest, link.next_day ? day_up(finish, day) : finish);
    }
    times[work].start = works[work].whole_days ? day_up(earliest, day) : earliest;
    times[work].finish = times[work].start + works[work].minutes;
    end = std::max(end, times[work].finish);
  }
  for (std::size_t k = order->size(); k-- > 0;) {
    const std::size_t work = (*order)[k];
    std::int64_t latest = end;
    for (const Link& link : out_of[work]) {
      const std::int64_t start = times[static_cast<std::size_t>(link.after)].latest_start;
      latest = std::min(latest, link.next_day ? day_down(start, day) : start);
    }
    std::int64_t start = latest - works[work].minutes;
    if (works[work].whole_days) start = day_down(start, day);
    times[work].latest_start = start;
    times[work].latest_finish = start + works[work].minutes;
  }
  return times;
}

}  // namespace stringcourse::supply
