#pragma once
// A drawing without a frame, with what can be taken hold of in it: for a page that shows it and lets things be dragged.
#include <optional>
#include <string_view>
#include <vector>

#include "bond/layout.hpp"
#include "paper/pad.hpp"
#include "paper/scale.hpp"
#include "sheet/names.hpp"
#include "sheet/sheets.hpp"
#include "walls/building.hpp"

namespace stringcourse::sheet {

/// An opening or a side, where it stands on the drawing. Paper coordinates, y up.
struct Handle {
  enum class What { Opening, Side } what = What::Opening;
  int index = 0;  // into Building::openings or Building::walls
  Area box;
  int along_x = 0, along_y = 0;  // one step on paper as the distance from the wall's start grows
  bool shown = true;             // an opening of a plan whose course it does not interrupt is not
  Area length = {};              // a side of a plan: around the text of its length
};

struct Drawing {
  Sheet sheet;
  Scale scale;
  int course = 0;  // plans: the course shown
  int wall = -1;   // elevations: the wall shown
  std::vector<Handle> handles;
  std::vector<LongName> names = {};  // those that stand in it as keys, for lack of room
};

/// "plan-course-3" of any course, "elevation-2" of any wall, "elevation-2-inside" of it seen from the other face; where
/// something was read, "pegs" and "bed-1" of a wall whose bearing was read. Nothing for other names.
[[nodiscard]] std::optional<Drawing> make_named_drawing(const Answer& answer, std::string_view name);
/// The same of those alone that show the building: plans and elevations. Whoever draws no others links no others.
[[nodiscard]] std::optional<Drawing> make_building_drawing(const Answer& answer, std::string_view name);

}  // namespace stringcourse::sheet
