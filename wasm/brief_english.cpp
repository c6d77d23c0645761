// English as far as a brief answer tells it. The module that links this leaves words/english.cpp, and with it what is
// told of the ground, the laid log, orders, days, pages and commands, out. scripts/sentences.py holds the rooms that a
// brief answer is made in to these groups.
#include "words/english.hpp"
#include "words/sheet_words.hpp"

namespace stringcourse::words {

const Language& english() {
  static const Language kLanguage{
      {english_common(), english_job(), english_walls(), english_walls_units(), english_walls_openings(),
       english_walls_steel(), english_edits(), english_bond(), english_solve(), english_rules()},
      kEnglish,
      american_sheets()};
  return kLanguage;
}

}  // namespace stringcourse::words
