#pragma once
// Lettering: heights, lines that fit their room, and how much room they take (ISO 3098).
#include <optional>
#include <span>
#include <string>
#include <vector>

#include "paper/display.hpp"

namespace stringcourse::paper {

// Lettering heights of ISO 3098 that these sheets use.
inline constexpr Micrometres kSmallText = 2500;
inline constexpr Micrometres kText = 3500;
inline constexpr Micrometres kLargeText = 5000;  // running numbers
/// Line pitch: 1.8 times the height. ISO 3098 asks for 1.5, and more where letters carry accents: the deepest stroke of
/// this font over its highest accent takes (1184 + 3214) / 2500 = 1.76.
[[nodiscard]] constexpr Micrometres line_pitch(Micrometres height) { return height * 9 / 5; }

struct Lettering {
  Micrometres height = kText;
  Weight weight = Weight::Regular;
  Anchor anchor = Anchor::Start;
  Ink ink = Ink::Black;
  int quarter_turns = 0;
};

/// What is lettered of `text`: control characters become spaces.
[[nodiscard]] std::string without_control_characters(std::string text);
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
[[nodiscard]] std::optional<Setting> set_in(const std::string& text, TextRoom room, Lettering lettering,
                                            std::span<const Micrometres> heights);
/// Heights for lettering on drawings, and where there is much room.
inline constexpr Micrometres kDrawingHeights[] = {kText, kSmallText};
inline constexpr Micrometres kLargeHeights[] = {kLargeText, kText, kSmallText};
/// Height that write_paragraph() (pad.hpp) takes.
[[nodiscard]] Micrometres paragraph_height(const std::string& text, Micrometres width, Lettering lettering);

}  // namespace stringcourse::paper
