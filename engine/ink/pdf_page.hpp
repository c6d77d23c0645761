#pragma once
// One sheet as a PDF content stream, and the tags that say what its parts are (ISO 32000-1:2008 14.7, 14.8).
#include <string>
#include <string_view>
#include <vector>

#include "ink/pdf_fonts.hpp"
#include "paper/display.hpp"

namespace stringcourse::ink {

/// What a tagged element holds, in reading order: a marked stretch of the page, or another element.
struct Kid {
  enum class Kind { Mark, Element } kind = Kind::Mark;
  int number = 0;  // the mark's number on the page, or the element's place in PaintedPage::elements
};

struct Element {
  std::string_view tag;     // "Figure", "H1", "P", "Table", ...
  std::string alternative;  // text in place of a figure, UTF-8
  int parent = -1;          // place in PaintedPage::elements; -1: the sheet itself
  std::vector<Kid> kids;
};

struct PaintedPage {
  std::string content;               // content stream
  std::vector<Element> elements;     // parents before their children
  std::vector<Kid> kids;             // of the sheet itself; all are elements
  std::vector<int> element_of_mark;  // by mark number
  UsedGlyphs used;
};

/// Paints a sheet. Figures inside a figure belong to the outer one, whose label speaks for them; headings, paragraphs
/// and tables keep tags of their own wherever they stand. An unlabelled group without items of its own is a division.
[[nodiscard]] PaintedPage paint_page(const paper::Sheet& sheet);

}  // namespace stringcourse::ink
