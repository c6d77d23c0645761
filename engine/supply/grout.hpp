#pragma once
// Grout, pour by pour: the cells that hold a bar, and the troughs of bond beams and of lintels built of units. Of the
// block's sizes as its series has them, exact. Cells are taken as straight from bed to bed, troughs as clear from shell
// to shell: units taper and keep part of their webs and floors, so that it is more than goes in, before what is spilt.
#include <cstdint>
#include <vector>

#include "bond/layout.hpp"
#include "measure/volume.hpp"
#include "walls/building.hpp"

namespace stringcourse::supply {

/// What goes round one bar in one pour.
struct GroutColumn {
  std::uint32_t bar = 0;                           // into Layout::bars
  std::int32_t first_course = 1, last_course = 1;  // of the pour's, those that the bar passes
  std::int32_t cells = 0;                          // courses in which it has a cell of its own, not a trough's
  std::int32_t unlike = 0;           // of these, in a part whose cell is not known: a whole unit's is taken
  Volume volume = {};                // of its cells, each with the bed under it
  std::vector<Volume> by_lift = {};  // the same, lift by lift of the pour
  friend bool operator==(const GroutColumn&, const GroutColumn&) = default;
};

/// A trough without a break: of a bond beam, or of one lintel built of units or several end to end.
struct GroutTrough {
  std::int32_t wall = 0, course = 1;
  Length from, to;            // along the wall, to the nearest nanometre
  std::int32_t opening = -1;  // whose lintel it is, the first of several; -1: a bond beam's
  Volume volume = {};
  friend bool operator==(const GroutTrough&, const GroutTrough&) = default;
};

struct GroutPour {
  std::int32_t first_course = 1, last_course = 1;
  Length height;                             // from what it stands on to the top of its last course
  std::vector<std::int32_t> lift_tops = {};  // courses at whose top a lift stops, rising; the last is the pour's
  std::vector<GroutColumn> columns = {};     // by wall, then along it
  std::vector<GroutTrough> troughs = {};     // by wall, course, place
  Volume cells = {};                         // of all columns
  Volume beams = {}, lintels = {};           // troughs: a bond beam's courses, and lintels of units in other courses
  [[nodiscard]] Volume all() const { return cells + beams + lintels; }
};

/// Pours from the bottom. A job that says no pours has one, to the top. None where nothing is grouted.
/// Lifts are as high as rule "grout-lift" lets them be without its further conditions.
[[nodiscard]] std::vector<GroutPour> grout_pours(const Building& building, const Layout& layout);

/// Whether a lift so high is consolidated a second time: over the limit of rule "grout-again".
[[nodiscard]] bool is_consolidated_again(Length lift);

/// How much more is ordered than goes in, in hundredths: common practice, a stated assumption.
inline constexpr int kGroutLoss = 10;

}  // namespace stringcourse::supply
