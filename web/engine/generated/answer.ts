// Made by tools/contract_types.mjs from docs/schema/answer.schema.json. Not to be changed by hand.

export type Kind =
  | "full"
  | "half"
  | "corner"
  | "corner-set"
  | "open-end"
  | "open-both"
  | "bond-beam"
  | "bond-beam-half"
  | "lintel"
  | "lintel-half"
  | "sash"
  | "sash-half"
  | "cleanout"
  | "cleanout-half"
  | "half-high"
  | "half-high-half"
  | "solid";
/**
 * One piece: [name, kind, length, start, start_numerator, start_denominator, cut] and "make-up" for the one free cut of its run. name is side-course-number. length and start are whole nanometres; the exact start is start + start_numerator / start_denominator, with 0 <= start_numerator < start_denominator. cut says which end the saw made.
 *
 * @minItems 7
 */
export type Piece = never[];

/**
 * What a job comes to: every piece, joint, bar, count and finding. Lengths are whole nanometres; places along a side are measured from its start corner, heights from the datum (design top of course 1).
 */
export interface StringcourseAnswer {
  /**
   * version of this document
   */
  readonly stringcourse_answer: number;
  /**
   * stopped: at least one run has no lawful layout, see "stopped"
   */
  readonly state: "whole" | "stopped";
  /**
   * the job as read (job.schema.json)
   */
  readonly job: {};
  readonly tape_step: Length;
  readonly series: UnitSeries[];
  readonly corners: Corner[];
  /**
   * Sides in order, then interior walls.
   */
  readonly sides: Wall[];
  readonly junctions: Junction[];
  readonly courses: Course[];
  readonly height: Length7;
  readonly openings: Opening[];
  readonly control_joints: ControlJoint[];
  readonly stopped: Stop[];
  /**
   * Rules given up because no layout was found that keeps them all; absent where all are kept.
   */
  readonly conceded?: Concession[];
  /**
   * Sorted by hold point.
   */
  readonly findings: Finding[];
  /**
   * Best first.
   */
  readonly offers: Offer[];
  /**
   * true: every small change was tried; of a large building only those that are likeliest to help are
   */
  readonly offers_complete: boolean;
  /**
   * Where an opening lays without a cut.
   */
  readonly free_places: FreePlaces[];
  readonly cost: Cost;
  readonly proof: Proof;
  readonly ground?: Ground;
  readonly laying?: Laying;
  readonly poured?: Poured;
  /**
   * Where dowels must stand before the pour; once the logs speak of concrete, where they were poured to.
   */
  readonly dowels: Dowel[];
  readonly counts: Tallies;
  readonly saw_list: SawList;
  /**
   * Lowest first.
   */
  readonly gauge_rod: RodMark[];
  readonly lintels: LintelAsLaid[];
  /**
   * What goes over each opening, and what holds it up meanwhile.
   */
  readonly bridged: Bridged[];
  /**
   * Heads off a course line, and what can be done.
   */
  readonly heads: OffCourse[];
  readonly bars: Bar[];
  readonly bar_pieces: BarPieces;
  readonly joint_reinforcement: Wires;
  readonly ties: Ties;
  /**
   * Stock lengths to buy; none while something is dragged.
   */
  readonly bars_from_stock: BarsFromStock[];
  readonly order: Order;
  readonly programme: Programme;
  /**
   * Day by day of the forecast.
   */
  readonly weather: WeatherDay[];
  readonly site: OnSite;
  /**
   * The holes at the foot of each high pour, through which the bars' cells are cleaned.
   */
  readonly cleanouts: Cleanout[];
  /**
   * What is looked at before each pour; afterwards none of it can be seen.
   */
  readonly inspection: PourToInspect[];
  /**
   * Lift by lift from the bottom: the order in which grout goes in.
   */
  readonly pour_cards: LiftCard[];
  /**
   * Pieces of plate with their bolts, by side, then along it; none where the job asks for no bolts.
   */
  readonly plates: PlatePiece[];
  /**
   * What rules say of bolts, cold, heat and wind.
   */
  readonly cards: RuleOnCard[];
  readonly access_zone?: AccessZone;
  /**
   * Stretches of one course without a break, by side, course, place.
   */
  readonly runs: Run[];
}
/**
 * the finest step of the job's tape
 */
export interface Length {
  /**
   * exact, in the job's tape
   */
  readonly text: string;
  /**
   * the same, whole nanometres
   */
  readonly nm: number;
}
/**
 * One series of units that the walls are laid with.
 */
export interface UnitSeries {
  readonly id: string;
  readonly title: string;
  readonly full: Length1;
  readonly half: Length1;
  readonly thickness: Length1;
  readonly height: Length1;
  readonly joint: Length1;
  readonly pitch: Length2;
  /**
   * true: the cells are assumed, measure your block
   */
  readonly cells_assumed: boolean;
  readonly source: string;
  readonly known: string;
}
/**
 * A length.
 */
export interface Length1 {
  /**
   * exact, in the job's tape
   */
  readonly text: string;
  /**
   * the same, whole nanometres
   */
  readonly nm: number;
}
/**
 * A length.
 */
export interface Length2 {
  /**
   * exact, in the job's tape
   */
  readonly text: string;
  /**
   * the same, whole nanometres
   */
  readonly nm: number;
}
/**
 * A corner of the outline.
 */
export interface Corner {
  readonly name: string;
  readonly convex: boolean;
  /**
   * [east, north], whole nanometres
   *
   * @minItems 2
   */
  readonly point: never[];
  /**
   * side that ends here
   */
  readonly arriving?: string;
  /**
   * side that starts here
   */
  readonly leaving?: string;
  /**
   * side that runs through in course 1 and every odd course
   */
  readonly through_in_course_1?: string;
}
/**
 * A side or an interior wall.
 */
export interface Wall {
  readonly name: string;
  readonly start: string;
  readonly end: string;
  readonly interior: boolean;
  readonly series: string;
  readonly nominal: Length1;
  readonly actual: Length3;
  /**
   * [east, north], whole nanometres
   *
   * @minItems 2
   */
  readonly start_point: never[];
  readonly heading: "west" | "north" | "east" | "south";
  /**
   * JSON pointer into the job
   */
  readonly place: string;
  /**
   * place of the side across, which has to be as long; of a rectangle only
   */
  readonly across?: string;
}
/**
 * A length.
 */
export interface Length3 {
  /**
   * exact, in the job's tape
   */
  readonly text: string;
  /**
   * the same, whole nanometres
   */
  readonly nm: number;
}
/**
 * Where an interior wall meets another.
 */
export interface Junction {
  readonly main: string;
  readonly abutting: string;
  readonly at: "start" | "end";
  readonly kind: "tied" | "control-joint" | "lapped";
  readonly from: Length4;
  readonly to: Length5;
}
/**
 * A length.
 */
export interface Length4 {
  /**
   * exact, in the job's tape
   */
  readonly text: string;
  /**
   * the same, whole nanometres
   */
  readonly nm: number;
}
/**
 * A length.
 */
export interface Length5 {
  /**
   * exact, in the job's tape
   */
  readonly text: string;
  /**
   * the same, whole nanometres
   */
  readonly nm: number;
}
/**
 * One course, over all walls.
 */
export interface Course {
  /**
   * course number, from 1 at the bearing
   */
  readonly number: number;
  readonly half_high: boolean;
  readonly bond_beam: boolean;
  /**
   * joint reinforcement in the bed on top of this course
   */
  readonly wire: boolean;
  readonly unit_height: Length1;
  readonly top: Length6;
}
/**
 * A length.
 */
export interface Length6 {
  /**
   * exact, in the job's tape
   */
  readonly text: string;
  /**
   * the same, whole nanometres
   */
  readonly nm: number;
}
/**
 * A length.
 */
export interface Length7 {
  /**
   * exact, in the job's tape
   */
  readonly text: string;
  /**
   * the same, whole nanometres
   */
  readonly nm: number;
}
/**
 * An opening where it stands in the masonry.
 */
export interface Opening {
  readonly name: string;
  readonly use: "door" | "overhead" | "window" | "plain";
  readonly side: string;
  readonly from: Length1;
  readonly to: Length1;
  readonly width: Length1;
  readonly height: Length1;
  readonly underside: Length8;
  readonly soffit: Length9;
  /**
   * course number, from 1 at the bearing
   */
  readonly first_course: number;
  /**
   * course number, from 1 at the bearing
   */
  readonly last_course: number;
  readonly planned?: PlannedJambs;
  readonly asked_width: Length1;
  readonly asked_height: Length1;
  readonly packing_each_side: Length10;
  readonly packing_head: Length1;
  /**
   * what is left to be packed, and which frame leaves nothing; or ""
   */
  readonly packing: string;
  readonly lintel?: LintelAsked;
  /**
   * JSON pointer into the job
   */
  readonly place: string;
}
/**
 * A length.
 */
export interface Length8 {
  /**
   * exact, in the job's tape
   */
  readonly text: string;
  /**
   * the same, whole nanometres
   */
  readonly nm: number;
}
/**
 * A length.
 */
export interface Length9 {
  /**
   * exact, in the job's tape
   */
  readonly text: string;
  /**
   * the same, whole nanometres
   */
  readonly nm: number;
}
/**
 * only where a jamb was found elsewhere
 */
export interface PlannedJambs {
  readonly laid_courses: number;
  readonly from: Length1;
  readonly to: Length1;
}
/**
 * A length.
 */
export interface Length10 {
  /**
   * exact, in the job's tape
   */
  readonly text: string;
  /**
   * the same, whole nanometres
   */
  readonly nm: number;
}
/**
 * The lintel over an opening.
 */
export interface LintelAsked {
  readonly make: "one-piece" | "built-up";
  /**
   * course number, from 1 at the bearing
   */
  readonly first_course: number;
  /**
   * deep
   */
  readonly courses: number;
  readonly least_bearing: Length1;
  /**
   * what a lintel in one piece is; absent: the job does not say
   */
  readonly piece?: "precast" | "steel-section";
  /**
   * as the drawings call it
   */
  readonly mark: string;
  /**
   * of one piece, in the job's words
   */
  readonly weight: string;
}
/**
 * A control joint, straight through all courses.
 */
export interface ControlJoint {
  readonly side: string;
  readonly from: Length1;
  readonly to: Length1;
  readonly by_rule: boolean;
}
/**
 * A stretch that no layout fills.
 */
export interface Stop {
  readonly side: string;
  /**
   * course number, from 1 at the bearing
   */
  readonly first_course: number;
  /**
   * course number, from 1 at the bearing
   */
  readonly last_course: number;
  readonly from: Length1;
  readonly to: Length1;
  /**
   * the rule that stops it
   */
  readonly rule: string;
  /**
   * the smallest changes that mend it
   */
  readonly remedy: string;
}
/**
 * A rule given up at one place.
 */
