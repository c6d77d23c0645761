#pragma once
// The laid log as the engine reads it: what counts, how it is laid, and readings that cannot be meant.
#include <map>
#include <optional>
#include <set>
#include <string>
#include <utility>
#include <vector>

#include "bond/layout.hpp"
#include "job/job.hpp"
#include "laying/batch.hpp"
#include "laying/correction.hpp"
#include "laying/odds.hpp"
#include "laying/verdict.hpp"
#include "walls/building.hpp"

namespace stringcourse::laying {

/// Whether each entry of the log counts: not itself a strike, not struck by another entry that stands (job/strikes.hpp;
/// a log is a set: the order of its entries says nothing).
[[nodiscard]] std::vector<bool> entries_that_count(const Job& job);

/// Whether an entry tells of what stands on concrete: units measured on their pallet do not.
[[nodiscard]] inline bool stands_on_concrete(const LaidEntry& entry) { return !entry.units && !entry.strike; }

/// How this job's walls are laid: the job's own words, or what they stand for when absent.
struct HowLaid {
  WallRuleSet rules = WallRuleSet::Us;
  JointRules joints;
  bool beyond_working = false;
  Length mark_reading;  // half width
  Workmanship hand;     // bias and spread of the batch, where it was measured
  bool spreads_measured = false;
  std::optional<Batch> batch;
  std::vector<std::size_t> batch_entries;
};
[[nodiscard]] HowLaid how_laid(const Job& job, const Building& building);

/// The log's entries by wall and course, gathered once: every course then reads its own only.
class CourseLog {
 public:
  /// `counts` by entry of the log.
  CourseLog(const Job& job, const Building& building, const std::vector<bool>& counts);
  /// Readings at marks of this course, in the log's order; indices into Job::laid.
  [[nodiscard]] const std::vector<std::size_t>& marks(int wall, int course) const;
  /// Whether it is said to be laid.
  [[nodiscard]] bool laid(int wall, int course) const { return laid_.contains({wall, course}); }
  /// Courses with a reading, or said to be laid, by wall and course.
  [[nodiscard]] std::set<std::pair<int, int>> begun() const;

 private:
  std::map<std::pair<int, int>, std::vector<std::size_t>> marks_;
  std::set<std::pair<int, int>> laid_;
};

/// Number of the wall of this name, or -1.
[[nodiscard]] int wall_named(const Building& building, const std::string& name);
/// Why this entry can say nothing of this building: "there is no wall XY". Empty: it can.
[[nodiscard]] Fact unknown_in(const LaidEntry& entry, const Building& building);

/// A reading that cannot be meant as it stands, with what it is likely to mean. Never applied by itself.
struct Doubtful {
  Fact why;                    // "1'-4" past is more than joints can take"
  Fact likely;                 // "the next mark, 8'-0" (3/16" past)?", or empty
  std::optional<Length> past;  // likely: what the reading would then be
  std::optional<Length> at;    // likely: the mark that is meant, if another
};
/// Farther from its mark than the widest joint allows: likely sixteenths given as inches, a slipped foot, an
/// inch read as millimetres, or another mark of `marks` (running distances).
[[nodiscard]] std::optional<Doubtful> doubtful(Length at, Length past, const std::vector<Length>& marks, Tape tape);

}  // namespace stringcourse::laying
