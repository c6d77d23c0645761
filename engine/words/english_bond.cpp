// Where no layout fills the wall.
#include "words/english.hpp"

namespace stringcourse::words {
namespace {

constexpr Sentence kSentences[] = {
    // What stops it.
    {"stopped-by-limit", "the search ran out of its budget before any layout was found"},
    {"stopped-by-bearing",
     "a one-piece lintel finds no masonry of this wall to bear on, clear of corners and control joints"},
    {"stopped-by-laps",
     "each course can be filled, but no two rows keep a lap of a quarter unit with the bars in their cells"},
    {"stopped-by-bars", "no row keeps the fixed bars in whole cells and uncut units under the bearings"},
    {"stopped-by-ends",
     "the ends of this part of the wall overlap by {0}: the corner units or the lintel beside it take more room than "
     "there is"},
    {"stopped-by-pieces", "no pieces of at least {0} with joints from {1} to {2} fill {3}"},
    // What mends it.
    {"stop-mend-split", "move an opening to a half-unit line, or split the wall with a control joint"},
    {"stop-mend-lintel",
     "move the opening from the corner or joint by half a unit, ask for a shorter bearing, or build the lintel of "
     "units"},
    {"stop-mend-bars", "move an opening or a bar to a half-unit line, or ask for another lintel bearing"},
    {"stop-mend-longer-or-shorter", "make this part of the wall {0} longer or {1} shorter"},
    {"stop-mend-longer", "make this part of the wall {0} longer"},
    {"stop-mend-shorter", "make this part of the wall {0} shorter"},
    {"stop-mend-move-beside", "move the opening or the corner beside it by half a unit"},
    {"stop-mend-bearing-or", "ask for a bearing of {0}, one half unit, at {1}; or {2}"},
};

}  // namespace

std::span<const Sentence> english_bond() { return kSentences; }

}  // namespace stringcourse::words
