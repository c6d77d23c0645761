#include "laying/as_laid.hpp"

#include <algorithm>
#include <map>
#include <set>
#include <tuple>

#include "bond/layout_parts.hpp"
#include "catalogue/rules.hpp"
#include "ground/as_found.hpp"
#include "measure/digits.hpp"
#include "measure/metres.hpp"
#include "setout/gauge_rod.hpp"

namespace stringcourse::laying {
namespace {

constexpr std::string_view kMarkRule = "head-joint-range";

std::string place_of(std::size_t entry) { return "/laid/" + number_text(entry); }

struct Reader {
  const Job& job;
  const Building& building;
  const Layouts& layouts;
  const CourseLog& log;
  AsLaid& found;

  Tape tape() const { return building.tape; }
  CourseAsLaid course(int wall, int number) const {
    return course_as_laid(job, building, layouts, found.how, log, wall, number);
  }
  bool usable(std::size_t k) const { return found.counts[k] && unknown_in(job.laid[k], building).empty(); }
  const std::string& wall_name(int wall) const { return building.walls[static_cast<std::size_t>(wall)].name; }
  void find(Code code, std::size_t entry, Fact says, std::string_view rule) {
    found.findings.push_back({code, place_of(entry), std::move(says), std::string(rule), HoldPoint::FirstCourse});
  }
};

FactValue both(Length length) { return {length, LengthForm::Both}; }

void find_unusable(Reader& reader) {
  for (std::size_t k = 0; k < reader.job.laid.size(); ++k) {
    const Fact why = reader.found.counts[k] ? unknown_in(reader.job.laid[k], reader.building) : Fact();
    if (!why.empty()) reader.find("laid-entry-unknown", k, fact("laid-entry-unknown", {why}), "");
  }
}

/// "3/16\" past (Ann)"
Fact reading_said(const LaidEntry& entry) {
  const MarkReading& one = *entry.mark;
  const Length past = one.past ? *one.past : *one.read - one.at, size = magnitude(past);
  if (entry.by.empty()) return fact(past < Length() ? "read-short" : "read-past", {size});
  return fact(past < Length() ? "read-short-by" : "read-past-by", {size, entry.by});
}

void say_marks(Reader& reader, const CourseAsLaid& course) {
  for (const WallMark& mark : course.marks) {
    if (mark.entries.empty()) continue;
    const FactValue at = both(mark.mark.at), on = course_name(reader.building, course.wall, course.course);
    if (mark.doubtful) {
      const Fact likely = mark.doubtful->likely.empty() ? Fact() : fact("is-it", {mark.doubtful->likely});
      reader.find("mark-reading-doubtful", mark.entries.back(),
                  fact("mark-reading-doubtful", {at, on, mark.doubtful->why, likely}), kMarkRule);
    } else if (mark.state == WallMark::State::Disputed) {
      std::vector<Fact> all;
      for (const std::size_t entry : mark.entries) all.push_back(reading_said(reader.job.laid[entry]));
      reader.find("mark-read-twice", mark.entries.back(),
                  fact("mark-read-twice", {at, on, listed(FactValue::Kind::Commas, all)}), kMarkRule);
    }
  }
}

void say_lost(Reader& reader, const CourseAsLaid& course) {
  if (course.run < 0) return;
  const RunAsLaid& run = course.runs[static_cast<std::size_t>(course.run)];
  std::size_t entry = 0;
  bool any = false;
  for (const WallMark& mark : course.marks) {
    if (mark.run == course.run && !mark.entries.empty()) entry = mark.entries.back(), any = true;
  }
  for (const Lost& lost : run.lost) {
    if (any)
      reader.find("joints-lose", entry, fact("joints-lose", {lost_said(lost)}),
                  lost.what == Lost::What::Bar ? "bar-clearance" : "running-bond");
  }
  if (any && run.next.what == Correction::What::CannotBe) {
    reader.find("course-cannot-close", entry,
                fact(run.past < Length() ? "course-cannot-close-short" : "course-cannot-close-past",
                     {magnitude(run.past), course_name(reader.building, course.wall, course.course)}),
                kMarkRule);
  }
}

void read_courses(Reader& reader) {
  std::set<std::size_t> met;  // readings that belong to a mark
  for (const auto& [wall, course] : reader.log.begun()) {
    reader.found.begun.push_back(reader.course(wall, course));
    const CourseAsLaid& read = reader.found.begun.back();
    for (const WallMark& mark : read.marks) met.insert(mark.entries.begin(), mark.entries.end());
    say_marks(reader, read);
    say_lost(reader, read);
  }
  for (std::size_t k = 0; k < reader.job.laid.size(); ++k) {
    if (!reader.usable(k) || !reader.job.laid[k].mark || met.contains(k)) continue;
    const MarkReading& reading = *reader.job.laid[k].mark;
    reader.find("no-such-mark", k, fact("no-such-mark", {both(reading.at), reading.course, reading.on}), kMarkRule);
  }
}

void find_next_courses(Reader& reader) {
  std::set<std::pair<int, int>> finished;
  for (const CourseAsLaid& course : reader.found.begun) {
    if (course.finished) finished.emplace(course.wall, course.course);
  }
  for (std::size_t wall = 0; wall < reader.building.walls.size(); ++wall) {
    int next = 0;
    for (int course = 1; course <= static_cast<int>(reader.building.courses.size()) && next == 0; ++course) {
      if (!finished.contains({static_cast<int>(wall), course})) next = course;
    }
    reader.found.next_course.push_back(next);
  }
}

/// Each wall's next course and the one after it.
void take_in_hand(Reader& reader) {
  for (std::size_t wall = 0; wall < reader.found.next_course.size(); ++wall) {
    const int next = reader.found.next_course[wall];
    for (int course = next; next > 0 && course <= std::min(next + 1, static_cast<int>(reader.building.courses.size()));
         ++course) {
      reader.found.at_hand.push_back(reader.course(static_cast<int>(wall), course));
    }
  }
}

/// What must be met next above this course, on this wall: the course whose top it stands on, and its name.
std::pair<int, Fact> next_height(const Building& building, int wall, int above) {
  for (int course = above + 1; course <= static_cast<int>(building.courses.size()); ++course) {
    const Course& one = building.courses[static_cast<std::size_t>(course - 1)];
    for (const ResolvedOpening& opening : building.openings) {
      if (opening.wall != wall) continue;
      if (opening.first_course - 1 == course && opening.use == OpeningUse::Window)
        return {course, fact("sill-of", {opening.name})};
      if (opening.last_course == course) return {course, fact("head-of", {opening.name})};
    }
    if (one.bond_beam && course > above + 1) return {course - 1, fact("bed-of-bond-beam")};
  }
  const int top = static_cast<int>(building.courses.size());
  return above < top ? std::pair{top, fact("top-of-wall")} : std::pair{0, Fact()};
}

/// By wall, the highest course read; of one course the last reading.
std::map<int, GaugeAsLaid> last_gauges(const Reader& reader) {
  std::map<int, GaugeAsLaid> last;
  for (std::size_t k = 0; k < reader.job.laid.size(); ++k) {
    const auto& gauge = reader.job.laid[k].gauge;
    if (!gauge || !reader.usable(k)) continue;
    const GaugeAsLaid one{k, wall_named(reader.building, gauge->on), gauge->course, gauge->high, 0, {}, {}, {}};
    const auto [known, first] = last.try_emplace(one.wall, one);
    if (!first && one.course >= known->second.course) known->second = one;
  }
  return last;
}

void read_gauges(Reader& reader) {
  for (auto& [wall, last] : last_gauges(reader)) {
    std::tie(last.to_course, last.to_what) = next_height(reader.building, last.wall, last.course);
    const auto& courses = reader.building.courses;
    if (last.to_course > last.course) {
      BedsWanted wanted;
      wanted.now = courses[static_cast<std::size_t>(last.course - 1)].top + last.high;
      wanted.target = courses[static_cast<std::size_t>(last.to_course - 1)].top;
      for (int course = last.course + 1; course <= last.to_course; ++course) {
        last.courses.push_back(course);
        wanted.units.push_back(courses[static_cast<std::size_t>(course - 1)].unit_height);
      }
      wanted.bed = reader.building.joint, wanted.step = tape_step(reader.tape());
      wanted.either_way = limit_of("beds-to-height", reader.tape());
      last.beds = equal_beds(wanted);
      if (!last.beds)
        reader.find("beds-cannot-meet", last.entry,
                    fact("beds-cannot-meet",
                         {wanted.bed, wanted.either_way, reader.wall_name(wall), last.to_what, last.courses.size()}),
                    "beds-to-height");
    }
    reader.found.gauges.push_back(std::move(last));
  }
}

void read_sets(Reader& reader) {
  const Length least = limit_of("first-bed"),
               wanted_gap = reader.tape() == Tape::Inches ? Length::sixteenths(1) : Length::millimetres(2);
  for (std::size_t k = 0; k < reader.job.laid.size(); ++k) {
    const auto& set = reader.job.laid[k].set;
    if (!set || !reader.usable(k)) continue;
    SetAsLaid one{k, wall_named(reader.building, set->on), set->course, {}, {}};
    one.advice = advise({{set->near_outer, set->near_inner, set->far_outer, set->far_inner},
                         set->bed,
                         least,
                         tape_step(reader.tape())});
    if (set->line_gap) one.from_line = *set->line_gap - wanted_gap;
    reader.found.sets.push_back(std::move(one));
  }
}

/// The opening of this course that a gap lies in, by more than a joint; -1: none.
int opening_in(const Reader& reader, int wall, const GapReading& gap) {
  const Length joint = reader.building.joint, to = gap.at + gap.measured;
  for (std::size_t k = 0; k < reader.building.openings.size(); ++k) {
    const ResolvedOpening& opening = reader.building.openings[k];
    if (opening.wall != wall || gap.course < opening.first_course || gap.course > opening.last_course) continue;
    const Length from = opening.from_in(gap.course).distance_from_start(),
                 end = opening.to_in(gap.course).distance_from_start();
    if (std::min(to, end) - std::max(gap.at, from) > joint) return static_cast<int>(k);
  }
  return -1;
}

/// Whether the gap's ends have joints: none where it begins or ends at a jamb's or a free end's face. An end is taken
/// for the run's within an inch.
void put_ends(Gap& gap, const Reader& reader, int wall, int course) {
  const Length end = gap.at + gap.measured;
  for (const Run& run : bond::runs_in(reader.layouts.now, wall, course)) {
    if (magnitude(gap.at - run.start) <= Length::inches(1)) gap.joint_at_start = has_joint(run.at_start);
    if (magnitude(end - run.end) <= Length::inches(1)) gap.joint_at_end = has_joint(run.at_end);
  }
}

Gap gap_of(const Reader& reader, int wall, const GapReading& reading) {
  const Building& building = reader.building;
  const Series& series = building.series_of(building.walls[static_cast<std::size_t>(wall)]);
  const auto& batch = reader.found.how.batch;
  const JointRules& joints = reader.found.how.joints;
  Gap gap;
  gap.measured = reading.measured, gap.at = reading.at;
  gap.unit = batch && &series == &building.series.front() ? batch->mean : series.full, gap.half = series.half;
  gap.joint = joints.joint, gap.least_joint = joints.working_least, gap.most_joint = joints.working_most;
  gap.step = joints.step, gap.least_piece = building.least_piece;
  gap.has_half = std::ranges::contains(building.stocked, UnitKind::Half);
  gap.below = head_joints(reader.layouts.now, wall, reading.course - 1);
  gap.least_lap = series.least_lap(), gap.short_lap = series.short_lap_below();
  put_ends(gap, reader, wall, reading.course);
  return gap;
}

void say_gap(Reader& reader, std::size_t k, const GapReading& reading, const GapAsLaid& gap) {
  if (gap.opening >= 0) {
    const std::string& opening = reader.building.openings[static_cast<std::size_t>(gap.opening)].name;
    reader.find("gap-in-opening", k, fact("gap-in-opening", {reading.measured, both(reading.at), opening}), kMarkRule);
  } else if (!gap.closure) {
    reader.find("gap-cannot-close", k, fact("gap-cannot-close", {reading.measured}), kMarkRule);
  } else if (gap.closure->lost_over) {
    reader.find("closure-loses-lap", k,
                fact("closure-loses-lap", {reading.measured, gap.closure->lost_lap, both(*gap.closure->lost_over)}),
                "running-bond");
  }
}

void read_gaps(Reader& reader) {
  for (std::size_t k = 0; k < reader.job.laid.size(); ++k) {
    const auto& reading = reader.job.laid[k].gap;
    if (!reading || !reader.usable(k)) continue;
    GapAsLaid one{k, wall_named(reader.building, reading->on), reading->course, reading->at, reading->measured, {}, -1};
    one.opening = opening_in(reader, one.wall, *reading);
    if (one.opening < 0) one.closure = closure_of(gap_of(reader, one.wall, *reading));
    say_gap(reader, k, *reading, one);
    reader.found.gaps.push_back(std::move(one));
  }
}

/// The sentence of a check whose limits are not kept.
std::string_view off_limits(CheckKind what) {
  switch (what) {
    case CheckKind::Plumb: return "plumb-off";
    case CheckKind::Level: return "level-off";
    case CheckKind::Line: return "line-off";
    case CheckKind::BedJoint: return "bed-joint-off";
    case CheckKind::HeadJoint: return "head-joint-off";
    case CheckKind::Position: return "position-off";
  }
  return {};
}

/// A bed joint's limits: the first course's, or so much either way of the bed as planned.
void limit_bed(CheckAsLaid& one, const WallCheck& check, const Reader& reader, const WallRules& rules) {
  if (check.course == 1) {
    const ground::BedRange range = ground::first_bed_range(ground::first_course_of(reader.job));
    one.allowed_least = range.least, one.allowed_most = range.most, one.rule = "first-bed";
    return;
  }
  const Length joint = reader.building.joint, either = limit_of(rules.bed_joint);
  one.allowed_least = joint - either, one.allowed_most = joint + either, one.rule = rules.bed_joint;
}

/// Limits of one check, by the rules chosen.
void limit(CheckAsLaid& one, const WallCheck& check, const Reader& reader) {
  const HowLaid& how = reader.found.how;
  const WallRules rules = wall_rules(how.rules);
  const auto either_way = [&](std::string_view rule) {
    const Length over =
        check.over.value_or(reader.tape() == Tape::Inches ? Length::feet(10) : Length::millimetres(5000));
    one.allowed_most = allowed(tolerance_of(rule), over), one.allowed_least = -one.allowed_most;
    one.rule = rule;
  };
  switch (check.what) {
    case CheckKind::Plumb: return either_way(rules.plumb);
    case CheckKind::Level: return either_way(rules.bed_level);
    case CheckKind::Line: return either_way(rules.true_to_line);
    case CheckKind::Position: return either_way(rules.position);
    case CheckKind::HeadJoint:
      one.allowed_least = how.joints.least, one.allowed_most = how.joints.most, one.rule = "head-joint-range";
      return;
    case CheckKind::BedJoint: return limit_bed(one, check, reader, rules);
  }
}

void read_checks(Reader& reader) {
  for (std::size_t k = 0; k < reader.job.laid.size(); ++k) {
    const auto& check = reader.job.laid[k].check;
    if (!check || !reader.usable(k)) continue;
    CheckAsLaid one;
    one.entry = k, one.wall = wall_named(reader.building, check->on), one.course = check->course;
    limit(one, *check, reader);
    one.limits = {metres(one.allowed_least), metres(one.allowed_most)};
    const Length reading = check->may_be_wrong.value_or(reader.found.how.mark_reading);
    // A place was taped: the tape's own permitted error over the distance counts too.
    const double doubt = check->what == CheckKind::Position && check->over
                             ? tape_doubt(ground::tape_of(reader.job), *check->over, reading)
                             : ground::standard_doubt(reading);
    one.doubt = length_of(2 * doubt);
    one.verdict = judged(metres(check->off), one.limits, 2 * doubt);
    one.conformance = doubt > 0                      ? conformance(metres(check->off), one.limits, doubt)
                      : one.verdict == Verdict::Fits ? 1
                                                     : 0;
    if (one.verdict == Verdict::DoesNotFit)
      reader.find("out-of-tolerance", k,
                  fact(off_limits(check->what), {course_name(reader.building, one.wall, one.course), check->off,
                                                 one.allowed_least, one.allowed_most}),
                  one.rule);
    reader.found.checks.push_back(std::move(one));
  }
}

/// "2026-05-09" of "2026-05-09 14:20"; empty for any other form.
std::string_view day_of(std::string_view when) {
  constexpr std::string_view kForm = "dddd-dd-dd";
  if (when.size() < kForm.size()) return "";
  for (std::size_t k = 0; k < kForm.size(); ++k) {
    if (kForm[k] == 'd' ? when[k] < '0' || when[k] > '9' : when[k] != kForm[k]) return "";
  }
  return when.substr(0, kForm.size());
}

void count(Reader& reader) {
  Progress& progress = reader.found.progress;
  progress.units_all = static_cast<int>(reader.layouts.now.pieces.size());
  for (const CourseAsLaid& course : reader.found.begun) {
    for (const RunAsLaid& run : course.runs) progress.units_laid += run.finished ? run.pieces : run.laid;
  }
  std::set<std::string_view> days;
  for (std::size_t k = 0; k < reader.job.laid.size(); ++k) {
    if (!reader.usable(k) || !(reader.job.laid[k].mark || reader.job.laid[k].laid)) continue;
    if (const std::string_view day = day_of(reader.job.laid[k].when); !day.empty()) days.insert(day);
  }
  progress.days = static_cast<int>(days.size());
  if (progress.days == 0) return;
  progress.per_day = progress.units_laid / progress.days;
  const int left = progress.units_all - progress.units_laid;
  if (progress.per_day > 0) progress.days_left = (left + progress.per_day - 1) / progress.per_day;
}

}  // namespace

std::string course_name(const Building& building, int wall, int course) {
  return building.walls[static_cast<std::size_t>(wall)].name + "-" + number_text(course);
}

AsLaid as_laid(const Job& job, const Building& building, const Layouts& layouts) {
  AsLaid found;
  found.how = how_laid(job, building);
  found.counts = entries_that_count(job);
  const CourseLog log(job, building, found.counts);
  Reader reader{job, building, layouts, log, found};
  find_unusable(reader);
  read_courses(reader);
  find_next_courses(reader);
  take_in_hand(reader);
  read_gauges(reader);
  read_sets(reader);
  read_gaps(reader);
  read_checks(reader);
  count(reader);
  return found;
}

}  // namespace stringcourse::laying
