// Made by tools/contract_types.mjs from docs/schema/job.schema.json. Not to be changed by hand.

/**
 * How high the walls are.
 */
export type Heights = {
  /**
   * Number of courses.
   */
  readonly courses?: number;
  /**
   * Height from the underside of the first bed joint, a length; off the courses, the nearest whole one is built.
   */
  readonly height?: string;
  /**
   * Where a half-high course goes, if the height asks for one.
   */
  readonly half_high?: "first" | "under-head" | "top";
  /**
   * Courses that are half-high.
   *
   * @maxItems 200
   */
  readonly half_high_courses?: number[];
} & {
  [k: string]: unknown;
};
/**
 * An opening in a wall: exactly one of masonry, door, overhead, window.
 */
export type Opening = {
  /**
   * Name of the opening, such as D1.
   */
  readonly name: string;
  /**
   * The wall that it is in.
   */
  readonly on: string;
  readonly place: Place1;
  readonly masonry?: Masonry;
  readonly door?: Door;
  readonly overhead?: Overhead;
  readonly window?: Window;
  /**
   * Doors: height of the floor from the top of course 1, a length, minus below it; absent: one joint under course 1.
   */
  readonly floor?: string;
  /**
   * Windows: height of the sill from the top of course 1, a length, minus below it.
   */
  readonly sill?: string;
  /**
   * Windows: the course whose top is the sill.
   */
  readonly sill_course?: number;
  readonly lintel?: Lintel;
  /**
   * A note for the sheets.
   */
  readonly note?: string;
} & Opening1;
export type Opening1 = {
  [k: string]: unknown;
};
/**
 * One entry of the log: exactly one of tape, rod, two_peg, dowel, edge, strike.
 */
export type Reading = {
  /**
   * A name that no other entry has.
   */
  readonly id: string;
  /**
   * When, as text.
   */
  readonly when?: string;
  /**
   * Who, as initials.
   */
  readonly by?: string;
  readonly tape?: TapeReading;
  readonly rod?: RodReading;
  readonly two_peg?: TwoPegReading;
  readonly dowel?: DowelReading;
  readonly edge?: EdgeReading;
  /**
   * The id of an entry that no longer counts. If that is a strike, what it struck counts again.
   */
  readonly strike?: string;
  /**
   * A note.
   */
  readonly note?: string;
} & Reading1;
export type Reading1 = {
  [k: string]: unknown;
};
/**
 * One entry of the laid log: exactly one of mark, units, laid, gauge, set, gap, check, found, remark, grouted, looked_at, strike.
 */
export type LaidEntry = {
  /**
   * A name that no other entry has.
   */
  readonly id: string;
  /**
   * When, as text; 2026-05-09 14:20 tells the pace too.
   */
  readonly when?: string;
  /**
   * Who, as initials.
   */
  readonly by?: string;
  readonly mark?: MarkReading;
  readonly units?: UnitSample;
  readonly laid?: CourseLaid;
  readonly gauge?: GaugeReading;
  readonly set?: UnitSetting;
  readonly gap?: GapReading;
  readonly check?: WallCheck;
  readonly found?: FoundPlace;
  readonly remark?: Remark;
  readonly grouted?: Grouted;
  readonly looked_at?: LookedAt;
  /**
   * The id of an entry that no longer counts. If that is a strike, what it struck counts again.
   */
  readonly strike?: string;
  /**
   * Names of photo files.
   *
   * @maxItems 100
   */
  readonly photos?: string[];
  /**
   * A note.
   */
  readonly note?: string;
} & LaidEntry1;
/**
 * A block end at its mark.
 */
export type MarkReading = {
  /**
   * The wall.
   */
  readonly on: string;
  /**
   * The course.
   */
  readonly course: number;
  /**
   * The mark: its running distance from the wall's start, a length.
   */
  readonly at: string;
  /**
   * How far the block's end is past the mark, a length, minus short of it.
   */
  readonly past?: string;
  /**
   * What the tape reads at the block's end, a length.
   */
  readonly read?: string;
} & {
  [k: string]: unknown;
};
export type LaidEntry1 = {
  [k: string]: unknown;
};

/**
 * A job: a small building of reinforced concrete block, as wanted. A length is a text such as 24'-0", 7 5/8" or 4451 mm; a number without a unit is inches or millimetres as the tape says. Where both can be meant a length is nominal, unless the word actual follows it.
 */
export interface StringcourseJob {
  /**
   * Version of this form of document.
   */
  readonly stringcourse: number;
  /**
   * Name of the job.
   */
  readonly name?: string;
  /**
   * Notes.
   */
  readonly notes?: string;
  /**
   * Who made the job, for the sheets.
   */
  readonly drawn_by?: string;
  /**
   * Date and revision for the sheets, in your own words: 2027-03-01, revision B.
   */
  readonly issued?: string;
  /**
   * The tape that the job is worked with.
   */
  readonly tape: "inches" | "millimetres";
  readonly units: Units;
  readonly outline: Outline;
  /**
   * Interior walls.
   *
   * @maxItems 10000
   */
  readonly interior_walls?: InteriorWall[];
  readonly heights: Heights;
  /**
   * Doors, windows and other openings.
   *
   * @maxItems 10000
   */
  readonly openings?: Opening[];
  readonly control_joints?: ControlJoints;
  readonly steel?: Steel;
  readonly top?: Top;
  readonly order?: Ordering;
  readonly days?: Days;
  readonly setting_out?: SettingOut;
  readonly ground?: Ground;
  /**
   * What was measured on site, in order. Entries are never changed or taken out: a wrong one is struck by a later one.
   *
   * @maxItems 100000
   */
  readonly readings?: Reading[];
  readonly laying?: Laying;
  /**
   * What happened at the wall: entries are never changed or taken out, a wrong one is struck by another one.
   *
   * @maxItems 100000
   */
  readonly laid?: LaidEntry[];
}
/**
 * The units.
 */
