// The page's hold points.
#include "words/english.hpp"

namespace stringcourse::words {
namespace {

constexpr Sentence kSentences[] = {
    // What is asked at the hold points
    {"ask-whole-units", "Does every side close with whole units?"},
    {"ask-course-lines", "Do heads and sills fall on course lines?"},
    {"ask-yard", "Will the yard have the units?"},
    {"ask-dowel-places", "Where must each dowel stand so that it comes up inside a cell?"},
    {"ask-lines-square", "Are the lines square and level?"},
    {"ask-poured-square", "Is what was poured square and the right size?"},
    {"ask-poured-level", "Is it level enough for the first bed?"},
    {"ask-walls-sit", "Where do the walls sit on it?"},
    {"ask-dowels-in-cells", "Does every dowel come up in a cell?"},
    {"ask-jambs-agree", "Do jambs, head course and the lintel's bearing agree?"},
    {"ask-lintel-held", "What holds the lintel up meanwhile?"},
    {"ask-steel-cells", "Is the right steel in the right cells?"},
    {"ask-pour-heights", "How high is each pour, and in what order?"},
    {"ask-cleanouts-open", "Are the cleanouts open and the cells clean?"},
    {"ask-looked-at", "Was all looked at that grout will hide?"},
    {"ask-bolts-grouted", "Are bolts in grouted cells, clear of trusses and splices?"},
    {"ask-wall-came-to", "What size and level did the wall come to?"},

    // What is said to that
    {"says-not-laid", "{0} {0|stretch has|stretches have} no layout."},
    {"says-conceded", "{0} saw {0|cut|cuts}, and {1} {1|place gives|places give} a rule up."},
    {"says-cuts", "{0} saw {0|cut|cuts}."},
    {"says-no-cuts", "{0} units, none of them sawn."},
    {"says-no-openings", "There are no openings."},
    {"says-on-lines", "{0} {0|opening|openings}, each on course lines."},
    {"says-stocked", "Units of {0} {0|kind|kinds}, all of them said to be in stock."},
    {"says-dowels-listed", "{0} {0|dowel has its place|dowels have their places} in the dowel list."},
    {"says-corner-off", "{0} is farthest off its place: {1}; {2} is allowed."},
    {"says-lines-so-far", "{0} {0|line|lines} taped, at most {1} off the plan. Tape {2} too before it can be told."},
    {"says-levels-so-far",
     "The points read so far lie within {0}; a level first course can take {1}. Under {2} units nothing is read: read "
     "the rod at {3} too."},
    {"says-beds", "Beds of {0} to {1}; {2} to {3} is allowed."},
    {"says-slab-room", "Where they fit best, {0} are left to the nearest edge or dowel."},
    {"says-no-dowels", "No dowels are asked for."},
    {"says-dowels-out", "{0} of {1} measured need something done: see the list of dowels as found."},
    {"says-dowels-unsure", "{0} {0|stands|stand} so near a limit that the reading can't tell."},
    {"says-dowels-left", "{0} of {1} are measured, and stand."},
    {"says-dowels-stand", "{0} measured, and all of them stand."},
    {"says-lintels-bear", "{0} {0|lintel bears|lintels bear} as asked."},
    {"says-no-shores", "No lintel is built of units: each holds itself once it is set."},
    {"says-shores",
     "{0} {0|lintel|lintels} of units: each stays on its shores until your engineer, or your drawings, let it go."},
    {"says-bars-in-cells", "{0} {0|bar|bars}, each in whole cells."},
    {"says-pours", "Pours stop at the top of course {0}."},
    {"says-no-cleanouts", "No pour is so high that it asks for cleanouts."},
    {"says-cleanouts", "{0} {0|cleanout|cleanouts}: whether they are open, and the cells clean, is seen on site."},
    {"says-cleanouts-seen", "All {0} {0|cleanout|cleanouts} ticked in the list."},
    {"says-looked-at", "{0} of {1} boxes of the list before the pour are ticked."},
    {"says-nothing-hidden", "Nothing is grouted: nothing will be hidden."},
    {"says-bolts-placed", "{0} {0|bolt stands|bolts stand} in grouted cells of the top course, as the drawings ask."},
    {"says-bolts", "The top course is a bond beam. Where the bolts stand is not said."},
    {"says-checks-out", "{0} of {1} checks of the top course are out of tolerance."},
    {"says-checks-unsure", "{0} of {1} checks of the top course are so near a limit that the reading can't tell."},
    {"says-checks-fit", "{0} {0|check|checks} of the top course, all within tolerance."},

    // What is to be read next
    {"read-line", "Tape {0} to {1}"},
    {"read-line-again", "Tape {0} to {1} again"},
    {"read-rod-corner", "Rod on {0}"},
    {"read-rod-place", "Rod on {0}, {1} from its start"},
    {"read-edge", "Slab's edge at {0}, {1} from its start"},
    {"read-dowel", "Dowel {0} of {1}, planned at {2}"},

    // What they still lack
    {"lack-slab", "No edge of the slab is read yet."},
    {"lack-slab-too", "Where the walls sit on the slab is not read yet: read {0} too."},
    {"lack-name", "The job has no name; sheets are told apart by it."},
    {"lack-stocked", "What the yard stocks is not said: every kind that the series is made in is counted on."},
    {"lack-cells", "The cells of the {0} are assumed: measure a block of the yard's."},
    {"lack-bars",
     "No upright bars are asked for: size and spacing come from your drawings, the local code or an engineer."},
    {"lack-setting-out", "Boards, footing and line are not said: no setting-out card is printed."},
    {"lack-lines-read", "Lines and boards: no readings of sides and diagonals yet."},
    {"lack-poured-read", "What was poured: no readings of sides and diagonals yet."},
    {"lack-poured-taped", "The lines were taped before the pour: tape what was poured."},
    {"lack-lines-too", "Sides and diagonals are not all read yet: tape {0} too."},
    {"lack-tape-again", "The tapings do not fit together: tape lines again before a peg is moved."},
    {"lack-rod", "No rod readings along the walls yet: the first bed is not known."},
    {"lack-rod-on-slab", "The rod was not read on the footing or slab yet: read it at every corner."},
    {"lack-dowels", "No dowel is measured yet: does each come up in a cell?"},
    {"lack-bed", "The footing or slab under {0} units of the first course is not read: read the rod at {1} too."},
    {"lack-lintel",
     "The lintel of {0} is not said: one built of units, one course deep, is drawn. Its steel comes from an engineer "
     "or the local code."},
    {"lack-opening-number", "opening {0}"},
    {"lack-pours", "Where grout pours stop is not said, so whether cleanouts are needed is not known."},
    {"lack-top-beam", "The top course is no bond beam: what the plate bolts into is not said."},
    {"lack-as-laid", "The wall's size and level as laid: no readings yet."},
};

}  // namespace

std::span<const Sentence> english_page() { return kSentences; }

}  // namespace stringcourse::words