export interface Concession {
  readonly what:
    | "joints"
    | "bar"
    | "bar-cells"
    | "bar-spacing"
    | "cut-under-bearing"
    | "short-lap"
    | "cut-face"
    | "stacked-lap"
    | "corner"
    | "bare";
  readonly side: string;
  /**
   * course number, from 1 at the bearing; of two neighbouring courses the upper one
   */
  readonly course: number;
  readonly from: Length1;
  readonly to: Length1;
  readonly amount: Length1;
}
/**
 * Computed, but a rule is broken or a choice is poor.
 */
export interface Finding {
  readonly code: string;
  /**
   * JSON pointer into the job, or ""
   */
  readonly place: string;
  readonly text: string;
  readonly rule: string;
  readonly hold_point: "order" | "pour" | "first-course" | "lintels" | "grout" | "top";
}
/**
 * What a small change would save.
 */
export interface Offer {
  readonly what: "move-opening" | "move-near-jamb" | "move-far-jamb" | "move-head" | "change-side" | "change-width";
  readonly place: string;
  readonly name: string;
  readonly text: string;
  /**
   * smallest units of the currency that the order costs more with it; absent: no prices, one is missing, or it was not reckoned
   */
  readonly money_least?: number;
  readonly money_most?: number;
  readonly change: Length11;
  readonly shift?: Length12;
  /**
   * weight of the rules that need not be given up; absent: 0
   */
  readonly conceded_saved?: number;
  /**
   * negative: more of them
   */
  readonly cuts_saved: number;
  readonly short_laps_saved: number;
  readonly bars_saved: number;
  /**
   * findings, by their place in the list, that it removes; where no offer does, lessens
   */
  readonly mends: number[];
}
/**
 * A length.
 */
export interface Length11 {
  /**
   * exact, in the job's tape
   */
  readonly text: string;
  /**
   * the same, whole nanometres
   */
  readonly nm: number;
}
/**
 * A length.
 */
export interface Length12 {
  /**
   * exact, in the job's tape
   */
  readonly text: string;
  /**
   * the same, whole nanometres
   */
  readonly nm: number;
}
/**
 * Places of an opening that lay without a cut.
 */
export interface FreePlaces {
  readonly opening?: string;
  /**
   * near jamb from the start of its side, whole nanometres
   */
  readonly from: number[];
}
/**
 * Terms compared in this order; with quarter bond asked for, cuts and short pieces come before short laps.
 */
export interface Cost {
  readonly short_laps: number;
  readonly cuts: number;
  /**
   * pieces shorter than a half
   */
  readonly short_pieces: number;
  /**
   * head joints that shift from band to band
   */
  readonly shifted_joints: number;
  /**
   * bars beyond the least that the spacing needs
   */
  readonly extra_bars: number;
  /**
   * sum over runs of |run - pieces - joints x joint|
   */
  readonly joint_deviation_nm: number;
  readonly units: number;
  /**
   * weight of the rules given up, compared before all other terms; absent where every rule is kept
   */
  readonly conceded?: number;
}
/**
 * How far the layout is proven to be the best.
 */
export interface Proof {
  /**
   * the cost is proven least
   */
  readonly proven: boolean;
  readonly least_possible: Cost1;
  /**
   * different lengths among saw cuts
   */
  readonly cut_lengths: number;
  readonly cut_lengths_at_least: number;
  /**
   * a piece shorter than the job's least stands in the wall
   */
  readonly relaxed_piece: boolean;
  /**
   * a cut that keeps a whole cell stands under a bearing
   */
  readonly relaxed_bearing: boolean;
}
/**
 * Terms compared in this order; with quarter bond asked for, cuts and short pieces come before short laps.
 */
export interface Cost1 {
  readonly short_laps: number;
  readonly cuts: number;
  /**
   * pieces shorter than a half
   */
  readonly short_pieces: number;
  /**
   * head joints that shift from band to band
   */
  readonly shifted_joints: number;
  /**
   * bars beyond the least that the spacing needs
   */
  readonly extra_bars: number;
  /**
   * sum over runs of |run - pieces - joints x joint|
   */
  readonly joint_deviation_nm: number;
  readonly units: number;
  /**
   * weight of the rules given up, compared before all other terms; absent where every rule is kept
   */
  readonly conceded?: number;
}
/**
 * absent where nothing was read
 */
export interface Ground {
  readonly tape: TapeAsFound;
  readonly levels?: LevelsAsFound;
  readonly dowels: FoundDowel[];
  /**
   * layouts in which more of the dowels found stand: the most first, each later one cheaper; steel.kept_dowels of the job asks for one
   */
  readonly dowel_layouts: DowelLayout[];
  /**
   * what is still to be read before it is known where the walls sit on the slab
   */
  readonly fit_lacks?: string[];
  readonly fit?: SlabFit;
  readonly bed_chosen?: ChosenNow;
  readonly shape_chosen?: ChosenNow1;
  readonly said: ReadingSaid[];
}
/**
 * What sides and diagonals as taped come to.
 */
export interface TapeAsFound {
  readonly state: "no-readings" | "adjusted" | "not-determinate" | "impossible" | "too-large";
  /**
   * of shape and size: not-read as long as a corner, a line that holds the shape or one that checks it is lacking (see missing); cannot-tell also while tapings disagree
   */
  readonly verdict: "fits" | "does-not-fit" | "cannot-tell" | "not-read";
  readonly lines: TapedLine[];
  /**
   * lines still to be taped: they would hold the shape, or check it
   */
  readonly missing: never[][];
  /**
   * the corner whose peg stays
   */
  readonly held?: string;
  /**
   * readings beyond what the shape needs
   */
  readonly beyond_need?: number;
  /**
   * disagree: a blunder that these readings cannot place
   */
  readonly agreement?: "agree" | "too-far" | "too-near" | "unchecked" | "disagree";
  /**
   * size of the corrections against the stated doubt, in thousandths of 1
   */
  readonly s0_thousandths?: number;
  readonly s0_least_thousandths?: number;
  /**
   * 95 of 100 right jobs lie between these two
   */
  readonly s0_most_thousandths?: number;
  /**
   * lines to tape again, the first first
   */
  readonly tape_again?: never[][];
  /**
   * none while tapings disagree
   */
  readonly moves?: PegMove[];
  /**
   * pairs of diagonals of a rectangle, both taped
   */
  readonly diagonals?: Diagonals[];
  /**
   * best first; none where the shape surely fits or is not known
   */
  readonly choices: ShapeChoice[];
}
/**
 * One taping of a side or diagonal.
 */
export interface TapedLine {
  /**
   * its number in the job's readings, from 0
   */
  readonly reading: number;
  /**
   * corner
   */
  readonly from: string;
  /**
   * corner
   */
  readonly to: string;
  readonly read: Length1;
  readonly expected: FoundLength;
  /**
   * blunder, slip: left out
   */
  readonly use: "adjusted" | "blunder" | "slip" | "read";
  readonly meant?: Length13;
  readonly against_first?: FoundLength1;
  readonly agrees_with_first?: boolean;
  readonly correction?: FoundLength2;
  /**
   * standardised residual, in thousandths
   */
  readonly times_its_doubt_thousandths?: number;
}
/**
 * by the plan
 */
export interface FoundLength {
  /**
   * rounded once, in the job's tape
   */
  readonly text: string;
  /**
   * not rounded to the tape
   */
  readonly nm: number;
}
/**
 * A length.
 */
export interface Length13 {
  /**
   * exact, in the job's tape
   */
  readonly text: string;
  /**
   * the same, whole nanometres
   */
  readonly nm: number;
}
/**
 * a second taping less the first
 */
export interface FoundLength1 {
  /**
   * rounded once, in the job's tape
   */
  readonly text: string;
  /**
   * not rounded to the tape
   */
  readonly nm: number;
}
/**
 * adjusted minus read
 */
export interface FoundLength2 {
  /**
   * rounded once, in the job's tape
   */
  readonly text: string;
  /**
   * not rounded to the tape
   */
  readonly nm: number;
}
/**
 * How a peg is to be moved.
 */
export interface PegMove {
  readonly corner: string;
  /**
   * along its walls
   */
  readonly text: string;
  readonly east: FoundLength3;
  readonly north: FoundLength3;
  readonly doubt: FoundLength4;
  /**
   * the tape cannot tell it from standing right
   */
  readonly within_doubt: boolean;
  readonly off: FoundLength5;
  readonly allowed: FoundLength3;
  readonly verdict: "fits" | "does-not-fit" | "cannot-tell" | "not-read";
  readonly ellipse: Ellipse;
}
/**
 * A value worked out of readings.
 */
export interface FoundLength3 {
  /**
   * rounded once, in the job's tape
   */
  readonly text: string;
  /**
   * not rounded to the tape
   */
  readonly nm: number;
}
/**
 * A value worked out of readings.
 */
export interface FoundLength4 {
  /**
   * rounded once, in the job's tape
   */
  readonly text: string;
  /**
   * not rounded to the tape
   */
  readonly nm: number;
}
/**
 * A value worked out of readings.
 */
export interface FoundLength5 {
  /**
   * rounded once, in the job's tape
   */
  readonly text: string;
  /**
   * not rounded to the tape
   */
  readonly nm: number;
}
/**
 * The readings' own uncertainty, k = 2; direction of the longer half axis.
 */
export interface Ellipse {
  readonly longer: FoundLength3;
  readonly shorter: FoundLength3;
  readonly east_thousandths: number;
  readonly north_thousandths: number;
}
/**
 * Two diagonals of a rectangle, both taped.
 */
export interface Diagonals {
  /**
   * @minItems 2
   */
  readonly longer: never[];
  /**
   * @minItems 2
   */
  readonly shorter: never[];
  readonly difference: FoundLength3;
  readonly allowed: FoundLength3;
  readonly doubt: FoundLength6;
  readonly verdict: "fits" | "does-not-fit" | "cannot-tell" | "not-read";
}
/**
 * A value worked out of readings.
 */
export interface FoundLength6 {
  /**
   * rounded once, in the job's tape
   */
  readonly text: string;
  /**
   * not rounded to the tape
   */
  readonly nm: number;
}
/**
 * What can be done where corners stand off their places.
 */
export interface ShapeChoice {
  readonly what: "move-pegs" | "square-lines";
  readonly text: string;
  /**
   * what it gives up, or asks for; or ""
   */
  readonly gives_up: string;
  readonly recommended: boolean;
  /**
   * pegs that move, lines that are chalked
   */
  readonly places: number;
  readonly most: FoundLength7;
}
/**
 * A value worked out of readings.
 */