export interface Units {
  /**
   * The job's series: an id of the catalogue or of own_series.
   */
  readonly series: string;
  /**
   * Series of your own.
   *
   * @maxItems 50
   */
  readonly own_series?: OwnSeries[];
  /**
   * Kinds of units that the yard stocks; absent: every kind that the series is made in.
   *
   * @maxItems 17
   */
  readonly stocked?: (
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
    | "solid"
  )[];
  /**
   * Least width of a head joint, a length.
   */
  readonly joint_least?: string;
  /**
   * Greatest width of a head joint, a length.
   */
  readonly joint_most?: string;
  /**
   * Least length of a cut piece, a length.
   */
  readonly least_piece?: string;
  /**
   * Lengths that the saw cuts, actual; absent: a quarter and three quarters of a unit.
   *
   * @maxItems 100
   */
  readonly cuts?: string[];
  /**
   * Bond wished for; absent: half.
   */
  readonly bond?: "half" | "quarter";
  /**
   * Units to order for breakage, in hundredths of what is laid and sawn; absent: 5.
   */
  readonly breakage?: number;
}
/**
 * A series of units of your own, as measured on one unit. All lengths are actual.
 */
export interface OwnSeries {
  /**
   * Short name by which the job calls this series.
   */
  readonly id: string;
  /**
   * Title for the sheets.
   */
  readonly title?: string;
  /**
   * Face length of a whole unit, a length.
   */
  readonly full: string;
  /**
   * Face length of a half unit, a length: full + joint must be 2 (half + joint).
   */
  readonly half: string;
  /**
   * Thickness through the wall, a length.
   */
  readonly thickness: string;
  /**
   * Height of a unit, a length.
   */
  readonly height: string;
  /**
   * Height of a half-high unit, a length.
   */
  readonly half_high?: string;
  /**
   * Width of the mortar joint, a length.
   */
  readonly joint: string;
  /**
   * How far a joint may differ from its width, a length.
   */
  readonly joint_tolerance?: string;
  /**
   * Least length of a cut piece, a length.
   */
  readonly least_piece?: string;
  /**
   * How much less than half a unit and a joint a lap may be before it counts as short, a length.
   */
  readonly short_lap_margin?: string;
  /**
   * Step to which a make-up piece is cut, a length.
   */
  readonly cut_step?: string;
  /**
   * Thickness of a face shell, a length.
   */
  readonly face_shell?: string;
  /**
   * Cells of a whole unit, from its left end; none: no bars stand in it.
   *
   * @maxItems 8
   */
  readonly full_cells?: Cell[];
  /**
   * Cells of a half unit, from its left end; none: no bars stand in it.
   *
   * @maxItems 8
   */
  readonly half_cells?: Cell[];
  /**
   * Short leg of a corner set, a length; absent: plain units make the corner.
   */
  readonly corner_leg?: string;
  /**
   * Kinds that this series is made in; none: full, half, corner.
   *
   * @maxItems 17
   */
  readonly made?: (
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
    | "solid"
  )[];
}
/**
 * One cell of a unit: the clear interval between two webs.
 */
export interface Cell {
  /**
   * Length from the unit's left end to the cell's near web face.
   */
  readonly from: string;
  /**
   * Length from the unit's left end to the cell's far web face.
   */
  readonly to: string;
}
/**
 * The outer walls.
 */
export interface Outline {
  /**
   * True when the last side ends where the first starts.
   */
  readonly closed?: boolean;
  /**
   * Open outlines: the hand that the building lies on; absent: right.
   */
  readonly building_on?: "right" | "left";
  /**
   * The sides, in the order in which they are walked.
   *
   * @maxItems 2000
   */
  readonly sides: Side[];
}
/**
 * One straight side of the outline, from corner to corner along its outer face.
 */
export interface Side {
  /**
   * Name of the side; absent: its two corners' names in one, as AB.
   */
  readonly name?: string;
  /**
   * Corner that it starts at.
   */
  readonly from: string;
  /**
   * Corner that it ends at.
   */
  readonly to: string;
  /**
   * Length from corner to corner, a length.
   */
  readonly length: string;
  /**
   * Turn at its far corner; absent on the last side of an open outline.
   */
  readonly turn?: "right" | "left";
  /**
   * Series of this wall; absent: the job's.
   */
  readonly series?: string;
}
/**
 * An interior wall, square off one wall, to the next that it meets.
 */
