#pragma once
// The drawing hand: a group being filled, and the small rules of dimensioning (ISO 128, 129).
#include <string>
#include <vector>

#include "paper/display.hpp"
#include "paper/lettering.hpp"

namespace stringcourse::paper {

/// An upright rectangle on paper.
struct Area {
  Micrometres left = 0, bottom = 0, right = 0, top = 0;
  constexpr Micrometres width() const { return right - left; }
  constexpr Micrometres height() const { return top - bottom; }
  constexpr Point centre() const { return {left + width() / 2, bottom + height() / 2}; }
  constexpr bool empty() const { return right <= left || top <= bottom; }
};
/// The part of `box` inside `frame` (may be empty).
[[nodiscard]] Area clipped_box(const Area& box, const Area& frame);
/// The left part of a box, `share` hundredths of its width, and what is right of that and of a gutter.
[[nodiscard]] Area left_part(Area box, int share);
[[nodiscard]] Area right_part(Area box, int share);

struct Stroke {
  Pen pen = Pen::Thin;
  Dash dash = Dash::Solid;
  Ink ink = Ink::Black;
};

/// A group being drawn. Every call adds one item over those before it; the group is taken at the end.
class Pad {
 public:
  explicit Pad(Role role, std::string label = {}) {
    group_.role = role;
    group_.label = std::move(label);
  }
  Pad& line(Point from, Point to, Stroke stroke = {});
  Pad& path(std::vector<Point> points, Stroke stroke = {});
  Pad& area(std::vector<Point> points, Stroke stroke, Fill fill);
  Pad& box(const Area& box, Stroke stroke = {}, Fill fill = Fill::None);
  Pad& dot(Point centre, Micrometres radius, Fill fill = Fill::Black);
  /// Empty texts are left out.
  Pad& write(Point at, std::string text, Lettering lettering = {});
  Pad& add(Group group);
  /// What is drawn so far.
  [[nodiscard]] const Group& so_far() const { return group_; }
  [[nodiscard]] Group take() && { return std::move(group_); }

 private:
  // A group's own items lie under its groups: what comes after a group goes into a layer over it.
  Group& layer();
  Group group_;
  bool layer_open_ = false;
};

/// Writes the lines with their middle at `middle`; its x (turned text: y) is the anchor's.
void write_setting(Pad& pad, Point middle, const Setting& setting);
/// Writes lines hanging down from `top_left`, and returns the y under the last. The caller has made room for them.
Micrometres write_paragraph(Pad& pad, Point top_left, Micrometres width, const std::string& text, Lettering lettering);

/// Places for labels that want to stand at `wanted` (rising) but need `pitch` between them and must stay within
/// first..last: as near to where they want to be as the pitch allows. Too many: the pitch shrinks.
[[nodiscard]] std::vector<Micrometres> spread(const std::vector<Micrometres>& wanted, Micrometres pitch,
                                              Micrometres first, Micrometres last);

/// The same for labels of their own widths, each with `gap` to the next: middles of labels that stay within
/// first..last. Too many: the gaps shrink, and may vanish.
[[nodiscard]] std::vector<Micrometres> spread(const std::vector<Micrometres>& wanted,
                                              const std::vector<Micrometres>& widths, Micrometres gap,
                                              Micrometres first, Micrometres last);

/// A dimension with oblique strokes (ISO 129) and its text above the line. The line runs level at `y`, or upright at
/// `x`; extension lines reach to it from the measured points.
[[nodiscard]] Group level_dimension(Point from, Point to, Micrometres y, const std::string& text, Lettering lettering);
/// Where the middle of a level dimension's text stands, and an upright one's.
[[nodiscard]] Point level_dimension_text(Point from, Point to, Micrometres y, Micrometres height);
[[nodiscard]] Point upright_dimension_text(Point from, Point to, Micrometres x, Micrometres height);
[[nodiscard]] Group upright_dimension(Point from, Point to, Micrometres x, const std::string& text,
                                      Lettering lettering);

/// An arrow with a filled head at `to`; level or upright only.
[[nodiscard]] Group arrow(Point from, Point to, Stroke stroke);

}  // namespace stringcourse::paper
