// The border between engine and page, as types. Lengths are whole nanometres ("nm") or micrometres on paper (viewBox).
// Drag arithmetic: nm = viewBox micrometres x drawing.scale x 1000.
import type { StringcourseAnswer } from "./generated/answer";
import type { StringcourseJob } from "./generated/job";
import type { StringcourseRefusals } from "./generated/refusals";

/// The whole document, as the whole module writes it. A brief answer has the members named here alone; of the others it
/// says nothing yet.
export type WholeAnswer = StringcourseAnswer;
export const kBriefMembers = [
  "stringcourse_answer",
  "state",
  "job",
  "tape_step",
  "series",
  "corners",
  "sides",
  "junctions",
  "courses",
  "height",
  "openings",
  "control_joints",
  "stopped",
  "conceded",
  "findings",
  "cost",
  "proof",
  "counts",
] as const satisfies readonly (keyof WholeAnswer)[];
type BriefMember = (typeof kBriefMembers)[number];
/// As far as it is said.
export type Answer = Pick<WholeAnswer, BriefMember> & Partial<Omit<WholeAnswer, BriefMember>>;
export type Job = StringcourseJob;
export type Refusals = StringcourseRefusals;
export type Tape = NonNullable<Job["tape"]>;
/// Parts of the answer that the page shows.
export type Side = WholeAnswer["sides"][number];
export type Opening = WholeAnswer["openings"][number];
export type Finding = WholeAnswer["findings"][number];
export type Offer = WholeAnswer["offers"][number];
export type FreePlaces = WholeAnswer["free_places"];
export type Article = WholeAnswer["order"]["articles"][number];
export type WorkDay = WholeAnswer["programme"]["days"][number];

/// A building's first lines, as typed; the engine makes the job of it.
export interface Begin {
  readonly name?: string;
  readonly length: string;
  readonly width: string;
  readonly height: string;
  readonly series?: string;
}

/// A change made by a hand on a drawing; applied in order before solving. Freely dragged lengths are rounded by the engine.
export type Edit =
  | { readonly do: "move-opening"; readonly opening: number; readonly to_nm: number }
  | { readonly do: "resize-opening"; readonly opening: number; readonly edge: "from" | "to"; readonly to_nm: number }
  | { readonly do: "move-side"; readonly side: number; readonly by_nm: number }
  /// Something where that side has room for it: the last of the openings, or of the inner walls, of reply.job.
  | { readonly do: "put-in"; readonly what: NewPart; readonly place: string }
  /// The corner at the end of a side is stepped in, or the step after a side taken out. Nominal lengths.
  | { readonly do: "step-corner"; readonly side: number; readonly along_nm: number; readonly across_nm: number }
  | { readonly do: "fill-corner"; readonly side: number }
  | { readonly do: "put-beams"; readonly over_openings: boolean; readonly on_top: boolean }
  | {
      readonly do: "accept";
      readonly what: Offer["what"];
      readonly place: string;
      readonly by_nm: number;
      readonly shift_nm?: number;
    };

/// Bare holes of common sizes, leaves of usual ones, and an inner wall.
export type NewPart = "door" | "window" | "overhead" | "man-door" | "single-overhead" | "inner-wall";

/// Lengths alone, without a building.
export interface LengthsAsked {
  readonly tape: Tape;
  /// As typed for a side. Where it is no length, the reply is refused and says why.
  readonly read?: string;
  /// In whole steps of the tape.
  readonly write?: readonly number[];
}

export interface LengthsTold {
  readonly read?: { readonly nm: number; readonly basis: "nominal" | "actual" };
  readonly written: readonly string[];
}

