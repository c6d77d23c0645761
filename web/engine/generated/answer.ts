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
  readonly openings: {
    readonly name: string;
    readonly use: "door" | "overhead" | "window" | "plain";
    readonly side: string;
    readonly from: Length;
    readonly to: Length;
    readonly width: Length;
    readonly height: Length;
    readonly underside: Length5;
    readonly soffit: Length6;
    /**
     * course number, from 1 at the bearing
     */
    readonly first_course: number;
    /**
     * course number, from 1 at the bearing
     */
    readonly last_course: number;
    readonly asked_width: Length;
    readonly asked_height: Length;
    readonly filler_each_side: Length7;
    readonly filler_head: Length;
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
    readonly what: "move-opening" | "change-side";
    readonly place: string;
    readonly name: string;
    readonly text: string;
    readonly change: Length8;
    readonly cuts_saved: number;
    readonly short_laps_saved: number;
    readonly bars_saved: number;
  }[];
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
  readonly counts: {
    /**
     * all pieces laid
     */
    readonly pieces: number;
    readonly units: {
      readonly series: string;
      readonly kind: Kind;
      readonly whole: number;
      readonly cut_pieces: number;
    }[];
    /**
     * Without an allowance for breakage.
     */
    readonly to_buy: {
      readonly series: string;
      readonly kind: Kind;
      readonly whole: number;
      readonly for_saw: number;
      readonly total: number;
    }[];
    readonly corner_set_parts: {
      readonly series: string;
      readonly part: string;
      readonly count: number;
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
      readonly total: Length9;
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
    readonly start_bearing: Length;
    readonly end_bearing: Length;
  }[];
  readonly bars: {
    readonly side: string;
    readonly centre: Length;
    readonly reason: "corner" | "jamb" | "beside-control-joint" | "dimensioned" | "spaced";
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
 * floor or sill
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
 * underside of the lintel
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
 * left to be packed at each jamb
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
 * openings: towards the end of the side is positive; sides: longer is positive
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
}
/**
 * without laps, dowels and hooks
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