export interface InteriorWall {
  /**
   * Name of the wall.
   */
  readonly name: string;
  /**
   * The wall that it starts from.
   */
  readonly off: string;
  readonly place: Place;
  /**
   * Clear length, a length; absent: to the first wall that it meets.
   */
  readonly length?: string;
  /**
   * How its start joins the wall that it starts from; absent: tied.
   */
  readonly start_junction?: "tied" | "control-joint" | "lapped";
  /**
   * How its end joins the wall that it meets; absent: tied.
   */
  readonly end_junction?: "tied" | "control-joint" | "lapped";
  /**
   * Series of this wall; absent: the job's.
   */
  readonly series?: string;
}
/**
 * Where on that wall it starts.
 */
export interface Place {
  /**
   * The corner measured from; on an interior wall "start" or "end".
   */
  readonly from: string;
  /**
   * Distance from that corner, a length.
   */
  readonly at: string;
  /**
   * The edge measured to: the one nearer to that corner or farther from it; absent: near.
   */
  readonly to?: "near" | "far";
}
/**
 * Where on that wall, to which edge of the masonry opening.
 */
export interface Place1 {
  /**
   * The corner measured from; on an interior wall "start" or "end".
   */
  readonly from: string;
  /**
   * Distance from that corner, a length.
   */
  readonly at: string;
  /**
   * The edge measured to: the one nearer to that corner or farther from it; absent: near.
   */
  readonly to?: "near" | "far";
}
/**
 * The size of the hole in the masonry.
 */
export interface Masonry {
  /**
   * Width of the hole, a length.
   */
  readonly width: string;
  /**
   * Height of the hole, a length.
   */
  readonly height: string;
}
/**
 * A door.
 */
export interface Door {
  /**
   * Width of the leaf, a length.
   */
  readonly leaf_width: string;
  /**
   * Height of the leaf, a length.
   */
  readonly leaf_height: string;
  /**
   * Face of the frame at a jamb, a length; absent: 0.
   */
  readonly frame_jamb?: string;
  /**
   * Face of the frame at the head, a length; absent: 0.
   */
  readonly frame_head?: string;
  /**
   * Thickness of the buck, a length; absent: 0.
   */
  readonly buck?: string;
  /**
   * Room for shims at each side, a length; absent: 0.
   */
  readonly shim?: string;
}
/**
 * An overhead door.
 */
export interface Overhead {
  /**
   * Width of the leaf, a length.
   */
  readonly leaf_width: string;
  /**
   * Height of the leaf, a length.
   */
  readonly leaf_height: string;
  /**
   * Thickness of the buck at each jamb, a length; absent: 0.
   */
  readonly jamb_buck?: string;
  /**
   * Thickness of the buck at the head, a length; absent: 0.
   */
  readonly head_buck?: string;
  /**
   * Room needed beside the opening inside, a length; absent: not checked.
   */
  readonly side_room?: string;
  /**
   * Room needed above the opening inside, a length; absent: not checked.
   */
  readonly head_room?: string;
}
/**
 * A window.
 */
export interface Window {
  /**
   * Width of the window unit, a length.
   */
  readonly width: string;
  /**
   * Height of the window unit, a length.
   */
  readonly height: string;
  /**
   * Room at each side, a length; absent: 0.
   */
  readonly each_side?: string;
  /**
   * Room above, a length; absent: 0.
   */
  readonly above?: string;
  /**
   * Room below, for the sill, a length; absent: 0.
   */
  readonly below?: string;
}
/**
 * The lintel.
 */
export interface Lintel {
  /**
   * One piece, or built up of lintel or bond-beam units.
   */
  readonly make?: "one-piece" | "built-up";
  /**
   * How many courses it is deep; absent: 1.
   */
  readonly courses?: number;
  /**
   * Least bearing at each end, actual, a length; absent: one half unit.
   */
  readonly bearing?: string;
  /**
   * Built up: greatest distance from shore to shore under it, as your drawings or the shores' maker say, a length; absent: not said.
   */
  readonly shore_spacing?: string;
  /**
   * One piece: precast concrete, or a steel section as high as its courses; absent: not said.
   */
  readonly piece?: "precast" | "steel-section";
  /**
   * What your drawings call it, such as L1.
   */
  readonly mark?: string;
  /**
   * One piece: its weight as its maker says it, in your own words.
   */
  readonly weight?: string;
}
/**
 * Control joints.
 */
export interface ControlJoints {
  /**
   * The rule that places them; absent: none.
   */
  readonly rule?: "none" | "us" | "uk";
  /**
   * Control joints with places of their own.
   *
   * @maxItems 10000
   */
  readonly placed?: PlacedControlJoint[];
}
/**
 * A control joint with a place of its own.
 */
export interface PlacedControlJoint {
  /**
   * The wall that it is in.
   */
  readonly on: string;
  readonly place: Place2;
}
/**
 * Where on that wall, to which edge of the joint.
 */
export interface Place2 {
  /**
   * The corner measured from; on an interior wall "start" or "end".
   */
  readonly from: string;
  /**
   * Distance from that corner, a length.
   */
  readonly at: string;
  /**
   * The edge measured to: the one nearer to that corner or farther from it; absent: near.
   */
  readonly to?: "near" | "far";
}
/**
 * Steel.
 */
