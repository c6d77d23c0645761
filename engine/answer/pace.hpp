#pragma once
// How fast this crew lays, as its own log tells: the time between two courses said to be laid on the same day. Breaks
// are in it, as they are in the working day; what is put down later in one go has no time between and tells nothing.
#include <cstdint>
#include <optional>
#include <span>
#include <vector>

#include "bond/layout.hpp"
#include "job/job.hpp"
#include "walls/building.hpp"

namespace stringcourse {

/// What was laid from one stamp of the log to the next.
struct TimedWork {
  std::int64_t units = 0, minutes = 0;  // both above zero
  friend bool operator==(const TimedWork&, const TimedWork&) = default;
};

/// The crew's pace. Each piece of timed work counts alike, so that mean and variance are those of a plain sample: the
/// mean of the times for a unit is unbiased, and so is their variance (divided by one less than their number).
struct OwnPace {
  std::int64_t works = 0, units = 0, minutes = 0;  // timed
  std::int64_t each = 0;                           // thousandths of a minute for a unit: the mean
  std::int64_t variance = 0;                       // of these, thousandths squared
  std::int64_t spread = 0;                         // standard deviation in hundredths of the mean
  std::int64_t doubt = 0;                          // of the mean itself: the spread over the root of their number
  friend bool operator==(const OwnPace&, const OwnPace&) = default;
};

/// Fewer say too little of how they spread. Ours: a sample of five is off by a third in its spread.
inline constexpr std::size_t kLeastTimedWorks = 5;

/// In the order of their stamps. Courses laid up to the same minute count together; a course counts when it is first
/// said to be laid, with all its units.
[[nodiscard]] std::vector<TimedWork> timed_works(const Job& job, const Building& building, const Layout& layout);

/// None of fewer than kLeastTimedWorks.
[[nodiscard]] std::optional<OwnPace> own_pace(std::span<const TimedWork> works);

}  // namespace stringcourse
