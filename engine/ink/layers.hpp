#pragma once
// A sheet's items sorted into few layers, each of one look, that painted in turn give the same picture. For pictures
// that change sixty times a second: a look is said once for all units that have it.
#include <vector>

#include "paper/display.hpp"

namespace stringcourse::ink {

/// What an item covers on paper at most, line width included. Both ends belong to it.
struct Box {
  paper::Micrometres left = 0, bottom = 0, right = 0, top = 0;
};
[[nodiscard]] constexpr bool overlap(const Box& a, const Box& b) {
  return a.left <= b.right && b.left <= a.right && a.bottom <= b.top && b.bottom <= a.top;
}

/// Items that follow one another in painting: shapes of one pen, dash, ink and fill; or circles; or texts. The pointers
/// are to the sheet's own items.
struct Layer {
  std::vector<const paper::Shape*> shapes;
  std::vector<const paper::Circle*> circles;
  std::vector<const paper::Text*> texts;
  std::vector<Box> boxes;
};

/// Promises: every item of the sheet that leaves a trace stands in one layer; of two items that overlap (by their
/// boxes) the one painted later on the sheet is in a later layer, or later in the same layer of circles or texts;
/// shapes of one layer do not overlap. Cost: items times the boxes that are looked at, a few hundred for a small
/// building.
[[nodiscard]] std::vector<Layer> layers_of(const paper::Sheet& sheet);

}  // namespace stringcourse::ink
