#include "answer/programme.hpp"

#include <algorithm>
#include <map>

#include "answer/programme_parts.hpp"
#include "bond/layout_parts.hpp"
#include "catalogue/rules.hpp"
#include "measure/digits.hpp"
#include "setout/laying_order.hpp"

namespace stringcourse {
namespace {

using namespace planning;

/// SOURCE: rules "pace-beginners", "pace-mason".
std::int64_t usual_pace(Crew crew) { return crew == Crew::Beginners ? 6 : 15; }

/// In half days. SOURCE: rules "work-times", "cure-before-pour".
std::int64_t usual_half_days(WorkKind work, bool tall) {
  switch (work) {
    case WorkKind::Boards: return 2;
    case WorkKind::Footing: return 4;
    case WorkKind::FootingCure: return 6;
    case WorkKind::Lines:
    case WorkKind::Lintels:
    case WorkKind::GroutLift:
    case WorkKind::Bolts: return 1;
    case WorkKind::MasonryCure: return tall ? 6 : 2;
    case WorkKind::GroutCure: return 2;
    case WorkKind::Leads:
    case WorkKind::Course: break;
  }
  return 0;
}

/// Courses that stay under the limit of rule "rise-a-day"; at least one.
std::int64_t courses_a_day(const Building& building) {
  const Length most = limit_of("rise-a-day", building.tape);
  std::int64_t courses = 1;
  while (courses < static_cast<std::int64_t>(building.courses.size()) &&
         over_foot(building, static_cast<int>(courses) + 1) <= most)
    ++courses;
  return courses;
}

/// Puts the tasks down in the order of the crew, and what each waits for.
class Planner {
 public:
  Planner(const Answer& answer, Programme& programme)
      : answer_(answer),
        building_(answer.building),
        programme_(programme),
        told_(told_by_log(answer)),
        taken_(answer.layout.pieces.size()) {}

  void plan() {
    programme_.done = done_so_far(stated_in(answer_), told_);
    programme_.from = planned_from(stated_in(answer_), programme_.done);
    for (const WorkKind work : {WorkKind::Boards, WorkKind::Footing, WorkKind::FootingCure, WorkKind::Lines})
      follow(add({.work = work}));
    lines_ = last_;
    take_laid();
    const int courses = static_cast<int>(building_.courses.size());
    for (int course = 1; course <= courses; ++course) {
      lay_course(course);
      if (course == 1) lay_leads();
      pour_after(course);
    }
    if (!answer_.plates.empty()) follow(add({.work = WorkKind::Bolts}));
    time();
  }

 private:
  using Index = std::int32_t;
  static constexpr Index kDone = -1;

  /// Of what the log says nothing: what could not be built on otherwise.
  bool is_done(const Task& task) const {
    const auto lift_done = [&](int pour, int lift) { return told_.lifts.contains({pour, lift}); };
    switch (task.work) {
      case WorkKind::Boards:
      case WorkKind::Footing: return told_.poured;
      case WorkKind::FootingCure: return told_.begun;
      case WorkKind::Lines: return !told_.courses.empty();
      case WorkKind::Leads:
      case WorkKind::Course:
      case WorkKind::Lintels: return false;  // what is behind of them is taken before
      case WorkKind::MasonryCure: return told_.pours.contains(task.pour) && !is_to_be_laid(0, last_of(task.pour));
      case WorkKind::GroutLift: return lift_done(task.pour, task.lift);
      case WorkKind::GroutCure: return !is_built_on(task.pour);
      case WorkKind::Bolts: {
        const auto& pours = answer_.tallies.grout;
        const std::size_t last = pours.size() - 1;
        return !pours.empty() && lift_done(static_cast<int>(last), static_cast<int>(pours[last].lift_tops.size()));
      }
    }
    return false;
  }