export interface FoundLength7 {
  /**
   * rounded once, in the job's tape
   */
  readonly text: string;
  /**
   * not rounded to the tape
   */
  readonly nm: number;
}
/**
 * What rod readings come to.
 */
export interface LevelsAsFound {
  /**
   * the station of height zero
   */
  readonly datum: string;
  readonly stations: Station[];
  /**
   * stations that no chain of readings ties to the datum
   */
  readonly loose: string[];
  readonly loops: Loop[];
  readonly setups: Setup[];
  readonly instrument?: Instrument;
  /**
   * doorways whose floor was read
   */
  readonly doors: DoorFloor[];
  readonly bed?: BedAsFound;
  readonly top?: TopAsFound;
}
/**
 * A point that the rod stood on.
 */
export interface Station {
  readonly name: string;
  readonly side?: string;
  readonly at?: Length14;
  readonly surface: "bearing" | "floor" | "other" | "top";
  readonly height: FoundLength8;
  readonly doubt: FoundLength9;
}
/**
 * A length.
 */
export interface Length14 {
  /**
   * exact, in the job's tape
   */
  readonly text: string;
  /**
   * the same, whole nanometres
   */
  readonly nm: number;
}
/**
 * A value worked out of readings.
 */
export interface FoundLength8 {
  /**
   * rounded once, in the job's tape
   */
  readonly text: string;
  /**
   * not rounded to the tape
   */
  readonly nm: number;
}
/**
 * A value worked out of readings.
 */
export interface FoundLength9 {
  /**
   * rounded once, in the job's tape
   */
  readonly text: string;
  /**
   * not rounded to the tape
   */
  readonly nm: number;
}
/**
 * A round of rod readings that comes back to where it began.
 */
export interface Loop {
  readonly misclosure: FoundLength3;
  readonly allowed: FoundLength3;
  readonly closes: boolean;
}
/**
 * Where the instrument stood.
 */
export interface Setup {
  readonly name: string;
  readonly height: FoundLength10;
}
/**
 * A value worked out of readings.
 */
export interface FoundLength10 {
  /**
   * rounded once, in the job's tape
   */
  readonly text: string;
  /**
   * not rounded to the tape
   */
  readonly nm: number;
}
/**
 * absent without a two-peg test
 */
export interface Instrument {
  readonly over: FoundLength11;
  readonly sight: Length1;
  readonly doubt: FoundLength12;
  /**
   * the test cannot tell it from level
   */
  readonly level: boolean;
  /**
   * rod readings corrected by it
   */
  readonly corrected: number;
}
/**
 * A value worked out of readings.
 */
export interface FoundLength11 {
  /**
   * rounded once, in the job's tape
   */
  readonly text: string;
  /**
   * not rounded to the tape
   */
  readonly nm: number;
}
/**
 * A value worked out of readings.
 */
export interface FoundLength12 {
  /**
   * rounded once, in the job's tape
   */
  readonly text: string;
  /**
   * not rounded to the tape
   */
  readonly nm: number;
}
/**
 * A doorway whose floor was read.
 */
export interface DoorFloor {
  readonly opening: string;
  readonly tall_least: FoundLength13;
  readonly tall_most: FoundLength3;
  readonly planned: Length1;
  readonly doubt: FoundLength3;
  readonly verdict: "fits" | "does-not-fit" | "cannot-tell" | "not-read";
}
/**
 * A value worked out of readings.
 */
export interface FoundLength13 {
  /**
   * rounded once, in the job's tape
   */
  readonly text: string;
  /**
   * not rounded to the tape
   */
  readonly nm: number;
}
/**
 * The bed joint of the first course, by the bearing as read.
 */
export interface BedAsFound {
  /**
   * not-read as long as the bearing under some unit of course 1 is not read, unless what was read is out of range already
   */
  readonly verdict: "fits" | "does-not-fit" | "cannot-tell" | "not-read";
  readonly least: FoundLength3;
  readonly most: FoundLength3;
  readonly top: FoundLength14;
  readonly margin: FoundLength15;
  readonly thinnest: FoundLength3;
  readonly thickest: FoundLength3;
  readonly doubt: FoundLength16;
  /**
   * units of course 1 whose bearing was not read
   */
  readonly units_without: number;
  /**
   * where the rod is still to be read
   */
  readonly lacks: string[];
  readonly units: UnitBed[];
  /**
   * ranked: what keeps the range first, then the fewest units handled otherwise, then the least mortar and concrete
   */
  readonly choices: BedChoice[];
}
/**
 * A value worked out of readings.
 */
export interface FoundLength14 {
  /**
   * rounded once, in the job's tape
   */
  readonly text: string;
  /**
   * not rounded to the tape
   */
  readonly nm: number;
}
/**
 * A value worked out of readings.
 */
export interface FoundLength15 {
  /**
   * rounded once, in the job's tape
   */
  readonly text: string;
  /**
   * not rounded to the tape
   */
  readonly nm: number;
}
/**
 * A value worked out of readings.
 */
export interface FoundLength16 {
  /**
   * rounded once, in the job's tape
   */
  readonly text: string;
  /**
   * not rounded to the tape
   */
  readonly nm: number;
}
/**
 * The bed under one unit of course 1.
 */
export interface UnitBed {
  readonly side: string;
  readonly number: number;
  readonly thinnest: FoundLength3;
  readonly thickest: FoundLength3;
}
/**
 * What can be done where the bed does not fit.
 */
export interface BedChoice {
  readonly what:
    | "level"
    | "grout-first-course"
    | "tilt-course"
    | "grind"
    | "rip-units"
    | "levelling-strip"
    | "half-high"
    | "step"
    | "curb";
  readonly text: string;
  /**
   * what it gives up, or asks for beside the work; or ""
   */
  readonly gives_up: string;
  /**
   * the first of those that keep the range
   */
  readonly recommended: boolean;
  /**
   * every bed then lies in its range
   */
  readonly keeps: boolean;
  /**
   * units that are sawn for it
   */
  readonly cuts: number;
  /**
   * units of course 1 that are handled otherwise than laid in a full bed
   */
  readonly work: number;
  readonly top: FoundLength3;
  readonly margin: FoundLength3;
  /**
   * in the job's own volumes
   */
  readonly mortar: string;
  readonly concrete?: string;
  /**
   * what the order costs with it beside laying level: mortar and units; or "": no price says it
   */
  readonly money: string;
  /**
   * of full beds under the units read
   */
  readonly mortar_cubic_centimetres: number;
  /**
   * of a strip or curb
   */
  readonly concrete_cubic_centimetres: number;
}
/**
 * absent as long as no top of a wall is read
 */
export interface TopAsFound {
  readonly bearing: FoundLength17;
  readonly lowest: FoundLength3;
  readonly highest: FoundLength3;
  readonly doubt: FoundLength3;
  /**
   * by side, then along it
   */
  readonly points: TopPoint[];
}
/**
 * A value worked out of readings.
 */
export interface FoundLength17 {
  /**
   * rounded once, in the job's tape
   */
  readonly text: string;
  /**
   * not rounded to the tape
   */
  readonly nm: number;
}
/**
 * One point of the wall's top as read.
 */
export interface TopPoint {
  readonly station: string;
  readonly side: string;
  readonly at: FoundLength3;
  readonly off: FoundLength18;
  readonly work: "stands" | "pack" | "bed" | "plane";
  readonly by: FoundLength19;
  /**
   * fits: its height is right by rule "bed-level"
   */
  readonly verdict: "fits" | "does-not-fit" | "cannot-tell" | "not-read";
}
/**
 * A value worked out of readings.
 */
export interface FoundLength18 {
  /**
   * rounded once, in the job's tape
   */
  readonly text: string;
  /**
   * not rounded to the tape
   */
  readonly nm: number;
}
/**
 * A value worked out of readings.
 */
export interface FoundLength19 {
  /**
   * rounded once, in the job's tape
   */
  readonly text: string;
  /**
   * not rounded to the tape
   */
  readonly nm: number;
}
/**
 * A dowel as found, and what follows.
 */
export interface FoundDowel {
  readonly reading: number;
  readonly side: string;
  /**
   * of the list of dowels that it is taken for; 0: none
   */
  readonly number: number;
  readonly at: Length15;
  readonly off_face: Length1;
  readonly off_place?: FoundLength20;
  readonly room: FoundLength21;
  readonly action: "stands" | "cannot-tell" | "lap-apart" | "bend" | "cut-and-replace";
  readonly text: string;
}
/**
 * A length.
 */
export interface Length15 {
  /**
   * exact, in the job's tape
   */
  readonly text: string;
  /**
   * the same, whole nanometres
   */
  readonly nm: number;
}
/**
 * A value worked out of readings.
 */
export interface FoundLength20 {
  /**
   * rounded once, in the job's tape
   */
  readonly text: string;
  /**
   * not rounded to the tape
   */
  readonly nm: number;
}
/**
 * A value worked out of readings.
 */
export interface FoundLength21 {
  /**
   * rounded once, in the job's tape
   */
  readonly text: string;
  /**
   * not rounded to the tape
   */
  readonly nm: number;
}
/**
 * A layout in which more of the dowels found stand.
 */
export interface DowelLayout {
  readonly text: string;
  /**
   * dowels that stand in it
   */
  readonly stands: number;
  /**
   * more than now
   */
  readonly cuts: number;
  readonly short_laps: number;
  readonly bars: number;
  readonly proven: boolean;
  /**
   * ids of readings
   */
  readonly kept: string[];
}
/**
 * absent without edge readings
 */
export interface SlabFit {
  /**
   * the shift; east is right on the plan, north up
   */
  readonly text: string;
  readonly east: FoundLength22;
  readonly north: FoundLength3;
  /**
   * to the left
   */
  readonly turn_micrometres_in_a_metre: number;
  readonly room: FoundLength23;
  readonly room_before: FoundLength24;
}
/**
 * A value worked out of readings.
 */
export interface FoundLength22 {
  /**
   * rounded once, in the job's tape
   */
  readonly text: string;
  /**
   * not rounded to the tape
   */
  readonly nm: number;
}
/**
 * A value worked out of readings.
 */
export interface FoundLength23 {
  /**
   * rounded once, in the job's tape
   */
  readonly text: string;
  /**
   * not rounded to the tape
   */
  readonly nm: number;
}
/**
 * A value worked out of readings.
 */
export interface FoundLength24 {
  /**
   * rounded once, in the job's tape
   */
  readonly text: string;
  /**
   * not rounded to the tape
   */
  readonly nm: number;
}
/**
 * absent where no remedy of the first bed is chosen
 */
