#pragma once
// Joint reinforcement by course: straight pieces with their laps, corners, where it stops; and what is bought.
#include <cstdint>
#include <vector>

#include "bond/layout.hpp"
#include "job/job.hpp"
#include "steel/bar_pieces.hpp"
#include "walls/building.hpp"

namespace stringcourse::steel {

/// What ends a straight stretch: it laps a leg of a corner or of a tee, or stops short of a face.
enum class WireEnd : std::uint8_t { Corner, ControlJoint, Jamb, Free, Junction, Tee, Lintel };

/// A stretch without a break, in the bed on top of one course.
struct WireStretch {
  std::int32_t wall = 0, course = 1;
  Length from, to;  // of its wire along the wall
  WireEnd at_start = WireEnd::Free, at_end = WireEnd::Free;
  std::int32_t pieces = 0;  // each laps the one before; 0: the corners' legs fill it
  Length last;              // length of the last piece; the others are as long as the stock
  friend bool operator==(const WireStretch&, const WireStretch&) = default;
};

struct Wires {
  StatedOr stock, lap, leg, end_cover;
  bool corners_stated = false;
  WireCorners corners_are = WireCorners::Pieces;
  std::vector<std::int32_t> courses;   // in the beds on top of these
  std::vector<WireStretch> stretches;  // by course, wall, place
  std::int32_t corner_count = 0;       // pieces round corners, of all courses
  bool tees_stated = false;
  WireTees tees_are = WireTees::Pieces;
  std::int32_t tee_count = 0;  // pieces where inner walls meet others, of all courses
  std::int32_t pieces = 0;     // straight ones
  std::int32_t to_buy = 0;  // stock lengths that all is cut from, longest first, each from the first with room for it
  std::vector<Unsaid> unsaid;  // what keeps them from being counted
};

/// No stretches where the job asks for none. A tee has two legs along the wall that is met, from the middle of the
/// other, and one along the other, from the face of the wall met that lies farther off; all as long as a corner's leg.
/// A lintel in one piece has no bed inside: wire stops at its ends, and passes on top of it.
[[nodiscard]] Wires wires(const Job& job, const Building& building, const Layout& layout);

}  // namespace stringcourse::steel
