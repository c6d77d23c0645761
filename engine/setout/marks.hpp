#pragma once
// Running marks: what a tape held to the ONE place where the wall's numbers begin (setout/hook.hpp) reads where the far
// end of each block comes. "End of block ON the mark". Never chained from block to block; rounded once.
#include <cstdint>
#include <vector>

#include "bond/layout.hpp"
#include "walls/building.hpp"

namespace stringcourse::setout {

/// What a mark marks. Faces and edges, except bars, which are marked to their centre.
enum class MarkKind : std::uint8_t { BlockEnd, NearJamb, FarJamb, JointNearEdge, JointFarEdge, BarCentre };

struct Mark {
  MarkKind kind = MarkKind::BlockEnd;
  Length at;                  // rounded once to the tape: 1/16 in or 1 mm
  ExactPosition exact;        // what was rounded
  bool third_unit = false;    // each third unit of its run
  std::int32_t piece = 0;     // BlockEnd: the piece's number along its wall
  std::int32_t opening = -1;  // jambs: index into Building::openings
};

/// All marks of one course of one wall, in order along it. Openings that the course runs under or over have no jambs
/// in it. Bars are those that stand in that course. What lies behind zero (the bar of a re-entrant corner) is no mark:
/// the tape cannot read it, and it has its number on the wall that arrives there.
[[nodiscard]] std::vector<Mark> running_marks(const Building& building, const Layout& layout, int wall, int course);

}  // namespace stringcourse::setout
