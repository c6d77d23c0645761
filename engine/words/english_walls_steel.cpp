// Bars, dowels that are kept, bond beams, wire and grout pours.
#include "words/english.hpp"

namespace stringcourse::words {
namespace {

constexpr Sentence kSentences[] = {
    // Bars.
    {"bar-size", "No bar is called {0}."},
    {"bar-metric-in-inch",
     "{0} is a metric bar, and {1} is a block made to the inch: a yard that sells the one may not have the other. The "
     "nearest is {2}; ask your engineer before you take it."},
    {"bar-inch-in-metric",
     "{0} is a bar sold by eighths of an inch, and {1} is a metric block: a yard that sells the one may not have the "
     "other. The nearest is {2}; ask your engineer before you take it."},
    {"wire-none",
     "Joint reinforcement on every {0} courses: of {1} courses none has it, for none lies on the last. Say {2} or "
     "less."},
    {"trusses-beyond-wall",
     "The first truss on {0}, {1} along it, stands {2} past its end: the wall is {3} long. No truss keeps bolts away "
     "there: say its place anew."},
    {"bar-spacing", "A bar spacing of {0} is less than that of the cells, {1}."},
    {"state-or-more", "State {0} or more."},
    {"spacing-off-cells",
     "A bar every {0} would fall on webs: cells come every {1}. Bars stand in cells, never farther apart than asked; "
     "every {2} and every {3} fall on cells."},
    {"series-without-cells", "Bars are asked for, but {0} has no known cell that takes grout."},
    {"choose-series-with-cells", "Leave the bars out, or choose a series with cells (or state the cells of your own)."},
    {"walls-without-bars", "Walls of {0} take no bars: no known cell takes grout."},
    {"bar-on-wall-without-cells", "A bar is asked for on {0}, whose series {1} has no known cell that takes grout."},
    {"leave-bar-out", "Leave the bar out, or build this wall of a series with cells."},
    {"bar-no-room-at-jamb",
     "Beside a jamb of {0} there is no cell for a bar: its middle would stand {1} from the edge, where there is no "
     "masonry."},
    {"bar-no-room-at-joint",
     "Beside a control joint on {0} there is no cell for a bar: its middle would stand {1} from the edge, where there "
     "is no masonry."},
    {"leave-pier", "Leave a pier of at least {0} there."},
    {"bar-under-lintel",
     "The jamb bars of {0} come up under the ends of its one-piece lintel: it needs cored ends, or the bars stop below "
     "it."},
    {"bar-past-end", "The bar at {0} stands past the end of {1} ({2} long)."},
    {"bar-in-opening", "The bar at {0} stands in {1}."},
    {"move-into-cell", "Move it into a cell of the wall."},
    {"bar-serves-jamb",
     "The bar dimensioned {0} from {1} on {2} stands in the cell of the bar beside a jamb of {3}: it is that bar too, "
     "{4} from the middle of its cell."},
    {"bar-serves-joint",
     "The bar dimensioned {0} from {1} on {2} stands in the cell of the bar beside a control joint: it is that bar "
     "too, {3} from the middle of its cell."},
    // Laps, and bars as pieces.
    {"lap-not-picked",
     "No lap rule is picked, so bars are not cut to length. The list shows what each rule comes to: pick the one that "
     "your drawings name."},
    {"lap-lacks-length", "Bars lap as drawn, but how far is not said."},
    {"lap-lacks-stress", "The lap rule picked needs the stress that the bars are used at."},
    {"lap-lacks-both", "The lap rule picked needs the strength of the masonry and the yield strength of the bars."},
    {"lap-lacks-yield", "The lap rule picked needs the yield strength of the bars."},
    {"lap-lacks-masonry", "The lap rule picked needs the strength of the masonry."},
    {"beam-bars-not-said", "Which bars lie in the bond beams is not said: they are as your drawings say."},
    {"beam-bars-at-joints",
     "Whether beam bars stop at control joints or pass through is not said: where a wall has joints they are not "
     "listed."},
    {"lintel-bars-not-said",
     "Which bars lie in the lintels built of units is not said: they are as your drawings say."},
    {"lap-of-wall", "on {0}"},
    {"lap-of-beams", "in the bond beams"},
    {"lap-below-equation",
     "By the rule picked {0} bars lap {1}. That is shorter than TMS 402's equation gives {2}, where {3} of masonry is "
     "round them: {4} (f'm and yield strength as the job says, else 1500 psi and 60000 psi). Ask the engineer before "
     "bars are cut."},
    {"dowel-lap-below-equation",
     "Dowels {0} stand up {1}. That is shorter than TMS 402's equation gives {2}, where {3} of masonry is round them: "
     "{4} (f'm and yield strength as the job says, else 1500 psi and 60000 psi). Ask the engineer before the pour."},
    {"bar-longer-than-stock",
     "{0} {0|piece is|pieces are} longer than the {1} that bars are sold at: the longest, on {2}, takes {3}, and no "
     "lap on a course shortens it. Ask the yard for longer bars, or let pours stop lower."},
    {"lap-no-room",
     "At corner {0} in course {1} the beam is shorter than the leg of a corner bar, {2}: how it is held there is for "
     "your drawings to say."},
    {"wire-stock-short",
     "Joint reinforcement sold in lengths of {0} has no room for laps of {1}: its pieces are not counted."},
    {"wire-tee-unfit",
     "Legs of {0} are too short for tees: past a wall {1} thick they do not reach a lap of {2}. Say a longer leg, or "
     "that there are no tees."},
    {"wire-leg-unfit",
     "Legs of {0} round corners do not go with laps of {1} and stock lengths of {2}: the pieces of joint "
     "reinforcement are not counted."},
    {"bar-too-thick",
     "{0} bars are thicker than half of the {1} that {2} leaves clear for them; {3} is the thickest that is not."},
    {"bar-too-thick-none",
     "{0} bars are thicker than half of the {1} that {2} leaves clear for them, as all others are."},
    {"bars-abreast",
     "{0} {1} {0|bar does|bars do} not lie side by side in these blocks with grout between and beside them: {2}. Their "
     "laps mean nothing then; ask your engineer for fewer, thinner, or bars in two courses."},
    {"bars-abreast-most", "{0} {0|does|do}"},
    {"bars-abreast-none", "not even one does"},
    // Room for bars.
    {"bars-too-near",
     "On {0} the bars at {1} and {2} from {3} leave {4} of grout between them; bars side by side want {5}. Set them "
     "{6} apart or more, centre to centre, unless one laps the other and your drawings say so."},
    {"bars-meet",
     "On {0} the bars at {1} and {2} from {3} meet; bars side by side want {4}. Set them {5} apart or more, centre to "
     "centre, unless one laps the other and your drawings say so."},
    {"bar-beside-corner-bar",
     "The bar dimensioned {0} from {1} on {2} stands in the cell of another bar at corner {3}, {4} from it."},
    {"dimension-at-corner-bar", "One cell, one bar: dimension it {0} from {1} (actual), or leave one of the two out."},
    {"bar-in-corner-fine-grout",
     "The bar dimensioned {0} from {1} on {2} has {3} of grout to the corner units at {4}; fine grout needs {5}."},
    {"bar-in-corner-coarse-grout",
     "The bar dimensioned {0} from {1} on {2} has {3} of grout to the corner units at {4}; coarse grout needs {5}."},
    {"dimension-in-corner-cell", "Dimension it {0} from {1} (actual), in the middle of the corner units' cell."},
    {"corner-bar-in-fine-grout",
     "At corner {0} the bar {1} has {2} of grout to the unit round it, and fine grout needs {3}. Ask for a thinner "
     "bar, or for no bars in corners."},
    {"corner-bar-in-coarse-grout",
     "At corner {0} the bar {1} has {2} of grout to the unit round it, and coarse grout needs {3}. Ask for a thinner "
     "bar or fine grout, or for no bars in corners."},
    {"bar-across-in-fine-grout",
     "Between the shells of {0} there are {1}; a bar {2} in fine grout needs {3}. Ask for a thinner bar, or a thicker "
     "unit."},
    {"bar-across-in-coarse-grout",
     "Between the shells of {0} there are {1}; a bar {2} in coarse grout needs {3}. Ask for a thinner bar or fine "
     "grout, or a thicker unit."},
    // Dowels that are kept.
    {"dowel-not-read", "No reading {0} of a dowel counts: nothing is kept for it."},
    {"dowel-off-masonry", "The dowel {0} was not found where a bar of a wall may stand: it is not kept."},
    {"dowel-twice", "The dowel {0} stands within a bar's thickness of another that is kept: it is taken for that one."},
    {"dowel-in-corner",
     "The dowel {0} stands {1} from the bar of corner {2}, in its cell: the bar stays where the corner units hold it."},
    {"dowel-without-grout", "The dowel {0} lacks its grout in the corner units: it is not kept."},
    {"dimensioned-bar-moved",
     "The bar dimensioned {0} from {1} on {2} is set at the dowel {3}, which is kept at {4}: {5} off. One cell, one "
     "bar: dimension it there, or leave the dowel out of those kept."},
    // Bolts of the plate.
    {"bolt-ends", "Bolts are to stand at least {0} from an end of the plate, and at most {1}."},
    {"bolt-ends-swap", "Say a least that is no more than the most."},
    {"top-spacing", "{0} is less than this program's least spacing on top of a wall, {1}."},
    {"top-spacing-more", "State at least {0}."},
    // Beams, wire and pours.
    {"bond-beam-half-high",
     "Course {0} is half-high and a bond beam: no bond-beam unit is made so. Cut the webs of half-high units down for "
     "it, or put the beam in a whole course."},
    {"bond-beam-not-stocked",
     "The yard stocks no bond-beam units: whole units with their webs cut down stand in the beam courses."},
    {"wire-every", "Wire every {0} courses."},
    {"state-one-or-more", "State 1 or more."},
    {"pour-order", "A pour stops at course {0} after one at course {1}."},
    {"list-courses-upward", "List the courses from the bottom up, each once."},
    {"cleanout-pour",
     "The grout pour from course {0} up is {1} high, over {2}: every bar's cell has a cleanout in that course, in a "
     "corner's unit too."},
    {"pour-too-tall",
     "A grout pour of {0} is taller than the grout-space table goes ({1}): stop the grout at more courses."},
};

}  // namespace

std::span<const Sentence> english_walls_steel() { return kSentences; }

}  // namespace stringcourse::words
