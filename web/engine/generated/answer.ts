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
 * What a job comes to: every piece, joint, bar, count and finding. Lengths are whole nanometres; places along a side are measured from its start corner, heights from the datum (design top of course 1).
 */
export interface StringcourseAnswer {
  /**
   * version of this document
   */
  readonly stringcourse_answer: 1;
  /**
   * stopped: at least one run has no lawful layout, see "stopped"
   */
  readonly state: "whole" | "stopped";
  /**
   * the job as read (job.schema.json)
   */
  readonly job: {};
  readonly series: {
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
  }[];
  readonly corners: {
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
  }[];
  /**
   * Sides in order, then interior walls.
   */
  readonly sides: {
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
  }[];
  readonly junctions: {
    readonly main: string;
    readonly abutting: string;
    readonly at: "start" | "end";
    readonly kind: "tied" | "control-joint" | "lapped";
    readonly from: Length2;
    readonly to: Length3;
  }[];
  readonly courses: {
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
  }[];
  readonly height: Length5;
  readonly openings: {
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
    /**
     * only where a jamb was found elsewhere: where the jambs were planned, and still stand in courses 1 to laid_courses, which were laid before
     */
    readonly planned?: {
      readonly laid_courses: number;
      readonly from: Length;
      readonly to: Length;
    };
    readonly asked_width: Length;
    readonly asked_height: Length;
    readonly packing_each_side: Length8;
    readonly packing_head: Length;
    readonly lintel?: {
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
    };
    readonly place: string;
  }[];
  readonly control_joints: {
    readonly side: string;
    readonly from: Length;
    readonly to: Length;
    readonly by_rule: boolean;
  }[];
  readonly stopped: {
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
  }[];
  /**
   * Rules given up because no layout was found that keeps them all; absent where all are kept.
   */
  readonly conceded?: {
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
  }[];
  /**
   * Sorted by hold point.
   */
  readonly findings: {
    readonly code: string;
    /**
     * JSON pointer into the job, or ""
     */
    readonly place: string;
    readonly text: string;
    readonly rule: string;
    readonly hold_point: "order" | "pour" | "first-course" | "lintels" | "grout" | "top";
  }[];
  /**
   * Best first.
   */
  readonly offers: {
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
    readonly cuts_saved: number;
    readonly short_laps_saved: number;
    readonly bars_saved: number;
    /**
     * findings, by their place in the list, that it removes; where no offer does, lessens
     */
    readonly mends: number[];
  }[];
  /**
   * true: every small change was tried; of a large building only those that are likeliest to help are
   */
  readonly offers_complete: boolean;
  /**
   * Where an opening lays without a cut.
   */
  readonly free_places: {
    readonly opening: string;
    /**
     * Items: near jamb, whole nanometres
     */
    readonly from: number[];
  }[];
  readonly cost: Cost;
  readonly proof: {
    /**
     * the cost is proven least
     */
    readonly proven: boolean;
    readonly least_possible: Cost;
    /**
     * different lengths among saw cuts
     */
    readonly cut_lengths: number;
    readonly cut_lengths_at_least: number;
    readonly relaxed_piece: boolean;
    readonly relaxed_bearing: boolean;
  };
  /**
   * What the job's readings say of the ground as it is; absent where there are none.
   */
  readonly ground?: {
    readonly tape: {
      readonly state: "no-readings" | "adjusted" | "not-determinate" | "impossible" | "too-large";
      /**
       * of shape and size: not-read as long as a corner, a line that holds the shape or one that checks it is lacking (see missing); cannot-tell also while tapings disagree
       */
      readonly verdict: "fits" | "does-not-fit" | "cannot-tell" | "not-read";
      readonly lines: {
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
        readonly expected: Length11;
        /**
         * blunder, slip: left out
         */
        readonly use: "adjusted" | "blunder" | "slip" | "read";
        readonly meant?: Length12;
        readonly against_first?: FoundLength;
        readonly agrees_with_first?: boolean;
        readonly correction?: FoundLength1;
        /**
         * standardised residual, in thousandths
         */
        readonly times_its_doubt_thousandths?: number;
      }[];
      /**
       * lines still to be taped: they would hold the shape, or check it
       */
      readonly missing: string[][];
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
      readonly tape_again?: string[][];
      /**
       * none while tapings disagree
       */
      readonly moves?: {
        readonly corner: string;
        /**
         * along its walls
         */
        readonly text: string;
        readonly east: FoundLength2;
        readonly north: FoundLength2;
        readonly doubt: FoundLength3;
        /**
         * the readings' own uncertainty, k = 2; direction of the longer half axis
         */
        readonly ellipse: {
          readonly longer: FoundLength2;
          readonly shorter: FoundLength2;
          readonly east_thousandths: number;
          readonly north_thousandths: number;
        };
        /**
         * the tape cannot tell it from standing right
         */
        readonly within_doubt: boolean;
        readonly off: FoundLength4;
        readonly allowed: FoundLength2;
        readonly verdict: "fits" | "does-not-fit" | "cannot-tell" | "not-read";
      }[];
      /**
       * pairs of diagonals of a rectangle, both taped
       */
      readonly diagonals?: {
        /**
         * @minItems 2
         * @maxItems 2
         */
        readonly longer: string[];
        /**
         * @minItems 2
         * @maxItems 2
         */
        readonly shorter: string[];
        readonly difference: FoundLength2;
        readonly allowed: FoundLength2;
        readonly doubt: FoundLength5;
        readonly verdict: "fits" | "does-not-fit" | "cannot-tell" | "not-read";
      }[];
    };
    readonly levels?: {
      /**
       * the station of height zero
       */
      readonly datum: string;
      readonly stations: {
        readonly name: string;
        readonly side?: string;
        readonly at?: Length13;
        readonly surface: "bearing" | "floor" | "other";
        readonly height: FoundLength6;
        readonly doubt: FoundLength7;
      }[];
      /**
       * stations that no chain of readings ties to the datum
       */
      readonly loose: string[];
      readonly loops: {
        readonly misclosure: FoundLength2;
        readonly allowed: FoundLength2;
        readonly closes: boolean;
      }[];
      /**
       * what a two-peg test tells; absent without one
       */
      readonly instrument?: {
        readonly over: FoundLength8;
        readonly sight: Length;
        readonly doubt: FoundLength2;
        /**
         * the test cannot tell it from level
         */
        readonly level: boolean;
        /**
         * rod readings corrected by it
         */
        readonly corrected: number;
      };
      /**
       * doorways whose floor was read
       */
      readonly doors: {
        readonly opening: string;
        readonly tall_least: FoundLength9;
        readonly tall_most: FoundLength2;
        readonly planned: Length;
        readonly doubt: FoundLength2;
        readonly verdict: "fits" | "does-not-fit" | "cannot-tell" | "not-read";
      }[];
      readonly setups: {
        readonly name: string;
        readonly height: FoundLength10;
      }[];
      readonly bed?: {
        /**
         * not-read as long as the bearing under some unit of course 1 is not read, unless what was read is out of range already
         */
        readonly verdict: "fits" | "does-not-fit" | "cannot-tell" | "not-read";
        readonly least: Length;
        readonly most: Length;
        readonly top: FoundLength11;
        readonly margin: FoundLength12;
        readonly thinnest: FoundLength2;
        readonly thickest: FoundLength2;
        readonly doubt: FoundLength13;
        /**
         * units of course 1 whose bearing was not read
         */
        readonly units_without: number;
        /**
         * where the rod is still to be read
         */
        readonly lacks: string[];
        readonly units: {
          readonly side: string;
          readonly number: number;
          readonly thinnest: FoundLength2;
          readonly thickest: FoundLength2;
        }[];
        readonly choices: {
          readonly what:
            | "level"
            | "grout-first-course"
            | "grind"
            | "rip-units"
            | "levelling-strip"
            | "tilt-course"
            | "half-high"
            | "step"
            | "curb";
          readonly text: string;
          readonly top: FoundLength2;
          readonly margin: FoundLength2;
          /**
           * in the job's own volumes
           */
          readonly mortar: string;
          readonly concrete?: string;
          /**
           * of a strip or curb
           */
          readonly concrete_cubic_centimetres: number;
          /**
           * of full beds under the units read
           */
          readonly mortar_cubic_centimetres: number;
        }[];
      };
    };
    readonly dowels: {
      readonly reading: number;
      readonly side: string;
      /**
       * of the list of dowels that it is taken for; 0: none
       */
      readonly number: number;
      readonly at: Length14;
      readonly off_face: Length;
      readonly off_place?: FoundLength14;
      readonly room: FoundLength15;
      readonly action: "stands" | "cannot-tell" | "lap-apart" | "bend" | "cut-and-replace";
      readonly text: string;
    }[];
    /**
     * layouts in which more of the dowels found stand: the most first, each later one cheaper; steel.kept_dowels of the job asks for one
     */
    readonly dowel_layouts: {
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
    }[];
    /**
     * what is still to be read before it is known where the walls sit on the slab
     */
    readonly fit_lacks?: string[];
    /**
     * where the building sits on the slab; absent without edge readings
     */
    readonly fit?: {
      /**
       * the shift; east is right on the plan, north up
       */
      readonly text: string;
      readonly east: FoundLength16;
      readonly north: FoundLength2;
      /**
       * to the left
       */
      readonly turn_micrometres_in_a_metre: number;
      readonly room: FoundLength17;
      readonly room_before: FoundLength18;
    };
  };
  /**
   * Only once the logs speak of concrete: dowels stay where they were poured, in the order of the list of dowels; where each was found and where its bar comes down in this layout.
   */
  readonly poured?: {
    readonly dowels: {
      readonly side: string;
      readonly number: number;
      readonly found_at?: Length15;
      readonly bar_at?: Length16;
    }[];
    readonly bars_without_dowel: {
      readonly side: string;
      readonly at: Length;
    }[];
  };
  /**
   * Where dowels must stand before the pour; once the logs speak of concrete, where they were poured to. A cell is missing where a course has none for the dowel.
   */
  readonly dowels: {
    readonly side: string;
    readonly number: number;
    /**
     * what stands at zero of the side's numbers: a corner, or the face of the wall that an inner wall starts from
     */
    readonly measured_from: string;
    readonly at: Length17;
    readonly off_face: Length18;
    readonly first_course?: {
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
    };
    readonly second_course?: {
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
    };
    /**
     * how far the dowel may be out each way and keep the grout's clearance in the cells of courses 1 and 2; the text rounded inwards; below zero: it lacks so much
     */
    readonly room?: {
      readonly to_start: FoundLength19;
      readonly to_end: FoundLength20;
      readonly to_outer: FoundLength21;
      readonly to_inner: FoundLength22;
    };
  }[];
  readonly counts: {
    /**
     * all pieces laid
     */
    readonly pieces: number;
    /**
     * Units ordered for breakage.
     */
    readonly breakage: {
      /**
       * hundredths of what is laid and sawn, each kind rounded up
       */
      readonly percent: number;
      /**
       * by the job; else assumed
       */
      readonly stated: boolean;
    };
    readonly units: {
      readonly series: string;
      readonly kind: Kind;
      readonly whole: number;
      readonly cut_pieces: number;
    }[];
    /**
     * Laid whole, for the saw and spare for breakage; total is their sum.
     */
    readonly to_buy: {
      readonly series: string;
      readonly kind: Kind;
      readonly whole: number;
      readonly for_saw: number;
      readonly spare: number;
      readonly total: number;
    }[];
    readonly corner_set_parts: {
      readonly series: string;
      readonly part: string;
      /**
       * what is done to it before it is laid; no set is made for beams or half-high
       */
      readonly work: "none" | "webs-cut-down" | "sawn-half-high";
      readonly count: number;
      readonly spare: number;
      readonly total: number;
    }[];
    readonly one_piece_lintels: {
      readonly length: Length;
      /**
       * deep
       */
      readonly courses: number;
      readonly count: number;
    }[];
    readonly bars: {
      readonly size: string;
      readonly count: number;
      readonly total: Length19;
    };
    /**
     * One for every bar of each pour that asks for them, corner units included.
     */
    readonly cleanouts: {
      readonly count: number;
      readonly in_cleanout_units: number;
      /**
       * into units of other kinds, or a second one into a cleanout unit
       */
      readonly to_cut: number;
    };
  };
  readonly saw_list: {
    readonly kerf: Length;
    readonly groups: {
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
    }[];
    readonly pairs: {
      /**
       * index into groups
       */
      readonly first: number;
      /**
       * index into groups
       */
      readonly second: number;
      readonly units: number;
    }[];
  };
  /**
   * Lowest first.
   */
  readonly gauge_rod: {
    readonly at: Length;
    readonly event: "floor" | "sill" | "course-top" | "wire" | "head" | "lintel-course" | "bond-beam" | "pour-stop" | "top";
    /**
     * course number, from 1 at the bearing
     */
    readonly course?: number;
    readonly opening?: string;
  }[];
  readonly lintels: {
    readonly opening: string;
    readonly side: string;
    readonly asked_bearing: Length20;
    readonly start_bearing: Length21;
    readonly end_bearing: Length22;
    /**
     * What closes the underside: the lintel itself, the floor of lintel units, a form under open units; or nothing there carries.
     */
    readonly soffit: "one-piece" | "floor" | "form" | "nothing-spans";
    /**
     * Built of units: all its courses, by kind.
     */
    readonly units: {
      readonly kind: Kind;
      readonly whole: number;
      readonly cut_pieces: number;
    }[];
    /**
     * Bars that pass a unit with a floor, which is broken out there, or a lintel in one piece.
     */
    readonly bars_through: {
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
    }[];
  }[];
  readonly bars: {
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
  }[];
  /**
   * The holes at the foot of each high pour, through which the bars' cells are cleaned.
   */
  readonly cleanouts: {
    /**
     * whose unit it is in
     */
    readonly side: string;
    readonly course: number;
    /**
     * number along that side
     */
    readonly unit: number;
    readonly at: Length23;
    /**
     * a cleanout unit; else the hole is cut
     */
    readonly bought: boolean;
    readonly opens: "outward" | "inward";
  }[];
  /**
   * Stretches of one course without a break, by side, course, place.
   */
  readonly runs: {
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
    readonly pieces: never[][];
  }[];
  /**
   * The wall as it is laid: marks, next joints, and what the laid log comes to.
   */
  readonly laying?: {
    readonly rules: "us" | "uk";
    readonly joints: {
      readonly planned: Length;
      readonly working_least: Length;
      readonly working_most: Length;
      readonly least: Length;
      readonly most: Length;
    };
    readonly mark_reading: Length;
    readonly spreads: {
      readonly unit_nm: number;
      readonly joint_nm: number;
      readonly known: string;
    };
    readonly batch?: {
      readonly units: number;
      readonly mean: FoundLength2;
      readonly mean_exact: string;
      readonly longer_nm: number;
      readonly doubt_nm: number;
      readonly spread_nm?: number;
      readonly within_tolerance: "fits" | "cannot-tell" | "does-not-fit";
    };
    /**
     * by wall; 0: all laid
     */
    readonly next_courses: number[];
    readonly begun: CourseAtWall[];
    /**
     * each wall's next course and the one after it
     */
    readonly at_hand: CourseAtWall[];
    readonly gauges: {
      readonly entry: number;
      readonly side: string;
      readonly course: number;
      readonly high: Length;
      readonly to: string;
      readonly beds: {
        readonly course: number;
        readonly bed: Length;
      }[];
    }[];
    readonly sets: {
      readonly entry: number;
      readonly side: string;
      readonly course: number;
      readonly lift: boolean;
      readonly taps: {
        readonly corner: "near-outer" | "near-inner" | "far-outer" | "far-inner";
        readonly down: Length;
      }[];
      readonly from_line?: Length;
    }[];
    readonly gaps: {
      readonly entry: number;
      readonly side: string;
      readonly course: number;
      readonly measured: Length;
      /**
       * an opening of this course that lies in the gap: nothing is laid there
       */
      readonly opening?: string;
      readonly closure?: {
        readonly text: string;
        /**
         * one or two, from the gap's near side
         */
        readonly pieces: {
          readonly kind: "whole" | "half" | "cut";
          readonly length: FoundLength2;
        }[];
        /**
         * which of the pieces is laid last, from 0
         */
        readonly last: number;
        readonly joint: FoundLength2;
        readonly lost_over?: FoundLength23;
        readonly lost_lap?: FoundLength2;
      };
    }[];
    readonly checks: {
      readonly entry: number;
      readonly side: string;
      readonly course: number;
      readonly verdict: "fits" | "cannot-tell" | "does-not-fit";
      readonly least: FoundLength2;
      readonly most: FoundLength2;
      readonly doubt_nm: number;
      readonly conformance_millionths: number;
      readonly rule: string;
    }[];
    readonly progress: {
      readonly units: number;
      readonly laid: number;
      readonly days: number;
      readonly each_day: number;
      readonly days_left: number;
    };
    /**
     * what is not as it was printed, where jambs or corners were found otherwise; absent where nothing was
     */
    readonly changes?: {
      readonly side: string;
      readonly courses: number[];
      readonly units: string[];
      readonly marks_moved: number;
      readonly farthest: FoundLength2;
      readonly text: string;
    }[];
  };
}
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
 * outer face, corner to corner; inside walls: clear between the walls met
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
 * on the main wall
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
 * on the main wall
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
 * top of the units
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
 * of the walls as built, from the underside of the first bed joint to the top of the last course's units
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
 * floor or sill
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
 * underside of the lintel
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
 * left to be packed at each jamb
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
 * openings and their jambs: towards the end of the side is positive; heads: up; sides: longer; widths: wider
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
 * change-width: how far the near jamb goes towards the end of the side
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
 * by the plan
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
 * slip: what was probably meant
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
 * a second taping less the first
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
 * adjusted minus read
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
 * A value worked out of readings.
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
 * from the side's start
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
 * from the side's start
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
 * as last read, from the side's start; missing: not read
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
 * of the nearest bar within 2 in; missing: no bar comes down to it
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
 * centre, from there along the side's outer face
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
 * centre, in from the outer face; of an inner wall from either
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
 * without laps, dowels and hooks
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
 * least at each end, by the job or a half unit
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
 * as laid, from the jamb towards the wall's start
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
 * as laid, from the jamb towards the wall's end
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
 * of its bar, along that side
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
  readonly marks: {
    readonly kind: "block-end" | "near-jamb" | "far-jamb" | "joint-near-edge" | "joint-far-edge" | "bar-centre";
    readonly at: {
      readonly text: string;
      readonly both: string;
      readonly nm: number;
    };
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
    readonly doubtful?: {
      readonly why: string;
      readonly likely: string;
      readonly past?: Length;
      readonly at?: Length;
    };
  }[];
  readonly runs: {
    readonly from: FoundLength2;
    readonly to: FoundLength2;
    readonly units: number;
    /**
     * units up to the last mark that was read
     */
    readonly laid: number;
    readonly finished: boolean;
    readonly past: FoundLength2;
    readonly next: {
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
      /**
       * beside a saw cut: units that come up and are laid again
       */
      readonly instead?: {
        readonly text: string;
        readonly again: number;
      };
      /**
       * bars and laps that these joints do not keep
       */
      readonly loses: string[];
    };
    readonly each_unit_adds: {
      readonly learned: FoundLength2;
      readonly doubt_nm: number;
      readonly taken_off_ahead: FoundLength2;
    };
    readonly one_joint?: {
      readonly joint: Length;
      readonly left: FoundLength2;
    };
  }[];
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