  /// Whether courses of the next pour are still to be laid.
  bool is_built_on(int pour) const {
    const bool is_last = static_cast<std::size_t>(pour) + 1 == answer_.tallies.grout.size();
    return is_to_be_laid(last_of(pour), is_last ? static_cast<int>(building_.courses.size()) : last_of(pour + 1));
  }
  int last_of(int pour) const { return answer_.tallies.grout[static_cast<std::size_t>(pour)].last_course; }
  /// Anything of the courses over `from` up to `to`.
  bool is_to_be_laid(int from, int to) const {
    return std::ranges::any_of(answer_.layout.runs, [&](const Run& run) {
      return run.course > from && run.course <= to && run.piece_count > 0 &&
             !told_.courses.contains({run.wall, run.course});
    });
  }

  /// Since when a wait lasts; none: it has not begun, or nobody said when.
  std::optional<Date> since(const Task& wait) const {
    if (wait.work == WorkKind::FootingCure) return told_.poured_by;
    const supply::GroutPour& pour = answer_.tallies.grout[static_cast<std::size_t>(wait.pour)];
    std::optional<Date> newest;
    if (wait.work == WorkKind::GroutCure) {
      for (std::int32_t lift = 1; lift <= static_cast<std::int32_t>(pour.lift_tops.size()); ++lift) {
        if (!told_.lifts.contains({wait.pour, lift})) return std::nullopt;
      }
      const auto filled = told_.pours.find(wait.pour);
      return filled == told_.pours.end() ? std::nullopt : filled->second;
    }
    for (const Run& run : answer_.layout.runs) {
      if (run.course > pour.last_course || run.piece_count == 0) continue;
      const auto laid = told_.courses.find({run.wall, run.course});
      if (laid == told_.courses.end() || !laid->second) return std::nullopt;
      newest = std::max(newest, laid->second);
    }
    return newest;
  }

  Index add(Task task) {
    const Days& stated = stated_in(answer_);
    const auto own = std::ranges::find(stated.work, task.work, &WorkDays::work);
    task.stated = own != stated.work.end() && task.pieces.empty();
    const std::int64_t day = programme_.minutes_a_day;
    supply::Work work{.minutes = 0, .whole_days = is_wait(task.work)};
    if (task.pieces.empty()) {
      const std::int64_t half_days = task.stated ? own->half_days : usual_half_days(task.work, is_tall(task.pour));
      const std::int64_t whole_days = (half_days + 1) / 2;
      if (work.whole_days && programme_.done)
        task.gone = std::min(whole_days, days_since(stated, since(task), programme_.done->evening));
      work.minutes = work.whole_days ? (whole_days - task.gone) * day : half_days * day / 2;
      if (is_done(task) || (task.gone > 0 && work.minutes == 0)) return behind(std::move(task));
    } else {
      work.minutes = programme_.pace.minutes_for(static_cast<std::int64_t>(task.pieces.size()));
    }
    works_.push_back(work);
    programme_.tasks.push_back(std::move(task));
    return static_cast<Index>(works_.size()) - 1;
  }
  Index behind(Task task) {
    programme_.done->tasks.push_back(std::move(task));
    return kDone;
  }
  void link(Index before, Index after, bool next_day = false) {
    if (before >= 0 && after >= 0) programme_.links.push_back({before, after, next_day});
  }
  /// The crew takes it up after what it did last.
  void follow(Index task) {
    if (task == kDone) return;
    link(last_, task);
    last_ = task;
  }
  bool is_tall(std::int32_t pour) const {
    return pour >= 0 && answer_.tallies.grout[static_cast<std::size_t>(pour)].height > limit_of("cure-before-pour");
  }

  std::vector<std::uint32_t> pieces_left(int wall, int course) {
    std::vector<std::uint32_t> pieces;
    for (const Run& run : bond::runs_in(answer_.layout, wall, course)) {
      for (std::uint32_t k = run.first_piece; k < run.first_piece + run.piece_count; ++k) {
        if (!taken_[k]) pieces.push_back(k);
        taken_[k] = true;
      }
    }
    return pieces;
  }

