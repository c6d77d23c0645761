#include "measure/quoted.hpp"

#include "measure/characters.hpp"

namespace stringcourse {

std::string quoted(std::string_view text) {
  std::size_t offset = 0;
  for (std::size_t count = 0; offset < text.size() && count < kQuotedLength; ++count) {
    offset += character_at(text, offset).size();
  }
  return "\u201C" + with_unshown_spelled(text.substr(0, offset)) + (offset < text.size() ? "...\u201D" : "\u201D");
}

}  // namespace stringcourse
