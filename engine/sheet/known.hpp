#pragma once
// Where a figure comes from, and how that is known.
#include <string>

#include "catalogue/series.hpp"
#include "words/sheet_words.hpp"

namespace stringcourse::sheet {

[[nodiscard]] inline std::string known_text(const words::SheetWords& words, const Source& source) {
  if (source.text.find(knowledge_name(source.knowledge)) != std::string::npos) return source.text;
  const std::string known(words.knowledge[static_cast<std::size_t>(source.knowledge)]);
  return words::fill_in(words.how_known, {source.text, known});
}

}  // namespace stringcourse::sheet
