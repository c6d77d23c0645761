// What each working day brings, and how much mortar at a time.
#include <algorithm>
#include <span>

#include "answer/order_parts.hpp"
#include "answer/programme_parts.hpp"
#include "bond/layout_parts.hpp"
#include "catalogue/rules.hpp"

namespace stringcourse::planning {

Length over_foot(const Building& building, int course) {
  return top_of_course(building, course) - foot_of_course(building, 1);
}

std::vector<std::int32_t> runs_of_pieces(const Layout& layout) {
  std::vector<std::int32_t> runs(layout.pieces.size());
  for (std::size_t k = 0; k < layout.runs.size(); ++k) {
    const Run& run = layout.runs[k];
    std::fill_n(runs.begin() + run.first_piece, run.piece_count, static_cast<std::int32_t>(k));
  }
  return runs;
}

namespace {

void count_piece(std::vector<supply::UnitCount>& units, int series, const Piece& piece) {
  auto at = std::ranges::find_if(
      units, [&](const supply::UnitCount& unit) { return unit.series == series && unit.kind == piece.kind; });
  if (at == units.end()) at = units.insert(units.end(), {series, piece.kind, 0, 0});
  ++(bond::is_saw_cut(piece) ? at->pieces : at->whole);
}

std::span<const Task> tasks_done(const Programme& programme) {
  if (!programme.done) return {};
  return programme.done->tasks;
}

/// Of one course of one wall, the minutes at which its first and its last piece are laid; 0 where that is behind, below
/// where it has none.
struct CourseTimes {
  std::int64_t begun = -1, done = -1;
};
using WallTimes = std::vector<CourseTimes>;  // by course, from 0

std::vector<WallTimes> times_of_courses(const Answer& answer, const Programme& programme,
                                        const std::vector<std::int32_t>& run_of) {
  std::vector<WallTimes> times(answer.building.walls.size(), WallTimes(answer.building.courses.size()));
  const auto lay = [&](std::uint32_t piece, std::int64_t minute) {
    const Run& run = answer.layout.runs[static_cast<std::size_t>(run_of[piece])];
    CourseTimes& at = times[static_cast<std::size_t>(run.wall)][static_cast<std::size_t>(run.course - 1)];
    at.begun = at.begun < 0 ? minute : std::min(at.begun, minute);
    at.done = std::max(at.done, minute);
  };
  for (const Task& task : tasks_done(programme)) {
    for (const std::uint32_t piece : task.pieces) lay(piece, 0);
  }
  for (const Task& task : programme.tasks) {
    for (std::size_t k = 0; k < task.pieces.size(); ++k) lay(task.pieces[k], laid_by(task, k));
  }
  return times;
}

/// The highest course up to which all pours are filled by then.
std::int32_t grouted_by(const Answer& answer, const Programme& programme, std::int64_t minute) {
  std::int32_t course = 0;
  const auto fill = [&](const Task& task) {
    if (task.work != WorkKind::GroutLift) return;
    const supply::GroutPour& pour = answer.tallies.grout[static_cast<std::size_t>(task.pour)];
    if (task.lift == static_cast<std::int32_t>(pour.lift_tops.size())) course = std::max(course, pour.last_course);
  };
  for (const Task& task : tasks_done(programme)) fill(task);
  for (const Task& task : programme.tasks) {
    if (task.times.finish <= minute) fill(task);
  }
  return course;
}

Reached reached_by(const Building& building, const WallTimes& wall, std::int64_t end) {
  Reached reached;
  const auto count = static_cast<std::int32_t>(wall.size());
  const auto by_then = [&](std::int64_t minute) { return minute >= 0 && minute <= end; };
  while (reached.course < count && by_then(wall[static_cast<std::size_t>(reached.course)].done)) ++reached.course;
  for (std::int32_t course = 1; course <= count; ++course) {
    if (by_then(wall[static_cast<std::size_t>(course) - 1].begun)) reached.begun = course;
  }
  if (reached.course > 0) reached.top = over_foot(building, reached.course);
  if (reached.begun > 0) reached.begun_top = over_foot(building, reached.begun);
  return reached;
}

void stand_at_end(WorkDay& day, const Answer& answer, const Programme& programme, const std::vector<WallTimes>& times,
                  std::int64_t end) {
  const std::int32_t grouted = grouted_by(answer, programme, end);
  const Length tall = limit_of("brace-over-8-ft", answer.building.tape);
  Length highest;
  for (std::size_t wall = 0; wall < times.size(); ++wall) {
    Reached reached = reached_by(answer.building, times[wall], end);
    reached.wall = static_cast<std::int32_t>(wall), reached.grouted = grouted;
    if (reached.begun_top > tall) day.tall.push_back(reached.wall);
    if (reached.begun > grouted) {
      day.brace.push_back(reached.wall);
      highest = std::max(highest, reached.begun_top);
    }
    day.reached.push_back(reached);
  }
  if (!day.brace.empty()) day.zone = highest + limit_of("limited-access-zone", answer.building.tape);
}

}  // namespace

void fill_days(Programme& programme, const Answer& answer) {
  if (programme.tasks.empty()) return;
  const std::int64_t length = programme.minutes_a_day;
  const auto count = static_cast<std::size_t>(std::max<std::int64_t>(1, (programme.minutes + length - 1) / length));
  const std::vector<Date> dates = working_dates(stated_in(answer), programme.from, count);
  const std::vector<std::int32_t> run_of = runs_of_pieces(answer.layout);
  programme.days.resize(count);
  for (std::size_t k = 0; k < count; ++k) {
    programme.days[k].number = static_cast<std::int32_t>(first_number(programme)) + static_cast<std::int32_t>(k);
    if (!dates.empty()) programme.days[k].date = dates[k];
  }
  for (std::size_t index = 0; index < programme.tasks.size(); ++index) {
    const Task& task = programme.tasks[index];
    const std::int64_t first = task.times.start / length;
    const std::int64_t last = std::max(first, (task.times.finish + length - 1) / length - 1);
    for (std::int64_t k = first; k <= last && k < static_cast<std::int64_t>(count); ++k)
      programme.days[static_cast<std::size_t>(k)].tasks.push_back(static_cast<std::int32_t>(index));
    for (std::size_t k = 0; k < task.pieces.size(); ++k) {
      WorkDay& day = programme.days[day_of(programme, laid_by(task, k))];
      const Run& run = answer.layout.runs[static_cast<std::size_t>(run_of[task.pieces[k]])];
      count_piece(day.units, answer.building.walls[static_cast<std::size_t>(run.wall)].series,
                  answer.layout.pieces[task.pieces[k]]);
      ++day.laid;
      day.pieces.push_back(task.pieces[k]);
    }
  }
  const std::vector<WallTimes> times = times_of_courses(answer, programme, run_of);
  for (std::size_t course = 0; course < answer.building.courses.size(); ++course) {
    for (std::size_t wall = 0; wall < times.size(); ++wall) {
      const std::int64_t minute = times[wall][course].done;
      if (minute > 0)
        programme.days[day_of(programme, minute)].finished.emplace_back(static_cast<std::int32_t>(wall),
                                                                        static_cast<std::int32_t>(course) + 1);
    }
  }
  for (std::size_t k = 0; k < count; ++k) {
    WorkDay& day = programme.days[k];
    if (day.laid > 0) day.batches = (day.laid + programme.batch.blocks - 1) / programme.batch.blocks;
    stand_at_end(day, answer, programme, times, (static_cast<std::int64_t>(k) + 1) * length);
  }
}

MortarBatch batch_of(const Answer& answer, const Programme& programme) {
  MortarBatch batch;
  batch.minutes = stated_in(answer).mortar_minutes.value_or(static_cast<int>(batch.minutes));
  batch.stated = stated_in(answer).mortar_minutes.has_value();
  batch.blocks = std::max<std::int64_t>(1, programme.pace.units * batch.minutes / programme.pace.minutes);
  const std::int64_t blocks = answer.order.mortar.blocks;
  if (blocks == 0) return batch;
  const Ordering& order = ordering::stated_in(answer);
  const auto figures = ordering::mortar_figures(answer, answer.order.mortar);
  const bool chosen = order.mortar_by && std::ranges::contains(figures, *order.mortar_by, &ordering::MortarFor::by);
  const auto tenths = [&](const ordering::Fraction& bags) {
    return ordering::Fraction{bags.of * 10 * batch.blocks, bags.over * blocks}.up();
  };
  bool first = true;
  for (const ordering::MortarFor& figure : figures) {
    if (chosen && figure.by != *order.mortar_by) continue;
    batch.least = first ? tenths(figure.least) : std::min(batch.least, tenths(figure.least));
    batch.most = first ? tenths(figure.most) : std::max(batch.most, tenths(figure.most));
    first = false;
  }
  return batch;
}

}  // namespace stringcourse::planning
