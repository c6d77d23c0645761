// The border between engine and page, as types. Lengths are whole nanometres ("nm") or micrometres on paper (viewBox).
// Drag arithmetic: nm = viewBox micrometres x drawing.scale x 1000.
import type { StringcourseAnswer } from "./generated/answer";
import type { StringcourseJob } from "./generated/job";
import type { StringcourseRefusals } from "./generated/refusals";

export type Answer = StringcourseAnswer;
export type Job = StringcourseJob;
export type Refusals = StringcourseRefusals;
type Offer = StringcourseAnswer["offers"][number];

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
  | {
      readonly do: "accept";
      readonly what: Offer["what"];
      readonly place: string;
      readonly by_nm: number;
      readonly shift_nm?: number;
    };

/// Exactly one of `job` (the text of a job document) and `begin`.
export interface Request {
  readonly border: 1;
  readonly job?: string;
  readonly begin?: Begin;
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
  /// With a set: the font files that it embeds, base64. The worker adds them; nobody else need.
  readonly fonts?: { readonly regular: string; readonly bold: string };
  readonly offers?: boolean;
  /// Search budget for each panel; small while dragging. Left out: the command line's.
  readonly budget?: number;
  /// A hand is moving something: shorter pictures, without names of units; no runs and bars in the answer.
  readonly moving?: boolean;
}

export interface CourseAsked {
  readonly side: string;
  readonly course: number;
  readonly trial?: { readonly at_nm: number; readonly past_nm: number };
  readonly odds?: boolean;
}

type Laying = NonNullable<Answer["laying"]>;
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

export interface HoldPoint {
  readonly code: string;
  readonly title: string;
  readonly asks: readonly string[];
  readonly lacks: readonly { readonly text: string; readonly place: string }[];
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
  /// Absent too if no unit has the name asked for.
  readonly piece?: PieceCard;
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
