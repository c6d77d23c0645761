#pragma once
// A language that nobody speaks: English with its vowels large, which marks every text and makes it longer. What shows
// a small vowel was not said in the reader's language; what overlaps has no room for another one.
#include <set>

#include "words/language.hpp"

namespace stringcourse::print_test {

/// "lAyIng" of "laying". What stands between braces is left, but for words to choose from.
[[nodiscard]] std::string marked(std::string_view pattern);
[[nodiscard]] const words::Language& other_language();
/// The first word of three letters or more with a small vowel that is none of `names`; "" if there is none.
[[nodiscard]] std::string unmarked_word(std::string_view text, const std::set<std::string, std::less<>>& names);

}  // namespace stringcourse::print_test
