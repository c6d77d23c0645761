#include "proof/programme.hpp"

#include <algorithm>
#include <map>

#include "proof/behind.hpp"

namespace stringcourse::proof {
namespace {

constexpr std::string_view kProgramme = "programme";

struct Checker {
  const Job& job;
  const Building& building;
  const Layout& layout;
  const std::vector<supply::GroutPour>& pours;
  const std::vector<supply::Bridged>& bridged;
  const Programme& programme;
  const Behind& behind;
  Violations found = {};

  void wrong(const std::string& where, std::string text) {
    found.push_back(violation(kProgramme, where, std::move(text)));
  }
  std::int64_t day() const { return programme.minutes_a_day; }
  std::int64_t morning_after(std::int64_t minute) const {
    return minute % day() == 0 ? minute : (minute / day() + 1) * day();
  }
};

std::string named(std::size_t task) { return "task " + std::to_string(task + 1); }

bool waits(WorkKind work) {
  return work == WorkKind::FootingCure || work == WorkKind::MasonryCure || work == WorkKind::GroutCure;
}

/// Half days as "work-times" and "cure-before-pour" have them: masonry over 5 ft (1500 mm) sets three days, else one.
std::int64_t half_days(const Checker& of, const Task& task) {
  if (of.job.days) {
    for (const WorkDays& own : of.job.days->work) {
      if (own.work == task.work) return own.half_days;
    }
  }
  const Length tall = Length::feet(5);
  switch (task.work) {
    case WorkKind::Boards: return 2;
    case WorkKind::Footing: return 4;
    case WorkKind::FootingCure: return 6;
    case WorkKind::MasonryCure: return of.pours[static_cast<std::size_t>(task.pour)].height > tall ? 6 : 2;
    case WorkKind::GroutCure: return 2;
    default: return 1;
  }
}

/// Whether a piece of the next pour's courses is not behind.
bool is_built_on(const Checker& of, std::int32_t pour) {
  const auto at = static_cast<std::size_t>(pour);
  const int from = of.pours[at].last_course;
  const int to = at + 1 < of.pours.size() ? of.pours[at + 1].last_course : 1'000'000;
  for (const Run& run : of.layout.runs) {
    if (run.piece_count == 0 || run.course <= from || run.course > to) continue;
    if (!of.behind.courses.contains({run.wall, run.course})) return true;
  }
  return false;
}

/// Of a wait.
std::int64_t days_left(const Checker& of, const Task& task) {
  const std::int64_t all = (half_days(of, task) + 1) / 2;
  return std::max<std::int64_t>(0, all - waited(of.job.days.value_or(Days{}), of.behind, of.layout, of.pours, task));
}

/// A wait that what is begun or done says is over.
bool is_needless(const Checker& of, const Task& wait) {
  if (wait.work == WorkKind::MasonryCure) return of.behind.begun_pours.contains(wait.pour);
  if (wait.work == WorkKind::FootingCure) return of.behind.begun;
  return wait.work != WorkKind::GroutCure || !is_built_on(of, wait.pour);
}

void check_times(Checker& of) {
  const CrewPace& pace = of.programme.pace;
  if (of.programme.pace_from != PaceFrom::Log) {
    const Days stated = of.job.days.value_or(Days{});
    const std::int64_t usual = stated.crew.value_or(Crew::Beginners) == Crew::Beginners ? 6 : 15;
    const std::int64_t each = stated.units_per_hour ? *stated.units_per_hour : usual;
    if (pace.units * 60 != each * stated.pairs.value_or(1) * pace.minutes) of.wrong("pace", "is another one");
  } else if (!of.programme.own_pace || pace.units * of.programme.own_pace->each != pace.minutes * 1'000) {
    of.wrong("pace", "is not the log's");
  }
  for (std::size_t k = 0; k < of.programme.tasks.size(); ++k) {
    const Task& task = of.programme.tasks[k];
    const std::int64_t lasts = task.times.finish - task.times.start;
    const auto units = static_cast<std::int64_t>(task.pieces.size());
    if (units > 0) {  // to the minute, up
      if (lasts * pace.units < units * pace.minutes || (lasts - 1) * pace.units >= units * pace.minutes)
        of.wrong(named(k), "does not last as long as its units take");
    } else {
      const std::int64_t halves = half_days(of, task);
      const std::int64_t minutes = waits(task.work) ? days_left(of, task) * of.day() : halves * of.day() / 2;
      if (lasts != minutes) of.wrong(named(k), "lasts another time");
    }
    if (waits(task.work) && task.times.start % of.day() != 0) of.wrong(named(k), "a wait that begins within a day");
  }
  if (!of.programme.done) return;
  for (const Task& task : of.programme.done->tasks) {
    if (!is_needless(of, task) && days_left(of, task) > 0) of.wrong("a wait that is done", "is not over");
  }
}

/// Going round until nothing changes: no order of the works is used.
void check_longest_ways(Checker& of) {
  const std::vector<Task>& tasks = of.programme.tasks;
  const std::size_t count = tasks.size();
  std::vector<std::int64_t> start(count, 0), lasts(count);
  for (std::size_t k = 0; k < count; ++k) lasts[k] = tasks[k].times.finish - tasks[k].times.start;
  bool changes = true;
  for (std::size_t round = 0; changes && round <= count; ++round) {
    changes = false;
    for (const supply::Link& link : of.programme.links) {
      const auto before = static_cast<std::size_t>(link.before), after = static_cast<std::size_t>(link.after);
      std::int64_t ready = start[before] + lasts[before];
      if (link.next_day || waits(tasks[after].work)) ready = of.morning_after(ready);
      if (ready > start[after]) start[after] = ready, changes = true;
    }
  }
  if (changes) return of.wrong("links", "go round");
  std::int64_t end = 0;
  for (std::size_t k = 0; k < count; ++k) end = std::max(end, start[k] + lasts[k]);
  if (end != of.programme.minutes) of.wrong("end", "is another minute");
  std::vector<std::int64_t> finish(count, end);  // latest
  const auto evening_before = [&](std::int64_t minute) {
    const std::int64_t past = ((minute % of.day()) + of.day()) % of.day();
    return minute - past;
  };
  const auto latest_start = [&](std::size_t k) {
    const std::int64_t at = finish[k] - lasts[k];
    return waits(tasks[k].work) ? evening_before(at) : at;
  };
  changes = true;
  for (std::size_t round = 0; changes && round <= count; ++round) {
    changes = false;
    for (const supply::Link& link : of.programme.links) {
      const auto before = static_cast<std::size_t>(link.before), after = static_cast<std::size_t>(link.after);
      const std::int64_t by = link.next_day ? evening_before(latest_start(after)) : latest_start(after);
      if (by < finish[before]) finish[before] = by, changes = true;
    }
  }
  for (std::size_t k = 0; k < count; ++k) {
    if (tasks[k].times.start != start[k]) of.wrong(named(k), "can begin at another time");
    if (tasks[k].times.latest_start != latest_start(k) || tasks[k].times.latest_finish != latest_start(k) + lasts[k])
      of.wrong(named(k), "must begin at another time");
  }
}

/// By wall and course: when its first piece is begun, when its last one is laid.
struct Stretch {
  std::int64_t begun = 0, done = 0;
};
using Courses = std::map<std::pair<int, int>, Stretch>;

std::int64_t laid_at(const Task& task, std::size_t k) {
  const auto count = static_cast<std::int64_t>(task.pieces.size());
  const std::int64_t part = (task.times.finish - task.times.start) * (static_cast<std::int64_t>(k) + 1);
  return task.times.start + part / count + (part % count != 0 ? 1 : 0);
}

Courses check_pieces(Checker& of) {
  std::vector<std::int64_t> begun(of.layout.pieces.size(), -1), done(of.layout.pieces.size(), -1);
  for (const Task& task : of.programme.tasks) {
    for (std::size_t k = 0; k < task.pieces.size(); ++k) {
      const std::uint32_t piece = task.pieces[k];
      if (piece >= done.size()) of.wrong("pieces", "one that is not there");
      else if (done[piece] >= 0) of.wrong("pieces", "one is laid twice");
      else begun[piece] = task.times.start, done[piece] = laid_at(task, k);
    }
  }
  Courses courses;
  for (const Run& run : of.layout.runs) {
    for (std::uint32_t k = run.first_piece; k < run.first_piece + run.piece_count; ++k) {
      const bool is_behind = of.behind.courses.contains({run.wall, run.course});
      if (is_behind != (done[k] < 0)) of.wrong("pieces", "one is never laid, or again");
      if (done[k] < 0) continue;
      const auto [at, fresh] = courses.try_emplace({run.wall, run.course}, Stretch{begun[k], done[k]});
      at->second = {std::min(at->second.begun, begun[k]), std::max(at->second.done, done[k])};
    }
  }
  return courses;
}

void check_crew(Checker& of) {
  std::int64_t free = 0;
  for (std::size_t k = 0; k < of.programme.tasks.size(); ++k) {
    const Task& task = of.programme.tasks[k];
    if (task.work == WorkKind::Lintels) continue;  // beside the crew
    if (task.times.start < free) of.wrong(named(k), "begins before the crew is free");
    free = task.times.finish;
  }
}

void check_rise(Checker& of, const Courses& courses) {
  for (const auto& [key, stretch] : courses) {
    const auto below = courses.find({key.first, key.second - static_cast<int>(of.programme.most_courses)});
    if (below == courses.end()) continue;
    if ((stretch.done - 1) / of.day() <= (below->second.done - 1) / of.day())
      of.wrong("wall " + std::to_string(key.first + 1), "rises too high in a day");
  }
}

void check_pours(Checker& of, const Courses& courses) {
  std::vector<int> lifts(of.pours.size(), 0);
  for (std::size_t k = 0; k < of.programme.tasks.size(); ++k) {
    const Task& task = of.programme.tasks[k];
    if (task.work != WorkKind::GroutLift && task.work != WorkKind::MasonryCure) continue;
    const supply::GroutPour& pour = of.pours[static_cast<std::size_t>(task.pour)];
    if (task.work == WorkKind::GroutLift) ++lifts[static_cast<std::size_t>(task.pour)];
    const bool is_lift = task.work == WorkKind::GroutLift;
    const Task wait{.work = WorkKind::MasonryCure, .pour = task.pour};
    const std::int64_t set = is_lift ? half_days(of, wait) : 0;
    const bool begun = of.behind.begun_pours.contains(task.pour);
    if (is_lift && !begun && task.times.start < days_left(of, wait) * of.day())
      of.wrong(named(k), "begins before what stands has set");
    for (const auto& [key, stretch] : courses) {
      const bool in_it = key.second <= pour.last_course;
      if (in_it && stretch.done + (set + 1) / 2 * of.day() > task.times.start)
        of.wrong(named(k), "begins before the masonry has set");
      if (!in_it && stretch.begun < task.times.finish) of.wrong(named(k), "is built on before it is filled");
    }
  }
  for (const auto& [pour, lift] : of.behind.lifts) ++lifts[static_cast<std::size_t>(pour)];
  for (std::size_t k = 0; k < of.pours.size(); ++k) {
    if (lifts[k] != static_cast<int>(of.pours[k].lift_tops.size()))
      of.wrong("pour " + std::to_string(k + 1), "other lifts");
  }
}

void check_shores(Checker& of, const Courses& courses) {
  for (const supply::Bridged& over : of.bridged) {
    const auto is_its = [&](const Task& task) {
      return task.work == WorkKind::Lintels && task.opening == over.opening;
    };
    const auto task = std::ranges::find_if(of.programme.tasks, is_its);
    const int wall = of.building.openings[static_cast<std::size_t>(over.opening)].wall;
    const auto lintel = courses.find({wall, over.first_course});
    if (!over.shored || lintel == courses.end()) continue;
    const std::string where = "opening " + std::to_string(over.opening + 1);
    if (task == of.programme.tasks.end()) {
      of.wrong(where, "nothing is shored");
      continue;
    }
    const auto jambs = courses.find({wall, over.first_course - 1});
    if (jambs != courses.end() && jambs->second.done > task->times.start)
      of.wrong(where, "is shored before its jambs stand");
    const auto laid = std::ranges::find_if(of.programme.tasks, [&](const Task& one) {
      return one.work == WorkKind::Course && one.wall == wall && one.course == over.first_course;
    });
    if (laid != of.programme.tasks.end() && laid->times.start < task->times.finish)
      of.wrong(where, "its lintel is laid before it is shored");
  }
}

void check_dates(Checker& of) {
  const Days stated = of.job.days.value_or(Days{});
  std::optional<Date> next = stated.start ? read_date(*stated.start) : std::nullopt;
  std::int64_t number = 1;
  if (of.programme.done) {
    const auto evening = of.behind.evening;
    if (next) number += worked_between(stated, Date{next->day - 1}, evening);
    if (!evening) next = std::nullopt;
    else if (!next || *next <= *evening) next = Date{evening->day + 1};
  }
  for (std::size_t k = 0; k < of.programme.days.size(); ++k) {
    while (next && !is_worked(stated, *next)) ++next->day;
    const std::string where = "day " + std::to_string(k + 1);
    if (of.programme.days[k].date != next) of.wrong(where, "has another date");
    if (of.programme.days[k].number != number + static_cast<std::int64_t>(k)) of.wrong(where, "has another number");
    if (next) ++next->day;
  }
}

void check_days(Checker& of) {
  const std::int64_t least = of.programme.tasks.empty() ? 0 : 1;
  const auto count = static_cast<std::size_t>(std::max(least, (of.programme.minutes + of.day() - 1) / of.day()));
  if (of.programme.days.size() != count) return of.wrong("days", "are more or fewer");
  std::vector<std::int64_t> laid(count, 0);
  for (const Task& task : of.programme.tasks) {
    for (std::size_t k = 0; k < task.pieces.size(); ++k)
      ++laid[static_cast<std::size_t>((laid_at(task, k) - 1) / of.day())];
  }
  for (std::size_t k = 0; k < count; ++k) {
    const WorkDay& day = of.programme.days[k];
    std::int64_t units = 0;
    for (const supply::UnitCount& unit : day.units) units += unit.whole + unit.pieces;
    if (day.laid != laid[k] || units != laid[k]) of.wrong("day " + std::to_string(k + 1), "lays another number");
    if (day.batches * of.programme.batch.blocks < laid[k])
      of.wrong("day " + std::to_string(k + 1), "has too little mortar");
  }
  check_dates(of);
}

/// The minute by which each piece is laid; 0: before the first one.
std::vector<std::int64_t> minutes_of_pieces(const Checker& of) {
  std::vector<std::int64_t> minutes(of.layout.pieces.size(), 0);
  for (const Task& task : of.programme.tasks) {
    for (std::size_t k = 0; k < task.pieces.size(); ++k) minutes[task.pieces[k]] = laid_at(task, k);
  }
  return minutes;
}

/// By course of one wall: its pieces, and those of them that lie by then.
std::map<int, std::pair<int, int>> pieces_by(const Checker& of, const std::vector<std::int64_t>& minutes, int wall,
                                             std::int64_t end) {
  std::map<int, std::pair<int, int>> pieces;
  for (const Run& run : of.layout.runs) {
    for (std::uint32_t k = run.first_piece; run.wall == wall && k < run.first_piece + run.piece_count; ++k) {
      auto& [all, laid] = pieces[run.course];
      ++all, laid += minutes[k] <= end ? 1 : 0;
    }
  }
  return pieces;
}

int filled_by(const Checker& of, std::int64_t end) {
  int filled = 0;
  for (std::size_t pour = 0; pour < of.pours.size(); ++pour) {
    const auto number = static_cast<std::int32_t>(pour);
    const auto last = static_cast<std::int32_t>(of.pours[pour].lift_tops.size());
    const auto is_it = [&](const Task& task) {
      return task.work == WorkKind::GroutLift && task.pour == number && task.lift == last && task.times.finish <= end;
    };
    if (of.behind.lifts.contains({number, last}) || std::ranges::any_of(of.programme.tasks, is_it))
      filled = std::max(filled, of.pours[pour].last_course);
  }
  return filled;
}

/// How high each wall stands on each evening, counted piece by piece; the zone is 4 ft wider (29 CFR 1926.706).
void check_nights(Checker& of) {
  const std::vector<std::int64_t> minutes = minutes_of_pieces(of);
  const Course& first = of.building.courses.front();
  const Length foot = first.top - first.unit_height - of.building.joint;
  const auto over_foot = [&](int course) {
    return course == 0 ? Length() : of.building.courses[static_cast<std::size_t>(course) - 1].top - foot;
  };
  for (std::size_t k = 0; k < of.programme.days.size(); ++k) {
    const WorkDay& day = of.programme.days[k];
    const std::int64_t end = (static_cast<std::int64_t>(k) + 1) * of.day();
    const int filled = filled_by(of, end);
    std::vector<std::int32_t> brace, tall;
    Length highest;
    bool alike = day.reached.size() == of.building.walls.size();
    for (int wall = 0; alike && wall < static_cast<int>(of.building.walls.size()); ++wall) {
      int course = 0, begun = 0;
      for (const auto& [number, pieces] : pieces_by(of, minutes, wall, end)) {
        if (pieces.second > 0) begun = number;
        if (pieces.first == pieces.second && course == number - 1) course = number;
      }
      const Reached& reached = day.reached[static_cast<std::size_t>(wall)];
      alike = reached.wall == wall && reached.course == course && reached.begun == begun && reached.grouted == filled &&
              reached.top == over_foot(course) && reached.begun_top == over_foot(begun);
      if (over_foot(begun) > Length::feet(8)) tall.push_back(wall);
      if (begun > filled) brace.push_back(wall), highest = std::max(highest, over_foot(begun));
    }
    const std::string where = "day " + std::to_string(k + 1);
    if (!alike) of.wrong(where, "its walls end at another height");
    if (day.brace != brace || day.tall != tall) of.wrong(where, "other walls are to be braced");
    if (!brace.empty() && day.zone < highest + Length::feet(4)) of.wrong(where, "too little is kept clear");
  }
}

bool is_sound(const Programme& programme) {
  const auto count = static_cast<std::int32_t>(programme.tasks.size());
  const auto there = [&](std::int32_t task) { return task >= 0 && task < count; };
  return programme.minutes_a_day > 0 && programme.pace.units > 0 && programme.pace.minutes > 0 &&
         std::ranges::all_of(programme.links,
                             [&](const supply::Link& link) { return there(link.before) && there(link.after); });
}

}  // namespace

Violations check_programme(const Job& job, const Building& building, const Layout& layout,
                           const std::vector<supply::GroutPour>& pours, const std::vector<supply::Bridged>& bridged,
                           const std::vector<LiftCard>& cards, const Programme& programme) {
  const Behind behind = behind_by_log(job, building, cards);
  Checker of{job, building, layout, pours, bridged, programme, behind};
  if (!is_sound(programme)) {
    of.wrong("programme", "cannot be read");
    return of.found;
  }
  of.found = check_behind(job, layout, pours, behind, programme);
  check_times(of);
  check_longest_ways(of);
  const Courses courses = check_pieces(of);
  check_crew(of);
  check_rise(of, courses);
  check_pours(of, courses);
  check_shores(of, courses);
  check_days(of);
  check_nights(of);
  return of.found;
}

}  // namespace stringcourse::proof
