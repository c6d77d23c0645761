#pragma once
// One strip while it is drawn, and its marks and notes. Internal to sheet/strip.cpp and strip_marks.cpp.
#include <vector>

#include "setout/corner_sets.hpp"
#include "setout/places.hpp"
#include "sheet/context.hpp"

namespace stringcourse::sheet {

/// Where everything of one strip comes on paper.
struct Strip {
  const Context& context;
  int wall, course;
  Part part;
  Scale scale;
  WallView view;
  Micrometres face;   // paper y of the outer face
  Micrometres thick;  // thickness on paper
  Micrometres foot;     // height of the notes at the foot of the sheet
  Area frame;           // what is drawn lies inside
  std::vector<setout::WallBar> bars;

  Micrometres back() const { return face + thick; }
  Area box(Length from, Length to) const { return clipped_box({view.at(to), face, view.at(from), back()}, frame); }
  Area box(const setout::OnWall& place) const {
    return clipped_box(
        {view.at(place.to), face + scale.paper(place.shallow), view.at(place.from), face + scale.paper(place.deep)},
        frame);
  }
};

/// True where a bar stands in the strip's course.
[[nodiscard]] bool stands_in(const Strip& strip, const setout::WallBar& bar);
/// Running marks over and under the strip of the part shown.
void draw_marks(Pad& pad, const Strip& strip);
/// What the sheet's marks, arrows and letters mean, at its foot; and how high that is.
void write_notes(Pad& pad, const Strip& strip);
[[nodiscard]] Micrometres notes_height(const Context& context, int wall, int course);

}  // namespace stringcourse::sheet