  /// What the log says is laid, and shores under it.
  void take_laid() {
    for (int course = 1; course <= static_cast<int>(building_.courses.size()); ++course) {
      for (int wall = 0; wall < static_cast<int>(building_.walls.size()); ++wall) {
        if (!told_.courses.contains({wall, course})) continue;
        Task laid{.work = WorkKind::Course, .wall = wall, .course = course, .pieces = pieces_left(wall, course)};
        programme_.done->units += static_cast<std::int64_t>(laid.pieces.size());
        if (!laid.pieces.empty()) behind(std::move(laid));
      }
    }
    for (const supply::Bridged& over : answer_.bridged) {
      const int wall = building_.openings[static_cast<std::size_t>(over.opening)].wall;
      if (over.shored && told_.courses.contains({wall, over.first_course}))
        behind({.work = WorkKind::Lintels, .opening = over.opening});
    }
  }

  void lay_course(int course) {
    for (int wall = 0; wall < static_cast<int>(building_.walls.size()); ++wall) {
      std::vector<std::uint32_t> pieces = pieces_left(wall, course);
      if (pieces.empty()) continue;
      const Index task = add({.work = WorkKind::Course, .wall = wall, .course = course, .pieces = std::move(pieces)});
      follow(task);
      const auto below = stands_.find({wall, course - static_cast<int>(programme_.most_courses)});
      if (below != stands_.end()) link(below->second, task, true);
      shore_before(wall, course, task);
      stands_[{wall, course}] = task;
    }
  }

  /// Beside the crew, once the jambs stand.
  void shore_before(int wall, int course, Index lintel_course) {
    for (const supply::Bridged& over : answer_.bridged) {
      const ResolvedOpening& opening = building_.openings[static_cast<std::size_t>(over.opening)];
      if (!over.shored || opening.wall != wall || over.first_course != course) continue;
      const Index task = add({.work = WorkKind::Lintels, .opening = over.opening});
      link(jambs_stand(wall, course - 1), task);
      link(task, lintel_course);
    }
  }
  Index jambs_stand(int wall, int course) const {
    for (; course >= 1; --course) {
      const auto at = stands_.find({wall, course});
      if (at != stands_.end()) return at->second;
    }
    return lines_;
  }

  /// Not higher than a day may bring, nor past the first pour, nor up to a lintel that is shored later.
  std::int64_t lead_top(const Corner& corner) const {
    const auto& pours = answer_.tallies.grout;
    std::int64_t top = programme_.most_courses;
    if (!pours.empty()) top = std::min<std::int64_t>(top, pours.front().last_course);
    for (const supply::Bridged& over : answer_.bridged) {
      const int wall = building_.openings[static_cast<std::size_t>(over.opening)].wall;
      if (over.shored && (wall == corner.arriving || wall == corner.leaving))
        top = std::min<std::int64_t>(top, over.first_course - 1);
    }
    return top;
  }
  /// Corners over course 1, racked back.
  void lay_leads() {
    for (const setout::Lead& lead : setout::leads(building_, answer_.layout)) {
      const Corner& corner = building_.corners[static_cast<std::size_t>(lead.corner)];
      std::vector<std::uint32_t> pieces;
      for (const setout::LeadCourse& course : lead.courses) {
        if (course.course == 1 || course.course > lead_top(corner)) continue;
        take_end(pieces, corner.arriving, course.course, course.arriving_units);
        take_start(pieces, corner.leaving, course.course, course.leaving_units);
      }
      if (pieces.empty()) continue;
      const Index task = add({.work = WorkKind::Leads, .corner = lead.corner, .pieces = std::move(pieces)});
      follow(task);
      for (const setout::LeadCourse& course : lead.courses) {
        if (course.course == 1 || course.course > lead_top(corner)) continue;
        stands_[{corner.arriving, course.course}] = stands_[{corner.leaving, course.course}] = task;
      }
    }
  }
  void take(std::vector<std::uint32_t>& pieces, std::uint32_t piece) {
    if (!taken_[piece]) pieces.push_back(piece);
    taken_[piece] = true;
  }
  void take_end(std::vector<std::uint32_t>& pieces, int wall, int course, std::int32_t count) {
    const auto runs = bond::runs_in(answer_.layout, wall, course);
    if (runs.empty()) return;
    const Run& run = runs.back();
    const auto most = std::min<std::uint32_t>(static_cast<std::uint32_t>(count), run.piece_count);
    for (std::uint32_t k = 0; k < most; ++k) take(pieces, run.first_piece + run.piece_count - 1 - k);
  }
  void take_start(std::vector<std::uint32_t>& pieces, int wall, int course, std::int32_t count) {
    const auto runs = bond::runs_in(answer_.layout, wall, course);
    if (runs.empty()) return;
    const Run& run = runs.front();
    const auto most = std::min<std::uint32_t>(static_cast<std::uint32_t>(count), run.piece_count);
    for (std::uint32_t k = 0; k < most; ++k) take(pieces, run.first_piece + k);
  }