export interface Steel {
  readonly bars?: Bars;
  /**
   * Courses that are bond beams.
   *
   * @maxItems 200
   */
  readonly bond_beams?: number[];
  /**
   * Joint reinforcement in the bed on top of every so many courses, not on the last; absent: none.
   */
  readonly wire_every?: number;
  /**
   * Length that joint reinforcement is sold in, a length; absent: 10 ft, or 3 m.
   */
  readonly wire_stock?: string;
  /**
   * How far joint reinforcement laps, as your drawings ask, a length; absent: 6 in, or 150 mm.
   */
  readonly wire_lap?: string;
  /**
   * Leg of a corner of joint reinforcement, along the outer face, a length; absent: 24 in, or 600 mm.
   */
  readonly wire_leg?: string;
  /**
   * Whether corners of joint reinforcement are bought as such or bent from straight stock; absent: pieces.
   */
  readonly wire_corners?: "pieces" | "bent";
  /**
   * Whether joint reinforcement is tied to that of inner walls, tied or lapped, by pieces bought as tees, or stops; absent: tees.
   */
  readonly wire_tees?: "tees" | "none";
  /**
   * Ties where an inner wall is butted and tied, in the bed on top of every so many courses as your drawings ask, not on the last; absent: not said.
   */
  readonly tie_every?: number;
  /**
   * Horizontal steel of at least 0.002 of the net area runs through, so that no control joints are needed.
   */
  readonly beam_steel_in_joints?: boolean;
  /**
   * Courses at whose top a grout pour stops, rising; none: not said.
   *
   * @maxItems 200
   */
  readonly pour_tops?: number[];
  /**
   * How far dowels stand up over the footing or slab, as your drawings ask, a length.
   */
  readonly dowel_lap?: string;
  /**
   * Ids of dowel readings whose bars stand where the dowels were found, whatever that costs the bond.
   *
   * @maxItems 2000
   */
  readonly kept_dowels?: string[];
  readonly lap?: Lap;
  /**
   * Length of the longest bars that your yard sells, a length; absent: 20 ft, or 6 m.
   */
  readonly bar_stock?: string;
  /**
   * What a saw's or shear's cut takes of a bar, a length; absent: 1/8 in, or 3 mm.
   */
  readonly bar_kerf?: string;
  /**
   * How far bars end from the end or the top of the masonry, a length; absent: 1 1/2 in, or 40 mm.
   */
  readonly end_cover?: string;
  readonly beam_bars?: BeamBars;
  readonly lintel_bars?: LintelBars;
}
/**
 * Upright bars; absent: none.
 */
export interface Bars {
  /**
   * Size of the bars as the catalogue names it, such as #5 or N12.
   */
  readonly size: string;
  /**
   * Grout of the cells; absent: coarse.
   */
  readonly grout?: "fine" | "coarse";
  /**
   * A bar in every corner; absent: false.
   */
  readonly corners?: boolean;
  /**
   * A bar at every jamb; absent: false.
   */
  readonly jambs?: boolean;
  /**
   * A bar at each side of every control joint; absent: false.
   */
  readonly control_joints?: boolean;
  /**
   * Greatest spacing of the bars along masonry, across control joints too, a length; absent: no more bars.
   */
  readonly spacing?: string;
  /**
   * Bars with places of their own.
   *
   * @maxItems 20000
   */
  readonly dimensioned?: DimensionedBar[];
}
/**
 * An upright bar with a place of its own.
 */
export interface DimensionedBar {
  /**
   * The wall that it stands in.
   */
  readonly on: string;
  readonly place: Place3;
}
/**
 * Where on that wall, to the bar's centre.
 */
export interface Place3 {
  /**
   * The corner measured from; on an interior wall "start" or "end".
   */
  readonly from: string;
  /**
   * Distance from that corner, a length.
   */
  readonly at: string;
  /**
   * The edge measured to: the one nearer to that corner or farther from it; absent: near.
   */
  readonly to?: "near" | "far";
}
/**
 * How far bars lap; absent: no rule is picked.
 */
export interface Lap {
  /**
   * The rule that gives the length.
   */
  readonly rule: "tms-402-to-2008" | "tms-402-from-2011" | "ibc" | "florida-2017" | "40-bars" | "48-bars" | "as-drawn";
  /**
   * Compressive strength of the masonry, f'm, such as 1500 psi or 10.3 MPa; for the TMS 402 and Florida rules.
   */
  readonly masonry?: string;
  /**
   * Yield strength of the bars, such as 60000 psi or 500 MPa; with the IBC rule the stress that the bars are used at.
   */
  readonly steel?: string;
  /**
   * With the rule as-drawn: what your drawings say, a length.
   */
  readonly length?: string;
}
/**
 * Bars along bond beams; absent: as your drawings say.
 */
export interface BeamBars {
  /**
   * Size of the bars as the catalogue names it, such as #4 or N12.
   */
  readonly size: string;
  /**
   * How many lie side by side.
   */
  readonly count: number;
  /**
   * Whether they stop at control joints or pass through; absent: not said.
   */
  readonly at_control_joints?: "stop" | "pass";
}
/**
 * Bars along lintels built of units; absent: as your drawings say.
 */