export interface ChosenNow {
  readonly text: string;
  /**
   * what was read since and says otherwise, or ""
   */
  readonly against: string;
}
/**
 * absent where no remedy of the shape is chosen
 */
export interface ChosenNow1 {
  readonly text: string;
  /**
   * what was read since and says otherwise, or ""
   */
  readonly against: string;
}
/**
 * What one reading says by itself.
 */
export interface ReadingSaid {
  /**
   * its number in the job's readings, from 0
   */
  readonly reading: number;
  readonly text: string;
}
/**
 * absent while something is dragged
 */
export interface Laying {
  readonly rules: "us" | "uk";
  readonly joints: JointRules;
  readonly mark_reading: Length1;
  readonly spreads: Spreads;
  readonly batch?: Batch;
  /**
   * by wall; 0: all laid
   */
  readonly next_courses: number[];
  readonly begun: CourseAtWall[];
  /**
   * each wall's next course and the one after it
   */
  readonly at_hand: CourseAtWall[];
  readonly gauges: Gauge[];
  readonly sets: SetAsLaid[];
  readonly gaps: Gap[];
  readonly checks: Check[];
  /**
   * what is not as it was printed, where jambs or corners were found otherwise; absent where nothing was
   */
  readonly changes?: CourseChange[];
  readonly progress: Progress;
}
/**
 * How wide head joints may be.
 */
export interface JointRules {
  readonly planned: Length1;
  readonly working_least: Length1;
  readonly working_most: Length1;
  readonly least: Length1;
  readonly most: Length1;
}
/**
 * How far units and joints spread.
 */
export interface Spreads {
  readonly unit_nm: number;
  readonly joint_nm: number;
  readonly known: string;
}
/**
 * The units as they were measured.
 */
export interface Batch {
  readonly units: number;
  readonly mean: FoundLength3;
  readonly mean_exact: string;
  readonly longer_nm: number;
  readonly doubt_nm: number;
  readonly spread_nm?: number;
  readonly within_tolerance: "fits" | "does-not-fit" | "cannot-tell" | "not-read";
}
/**
 * One course of one side as it is laid.
 */
export interface CourseAtWall {
  readonly side: string;
  readonly course: number;
  readonly name: string;
  /**
   * the corner that marks are measured from
   */
  readonly from: string;
  readonly finished: boolean;
  /**
   * the run that is laid now, -1 when all are
   */
  readonly run: number;
  readonly marks: WallMark[];
  readonly runs: RunAsLaid[];
}
/**
 * A mark at the wall.
 */
export interface WallMark {
  readonly kind: "block-end" | "near-jamb" | "far-jamb" | "joint-near-edge" | "joint-far-edge" | "bar-centre";
  readonly at: MarkPlace;
  readonly opening?: string;
  readonly unit?: number;
  readonly run?: number;
  /**
   * past or short is read here: every third unit, and the last of a run
   */
  readonly to_read?: boolean;
  readonly third_unit?: boolean;
  /**
   * this unit closes its run
   */
  readonly closes?: boolean;
  readonly state?: "unread" | "read" | "doubtful" | "disputed";
  readonly past?: Length1;
  /**
   * of the job's laid log, from 0
   */
  readonly entries?: number[];
  readonly doubtful?: Doubtful;
}
/**
 * Where a mark stands: as the tape reads, in both forms of inches, exactly.
 */
export interface MarkPlace {
  readonly text: string;
  readonly both: string;
  /**
   * in inches alone; absent where "text" is no other
   */
  readonly other?: string;
  readonly nm: number;
}
/**
 * Why a reading is doubted, and what was probably meant.
 */
export interface Doubtful {
  readonly why: string;
  readonly likely: string;
  readonly past?: Length1;
  readonly at?: Length1;
}
/**
 * One run of a course as it is laid.
 */
export interface RunAsLaid {
  readonly from: FoundLength3;
  readonly to: FoundLength3;
  readonly units: number;
  /**
   * units up to the last mark that was read
   */
  readonly laid: number;
  readonly finished: boolean;
  readonly past: FoundLength3;
  readonly next: NextJoints;
  readonly each_unit_adds: UnitAdds;
  readonly one_joint?: ClosingJoint;
}
/**
 * The next joints of a run.
 */
export interface NextJoints {
  readonly what: "joints" | "saw-cut" | "lay-again" | "cannot-be";
  readonly text: string;
  /**
   * in the order of laying
   */
  readonly joints: string[];
  readonly bays: number;
  readonly outside_working: boolean;
  readonly cut?: Length1;
  readonly again?: number;
  readonly instead?: LaidAgain;
  /**
   * bars and laps that these joints do not keep
   */
  readonly loses: string[];
}
/**
 * beside a saw cut: units that come up and are laid again
 */
export interface LaidAgain {
  readonly text: string;
  readonly again: number;
}
/**
 * What each unit adds, as learned.
 */
export interface UnitAdds {
  readonly learned: FoundLength3;
  readonly doubt_nm: number;
  readonly taken_off_ahead: FoundLength3;
}
/**
 * One joint for the whole run, with the units as measured.
 */
export interface ClosingJoint {
  readonly joint: Length1;
  readonly left: FoundLength3;
}
/**
 * A height of the wall as read, and the beds that bring it back.
 */
export interface Gauge {
  readonly entry: number;
  readonly side: string;
  readonly course: number;
  readonly high: Length1;
  readonly to: string;
  readonly beds: Bed[];
}
/**
 * One bed joint still to be laid.
 */
export interface Bed {
  readonly course: number;
  readonly bed: Length1;
}
/**
 * How one unit lies, and what sets it right.
 */
export interface SetAsLaid {
  readonly entry: number;
  readonly side: string;
  readonly course: number;
  readonly lift: boolean;
  readonly taps: Tap[];
  readonly from_line?: Length1;
}
/**
 * A corner of the unit to be tapped down.
 */
export interface Tap {
  readonly corner: "near-outer" | "near-inner" | "far-outer" | "far-inner";
  readonly down: Length1;
}
/**
 * A gap as measured.
 */
export interface Gap {
  readonly entry: number;
  readonly side: string;
  readonly course: number;
  readonly measured: Length1;
  /**
   * an opening of this course that lies in the gap: nothing is laid there
   */
  readonly opening?: string;
  readonly closure?: Closure;
}
/**
 * What closes a gap.
 */
export interface Closure {
  readonly text: string;
  /**
   * one or two, from the gap's near side
   */
  readonly pieces: ClosurePiece[];
  /**
   * which of the pieces is laid last, from 0
   */
  readonly last: number;
  readonly joint: FoundLength3;
  readonly lost_over?: FoundLength25;
  readonly lost_lap?: FoundLength3;
}
/**
 * A unit that closes a gap.
 */
export interface ClosurePiece {
  readonly kind: "whole" | "half" | "cut";
  readonly length: FoundLength3;
}
/**
 * A value worked out of readings.
 */
export interface FoundLength25 {
  /**
   * rounded once, in the job's tape
   */
  readonly text: string;
  /**
   * not rounded to the tape
   */
  readonly nm: number;
}
/**
 * A check of the wall, against its limits.
 */
export interface Check {
  readonly entry: number;
  readonly side: string;
  readonly course: number;
  readonly verdict: "fits" | "does-not-fit" | "cannot-tell" | "not-read";
  readonly least: FoundLength3;
  readonly most: FoundLength3;
  readonly doubt_nm: number;
  readonly conformance_millionths: number;
  readonly rule: string;
}
/**
 * Courses that are not as they were printed.
 */
export interface CourseChange {
  readonly side: string;
  readonly courses: number[];
  readonly units: string[];
  readonly marks_moved: number;
  readonly farthest: FoundLength3;
  readonly text: string;
}
/**
 * How far the walls are.
 */
export interface Progress {
  readonly units: number;
  readonly laid: number;
  readonly days: number;
  readonly each_day: number;
  readonly days_left: number;
}
/**
 * Only once the logs speak of concrete.
 */
export interface Poured {
  readonly dowels: DowelNow[];
  readonly bars_without_dowel: BarWithoutDowel[];
}
/**
 * A poured dowel against the layout as it is now.
 */
export interface DowelNow {
  readonly side: string;
  readonly number: number;
  readonly found_at?: Length16;
  readonly bar_at?: Length17;
}
/**
 * A length.
 */
export interface Length16 {
  /**
   * exact, in the job's tape
   */
  readonly text: string;
  /**
   * the same, whole nanometres
   */
  readonly nm: number;
}
/**
 * A length.
 */
export interface Length17 {
  /**
   * exact, in the job's tape
   */
  readonly text: string;
  /**
   * the same, whole nanometres
   */
  readonly nm: number;
}
/**
 * A bar that no poured dowel is for.
 */
export interface BarWithoutDowel {
  readonly side: string;
  readonly at: Length1;
}
/**
 * One dowel to be set, or as it was poured.
 */
export interface Dowel {
  readonly side: string;
  readonly number: number;
  /**
   * what stands at zero of the side's numbers: a corner, or the face of the wall that an inner wall starts from
   */
  readonly measured_from: string;
  readonly at: Length18;
  readonly off_face: Length19;
  readonly first_course?: InCell;
  readonly second_course?: InCell1;
  readonly room?: DowelRoom;
}
/**
 * A length.
 */
export interface Length18 {
  /**
   * exact, in the job's tape
   */
  readonly text: string;
  /**
   * the same, whole nanometres
   */
  readonly nm: number;
}
/**
 * A length.
 */
export interface Length19 {
  /**
   * exact, in the job's tape
   */
  readonly text: string;
  /**
   * the same, whole nanometres
   */
  readonly nm: number;
}
/**
 * absent: the course has no cell for it
 */
export interface InCell {
  /**
   * whose unit it is: at a corner or in a slot another side's
   */
  readonly side: string;
  /**
   * number along that side
   */
  readonly unit: number;
  /**
   * from the end nearer to that side's start
   */
  readonly cell: number;
}
/**
 * absent: the course has no cell for it
 */
export interface InCell1 {
  /**
   * whose unit it is: at a corner or in a slot another side's
   */
  readonly side: string;
  /**
   * number along that side
   */
  readonly unit: number;
  /**
   * from the end nearer to that side's start
   */
  readonly cell: number;
}
/**
 * How far the dowel may be out each way and keep the grout's clearance in the cells of courses 1 and 2; below zero: it lacks so much.
 */
export interface DowelRoom {
  readonly to_start: UsableLength;
  readonly to_end: UsableLength1;
  readonly to_outer: UsableLength2;
  readonly to_inner: UsableLength3;
}
/**
 * toward the side's start
 */
