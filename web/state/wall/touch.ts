// What each touch at the wall does.
import { readOnly } from "../signals";
import type { Act } from "./acts";
import { back, begin, chooseWay, forward, nextUnit, pick, stepBy, takeLikely, withEntry } from "./entering";
import { changeCourse, changeSide, leaveWall, toFace } from "./going";
import { logGrout } from "./grouting";
import { look, said, waiting } from "./hearing";
import { bringLastBack, courseLaid, entering, log, strikeLast, unitsLifted } from "./logging";
import { askRemark } from "./remark";
import { putState, wallState } from "./step";

/// Reading aloud is the view's own.
type Done = Exclude<Act, { readonly do: "aloud" }>;

const kActs: { readonly [Kind in Done["do"]]: (what: Extract<Done, { readonly do: Kind }>) => void } = {
  face: (what) => toFace(what.face),
  day: (what) => putState({ place: { screen: "day", page: what.page } }),
  more: (what) => putState({ place: { screen: "more", page: what.page } }),
  changes: (what) => putState({ place: { screen: "changes", page: what.page } }),
  remark: () => {
    askRemark(wallState.value.side, wallState.value.course);
    leaveWall();
  },
  begin: (what) => {
    if (!readOnly.value) begin(what);
  },
  pick: (what) => withEntry((entry) => pick(entry, what.pick)),
  way: (what) => withEntry((entry) => chooseWay(entry, what.way)),
  step: (what) => withEntry((entry) => stepBy(entry, what.by)),
  turn: () =>
    withEntry((entry) => putState({ place: { screen: "enter", entry: { ...entry, down: entry.down !== true } } })),
  page: (what) => withEntry((entry) => putState({ place: { screen: "enter", entry: { ...entry, page: what.page } } })),
  "next-unit": () => withEntry(nextUnit),
  enough: () => withEntry((entry) => void log(entry)),
  lifted: () => void unitsLifted(),
  take: () => withEntry(forward),
  likely: () => withEntry(takeLikely),
  "as-read": () => withEntry((entry) => void log(entry)),
  back,
  undo: () => void strikeLast(),
  redo: () => void bringLastBack(),
  look: () => void look(),
  laid: () => void courseLaid(),
  grout: (what) => putState({ place: { screen: "grout", skip: what.skip } }),
  grouted: (what) => {
    if (!readOnly.value) {
      putState({ place: { screen: "grout", skip: 0 } });
      void logGrout(what.entry, what.what);
    }
  },
  course: (what) => changeCourse(what.by),
  side: changeSide,
  hand: () => {
    putState({ hand: wallState.value.hand === "right" ? "left" : "right" });
    toFace();
  },
  light: () => {
    putState({ light: wallState.value.light === "sun" ? "evening" : "sun" });
    toFace();
  },
  leave: leaveWall,
};

/// What is entered or begun by what the screen says of the course: not before the course is known.
const kByTheCourse: ReadonlySet<Act["do"]> = new Set([
  "begin",
  "take",
  "likely",
  "as-read",
  "enough",
  "lifted",
  "laid",
]);

/// Until what is on its way into the log is there, a touch would be of what was on the screen before.
export function isReady(what: Act): boolean {
  return entering.value === 0 && !(waiting.value && kByTheCourse.has(what.do));
}

export function act(what: Done): void {
  if (!isReady(what)) return;
  said.value = "";
  (kActs[what.do] as (what: Done) => void)(what);
}
