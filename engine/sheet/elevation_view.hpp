#pragma once
// One wall's elevation while it is drawn, and its masonry. Internal to sheet/elevation.cpp and elevation_masonry.cpp.
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
  Area frame;           // the masonry shown
  Area room;

  Micrometres level(Length height) const { return ground + view.scale.paper(height - bearing); }
  Area box(Length from, Length to, Length low, Length high) const {
    return clipped_box({view.at(to), level(low), view.at(from), level(high)}, frame);
  }
};

/// Units with their letters, one-piece lintels, bond beams and bars of the part shown.
void draw_masonry(Pad& pad, const Elevation& elevation);

}  // namespace stringcourse::sheet
