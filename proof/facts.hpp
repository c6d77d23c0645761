#pragma once
// What the checker reads off a layout before it judges: the runs of each course, and where their head joints stand.
#include <vector>

#include "proof/rules.hpp"

namespace stringcourse::proof {

/// A head joint: the exact place of its middle, and what stands beyond it.
struct HeadJoint {
  ExactPosition middle;
  bool tied = false;  // butts a tied or control-joint junction: exempt from laps and from the match of bands
  int lintel = -1;    // at the end of this opening's one-piece lintel; -1: none
  int panel = 0;      // which stretch between control joints
};

/// One run, counted again from its pieces.
struct RunFacts {
  const Run* run = nullptr;
  std::vector<const Piece*> pieces;
  std::int64_t joints = 0;  // m = pieces - 1 + ends with a joint; never below 0
  Length slack;             // run - pieces
  int panel = 0;
};

struct CourseFacts {
  std::vector<RunFacts> runs;     // left to right
  std::vector<HeadJoint> joints;  // left to right
};

struct WallFacts {
  std::vector<CourseFacts> courses;  // courses[k] is course k + 1
  int panels = 1;
  bool stopped = false;  // some stretch of this wall has no layout
};

struct Facts {
  std::vector<WallFacts> walls;
};

/// Whether indices and counts are sound, so that the rest can be read at all.
Violations check_shape(const Job& job, const Building& building, const Layout& layout);

/// Reads the layout. Only after check_shape found nothing.
Facts gather(const Building& building, const Layout& layout);

/// The one-piece lintel of opening `opening` as placed, or null.
const PlacedLintel* placed_lintel(const Layout& layout, int opening);

/// |a - b| < apart, exactly.
bool closer_than(const ExactPosition& a, const ExactPosition& b, Length apart);

}  // namespace stringcourse::proof
