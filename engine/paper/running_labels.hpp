#pragma once
// Running marks on paper: upright numbers 5 mm high, spread so that none touches another, led to their places.
#include <string>
#include <vector>

#include "measure/notation.hpp"
#include "paper/pad.hpp"

namespace stringcourse::paper {

struct RunningLabel {
  Micrometres x = 0;       // where it points
  Length at;               // the rounded mark
  bool bold = false;       // third-unit marks
  std::string what;        // "jamb D1", "bar centre"; empty: a block end
  std::string short_what;  // instead of it where it has no room; may be empty
};

enum class LabelSide { Above, Below };

/// Where a label says what it marks: behind its number, or on a line of its own beside it where the room is low.
enum class WhatStands { Behind, Beside };

/// How high leaders are, how far from the strip they run plumb, and where the words stand.
struct Leader {
  Micrometres high = 0, plumb = 0;
  WhatStands what = WhatStands::Behind;
};

/// Whether so many labels stand clear of each other in a room so wide, each by its total inches alone.
[[nodiscard]] bool labels_fit(std::size_t count, Micrometres width);
/// Whether these do with both forms of each number, their words beside them.
[[nodiscard]] bool both_forms_fit(const std::vector<RunningLabel>& labels, Micrometres width, Tape tape);
/// Labels in the room over (or under) a strip whose edge is the room's bottom (top). Both forms of each number: total
/// inches 5 mm high, then feet and inches beside it, as high or, where labels stand close, 3.5 mm; in millimetres one
/// form. Smaller, where one would not end in the room.
[[nodiscard]] Group draw_running_labels(std::vector<RunningLabel> labels, const Area& room, Leader leader,
                                        LabelSide side, Tape tape);

}  // namespace stringcourse::paper
