// What American masons say or spell otherwise. A value is named here only where it differs.
#include "words/english.hpp"
#include "words/sheet_words.hpp"

namespace stringcourse::words {
namespace {

SheetWords american() {
  SheetWords words = kEnglish;
  words.title_gauge_rod = "Story pole and corner leads";
  words.rod_note =
      "One pole, one datum: the top of course 1 is 0. Mark the pole with the course tops on one edge and names on the "
      "other.";
  words.bar_note = "Dots: bars, marked to their center.";
  words.lintel_bar_at = "Bar's center, from the corner";
  words.pour.centre_at = "Center";
  words.pour.list_note =
      "To the dowel's center. Never from dowel to dowel. To start, to end, across: how far it may be out of "
      "place, toward the end that the numbers start from, toward the other end, either way across, and still have {0} "
      "of grout between it and the block, in the cell courses 1 and 2 share; rounded down. A unit with another "
      "side's name is that side's. Cap every dowel.";
  words.pour.board_note =
      "Seen from above. Dots: dowel centers, numbered as in the list. Thick lines: openings, with their jambs.";
  words.mark_bar = "center of a bar";
  words.found_concrete = "{0} liters of mortar, {1} of concrete";
  words.found_mortar = "{0} liters of mortar in full beds";
  return words;
}

}  // namespace

const SheetWords& american_sheets() {
  static const SheetWords kAmerican = american();
  return kAmerican;
}

const SheetWords& words_of(const Building& building, const Language& language) {
  return language.sheets(is_american(building));
}

}  // namespace stringcourse::words
