#pragma once
// The room that the building has on the slab: from its outer faces to the slab's edges, and round every dowel in a
// cell.
#include <optional>
#include <string>
#include <vector>

#include "ground/slab_fit.hpp"
#include "steel/dowels.hpp"

namespace stringcourse::steel {

/// What one clearance is of.
struct RoomOf {
  std::size_t entry = 0;  // of Job::readings
  bool edge = false;      // else a dowel
};

/// Where the outer face line lies on the slab once the building sits where it fits best.
struct FaceLine {
  int wall = 0;
  Length along;      // from the wall's start
  Length from_edge;  // in from the slab's edge there; below zero: outside it
};

struct SlabRoom {
  std::vector<ground::Clearance> clearances;
  std::vector<RoomOf> of;
  /// None without edge readings, and none as long as some way of the plan, or the turn, is not held by any reading.
  std::optional<ground::SlabFit> fit;
  std::vector<Fact> lacks;           // what is still to be read: "the edge along BC"
  std::vector<FaceLine> face_lines;  // one for each edge reading
  int dowels = 0;                    // dowels that take part: those no more than 1 in out of a lawful place
};

/// Edge readings hold the building on the slab if they, or dowels, face all four ways, and one way is faced from two
/// places at least half a side apart, so that the turn is known.
///
/// Edge readings as rooms of the outer faces, dowel readings as rooms of the nearest cell that holds a bar's clearance
/// in courses 1 and 2, four each. The building may move 12 in (300 mm) at most.
[[nodiscard]] SlabRoom slab_room(const Job& job, const Building& building, const Layout& layout,
                                 const std::vector<bool>& counts);

/// The nearest stretch of the wall's line in which a bar has its clearance in courses 1 and 2, and where across it may
/// be.
struct LawfulPlace {
  Length from, to;       // along
  Length shallow, deep;  // in from the outer face
};
[[nodiscard]] std::optional<LawfulPlace> nearest_lawful(const Building& building, const Layout& layout,
                                                        const DowelRules& rules, int wall, Length along);

}  // namespace stringcourse::steel
