#include "words/sheet_words.hpp"

namespace stringcourse::words {

std::string fill_in(std::string_view pattern, std::initializer_list<std::string> values) {
  std::string filled;
  for (std::size_t at = 0; at < pattern.size(); ++at) {
    const bool place = pattern[at] == '{' && at + 2 < pattern.size() && pattern[at + 2] == '}';
    const std::size_t index = place ? static_cast<std::size_t>(pattern[at + 1] - '0') : values.size();
    if (index < values.size()) {
      filled += values.begin()[index];
      at += 2;
    } else {
      filled += pattern[at];
    }
  }
  return filled;
}

}  // namespace stringcourse::words