export interface LintelBars {
  /**
   * Size of the bars as the catalogue names it, such as #5 or N16.
   */
  readonly size: string;
  /**
   * How many lie side by side.
   */
  readonly count: number;
}
/**
 * Plate, anchor bolts and trusses, as asked for by the drawings.
 */
export interface Top {
  /**
   * The plate, in your own words.
   */
  readonly plate?: string;
  /**
   * Walls that carry a plate; none: every side of the outline.
   *
   * @maxItems 12000
   */
  readonly plate_on?: string[];
  /**
   * Length of the plate's pieces, a length: laid from each plate's start, the last is what is left; absent: in one piece.
   */
  readonly plate_piece?: string;
  readonly bolts?: Bolts;
  /**
   * Trusses or rafters that bolts keep clear of.
   *
   * @maxItems 1000
   */
  readonly trusses?: Trusses[];
}
/**
 * Anchor bolts; absent: not planned.
 */
export interface Bolts {
  /**
   * Size and depth of the bolts, in your own words.
   */
  readonly size?: string;
  /**
   * Greatest spacing, a length.
   */
  readonly spacing: string;
  /**
   * Farthest that the first and last bolt of a piece of plate stand from its ends, a length.
   */
  readonly end_most: string;
  /**
   * Nearest that a bolt stands to an end of its piece of plate, a length; absent: 0.
   */
  readonly end_least?: string;
  /**
   * Nearest that a bolt stands to an upright bar, along the wall, a length; absent: 0.
   */
  readonly clear_of_bars?: string;
  /**
   * Least from a bolt's centre to the block beside it, along the wall, a length; absent: 1 1/2 in or 38 mm.
   */
  readonly grout_round?: string;
}
/**
 * Trusses or rafters evenly along one wall, to its far end.
 */
export interface Trusses {
  /**
   * The wall that they stand on.
   */
  readonly on: string;
  readonly place: Place4;
  /**
   * Their spacing, a length.
   */
  readonly spacing: string;
  /**
   * Nearest that a bolt's centre stands to a truss's centre, a length.
   */
  readonly clear: string;
}
/**
 * Where on that wall, to the first one's centre, actual; the others follow away from that corner.
 */
export interface Place4 {
  /**
   * The corner measured from; on an interior wall "start" or "end".
   */
  readonly from: string;
  /**
   * Distance from that corner, a length.
   */
  readonly at: string;
  /**
   * The edge measured to: the one nearer to that corner or farther from it; absent: near.
   */
  readonly to?: "near" | "far";
}
/**
 * What is assumed of the order, and what things cost.
 */
export interface Ordering {
  /**
   * Kinds of units with a breakage or a pallet of their own.
   *
   * @maxItems 17
   */
  readonly kinds?: KindOrder[];
  /**
   * What the mortar is mixed of; absent: premix in bags.
   */
  readonly mortar?: "premix" | "masonry-cement" | "cement-lime";
  /**
   * Type of the mortar, as the drawings ask; absent: S.
   */
  readonly type?: "m" | "s" | "n" | "o";
  /**
   * The figure that mortar is ordered by, where published ones disagree; absent: the whole range is shown.
   */
  readonly mortar_by?: "joints" | "litres-a-block" | "feet-a-hundred" | "blocks-a-bag";
  /**
   * Mortar spilt and left over, in hundredths of what the joints hold; absent: 10.
   */
  readonly mortar_waste?: number;
  /**
   * Sand lost in the heap, in hundredths; absent: 10.
   */
  readonly sand_waste?: number;
  /**
   * Grout in bags or by truck; absent: bags.
   */
  readonly grout_as?: "bags" | "truck";
  /**
   * Grout ordered beyond what goes in, in hundredths; absent: 10.
   */
  readonly grout_loss?: number;
  /**
   * Joint reinforcement cut off and lost, in hundredths; absent: 5.
   */
  readonly wire_waste?: number;
  /**
   * Lumber of bucks and plates cut off and lost, in hundredths; absent: 10.
   */
  readonly lumber_waste?: number;
  /**
   * Anchor bolts beyond those set, in hundredths; absent: 5.
   */
  readonly bolts_spare?: number;
  /**
   * The one currency of all prices: three letters, as USD.
   */
  readonly currency?: string;
  /**
   * Decimal places of the currency's smallest unit; absent: 2.
   */
  readonly decimals?: number;
  /**
   * Prices of articles.
   *
   * @maxItems 1000
   */
  readonly prices?: ArticlePrice[];
  /**
   * Tax on goods, in hundredths, such as 8.25; absent: none.
   */
  readonly tax?: string;
  /**
   * What delivery costs, untaxed; absent: not said.
   */
  readonly delivery?: string;
  /**
   * What the yard brought so far, delivery by delivery; of articles that stand here it is forecast what runs out.
   *
   * @maxItems 1000
   */
  readonly brought?: Brought[];
  /**
   * What articles weigh that have no weight on their bag.
   *
   * @maxItems 1000
   */
  readonly weights?: ArticleWeight[];
  /**
   * What the yard's truck carries, such as 8000 lb or 3500 kg; absent: loads are not made up.
   */
  readonly truck?: string;
}
/**
 * How one kind of unit is ordered.
 */