export interface UsableLength {
  /**
   * rounded inwards, in the job's tape
   */
  readonly text: string;
  /**
   * not rounded to the tape
   */
  readonly nm: number;
}
/**
 * toward its end
 */
export interface UsableLength1 {
  /**
   * rounded inwards, in the job's tape
   */
  readonly text: string;
  /**
   * not rounded to the tape
   */
  readonly nm: number;
}
/**
 * toward the outer face
 */
export interface UsableLength2 {
  /**
   * rounded inwards, in the job's tape
   */
  readonly text: string;
  /**
   * not rounded to the tape
   */
  readonly nm: number;
}
/**
 * toward the inner face
 */
export interface UsableLength3 {
  /**
   * rounded inwards, in the job's tape
   */
  readonly text: string;
  /**
   * not rounded to the tape
   */
  readonly nm: number;
}
/**
 * What the layout takes.
 */
export interface Tallies {
  /**
   * all pieces laid
   */
  readonly pieces: number;
  readonly breakage: Breakage;
  readonly units: UnitCount[];
  /**
   * Laid whole, for the saw and spare for breakage; total is their sum.
   */
  readonly to_buy: Purchase[];
  readonly corner_set_parts: CornerSetPart[];
  readonly one_piece_lintels: LintelCount[];
  readonly bars: BarCount;
  readonly cleanouts: CleanoutCount;
  /**
   * pour by pour, from the bottom
   */
  readonly grout: GroutPour[];
}
/**
 * Units ordered for breakage.
 */
export interface Breakage {
  /**
   * hundredths of what is laid and sawn, each kind rounded up
   */
  readonly percent: number;
  /**
   * by the job; else assumed
   */
  readonly stated: boolean;
}
/**
 * Units of one kind.
 */
export interface UnitCount {
  readonly series: string;
  readonly kind: Kind;
  readonly whole: number;
  readonly cut_pieces: number;
}
/**
 * Units of one kind to buy.
 */
export interface Purchase {
  readonly series: string;
  readonly kind: Kind;
  readonly whole: number;
  readonly for_saw: number;
  readonly spare: number;
  readonly total: number;
}
/**
 * A part of the corner sets.
 */
export interface CornerSetPart {
  readonly series: string;
  readonly part: string;
  /**
   * what is done to it before it is laid; no set is made for beams or half-high
   */
  readonly work: "none" | "webs-cut-down" | "sawn-half-high";
  readonly count: number;
  readonly spare: number;
  readonly total: number;
}
/**
 * Lintels in one piece, of one size.
 */
export interface LintelCount {
  readonly length: Length1;
  /**
   * deep
   */
  readonly courses: number;
  readonly count: number;
}
/**
 * All upright bars.
 */
export interface BarCount {
  readonly size: string;
  readonly count: number;
  readonly total: Length20;
}
/**
 * A length.
 */
export interface Length20 {
  /**
   * exact, in the job's tape
   */
  readonly text: string;
  /**
   * the same, whole nanometres
   */
  readonly nm: number;
}
/**
 * One for every bar of each pour that asks for them, corner units included.
 */
export interface CleanoutCount {
  readonly count: number;
  readonly in_cleanout_units: number;
  /**
   * into units of other kinds, or a second one into a cleanout unit
   */
  readonly to_cut: number;
}
/**
 * What is filled before more block is laid on top: as much as the block as listed holds, before what is spilt.
 */
export interface GroutPour {
  readonly first_course: number;
  readonly last_course: number;
  readonly height: Length1;
  /**
   * courses at whose top a lift stops; the last is the pour's
   */
  readonly lift_tops: number[];
  readonly columns: GroutColumn[];
  readonly cells: Volume;
  readonly beams: Volume;
  readonly lintels: Volume;
  readonly all: Volume;
}
/**
 * What goes round one bar in one pour.
 */
export interface GroutColumn {
  readonly side: string;
  /**
   * of its dowel along the side; 0: the bar starts higher up, or no dowel stands there
   */
  readonly number: number;
  readonly at: Length1;
  readonly first_course: number;
  readonly last_course: number;
  /**
   * courses in which it has a cell of its own, not a trough's
   */
  readonly cells: number;
  /**
   * of these, in a part whose cell is not known: a whole unit's is taken
   */
  readonly unlike: number;
  readonly volume: Volume;
}
/**
 * How much.
 */
export interface Volume {
  /**
   * in gallons or litres, to a tenth
   */
  readonly text: string;
  readonly cubic_centimetres: number;
}
/**
 * What the saw cuts.
 */
export interface SawList {
  readonly kerf: Length1;
  readonly groups: SawGroup[];
  readonly pairs: SawPair[];
}
/**
 * Pieces sawn alike.
 */
export interface SawGroup {
  readonly series: string;
  readonly from: Kind;
  readonly from_length: Length1;
  readonly length: Length1;
  readonly offcut: Length1;
  readonly pieces: number;
  /**
   * pieces of this group whose unit yields another listed piece
   */
  readonly paired: number;
}
/**
 * Two groups whose pieces come out of one unit.
 */
export interface SawPair {
  /**
   * index into groups
   */
  readonly first: number;
  /**
   * index into groups
   */
  readonly second: number;
  readonly units: number;
}
/**
 * A mark of the gauge rod.
 */
export interface RodMark {
  readonly at: Length1;
  readonly event: "floor" | "sill" | "course-top" | "wire" | "head" | "lintel-course" | "bond-beam" | "pour-stop" | "top";
  /**
   * course number, from 1 at the bearing
   */
  readonly course?: number;
  readonly opening?: string;
}
/**
 * What a lintel bears as laid, what spans, and the bars that have to pass it.
 */
export interface LintelAsLaid {
  readonly opening: string;
  readonly side: string;
  readonly asked_bearing: Length21;
  readonly start_bearing: Length22;
  readonly end_bearing: Length23;
  /**
   * What closes the underside: the lintel itself, the floor of lintel units, a form under open units; or nothing there carries.
   */
  readonly soffit: "one-piece" | "floor" | "form" | "nothing-spans";
  /**
   * Built of units: all its courses, by kind.
   */
  readonly units: LintelUnits[];
  /**
   * Bars that pass a unit with a floor, which is broken out there, or a lintel in one piece.
   */
  readonly bars_through: BarThrough[];
}
/**
 * A length.
 */
export interface Length21 {
  /**
   * exact, in the job's tape
   */
  readonly text: string;
  /**
   * the same, whole nanometres
   */
  readonly nm: number;
}
/**
 * A length.
 */
export interface Length22 {
  /**
   * exact, in the job's tape
   */
  readonly text: string;
  /**
   * the same, whole nanometres
   */
  readonly nm: number;
}
/**
 * A length.
 */
export interface Length23 {
  /**
   * exact, in the job's tape
   */
  readonly text: string;
  /**
   * the same, whole nanometres
   */
  readonly nm: number;
}
/**
 * Units of one kind in a lintel.
 */
export interface LintelUnits {
  readonly kind: Kind;
  readonly whole: number;
  readonly cut_pieces: number;
}
/**
 * A bar that passes a unit with a floor, or a lintel in one piece.
 */
export interface BarThrough {
  /**
   * course number, from 1 at the bearing
   */
  readonly course: number;
  /**
   * number along its side in its course; absent: the lintel is one piece
   */
  readonly unit?: number;
  readonly centre: Length1;
  /**
   * from the unit's end nearer to the side's start
   */
  readonly cell?: number;
}
/**
 * What goes over one opening, and what holds it up meanwhile.
 */
export interface Bridged {
  readonly opening?: string;
  readonly over_foot: Length24;
  readonly over_bearing: Length25;
  /**
   * shores stand before this course is laid; absent: nothing is shored
   */
  readonly before_course?: number;
  /**
   * one at each jamb, between them no farther apart than the job says; absent: the job does not say
   */
  readonly shores?: number;
  readonly start?: Seat;
  readonly end?: Seat;
  /**
   * courses of its lintel that are bond beams
   */
  readonly beams_in: number[];
  /**
   * bond beams that the opening interrupts
   */
  readonly beams_cut: number[];
  /**
   * the lowest bond beam over opening and lintel
   */
  readonly beam_over?: number;
}
/**
 * A length.
 */
export interface Length24 {
  /**
   * exact, in the job's tape
   */
  readonly text: string;
  /**
   * the same, whole nanometres
   */
  readonly nm: number;
}
/**
 * A length.
 */
export interface Length25 {
  /**
   * exact, in the job's tape
   */
  readonly text: string;
  /**
   * the same, whole nanometres
   */
  readonly nm: number;
}
/**
 * What a lintel stands on at one end.
 */
export interface Seat {
  /**
   * course number, from 1 at the bearing
   */
  readonly course: number;
  /**
   * their numbers along the side in that course; none: nothing lies there
   */
  readonly units: number[];
}
/**
 * A head that does not come to a course line.
 */
export interface OffCourse {
  readonly opening?: string;
  readonly asked: Length26;
  /**
   * the first is what is laid out
   */
  readonly choices: HeadChoice[];
}
/**
 * A length.
 */
export interface Length26 {
  /**
   * exact, in the job's tape
   */
  readonly text: string;
  /**
   * the same, whole nanometres
   */
  readonly nm: number;
}
/**
 * What can be done with a head off a course line.
 */
export interface HeadChoice {
  readonly way: "pack" | "raise" | "sill" | "lower" | "cut";
  readonly by: Length27;
  /**
   * blocks more, by their length
   */
  readonly units: number;
  /**
   * saw cuts more
   */
  readonly cuts: number;
}
/**
 * A length.
 */
export interface Length27 {
  /**
   * exact, in the job's tape
   */
  readonly text: string;
  /**
   * the same, whole nanometres
   */
  readonly nm: number;
}
/**
 * An upright bar.
 */
export interface Bar {
  readonly side: string;
  readonly centre: Length1;
  readonly reason: "corner" | "jamb" | "beside-control-joint" | "dimensioned" | "cast" | "spaced";
  readonly corner?: string;
  readonly opening?: string;
  /**
   * course number, from 1 at the bearing
   */
  readonly first_course: number;
  /**
   * course number, from 1 at the bearing
   */
  readonly last_course: number;
}
/**
 * Bars as they are cut, by the lap rule that the job names. Dowels below the bearing are as the drawings say.
 */
