#include "words/english.hpp"

#include "words/sheet_words.hpp"

namespace stringcourse::words {

const Language& english() {
  static const Language kLanguage{
      {english_common(), english_job(), english_walls(), english_walls_units(), english_walls_openings(),
       english_walls_steel(), english_edits(), english_bond(), english_ground(), english_laying(), english_solve(),
       english_changes(), english_rules(), english_order(), english_page(), english_command()},
      kEnglish,
      american_sheets()};
  return kLanguage;
}

}  // namespace stringcourse::words
