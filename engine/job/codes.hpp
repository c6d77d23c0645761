#pragma once
// Every code that a refusal or a finding carries: what programs and tests know it by. People are told its sentence.
#include <algorithm>
#include <string_view>

namespace stringcourse {

/// Sorted, so that Code finds its text soon.
inline constexpr std::string_view kCodes[] = {
    "bar-beside-corner-bar",  // a dimensioned bar in the cell of a corner's bar
    "bar-clearance-across",   // too little grout between a bar and the faces of its cell
    "bar-in-corner",          // a dimensioned bar in a corner that has its own
    "bar-longer-than-stock",  // a piece longer than the yard's bars
    "bar-no-room",            // no cell takes a dimensioned bar, an opening or a joint being there
    "bar-off-masonry",        // a dimensioned bar where no masonry stands
    "bar-other-system",       // metric bars in blocks made to the inch, or the other way round
    "bar-size",               // no bar is called so
    "bar-spacing",            // less than the spacing of the cells
    "bar-too-thick",          // more than half of the least clear width of its cell
    "bar-under-lintel",       // a jamb's bar comes up under a lintel in one piece
    "bar-without-dowel",      // poured: no dowel stands under a bar
    "bare-stretch",           // conceded: no unit fills a stretch
    "bars-beyond-spacing",    // more bars than the spacing asked for needs
    "bars-do-not-fit",        // not all bars can stay over their dowels
    "bars-no-cell",           // units without cells, and bars are asked for
    "bars-too-near",          // bars side by side with too little grout between them
    "bed-cannot-tell",        // the readings' doubt hides whether the first bed keeps its range
    "bed-not-read",           // the first bed is not read under every block
    "bed-out-of-range",       // no level keeps the first bed in its range
    "beds-cannot-meet",       // no beds within their limits bring the courses back to the mark
    "belongs-together",       // one of two things that make no sense alone
    "bolt-ends",              // bolts nearest to a plate's end farther from it than those farthest
    "bolt-no-place",          // no grouted cell takes a bolt where one is asked for
    "bond-beam-half-high",
    "bond-beam-not-stocked",
    "brought-not-ordered",   // what was brought is not on the order
    "building-implausible",  // longer, higher or smaller than a small building: a slip of units?
    "cell-outside",          // a cell that is not inside its unit, or not rising
    "choose-one",            // none or several of fields that exclude each other
    "chosen-otherwise",      // a remedy that was chosen, and readings since that say otherwise
    "cleanout-pour",         // a pour so high that its cells need cleanouts
    "closure-loses-lap",     // whatever closes a gap stands over the joint below
    "conceded-bar",          // no whole cell takes a bar
    "conceded-bar-cells",    // a bar's cells lie too far off those below
    "conceded-bar-spacing",  // bars farther apart than asked
    "conceded-bearing",      // a cut without a whole cell under a lintel's end
    "conceded-corner",       // no uncut unit turns the corner
    "conceded-face",         // a sawn end shows
    "conceded-joints",       // head joints out of their range
    "conceded-lap",          // head joints that lap less than a quarter unit
    "conceded-stack",        // head joints nearly above one another
    "control-character",
    "control-joint-blocked",  // an opening, a bearing or a wall stands where it is asked
    "control-joint-near-lintel",
    "control-joint-no-place",     // no place within the rule's panel length
    "control-joint-off-grid",     // moved to where half units end
    "control-joint-rule",         // what the rule comes to on these walls
    "corner-bar-clearance",       // too little grout round a corner's bar
    "corner-off-place",           // a peg farther off than is allowed
    "corner-set-does-not-close",  // a corner set beside a wall that it does not fit
    "corner-set-not-stocked",
    "corner-sets-half-high",
    "corner-sets-in-beam",
    "corner-twice",         // two corners with one name
    "course-cannot-close",  // as laid, nothing brings the course back before its end
    "course-range",         // no such course
    "courses",              // too few or too many courses
    "currency-mixed",       // prices in several currencies
    "cut-length",           // a cut shorter than the least piece or as long as the whole unit
    "cut-under-bearing",    // a cut with a whole cell under a lintel's end
    "diagonals-differ",
    "dimensioned-bar-moved",   // a bar follows a dowel that is kept
    "dimensioned-bar-serves",  // a dimensioned bar does for one that a rule asks for
    "door-floor",              // a door's height over the floor as read
    "dowel-bend",              // a dowel outside its cell, near enough to be bent
    "dowel-cannot-tell",       // so near a limit that the reading cannot tell
    "dowel-cut-and-replace",   // a dowel that nothing else helps
    "dowel-lap-apart",         // a dowel in a cell away from its bar
    "dowel-little-room",       // dowels that must be set with care
    "dowel-without-bar",       // poured: no bar comes down to a dowel
    "dowels-saved-by-layout",  // another layout keeps more of the dowels found
    "duplicate-field",         // one field twice in one object
    "empty-text",              // a name that must not be empty
    "found-place",             // a jamb or wall end stands elsewhere than planned
    "found-place-doubtful",    // so far off that it does not count before it is read twice
    "found-place-not-built",   // nothing can be built on what was found
    "full-not-stocked",
    "gap-cannot-close",  // no piece fills a measured gap
    "gap-in-opening",    // a gap was measured where nothing is laid
    "half-high-not-stocked",
    "half-high-not-under-head",
    "head-off-course",  // an opening's head falls on no course line
    "head-room",        // too little wall above a door
    "height-off-course",
    "hold-unknown",           // no such corner's peg can stay
    "impossible-triangle",    // three tapings that no triangle has
    "instrument-not-level",   // the level's sights differ with their length
    "interior-wall-endless",  // it meets no wall and states no length
    "interior-wall-length",
    "jog-too-short",       // a side shorter than its corners' units need
    "joint-range",         // joints asked for that no mason lays
    "joints-lose",         // from here on the joints keep less than they should
    "junction-in-corner",  // a lapped junction inside a corner
    "junction-loop",       // interior walls that start from each other
    "junction-off-wall",
    "junction-partial",  // a wall meets only part of another's face
    "junctions-overlap",
    "kept-dowel-not-placed",    // a dowel to be kept where no bar can stand
    "kind-not-made",            // a kind in stock that its series has not
    "kind-replaced-by-cut",     // a kind that is not in stock is sawn
    "laid-courses-do-not-fit",  // what is laid would have to come up
    "laid-entry-unknown",       // an entry of something that this job has not
    "laid-unit-comes-up",       // a unit that was laid is laid otherwise now
    "lap-below-equation",       // a lap by the rule picked that is shorter than TMS 402's equation
    "lap-no-room",              // masonry too short for a corner bar's leg
    "least-piece",              // a least piece that is nothing or over half a unit
    "level-loop",               // a loop of rod readings does not come back
    "level-loose",              // set-ups that no reading ties together
    "lintel-bearing",           // less bearing than the least
    "lintel-bearing-joint",     // the bearing asked ends in a joint
    "lintel-bearing-plain",     // a lintel bears on into a corner's unit
    "lintel-bearing-short",     // as laid it bears less than asked
    "lintel-collides",          // with an opening or with another lintel
    "lintel-deep",              // deeper than what stands above the opening, or of nothing
    "lintel-floor",             // bars pass units with floors
    "lintel-half-high",         // a lintel of units in a half-high course
    "lintel-overhangs",         // past the end of its wall
    "lintel-piece-of-units",    // a lintel of units with what only a piece has
    "lintel-soffit",            // its units are open underneath: form and shore
    "list-order",               // doubled or not rising where it must be
    "log-before-start",         // its newest entry is older than the first working day
    "log-undated",              // no entry says when, and the job does not either
    "log-until-early",          // the log has newer entries than the day up to which it is said to tell
    "mark-read-twice",          // readings at one mark disagree
    "mark-reading-doubtful",    // farther off than a joint reaches
    "missing-field",
    "name-twice",      // two things with one name
    "net-too-large",   // more corners taped together than this program works out
    "newer-version",   // written by a later version of this tool
    "no-head",         // no opening says where the half-high course goes
    "no-lintel",       // an opening reaches the top of the wall
    "no-shape",        // no shape near the plan has these tapings
    "no-such-mark",    // a reading at a mark that the course has not
    "not-a-date",      // the text is no date
    "not-a-force",     // the text cannot be read as a force or a line's weight
    "not-a-length",    // the text cannot be read as a length
    "not-a-stress",    // the text cannot be read as a stress
    "not-a-weight",    // the text cannot be read as a weight
    "not-hundredths",  // the text cannot be read as a share
    "not-json",        // the text breaks off or goes wrong as JSON
    "not-money",       // the text cannot be read as an amount of money
    "not-proven",      // a better layout may exist
    "not-utf-8",       // the bytes are no UTF-8 text
    "nothing-spans",   // nothing in the yard spans an opening
    "opening-leaves-wall",
    "opening-level",  // a sill or head below the ground or above the wall
    "opening-on-junction",
    "opening-size",
    "opening-too-narrow",  // as found, for what goes into it
    "openings-overlap",
    "out-of-range",        // a number or length beyond its limits
    "out-of-tolerance",    // as laid, more off than is allowed
    "outline-chain",       // a side does not start where the last one ends
    "outline-crosses",     // a side meets another one
    "outline-hand",        // the building is not on the side that is said
    "outline-open",        // the sides do not come back to the first corner
    "outline-short",       // too few sides
    "outline-turns",       // the turns do not go round once
    "piece-relaxed",       // a piece shorter than asked for
    "pier-short",          // less masonry than the least piece beside an opening
    "pour-order",          // pour tops that do not rise
    "pour-too-tall",       // taller than the table of grout spaces goes
    "price-of-nothing",    // a price of an article that is not on the order
    "reading-not-placed",  // a reading of something that this job has not
    "reading-slip",        // a reading off by what is easily misread
    "rod-far",             // a rod reading far from all others
    "runs-out",            // less was brought than is laid and breaks
    "second-taping",       // two tapings of one line differ
    "series-mixed",        // series of other heights or joints in one building
    "series-size",         // a size of an own series that is nothing or too large
    "series-uneven",       // an own series whose sizes do not fit together
    "shape-not-held",      // too few lines taped to hold the shape
    "short-laps",          // head joints off the middle of the unit below
    "side-length",
    "side-room",  // too little wall beside a door
    "sill-off-course",
    "slab-not-read",  // too little read to say where the walls sit on the slab
    "slab-too-small",
    "spacing-off-cells",    // a spacing that would set bars on webs
    "station-two-places",   // one point read at two places
    "strike-of-nothing",    // an entry strikes one that is not there
    "taping-blunder",       // one taping does not fit the others
    "tapings-disagree",     // which is wrong cannot be told
    "tapings-unchecked",    // too few lines taped to find a wrong one
    "too-deep",             // lists and objects nested too deep
    "too-large",            // the document has too many bytes or values
    "too-long",             // a text with too many characters
    "too-many",             // a list with too many entries; entries not read
    "too-many-setups",      // more set-ups than this program works out
    "trusses-beyond-wall",  // the first of them stands past the end of its wall
    "turn-missing",         // a corner without a turn
    "unit-unsaid",          // a bare number that may be in either of two units
    "unknown-corner",
    "unknown-field",
    "unknown-name",  // no name of the list that belongs here
    "unknown-series",
    "unknown-wall",
    "weight-of-nothing",  // a weight of an article that is not on the order
    "wire-every",
    "wire-none",   // joint reinforcement is asked for in beds that the wall has not
    "wrong-type",  // a number where a text belongs, and the like
};
static_assert(std::ranges::is_sorted(kCodes) && std::ranges::adjacent_find(kCodes) == std::end(kCodes));

/// One code of the list. A literal that is not in it does not compile.
class Code {
 public:
  consteval Code(const char* text) : text_(text) {
    if (!std::ranges::binary_search(kCodes, text_)) is_not_in_the_list();
  }
  [[nodiscard]] constexpr std::string_view text() const { return text_; }
  constexpr operator std::string_view() const { return text_; }
  friend constexpr bool operator==(Code, Code) = default;

 private:
  static void is_not_in_the_list();  // never defined: not constant, and so it stops the compiler

  std::string_view text_;
};

}  // namespace stringcourse
