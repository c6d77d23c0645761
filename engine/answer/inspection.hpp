#pragma once
// What is looked at before each pour: every bar that it fills round, with its cleanout and the floors of units that it
// has to pass; beams and lintels of units. Afterwards none of it can be seen.
#include <cstdint>
#include <string>
#include <vector>

#include "job/laid.hpp"
#include "measure/notation.hpp"
#include "supply/lintels.hpp"

namespace stringcourse {

struct Answer;

struct BarToInspect {
  std::uint32_t bar = 0;       // into Layout::bars
  std::int32_t number = 0;     // of its dowel along the side; 0: it has none here
  std::int32_t cleanout = -1;  // into Answer::cleanouts: at the foot of this pour; -1: none is asked for
  std::vector<supply::BarThrough> through = {};  // units with floors, lintels in one piece, in this pour's courses
  std::string photo = {};                        // name of a photo of it: ASCII, no other's
  std::string short_name = {};                   // how that ends: its dowel's number, or "x1", "x2" where it has none
  friend bool operator==(const BarToInspect&, const BarToInspect&) = default;
};

/// One box of the list: what an entry of the laid log says when it is ticked. Its four parts tell it from all others,
/// whatever else of the job is changed.
struct LineToTick {
  LookedAtWhat what = LookedAtWhat::Bar;
  std::int32_t wall = 0;
  std::int32_t course = 1;      // bars and cleanouts: the pour's lowest
  Length at;                    // a bar's centre; where a lintel's opening starts; of a beam 0
  std::int32_t of = -1;         // bars, cleanouts, floors: into PourToInspect::bars; lintels: the opening
  std::int32_t through = -1;    // floors: into BarToInspect::through
  std::int32_t ticked_by = -1;  // into Job::laid: the last entry that counts
  friend bool operator==(const LineToTick&, const LineToTick&) = default;
};

struct PourToInspect {
  std::int32_t first_course = 1, last_course = 1;
  std::vector<BarToInspect> bars = {};     // by wall, then along it
  std::vector<std::int32_t> beams = {};    // courses
  std::vector<std::int32_t> lintels = {};  // openings whose lintels of units begin in this pour
  std::vector<LineToTick> lines = {};      // bar by bar its own, its cleanout's, its floors'; beams by wall; lintels
  friend bool operator==(const PourToInspect&, const PourToInspect&) = default;
};

/// From the bottom, one for each pour that grout goes into. Reads the answer's tallies, lintels, cleanouts and dowels.
[[nodiscard]] std::vector<PourToInspect> to_inspect(const Answer& answer);

/// A place in the log is this one: to half a step of the job's tape, as it was shown.
[[nodiscard]] bool is_place_shown(Length shown, Length place, Tape tape);

}  // namespace stringcourse
