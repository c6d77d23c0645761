#pragma once
// What the programme is put together from. Internal to answer/.
#include <algorithm>
#include <map>
#include <set>
#include <utility>
#include <vector>

#include "answer/answer.hpp"

namespace stringcourse::planning {

/// What the job says of its days, or nothing.
[[nodiscard]] inline const Days& stated_in(const Answer& answer) {
  static const Days kNothing;
  return answer.job.days ? *answer.job.days : kNothing;
}

/// Of course 1's top over what it stands on, and so on.
[[nodiscard]] Length over_foot(const Building& building, int course);

/// "AB, BC and CD".
[[nodiscard]] FactValue names_of(const Answer& answer, const std::vector<std::int32_t>& walls);

/// The first `count` working days from `from` on; none where that is not known.
[[nodiscard]] std::vector<Date> working_dates(const Days& stated, std::optional<Date> from, std::size_t count);

/// What the laid log and the readings tell of the works.
struct LogTold {
  std::map<std::pair<int, int>, std::optional<Date>> courses;  // laid, by wall and course: the newest day said of it
  std::map<int, std::optional<Date>> pours;                    // with something filled, from 0: likewise
  std::set<std::pair<int, int>> lifts;                         // all filled, by pour and lift from 0 and 1
  std::optional<Date> newest;                                  // of all entries and readings that count
  bool poured = false, begun = false;                          // the footing or slab; something on it
  std::optional<Date> poured_by = {};                          // the first day on which a reading has it
};
[[nodiscard]] LogTold told_by_log(const Answer& answer);
/// Before anything is put down in it; none where the log tells of no work and the job of no day.
[[nodiscard]] std::optional<DoneSoFar> done_so_far(const Days& stated, const LogTold& told);
/// From which day on the rest is planned.
[[nodiscard]] std::optional<Date> planned_from(const Days& stated, const std::optional<DoneSoFar>& done);
/// Working days after `since` up to that evening; 0 where one of the two is not known.
[[nodiscard]] std::int64_t days_since(const Days& stated, std::optional<Date> since, std::optional<Date> evening);

/// The minute by which a task has laid its piece number `piece`.
[[nodiscard]] inline std::int64_t laid_by(const Task& task, std::size_t piece) {
  const std::int64_t minutes = task.times.finish - task.times.start;
  const auto count = static_cast<std::int64_t>(task.pieces.size());
  return task.times.start + (minutes * (static_cast<std::int64_t>(piece) + 1) + count - 1) / count;
}

/// By piece, the run that it lies in.
[[nodiscard]] std::vector<std::int32_t> runs_of_pieces(const Layout& layout);

/// Of which working day, from 0, a minute above zero is.
[[nodiscard]] inline std::size_t day_of(const Programme& programme, std::int64_t minute) {
  return static_cast<std::size_t>((minute - 1) / programme.minutes_a_day);
}

[[nodiscard]] MortarBatch batch_of(const Answer& answer, const Programme& programme);
void fill_days(Programme& programme, const Answer& answer);

}  // namespace stringcourse::planning
