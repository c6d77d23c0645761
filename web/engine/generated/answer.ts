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
  readonly series: UnitSeries[];
  readonly corners: Corner[];
  /**
   * Sides in order, then interior walls.
   */
  readonly sides: Wall[];
  readonly junctions: Junction[];
  readonly courses: Course[];
  readonly height: Length5;
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
  readonly bars: Bar[];
  /**
   * The holes at the foot of each high pour, through which the bars' cells are cleaned.
   */
  readonly cleanouts: Cleanout[];
  /**
   * Stretches of one course without a break, by side, course, place.
   */
  readonly runs: Run[];
}
/**
 * One series of units that the walls are laid with.
 */
export interface UnitSeries {
  readonly id: string;
  readonly title: string;
  readonly full: Length;
  readonly half: Length;
  readonly thickness: Length;
  readonly height: Length;
  readonly joint: Length;
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
  readonly nominal: Length;
  readonly actual: Length1;
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
 * Where an interior wall meets another.
 */
export interface Junction {
  readonly main: string;
  readonly abutting: string;
  readonly at: "start" | "end";
  readonly kind: "tied" | "control-joint" | "lapped";
  readonly from: Length2;
  readonly to: Length3;
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
  readonly unit_height: Length;
  readonly top: Length4;
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
 * An opening where it stands in the masonry.
 */
export interface Opening {
  readonly name: string;
  readonly use: "door" | "overhead" | "window" | "plain";
  readonly side: string;
  readonly from: Length;
  readonly to: Length;
  readonly width: Length;
  readonly height: Length;
  readonly underside: Length6;
  readonly soffit: Length7;
  /**
   * course number, from 1 at the bearing
   */
  readonly first_course: number;
  /**
   * course number, from 1 at the bearing
   */
  readonly last_course: number;
  readonly planned?: PlannedJambs;
  readonly asked_width: Length;
  readonly asked_height: Length;
  readonly packing_each_side: Length8;
  readonly packing_head: Length;
  readonly lintel?: LintelAsked;
  /**
   * JSON pointer into the job
   */
  readonly place: string;
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
 * only where a jamb was found elsewhere
 */
export interface PlannedJambs {
  readonly laid_courses: number;
  readonly from: Length;
  readonly to: Length;
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
  readonly least_bearing: Length;
}
/**
 * A control joint, straight through all courses.
 */
export interface ControlJoint {
  readonly side: string;
  readonly from: Length;
  readonly to: Length;
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
  readonly from: Length;
  readonly to: Length;
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
  readonly from: Length;
  readonly to: Length;
  readonly amount: Length;
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
  readonly change: Length9;
  readonly shift?: Length10;
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
  readonly read: Length;
  readonly expected: FoundLength;
  /**
   * blunder, slip: left out
   */
  readonly use: "adjusted" | "blunder" | "slip" | "read";
  readonly meant?: Length11;
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
}
/**
 * A point that the rod stood on.
 */
export interface Station {
  readonly name: string;
  readonly side?: string;
  readonly at?: Length12;
  readonly surface: "bearing" | "floor" | "other";
  readonly height: FoundLength7;
  readonly doubt: FoundLength8;
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
  readonly height: FoundLength9;
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
 * absent without a two-peg test
 */
export interface Instrument {
  readonly over: FoundLength10;
  readonly sight: Length;
  readonly doubt: FoundLength11;
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
 * A doorway whose floor was read.
 */
export interface DoorFloor {
  readonly opening: string;
  readonly tall_least: FoundLength12;
  readonly tall_most: FoundLength3;
  readonly planned: Length;
  readonly doubt: FoundLength3;
  readonly verdict: "fits" | "does-not-fit" | "cannot-tell" | "not-read";
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
 * The bed joint of the first course, by the bearing as read.
 */
export interface BedAsFound {
  /**
   * not-read as long as the bearing under some unit of course 1 is not read, unless what was read is out of range already
   */
  readonly verdict: "fits" | "does-not-fit" | "cannot-tell" | "not-read";
  readonly least: FoundLength3;
  readonly most: FoundLength3;
  readonly top: FoundLength13;
  readonly margin: FoundLength14;
  readonly thinnest: FoundLength3;
  readonly thickest: FoundLength3;
  readonly doubt: FoundLength15;
  /**
   * units of course 1 whose bearing was not read
   */
  readonly units_without: number;
  /**
   * where the rod is still to be read
   */
  readonly lacks: string[];
  readonly units: UnitBed[];
  readonly choices: BedChoice[];
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
  readonly top: FoundLength3;
  readonly margin: FoundLength3;
  /**
   * in the job's own volumes
   */
  readonly mortar: string;
  readonly concrete?: string;
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
 * A dowel as found, and what follows.
 */
export interface FoundDowel {
  readonly reading: number;
  readonly side: string;
  /**
   * of the list of dowels that it is taken for; 0: none
   */
  readonly number: number;
  readonly at: Length13;
  readonly off_face: Length;
  readonly off_place?: FoundLength16;
  readonly room: FoundLength17;
  readonly action: "stands" | "cannot-tell" | "lap-apart" | "bend" | "cut-and-replace";
  readonly text: string;
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
  readonly east: FoundLength18;
  readonly north: FoundLength3;
  /**
   * to the left
   */
  readonly turn_micrometres_in_a_metre: number;
  readonly room: FoundLength19;
  readonly room_before: FoundLength20;
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
 * absent while something is dragged
 */
export interface Laying {
  readonly rules: "us" | "uk";
  readonly joints: JointRules;
  readonly mark_reading: Length;
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
  readonly planned: Length;
  readonly working_least: Length;
  readonly working_most: Length;
  readonly least: Length;
  readonly most: Length;
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
  readonly past?: Length;
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
  readonly nm: number;
}
/**
 * Why a reading is doubted, and what was probably meant.
 */
export interface Doubtful {
  readonly why: string;
  readonly likely: string;
  readonly past?: Length;
  readonly at?: Length;
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
  readonly cut?: Length;
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
  readonly joint: Length;
  readonly left: FoundLength3;
}
/**
 * A height of the wall as read, and the beds that bring it back.
 */
export interface Gauge {
  readonly entry: number;
  readonly side: string;
  readonly course: number;
  readonly high: Length;
  readonly to: string;
  readonly beds: Bed[];
}
/**
 * One bed joint still to be laid.
 */
export interface Bed {
  readonly course: number;
  readonly bed: Length;
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
  readonly from_line?: Length;
}
/**
 * A corner of the unit to be tapped down.
 */
export interface Tap {
  readonly corner: "near-outer" | "near-inner" | "far-outer" | "far-inner";
  readonly down: Length;
}
/**
 * A gap as measured.
 */
export interface Gap {
  readonly entry: number;
  readonly side: string;
  readonly course: number;
  readonly measured: Length;
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
  readonly lost_over?: FoundLength21;
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
  readonly found_at?: Length14;
  readonly bar_at?: Length15;
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
 * A bar that no poured dowel is for.
 */
export interface BarWithoutDowel {
  readonly side: string;
  readonly at: Length;
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
  readonly at: Length16;
  readonly off_face: Length17;
  readonly first_course?: InCell;
  readonly second_course?: InCell1;
  readonly room?: DowelRoom;
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
  readonly length: Length;
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
  readonly total: Length18;
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
 * What the saw cuts.
 */
export interface SawList {
  readonly kerf: Length;
  readonly groups: SawGroup[];
  readonly pairs: SawPair[];
}
/**
 * Pieces sawn alike.
 */
export interface SawGroup {
  readonly series: string;
  readonly from: Kind;
  readonly from_length: Length;
  readonly length: Length;
  readonly offcut: Length;
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
  readonly at: Length;
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
  readonly asked_bearing: Length19;
  readonly start_bearing: Length20;
  readonly end_bearing: Length21;
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
  readonly centre: Length;
  /**
   * from the unit's end nearer to the side's start
   */
  readonly cell?: number;
}
/**
 * An upright bar.
 */
export interface Bar {
  readonly side: string;
  readonly centre: Length;
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
  readonly at: Length22;
  /**
   * a cleanout unit; else the hole is cut
   */
  readonly bought: boolean;
  readonly opens: "outward" | "inward";
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
