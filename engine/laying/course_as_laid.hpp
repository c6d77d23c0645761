#pragma once
// One course of one wall while it is laid: its marks, what was read at them, and the joints that bring it back.
#include <optional>
#include <string>
#include <vector>

#include "laying/log.hpp"
#include "setout/marks.hpp"

namespace stringcourse::laying {

/// One running mark, as it is met at the wall.
struct WallMark {
  setout::Mark mark;
  int run = -1;          // BlockEnd: index into CourseAsLaid::runs
  int units = 0;         // BlockEnd: units of the run laid when its end is here
  bool to_read = false;  // a bay's, or the run's last: here past or short is read
  bool closes = false;   // BlockEnd: of the unit that closes the run
  enum class State { Unread, Read, Doubtful, Disputed } state = State::Unread;
  std::optional<Length> past;        // as last read
  std::vector<std::size_t> entries;  // of Job::laid, those that count; the last one is used
  std::optional<Doubtful> doubtful;
};

/// What the next joints will not keep.
struct Lost {
  enum class What { Bar, Lap } what = What::Bar;
  Length at;  // the bar's centre, or the joint below that is lapped too little
};

/// One stretch without a break.
struct RunAsLaid {
  Length start, end;
  int pieces = 0;
  int joints = 0;
  int laid = 0;  // units up to the last mark that was read
  bool finished = false;
  Length past;                        // at that mark; zero at the run's start
  std::vector<std::size_t> ahead;     // marks still to be met, indices into CourseAsLaid::marks
  Bias bias;                          // what each unit adds, as learned so far
  Length bias_taken;                  // taken off over the next bay, in whole steps
  Correction next;                    // the next joints; CannotBe with no bays where the run is finished
  std::optional<Correction> instead;  // beside a saw cut: units laid again
  std::vector<Lost> lost;
  std::optional<ClosingJoint> closing;  // one joint for the whole run, with the units as measured
};

struct CourseAsLaid {
  int wall = 0, course = 1;
  bool finished = false;
  std::vector<WallMark> marks;  // in order along the wall
  std::vector<RunAsLaid> runs;
  int run = -1;  // the one that is laid now: the first unfinished, or -1
};

/// A reading that is being tried and is not in the log yet.
struct Trial {
  Length at, past;
};

/// What a course is read against: the layout as it is, and the one that was printed before something was found
/// otherwise (or none). A reading at a mark of the latter is one of the same unit's end.
struct Layouts {
  const Layout& now;
  const Layout* printed = nullptr;
};

/// `log` gathered once for all courses; or, for one course alone, `counts` by entry of the log.
[[nodiscard]] CourseAsLaid course_as_laid(const Job& job, const Building& building, const Layouts& layouts,
                                          const HowLaid& how, const CourseLog& log, int wall, int course,
                                          std::optional<Trial> trial = {});
[[nodiscard]] CourseAsLaid course_as_laid(const Job& job, const Building& building, const Layouts& layouts,
                                          const HowLaid& how, const std::vector<bool>& counts, int wall, int course,
                                          std::optional<Trial> trial = {});

/// Centres of a course's head joints, in order along its wall; none below the first course.
[[nodiscard]] std::vector<Length> head_joints(const Layout& layout, int wall, int course);

/// What to do next in this run, in words: "next 3 joints 5/16\"", "cut the next unit 1/2\" shorter, then joints 3/8\"",
/// "lift the last 2 units; joints 1/4\" from there", "no joints bring it back". Empty where the run is finished.
[[nodiscard]] Fact next_said(const RunAsLaid& run);
[[nodiscard]] Fact correction_said(const Correction& next);
/// "the bar at 8'-0 1/8\""
[[nodiscard]] Fact lost_said(const Lost& lost);

/// The chance that the closure of the run now being laid ends inside the joint tolerance: that its two joints can still
/// take what the course is past or short. Seeded.
struct ClosureOdds {
  Odds with_marks, without;
  int units = 0;
  Length past_most, short_most;
};
[[nodiscard]] std::optional<ClosureOdds> closure_odds(const CourseAsLaid& course, const HowLaid& how,
                                                      const Building& building, int courses, std::uint64_t seed);

}  // namespace stringcourse::laying
