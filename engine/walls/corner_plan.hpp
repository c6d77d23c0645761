#pragma once
// Corners in plan: what stands at one in a course, piece by piece, and where its bar stands.
#include <optional>
#include <vector>

#include "measure/fact.hpp"
#include "walls/building.hpp"

namespace stringcourse::walls {

/// A rectangle of a corner's masonry, as the side that runs through sees it.
struct CornerPart {
  Length from, to;   // along that side, from its end at the corner
  Length near, far;  // into its thickness, from the face on the corner's outer side (re-entrant: from its inner face)
  Fact name;  // a part of the corner set, as it is bought; empty: of the piece itself, or a leg of the part before
};

/// How thick the unit is that makes a corner of this series: with a corner set no more than its short leg.
[[nodiscard]] Length corner_unit_thickness(const Series& series, bool sets_stocked);

/// A piece as long as its run, between two corners, makes both: no L-unit has two legs.
enum class Makes { OneCorner, TwoCorners };

/// What makes the corner where a side of `through` runs through with a piece of `length` and a wall as thick as
/// `butting` comes up to it; the butting wall's masonry begins one joint beyond corner_leg(). None where no piece of
/// that length leaves joints only: then it cannot stand there.
///   thickness t over the leg b: a unit b thick, and behind it a filler from the butting wall to the unit's far end
///   t under b, one part: an L-unit; two parts, another wall's thickness, a half, or two corners made by one piece: a
///   unit and a filler over its end
[[nodiscard]] std::optional<std::vector<CornerPart>> corner_parts(const Series& through, Length butting,
                                                                  bool sets_stocked, Length length,
                                                                  Makes makes = Makes::OneCorner);

/// What makes this corner in a course in which `wall`, one of its two, runs through with a piece of `length`.
[[nodiscard]] std::optional<std::vector<CornerPart>> corner_parts(const Building& building, const Corner& corner,
                                                                  int wall, Length length,
                                                                  Makes makes = Makes::OneCorner);

/// Whether a half unit may stand at every corner of this wall where it runs through.
[[nodiscard]] bool halves_make_corners(const Building& building, int wall);

/// Where a bar stands in a wall.
struct BarPlace {
  Length along;     // from the wall's start
  Length off_face;  // in from its outer face
};

/// A corner's bar, seen from one of its two walls: in the middle of the rectangle that the corner units of neighbouring
/// courses share, as each of them is thick.
[[nodiscard]] BarPlace corner_bar_place(const Building& building, const Corner& corner, int wall);

/// A bar in a corner's cell (FixedBar::corner) as it stands in one of the corner's two walls.
[[nodiscard]] BarPlace bar_seen_from(const Building& building, const FixedBar& bar, int wall);

/// A place in a corner's cell, given on `wall`, as the corner's other wall sees it.
[[nodiscard]] BarPlace round_corner(const Building& building, const Corner& corner, int wall, BarPlace place);

/// Any other bar stands in the middle of its wall.
[[nodiscard]] Length middle_of(const Building& building, int wall);

}  // namespace stringcourse::walls
