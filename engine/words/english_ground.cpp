// What readings of the ground come to: tapings, pegs, rod readings, the first bed.
#include "words/english.hpp"

namespace stringcourse::words {
namespace {

constexpr Sentence kSentences[] = {
    // Entries that say nothing of this building, and why
    {"reading-not-placed", "Reading {0} does not count: {1}."},
    {"no-corner", "there is no corner {0}"},
    {"one-corner-twice", "both ends are the corner {0}"},
    {"no-wall", "there is no wall {0}"},
    {"no-wall-with-end", "there is no wall {0} with an end at {1}"},
    {"strike-of-nothing", "Entry {0} strikes {1}, and no earlier entry has that name."},
    {"hold-unknown", "There is no corner {0} whose peg could stay: the first that was taped stays."},

    // Tapings
    {"line-between", "{0} to {1}"},
    {"reading-slip",
     "{0} read {1}, where {2} is planned: {3}? Then it is {4}. It does not count until it is struck and entered anew."},
    {"second-taping-shorter", "{0} read {1}, {2} shorter than at first: one of the two is wrong."},
    {"second-taping-longer", "{0} read {1}, {2} longer than at first: one of the two is wrong."},
    {"taping-blunder", "{0} read {1} does not fit the others: it is left out. Tape it again."},
    {"tapings-disagree",
     "The tapings do not fit together, and which is wrong cannot be told from them. Tape again, in this order, until "
     "one differs from its first: {0}. No peg is moved before."},
    {"tapings-unchecked", "Sides and diagonals are not read yet: nothing checks the tapings. Tape {0}."},
    {"shape-not-held", "Sides and diagonals are not read yet: they do not hold the shape. Tape {0} too."},
    {"net-too-large", "More than {0} corners are taped together: this program's limit. None of them is worked out."},
    {"no-shape", "No shape near the plan has these tapings. Look for a reading that belongs to another line."},
    {"impossible-triangle",
     "{0} read {1}, more than {2} and {3} together: no triangle has such sides. One of the three is read or written "
     "wrong."},
    {"diagonals-differ",
     "{0} is {1} longer than {2}: in a rectangle the diagonals are alike. {3} is allowed, the tape's doubt is {4}. "
     "Where each corner is to go stands with the pegs."},
    {"diagonals-may-differ",
     "{0} is {1} longer than {2}: in a rectangle the diagonals are alike. {3} is allowed, the tape's doubt is {4}. The "
     "tape can't tell whether that is within it. Where each corner is to go stands with the pegs."},
    {"corner-off-place", "{0} stands {1} off its place; {2} is allowed, the tape's doubt is {3}."},
    {"corner-may-be-off-place",
     "{0} stands {1} off its place; {2} is allowed, the tape's doubt is {3}. The tape can't tell whether that is "
     "within it."},

    // What was probably meant by a reading
    {"slip-feet-for-inches", "feet written as inches"},
    {"slip-inches-for-feet", "inches written as feet"},
    {"slip-inches-for-millimetres", "inches written as mm"},
    {"slip-millimetres-for-inches", "mm written as inches"},
    {"slip-feet-for-millimetres", "feet written as mm"},
    {"slip-millimetres-for-feet", "mm written as feet"},
    {"slip-foot-lost", "a foot lost or counted twice"},
    {"slip-inch-burnt", "the tape held at its 1 in mark"},

    // How a peg moves
    {"peg-stays", "stays"},
    {"peg-moves", "{0}"},
    {"peg-toward", "{0} toward {1}"},
    {"peg-away-from", "{0} away from {1}"},

    // Verdicts
    {"verdict-fits", "fits"},
    {"verdict-does-not-fit", "does not fit"},
    {"verdict-cannot-tell", "can't tell"},
    {"verdict-not-read", "not read yet"},

    // Rod readings
    {"level-loose",
     "No chain of readings ties {0} to {1}: read one of its set-ups' points from a set-up that saw that one."},
    {"level-loop",
     "A loop of {0} rod readings comes back {1} off; up to {2} is within their doubt. Read it again before a block is "
     "laid."},
    {"station-two-places", "The point {0} was read at two places: the last one counts. Name each point differently."},
    {"rod-far",
     "The footing or slab at {0} comes out far from all others and is left out. Was the rod upside down, or the "
     "reading of another point? Strike it and read it again."},
    {"rod-far-slip",
     "The footing or slab at {0} comes out far from all others and is left out. Read wrong: {1}? Then the rod read "
     "{2}. Strike it and enter it anew."},
    {"instrument-looks-down", "The instrument looks down {0} over {1} (give or take {2}). {3}"},
    {"instrument-looks-up", "The instrument looks up {0} over {1} (give or take {2}). {3}"},
    {"instrument-corrected", "{0} rod readings with a sight are corrected by it."},
    {"instrument-alike", "Keep sights alike, or enter each sight so that the reading is corrected."},
    {"too-many-setups",
     "The rod was read from more than {0} set-ups: this program's limit. None of the heights is worked out."},
    {"from-to", "{0} to {1}"},
    {"door-floor",
     "{0} will be {1} high over the floor as read, {2} as planned. Set the frame or its threshold by it."},
    {"door-floor-unsure",
     "{0} will be {1} high over the floor as read, {2} as planned. The rod can't tell whether that is within its "
     "limit."},

    // The first bed
    {"at-corner", "{0}"},
    {"wall-end", "the end of {0}"},
    {"wall-end-at", "the end of {0} at {1}"},
    {"read-rod-too", " Read the rod at {0} too."},
    {"bed-not-read", "The first bed is not read yet under every block: nothing is said of it.{0}"},
    {"bed-cannot-tell",
     "At the best level the first course has beds from {0} to {1}; {2} to {3} is allowed. The readings are not sure "
     "enough to tell."},
    {"bed-out-of-range",
     "No level of the first course keeps its bed within {0} to {1}: the best has beds from {2} to {3}.{4}"},

    // What can be done about it
    {"choice-level", "lay to the best level"},
    {"choice-grout", "grout the whole first course, so that its bed may be up to {0}"},
    {"choice-tilt", "let the first course follow a slope, which the next beds take out again{0}"},
    {"choice-grind", "grind high spots at {0} {0|reading|readings}, at most {1}{2}"},
    {"choice-rip", "rip {0} {0|unit|units}, at most {1} off{2}"},
    {"choice-strip",
     "pour a strip of mortar or concrete, or lay solid units, under {0} {0|unit|units}, at most {1} thick{2}"},
    {"choice-half-high", "lay a half-high unit under {0} {0|unit|units}, where the bed would be this thick{1}"},
    {"choice-step", "step down a course under {0} {0|unit|units}, where the bed would be this thick{1}"},
    {"choice-curb", "pour a level curb under all walls, at most {0} high"},
    {"choice-where", ": {0}"},
    {"choice-at", "{0}: {1}"},
    {"choice-at-all", "{0}"},
    {"choice-at-and-more", "{0} and {1} more"},
    // What each gives up, or asks for
    {"gives-up-range", "Some beds stay out of their range."},
    {"gives-up-some-beds", "Some beds stay out of their range: another way is wanted there too."},
    {"gives-up-grout", "Every cell of the first course is filled, and it must stand on concrete."},
    {"gives-up-level", "The first course is not level: the next beds are laid to take it out."},
    {"gives-up-grind", "Silica dust: grind wet, with respirator, eye and ear protection."},
    {"gives-up-rip", "The sawn units are lower; silica dust: cut wet, with respirator, eye and ear protection."},
    {"gives-up-strip", "It must hold before the first course stands on it."},
    {"gives-up-half-high", "Half-high units are bought, and there is a bed joint more."},
    {"gives-up-step", "There is a course more in those places."},
    {"gives-up-curb", "Concrete is poured once more, and every wall stands that much higher."},
    {"gives-up-pour-again", "Only before the pour: afterwards the concrete there is broken out and poured anew."},
    {"gives-up-edge",
     "Faces leave the slab's edge by up to {0}: where a block would stand over it, ask your engineer first."},
    // What can be done where corners stand off their places
    {"peg-of-corner", "{0} {1}"},
    {"shape-move-pegs", "move pegs and forms: {0}"},
    {"shape-square-lines", "chalk the walls' lines square on what was poured, from {0}; from its corners: {1}"},
    // What was chosen, where no reading says how much of it
    {"chosen-tilt", "let the first course follow a slope"},
    {"chosen-grind", "grind high spots"},
    {"chosen-rip", "rip units of the first course"},
    {"chosen-strip", "pour a strip under low units, or lay solid ones there"},
    {"chosen-half-high", "lay half-high units where the ground is low"},
    {"chosen-step", "step down a course where the ground is low"},
    {"chosen-curb", "pour a level curb under all walls"},
    {"chosen-move-pegs", "move pegs and forms"},
    {"chosen-square-lines", "chalk the walls' lines square on what was poured"},
    // ... and what was read since
    {"chosen-otherwise", "Chosen: {0}. {1}"},
    {"chosen-not-read", "What it is for is not read, or not wholly read, any more."},
    {"chosen-not-enough", "By the readings now that is not enough: look at the other ways."},
    {"chosen-no-help", "By the readings now that does not help: look at the other ways."},
    {"chosen-no-need", "By the readings now the first bed fits without it."},
    {"chosen-fits-now", "By the readings now every corner stands in its place: nothing is to be moved."},
    {"chosen-poured-off", "What was poured stands off its place all the same."},
    {"chosen-was", "Readings taken since have changed it. When it was chosen it was: {0}."},

    // What one reading says by itself
    {"said-line-longer", "{0}: {1} longer than planned."},
    {"said-line-as-planned", "{0}: as planned."},
    {"said-line-shorter", "{0}: {1} shorter than planned."},
    {"said-alone", "{0} Whether it is square takes all the lines."},
    {"said-rod-first", "{0} is read: the other points are compared with it."},
    {"said-rod-higher", "{0} lies {2} higher than {1}."},
    {"said-rod-alike", "{0} lies as high as {1}."},
    {"said-rod-lower", "{0} lies {2} lower than {1}."},
    {"said-edge-beyond", "{0}: the slab reaches {1} beyond the face line."},
    {"said-edge-on", "{0}: the slab ends on the face line."},
    {"said-edge-short", "{0}: the slab stops {1} short of the face line."},
    {"slope", "{0}"},
    {"slope-level", "level along {0}"},
    {"slope-falls", "falls {0} along {1}"},
    {"slope-rises", "rises {0} along {1}"},
};

}  // namespace

std::span<const Sentence> english_ground() { return kSentences; }

}  // namespace stringcourse::words
