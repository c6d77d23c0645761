#pragma once
// The programme: what is done after what, when it can start and must be done, and what each working day brings. In
// minutes of work at the stated crew's pace; waits last whole working days. One crew lays, one course of one wall after
// another; lintels are shored and cells filled beside it. What the laid log tells of is behind, and the footing
// or slab once it is read: the rest is planned from the day after the newest entry. Dates only where the job states the
// first day, or the log has one.
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "answer/finish.hpp"
#include "answer/pace.hpp"
#include "job/ordering.hpp"
#include "job/trouble.hpp"
#include "measure/date.hpp"
#include "measure/fact.hpp"
#include "supply/counts.hpp"
#include "supply/task_network.hpp"

namespace stringcourse {

struct Answer;

struct Task {
  WorkKind work = WorkKind::Boards;
  std::int32_t wall = -1, course = 0;      // Course
  std::int32_t corner = -1;                // Leads
  std::int32_t opening = -1;               // Lintels
  std::int32_t pour = -1, lift = 0;        // MasonryCure, GroutLift, GroutCure: into Tallies::grout
  std::vector<std::uint32_t> pieces = {};  // laid in it, into Layout::pieces, in order
  bool stated = false;                     // its time is the job's; else assumed, or its units' at the pace
  std::int64_t gone = 0;                   // days of a wait that are behind
  supply::TaskTimes times = {};
};

/// How high a wall stands at the end of a day.
struct Reached {
  std::int32_t wall = 0, course = 0;  // the highest that is finished; 0: none
  Length top;                         // over what course 1 stands on
  std::int32_t begun = 0;             // the highest in which a block lies: of a lead, or of a course in hand
  Length begun_top;                   // its top, likewise
  std::int32_t grouted = 0;           // the highest course up to which its pour is filled
};

struct WorkDay {
  std::int32_t number = 1;
  std::optional<Date> date;
  std::vector<std::int32_t> tasks;                              // worked at, into Programme::tasks
  std::vector<supply::UnitCount> units;                         // laid, by kind; cuts as pieces
  std::int64_t laid = 0;                                        // all of them
  std::vector<std::uint32_t> pieces;                            // the same, into Layout::pieces
  std::vector<std::pair<std::int32_t, std::int32_t>> finished;  // walls and courses of which the last one is laid
  std::int64_t batches = 0;                                     // of mortar
  std::vector<Reached> reached;                                 // by wall
  std::vector<std::int32_t> brace;                              // walls that stand ungrouted tonight
  std::vector<std::int32_t> tall;                               // walls over the height of rule "brace-over-8-ft"
  Length zone;  // keep clear of these: the highest and what the rule adds; 0: none
};

/// So much mortar is mixed at a time that it is laid within its life.
struct MortarBatch {
  std::int64_t minutes = 150;        // a batch is used within. SOURCE: rule "mortar-life"
  bool stated = false;               // that by the job
  std::int64_t blocks = 0;           // it may lay at most so many at the pace
  std::int64_t least = 0, most = 0;  // tenths of a bag of the order's binder for them, rounded up
};

/// Where the pace comes from: what is published of such a crew, the laid log, or the job.
enum class PaceFrom : std::uint8_t { Assumed, Log, Stated };

/// Units that the whole crew lays in so many minutes.
struct CrewPace {
  std::int64_t units = 6, minutes = 60;  // both above zero
  /// For so many units, rounded up to whole minutes.
  [[nodiscard]] constexpr std::int64_t minutes_for(std::int64_t count) const {
    return (count * minutes + units - 1) / units;
  }
};

/// What is behind, as the laid log and the readings tell.
struct DoneSoFar {
  std::optional<Date> evening;  // of the newest entry's day, or of the job's if that is later; none: neither has a date
  bool stated = false;          // it is the job's
  std::optional<Date> newest;   // of the log's entries and the readings
  bool poured = false;          // the footing or slab
  std::int64_t days = 0;        // working days from the job's first one to that evening
  std::int64_t units = 0;       // laid
  std::vector<Task> tasks;      // done, without times
};

struct Programme {
  Crew crew = Crew::Beginners;
  std::int64_t pairs = 1, units_per_hour = 6, minutes_a_day = 480, most_courses = 0;
  CrewPace pace;
  PaceFrom pace_from = PaceFrom::Assumed;
  std::optional<OwnPace> own_pace;  // as the laid log tells, whether or not it is the one that is used
  bool rise_stated = false;
  std::optional<DoneSoFar> done;  // none: the log tells of no work, and the job of no day
  std::optional<Date> from;       // no day is planned before it
  std::vector<Task> tasks;        // ahead
  std::vector<supply::Link> links;
  std::int64_t minutes = 0;   // from start to end
  std::vector<WorkDay> days;  // none: nothing is left
  MortarBatch batch;
  std::optional<FinishChance> chance;  // where the job says by when; none while something is dragged
};

/// Of the first day that is planned.
[[nodiscard]] inline std::int64_t first_number(const Programme& programme) {
  return programme.done ? programme.done->days + 1 : 1;
}

/// Nobody works meanwhile: something hardens, for whole days.
[[nodiscard]] constexpr bool is_wait(WorkKind work) {
  return work == WorkKind::FootingCure || work == WorkKind::MasonryCure || work == WorkKind::GroutCure;
}

[[nodiscard]] Programme programme_of(const Answer& answer);
/// Dates of the job and of its log that do not go together.
[[nodiscard]] std::vector<Finding> date_findings(const Answer& answer);

/// "lay course 3 of AB", "shore W1".
[[nodiscard]] Fact task_said(const Answer& answer, const Task& task);
/// Of work that takes more days than this one, this day's part: "lay course 3 of AB: 10 of 13 blocks".
[[nodiscard]] Fact task_said_on(const Answer& answer, const WorkDay& day, std::int32_t task);
/// "26 of 520 blocks are laid by the log, ..."; empty: it tells of no work.
[[nodiscard]] Fact done_said(const Answer& answer);
/// "The log has 6.4 blocks laid an hour, ..."; empty: it tells no pace.
[[nodiscard]] Fact own_pace_said(const Programme& programme);
/// "Mix mortar for at most 15 blocks at a time: 0.3 to 2.5 bags".
[[nodiscard]] Fact batch_said(const MortarBatch& batch);
/// What stands without grout at the end of a day; empty: nothing does.
[[nodiscard]] Fact brace_said(const Answer& answer, const WorkDay& day);
/// What stands over the height of rule "brace-over-8-ft" then, grouted or not; empty: nothing does.
[[nodiscard]] Fact tall_said(const Answer& answer, const WorkDay& day);

}  // namespace stringcourse