  void pour_after(int course) {
    for (std::size_t k = 0; k < answer_.tallies.grout.size(); ++k) {
      const supply::GroutPour& pour = answer_.tallies.grout[k];
      if (pour.last_course != course) continue;
      const auto index = static_cast<std::int32_t>(k);
      follow(add({.work = WorkKind::MasonryCure, .pour = index}));
      for (std::size_t lift = 0; lift < pour.lift_tops.size(); ++lift)
        follow(add({.work = WorkKind::GroutLift, .pour = index, .lift = static_cast<std::int32_t>(lift) + 1}));
      if (course < static_cast<int>(building_.courses.size()))
        follow(add({.work = WorkKind::GroutCure, .pour = index}));
    }
  }

  void time() {
    const auto times = supply::task_times(works_, programme_.links, programme_.minutes_a_day);
    if (!times) return;  // links go forward only
    for (std::size_t k = 0; k < times->size(); ++k) {
      programme_.tasks[k].times = (*times)[k];
      programme_.minutes = std::max(programme_.minutes, (*times)[k].finish);
    }
  }

  const Answer& answer_;
  const Building& building_;
  Programme& programme_;
  const LogTold told_;
  std::vector<bool> taken_;
  std::vector<supply::Work> works_;
  std::map<std::pair<int, int>, Index> stands_;  // by wall and course, leads counted: the last work that laid of it
  Index last_ = kDone, lines_ = kDone;
};

/// The job's figure; else the log's own; else what is published.
void set_pace(Programme& programme, const Answer& answer) {
  const Days& stated = stated_in(answer);
  programme.own_pace = own_pace(timed_works(answer.job, answer.building, answer.layout));
  if (programme.own_pace && !stated.units_per_hour) {
    programme.pace_from = PaceFrom::Log;
    programme.pace = {1'000, programme.own_pace->each};
    const std::int64_t for_all = programme.own_pace->each * programme.pairs;
    programme.units_per_hour = std::max<std::int64_t>(1, (60'000 + for_all / 2) / for_all);
    return;
  }
  if (stated.units_per_hour) programme.pace_from = PaceFrom::Stated;
  programme.units_per_hour = stated.units_per_hour.value_or(static_cast<int>(usual_pace(programme.crew)));
  programme.pace = {programme.units_per_hour * programme.pairs, 60};
}

}  // namespace

Programme programme_of(const Answer& answer) {
  const Days& stated = stated_in(answer);
  Programme programme;
  programme.crew = stated.crew.value_or(Crew::Beginners);
  programme.pairs = stated.pairs.value_or(1);
  set_pace(programme, answer);
  programme.minutes_a_day = static_cast<std::int64_t>(stated.hours.value_or(8)) * 60;
  programme.rise_stated = stated.most_courses.has_value();
  programme.most_courses = stated.most_courses ? *stated.most_courses : courses_a_day(answer.building);
  Planner(answer, programme).plan();
  programme.batch = batch_of(answer, programme);
  fill_days(programme, answer);
  return programme;
}

}  // namespace stringcourse
