#pragma once
// "From corner A, at 8'-0\", to the near face": a stated place becomes an actual stretch of a wall's line.
#include "walls/draft.hpp"
#include "walls/plan.hpp"

namespace stringcourse::walls {

/// What is placed: a hole's edges stand half a joint outside its nominal lines, a wall's faces half a joint inside.
enum class Placed { Hole, Masonry };

/// A stretch of a wall's line, actual.
struct Stretch {
  Position from, to;
};

/// Is this end pushed out (convex corner, free end) or in (re-entrant corner, junction)?
[[nodiscard]] PushedEnd pushed_end(const Draft& draft, const WallEnd& end);

/// Where the thing stands that is `width` wide (actual), or nothing: a refusal at `place_pointer`/from.
[[nodiscard]] std::optional<Stretch> placed_stretch(Draft& draft, int wall, const Place& place, Length width,
                                                    Placed what, const std::string& place_pointer);

/// Where a centre or a line stands (a bar, a control joint's line): half a joint from its nominal line.
[[nodiscard]] std::optional<Position> placed_line(Draft& draft, int wall, const Place& place,
                                                  const std::string& place_pointer);

/// Inner faces of what the wall meets at its ends, along its line: openings lie between. Free ends: the ends.
[[nodiscard]] Position first_face(const Draft& draft, int wall);
[[nodiscard]] Position last_face(const Draft& draft, int wall);

}  // namespace stringcourse::walls
