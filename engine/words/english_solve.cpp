// What a layout says of itself: rules given up, lintels, dowels; offers; what was found otherwise, and what changes.
#include "words/english.hpp"

namespace stringcourse::words {
namespace {

constexpr Sentence kSentences[] = {
    // The layout
    {"piece-relaxed", "a piece shorter than {0} stands in the wall: nothing longer closes it"},
    {"piece-relaxed-unproven", "a piece shorter than {0} stands in the wall: nothing longer was found that closes it"},
    {"cut-under-bearing", "a saw cut with a whole cell stands under a lintel bearing: fill that cell"},
    {"short-laps",
     "{0} {0|joint lap is|joint laps are} short: head joints stand off the middle of the unit below, though never "
     "nearer to its end than a quarter unit"},
    {"bars-beyond-spacing", "{0} {0|bar|bars} more than the spacing asked for needs: cells do not fall on it"},
    {"not-proven-even-joints",
     "No layout has fewer short joint laps or saw cuts; whether another has more even joints was not searched to the "
     "end."},
    {"not-proven-conceded",
     "No layout that keeps every rule was found; one that gives up fewer may exist: the search stopped at this "
     "program's limit."},
    {"not-proven",
     "This layout keeps the rules, but a better one may exist: the search stopped at this program's limit."},

    // Bolts of the plate
    {"bolt-no-place",
     "On {0}, from {1}, no grouted cell takes a bolt from {2} to {3} clear of what bolts keep clear of. Ask your "
     "engineer: a cell more to fill there, a bond beam on top, or a strap instead."},
    {"bolt-no-place-next",
     "On {0}, from {1}, no grouted cell takes a bolt from {2} to {3} clear of what bolts keep clear of: the next one "
     "stands at {4}. Ask your engineer: a cell more to fill there, a bond beam on top, or a strap instead."},

    // Rules given up: the wall, the places, from where these are measured
    {"conceded-joints",
     "On {0} no pieces close these runs with joints in the range asked for; joints as wide as this do: {1}, from {2}. "
     "Cut one unit to fit, or change the length by what they are off."},
    {"conceded-bar",
     "On {0} no whole cell takes these bars in these courses: {1}, from {2}. Move the bar to the nearest cell with "
     "your engineer's word, or break the web out there and fill it as your engineer says."},
    {"conceded-bar-cells",
     "On {0} the cells of these bars lie too far off the cells of the course below for grout to flow: {1}, from {2}. "
     "Move the bar or break the web out between them, as your engineer says."},
    {"conceded-bar-spacing",
     "On {0} no cell that all courses share lies within the spacing asked for; bars stand farther apart: {1}, from "
     "{2}. Ask your engineer whether that will do, or move the opening beside it to a half-unit line."},
    {"conceded-bearing",
     "On {0} a saw cut without a whole cell stands under a lintel's end: {1}, from {2}. Ask your engineer; or move the "
     "opening to a half-unit line, or ask for another bearing."},
    {"conceded-lap",
     "On {0} head joints lap less than a quarter unit: {1}, from {2}. The usual remedy is joint reinforcement in the "
     "bed between: ask your engineer."},
    {"conceded-face",
     "On {0} one saw cut fills this run, and its sawn end shows: {1}, from {2}. Turn it to the side that a frame or "
     "the joint's sealant hides, or move the opening."},
    {"conceded-stack",
     "On {0} head joints stand nearly above one another: {1}, from {2}. Ask your engineer: such a stretch counts as "
     "stack bond and wants reinforcement in the beds."},
    {"conceded-corner",
     "On {0} no uncut unit turns the corner: {1}, from {2}. Ask your engineer how the corner is tied; or change the "
     "length of this side."},
    {"bare-stretch",
     "On {0} no unit fills these stretches, and they are drawn bare: all else is laid: {1}, from {2}. Fill it with "
     "mortar, brick or sawn solid units as your yard has them; if a lintel or a bar depends on it, ask your engineer."},
    {"given-up-at", "at {0}"},
    {"given-up-at-course", "course {1} at {0}"},
    {"given-up-from-to", "from {0} to {1} ({2})"},
    {"given-up-from-to-course", "course {3} from {0} to {1} ({2})"},
    {"given-up-bare", "course {2} from {0} to {1}"},
    {"and-more", "and {0} more"},
    {"ask-half-unit-bearing", "Or ask for a bearing of {0}, one half unit, at {1}."},

    // Lintels
    {"lintel-floor",
     "The lintel units of {0} have floors, and bars pass {1} of them: break the floor out there before the unit is "
     "laid (side-course-unit, middle of the bar): {2}."},
    {"lintel-floor-one",
     "The lintel units of {0} have floors, and bars pass one of them: break the floor out there before the unit is "
     "laid (side-course-unit, middle of the bar): {1}."},
    {"at-in-unit", "{0} at {1}"},
    {"places-from", "{0} from {1}"},
    {"places-and-more-from", "{0} and {1} more from {2}"},
    {"lintel-soffit",
     "Bond-beam units span {0}: the yard stocks no lintel unit that fits. They are open underneath: form and shore the "
     "soffit, {1} long, before grout goes in."},
    {"nothing-spans",
     "Nothing in the yard spans {0}: plain units stand over it, which take no bars and carry nothing. Have lintel or "
     "bond-beam units of this height, halves too, or ask for a lintel in one piece."},
    {"lintel-bearing-short",
     "The lintel of {0} bears {1} toward {2} as laid; {3} is asked. Its course ends there: ask your engineer, or move "
     "the opening."},
    {"lintel-bearing-plain",
     "The lintel of {0} bears on into the corner unit at {1}, which takes no bars along the wall: cut its webs down so "
     "that bars and grout reach it, and fill it."},
    {"lintel-bearing-joint",
     "The bearing asked ends in a joint over {0}: {1} {1|end takes one more unit.|ends take one more unit each.} "
     "Bearings are actual: a half unit bears {2}. If your drawings mean a nominal size, ask for that."},

    // Slab and dowels
    {"slab-not-read", "Where the walls sit on the slab is not read yet: read {0} too."},
    {"slab-too-small",
     "However the building is shifted and turned, a face or a dowel lacks room on the slab: {0} at the best."},
    {"dowels-saved-by-layout",
     "Of {0} dowels found {1} stand. Laid otherwise, with bars where the dowels are (kept_dowels in the job), {2}."},
    {"dowels-saved-not-all-tried",
     "Of {0} dowels found {1} stand. Laid otherwise, with bars where the dowels are (kept_dowels in the job), {2}. Not "
     "every set of dowels was tried."},
    {"or-otherwise", "or {0}"},
    {"dowel-little-room",
     "Set these dowels of {0} with care: out of place by more than this they lose the grout round them in course 1 or "
     "2. {1}."},
    {"dowel-number-room", "{0}: {1}"},
    {"dowel-found", "Dowel at {0} on {1}: {2}."},
    {"at-on-wall", "{0} at {1}"},
    {"dowel-without-bar", "No bar comes down to these dowels now: {0}. Ask your engineer before one is cut off."},
    {"bar-without-dowel", "These bars have no dowel: {0}. Ask your engineer how one is set."},
};

}  // namespace

std::span<const Sentence> english_solve() { return kSentences; }

}  // namespace stringcourse::words
