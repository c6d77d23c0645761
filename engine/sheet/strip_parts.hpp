#pragma once
// One strip while it is drawn, and its marks. Internal to sheet/strip.cpp and strip_marks.cpp.
#include <vector>

#include "bond/layout_parts.hpp"
#include "paper/running_labels.hpp"
#include "setout/corner_sets.hpp"
#include "sheet/context.hpp"

namespace stringcourse::sheet {

inline constexpr Micrometres kUnderStrip = 12'000;                // arrows, boxes to write in, the closing unit's words
inline constexpr Micrometres kBoxWide = 9'000, kBoxHigh = 5'500;  // for what is read at a mark, with a pencil

/// Where everything of one strip comes on paper.
struct Strip {
  const Context& context;
  Area room;  // the band of the sheet
  int wall, course;
  Part part;
  Scale scale;
  WallView view;
  Micrometres face = 0;   // paper y of the outer face
  Micrometres thick = 0;  // thickness on paper
  Area frame = {};        // what is drawn lies inside
  std::vector<bond::WallBar> bars = {};

  Micrometres back() const { return face + thick; }
  Area box(Length from, Length to) const { return clipped_box({view.at(to), face, view.at(from), back()}, frame); }
  Area box(const setout::OnWall& place) const {
    return clipped_box(
        {view.at(place.to), face + scale.paper(place.shallow), view.at(place.from), face + scale.paper(place.deep)},
        frame);
  }
};

[[nodiscard]] bool meets(const Area& a, const Area& b);
/// True where a bar stands in the strip's course.
[[nodiscard]] bool stands_in(const Strip& strip, const bond::WallBar& bar);
/// Numbers of all that is marked in the part shown: block ends, jambs, joint edges, faces of walls that meet it, and
/// such bars as no list of dowels has.
[[nodiscard]] std::vector<RunningLabel> labels_of(const Strip& strip);
/// What the band shows, and what its numbers are measured from; gives the y under it.
[[nodiscard]] Micrometres write_heading(Pad& pad, const Strip& strip);
/// The numbers over the strip, up to `top`.
void draw_marks(Pad& pad, const Strip& strip, Micrometres top);
/// Boxes under the marks that are read, clear of `taken`, to which they are added.
void draw_boxes(Pad& pad, const Strip& strip, std::vector<Area>& taken);

}  // namespace stringcourse::sheet
