#pragma once
// The border between engine and page: one JSON request in, one block of sections out. The same sources stand in the
// WebAssembly module and, for tests and benches, in a native library.
//
//   border::Border border;
//   std::string block = border.answer(R"({"border": 1, "job": "{...}", "drawings": ["plan-course-1"]})");
//
// Sections, in this order, each if it was asked for and can be made: reply.json (names all the others), answer.json or
// refusals.json, job.json (if begin or edits were given), NAME.svg for each drawing, solids.json, set-PAPER.pdf.
#include <cstdint>
#include <memory>
#include <string>
#include <string_view>
#include <vector>

#include "bond/panel_memo.hpp"

namespace stringcourse::border {

/// Keeps solved panels between requests, so that a small change of a job costs little. What was asked before changes
/// the time of an answer, never its bytes.
class Border {
 public:
  /// A reply block (wasm/block.hpp). Never empty.
  [[nodiscard]] std::string answer(std::string_view request);

 private:
  /// Panels of searches with one budget.
  struct Kept {
    std::int64_t budget;
    std::unique_ptr<bond::PanelMemo> memo;
  };
  bond::PanelMemo& memo_for(std::int64_t budget);

  std::vector<Kept> kept_;  // the one used last comes last
};

}  // namespace stringcourse::border