export interface KindOrder {
  /**
   * The kind of unit.
   */
  readonly kind:
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
   * Units of this kind ordered for breakage, in hundredths of what is laid and sawn; absent: as for all units.
   */
  readonly breakage?: number;
  /**
   * Units on one pallet or cube, where only whole ones are sold; absent: sold one by one.
   */
  readonly pallet?: number;
}
/**
 * What one of an article costs.
 */
export interface ArticlePrice {
  /**
   * The article's id, as the order list has it.
   */
  readonly article: string;
  /**
   * The price of one, as it is sold: digits with a point before the smallest unit, such as 2.45.
   */
  readonly price: string;
}
/**
 * What a delivery brought of one article.
 */
export interface Brought {
  /**
   * The article's id, as the order list has it.
   */
  readonly article: string;
  /**
   * How many, as they are sold; broken ones left out.
   */
  readonly count: number;
}
/**
 * What one of an article weighs.
 */
export interface ArticleWeight {
  /**
   * The article's id, as the order list has it.
   */
  readonly article: string;
  /**
   * The weight of one, as it is sold, such as 35 lb or 16 kg.
   */
  readonly weight: string;
}
/**
 * Who lays, how fast, on which days.
 */
export interface Days {
  /**
   * Who lays: pairs of beginners, or masons with a tender each; absent: beginners.
   */
  readonly crew?: "beginners" | "mason";
  /**
   * How many pairs lay at the same time; absent: 1.
   */
  readonly pairs?: number;
  /**
   * Units that each pair lays in an hour; absent: 6 for beginners, 15 for a mason.
   */
  readonly units_per_hour?: number;
  /**
   * Hours of a working day; absent: 8.
   */
  readonly hours?: number;
  /**
   * Courses that a wall may rise in a day; absent: so many as stay under 1.5 m.
   */
  readonly most_courses?: number;
  /**
   * Minutes from mixing in which a batch is used up; absent: 150.
   */
  readonly mortar_minutes?: number;
  /**
   * Work and waits that last otherwise than assumed.
   *
   * @maxItems 20
   */
  readonly work?: WorkDays[];
  /**
   * Date of the first working day, year-month-day as 2027-05-03; absent: days are only numbered.
   */
  readonly start?: string;
  /**
   * Date up to whose evening the laid log tells of all that was done: the rest is planned from the day after; absent: the day of the log's newest entry.
   */
  readonly log_until?: string;
  /**
   * Days of the week that are worked; none: Monday to Friday.
   *
   * @maxItems 7
   */
  readonly weekdays?: ("monday" | "tuesday" | "wednesday" | "thursday" | "friday" | "saturday" | "sunday")[];
  /**
   * Dates on which nobody works, as 2027-05-31.
   *
   * @maxItems 400
   */
  readonly days_off?: string[];
  /**
   * Date by which it is to be done, as 2027-07-02: the chance of that is worked out; needs the first day.
   */
  readonly finish_by?: string;
  /**
   * The weather expected, day by day: what rules for cold, heat and wind ask then is said first.
   *
   * @maxItems 60
   */
  readonly forecast?: DayForecast[];
  /**
   * How far one piece of work may take more or less time than planned: a standard deviation in hundredths; absent: as the laid log tells, else 25.
   */
  readonly spread?: number;
  /**
   * How far the pace itself may be off for the whole job: a standard deviation in hundredths; absent: as the laid log tells, else 30.
   */
  readonly pace_doubt?: number;
}
/**
 * How long one piece of work takes, or a wait lasts.
 */
export interface WorkDays {
  /**
   * The work, or the wait; a course's time is its units'.
   */
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
  /**
   * How long, in half days.
   */
  readonly half_days: number;
}
/**
 * The weather that is expected on one day.
 */
export interface DayForecast {
  /**
   * The day, as 2027-05-03.
   */
  readonly date: string;
  /**
   * Coldest, in degrees Fahrenheit with a tape in inches, else Celsius.
   */
  readonly coldest?: number;
  /**
   * Warmest, likewise.
   */
  readonly warmest?: number;
  /**
   * Steady wind, in miles an hour with a tape in inches, else kilometres an hour.
   */
  readonly wind?: number;
  /**
   * Gusts, likewise.
   */
  readonly gusts?: number;
}
/**
 * What the setting-out card needs.
 */
export interface SettingOut {
  /**
   * How far beyond the outer faces the batter boards stand, a length; absent: 4 ft or 1200 mm.
   */
  readonly boards_off?: string;
  /**
   * From a board's outer end to the outer face line, a length; absent: 2 ft or 600 mm.
   */
  readonly first_kerf?: string;
  /**
   * How far the footing reaches beyond the outer face, a length.
   */
  readonly footing_outside?: string;
  /**
   * How far the footing reaches beyond the inner face, a length.
   */
  readonly footing_inside?: string;
  /**
   * Longest leg of the square check that the lot has room for, a length; absent: the sides.
   */
  readonly room?: string;
  /**
   * Height of the benchmark over the datum (the top of course 1), a length, minus below it; absent: 0.
   */
  readonly datum_over?: string;
  /**
   * What the levelling rod reads on the benchmark, a length; absent: no rod readings on the card.
   */
  readonly backsight?: string;
  /**
   * Height of the boards' tops over the footing or slab, a length; absent: not listed.
   */
  readonly boards_over?: string;
  /**
   * Weight of the mason's line: lb/ft, g/m or N/m, such as 0.001 lb/ft.
   */
  readonly line_weight?: string;
  /**
   * How hard the line is pulled: lb, N or kg, such as 20 lb.
   */
  readonly line_pull?: string;
  /**
   * The pull that breaks the line: lb, N or kg.
   */
  readonly line_strength?: string;
  /**
   * Greatest sag of the line between its supports, a length; absent: 1/32 in or 1 mm.
   */
  readonly line_sag?: string;
}
/**
 * How well things are measured, and what the first course may do.
 */
