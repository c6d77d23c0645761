// Unit series, what the yard stocks, joints, cuts and corner sets.
#include "words/english.hpp"

namespace stringcourse::words {
namespace {

constexpr Sentence kSentences[] = {
    // Series.
    {"unknown-series", "No unit series is called {0}."},
    {"series-of-other-height", "The unit height of {0} is {1}, of {2} {3}."},
    {"series-of-other-joint", "The joint of {0} is {1}, of {2} {3}."},
    {"series-of-other-length", "The whole length of {0} is {1}, of {2} {3}."},
    {"series-of-other-half", "The half length of {0} is {1}, of {2} {3}."},
    {"choose-series-that-goes",
     "All walls of a building share course height, joint and unit length: choose a series that goes with {0}; only the "
     "thickness may differ."},
    {"series-size", "The {0} of {1} is {2}."},
    {"measure-one-unit", "Measure one unit and state a length above 0."},
    {"series-half-or-joint",
     "In {0} the half unit {1} is not shorter than the whole one {2}, or the joint {3} is below 0."},
    {"measure-whole-and-half", "Measure a whole and a half unit and state both."},
    // Stock, joints and cuts.
    {"kind-not-made", "{0} is not made as {1}: left out of the stock."},
    {"full-not-stocked", "The yard stocks no whole unit (\"full\")."},
    {"add-full", "Add \"full\" to the kinds in stock: no wall is laid without it."},
    {"half-not-stocked",
     "The yard stocks no half units: each half ({0}) is sawn from a whole one, and shows its sawn end to a joint "
     "only."},
    {"joint-least", "The least joint {0} is not from 0 to the joint {1}."},
    {"joint-most", "The greatest joint {0} is less than the joint {1}."},
    {"state-at-most", "State at most {0}."},
    {"state-at-least", "State at least {0}."},
    {"least-piece", "The least piece {0} is not between 0 and the half unit {1}."},
    {"cut-length", "A cut of {0} is not from the least piece {1} to under the whole unit {2}."},
    {"change-cut", "Change or leave out this length."},
    // Parts of a corner, as they are bought.
    {"corner-set-part", "{0}"},
    {"corner-unit", "corner unit"},
    {"plain-end-unit", "plain-end unit"},
    {"filler-of-size", "filler {0} thick, {1} long"},
    // Corner sets.
    {"corner-set-not-stocked",
     "The yard stocks no corner set of {0}: plain units make the corners, which shifts the bond by {1} less {2} at "
     "each of them and costs cuts or short laps."},
    {"corner-set-does-not-close",
     "At corner {0} the corner set of {1}, {2} thick with a leg of {3}, does not close against {4}, {5} thick."},
    {"build-both-sides-alike", "Build both sides of one series, or leave \"corner-set\" out of the kinds in stock."},
    {"corner-sets-in-beam",
     "Corner sets stand in the bond beam too ({0|course|courses} {1}): cut their webs down for the bars, and cut out "
     "the inner face where the other wall's beam comes in, so that the bars pass round the corner."},
    {"corner-sets-half-high", "No corner set is made half-high: in {0|course|courses} {1} saw each to {2} high."},
};

}  // namespace

std::span<const Sentence> english_walls_units() { return kSentences; }

}  // namespace stringcourse::words
