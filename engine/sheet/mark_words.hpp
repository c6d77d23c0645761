#pragma once
// What was read at the wall, in words.
#include <string>

#include "laying/as_laid.hpp"
#include "sheet/context.hpp"

namespace stringcourse::sheet {

/// How far past its mark something stands, or short of it.
[[nodiscard]] std::string past_text(const Context& context, Length past);
/// The same of a mark that was read, with its doubt; empty where it was not.
[[nodiscard]] std::string found_text(const Context& context, const laying::WallMark& mark);

}  // namespace stringcourse::sheet
