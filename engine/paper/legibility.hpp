#pragma once
// Can the sheet be read? Measures where its texts stand, from the font's own widths, and what would spoil them.
#include <string>
#include <vector>

#include "paper/display.hpp"

namespace stringcourse::paper {

/// A rectangle on paper, micrometres. Two boxes that only touch do not overlap.
struct Box {
  Micrometres left = 0, low = 0, right = 0, high = 0;
  friend bool operator==(const Box&, const Box&) = default;
};

/// The box that a text's ink stays in: advance widths along the line; across it, from the deepest to the highest
/// stroke of the characters it holds (a fraction's slash reaches beyond the digits). Turned texts too.
[[nodiscard]] Box text_box(const Text& text);

enum class LegibilityRule {
  Overlap,       // two texts on each other
  OffSheet,      // a text crosses the edge of the paper
  InMargin,      // a text reaches into the margin that printers leave blank
  TooSmall,      // capitals under the least height
  HeightSeries,  // text height not of ISO 3098's series
  PenSeries,     // line width not of ISO 128's series
  TooManyPens,   // more than four line widths on one sheet
  NoGlyph,       // a character that the font lacks: drawn as a box
};

struct LegibilityTrouble {
  LegibilityRule rule = LegibilityRule::Overlap;
  std::string text;   // of the text at fault; empty for lines
  std::string other;  // the text it overlaps; else empty
  Box box;            // where
  friend bool operator==(const LegibilityTrouble&, const LegibilityTrouble&) = default;
};

struct LegibilityLimits {
  Micrometres least_height = 2'500;  // common practice for drawings read in the hand; smallest of the sheets' series
  Micrometres margin = 6'350;        // 1/4 in: what desk printers leave blank (common practice)
};

/// All troubles, rule by rule in the order of LegibilityRule, each in drawing order. n texts cost n log n and the
/// pairs whose heights on the sheet overlap.
[[nodiscard]] std::vector<LegibilityTrouble> legibility_troubles(const Sheet& sheet, LegibilityLimits limits = {});

}  // namespace stringcourse::paper