export interface BarPieces {
  readonly stock: Length28;
  /**
   * by the job; else assumed
   */
  readonly stock_stated: boolean;
  readonly kerf: Length29;
  /**
   * by the job; else assumed
   */
  readonly kerf_stated: boolean;
  readonly end_cover: Length30;
  /**
   * by the job; else assumed
   */
  readonly end_cover_stated: boolean;
  /**
   * the first is mark 1
   */
  readonly marks: BarMark[];
  readonly totals: BarTotal[];
  readonly laps: LapTable[];
  readonly unsaid: BarsUnsaid[];
  readonly pieces: BarPiece[];
}
/**
 * A length.
 */
export interface Length28 {
  /**
   * exact, in the job's tape
   */
  readonly text: string;
  /**
   * the same, whole nanometres
   */
  readonly nm: number;
}
/**
 * A length.
 */
export interface Length29 {
  /**
   * exact, in the job's tape
   */
  readonly text: string;
  /**
   * the same, whole nanometres
   */
  readonly nm: number;
}
/**
 * A length.
 */
export interface Length30 {
  /**
   * exact, in the job's tape
   */
  readonly text: string;
  /**
   * the same, whole nanometres
   */
  readonly nm: number;
}
/**
 * Bars cut alike.
 */
export interface BarMark {
  readonly use: "dowel" | "upright" | "lintel" | "beam" | "corner";
  readonly size: string;
  readonly count: number;
  readonly length: Length31;
  /**
   * shape code of ISO 3766: 00 straight, 11 two legs
   */
  readonly shape: string;
}
/**
 * A length.
 */
export interface Length31 {
  /**
   * exact, in the job's tape
   */
  readonly text: string;
  /**
   * the same, whole nanometres
   */
  readonly nm: number;
}
/**
 * All bars of one size, without dowels.
 */
export interface BarTotal {
  readonly size: string;
  readonly count: number;
  readonly length: Length1;
  readonly grams: number;
}
/**
 * What the lap rules come to for the bar of its kind that has least masonry round it.
 */
export interface LapTable {
  readonly use: "dowel" | "upright" | "lintel" | "beam" | "corner";
  readonly size: string;
  readonly side?: string;
  readonly clear: Length32;
  readonly choices: LapChoice[];
}
/**
 * A length.
 */
export interface Length32 {
  /**
   * exact, in the job's tape
   */
  readonly text: string;
  /**
   * the same, whole nanometres
   */
  readonly nm: number;
}
/**
 * What one lap rule comes to.
 */
export interface LapChoice {
  readonly rule: "tms-402-to-2008" | "tms-402-from-2011" | "ibc" | "florida-2017" | "40-bars" | "48-bars" | "as-drawn";
  /**
   * the stress or yield strength it is filled with, to a pound on the square inch
   */
  readonly steel_psi?: number;
  readonly length: Length1;
}
/**
 * What the job does not say of bars.
 */
export interface BarsUnsaid {
  readonly text: string;
  /**
   * JSON pointer of the field
   */
  readonly place: string;
}
/**
 * One bar to be cut.
 */
export interface BarPiece {
  readonly use: "dowel" | "upright" | "lintel" | "beam" | "corner";
  readonly mark: number;
  readonly side: string;
  /**
   * of its dowel along the side; 0: none stands there, or the bar lies along the side
   */
  readonly number: number;
  readonly at?: Length33;
  /**
   * that it goes round; the side is the one that arrives there
   */
  readonly corner?: string;
  /**
   * whose lintel it lies in
   */
  readonly opening?: string;
  /**
   * which of those side by side, from 1
   */
  readonly beside: number;
  readonly first_course: number;
  readonly last_course: number;
  readonly from: Length34;
  readonly to: Length35;
  readonly lap: Length36;
  readonly length: Length37;
}
/**
 * A length.
 */
export interface Length33 {
  /**
   * exact, in the job's tape
   */
  readonly text: string;
  /**
   * the same, whole nanometres
   */
  readonly nm: number;
}
/**
 * A length.
 */
export interface Length34 {
  /**
   * exact, in the job's tape
   */
  readonly text: string;
  /**
   * the same, whole nanometres
   */
  readonly nm: number;
}
/**
 * A length.
 */
export interface Length35 {
  /**
   * exact, in the job's tape
   */
  readonly text: string;
  /**
   * the same, whole nanometres
   */
  readonly nm: number;
}
/**
 * A length.
 */
export interface Length36 {
  /**
   * exact, in the job's tape
   */
  readonly text: string;
  /**
   * the same, whole nanometres
   */
  readonly nm: number;
}
/**
 * A length.
 */
export interface Length37 {
  /**
   * exact, in the job's tape
   */
  readonly text: string;
  /**
   * the same, whole nanometres
   */
  readonly nm: number;
}
/**
 * Joint reinforcement by course, as pieces.
 */
export interface Wires {
  readonly stock: Length38;
  /**
   * by the job; else assumed
   */
  readonly stock_stated: boolean;
  readonly lap: Length1;
  /**
   * by the job; else by rule "wire-lap"
   */
  readonly lap_stated: boolean;
  readonly leg: Length39;
  /**
   * by the job; else assumed
   */
  readonly leg_stated: boolean;
  readonly corners_are: "pieces" | "bent";
  /**
   * by the job; else assumed
   */
  readonly corners_stated: boolean;
  /**
   * whose tops it lies on
   */
  readonly courses: number[];
  /**
   * pieces round corners, of all courses
   */
  readonly corner_count: number;
  readonly tees_are: "tees" | "none";
  /**
   * by the job; else assumed
   */
  readonly tees_stated: boolean;
  /**
   * pieces where inner walls meet others, of all courses
   */
  readonly tee_count: number;
  /**
   * straight ones
   */
  readonly pieces: number;
  /**
   * stock lengths that all is cut from
   */
  readonly to_buy: number;
  /**
   * what keeps them from being counted
   */
  readonly unsaid: BarsUnsaid[];
  /**
   * by course, side, place
   */
  readonly stretches: WireStretch[];
}
/**
 * A length.
 */
export interface Length38 {
  /**
   * exact, in the job's tape
   */
  readonly text: string;
  /**
   * the same, whole nanometres
   */
  readonly nm: number;
}
/**
 * A length.
 */
export interface Length39 {
  /**
   * exact, in the job's tape
   */
  readonly text: string;
  /**
   * the same, whole nanometres
   */
  readonly nm: number;
}
/**
 * Joint reinforcement without a break, in the bed on top of a course.
 */
export interface WireStretch {
  readonly side: string;
  /**
   * whose top it lies on
   */
  readonly course: number;
  readonly from: Length40;
  readonly to: Length1;
  /**
   * corner: it laps the corner's leg; else it stops there
   */
  readonly at_start: "corner" | "control-joint" | "jamb" | "free" | "junction" | "tee" | "lintel";
  readonly at_end: "corner" | "control-joint" | "jamb" | "free" | "junction" | "tee" | "lintel";
  /**
   * 0: the corners' legs fill it
   */
  readonly pieces: number;
  readonly last: Length41;
}
/**
 * A length.
 */
export interface Length40 {
  /**
   * exact, in the job's tape
   */
  readonly text: string;
  /**
   * the same, whole nanometres
   */
  readonly nm: number;
}
/**
 * A length.
 */
export interface Length41 {
  /**
   * exact, in the job's tape
   */
  readonly text: string;
  /**
   * the same, whole nanometres
   */
  readonly nm: number;
}
/**
 * Ties where inner walls are butted and tied.
 */
export interface Ties {
  /**
   * courses, as the job says; absent: it does not
   */
  readonly every?: number;
  /**
   * by course
   */
  readonly ties: Tie[];
  /**
   * inner walls that are tied by nothing that the job says, once for each end
   */
  readonly unsaid: string[];
}
/**
 * A tie of an inner wall, in the bed on top of a course.
 */
export interface Tie {
  readonly side: string;
  /**
   * the wall that it meets
   */
  readonly to: string;
  readonly course: number;
}
/**
 * Bars of one size to buy, and what is cut from each.
 */
export interface BarsFromStock {
  readonly size: string;
  /**
   * to buy
   */
  readonly bars: number;
  /**
   * no plan takes fewer
   */
  readonly least: number;
  /**
   * the first is mark 1
   */
  readonly marks: number[];
  readonly patterns: CutPattern[];
}
/**
 * One way to cut a bar.
 */
export interface CutPattern {
  readonly times: number;
  /**
   * of each of the marks
   */
  readonly cuts: number[];
  readonly left: Length42;
}
/**
 * A length.
 */
export interface Length42 {
  /**
   * exact, in the job's tape
   */
  readonly text: string;
  /**
   * the same, whole nanometres
   */
  readonly nm: number;
}
/**
 * What has to be on the site.
 */
export interface Order {
  readonly articles: Article[];
  readonly mortar: MortarJoints;
  readonly assumed: Assumed[];
  readonly prices?: Prices;
  /**
   * articles with no price yet
   */
  readonly unpriced: number;
  /**
   * the list as comma-separated values (RFC 4180)
   */
  readonly csv: string;
}
/**
 * One line of the order list.
 */
export interface Article {
  /**
   * what a price names
   */
  readonly id: string;
  readonly name: string;
  /**
   * the heading of the list that it stands under
   */
  readonly group: string;
  /**
   * its name under that heading
   */
  readonly called: string;
  /**
   * how many, in words
   */
  readonly amount: string;
  readonly sold_in:
    | "each"
    | "bags"
    | "lengths"
    | "cubic-feet"
    | "tenths-of-a-cubic-metre"
    | "quarters-of-a-cubic-yard"
    | "gallons"
    | "litres"
    | "feet"
    | "metres";
  /**
   * there before the work of this hold point
   */
  readonly wanted: "order" | "pour" | "first-course" | "lintels" | "grout" | "top";
  /**
   * false: no number is told, the note says why
   */
  readonly counted: boolean;
  /**
   * goes into the building; of a range: its least
   */
  readonly net: number;
  /**
   * for breakage, waste or loss
   */
  readonly spare: number;
  /**
   * up to whole pallets
   */
  readonly rounding: number;
  /**
   * to order
   */
  readonly least: number;
  /**
   * the same, unless published figures disagree
   */
  readonly most: number;
  /**
   * units on one pallet; absent: not sold by pallets
   */
  readonly on_pallet?: number;
  readonly must_not_run_short: boolean;
  /**
   * what does for it, or ""
   */
  readonly instead: string;
  /**
   * or ""
   */
  readonly note: string;
  /**
   * ways in which it is reckoned; none: it is counted
   */
  readonly figures: Figure[];
  /**
   * of one, in smallest units; of a whole cubic yard or metre
   */
  readonly price?: number;
  readonly cost?: Sum;
  /**
   * to the site so far; absent: not said
   */
  readonly brought?: number;
  /**
   * of one as sold; absent: nobody states it
   */
  readonly weight?: string;
  /**
   * by the job; else as printed on its bag, or a bar's mass
   */
  readonly weight_stated: boolean;
}
/**
 * One way in which an article is reckoned, and its source.
 */
