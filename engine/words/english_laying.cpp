// The wall while it is laid: marks, next joints, closures, checks; and its dowels.
#include "words/english.hpp"

namespace stringcourse::words {
namespace {

constexpr Sentence kSentences[] = {
    // Entries that say nothing of this building, and why
    {"laid-entry-unknown", "This entry is left out: {0}. Is it of another job?"},
    {"no-course", "there is no course {0}"},
    {"no-opening", "there is no opening {0}"},
    {"opening-not-in", "{0} is not in {1}"},

    // Readings at marks
    {"mark-reading-doubtful", "At {0} on {1}: {2}.{3} It is left out until it is read again or struck."},
    {"is-it", " Is it {0}"},
    {"doubtful-past", "{0} past is farther than any joint reaches ({1})"},
    {"doubtful-short", "{0} short is farther than any joint reaches ({1})"},
    {"likely-mark-past", "the mark at {0}, {1} past?"},
    {"likely-mark-short", "the mark at {0}, {1} short?"},
    {"likely-sixteenths-past", "sixteenths: {0} past?"},
    {"likely-sixteenths-short", "sixteenths: {0} short?"},
    {"likely-feet-past", "feet slipped on the tape: {0} past?"},
    {"likely-feet-short", "feet slipped on the tape: {0} short?"},
    {"likely-hundreds-past", "hundreds slipped on the tape: {0} past?"},
    {"likely-hundreds-short", "hundreds slipped on the tape: {0} short?"},
    {"mark-read-twice", "At {0} on {1} readings disagree: {2}. The last is used; strike the wrong one."},
    {"read-past", "{0} past"},
    {"read-short", "{0} short"},
    {"read-past-by", "{0} past ({1})"},
    {"read-short-by", "{0} short ({1})"},
    {"no-such-mark",
     "There is no block end at {0} in course {1} of {2}: the reading is left out. The layout may have changed since."},

    {"no-cell-to-fill", "the pour card has no cell or trough at {0} to the top of course {1} in {2}"},
    {"no-line-to-tick", "the inspection list has no such line at {0} in course {1} of {2}"},

    // The next joints, and what they do not keep
    {"next-joints", "next {0}"},
    {"joints-of", "{0} {0|joint|joints} of {1}"},
    {"then-joints-of", "then {0} {0|joint|joints} of {1}"},
    {"no-joint", "no joint: the next unit stands at the start"},
    {"cut-next-unit", "cut the next unit {0} shorter"},
    {"cut-next-unit-then", "cut the next unit {0} shorter, then {1}"},
    {"lay-one-again", "lift the last unit and lay again with {0}"},
    {"lay-again", "lift the last {0} units and lay again with {1}"},
    {"no-joints-bring-back", "no joints within the limits bring it back before the end"},
    {"one-or-other", "{0}; or {1}"},
    {"bar-lost", "the bar at {0}"},
    {"lap-lost", "the lap over the joint at {0} below"},
    {"joints-lose", "No joints from here keep {0}."},
    {"course-cannot-close-past",
     "From {0} past no joints within the limits, no cut and no laying again bring {1} back before its end."},
    {"course-cannot-close-short",
     "From {0} short no joints within the limits, no cut and no laying again bring {1} back before its end."},

    // Heights
    {"sill-of", "sill of {0}"},
    {"head-of", "head of {0}"},
    {"bed-of-bond-beam", "bed of the bond beam"},
    {"top-of-wall", "top of the wall"},
    {"beds-cannot-meet", "Beds of {0} within {1} do not bring {2} to the {3} in {4} courses."},

    // What closes a gap
    {"a-whole-unit", "a whole unit"},
    {"a-half-unit", "a half unit"},
    {"a-cut-of", "a cut of {0}"},
    {"closure-two", "{0}, then {1}"},
    {"closure", "{0}{1}; joints of {2}"},
    {"closure-losing-lap",
     "{0}{1}; joints of {2}. Its middle joint would lie only {3} from the joint below at {4}: better lift the units "
     "beside it and lay them again"},
    {"closure-cut-inside", ", cut face inside"},
    {"closure-first-last", "; the first is laid last"},
    {"closure-second-last", "; the second is laid last"},
    {"closure-cut-inside-first-last", ", cut face inside; the first is laid last"},
    {"closure-cut-inside-second-last", ", cut face inside; the second is laid last"},
    {"gap-in-opening", "The gap of {0} at {1} lies in {2}: nothing is laid there. Was another mark meant?"},
    {"gap-cannot-close",
     "No piece that keeps the rules fills a gap of {0} with joints in range. Lay the units beside it again."},
    {"closure-loses-lap",
     "Whatever closes the gap of {0} puts a joint {1} from the one below at {2}. Lift the units beside it and lay them "
     "again."},

    // Checks
    {"plumb-off", "Plumb on {0}: {1} lies outside {2} to {3}."},
    {"level-off", "Level on {0}: {1} lies outside {2} to {3}."},
    {"line-off", "Line on {0}: {1} lies outside {2} to {3}."},
    {"bed-joint-off", "Bed joint on {0}: {1} lies outside {2} to {3}."},
    {"head-joint-off", "Head joint on {0}: {1} lies outside {2} to {3}."},
    {"position-off", "Position on {0}: {1} lies outside {2} to {3}."},

    // Dowels, and the slab
    {"dowel-room", "{0}"},
    {"room-toward", "{0} toward {1}"},
    {"room-to-outer-face", "{0} to the outer face"},
    {"room-to-inner-face", "{0} to the inner face"},
    {"room-to-one-face", "{0} to one face"},
    {"room-to-other-face", "{0} to the other face"},
    {"dowel-stands", "stands in its cell"},
    {"dowel-cannot-tell", "the tape can't tell: look when the first unit is laid dry over it"},
    {"dowel-lap-apart", "stands in a cell {0} from its bar: lap the two apart, both in grout"},
    {"dowel-bend", "bend {0} sideways over at least {1} of height (1 in 6), where your engineer allows it"},
    {"dowel-bend-and-lap",
     "bend {0} sideways over at least {1} of height (1 in 6), where your engineer allows it; then it laps {2} apart "
     "from its bar"},
    {"dowel-replace",
     "too far from its bar for a lap or a bend: cut it off and set another, with your engineer's approval"},
    {"dowel-layout", "{0} stand: {1}"},
    {"dowel-layout-free", "{0} stand: no cut more"},
    {"edge-along", "the edge along {0}"},
    {"edge-along-both-ends", "the edge along {0} at both ends"},
    {"dowel-of-open-side", "a dowel of the open side"},
};

}  // namespace

std::span<const Sentence> english_laying() { return kSentences; }

}  // namespace stringcourse::words
