#include "laying/log.hpp"

#include <algorithm>

#include "catalogue/rules.hpp"
#include "job/strikes.hpp"
#include "measure/metres.hpp"

namespace stringcourse::laying {
namespace {

/// All that was measured of the batch, as one sample.
Sample sample_of(const Job& job, const std::vector<bool>& counts, std::vector<std::size_t>& entries,
                 std::vector<UnitSample>& rows) {
  Sample sample;
  for (std::size_t k = 0; k < job.laid.size(); ++k) {
    if (!counts[k] || !job.laid[k].units) continue;
    const UnitSample& units = *job.laid[k].units;
    sample.singles.insert(sample.singles.end(), units.singles.begin(), units.singles.end());
    if (units.together && units.row) rows.push_back(units);
    entries.push_back(k);
  }
  for (const UnitSample& row : rows) sample.together += *row.together, sample.row = sample.row + *row.row;
  return sample;
}

std::string_view course_named(const LaidEntry& entry, int& course, std::string& wall) {
  const auto take = [&](const auto& part) {
    if (part) wall = part->on, course = part->course;
  };
  take(entry.mark), take(entry.laid), take(entry.gauge), take(entry.set), take(entry.gap), take(entry.check),
      take(entry.remark), take(entry.grouted), take(entry.looked_at);
  return wall;
}

Fact unknown_opening(const FoundPlace& found, const Building& building) {
  if (!found.opening) return {};
  const FactValue name = FactValue::typed(*found.opening);
  const auto opening = std::ranges::find(building.openings, *found.opening, &ResolvedOpening::name);
  if (opening == building.openings.end()) return fact("no-opening", {name});
  return building.walls[static_cast<std::size_t>(opening->wall)].name == found.on
             ? Fact()
             : fact("opening-not-in", {name, found.on});
}

}  // namespace

std::vector<bool> entries_that_count(const Job& job) {
  std::vector<bool> counts = entries_standing(job.laid);
  for (std::size_t k = 0; k < counts.size(); ++k) {
    if (job.laid[k].strike) counts[k] = false;
  }
  return counts;
}

HowLaid how_laid(const Job& job, const Building& building) {
  const Laying laying = job.laying.value_or(Laying{});
  const bool inches = building.tape == Tape::Inches;
  HowLaid how;
  how.rules = laying.rules.value_or(inches ? WallRuleSet::Us : WallRuleSet::Uk);
  how.joints = joint_rules(building.tape, building.joint);
  // The working range is the crew's, the tolerance is not.
  if (laying.joint_least) how.joints.working_least = std::max(*laying.joint_least, how.joints.least);
  if (laying.joint_most) how.joints.working_most = std::min(*laying.joint_most, how.joints.most);
  how.beyond_working = laying.beyond_working.value_or(false);
  how.mark_reading = laying.mark_reading.value_or(inches ? Length::sixty_fourths(2) : Length::millimetres(1));
  how.hand.mark = ground::standard_doubt(how.mark_reading);
  const std::vector<bool> counts = entries_that_count(job);
  std::vector<UnitSample> rows;
  const Sample sample = sample_of(job, counts, how.batch_entries, rows);
  const Length specified = building.series.front().full;
  how.batch = batch_of(sample, specified, how.mark_reading);
  if (how.batch) how.hand.bias = metres(how.batch->mean - specified);
  if (how.batch && how.batch->spread) how.hand.unit = *how.batch->spread;
  how.spreads_measured = (how.batch && how.batch->spread) || laying.unit_spread;
  if (laying.unit_spread) how.hand.unit = metres(*laying.unit_spread);
  if (laying.joint_spread) how.hand.joint = metres(*laying.joint_spread);
  return how;
}

CourseLog::CourseLog(const Job& job, const Building& building, const std::vector<bool>& counts) {
  std::map<std::string_view, int> walls;
  for (std::size_t k = 0; k < building.walls.size(); ++k)
    walls.try_emplace(building.walls[k].name, static_cast<int>(k));
  const int courses = static_cast<int>(building.courses.size());
  const auto course_of = [&](const std::string& on, int course) {
    const auto wall = walls.find(on);
    return std::pair(wall == walls.end() || course > courses ? -1 : wall->second, course);
  };
  for (std::size_t k = 0; k < job.laid.size(); ++k) {
    const LaidEntry& entry = job.laid[k];
    if (!counts[k]) continue;
    if (entry.mark) marks_[course_of(entry.mark->on, entry.mark->course)].push_back(k);
    if (entry.laid) laid_.insert(course_of(entry.laid->on, entry.laid->course));
  }
  // What is of no wall or course here says nothing.
  std::erase_if(marks_, [](const auto& one) { return one.first.first < 0; });
  std::erase_if(laid_, [](const auto& one) { return one.first < 0; });
}

const std::vector<std::size_t>& CourseLog::marks(int wall, int course) const {
  static const std::vector<std::size_t> kNone;
  const auto found = marks_.find({wall, course});
  return found == marks_.end() ? kNone : found->second;
}

std::set<std::pair<int, int>> CourseLog::begun() const {
  std::set<std::pair<int, int>> all = laid_;
  for (const auto& [course, entries] : marks_) all.insert(course);
  return all;
}

int wall_named(const Building& building, const std::string& name) {
  for (std::size_t k = 0; k < building.walls.size(); ++k) {
    if (building.walls[k].name == name) return static_cast<int>(k);
  }
  return -1;
}

Fact unknown_in(const LaidEntry& entry, const Building& building) {
  int course = 0;
  std::string wall;
  course_named(entry, course, wall);
  if (entry.found) wall = entry.found->on;
  if (wall.empty()) return {};
  if (wall_named(building, wall) < 0) return fact("no-wall", {FactValue::typed(wall)});
  if (course > static_cast<int>(building.courses.size())) return fact("no-course", {course});
  return entry.found ? unknown_opening(*entry.found, building) : Fact();
}

std::optional<Doubtful> doubtful(Length at, Length past, const std::vector<Length>& marks, Tape tape) {
  const Length most = limit_of("head-joint-range", Tape::Inches, 1);
  if (magnitude(past) <= most) return std::nullopt;
  Doubtful found;
  found.why = fact(past < Length() ? "doubtful-short" : "doubtful-past", {magnitude(past), most});
  // Another mark: the one that the block's end lies nearest to.
  for (const Length other : marks) {
    if (other == at || magnitude(at + past - other) > most) continue;
    found.at = other, found.past = at + past - other;
    found.likely = fact(*found.past < Length() ? "likely-mark-short" : "likely-mark-past",
                        {FactValue(other, LengthForm::Both), magnitude(*found.past)});
    return found;
  }
  const bool inches = tape == Tape::Inches;
  if (past.is_multiple_of(Length::inches(1)) && magnitude(past) < Length::inches(16) && inches) {
    found.past = Length::sixteenths(past.whole_multiples(Length::inches(1)));
    found.likely =
        fact(*found.past < Length() ? "likely-sixteenths-short" : "likely-sixteenths-past", {magnitude(*found.past)});
    return found;
  }
  const Length foot = inches ? Length::feet(1) : Length::millimetres(100);
  const Length slipped = past - foot * (past + foot.half_down()).whole_multiples(foot);
  if (magnitude(slipped) <= most && magnitude(past) >= foot.half_down()) {
    const bool is_short = slipped < Length();
    found.past = slipped;
    found.likely = fact(inches ? (is_short ? "likely-feet-short" : "likely-feet-past")
                               : (is_short ? "likely-hundreds-short" : "likely-hundreds-past"),
                        {magnitude(slipped)});
  }
  return found;
}

}  // namespace stringcourse::laying
