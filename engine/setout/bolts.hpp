#pragma once
// Anchor bolts of the plate: where each is set in grout, fewest of them for what the drawings ask.
//
// A plate lies as the top course does: through where that runs through, butting where it butts, parted where masonry is
// parted (a control joint, an opening without masonry above). A bolt stands in a cell of the top course that holds a
// bar to the top, or in any cell where that course is a bond beam; clear of trusses, of bars and of the block.
#include <cstdint>
#include <optional>
#include <vector>

#include "bond/layout.hpp"
#include "setout/over.hpp"
#include "walls/building.hpp"

namespace stringcourse::setout {

/// Places at which a bolt may stand: a closed interval of the wall's line in one cell, both ends marks of the tape.
struct BoltRoom {
  Length from, to;
  std::int32_t unit = 0, cell = 0;  // of the top course
  Length middle;                    // of the cell
  friend bool operator==(const BoltRoom&, const BoltRoom&) = default;
};

struct Bolt {
  Length at;  // along the wall, a mark of the tape
  std::int32_t unit = 0, cell = 0;
  friend bool operator==(const Bolt&, const Bolt&) = default;
};

/// No bolt can stand where one is asked for: after `after` (a bolt, or the plate's start) the next was to stand by
/// `by`.
struct NoBolt {
  Length after, by;
  std::optional<Length> next;  // nearest place behind; none: to the piece's end there is none
  friend bool operator==(const NoBolt&, const NoBolt&) = default;
};

/// A piece of plate with its bolts.
struct PlatePiece {
  std::int32_t wall = 0;
  Length from, to;               // along the wall
  std::vector<Bolt> bolts = {};  // rising; at least two unless `without` says more
  std::vector<NoBolt> without = {};
  friend bool operator==(const PlatePiece&, const PlatePiece&) = default;
};

/// What is asked of the bolts of one piece.
struct BoltsAsked {
  Length from, to;  // of the piece
  Length spacing, end_least, end_most;
};

/// Fewest bolts, at least two: the first and last no farther from the piece's ends than `end_most` and no nearer than
/// `end_least`, neighbours no farther apart than `spacing`. In the middles of cells where that takes no more of them,
/// else as far on as they may. `rooms` rise and lie apart. Where no place lies in reach the next one behind is taken,
/// and it is said.
[[nodiscard]] PlatePiece bolts_in(const BoltsAsked& asked, const std::vector<BoltRoom>& rooms, Length step);

/// Where bolts may stand on one wall, rising. `step`: a mark of the tape.
[[nodiscard]] std::vector<BoltRoom> bolt_rooms(const Building& building, const Layout& layout, int wall);

/// Every piece of plate, by wall, then along it; none where the job asks for no bolts.
[[nodiscard]] std::vector<PlatePiece> plates_of(const Building& building, const Layout& layout);

}  // namespace stringcourse::setout
