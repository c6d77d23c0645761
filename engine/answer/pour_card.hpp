#pragma once
// The order in which grout goes in, lift by lift: so that one person with a hose walks least.
#include <cstdint>
#include <string>
#include <vector>

#include "job/trouble.hpp"
#include "measure/length.hpp"
#include "measure/volume.hpp"

namespace stringcourse {

struct Answer;

/// Minutes after a place was filled, between which it is consolidated again. SOURCE: rule "grout-again-when".
struct AgainWithin {
  std::int32_t from = 0, by = 0;
};
[[nodiscard]] AgainWithin again_within();

enum class GroutInto : std::uint8_t { Cell, Beam, Lintel };

/// One place that grout goes into, in one lift.
struct GroutStep {
  GroutInto into = GroutInto::Cell;
  std::int32_t wall = 0;
  std::int32_t of = -1;     // a cell's bar, into Layout::bars; a lintel's opening; a beam's course
  std::int32_t course = 1;  // up to whose top: of a cell the last of the lift, of a trough its own
  Length at;                // of a cell its bar's centre, of a trough where it starts
  std::string name;         // of a cell: its dowel's number, or "x1", "x2" where it has none; of a lintel its opening's
  Volume volume;            // of this lift
  Volume total;             // of the lift up to here, this included
  std::int32_t filled = -1, again = -1;  // into Job::laid: the last entries that say so
  friend bool operator==(const GroutStep&, const GroutStep&) = default;
};

/// One lift.
struct LiftCard {
  std::int32_t pour = 1, lift = 1;  // from the bottom; lifts within their pour
  std::int32_t first_course = 1, last_course = 1;
  Length height;
  bool again = false;            // rule "grout-again" asks for a second consolidation: it is higher than its limit
  std::vector<GroutStep> steps;  // cells, then troughs, each in the order of the walk
  Length walk;                   // of the cells' round, along the outer faces from the start corner to the last cell
  friend bool operator==(const LiftCard&, const LiftCard&) = default;
};

/// From the bottom. The walk keeps to the walls' outer faces and starts at the first corner; an interior wall is filled
/// outwards where its foot is passed. Of all ways round, the shortest to the last cell: on round, or a way forth and
/// then back the other way. Reads the answer's grout and inspection list.
[[nodiscard]] std::vector<LiftCard> pour_cards(const Answer& answer);

/// Entries of the laid log that name a cell or a line that this job has not.
[[nodiscard]] std::vector<Finding> grout_log_findings(const Answer& answer);

}  // namespace stringcourse
