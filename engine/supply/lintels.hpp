#pragma once
// Lintels as they are laid: what spans each opening, what it bears at either end, and the bars that have to pass it.
// Read off the placed pieces, so that schedule, elevation and order say what is drawn and counted.
#include <cstdint>
#include <vector>

#include "bond/layout.hpp"
#include "supply/counts.hpp"
#include "walls/building.hpp"

namespace stringcourse::supply {

/// What closes the underside of the span until grout and bars carry it.
enum class Soffit : std::uint8_t {
  OnePiece,  // the lintel's own
  Floor,     // of lintel units: shores, no form
  Form,      // units open underneath: a form, and shores
  Nothing,   // a unit over the opening takes no bars along the wall: nothing there can carry
};

/// One end of a lintel.
struct LintelEnd {
  Length bearing;         // as laid, from the jamb
  bool is_short = false;  // less than is asked, or than the least of all: the masonry of its run ends there
  bool in_joint = false;  // what is asked ends in a joint: one more unit is laid for it
  bool is_plain = false;  // its last unit takes no bars along the wall (a corner's)
};

/// A bar that passes a lintel which its place closes: the floor of a lintel unit, or a lintel in one piece.
struct BarThrough {
  std::int32_t wall = 0;
  std::int32_t course = 0;
  std::int32_t opening = -1;  // whose lintel it is
  std::int32_t unit = 0;      // number along its wall in its course; 0: the lintel is one piece
  Length centre;              // of the bar, along its wall
};

struct LintelAsLaid {
  std::int32_t opening = 0;
  Soffit soffit = Soffit::OnePiece;
  LintelEnd start, end;          // towards the wall's start, towards its end
  std::vector<UnitCount> units;  // built of units: all its courses, those with a floor first
  std::vector<BarThrough> bars;  // by course, then along the wall
};

/// Units closed underneath that stand over a bar, wherever they stand: their floors are broken out there. By wall,
/// course, then along the wall; a corner's bar stands in one wall's unit in each course.
[[nodiscard]] std::vector<BarThrough> floors_to_break_out(const Building& building, const Layout& layout);

/// Those of one wall.
[[nodiscard]] std::vector<BarThrough> floors_to_break_out(const Building& building, const Layout& layout, int wall);

/// In the order of Layout::lintels.
[[nodiscard]] std::vector<LintelAsLaid> lintels_as_laid(const Building& building, const Layout& layout);

}  // namespace stringcourse::supply
