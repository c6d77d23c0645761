#pragma once
// Whole small buildings off the block grid, as a job and as a model: four sides round, one opening, a few courses. The
// model is written down from the bond model's page alone: from the same sizes it makes each side's panel for each way
// that its corners may run and for each pair of bearings, has them solved by a general-purpose solver, and takes the
// best of all sixteen sets of corners by trying them. It shares bond/panel.hpp with the solver and nothing else: not
// how a job becomes walls, nor how sides are settled with one another.
#include <array>
#include <cstdint>
#include <optional>
#include <string>

#include "job/job.hpp"
#include "oracle/milp.hpp"

namespace stringcourse::oracle {

/// Figures of one series in nanometres. SOURCE: as in catalogue/, written out here again.
struct Kit {
  const char* series;
  Tape tape;
  std::int64_t full, half, three_quarters, quarter, thickness, height, joint, tolerance, least_piece, short_lap_margin,
      cut_step, match_within;
  [[nodiscard]] std::int64_t pitch() const { return half + joint; }
};

struct SmallBuilding {
  const Kit* kit = nullptr;
  std::int64_t length = 0, width = 0;  // of sides AB and CD, of BC and DA; nominal
  int courses = 4;
  std::int64_t from = 0, wide = 0;  // the opening in AB, from A; nominal
  int sill = 0, high = 2;           // courses under it and beside it; where none is over it there is no lintel
  LintelMake make = LintelMake::BuiltUp;
};

/// The building of this seed: 8, 6 and 12 in block in whole inches, 190 mm block in whole centimetres.
[[nodiscard]] SmallBuilding small_building(std::uint64_t seed);
[[nodiscard]] Job job_of(const SmallBuilding& building);
[[nodiscard]] std::string say(const SmallBuilding& building);

/// Short laps, cuts, pieces shorter than a half: in this order.
using FirstThree = std::array<std::int64_t, 3>;

struct ModelAnswer {
  Outcome outcome = Outcome::OutOfTime;  // Infeasible: no layout keeps every rule unrelaxed
  FirstThree least{};                    // Optimal
  int panels = 0;                        // models solved
  std::size_t columns = 0;               // of the largest
};

/// The least of the first three terms over the whole building.
[[nodiscard]] ModelAnswer least_by_model(const SmallBuilding& building, Program program, std::size_t most_columns);

}  // namespace stringcourse::oracle
