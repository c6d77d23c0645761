// Openings, their lintels, and control joints.
#include "words/english.hpp"

namespace stringcourse::words {
namespace {

constexpr Sentence kSentences[] = {
    // What an opening states.
    {"openings-with-one-name", "Two openings are called {0}."},
    {"opening-sizes", "An opening states exactly one of masonry, door, overhead and window."},
    {"state-one-size", "State the size of the hole, or of what goes into it."},
    {"opening-size", "The opening would be {0} wide and {1} high."},
    {"state-sizes-above", "State sizes above {0}."},
    {"opening-with-two-sills", "{0} states a sill height and a sill course."},
    {"opening-with-floor-and-sill", "{0} stands on a floor and states a sill."},
    {"window-with-floor", "{0} is a window and states a floor."},
    {"window-without-sill", "{0} is a window and states no sill."},
    {"state-floor-or-sill", "State a floor for a door, one of \"sill\" and \"sill_course\" for a window."},
    // In height.
    {"opening-level", "{0} would start at {1}, not below the top of the wall (course {2}, {3})."},
    {"top-of-course", "the top of course {0}"},
    {"lower-opening", "Lower it, or build the wall higher."},
    {"sill-off-course", "The sill of {0} asked at {1} falls on no course line: it stands on course {2} at {3}."},
    {"head-off-course",
     "The head of {0} asked {1} above its underside falls on no course line. Heights that fit (actual): {2} and {3}. "
     "The taller is taken: {4} is to be packed."},
    {"head-in-first-course",
     "The head of {0} asked {1} above its underside falls on no course line. The height that fits (actual): {2}. {3} "
     "is to be packed."},
    {"no-lintel", "{0} reaches the top of the wall: no lintel closes it."},
    // Along the wall.
    {"opening-leaves-wall", "{0} reaches {1} too far toward {2}: no masonry is left of {3} at that corner or end."},
    {"pier-short-at-end",
     "Between {0} and the end of the wall at {1} only {2} is left, less than the least piece {3}."},
    {"or-to-wall-as-jamb", "Or {0} toward {1}: then the other wall is its jamb."},
    {"openings-overlap", "{0} and {1} overlap by {2}."},
    {"pier-short-between", "The pier between {0} and {1} is {2}, less than the least piece {3}."},
    {"opening-on-junction", "{0} stands where {1} meets {2}."},
    {"side-room", "Beside {0} toward {1} there is {2} of wall; its door asks for {3}."},
    {"head-room", "Above {0} there is {1} of wall; its door asks for {2} of head room."},
    // Lintels.
    {"lintel-bearing", "The lintel of {0} bears {1}; the least is {2}."},
    {"lintel-piece-of-units",
     "The lintel of {0} is built up of units, and yet what a piece is or weighs is said of it: say that it is one "
     "piece, "
     "or leave that out."},
    {"lintel-half-high",
     "The lintel of {0} would be built of units in half-high course {1}, {2} high: no lintel or bond-beam unit is made "
     "so."},
    {"ask-for-one-piece",
     "Ask for a lintel in one piece, put the half-high course elsewhere (\"half_high\" in the heights), or lower the "
     "head."},
    {"lintel-deep", "The lintel of {0} is {1} courses deep and bears {2}; {3} courses stand above the opening."},
    {"state-lintel", "State from 1 to {0} courses and a bearing above 0, or lower the head."},
    {"lintel-overhangs", "The lintel of {0} reaches {1} past the end of the wall at {2}."},
    {"or-bear-less", "Or let it bear less."},
    {"lintel-in-opening", "The lintel of {0} reaches {1} into {2}."},
    {"bearings-overlap", "The bearings of the lintels of {0} and {1} overlap by {2}."},
    {"or-span-both", "Or let one block lintel span both."},
    // Control joints.
    {"control-joint-kept-off-grid",
     "The control joint stands {0} off the half-unit grid, as its place is actual: cuts close against it."},
    {"control-joint-moved-to-grid",
     "The control joint stands {0} off the half-unit grid: it is moved to the nearest line of the grid, its near edge "
     "at {1} from {2}."},
    {"control-joint-in-opening", "A control joint runs through {0}."},
    {"control-joint-in-bearing", "A control joint runs through the lintel bearing of {0}."},
    {"control-joint-near-end", "A control joint on {0} leaves {1} of wall at {2}, less than the least piece {3}."},
    {"control-joint-on-junction", "A control joint stands where {0} meets {1}."},
    {"move-beside-wall", "Move it to one side of that wall."},
    {"control-joints-too-near", "Two control joints on {0} stand nearer than the least piece {1}."},
    {"leave-one-out", "Leave one of them out."},
    {"pier-short-at-joint", "Between the control joint and {0} only {1} is left, less than the least piece {2}."},
    {"move-off-jamb", "Move it at least {0} away, or to the jamb."},
    {"control-joint-near-lintel",
     "The control joint stands {0} clear of the lintel bearing of {1}; a half unit is {2}."},
    {"control-joint-no-place",
     "On {0} no control joints find room, clear of openings, bearings and junctions, within the {1} of the rule (half "
     "of it from a corner): the longest panel is {2}."},
    {"control-joint-rule",
     "Control joints by rule: walls {0} high, panels of at most {1} (whole half units), the first within half of that "
     "from a corner."},
    {"control-joint-rule-off",
     "No control joints by rule: horizontal steel of at least 0.002 of the net section is said to run through."},
};

}  // namespace

std::span<const Sentence> english_walls_openings() { return kSentences; }

}  // namespace stringcourse::words
