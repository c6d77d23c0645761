#pragma once
// Where the numbers along a wall begin: what the tape is held to there, and how far that is from the end of its form
// board.
#include <optional>
#include <string>

#include "job/job.hpp"
#include "walls/building.hpp"

namespace stringcourse::setout {

/// What stands at zero of a wall's numbers.
enum class HookKind {
  OuterCorner,  // where the outer faces of two walls meet, outside
  InnerCorner,  // a re-entrant corner: the outer face of the wall that arrives there
  MetFace,      // an inner wall: the face of the wall that it starts from
  FreeEnd,      // the wall's own end
};

struct Hook {
  HookKind kind = HookKind::FreeEnd;
  std::string name;  // the corner's, the free end's; of the wall that is met
  int other = -1;    // the wall round the corner, or that is met; -1: none
  PlanPoint at;      // zero, on the wall's outer face line (an inner wall's: on the face on the walker's left)
  bool other_is_inner = false;  // an inner wall is met: its faces have no outside
};
[[nodiscard]] Hook hook_of(const Building& building, int wall);

/// The form of a wall's footing, as far as the job's setting out says it.
struct FormEdge {
  std::optional<Length> beyond_face;  // the form lies so far out from the wall's outer face line; none: not said
  std::optional<Length>
      before_start;                // its board begins so far before zero of the wall's numbers; below zero: after it
  std::optional<Length> past_end;  // and ends so far past the wall's actual length
};
/// `asked`: the job's setting out, or null. Footings of inner walls and at free ends are not said by it.
[[nodiscard]] FormEdge form_edge(const Building& building, const SettingOut* asked, int wall);

}  // namespace stringcourse::setout