export interface Ground {
  /**
   * The table of permitted errors that the tape keeps; absent: steel.
   */
  readonly tape?: "steel" | "class-two";
  /**
   * How far a taping may be read wrong, either way, a length; absent: 1/16 in or 1 mm.
   */
  readonly tape_reading?: string;
  /**
   * How far a rod or water level may be read wrong, either way, a length; absent: 1/16 in or 1 mm.
   */
  readonly rod_reading?: string;
  /**
   * The corner whose peg stays where it is; absent: the first.
   */
  readonly hold?: string;
  /**
   * True when the whole first course is grouted and stands on concrete: its bed may then be thicker.
   */
  readonly first_course_grouted?: boolean;
  readonly bed_remedy?: BedRemedy;
  readonly shape_remedy?: ShapeRemedy;
}
/**
 * What is done because the first bed does not fit; grout-first-course lets its bed be thicker.
 */
export interface BedRemedy {
  /**
   * The remedy.
   */
  readonly do:
    | "level"
    | "grout-first-course"
    | "tilt-course"
    | "grind"
    | "rip-units"
    | "levelling-strip"
    | "half-high"
    | "step"
    | "curb";
  /**
   * The id of the last reading that it was chosen on; absent: what is read later is not held against it.
   */
  readonly after?: string;
}
/**
 * What is done because corners stand off their places.
 */
export interface ShapeRemedy {
  /**
   * The remedy.
   */
  readonly do: "move-pegs" | "square-lines";
  /**
   * The id of the last reading that it was chosen on; absent: what is read later is not held against it.
   */
  readonly after?: string;
}
/**
 * A taped distance.
 */
export interface TapeReading {
  /**
   * One corner.
   */
  readonly from: string;
  /**
   * The other corner.
   */
  readonly to: string;
  /**
   * What the tape read, a length.
   */
  readonly length: string;
  /**
   * The lines before the pour, or what was poured, beside which readings of lines no longer count; absent: both.
   */
  readonly of?: "lines" | "poured";
}
/**
 * A reading of a rod or water level.
 */
export interface RodReading {
  /**
   * A name for where the instrument stood.
   */
  readonly setup: string;
  /**
   * The point: a corner's name, or a name of its own; "datum" is the benchmark, of height zero.
   */
  readonly station: string;
  /**
   * What the rod read, a length; minus where it was held upside down.
   */
  readonly rod: string;
  /**
   * The wall that the point lies on.
   */
  readonly on?: string;
  /**
   * The corner measured from; absent: the wall's start.
   */
  readonly from?: string;
  /**
   * Distance from that corner along the wall, a length.
   */
  readonly at?: string;
  /**
   * What the rod stood on; absent: bearing, the top of the footing or slab.
   */
  readonly surface?: "bearing" | "floor" | "other" | "top";
  /**
   * How far the rod stood from the instrument, a length; after a two-peg test the reading is corrected by it.
   */
  readonly sight?: string;
}
/**
 * A two-peg test of the instrument.
 */
export interface TwoPegReading {
  /**
   * Rod on A, from midway, a length.
   */
  readonly midway_a: string;
  /**
   * Rod on B, from midway, a length.
   */
  readonly midway_b: string;
  /**
   * Rod on A, from close to it, a length.
   */
  readonly close_a: string;
  /**
   * Rod on B, from close to A, a length.
   */
  readonly close_b: string;
  /**
   * From close to A: distance to A, a length.
   */
  readonly sight_a: string;
  /**
   * From close to A: distance to B, a length.
   */
  readonly sight_b: string;
}
/**
 * A dowel as found.
 */
export interface DowelReading {
  /**
   * The wall that it belongs to.
   */
  readonly on: string;
  /**
   * The corner measured from; absent: the wall's start.
   */
  readonly from?: string;
  /**
   * Distance from that corner's outer face, a length.
   */
  readonly at: string;
  /**
   * Distance in from the wall's outer face as planned, a length, minus outside it.
   */
  readonly off_face: string;
}
/**
 * An edge of what was poured.
 */
export interface EdgeReading {
  /**
   * The wall whose outer face line is meant.
   */
  readonly on: string;
  /**
   * The corner measured from; absent: the wall's start.
   */
  readonly from?: string;
  /**
   * Distance from that corner along the line, a length.
   */
  readonly at: string;
  /**
   * How far beyond the line, a length, minus short of it.
   */
  readonly beyond: string;
}
/**
 * How the wall is laid and judged.
 */
