#include "proof/behind.hpp"

#include <algorithm>

namespace stringcourse::proof {
namespace {

template <class Entry>
std::optional<Date> day_said(const Entry& entry) {
  return entry.when.size() < 10 ? std::nullopt : read_date(std::string_view(entry.when.data(), 10));
}

int number_of(const Building& building, const std::string& wall) {
  for (int k = 0; k < static_cast<int>(building.walls.size()); ++k) {
    if (building.walls[static_cast<std::size_t>(k)].name == wall) return k;
  }
  return -1;
}

/// Whether it speaks of walls, courses and openings that are there.
bool is_of(const Building& building, const LaidEntry& entry) {
  bool is = true;
  const auto look = [&](const auto& part) {
    if (!part) return;
    is = is && number_of(building, part->on) >= 0 && part->course <= static_cast<int>(building.courses.size());
  };
  look(entry.mark), look(entry.laid), look(entry.gauge), look(entry.set), look(entry.gap), look(entry.check);
  look(entry.remark), look(entry.grouted), look(entry.looked_at);
  if (!entry.found) return is;
  const int wall = number_of(building, entry.found->on);
  const auto in_it = [&](const ResolvedOpening& one) { return one.name == *entry.found->opening && one.wall == wall; };
  return is && wall >= 0 && (!entry.found->opening || std::ranges::any_of(building.openings, in_it));
}

template <class Key>
void say(std::map<Key, std::optional<Date>>& all, const Key& key, std::optional<Date> day) {
  const auto at = all.find(key);
  if (at == all.end()) all[key] = day;
  else if (day && (!at->second || *at->second < *day)) at->second = day;
}

bool has_corner(const Building& building, const std::string& name) {
  return std::ranges::any_of(building.corners, [&](const Corner& one) { return one.name == name; });
}

/// Whether it speaks of corners and walls that are there, and measures from an end of its wall.
bool is_of(const Building& building, const Reading& entry) {
  const auto lies_on = [&](const std::string& on, const std::optional<std::string>& from) {
    const int wall = number_of(building, on);
    if (wall < 0) return false;
    const Wall& in = building.walls[static_cast<std::size_t>(wall)];
    return !from || *from == in.start_name || *from == in.end_name;
  };
  if (entry.tape)
    return entry.tape->from != entry.tape->to && has_corner(building, entry.tape->from) &&
           has_corner(building, entry.tape->to);
  if (entry.dowel) return lies_on(entry.dowel->on, entry.dowel->from);
  if (entry.edge) return lies_on(entry.edge->on, entry.edge->from);
  return !entry.rod || !entry.rod->on || lies_on(*entry.rod->on, entry.rod->from);
}

/// Whether what it reads has to be poured before.
bool needs_concrete(const Building& building, const Reading& entry) {
  if (entry.dowel || entry.edge) return true;
  if (entry.tape) return entry.tape->of == std::optional(Taped::Poured);
  if (!entry.rod || (entry.rod->surface && *entry.rod->surface != Surface::Bearing)) return false;
  return entry.rod->on || has_corner(building, entry.rod->station);
}

bool is_struck_reading(const Job& job, const std::string& id, std::size_t deep = 0) {
  if (deep > job.readings.size()) return false;
  return std::ranges::any_of(job.readings, [&](const Reading& entry) {
    return entry.strike == id && !is_struck_reading(job, entry.id, deep + 1);
  });
}

void read_ground(Behind& behind, const Job& job, const Building& building) {
  for (const Reading& entry : job.readings) {
    if (entry.strike || is_struck_reading(job, entry.id) || !is_of(building, entry)) continue;
    const std::optional<Date> day = day_said(entry);
    if (day && (!behind.evening || *behind.evening < *day)) behind.evening = day;
    if (!needs_concrete(building, entry)) continue;
    behind.poured = true;
    if (day && (!behind.poured_by || *day < *behind.poured_by)) behind.poured_by = day;
  }
}

}  // namespace

bool is_struck(const Job& job, const std::string& id, std::size_t deep) {
  if (deep > job.laid.size()) return false;
  return std::ranges::any_of(
      job.laid, [&](const LaidEntry& entry) { return entry.strike == id && !is_struck(job, entry.id, deep + 1); });
}

Behind behind_by_log(const Job& job, const Building& building, const std::vector<LiftCard>& cards) {
  Behind behind;
  if (job.days && job.days->log_until) behind.evening = read_date(*job.days->log_until);
  read_ground(behind, job, building);
  std::vector<const LaidEntry*> fills;
  for (const LaidEntry& entry : job.laid) {
    if (entry.strike || is_struck(job, entry.id) || !is_of(building, entry)) continue;
    const std::optional<Date> day = day_said(entry);
    if (day && (!behind.evening || *behind.evening < *day)) behind.evening = day;
    if (!entry.units) behind.poured = behind.begun = true;
    if (entry.laid) say(behind.courses, std::pair(number_of(building, entry.laid->on), entry.laid->course), day);
    if (entry.grouted && entry.grouted->work == GroutWork::Filled) fills.push_back(&entry);
  }
  for (const LiftCard& card : cards) {
    std::size_t full = 0;
    for (const GroutStep& step : card.steps) {
      const LaidEntry* last = nullptr;
      for (const LaidEntry* fill : fills) {
        const Grouted& one = *fill->grouted;
        if (number_of(building, one.on) == step.wall && one.course == step.course && one.at == step.at) last = fill;
      }
      if (last == nullptr) continue;
      ++full;
      say(behind.begun_pours, card.pour - 1, day_said(*last));
    }
    if (full > 0 && full == card.steps.size()) behind.lifts.insert({card.pour - 1, card.lift});
  }
  return behind;
}

bool is_worked(const Days& stated, Date date) {
  for (const std::string& off : stated.days_off) {
    if (read_date(off) == date) return false;
  }
  const auto weekday = static_cast<Weekday>((date.day + 3) % 7);  // 1970-01-01 was a Thursday
  if (stated.weekdays.empty()) return weekday <= Weekday::Friday;
  return std::ranges::contains(stated.weekdays, weekday);
}

std::int64_t worked_between(const Days& stated, std::optional<Date> after, std::optional<Date> to) {
  std::int64_t days = 0;
  while (after && to && *after < *to) days += is_worked(stated, *to) ? 1 : 0, --to->day;
  return days;
}

std::int64_t waited(const Days& stated, const Behind& behind, const Layout& layout,
                    const std::vector<supply::GroutPour>& pours, const Task& wait) {
  if (wait.work == WorkKind::FootingCure) return worked_between(stated, behind.poured_by, behind.evening);
  if (wait.work != WorkKind::MasonryCure && wait.work != WorkKind::GroutCure) return 0;
  const supply::GroutPour& pour = pours[static_cast<std::size_t>(wait.pour)];
  std::vector<std::optional<Date>> days;
  if (wait.work == WorkKind::GroutCure) {
    for (int lift = 1; lift <= static_cast<int>(pour.lift_tops.size()); ++lift) {
      if (!behind.lifts.contains({wait.pour, lift})) return 0;
    }
    days.push_back(behind.begun_pours.at(wait.pour));
  } else {
    for (const Run& run : layout.runs) {
      if (run.piece_count == 0 || run.course > pour.last_course) continue;
      const auto at = behind.courses.find({run.wall, run.course});
      days.push_back(at == behind.courses.end() ? std::nullopt : at->second);
    }
  }
  if (days.empty() || std::ranges::contains(days, std::optional<Date>())) return 0;
  return worked_between(stated, std::ranges::max(days), behind.evening);
}

namespace {

struct Looker {
  const Job& job;
  const Layout& layout;
  const std::vector<supply::GroutPour>& pours;
  const Behind& behind;
  const Programme& programme;
  Violations found = {};

