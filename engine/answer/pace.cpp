#include "answer/pace.hpp"

#include <map>
#include <set>
#include <string_view>

#include "bond/layout_parts.hpp"
#include "laying/log.hpp"
#include "measure/date.hpp"
#include "measure/root.hpp"

namespace stringcourse {
namespace {

struct Stamp {
  std::int64_t day = 0, minute = 0;
  friend auto operator<=>(const Stamp&, const Stamp&) = default;
};

std::optional<std::int64_t> two_digits(std::string_view text) {
  const auto digit = [](char c) { return '0' <= c && c <= '9'; };
  if (text.size() != 2 || !digit(text[0]) || !digit(text[1])) return std::nullopt;
  return (text[0] - '0') * 10 + (text[1] - '0');
}

/// "2026-05-09 14:20", or with a T between; none of any other form.
std::optional<Stamp> read_stamp(std::string_view when) {
  if (when.size() != 16 || (when[10] != ' ' && when[10] != 'T') || when[13] != ':') return std::nullopt;
  const auto date = read_date(when.substr(0, 10));
  const auto hour = two_digits(when.substr(11, 2)), minute = two_digits(when.substr(14, 2));
  if (!date || !hour || !minute || *hour > 23 || *minute > 59) return std::nullopt;
  return Stamp{date->day, *hour * 60 + *minute};
}

std::int64_t units_of(const Layout& layout, int wall, int course) {
  std::int64_t units = 0;
  for (const Run& run : bond::runs_in(layout, wall, course)) units += run.piece_count;
  return units;
}

/// Nearest; both above zero.
std::int64_t nearest(std::int64_t of, std::int64_t over) { return (of + over / 2) / over; }

/// Thousandths of a minute for a unit.
std::int64_t each_of(const TimedWork& work) { return nearest(work.minutes * 1'000, work.units); }

}  // namespace

std::vector<TimedWork> timed_works(const Job& job, const Building& building, const Layout& layout) {
  const std::vector<bool> counts = laying::entries_that_count(job);
  std::map<std::pair<int, int>, Stamp> first;  // by wall and course
  for (std::size_t k = 0; k < job.laid.size(); ++k) {
    const LaidEntry& entry = job.laid[k];
    if (!counts[k] || !entry.laid || !laying::unknown_in(entry, building).empty()) continue;
    const auto stamp = read_stamp(entry.when);
    if (!stamp) continue;
    const auto at = first.try_emplace({laying::wall_named(building, entry.laid->on), entry.laid->course}, *stamp).first;
    at->second = std::min(at->second, *stamp);
  }
  std::map<Stamp, std::int64_t> laid;
  for (const auto& [course, stamp] : first) laid[stamp] += units_of(layout, course.first, course.second);
  std::vector<TimedWork> works;
  const Stamp* before = nullptr;
  for (const auto& [stamp, units] : laid) {
    if (before != nullptr && before->day == stamp.day && units > 0)
      works.push_back({units, stamp.minute - before->minute});
    before = &stamp;
  }
  return works;
}

std::optional<OwnPace> own_pace(std::span<const TimedWork> works) {
  if (works.size() < kLeastTimedWorks) return std::nullopt;
  const auto count = static_cast<std::int64_t>(works.size());
  OwnPace pace{.works = count};
  std::int64_t sum = 0;
  for (const TimedWork& work : works) {
    pace.units += work.units, pace.minutes += work.minutes;
    sum += each_of(work);
  }
  pace.each = std::max<std::int64_t>(1, nearest(sum, count));
  std::int64_t squares = 0;
  for (const TimedWork& work : works) {
    const std::int64_t off = each_of(work) - pace.each;
    squares += off * off;
  }
  pace.variance = nearest(squares, count - 1);
  pace.spread = nearest(root_down(pace.variance) * 100, pace.each);
  pace.doubt = nearest(root_down(pace.variance / count) * 100, pace.each);
  return pace;
}

}  // namespace stringcourse