export interface Laying {
  /**
   * Whose limits a wall is judged by; absent: us with an inch tape, uk with millimetres.
   */
  readonly rules?: "us" | "uk";
  /**
   * Narrowest head joint that a correction may ask for, a length; absent: 1/4 in or 7 mm.
   */
  readonly joint_least?: string;
  /**
   * Widest head joint that a correction may ask for, a length; absent: 1/2 in or 13 mm.
   */
  readonly joint_most?: string;
  /**
   * True when corrections may leave that range, never the tolerance of 1/8 to 3/4 in.
   */
  readonly beyond_working?: boolean;
  /**
   * How far a block end may be read wrong at a mark, either way, a length; absent: 1/32 in or 1 mm.
   */
  readonly mark_reading?: string;
  /**
   * Standard deviation of one unit's length, a length; absent: 1/24 in, unverified.
   */
  readonly unit_spread?: string;
  /**
   * Standard deviation of one joint's width, a length; absent: 1/16 in, unverified.
   */
  readonly joint_spread?: string;
}
/**
 * Units of the batch, measured.
 */
export interface UnitSample {
  /**
   * How many lie in the row.
   */
  readonly together?: number;
  /**
   * The row's length, a length.
   */
  readonly row?: string;
  /**
   * Units one by one, lengths.
   *
   * @maxItems 1000
   */
  readonly singles?: string[];
}
/**
 * A course laid from end to end.
 */
export interface CourseLaid {
  /**
   * The wall.
   */
  readonly on: string;
  /**
   * The course.
   */
  readonly course: number;
}
/**
 * The top of a course against the gauge rod (story pole).
 */
export interface GaugeReading {
  /**
   * The wall.
   */
  readonly on: string;
  /**
   * The course.
   */
  readonly course: number;
  /**
   * How far its top is above its mark, a length, minus below it.
   */
  readonly high: string;
}
/**
 * One unit set, read at its corners.
 */
export interface UnitSetting {
  /**
   * The wall.
   */
  readonly on: string;
  /**
   * The course.
   */
  readonly course: number;
  /**
   * Outer corner at the near end: over, a length, minus under.
   */
  readonly near_outer: string;
  /**
   * Inner corner at the near end: over, a length, minus under.
   */
  readonly near_inner: string;
  /**
   * Outer corner at the far end: over, a length, minus under.
   */
  readonly far_outer: string;
  /**
   * Inner corner at the far end: over, a length, minus under.
   */
  readonly far_inner: string;
  /**
   * The bed at its thinnest, as the unit lies, a length.
   */
  readonly bed: string;
  /**
   * The gap between its face and the line, a length.
   */
  readonly line_gap?: string;
}
/**
 * The gap for a closure.
 */
export interface GapReading {
  /**
   * The wall.
   */
  readonly on: string;
  /**
   * The course.
   */
  readonly course: number;
  /**
   * The mark at the gap's near side: its running distance, a length.
   */
  readonly at: string;
  /**
   * The gap between the two units that stand, a length.
   */
  readonly measured: string;
}
/**
 * A finished part of a wall or a joint checked.
 */
export interface WallCheck {
  /**
   * The wall.
   */
  readonly on: string;
  /**
   * The course.
   */
  readonly course: number;
  /**
   * What was checked.
   */
  readonly what: "plumb" | "level" | "line" | "bed-joint" | "head-joint" | "position";
  /**
   * The length or height that it was read over; not for joints.
   */
  readonly over?: string;
  /**
   * The deviation, or a joint's width, a length, minus the other way.
   */
  readonly off: string;
  /**
   * How far the instrument may be wrong, either way, a length; absent: as a mark is read.
   */
  readonly may_be_wrong?: string;
}
/**
 * A jamb or corner as found.
 */
export interface FoundPlace {
  /**
   * The wall.
   */
  readonly on: string;
  /**
   * Which face was found.
   */
  readonly what: "near-jamb" | "far-jamb" | "wall-end";
  /**
   * The opening whose jamb it is.
   */
  readonly opening?: string;
  /**
   * Its running distance from the wall's start, a length, actual.
   */
  readonly at: string;
}
/**
 * What its note or photos tell of.
 */
export interface Remark {
  /**
   * The wall.
   */
  readonly on: string;
  /**
   * The course.
   */
  readonly course: number;
}
/**
 * A cell or trough filled, or consolidated again.
 */
export interface Grouted {
  /**
   * The wall.
   */
  readonly on: string;
  /**
   * Up to its top: of a cell the last course of the lift, of a trough its own.
   */
  readonly course: number;
  /**
   * Its place as the pour card lists it: a bar's centre or a trough's start, from the wall's start, a length.
   */
  readonly at: string;
  /**
   * What was done.
   */
  readonly work: "filled" | "again";
}
/**
 * A line of the inspection list, right.
 */
export interface LookedAt {
  /**
   * What was looked at.
   */
  readonly what: "bar" | "cleanout" | "floor" | "beam" | "lintel";
  /**
   * The wall.
   */
  readonly on: string;
  /**
   * Its course; of bars and cleanouts the pour's lowest.
   */
  readonly course: number;
  /**
   * Its place as the list has it, from the wall's start, a length: a bar's centre, or where a beam or a lintel starts.
   */
  readonly at: string;
}
