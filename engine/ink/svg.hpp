#pragma once
// One sheet as a self-contained SVG picture. Its units are whole micrometres (viewBox), y downwards, so that every
// number is exact. Texts of a job never become markup; ids are made of safe letters and stand once.
#include <string>

#include "paper/display.hpp"

namespace stringcourse::ink {

/// Class names for a page that gives inks and fills colours of its own: ink-blue on whatever is drawn in an ink
/// (stroke or text), fill-tint on grounds. The plain colours are attributes beside them, which any style rule outranks.
enum class Classes { Omit, Write };

/// `<svg>` with title, desc, one `<g>` for each group. A group's id is the sheet's name, a dash and its label.
[[nodiscard]] std::string svg_text(const paper::Sheet& sheet, Classes classes = Classes::Omit);

/// The same picture in about half the text, with classes: each look said once (layers.hpp), no groups, titles of parts
/// or ids. For a page whose user is moving something.
[[nodiscard]] std::string moving_svg_text(const paper::Sheet& sheet);

/// Letters, digits, dash and underscore of `label`; each run of others becomes one dash. Never empty.
[[nodiscard]] std::string safe_id(std::string_view label);

/// `text` as character data or attribute value: & < > " ' escaped, undrawable characters left out.
[[nodiscard]] std::string escaped(std::string_view text);

}  // namespace stringcourse::ink
