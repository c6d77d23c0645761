#pragma once
// One wall's elevation while it is drawn, and its masonry. Internal to sheet/elevation.cpp and elevation_masonry.cpp.
#include <algorithm>

#include "sheet/context.hpp"

namespace stringcourse::sheet {

/// Where everything of one elevation comes on paper.
struct Elevation {
  const Context& context;
  int wall;
  Part part;
  WallView view;
  Micrometres ground;  // paper y of the bearing
  Length bearing;      // its height from the datum
  Area frame;          // the masonry shown
  Area room;

  bool inside() const { return view.from_inside; }
  Micrometres start_side() const { return inside() ? frame.left : frame.right; }
  Micrometres end_side() const { return inside() ? frame.right : frame.left; }
  Micrometres level(Length height) const { return ground + view.scale.paper(height - bearing); }
  Area box(Length from, Length to, Length low, Length high) const {
    const Micrometres a = view.at(from), b = view.at(to);
    return clipped_box({std::min(a, b), level(low), std::max(a, b), level(high)}, frame);
  }
};

/// Units with their letters, one-piece lintels, bond beams and bars of the part shown.
void draw_masonry(Pad& pad, const Elevation& elevation);

}  // namespace stringcourse::sheet