export interface Figure {
  readonly rule: string;
  readonly says: string;
  readonly least: number;
  readonly most: number;
  /**
   * the job orders by it
   */
  readonly chosen: boolean;
}
/**
 * Money; least and most differ where amounts are a range.
 */
export interface Sum {
  /**
   * smallest units of the job's currency
   */
  readonly least: number;
  readonly most: number;
  readonly text: string;
}
/**
 * What the joints of the layout hold.
 */
export interface MortarJoints {
  readonly first_bed: Volume1;
  readonly beds: Volume2;
  readonly heads: Volume3;
  readonly all: Volume;
  readonly full: Volume4;
  /**
   * whole blocks' worth that is laid
   */
  readonly blocks: number;
  /**
   * units of course 1 under which the bed was read
   */
  readonly beds_read: number;
}
/**
 * How much.
 */
export interface Volume1 {
  /**
   * in gallons or litres, to a tenth
   */
  readonly text: string;
  readonly cubic_centimetres: number;
}
/**
 * How much.
 */
export interface Volume2 {
  /**
   * in gallons or litres, to a tenth
   */
  readonly text: string;
  readonly cubic_centimetres: number;
}
/**
 * How much.
 */
export interface Volume3 {
  /**
   * in gallons or litres, to a tenth
   */
  readonly text: string;
  readonly cubic_centimetres: number;
}
/**
 * How much.
 */
export interface Volume4 {
  /**
   * in gallons or litres, to a tenth
   */
  readonly text: string;
  readonly cubic_centimetres: number;
}
/**
 * A figure that the order assumes.
 */
export interface Assumed {
  readonly says: string;
  /**
   * JSON pointer into the job
   */
  readonly place: string;
  /**
   * by the job; else a default
   */
  readonly stated: boolean;
}
/**
 * absent where the job has no price
 */
export interface Prices {
  readonly currency: string;
  readonly decimals: number;
  readonly goods: Sum;
  readonly tax: Sum1;
  readonly delivery: Sum;
  readonly all: Sum;
  /**
   * goods, by the hold points in their order
   */
  readonly by_point: Sum[];
  /**
   * articles
   */
  readonly priced: number;
  /**
   * articles with no price yet: in no sum
   */
  readonly unpriced: number;
}
/**
 * Money; least and most differ where amounts are a range.
 */
export interface Sum1 {
  /**
   * smallest units of the job's currency
   */
  readonly least: number;
  readonly most: number;
  readonly text: string;
}
/**
 * What is done when.
 */
export interface Programme {
  readonly crew: "beginners" | "mason";
  readonly pairs: number;
  /**
   * of each pair; rounded where the log tells the pace
   */
  readonly units_per_hour: number;
  /**
   * assumed by its crew, told by the laid log, or stated by the job
   */
  readonly pace_from: "assumed" | "log" | "stated";
  /**
   * that the whole crew lays ...
   */
  readonly pace_units: number;
  /**
   * ... in so many minutes
   */
  readonly pace_minutes: number;
  readonly own_pace?: OwnPace;
  /**
   * or ""
   */
  readonly own_pace_says: string;
  readonly minutes_a_day: number;
  /**
   * that a wall rises in a day
   */
  readonly most_courses: number;
  /**
   * the job says who lays, or when; else all of it is assumed
   */
  readonly planned: boolean;
  readonly done?: DoneSoFar;
  /**
   * that are ahead
   */
  readonly tasks: Task[];
  readonly links: Link[];
  /**
   * from the first planned day's start to the end
   */
  readonly minutes: number;
  readonly batch: MortarBatch;
  readonly days: WorkDay[];
  readonly chance?: FinishChance;
  /**
   * as iCalendar (RFC 5545); "" where days have no dates or none is left
   */
  readonly calendar: string;
}
/**
 * absent: the log has too few courses with times
 */
export interface OwnPace {
  /**
   * stretches of work between two stamps of one day
   */
  readonly works: number;
  /**
   * laid in them
   */
  readonly units: number;
  /**
   * that they took
   */
  readonly minutes: number;
  /**
   * thousandths of a minute for one unit, the mean of the stretches
   */
  readonly each: number;
  /**
   * standard deviation of one stretch, hundredths of the mean
   */
  readonly spread: number;
  /**
   * standard deviation of the mean, hundredths of it
   */
  readonly doubt: number;
}
/**
 * absent: log and readings tell of no work, and the job of no day
 */
export interface DoneSoFar {
  /**
   * up to which they tell; absent: no entry has a date, and the job states none
   */
  readonly evening?: string;
  /**
   * that evening is the job's, not the newest entry's
   */
  readonly stated: boolean;
  /**
   * the footing or slab: they tell of something on it
   */
  readonly poured: boolean;
  /**
   * working days from the job's first one to that evening
   */
  readonly days: number;
  /**
   * laid
   */
  readonly blocks: number;
  /**
   * that are done
   */
  readonly works: string[];
  readonly says: string;
}
/**
 * One piece of work, in whole minutes of working time from the first planned day's start.
 */
export interface Task {
  readonly work:
    | "boards"
    | "footing"
    | "footing-cure"
    | "strike-lines"
    | "leads"
    | "course"
    | "lintels"
    | "masonry-cure"
    | "grout-lift"
    | "grout-cure"
    | "bolts";
  readonly says: string;
  readonly blocks: number;
  /**
   * how long it takes is the job's; else assumed, or its blocks' at the pace
   */
  readonly stated: boolean;
  /**
   * days of a wait that are behind
   */
  readonly gone: number;
  /**
   * earliest
   */
  readonly start: number;
  readonly finish: number;
  /**
   * that keeps the end
   */
  readonly latest_start: number;
  readonly critical: boolean;
}
/**
 * What waits for what, by their places among the tasks.
 */
export interface Link {
  readonly before: number;
  readonly after: number;
  /**
   * not before the day after
   */
  readonly next_day: boolean;
}
/**
 * So much mortar is mixed at a time that it is laid within its life.
 */
export interface MortarBatch {
  readonly minutes: number;
  /**
   * that by the job; else by rule "mortar-life"
   */
  readonly stated: boolean;
  /**
   * laid in that time at the pace
   */
  readonly blocks: number;
  /**
   * tenths of a bag for them
   */
  readonly least: number;
  readonly most: number;
  readonly says: string;
}
/**
 * What one working day brings.
 */
export interface WorkDay {
  readonly number: number;
  /**
   * absent where neither the job states its first day nor the log has a date
   */
  readonly date?: string;
  /**
   * worked at, by their places among the tasks
   */
  readonly tasks: number[];
  /**
   * what is done of each of them on this day
   */
  readonly works: string[];
  /**
   * laid, by kind
   */
  readonly units: UnitCount[];
  readonly laid: number;
  /**
   * of mortar
   */
  readonly batches: number;
  readonly reached: Reached[];
  /**
   * walls that stand without grout tonight
   */
  readonly brace: string[];
  readonly zone: Length45;
  /**
   * walls that stand over the height of rule "brace-over-8-ft" tonight, grouted or not
   */
  readonly tall: string[];
  /**
   * where its blocks stand
   */
  readonly stacked: string[];
  /**
   * of the courses finished on it
   */
  readonly steel: string[];
  /**
   * of these, and before a pour
   */
  readonly checks: string[];
  /**
   * how high each wall stands at its end
   */
  readonly stop: string[];
  /**
   * what the forecast brings up; "": nothing, which permits nothing
   */
  readonly weather: string;
}
/**
 * How high a wall stands at the end of a day.
 */
export interface Reached {
  readonly side: string;
  /**
   * the highest that is finished; 0: none
   */
  readonly course: number;
  readonly top: Length43;
  /**
   * the highest in which a block lies: of a lead, or of a course in hand
   */
  readonly begun: number;
  readonly begun_top: Length44;
  /**
   * up to this course it is filled; 0: not at all
   */
  readonly grouted: number;
}
/**
 * A length.
 */
export interface Length43 {
  /**
   * exact, in the job's tape
   */
  readonly text: string;
  /**
   * the same, whole nanometres
   */
  readonly nm: number;
}
/**
 * A length.
 */
export interface Length44 {
  /**
   * exact, in the job's tape
   */
  readonly text: string;
  /**
   * the same, whole nanometres
   */
  readonly nm: number;
}
/**
 * A length.
 */
export interface Length45 {
  /**
   * exact, in the job's tape
   */
  readonly text: string;
  /**
   * the same, whole nanometres
   */
  readonly nm: number;
}
/**
 * absent where the job does not say by when
 */
export interface FinishChance {
  /**
   * drawn
   */
  readonly programmes: number;
  readonly by: string;
  /**
   * of them by then
   */
  readonly done: number;
  /**
   * standard deviation of one piece of work, hundredths of its time
   */
  readonly spread: number;
  readonly spread_by: "assumed" | "log" | "stated";
  /**
   * standard deviation of the pace, hundredths of it
   */
  readonly pace_doubt: number;
  readonly pace_doubt_by: "assumed" | "log" | "stated";
  /**
   * from the first on which one is done
   */
  readonly days: DoneBy[];
  readonly says: string;
  readonly unsure: string;
}
/**
 * How many of the programmes drawn are done by the end of a day.
 */
export interface DoneBy {
  readonly day: number;
  readonly date: string;
  readonly programmes: number;
}
/**
 * What the forecast of one day brings up of the rules on the cards.
 */
export interface WeatherDay {
  readonly date: string;
  readonly says: string;
  /**
   * by id, among the cards; none: that permits nothing
   */
  readonly rules: string[];
}
/**
 * What runs out, what comes with which truck, where pallets stand.
 */
export interface OnSite {
  readonly short_of: RunsOut[];
  readonly drops: Drop[];
  readonly pallets?: PalletPlan;
}
/**
 * An article of which less was brought than is laid and breaks.
 */
export interface RunsOut {
  readonly article: string;
  readonly brought: number;
  readonly lacks: number;
  /**
   * on which the first one lacks; absent: not laid by courses
   */
  readonly side?: string;
  /**
   * of that side; 0: not laid by courses
   */
  readonly course: number;
  readonly day: PlannedDay;
  readonly says: string;
}
/**
 * on which it lacks, or on which the work that it is for begins
 */
export interface PlannedDay {
  readonly number: number;
  /**
   * absent where the job does not state its first day
   */
  readonly date?: string;
}
/**
 * What has to be there before the work of a hold point begins.
 */
