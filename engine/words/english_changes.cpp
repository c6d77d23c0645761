// Small changes that save something; and what was found otherwise than planned, with what changes for it.
#include "words/english.hpp"

namespace stringcourse::words {
namespace {

constexpr Sentence kSentences[] = {
    // An offer: the change, then what it saves
    {"offer", "{0}: {1}"},
    {"offer-move", "{0} {1} toward {2}"},
    {"offer-wider-at", "{0} {1} wider at the {2} end"},
    {"offer-narrower-at", "{0} {1} narrower at the {2} end"},
    {"offer-wider-at-both", "{0} {1} wider, {2} at the {3} end and {4} at the {5} end"},
    {"offer-narrower-at-both", "{0} {1} narrower, {2} at the {3} end and {4} at the {5} end"},
    {"offer-wider-shifted", "{0} {1} wider, its {2} end {3} toward {4}"},
    {"offer-narrower-shifted", "{0} {1} narrower, its {2} end {3} toward {4}"},
    {"offer-lower", "{0} {1} lower"},
    {"offer-higher", "{0} {1} higher"},
    {"offer-shorter", "{0} {1} shorter"},
    {"offer-longer", "{0} {1} longer"},
    {"every-rule-kept", "every rule kept"},
    {"rules-kept-at", "a rule given up at {0} {0|place|places} fewer"},
    {"milder-rules", "milder rules given up"},
    {"head-on-course", "its head comes on a course"},
    {"no-cuts", "no cuts"},
    {"cuts-fewer", "{0} {0|cut|cuts} fewer"},
    {"cuts-more", "{0} {0|cut|cuts} more"},
    {"no-short-laps", "no short laps"},
    {"short-laps-fewer", "{0} {0|short lap|short laps} fewer"},
    {"short-laps-more", "{0} {0|short lap|short laps} more"},
    {"no-bars", "no bars"},
    {"bars-fewer", "{0} {0|bar|bars} fewer"},
    {"bars-more", "{0} {0|bar|bars} more"},

    // What was found elsewhere than planned
    {"near-jamb-of", "The near jamb of {0}"},
    {"far-jamb-of", "The far jamb of {0}"},
    {"far-corner-of", "The far corner of {0}"},
    {"found-place", "{0} stands at {1}, {2} toward {3} from its plan."},
    {"found-hole", "The hole is {0} wide; {1} was planned. Measure frame and lintel by it."},
    {"laid-stays-course", "What is laid of {0} (course 1) stays at the old jamb."},
    {"laid-stays-courses", "What is laid of {0} (courses 1 to {1}) stays at the old jamb."},
    {"laid-ends-at-corner", "What is laid of {0} is taken to end at it."},
    {"found-place-doubtful",
     "{0} was found at {1}, planned at {2}: farther off than {3}. Read it again: read twice alike it counts. Is it "
     "measured from {4}?"},
    {"found-place-not-built", "{0} as found cannot be built on: {1}"},
    {"no-side-follows", "no other side changes with it"},
    {"jambs-meet", "its jambs would meet"},
    {"opening-too-narrow",
     "{0} as found is {1} wide, {2} less than what goes into it asks for. Take the {2} off its packing, set a jamb "
     "anew, or order to the hole."},
    {"laid-courses-do-not-fit",
     "Over what is laid nothing that keeps the rules closes to what was found: {0} would have to come up. Compare "
     "before you lay on."},
    {"course-of-wall", "{0} course {1}"},
    {"courses-of-wall", "{0} courses {1} to {2}"},
    {"bars-do-not-fit", "Not all bars can stay over their dowels: the dowel list says which differ."},
    {"bars-of-walls-do-not-fit",
     "Not all bars of the walls on which something was found can stay over their dowels: the dowel list says which "
     "differ."},
    {"laid-unit-comes-up", "Unit {0} of {1} is laid and does not fit what was found since: take it up."},

    // What is laid otherwise than it was printed
    {"change-of-course", "{0}, course {1}: {2}{3}"},
    {"change-of-courses", "{0}, courses {1}: {2}{3}"},
    {"change-same-units", "the same units"},
    {"change-units", "{0} {0|unit differs|units differ}"},
    {"change-one-mark", "; 1 mark moves, {0} toward {1}"},
    {"change-marks", "; {0} marks move, up to {1} toward {2}"},
    {"unit-was-and-is", "unit {0}: {1}, now {2}"},
    {"unit-is-new", "unit {0}: new, {1}"},
    {"unit-is-gone", "unit {0}: {1}, now none"},
    {"kind-full", "full"},
    {"kind-half", "half"},
    {"kind-corner", "corner"},
    {"kind-corner-set", "corner-set"},
    {"kind-open-end", "open-end"},
    {"kind-open-both", "open-both"},
    {"kind-bond-beam", "bond-beam"},
    {"kind-bond-beam-half", "bond-beam-half"},
    {"kind-lintel", "lintel"},
    {"kind-lintel-half", "lintel-half"},
    {"kind-sash", "sash"},
    {"kind-sash-half", "sash-half"},
    {"kind-cleanout", "cleanout"},
    {"kind-cleanout-half", "cleanout-half"},
    {"kind-half-high", "half-high"},
    {"kind-half-high-half", "half-high-half"},
    {"kind-solid", "solid"},
};

}  // namespace

std::span<const Sentence> english_changes() { return kSentences; }

}  // namespace stringcourse::words
