#pragma once
// What every sheet carries besides its drawing: title, title block, one caution block; drawn to scale also a print
// ruler and a scale bar.
#include <optional>
#include <string>
#include <vector>

#include "measure/notation.hpp"
#include "paper/pad.hpp"
#include "paper/scale.hpp"
#include "sheet/names.hpp"
#include "sheet/on_paper.hpp"
#include "words/sheet_words.hpp"

namespace stringcourse::sheet {

/// The room of one paper, landscape, in micrometres.
struct Page {
  Micrometres width = 0, height = 0;
  Area margin;        // nothing is drawn outside
  Area title;         // sheet title and scale bar
  Area drawing;       // the room of a sheet drawn to scale
  Area list;          // of one that is not: it has no ruler
  Area ruler;         // print ruler
  Area caution;       // caution block beside it,
  Area wide_caution;  // and where there is none
  Area block;         // title block
};
[[nodiscard]] Page page_of(Paper paper);

/// The words of one sheet's frame.
struct FrameText {
  std::string job, title, issued, drawn_by, caution;
  std::string use;    // hold point, and what the sheet is for there
  std::string block;  // the series laid
  std::size_t number = 1, of = 1;
  std::optional<Scale> scale;
  std::vector<LongName> names = {};  // keys for what has no room
};

/// The frame's groups: title, title block, caution; of a sheet with a scale its bar and the print ruler too.
[[nodiscard]] std::vector<Group> frame_of(const Page& page, const FrameText& text, const words::SheetWords& words,
                                          Tape tape);

}  // namespace stringcourse::sheet
