#pragma once
// Which face, corner and hook the numbers of a wall are measured from, in words.
#include <string>

#include "setout/hook.hpp"
#include "words/sheet_words.hpp"

namespace stringcourse::sheet {

/// "outer corner A", "the inner face of AB": what stands at zero.
[[nodiscard]] std::string hook_text(const Building& building, int wall, const words::SheetWords& words);
/// "along its outer face", of an inner wall "along either face".
[[nodiscard]] std::string face_text(const Building& building, int wall, const words::SheetWords& words);
/// "All marks from outer corner A, along its outer face: hook the tape there once."
[[nodiscard]] std::string marks_from_text(const Building& building, int wall, const words::SheetWords& words);

}  // namespace stringcourse::sheet