export interface Drop {
  readonly point: "order" | "pour" | "first-course" | "lintels" | "grout" | "top";
  readonly day: PlannedDay1;
  readonly articles: string[];
  /**
   * of these, tools left out: nobody states their weight
   */
  readonly unweighed: string[];
  /**
   * of these: one, or its pallet, is more than the truck carries
   */
  readonly too_heavy: string[];
  /**
   * of all that is weighed, rounded up
   */
  readonly grams: number;
  readonly weight: string;
  /**
   * fewer do not carry it; 0: the job states no truck
   */
  readonly least_loads: number;
  readonly loads: Load[];
}
/**
 * on which that work begins
 */
export interface PlannedDay1 {
  readonly number: number;
  /**
   * absent where the job does not state its first day
   */
  readonly date?: string;
}
/**
 * What one truck brings at a time.
 */
export interface Load {
  readonly parts: LoadPart[];
  /**
   * rounded up
   */
  readonly grams: number;
  readonly weight: string;
  readonly says: string;
}
/**
 * So many of an article on one load.
 */
export interface LoadPart {
  readonly article: string;
  /**
   * as sold
   */
  readonly count: number;
}
/**
 * absent where no kind of unit is ordered by pallets
 */
export interface PalletPlan {
  readonly zone: Length46;
  readonly pallets: PlacedPallet[];
  /**
   * that were looked at
   */
  readonly places: never[][];
  /**
   * millimetres, by all blocks together
   */
  readonly carried: number;
  readonly carried_says: string;
  readonly pallet_prices: number[];
  readonly place_prices: number[];
}
/**
 * A length.
 */
export interface Length46 {
  /**
   * exact, in the job's tape
   */
  readonly text: string;
  /**
   * the same, whole nanometres
   */
  readonly nm: number;
}
/**
 * A pallet and its place.
 */
export interface PlacedPallet {
  readonly article: string;
  /**
   * on it
   */
  readonly units: number;
  /**
   * it serves the blocks from here; absent: all of it is spare
   */
  readonly from_side?: string;
  readonly from: Length47;
  readonly to_side?: string;
  readonly to: Length1;
  /**
   * the side that it stands outside of
   */
  readonly beside: string;
  readonly along: Length48;
  readonly out: Length49;
  /**
   * [east, north], whole nanometres
   *
   * @minItems 2
   */
  readonly middle: never[];
  /**
   * millimetres, all its blocks together
   */
  readonly carried: number;
}
/**
 * A length.
 */
export interface Length47 {
  /**
   * exact, in the job's tape
   */
  readonly text: string;
  /**
   * the same, whole nanometres
   */
  readonly nm: number;
}
/**
 * A length.
 */
export interface Length48 {
  /**
   * exact, in the job's tape
   */
  readonly text: string;
  /**
   * the same, whole nanometres
   */
  readonly nm: number;
}
/**
 * A length.
 */
export interface Length49 {
  /**
   * exact, in the job's tape
   */
  readonly text: string;
  /**
   * the same, whole nanometres
   */
  readonly nm: number;
}
/**
 * A hole at the foot of a high pour, through which a bar's cell is cleaned.
 */
export interface Cleanout {
  /**
   * whose unit it is in
   */
  readonly side: string;
  /**
   * course number, from 1 at the bearing
   */
  readonly course: number;
  /**
   * number along that side
   */
  readonly unit: number;
  readonly at: Length50;
  /**
   * a cleanout unit; else the hole is cut
   */
  readonly bought: boolean;
  readonly opens: "outward" | "inward";
}
/**
 * A length.
 */
export interface Length50 {
  /**
   * exact, in the job's tape
   */
  readonly text: string;
  /**
   * the same, whole nanometres
   */
  readonly nm: number;
}
/**
 * What is looked at before one pour.
 */
export interface PourToInspect {
  readonly first_course: number;
  readonly last_course: number;
  /**
   * by side, then along it
   */
  readonly bars: BarToInspect[];
  /**
   * courses
   */
  readonly beams: number[];
  /**
   * openings whose lintels of units begin in this pour
   */
  readonly lintels: string[];
  /**
   * boxes to tick: bars with their cleanouts and floors; beams by side; lintels
   */
  readonly lines: LineToTick[];
}
/**
 * A bar that is looked at before grout goes round it.
 */
export interface BarToInspect {
  readonly side: string;
  /**
   * of its dowel along the side; 0: it has none here
   */
  readonly number: number;
  readonly at: Length1;
  /**
   * it has one at the foot of this pour
   */
  readonly cleanout: boolean;
  /**
   * units with floors, lintels in one piece, that it passes in this pour
   */
  readonly through: BarThrough[];
  /**
   * name of a photo of it
   */
  readonly photo: string;
  /**
   * its dowel's number, or x1, x2 where it has none
   */
  readonly short_name: string;
}
/**
 * A box of the inspection list; its first four fields are what an entry "looked_at" of the laid log says.
 */
export interface LineToTick {
  readonly what: "bar" | "cleanout" | "floor" | "beam" | "lintel";
  readonly on: string;
  /**
   * of bars and cleanouts the pour's lowest
   */
  readonly course: number;
  readonly at: Length51;
  /**
   * bars, cleanouts, floors: index into bars; else -1 or the opening's
   */
  readonly of: number;
  /**
   * entry of the laid log, from 0; absent: not ticked
   */
  readonly ticked_by?: number;
}
/**
 * A length.
 */
export interface Length51 {
  /**
   * exact, in the job's tape
   */
  readonly text: string;
  /**
   * the same, whole nanometres
   */
  readonly nm: number;
}
/**
 * One lift of a pour in the order in which it is filled: the way round along the walls that is shortest to the last cell; then troughs.
 */
export interface LiftCard {
  /**
   * from the bottom
   */
  readonly pour: number;
  /**
   * of its pour, from the bottom
   */
  readonly lift: number;
  readonly first_course: number;
  readonly last_course: number;
  readonly height: Length1;
  /**
   * it is consolidated a second time: rule "grout-again"
   */
  readonly again: boolean;
  readonly again_from_minutes: number;
  /**
   * after it was filled: rule "grout-again-when"
   */
  readonly again_by_minutes: number;
  readonly walk: FoundLength26;
  /**
   * goes in, before what is spilt
   */
  readonly all: string;
  readonly steps: GroutStep[];
}
/**
 * A value worked out of readings.
 */
export interface FoundLength26 {
  /**
   * rounded once, in the job's tape
   */
  readonly text: string;
  /**
   * not rounded to the tape
   */
  readonly nm: number;
}
/**
 * One place that grout goes into, in one lift.
 */
export interface GroutStep {
  readonly into: "cell" | "beam" | "lintel";
  readonly side: string;
  /**
   * of a cell its dowel's number, or x1, x2 where it has none; of a beam its course; of a lintel its opening
   */
  readonly name: string;
  /**
   * up to its top: of a cell the last of the lift, of a trough its own
   */
  readonly course: number;
  readonly at: FoundLength27;
  readonly volume: Volume5;
  readonly total: Volume6;
  /**
   * entry of the laid log, from 0; absent: not filled
   */
  readonly filled_by?: number;
  /**
   * entry of the laid log that says it was consolidated again
   */
  readonly again_by?: number;
}
/**
 * A value worked out of readings.
 */
export interface FoundLength27 {
  /**
   * rounded once, in the job's tape
   */
  readonly text: string;
  /**
   * not rounded to the tape
   */
  readonly nm: number;
}
/**
 * How much.
 */
export interface Volume5 {
  /**
   * in gallons or litres, to a tenth
   */
  readonly text: string;
  readonly cubic_centimetres: number;
}
/**
 * How much.
 */
export interface Volume6 {
  /**
   * in gallons or litres, to a tenth
   */
  readonly text: string;
  readonly cubic_centimetres: number;
}
/**
 * A piece of plate with its bolts.
 */
export interface PlatePiece {
  readonly side: string;
  readonly from: Length1;
  readonly to: Length1;
  readonly bolts: Bolt[];
  readonly without: NoBolt[];
}
/**
 * An anchor bolt, to its middle, in a cell of the top course.
 */
export interface Bolt {
  readonly at: Length1;
  /**
   * number along that side
   */
  readonly unit: number;
  /**
   * from the unit's end nearer to the side's start
   */
  readonly cell: number;
}
/**
 * A stretch in which a bolt is asked for and none can stand.
 */
export interface NoBolt {
  readonly after: Length1;
  readonly by: Length1;
  readonly next?: Length52;
}
/**
 * A length.
 */
export interface Length52 {
  /**
   * exact, in the job's tape
   */
  readonly text: string;
  /**
   * the same, whole nanometres
   */
  readonly nm: number;
}
/**
 * What a rule says, and where that stands.
 */
export interface RuleOnCard {
  readonly id: string;
  readonly says: string;
  readonly source: string;
  /**
   * not read in its document: check your code
   */
  readonly unverified: boolean;
  /**
   * its temperatures, in the order in which it says them
   */
  readonly fahrenheit: number[];
  /**
   * its winds
   */
  readonly miles_per_hour: number[];
  /**
   * its times
   */
  readonly minutes: number[];
}
/**
 * Beside walls without their final support; absent where there are none.
 */
export interface AccessZone {
  readonly height: Length53;
  readonly width: Length54;
}
/**
 * A length.
 */
export interface Length53 {
  /**
   * exact, in the job's tape
   */
  readonly text: string;
  /**
   * the same, whole nanometres
   */
  readonly nm: number;
}
/**
 * A length.
 */
export interface Length54 {
  /**
   * exact, in the job's tape
   */
  readonly text: string;
  /**
   * the same, whole nanometres
   */
  readonly nm: number;
}
/**
 * A stretch of one course without a break.
 */
export interface Run {
  readonly side: string;
  /**
   * course number, from 1 at the bearing
   */
  readonly course: number;
  /**
   * start of the run, whole nanometres
   */
  readonly from: number;
  /**
   * end of the run, whole nanometres
   */
  readonly to: number;
  readonly at_start:
    | "through-corner"
    | "butt-corner"
    | "jamb"
    | "free-end"
    | "control-joint"
    | "tied-junction"
    | "lapped-butt"
    | "entering-junction"
    | "slot-side"
    | "lintel-end";
  readonly at_end:
    | "through-corner"
    | "butt-corner"
    | "jamb"
    | "free-end"
    | "control-joint"
    | "tied-junction"
    | "lapped-butt"
    | "entering-junction"
    | "slot-side"
    | "lintel-end";
  /**
   * number of head joints, all equally wide: slack / joints
   */
  readonly joints: number;
  /**
   * the run less its pieces, whole nanometres
   */
  readonly slack: number;
  readonly pieces: Piece[];
}
