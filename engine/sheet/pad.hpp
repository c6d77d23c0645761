#pragma once
// The drawing hand: a group being filled, and the small rules of lettering and dimensioning (ISO 128, 129, 3098).
#include <optional>
#include <span>
#include <string>
#include <vector>

#include "measure/length.hpp"
#include "sheet/display.hpp"

namespace stringcourse::sheet {

// Lettering heights of ISO 3098 that these sheets use.
inline constexpr Micrometres kSmallText = 2500;
inline constexpr Micrometres kText = 3500;
inline constexpr Micrometres kLargeText = 5000;  // running numbers
inline constexpr Micrometres kTitleText = 7000;
/// Line pitch: 1.8 times the height. ISO 3098 asks for 1.5, and more where letters carry accents: the deepest stroke of
/// this font over its highest accent takes (1184 + 3214) / 2500 = 1.76.
[[nodiscard]] constexpr Micrometres line_pitch(Micrometres height) { return height * 9 / 5; }

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

struct Stroke {
  Pen pen = Pen::Thin;
  Dash dash = Dash::Solid;
  Ink ink = Ink::Black;
};

struct Lettering {
  Micrometres height = kText;
  Weight weight = Weight::Regular;
  Anchor anchor = Anchor::Start;
  Ink ink = Ink::Black;
  int quarter_turns = 0;
};

/// A group being drawn. Every call adds one item over those before it; the group is taken at the end.
class Pad {
 public:
  explicit Pad(Role role, std::string label = {}) { group_.role = role; group_.label = std::move(label); }
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

/// Lines no wider than `width`, broken at spaces and line ends; a word that is too wide alone goes on over lines of its
/// own. Nothing is left out; a UTF-8 character is never split; control characters become spaces.
[[nodiscard]] std::vector<std::string> wrapped(const std::string& text, Micrometres width, Lettering lettering);
[[nodiscard]] bool fits(const std::string& text, Micrometres width, Lettering lettering);

/// A text in lines that fit their room.
struct Setting {
  std::vector<std::string> lines;
  Lettering lettering;
  Micrometres width = 0;   // of the widest line
  Micrometres height = 0;  // from the top of the first line's capitals to the last baseline
};
struct TextRoom {
  Micrometres width = 0, height = 0;  // along the lines, and across them
};
/// The text in the largest of `heights` at which it fits the room, whole, on one line or broken between words; none
/// where it does not fit at the last of them.
[[nodiscard]] std::optional<Setting> set_in(const std::string& text, TextRoom room, Lettering lettering, std::span<const Micrometres> heights);
/// Heights for lettering on drawings, and where there is much room.
inline constexpr Micrometres kDrawingHeights[] = {kText, kSmallText};
inline constexpr Micrometres kLargeHeights[] = {kLargeText, kText, kSmallText};
/// Writes the lines with their middle at `middle`; its x (turned text: y) is the anchor's.
void write_setting(Pad& pad, Point middle, const Setting& setting);
/// Writes lines hanging down from `top_left`, and returns the y under the last. The caller has made room for them.
Micrometres write_paragraph(Pad& pad, Point top_left, Micrometres width, const std::string& text, Lettering lettering);
/// Height that write_paragraph() takes.
[[nodiscard]] Micrometres paragraph_height(const std::string& text, Micrometres width, Lettering lettering);

/// Places for labels that want to stand at `wanted` (rising) but need `pitch` between them and must stay within
/// first..last: as near to where they want to be as the pitch allows. Too many: the pitch shrinks.
[[nodiscard]] std::vector<Micrometres> spread(const std::vector<Micrometres>& wanted, Micrometres pitch,
                                              Micrometres first, Micrometres last);

/// A dimension with oblique strokes (ISO 129) and its text above the line. The line runs level at `y`, or upright at
/// `x`; extension lines reach to it from the measured points.
[[nodiscard]] Group level_dimension(Point from, Point to, Micrometres y, const std::string& text, Lettering lettering);
[[nodiscard]] Group upright_dimension(Point from, Point to, Micrometres x, const std::string& text,
                                      Lettering lettering);

/// An arrow with a filled head at `to`; level or upright only.
[[nodiscard]] Group arrow(Point from, Point to, Stroke stroke);

}  // namespace stringcourse::sheet
