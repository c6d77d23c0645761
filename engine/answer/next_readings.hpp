#pragma once
// What is to be read next on site, in the order in which it is best read.
#include <cstdint>
#include <string>
#include <vector>

#include "job/trouble.hpp"
#include "measure/length.hpp"

namespace stringcourse {

struct Answer;

/// One reading that is still to be taken, with all that its entry in the log will say but the reading itself.
struct NextReading {
  enum class What : std::uint8_t { Tape, Rod, Edge, Dowel } what = What::Tape;
  Fact says;                       // "Tape A to C"
  bool again = false;              // it was read, and did not fit the others
  std::string from = {}, to = {};  // Tape: its corners
  std::string station = {};        // Rod: the point's name
  std::string on = {};             // Edge, Dowel, and Rod where the point is no corner: the wall
  Length at = {};                  // there: from the wall's start
  Length expected = {};            // Tape: as planned; Dowel: in from the outer face
  /// Where it stands on the plan: one place, or the two ends of a line.
  struct Spot {
    std::int32_t wall = 0;
    Length along;  // from the wall's start, on its outer face
  };
  std::vector<Spot> spots = {};
};

/// At the pour: lines to tape. At the first course: lines, then the rod along the walls, then the slab's edges, then
/// dowels. Nothing at the others.
[[nodiscard]] std::vector<NextReading> readings_to_take(const Answer& answer, HoldPoint point);

}  // namespace stringcourse
