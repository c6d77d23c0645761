#pragma once
// Makes a font program smaller: outlines of glyphs that no sheet uses are emptied. Glyph numbers stay as they are.
// SOURCE: Adobe Technical Note 5176, "The Compact Font Format Specification", 2003.
#include <cstdint>
#include <string>
#include <vector>

#include "paper/font.hpp"

namespace stringcourse::ink {

/// `table` is a CFF table; `used[g]` says whether glyph g keeps its outline (glyph 0 always does). Returns a CFF table
/// with the same glyph numbers and widths unsaid for the emptied ones; returns the table unchanged where its layout
/// is not the one expected (outlines before the private data, its place written in five bytes).
[[nodiscard]] std::string subset_cff(paper::Bytes table, const std::vector<bool>& used);

}  // namespace stringcourse::ink
