#include "laying/as_laid.hpp"

#include <algorithm>
#include <map>
#include <set>
#include <tuple>

#include "job/words.hpp"
#include "measure/metres.hpp"
#include "setout/gauge_rod.hpp"
#include "setout/places.hpp"

namespace stringcourse::laying {
namespace {

constexpr std::string_view kMarkRule = "a mark at every third unit; a joint is 1/8 to 3/4 in (TMS 602, as others quote it)";

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
  void find(std::string code, std::size_t entry, std::string text, std::string_view rule) {
    found.findings.push_back({std::move(code), place_of(entry), std::move(text), std::string(rule), HoldPoint::FirstCourse});
  }
};

void find_unusable(Reader& reader) {
  for (std::size_t k = 0; k < reader.job.laid.size(); ++k) {
    const std::string why = reader.found.counts[k] ? unknown_in(reader.job.laid[k], reader.building) : "";
    if (!why.empty()) reader.find("laid-entry-unknown", k, "This entry is left out: " + why + ". Is it of another job?", "");
  }
}

void say_marks(Reader& reader, const CourseAsLaid& course) {
  for (const WallMark& mark : course.marks) {
    if (mark.entries.empty()) continue;
    const std::string where = "At " + both_forms(mark.mark.at, reader.tape()) + " on " + course_name(reader.building, course.wall, course.course);
    if (mark.doubtful) {
      reader.find("mark-reading-doubtful", mark.entries.back(),
                  where + ": " + mark.doubtful->why + "." + (mark.doubtful->likely.empty() ? "" : " Is it " + mark.doubtful->likely) + " It is left out until it is read again or struck.", kMarkRule);
    } else if (mark.state == WallMark::State::Disputed) {
      std::string all;
      for (const std::size_t entry : mark.entries) {
        const MarkReading& one = *reader.job.laid[entry].mark;
        const Length past = one.past ? *one.past : *one.read - one.at;
        all += (all.empty() ? "" : ", ") + tape_text(magnitude(past), reader.tape()) + (past < Length() ? " short" : " past") + (reader.job.laid[entry].by.empty() ? "" : " (" + reader.job.laid[entry].by + ")");
      }
      reader.find("mark-read-twice", mark.entries.back(), where + " readings disagree: " + all + ". The last is used; strike the wrong one.", kMarkRule);
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
  for (const std::string& lost : run.lost) {
    if (any) reader.find("joints-lose", entry, "No joints from here keep " + lost + ".", "clearance of the grout; lap of a quarter unit");
  }
  if (any && run.next.what == Correction::What::CannotBe) {
    reader.find("course-cannot-close", entry, "From " + tape_text(magnitude(run.past), reader.tape()) + (run.past < Length() ? " short" : " past") + " no joints within the limits, no cut and no laying again bring " + course_name(reader.building, course.wall, course.course) + " back before its end.", kMarkRule);
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
    reader.find("no-such-mark", k,
                "There is no block end at " + both_forms(reading.at, reader.tape()) + " in course " + number_text(reading.course) + " of " +
                    reading.on + ": the reading is left out. The layout may have changed since.",
                kMarkRule);
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
    for (int course = next; next > 0 && course <= std::min(next + 1, static_cast<int>(reader.building.courses.size())); ++course) {
      reader.found.at_hand.push_back(reader.course(static_cast<int>(wall), course));
    }
  }
}

/// What must be met next above this course, on this wall: the course whose top it stands on, and its name.
std::pair<int, std::string> next_height(const Building& building, int wall, int above) {
  for (int course = above + 1; course <= static_cast<int>(building.courses.size()); ++course) {
    const Course& one = building.courses[static_cast<std::size_t>(course - 1)];
    for (const ResolvedOpening& opening : building.openings) {
      if (opening.wall != wall) continue;
      if (opening.first_course - 1 == course && opening.use == OpeningUse::Window) return {course, "sill of " + opening.name};
      if (opening.last_course == course) return {course, "head of " + opening.name};
    }
    if (one.bond_beam && course > above + 1) return {course - 1, "bed of the bond beam"};
  }
  const int top = static_cast<int>(building.courses.size());
  return above < top ? std::pair{top, std::string("top of the wall")} : std::pair{0, std::string()};
}

/// By wall, the highest course read; of one course the last reading.
std::map<int, GaugeAsLaid> last_gauges(const Reader& reader) {
  std::map<int, GaugeAsLaid> last;
  for (std::size_t k = 0; k < reader.job.laid.size(); ++k) {
    const auto& gauge = reader.job.laid[k].gauge;
    if (!gauge || !reader.usable(k)) continue;
    const GaugeAsLaid one{k, wall_of(reader.building, gauge->on), gauge->course, gauge->high, 0, "", {}, {}};
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
      wanted.either_way = reader.tape() == Tape::Inches ? Length::sixteenths(2) : Length::millimetres(3);
      last.beds = equal_beds(wanted);
      if (!last.beds) reader.find("beds-cannot-meet", last.entry, "Beds of " + tape_text(wanted.bed, reader.tape()) + " within " + tape_text(wanted.either_way, reader.tape()) + " do not bring " + reader.building.walls[static_cast<std::size_t>(wall)].name + " to the " + last.to_what + " in " + number_text(last.courses.size()) + " courses.", "beds +-1/8 in (TMS 602, as others quote it)");
    }
    reader.found.gauges.push_back(std::move(last));
  }
}

void read_sets(Reader& reader) {
  const Length least = Length::sixteenths(4), wanted_gap = reader.tape() == Tape::Inches ? Length::sixteenths(1) : Length::millimetres(2);
  for (std::size_t k = 0; k < reader.job.laid.size(); ++k) {
    const auto& set = reader.job.laid[k].set;
    if (!set || !reader.usable(k)) continue;
    SetAsLaid one{k, wall_of(reader.building, set->on), set->course, {}, {}};
    one.advice = advise({{set->near_outer, set->near_inner, set->far_outer, set->far_inner}, set->bed, least, tape_step(reader.tape())});
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
    const Length from = opening.from_in(gap.course).distance_from_start(), end = opening.to_in(gap.course).distance_from_start();
    if (std::min(to, end) - std::max(gap.at, from) > joint) return static_cast<int>(k);
  }
  return -1;
}

/// Whether the gap's ends have joints: none where it begins or ends at a jamb's or a free end's face. An end is taken for
/// the run's within an inch.
void put_ends(Gap& gap, const Reader& reader, int wall, int course) {
  const Length end = gap.at + gap.measured;
  for (const Run& run : setout::runs_in(reader.layouts.now, wall, course)) {
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
  gap.has_half = std::ranges::contains(building.stocked, Kind::Half);
  gap.below = head_joints(reader.layouts.now, wall, reading.course - 1);
  gap.least_lap = series.least_lap(), gap.short_lap = series.short_lap_below();
  put_ends(gap, reader, wall, reading.course);
  return gap;
}

void say_gap(Reader& reader, std::size_t k, const GapReading& reading, const GapAsLaid& gap) {
  const std::string size = tape_text(reading.measured, reader.tape());
  if (gap.opening >= 0) {
    reader.find("gap-in-opening", k,
                "The gap of " + size + " at " + both_forms(reading.at, reader.tape()) + " lies in " +
                    reader.building.openings[static_cast<std::size_t>(gap.opening)].name + ": nothing is laid there. Was another mark meant?",
                kMarkRule);
  } else if (!gap.closure) {
    reader.find("gap-cannot-close", k,
                "No piece that keeps the rules fills a gap of " + size + " with joints in range. Lay the units beside it again.", kMarkRule);
  } else if (gap.closure->lost_over) {
    reader.find("closure-loses-lap", k,
                "Whatever closes the gap of " + size + " puts a joint " + tape_text(gap.closure->lost_lap, reader.tape()) + " from the one below at " +
                    both_forms(*gap.closure->lost_over, reader.tape()) + ". Lift the units beside it and lay them again.",
                "lap of a quarter unit or more (TMS 402 definition)");
  }
}

void read_gaps(Reader& reader) {
  for (std::size_t k = 0; k < reader.job.laid.size(); ++k) {
    const auto& reading = reader.job.laid[k].gap;
    if (!reading || !reader.usable(k)) continue;
    GapAsLaid one{k, wall_of(reader.building, reading->on), reading->course, reading->at, reading->measured, {}, -1};
    one.opening = opening_in(reader, one.wall, *reading);
    if (one.opening < 0) one.closure = closure_of(gap_of(reader, one.wall, *reading));
    say_gap(reader, k, *reading, one);
    reader.found.gaps.push_back(std::move(one));
  }
}

std::string_view check_name(CheckKind what) {
  switch (what) {
    case CheckKind::Plumb: return "Plumb";
    case CheckKind::Level: return "Level";
    case CheckKind::Line: return "Line";
    case CheckKind::BedJoint: return "Bed joint";
    case CheckKind::HeadJoint: return "Head joint";
    case CheckKind::Position: return "Position";
  }
  return "";
}

/// Limits of one check, by the rules chosen.
void limit(CheckAsLaid& one, const WallCheck& check, const Reader& reader) {
  const HowLaid& how = reader.found.how;
  const WallRules rules = wall_rules(how.rules);
  const bool us = how.rules == RuleSet::Us;
  const auto either_way = [&](const Tolerance& tolerance, std::string_view name) {
    const Length over = check.over.value_or(reader.tape() == Tape::Inches ? Length::feet(10) : Length::millimetres(5000));
    one.allowed_most = allowed(tolerance, over), one.allowed_least = -one.allowed_most;
    one.rule = std::string(name) + (us ? " within 1/4 in in 10 ft, 1/2 in at most (TMS 602, as others quote it)" : tolerance.over == Length::millimetres(10) ? " within 10 mm in 5 m, 15 mm at most (UK warranty practice, as others quote it)" : " within 8 mm in 5 m, 12 mm at most (UK warranty practice, as others quote it)");
  };
  switch (check.what) {
    case CheckKind::Plumb: return either_way(rules.plumb, "plumb");
    case CheckKind::Level: return either_way(rules.bed_level, "level");
    case CheckKind::Line: return either_way(rules.true_to_line, "true to line");
    case CheckKind::Position:
      either_way(rules.position, "");
      one.rule = "place in plan within 1/2 in in 20 ft, 3/4 in at most (TMS 602, as others quote it)";
      return;
    case CheckKind::HeadJoint:
      one.allowed_least = how.joints.least, one.allowed_most = how.joints.most, one.rule = "head joint 1/8 to 3/4 in (TMS 602, as others quote it)";
      return;
    case CheckKind::BedJoint: {
      const Length joint = reader.building.joint;
      if (check.course == 1) {
        const bool grouted = reader.job.ground && reader.job.ground->first_course_grouted.value_or(false);
        one.allowed_least = Length::sixteenths(4), one.allowed_most = grouted ? Length::sixteenths(20) : Length::sixteenths(12);
        one.rule = std::string("first bed 1/4 to ") + (grouted ? "1 1/4 in, grouted on concrete" : "3/4 in") + " (TMS 602, as others quote it)";
        return;
      }
      const Length either = us ? Length::sixteenths(2) : Length::millimetres(5);
      one.allowed_least = joint - either, one.allowed_most = joint + either;
      one.rule = us ? "bed +-1/8 in (TMS 602, as others quote it)" : "bed within 5 mm of the mean, taken as planned (UK warranty practice, as others quote it)";
    }
  }
}

void read_checks(Reader& reader) {
  for (std::size_t k = 0; k < reader.job.laid.size(); ++k) {
    const auto& check = reader.job.laid[k].check;
    if (!check || !reader.usable(k)) continue;
    CheckAsLaid one;
    one.entry = k, one.wall = wall_of(reader.building, check->on), one.course = check->course;
    limit(one, *check, reader);
    one.limits = {metres(one.allowed_least), metres(one.allowed_most)};
    const Length reading = check->may_be_wrong.value_or(reader.found.how.mark_reading);
    // A place was taped: the tape's own permitted error over the distance counts too.
    const bool class_two = reader.job.ground && reader.job.ground->tape == TapeMake::ClassTwo;
    const double doubt = check->what == CheckKind::Position && check->over ? tape_doubt(class_two ? ground::TapeClass::ClassTwo : ground::TapeClass::Steel, *check->over, reading)
                                                                          : ground::standard_doubt(reading);
    one.doubt = length_of(2 * doubt);
    one.verdict = judged(metres(check->off), one.limits, 2 * doubt);
    one.conformance = doubt > 0 ? conformance(metres(check->off), one.limits, doubt) : one.verdict == Verdict::Fits ? 1 : 0;
    if (one.verdict == Verdict::DoesNotFit) reader.find("out-of-tolerance", k, std::string(check_name(check->what)) + " on " + course_name(reader.building, one.wall, one.course) + ": " + tape_text(check->off, reader.tape()) + " lies outside " + tape_text(one.allowed_least, reader.tape()) + " to " + tape_text(one.allowed_most, reader.tape()) + ".", one.rule);
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

std::string course_name(const Building& building, int wall, int course) { return building.walls[static_cast<std::size_t>(wall)].name + "-" + number_text(course); }

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
