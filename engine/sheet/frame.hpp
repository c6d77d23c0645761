#pragma once
// What every sheet carries besides its drawing: title, title block, print ruler, scale bar, one caution block.
#include <optional>
#include <string>
#include <vector>

#include "measure/notation.hpp"
#include "paper/pad.hpp"
#include "paper/scale.hpp"
#include "sheet/names.hpp"
#include "sheet/on_paper.hpp"
#include "sheet/words.hpp"

namespace stringcourse::sheet {

/// The room of one paper, landscape, in micrometres.
struct Page {
  Micrometres width = 0, height = 0;
  Area margin;   // nothing is drawn outside
  Area title;    // sheet title and scale bar
  Area drawing;  // the sheet's own room
  Area ruler;    // print ruler
  Area caution;  // caution block
  Area block;    // title block
};
[[nodiscard]] Page page_of(Paper paper);

/// The words of one sheet's frame.
struct FrameText {
  std::string job, title, issued, drawn_by, caution;
  std::size_t number = 1, of = 1;
  std::optional<Scale> scale;
  std::vector<LongName> names = {};  // keys for what has no room
};

/// The frame's groups: title, title block, ruler, caution, scale bar (if the sheet has a scale).
[[nodiscard]] std::vector<Group> frame_of(const Page& page, const FrameText& text, const Words& words, Tape tape);

}  // namespace stringcourse::sheet