/// Exactly one of `job` (the text of a job document), `begin` and `lengths` (which comes alone).
export interface Request {
  readonly border: 1;
  readonly job?: string;
  readonly begin?: Begin;
  readonly lengths?: LengthsAsked;
  readonly edits?: readonly Edit[];
  /// The text of another copy of the job: its logs are united with this one's; reply.job is the whole.
  readonly merge?: string;
  /// One course at the wall; a reading may be tried that is not in the log (then without the answer).
  readonly course?: CourseAsked;
  /// "plan-course-1", "elevation-2", ...
  readonly drawings?: readonly string[];
  readonly solids?: boolean;
  /// The name of a tapped unit, "AB-3-7".
  readonly piece?: string;
  readonly set?: "letter" | "a4";
  /// With a set: only the sheets of one hold point, by its code.
  readonly of?: string;
  /// The names of a set's sheets, without the set.
  readonly sheets?: "letter" | "a4";
  /// With a set or its names: templates of the dowels at full size too, and the rules used.
  readonly templates?: boolean;
  readonly standards?: boolean;
  /// With a set: the font files that it embeds, base64. The worker adds them; nobody else need.
  readonly fonts?: { readonly regular: string; readonly bold: string };
  readonly offers?: boolean;
  /// Search budget for each panel; small while dragging. Left out: the command line's.
  readonly budget?: number;
  /// Where every unit lies, without a search, and plans and elevations: what the first module says, and the whole one in the
  /// same bytes. The worker adds it; nobody else need.
  readonly brief?: boolean;
  /// A hand is moving something: shorter pictures, without names of units; no runs and bars in the answer.
  readonly moving?: boolean;
}

export interface CourseAsked {
  readonly side: string;
  readonly course: number;
  readonly trial?: { readonly at_nm: number; readonly past_nm: number };
  readonly odds?: boolean;
}

type Laying = NonNullable<WholeAnswer["laying"]>;
export type CourseAtWall = Laying["begun"][number];

export interface OddsPlayed {
  readonly courses: number;
  readonly inside: number;
  readonly least_millionths: number;
  readonly most_millionths: number;
}

/// course.json.
export interface CourseReply extends Pick<Laying, "rules" | "joints" | "mark_reading"> {
  readonly course: CourseAtWall;
  readonly odds?: {
    readonly units: number;
    readonly with_marks: OddsPlayed;
    readonly without: OddsPlayed;
  };
}

export interface OpeningHandle {
  readonly kind: "opening";
  readonly index: number;
  readonly name: string;
  readonly place: string;
  readonly side: string;
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
  /// One unit step on paper as the distance from the wall's start grows.
  readonly along: readonly [number, number];
  readonly from_nm: number;
  readonly to_nm: number;
  readonly label: string;
  /// False on a plan whose course this opening does not interrupt.
  readonly shown?: boolean;
}

export interface SideHandle {
  readonly kind: "side";
  readonly index: number;
  readonly name: string;
  readonly place: string;
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
  /// One unit step on paper out of the building.
  readonly outward: readonly [number, number];
  readonly length_nm: number;
  readonly label: string;
  /// Around the text of its length on the drawing.
  readonly length: { readonly x: number; readonly y: number; readonly width: number; readonly height: number };
}

export type Handle = OpeningHandle | SideHandle;

/// A drawing without its picture; the picture is Reply.svg(name), with the classes ink-black ink-grey ink-blue ink-red
/// ink-white on whatever is drawn in an ink, and fill-white fill-tint fill-black fill-grey on grounds.
export interface DrawingHead {
  readonly name: string;
  readonly title: string;
  /// Micrometres on paper: the SVG's viewBox.
  readonly width: number;
  readonly height: number;
  readonly scale: number;
  /// A plan's course, else 0.
  readonly course: number;
  /// An elevation's side, else "".
  readonly side: string;
  readonly handles: readonly Handle[];
  /// Names that had no room and stand in the picture as keys: "(3)".
  readonly names: readonly { readonly key: string; readonly name: string }[];
}

/// What is asked at a hold point the day before.
export interface Question {
  readonly code: string;
  readonly text: string;
  readonly answer: "yes" | "no" | "cannot-tell" | "not-read";
  /// The number that says so, in words; "" where none does.
  readonly says: string;
  /// JSON pointer into the job of the field that answers it, or "".
  readonly place: string;
  /// The name of the drawing that shows it, or "".
  readonly drawing: string;
  /// The remedy that was chosen for it, or "".
  readonly chosen: string;
}

