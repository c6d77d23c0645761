#pragma once
// The border between engine and page: one JSON request in, one block of sections out. The same sources stand in the
// WebAssembly module and, for tests and benches, in a native library.
//
//   border::Border border;
//   std::string block = border.answer(R"({"border": 1, "job": "{...}", "drawings": ["plan-course-1"]})");
//
// Sections, in this order, each if it was asked for and can be made: reply.json (names all the others), answer.json or
// refusals.json, job.json (if begin or edits were given), NAME.svg for each drawing, course.json, solids.json,
// set-PAPER.pdf.
#include <cstdint>
#include <expected>
#include <optional>
#include <string>
#include <string_view>

#include "solve/solve.hpp"
#include "wasm/quick.hpp"

namespace stringcourse::border {

struct Source;

/// Keeps what saves time between requests: panels that were laid without a search, for the next frame of a drag, and
/// the last answer, for another drawing of the same job and for the same job with more in its logs. What was asked
/// before changes the time of an answer, never its bytes.
class Border {
 public:
  /// A reply block (wasm/block.hpp). Never empty.
  [[nodiscard]] std::string answer(std::string_view request);

 private:
  [[nodiscard]] std::expected<Answer, Refusals> answer_of(const Job& job, const Wishes& wishes);
  [[nodiscard]] std::expected<Answer, Refusals> quick_answer_of(const Source& source, Wishes wishes);

  struct Last {
    std::int64_t budget;
    Answer answer;
  };
  Quick quick_;
  std::optional<Last> last_;
};

}  // namespace stringcourse::border