  void wrong(std::string text) { found.push_back(violation("programme", "what is done", std::move(text))); }
};

void look_at_evening(Looker& of, const DoneSoFar& done) {
  const Days stated = of.job.days.value_or(Days{});
  const auto until = stated.log_until ? read_date(*stated.log_until) : std::nullopt;
  if (done.evening != of.behind.evening) of.wrong("up to another evening");
  if (done.stated != (until && until == of.behind.evening)) of.wrong("it is another's evening");
  const auto start = stated.start ? read_date(*stated.start) : std::nullopt;
  const std::int64_t days = start ? worked_between(stated, Date{start->day - 1}, of.behind.evening) : 0;
  if (done.days != days) of.wrong("on more or fewer days");
}

void look_at_pieces(Looker& of, const DoneSoFar& done) {
  std::set<std::uint32_t> wanted;
  for (const Run& run : of.layout.runs) {
    for (std::uint32_t k = 0; of.behind.courses.contains({run.wall, run.course}) && k < run.piece_count; ++k)
      wanted.insert(run.first_piece + k);
  }
  std::set<std::uint32_t> pieces;
  std::size_t named = 0;
  for (const Task& task : done.tasks) {
    pieces.insert(task.pieces.begin(), task.pieces.end());
    named += task.pieces.size();
  }
  if (pieces != wanted || named != wanted.size()) of.wrong("other pieces");
  if (done.units != static_cast<std::int64_t>(wanted.size())) of.wrong("another number of pieces");
}

/// Whether all courses up to a pour's last one are behind.
bool stands(const Looker& of, std::int32_t pour) {
  const int last = of.pours[static_cast<std::size_t>(pour)].last_course;
  return std::ranges::none_of(of.layout.runs, [&](const Run& run) {
    return run.piece_count > 0 && run.course <= last && !of.behind.courses.contains({run.wall, run.course});
  });
}

/// Works without pieces, each in one of the two lists at most.
void look_at_works(Looker& of, const DoneSoFar& done) {
  using Key = std::tuple<WorkKind, int, int, int>;
  std::set<Key> seen;
  const auto look = [&](const Task& task, bool is_done) {
    if (!task.pieces.empty()) return;
    if (!seen.insert({task.work, task.opening, task.pour, task.lift}).second) of.wrong("a work twice");
    switch (task.work) {
      case WorkKind::Boards:
      case WorkKind::Footing:
        if (is_done != of.behind.poured) of.wrong("the footing, or not");
        break;
      case WorkKind::FootingCure:
        if (of.behind.begun && !is_done) of.wrong("a wait before what is begun");
        break;
      case WorkKind::Lines:
        if (is_done == of.behind.courses.empty()) of.wrong("the lines, or not");
        break;
      case WorkKind::GroutLift:
        if (is_done != of.behind.lifts.contains({task.pour, task.lift})) of.wrong("a lift, or not");
        break;
      case WorkKind::MasonryCure:
        if (of.behind.begun_pours.contains(task.pour) && stands(of, task.pour) && !is_done)
          of.wrong("a wait before what is begun");
        break;
      case WorkKind::Bolts: {
        const auto last = static_cast<int>(of.pours.size()) - 1;
        const bool full =
            last >= 0 && of.behind.lifts.contains({last, static_cast<int>(of.pours.back().lift_tops.size())});
        if (is_done != full) of.wrong("the bolts, or not");
        break;
      }
      case WorkKind::Lintels:  // with its course, below
      case WorkKind::GroutCure:
      case WorkKind::Leads:
      case WorkKind::Course: break;
    }
  };
  for (const Task& task : done.tasks) look(task, true);
  for (const Task& task : of.programme.tasks) look(task, false);
  for (const WorkKind work : {WorkKind::Boards, WorkKind::Footing, WorkKind::FootingCure, WorkKind::Lines}) {
    if (!seen.contains({work, -1, -1, 0})) of.wrong("neither done nor ahead");
  }
}

}  // namespace

Violations check_behind(const Job& job, const Layout& layout, const std::vector<supply::GroutPour>& pours,
                        const Behind& behind, const Programme& programme) {
  Looker of{job, layout, pours, behind, programme};
  const bool told = behind.poured || (job.days && job.days->log_until);
  if (told != programme.done.has_value()) of.wrong("is told, or is not");
  if (!programme.done) return of.found;
  if (programme.done->poured != behind.poured) of.wrong("the footing poured, or not");
  look_at_evening(of, *programme.done);
  look_at_pieces(of, *programme.done);
  look_at_works(of, *programme.done);
  return of.found;
}

}  // namespace stringcourse::proof
