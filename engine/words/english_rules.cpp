// What the rules of catalogue/rules_data.cpp say: one sentence each without its full stop. {0}, {1} ... are its limits.
#include "words/english.hpp"

namespace stringcourse::words {
namespace {

constexpr Sentence kSentences[] = {
    // Bond, joints and cuts.
    {"rule-running-bond", "Units overlap the course below by at least a quarter of a unit's length"},
    {"rule-short-lap", "Head joints of two courses stand half a unit apart; nearer by more than {0} is a short lap"},
    {"rule-least-piece",
     "No piece is shorter than a quarter unit as laid: 3 5/8 in in 16 in block, 90 mm in 390 mm block, 102 mm in 440 "
     "mm block"},
    {"rule-factory-end", "No saw-cut end shows at a jamb, a free end or a control joint"},
    {"rule-joint-range",
     "Head joints of a run are all alike and stay within {0} of the design joint unless the job says otherwise"},
    {"rule-head-joint-tolerance", "A head joint may be {0} thinner or {1} thicker than its design thickness"},
    {"rule-bed-joint-tolerance", "A bed joint may be {0} thinner or thicker than its design thickness"},
    {"rule-first-bed",
     "The first bed joint is {0} to {1} thick, up to {2} where the first course is fully grouted on concrete"},
    {"rule-bed-level", "Bed joints, and the top of a bearing wall, are level within {0} in {1} and {2} in all"},
    {"rule-footing-level", "The top of a footing that carries masonry is within {0} of its design height"},
    // Control joints.
    {"rule-control-joint-us",
     "Control joints stand no further apart than the lesser of 1 1/2 times the wall's height and {0}"},
    {"rule-control-joint-us-half-high",
     "In walls of {0} high units control joints stand no further apart than the lesser of 1 1/2 times the wall's "
     "height and {1}"},
    {"rule-control-joint-us-steel",
     "That spacing goes with horizontal steel of at least 0.025 sq in for each foot of the wall's height"},
    {"rule-control-joint-us-corner",
     "From a corner or a junction the first control joint stands within half that spacing"},
    {"rule-control-joint-uk", "Movement joints in concrete block stand no further apart than {0} and are {1} wide"},
    {"rule-control-joint-horizontal-steel",
     "Where horizontal steel of at least 0.002 of the net section runs through, no control joint is needed"},
    {"rule-control-joint-bearing", "A control joint stays a half unit clear of a lintel's bearing"},
    // Steel, grout and lintels.
    {"rule-cleanout-pour",
     "Grout pours higher than {0} need cleanouts of at least {1} at their foot, at most {2} apart where the wall is "
     "grouted solid; some codes ask for them above {3} or {4}"},
    {"rule-grout-lift",
     "Grout goes in by lifts of at most {0}, or {1} where the masonry has cured 4 h, the slump is kept at {2} to {3} "
     "and no bond beam stands between"},
    {"rule-grout-again",
     "Grout in lifts over {0} is vibrated, and vibrated again once the block has drunk its water and it has settled"},
    {"rule-grout-again-when", "The second time is some {0} to {1} after the first, while the grout is still plastic"},
    {"rule-wire-lap", "Pieces of joint reinforcement lap at least {0}"},
    {"rule-wire-stock", "Joint reinforcement is sold in lengths of {0}"},
    {"rule-wire-leg", "The legs of joint reinforcement round a corner are {0} long"},
    {"rule-wire-stops", "Joint reinforcement stops at control joints and goes round corners in one piece"},
    {"rule-grout-space",
     "The clear opening that a cell shares with the cell below is at least the grout-space table's size for the pour's "
     "height"},
    {"rule-lap-tms-402-to-2008",
     "A lap is 0.13 db^2 fy gamma / (K sqrt f'm) in inches and psi, at least {0}; K is the least of cover, clear space "
     "between laps and 5 db; gamma is 1.0 to #5, 1.3 for #6 and #7, 1.5 beyond"},
    {"rule-lap-tms-402-from-2011",
     "A lap is 0.13 db^2 fy gamma / (K sqrt f'm) in inches and psi, at least {0}; K is the least of cover, clear space "
     "between laps and 9 db; gamma is 1.0 to #5, 1.3 for #6 and #7, 1.5 beyond"},
    {"rule-lap-ibc",
     "A lap is 0.002 db fs, fs in psi, at least 40 db and {0}; half more where the bar is used at over 80 hundredths "
     "of its allowable stress, and half more for bars coated with epoxy: the lengths listed have neither"},
    {"rule-lap-florida-2017",
     "A lap is 0.13 db^2 fy gamma / (K sqrt f'm) in inches and psi, from 40 db to 72 db; K is the least of cover, "
     "clear space between laps and 5 db; gamma is 1.0 to #5, 1.04 for #6 and #7, 1.2 beyond"},
    {"rule-lap-40-bars", "A lap is 40 db"},
    {"rule-lap-48-bars", "A lap is 48 db"},
    {"rule-lap-as-drawn", "Bars lap as far as your drawings say"},
    {"rule-bar-half-cell", "A bar is no thicker than half the least clear width of the cell or beam that it lies in"},
    {"rule-bar-stock", "Bars are sold up to {0} long"},
    {"rule-bar-kerf", "A cut-off wheel takes {0} of a bar at each cut"},
    {"rule-bar-end-cover", "A bar ends {0} inside the masonry"},
    {"rule-grout-fins", "Mortar that stands out {0} or more into a cell is taken off before grouting"},
    {"rule-grout-pressure",
     "Fresh grout pushes like a liquid: some 750 lb on each square foot at the foot of a {0} lift; close cleanouts and "
     "brace their covers"},
    {"rule-bar-clearance", "Between a bar and the unit there is at least {0} of fine grout or {1} of coarse grout"},
    {"rule-bar-apart", "Between bars side by side there is at least a bar's thickness of grout, and at least {0}"},
    {"rule-bar-place", "Along the wall a vertical bar stands within {0} of its place"},
    {"rule-lintel-bearing", "A lintel bears at least {0} at each end; your drawings may ask for more"},
    {"rule-lintel-floor",
     "Lintel units have a floor: where a bar passes it is broken out as wide as the cell below; bond-beam units are "
     "counted on as open underneath, and are holed too where they are not"},
    {"rule-lintel-soffit",
     "Bond-beam units over an opening are open underneath: a form closes their soffit before grout goes in, and is "
     "shored like the lintel"},
    {"rule-lintel-spans",
     "What spans an opening takes bars along it: lintel units, or bond-beam units where the yard stocks no lintel "
     "units; a plain unit carries nothing there"},
    {"rule-shores",
     "A lintel of block units stays on its shores until your engineer, or your drawings, let them go; no number of "
     "days is claimed here"},
    // What readings of the ground are held against.
    {"rule-tapings-fit",
     "All tapings are fitted by least squares; a reading off by more than 3.29 times the doubt of one reading is taken "
     "for a blunder (1 in 1000 right ones is)"},
    {"rule-diagonals-alike", "The diagonals of a rectangle are within {0} of each other"},
    {"rule-place-in-plan", "A corner or wall stands within {0} of its place in plan in {1}, and {2} at most"},
    {"rule-level-loop", "A loop of rod readings closes within 3.29 times the doubt of its readings"},
    {"rule-grind-deepest", "Grinding deeper than {0} is offered after all other ways that keep the range"},
    {"rule-rod-far", "A footing or slab is read within {0} of the middle of all its heights"},
    {"rule-two-peg-test",
     "An instrument is level where a two-peg test shows no more than the doubt of its four readings, k = 2"},
    {"rule-least-curb", "A levelling curb is at least {0} thick"},
    {"rule-building-plausible",
     "A building has at least {0} between its walls and {1} of height, at most {2} of height and {3} of length"},
    {"rule-door-floor", "The floor read between a doorway's jambs is within {0} of its height as planned"},
    // What the wall is held against while it is laid.
    {"rule-far-joints",
     "Where the joints asked for cannot be kept, a head joint is at most {0} thinner or {1} thicker"},
    {"rule-working-joints", "A correction asks for head joints of {0} to {1}"},
    {"rule-unit-size", "A unit is within {0} of its specified size"},
    {"rule-head-joint-range", "Marks are read at every third unit, and a head joint is {0} to {1} wide"},
    {"rule-beds-to-height", "The beds up to the next height are within {0} of the bed as planned"},
    {"rule-plumb-us", "A wall is plumb within {0} in {1} and {2} in all"},
    {"rule-plumb-uk", "A wall is plumb within {0} in {1} and {2} in all"},
    {"rule-line-us", "A wall is true to line within {0} in {1} and {2} in all"},
    {"rule-line-uk", "A wall is true to line within {0} in {1} and {2} in all"},
    {"rule-level-uk", "Bed joints are level within {0} in {1} and {2} in all"},
    {"rule-bed-joint-uk", "A bed joint is within {0} of the mean, taken as planned"},
    {"rule-found-far", "What is found farther than {0} from its plan is questioned until it is read twice within {1}"},
    {"rule-dowel-little-room",
     "Across a thin wall a bar is placed within {0}: a dowel with less room than that is set with care"},
    {"rule-lap-apart",
     "A dowel is bent at most 1 in 6, the bars of a non-contact lap stand at most a fifth of the lap and {0} apart, "
     "and each keeps its clear grout round it"},
    // What the job itself asks for, or how it is solved.
    {"rule-bar-in-cell", "Bars stand in whole cells with their clearance"},
    {"rule-bar-spacing", "Bars stand no farther apart than the spacing asked for"},
    {"rule-bearing-units", "Units under a lintel's bearing are uncut and filled"},
    {"rule-corner-unit", "An uncut unit of each wall turns the corner, by turns"},
    {"rule-piece-of-job", "Pieces are at least as long as the job's least piece, with joints in its range"},
    {"rule-slab-room", "Faces and dowels have room on the slab by the edges and dowels read (linear program)"},
    {"rule-dowels-kept", "The bond is solved anew with those bars fixed, by a quick search"},
    {"rule-dowels-stay", "Dowels stay where they were poured"},
    {"rule-found-is-fixed", "Least change: what is found is fixed, the rest is solved anew"},
    // What is bought.
    {"rule-mortar-joints",
     "What the joints of this layout hold on the face shells, course 1 in a full bed: nothing less does"},
    {"rule-mortar-litres-a-block", "1 cu m of mortar lays 800 blocks of 390 mm, waste included"},
    {"rule-mortar-feet-a-hundred", "8 1/2 cu ft of mortar lay 100 blocks of 16 in"},
    {"rule-mortar-blocks-a-bag", "A bag of 80 lb of premixed mortar lays 6 to 8 blocks of 16 in"},
    {"rule-mortar-bags-a-hundred", "2 1/2 to 3 bags of masonry cement, with their sand, lay 100 blocks of 16 in"},
    {"rule-mortar-blocks-a-cement-bag",
     "A bag of 94 lb of portland cement, with lime and sand, lays 50 blocks of 16 in"},
    {"rule-mortar-premix-yield", "A bag of 80 lb of premixed mortar makes 0.7 cu ft"},
    {"rule-mortar-rule-38", "38 cu ft of cement, lime and sand make 27 cu ft of mortar"},
    {"rule-mortar-proportions",
     "Cement, lime and sand by volume: M 1 : 1/4 : 3 1/2, S 1 : 1/2 : 4 1/2, N 1 : 1 : 6, O 1 : 2 : 9; masonry cement "
     "and sand 1 : 3"},
    {"rule-mortar-water",
     "A bag of premixed mortar takes 5 to 6 quarts (4.7 to 5.7 L) of water, a bag of cement with its sand 5 to 6 "
     "gallons (19 to 23 L)"},
    {"rule-grout-bag-small", "A bag of 80 lb of premixed concrete makes 0.60 cu ft"},
    {"rule-grout-bag-large", "A bag of 80 lb of premixed concrete makes 0.675 cu ft"},
    {"rule-pace-beginners", "A pair of beginners lays about 6 blocks in an hour"},
    {"rule-pace-mason", "A mason with a tender lays about 15 blocks in an hour"},
    {"rule-rise-a-day", "A wall rises by at most {0} in a day"},
    {"rule-work-times",
     "Boards take a day, the footing two, lines, a lintel's shores, a lift of grout and the bolts half a day each; the "
     "footing stands three days, a pour one day before it is built on"},
    {"rule-pace-unsure", "One piece of work takes a quarter more or less than planned, and the pace is off by 30 %"},
    {"rule-mortar-life", "Mortar is used within {0} of mixing"},
    {"rule-cure-before-pour",
     "Masonry stands a day before it is filled, three days in warm weather (five in cold) where the pour is higher "
     "than {0}"},
    {"rule-breakage",
     "Where the job says nothing, 5 % more units are ordered than are laid and sawn, each kind rounded up; 5 to 12 % "
     "are named in the trade"},
    // Bolts of the plate.
    {"rule-sill-bolts",
     "One code's sill plates, where no drawing says otherwise: 1/2 in bolts, 7 in deep in concrete or a grouted cell, "
     "at most {0} apart, at least two in each piece, within {1} of each of its ends and no nearer than 7 bolt "
     "diameters, in the plate's middle third"},
    {"rule-roof-bolts",
     "The same code's anchors of a roof: 1/2 in bolts at most {0} apart that go {1} into the masonry, or are hooked or "
     "welded to the bond beam's steel at least {2} below the top"},
    {"rule-bolt-grout",
     "A bolt has at least {1} of grout round it: its middle is taken to stand at least {0} from the block, for bolts "
     "up to 1 in thick"},
    {"rule-bolt-places",
     "Bolts stand in cells of the top course that hold a bar, or in any cell where that course is a bond beam"},
    // Weather and wind.
    {"time-minutes", "{0} minutes"},
    {"time-and-half-an-hour", "{0} 1/2 hours"},
    {"time-hours", "{0} h"},
    {"rule-cold-below-40", "Below {0} masonry is laid and grouted only with what is listed here"},
    {"rule-cold-40-to-32",
     "{0} to {1}: heat sand or mixing water, so that mortar is {2} to {3} when mixed; one textbook says at most {4}"},
    {"rule-cold-32-to-25",
     "{0} to {1}: heat sand and water; keep mortar from freezing until it is used; grout is {2} to {3}"},
    {"rule-cold-25-to-20",
     "{0} to {1}: that, and heat masonry to {2} before grouting; a windbreak where wind is over {3}"},
    {"rule-cold-20", "{0} and below: that, and an enclosure with its air heated over {1}"},
    {"rule-cold-ice",
     "Snow and ice are thawed off beds and units, not just brushed off; units colder than {0} are warmed"},
    {"rule-cold-cover",
     "New masonry, by the day's mean: {0} to {1} covered for {2}; {1} to {3} insulated for {2}; colder, kept over {4} "
     "for {2} in an enclosure; a textbook says {5} for some of it"},
    {"rule-hot-above", "Hot-weather work begins over {0}, or over {1} with wind over {2}"},
    {"rule-hot-mortar", "Mortar and grout are no hotter than {0}"},
    {"rule-hot-cure", "New masonry is fogged three times a day for three days, its top covered {0} down"},
    {"rule-wind-leave",
     "Everybody leaves the zone beside a wall that its final support does not hold yet when gusts pass {0} while its "
     "mortar has no strength, or {1} after that"},
    {"rule-wind-first-day", "That first time lasts one working day at most: such mortar counts for nothing"},
    // Where the work can hurt someone.
    {"rule-limited-access-zone",
     "Before a wall is begun, keep people out of a zone as wide as the wall's height plus {0} along its whole "
     "unscaffolded side"},
    {"rule-brace-over-8-ft",
     "A wall over {0} high is braced, unless adequately supported, until its permanent support stands; a scaffold is "
     "no brace; the brace's designer sets wind limits"},
    {"rule-mortar-two-and-a-half-hours", "Mortar is thrown away {0} after it was first mixed"},
    {"rule-saw-dust",
     "Dust from sawing block holds silica, which scars the lungs: cut wet or with extraction and wear a fitted "
     "respirator"},
    {"rule-wet-cement",
     "Wet mortar and grout burn skin and eyes: wear gloves, boots and eye protection and wash splashes off at once"},
    {"rule-lifting",
     "Block is heavy: share the lift or use a machine, and use open-end units or shorter bars rather than lift block "
     "over tall bars"},
    {"rule-overhead-lines",
     "Before bars, poles or a pump boom are raised, look up for power lines and keep the utility's distance"},
    {"rule-engineer",
     "Sizes and spacings of bars, laps, lintels, footings and bracing come from your drawings, the local code or a "
     "licensed engineer; this sheet places and counts, and does not say that a wall is safe"},
};

}  // namespace

std::span<const Sentence> english_rules() { return kSentences; }

}  // namespace stringcourse::words
