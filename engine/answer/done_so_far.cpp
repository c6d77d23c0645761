// What of the works is behind, as the laid log tells, and from which day on the rest is planned.
#include "answer/programme_parts.hpp"
#include "ground/as_found.hpp"
#include "ground/shape_choices.hpp"
#include "laying/log.hpp"

namespace stringcourse {
namespace planning {
namespace {

/// Of an entry of either log.
template <class Entry>
std::optional<Date> date_of(const Entry& entry) {
  return read_date(std::string_view(entry.when).substr(0, 10));
}

std::optional<Date> read(const std::optional<std::string>& text) { return text ? read_date(*text) : std::nullopt; }

/// Keeps the newest of what is said, and that something is.
template <class Key>
void note(std::map<Key, std::optional<Date>>& said, const Key& key, std::optional<Date> date) {
  const auto at = said.try_emplace(key, date).first;
  at->second = std::max(at->second, date);
}

void note_grout(LogTold& told, const Answer& answer) {
  for (const LiftCard& card : answer.pour_cards) {
    for (const GroutStep& step : card.steps) {
      if (step.filled < 0) continue;
      note(told.pours, card.pour - 1, date_of(answer.job.laid[static_cast<std::size_t>(step.filled)]));
    }
    const auto is_filled = [](const GroutStep& step) { return step.filled >= 0; };
    if (!card.steps.empty() && std::ranges::all_of(card.steps, is_filled))
      told.lifts.insert({card.pour - 1, card.lift});
  }
}

/// What stands of the ground by its readings, and when they were taken.
void note_readings(LogTold& told, const Answer& answer) {
  const std::vector<bool> counts = ground::entries_that_count(answer.job, answer.building);
  for (std::size_t k = 0; k < answer.job.readings.size(); ++k) {
    if (!counts[k]) continue;
    const std::optional<Date> date = date_of(answer.job.readings[k]);
    told.newest = std::max(told.newest, date);
    if (!ground::is_of_concrete(answer.job.readings[k], answer.building)) continue;
    told.poured = true;
    if (date && (!told.poured_by || *date < *told.poured_by)) told.poured_by = date;
  }
}

std::set<Date> days_off(const Days& stated) {
  std::set<Date> off;
  for (const std::string& text : stated.days_off) {
    if (const auto date = read_date(text)) off.insert(*date);
  }
  return off;
}

/// Whether somebody works on that day.
bool is_worked(const Days& stated, const std::set<Date>& off, Date date) {
  if (off.contains(date)) return false;
  if (stated.weekdays.empty()) return date.weekday() < 5;
  return std::ranges::contains(stated.weekdays, static_cast<Weekday>(date.weekday()));
}

}  // namespace

LogTold told_by_log(const Answer& answer) {
  LogTold told;
  const std::vector<bool> counts = laying::entries_that_count(answer.job);
  for (std::size_t k = 0; k < answer.job.laid.size(); ++k) {
    const LaidEntry& entry = answer.job.laid[k];
    if (!counts[k] || !laying::unknown_in(entry, answer.building).empty()) continue;
    const std::optional<Date> date = date_of(entry);
    told.newest = std::max(told.newest, date);
    if (laying::stands_on_concrete(entry)) told.poured = told.begun = true;
    if (entry.laid)
      note(told.courses, std::pair(laying::wall_named(answer.building, entry.laid->on), entry.laid->course), date);
  }
  note_grout(told, answer);
  note_readings(told, answer);
  return told;
}

std::optional<DoneSoFar> done_so_far(const Days& stated, const LogTold& told) {
  const std::optional<Date> until = read(stated.log_until);
  if (!told.poured && !until) return std::nullopt;
  DoneSoFar done;
  done.poured = told.poured;
  done.evening = std::max(told.newest, until), done.newest = told.newest;
  done.stated = until && done.evening == until;
  const std::optional<Date> start = read(stated.start);
  if (start && done.evening) done.days = days_since(stated, Date{start->day - 1}, done.evening);
  return done;
}

std::optional<Date> planned_from(const Days& stated, const std::optional<DoneSoFar>& done) {
  const std::optional<Date> start = read(stated.start);
  if (!done) return start;
  if (!done->evening) return std::nullopt;
  return std::max(start, std::optional(Date{done->evening->day + 1}));
}

std::vector<Date> working_dates(const Days& stated, std::optional<Date> from, std::size_t count) {
  const std::set<Date> off = days_off(stated);
  std::vector<Date> dates;
  for (; from && dates.size() < count; ++from->day) {
    if (is_worked(stated, off, *from)) dates.push_back(*from);
  }
  return dates;
}

std::int64_t days_since(const Days& stated, std::optional<Date> since, std::optional<Date> evening) {
  const std::set<Date> off = days_off(stated);
  std::int64_t days = 0;
  if (!since || !evening) return days;
  for (Date date{since->day + 1}; date <= *evening; ++date.day) days += is_worked(stated, off, date) ? 1 : 0;
  return days;
}

}  // namespace planning

std::vector<Finding> date_findings(const Answer& answer) {
  const Days& stated = planning::stated_in(answer);
  const std::optional<DoneSoFar>& done = answer.programme.done;
  const auto until = planning::read(stated.log_until), start = planning::read(stated.start);
  std::vector<Finding> found;
  if (!done) return found;
  if (until && done->newest && *until < *done->newest) {
    found.push_back({"log-until-early", "/days/log_until",
                     fact("log-until-early", {date_text(*until), date_text(*done->newest)}), "", HoldPoint::Order});
  }
  if (start && done->newest && *done->newest < *start) {
    found.push_back({"log-before-start", "/days/start",
                     fact("log-before-start", {date_text(*start), date_text(*done->newest)}), "", HoldPoint::Order});
  }
  if (start && !done->evening)
    found.push_back({"log-undated", "/days/log_until", fact("log-undated"), "", HoldPoint::Order});
  return found;
}

Fact done_said(const Answer& answer) {
  const std::optional<DoneSoFar>& done = answer.programme.done;
  if (!done) return {};
  const std::size_t all = answer.layout.pieces.size();
  if (answer.programme.tasks.empty()) return fact("done-all", {done->units, all});
  if (done->poured && done->units == 0)
    return done->evening ? fact("done-poured", {all, date_text(*done->evening)}) : fact("done-poured-undated", {all});
  if (!done->evening) return fact("done-undated", {done->units, all});
  return fact("done-so-far", {done->units, all, date_text(*done->evening)});
}

}  // namespace stringcourse