/// A reading that is still to be taken, with all that its entry will say but the reading itself.
export interface NextReading {
  readonly what: "tape" | "rod" | "edge" | "dowel";
  readonly text: string;
  readonly again: boolean;
  /// Tape: corners.
  readonly from: string;
  readonly to: string;
  /// Rod.
  readonly station: string;
  /// Edge, dowel, and rod beside the corners: the side, and from its start.
  readonly on: string;
  readonly at: Stated;
  /// Tape: as planned. Dowel: in from the outer face.
  readonly expected: Stated;
  /// A place on the plan, or the ends of a line: on the outer face of a side.
  readonly spots: readonly { readonly side: number; readonly at: number }[];
}

export interface HoldPoint {
  readonly code: string;
  readonly title: string;
  readonly lacks: readonly { readonly text: string; readonly place: string }[];
  readonly questions: readonly Question[];
  /// The next one first.
  readonly to_read: readonly NextReading[];
  /// The work stands at this one.
  readonly stands: boolean;
  readonly done: boolean;
}

/// One sheet of a set that is listed.
export interface SheetName {
  readonly name: string;
  readonly title: string;
  readonly hold_point: string;
  /// Another point's list stands on this sheet too: it is printed at both.
  readonly also?: string;
}

export interface Stated {
  readonly text: string;
  readonly nm: number;
}

/// What a tapped unit is.
export interface PieceCard {
  readonly name: string;
  readonly side: string;
  readonly course: number;
  readonly number: number;
  readonly kind: string;
  readonly kind_words: string;
  readonly series: string;
  readonly cut: "none" | "start" | "end";
  readonly length: Stated;
  /// From the corner `measured_from`.
  readonly from: Stated;
  readonly to: Stated;
  readonly measured_from: string;
  readonly joint: Stated;
  /// Names, "" where no unit stands.
  readonly left: string;
  readonly right: string;
  readonly above: readonly string[];
  readonly below: readonly string[];
  readonly cells: readonly { readonly from: Stated; readonly to: Stated; readonly bar: string }[];
}

/// Boxes for a view in space, micrometres: x to the east, y to the north, z up.
export interface Solids {
  readonly names: readonly string[];
  readonly courses: readonly number[];
  readonly kinds: readonly string[];
  readonly cut: readonly (0 | 1)[];
  /// "HA", "CU": as on the sheets; "" of ordinary units.
  readonly marks: readonly string[];
  readonly fills: readonly ("plain" | "tint" | "rising" | "falling" | "grey")[];
  /// x y z dx dy dz for each unit.
  readonly boxes: readonly number[];
  /// x y z0 z1 diameter for each bar.
  readonly bars: readonly number[];
}

/// reply.json, the first section of a reply.
export interface ReplyHead {
  readonly border: 1;
  readonly state: "solved" | "refused" | "bad-request";
  /// bad-request only: what is wrong with the request, or why an edit cannot be made. A sentence.
  readonly message?: string;
  /// Names of all sections in order, "reply.json" first.
  readonly sections: readonly string[];
  readonly drawings?: readonly DrawingHead[];
  readonly hold_points?: readonly HoldPoint[];
  readonly sheets?: readonly SheetName[];
  /// Absent too if no unit has the name asked for.
  readonly piece?: PieceCard;
  readonly lengths?: LengthsTold;
}

/// What the engine says to one request. The larger parts are taken apart when first read.
export interface Reply {
  readonly head: ReplyHead;
  /// When solved.
  readonly answer: Answer | undefined;
  /// When refused.
  readonly refusals: Refusals | undefined;
  /// The new job document, when begin or edits were given (also when the changed job is refused).
  readonly job: string | undefined;
  readonly solids: Solids | undefined;
  readonly course: CourseReply | undefined;
  /// A drawing by its name, "plan-course-1".
  svg(name: string): string | undefined;
  /// Any section's bytes: "answer.json", "plan-course-1.svg", "set-a4.pdf" (the same bytes as the command line's), ...
  bytes(name: string): Uint8Array<ArrayBuffer> | undefined;
}
