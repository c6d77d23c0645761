#pragma once
// Mortar: what the joints of a layout hold, by their real widths and lengths. Exact. It is what has to be there at the
// least: nothing is spilt, no bed is furrowed, webs beside grouted cells are not bedded. Corner sets are taken as thick
// as their wall.
#include <cstdint>
#include <span>

#include "bond/layout.hpp"
#include "measure/volume.hpp"
#include "walls/building.hpp"

namespace stringcourse::supply {

/// The first bed under one unit of course 1, as it was read.
struct BedRead {
  std::int32_t wall = 0;
  Length from, to;            // of the unit
  Length thinnest, thickest;  // at its two ends
};

struct MortarJoints {
  Volume first_bed;            // full, under the whole of course 1: as read, elsewhere a joint thick
  Volume beds;                 // of the other courses, on the face shells
  Volume heads;                // as deep as the face shells, at both faces
  Volume full;                 // every joint as deep as its wall is thick, the first bed a joint thick
  std::int64_t blocks = 0;     // all that is laid as whole blocks' worth by length, rounded up
  std::int64_t beds_read = 0;  // units of course 1 under which the bed was read
  [[nodiscard]] Volume all() const { return first_bed + beds + heads; }
};

/// A bed has mortar where something stands under it: none over an opening.
[[nodiscard]] MortarJoints mortar_joints(const Building& building, const Layout& layout,
                                         std::span<const BedRead> read = {});

}  // namespace stringcourse::supply
