#pragma once
// Work that hangs on other work: when each piece can start at the earliest and must start at the latest, and which are
// critical. Whole minutes of working time from the first day's start.
#include <cstdint>
#include <optional>
#include <span>
#include <vector>

namespace stringcourse::supply {

struct Work {
  std::int64_t minutes = 0;
  bool whole_days = false;  // begins and ends with a day: a wait
};

/// `after` starts once `before` is done; with `next_day` not before the day after that on which it was done.
struct Link {
  std::int32_t before = 0, after = 0;
  bool next_day = false;
  friend bool operator==(const Link&, const Link&) = default;
};

struct TaskTimes {
  std::int64_t start = 0, finish = 0;                // earliest
  std::int64_t latest_start = 0, latest_finish = 0;  // that still keep the end
  [[nodiscard]] bool critical() const { return start == latest_start; }
  friend bool operator==(const TaskTimes&, const TaskTimes&) = default;
};

/// The works, each after all that it waits for, otherwise as they come; none where links go round or name no work.
[[nodiscard]] std::optional<std::vector<std::size_t>> work_order(std::size_t count, std::span<const Link> links);

/// By work; none where links go round or name no work. `day`: minutes of one, above zero.
[[nodiscard]] std::optional<std::vector<TaskTimes>> task_times(std::span<const Work> works, std::span<const Link> links,
                                                               std::int64_t day);

}  // namespace stringcourse::supply
