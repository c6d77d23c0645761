// The view at the wall at work: what each touch does, and what is asked of the engine.
import { computed, signal } from "@preact/signals";
import { bringBack, enterAllLaid, enterLaid } from "../app/actions";
import { job, readOnly, shown, sides } from "../app/state";
import { lastLaid, lastStruck, laidOf, type LaidListed } from "../job/laid";
import { words } from "../words/words";
import { sayAloud } from "./aloud";
import { awake, keepAwake, letSleep } from "./awake";
import { begunEntry, entryBody, kindWords, type Question, questionsOf, type Site } from "./entries";
import { course, entryNow, failed, look, said, tape, waiting } from "./hearing";
import { stepsOf } from "./lengths";
import { closingGap, nextMark, placeText } from "./places";
import { type Act, type Known, needsPick, type Screen, screenOf } from "./screens";
import { type Entering, type EntryKind, type Face, putState, wallState } from "./state";

/// Entries on their way into the log: until they are there, no other one is begun.
const entering = signal(0);

const answer = computed(() => shown.value?.answer);
const openings = computed(
  () => answer.value?.openings.filter((opening) => opening.side === wallState.value.side) ?? [],
);
const jambs = computed(() =>
  openings.value.flatMap((opening) => [
    { pick: `near-jamb ${opening.name}`, name: `${opening.name}, ${words.wall.near}` },
    { pick: `far-jamb ${opening.name}`, name: `${opening.name}, ${words.wall.far}` },
  ]),
);

const kNowhere = { nm: 0, text: "" } as const;

function plannedPlace(kind: EntryKind, pick: string): { readonly nm: number; readonly text: string } {
  if (kind === "end" || kind === "check")
    return sides.value.find((side) => side.name === wallState.value.side)?.actual ?? kNowhere;
  const opening = openings.value.find((one) => pick.endsWith(` ${one.name}`));
  return (pick.startsWith("near-jamb") ? opening?.from : opening?.to) ?? kNowhere;
}

function siteOf(kind: EntryKind, pick: string, mark: number): Site {
  const planned = plannedPlace(kind, pick);
  return {
    tape: tape.value,
    side: wallState.value.side,
    course: wallState.value.course,
    unit: answer.value?.series[0]?.full.nm ?? 0,
    joint: course.value?.joints.planned.nm ?? 0,
    planned: planned.nm,
    plannedText: planned.text,
    markText: placeText(course.value?.course, mark),
  };
}

function questionsFor(entry: Entering): readonly Question[] {
  return questionsOf(entry.kind, entry.pick, siteOf(entry.kind, entry.pick, entry.mark), entry.values.length);
}

const known = computed<Known>(() => {
  const entry = entryNow();
  return {
    state: wallState.value,
    tape: tape.value,
    course: course.value,
    answer: answer.value,
    question: entry === undefined ? undefined : questionsFor(entry)[entry.at],
    jambs: jambs.value,
    waiting: waiting.value,
    failed: failed.value,
    undoable: lastLaid(job.value) !== undefined,
    redoable: lastStruck(job.value) !== undefined,
    awake: awake.value,
    readOnly: readOnly.value,
    said: said.value,
  };
});

export const screen = computed<Screen>(() => screenOf(known.value));

/// A side and a course that the building has: each side's next one.
export function settleState(): void {
  const names = sides.value.map((side) => side.name);
  const first = names[0];
  if (first === undefined) return;
  const side = names.includes(wallState.value.side) ? wallState.value.side : first;
  const highest = answer.value?.courses.length ?? 1;
  const known = wallState.value.course >= 1 && wallState.value.course <= highest && side === wallState.value.side;
  if (!known) putState({ side, course: nextCourse(side) });
}

function nextCourse(side: string): number {
  const index = sides.value.findIndex((one) => one.name === side);
  const next = answer.value?.laying?.next_courses[index] ?? 1;
  return next === 0 ? (answer.value?.courses.length ?? 1) : next;
}

export function openWall(): void {
  putState({ open: true, place: { screen: "face", face: "next" } });
  settleState();
}

function toFace(face: Face = "next"): void {
  putState({ place: { screen: "face", face } });
}

/// The mark that an entry of this kind belongs to: of a reading the one that was on the screen.
function markFor(what: Extract<Act, { readonly do: "begin" }>): number {
  const now = course.value?.course;
  return (what.kind === "gap" ? closingGap(now)?.at.nm : what.mark) ?? nextMark(now)?.at.nm ?? 0;
}

function begin(what: Extract<Act, { readonly do: "begin" }>): void {
  const { kind, way, pick: picked = "" } = what;
  const mark = markFor(what);
  const entry = begunEntry(kind, picked, mark, siteOf(kind, picked, mark));
  if (way === undefined) putState({ place: { screen: "enter", entry } });
  else if (way === 0) void log({ ...entry, signs: [1], values: [0] });
  else putState({ place: { screen: "enter", entry: { ...entry, signs: [way], values: [1] } } });
}

/// Enters something while nothing else can be touched; hands back what `enter` does.
async function alone<T>(enter: () => Promise<T>): Promise<T> {
  entering.value += 1;
  try {
    return await enter();
  } finally {
    entering.value -= 1;
  }
}

function withAt<T>(list: readonly T[], at: number, value: T): readonly T[] {
  return list.map((old, index) => (index === at ? value : old));
}

async function log(entry: Entering): Promise<void> {
  const site = siteOf(entry.kind, entry.pick, entry.mark);
  const { kind } = entry;
  if ((kind === "mark" || kind === "gap") && site.markText === "") {
    said.value = words.wall.markGone;
    return toFace();
  }
  const { side, course: number, by } = wallState.value;
  const done = await alone(() =>
    enterLaid(entryBody(entry, site), by, `${side}-${number} ${kindWords(kind, site.tape)}`),
  );
  if (done.id === undefined) {
    said.value = done.refused ?? words.trouble.fault;
    return;
  }
  said.value = "";
  if (kind === "mark") toFace("joints");
  else putState({ place: { screen: "told", kind, id: done.id } });
}

/// The next question of the entry, or its end.
function forward(entry: Entering): void {
  if (entry.at + 1 < questionsFor(entry).length) {
    putState({ place: { screen: "enter", entry: { ...entry, at: entry.at + 1, down: false } } });
    return;
  }
  const doubtful =
    entry.kind === "mark" &&
    course.value?.course.marks.some((mark) => mark.at.nm === entry.mark && mark.doubtful !== undefined);
  if (doubtful === true && wallState.value.place.screen !== "question") {
    putState({ place: { screen: "question", entry } });
    return;
  }
  void log(entry);
}

function takeLikely(entry: Entering): void {
  const doubtful = course.value?.course.marks.find(
    (mark) => mark.at.nm === entry.mark && mark.run !== undefined,
  )?.doubtful;
  if (doubtful?.past === undefined) return;
  const steps = stepsOf(doubtful.past.nm, tape.value);
  void log({ ...entry, mark: doubtful.at?.nm ?? entry.mark, values: [Math.abs(steps)], signs: [steps < 0 ? -1 : 1] });
}

function back(): void {
  const { place } = wallState.value;
  const entry = entryNow();
  if (place.screen === "question" && entry !== undefined) {
    putState({ place: { screen: "enter", entry } });
    return;
  }
  const ways = entry === undefined ? undefined : questionsFor(entry)[entry.at]?.ways;
  if (entry !== undefined && entry.kind !== "mark" && ways !== undefined && (entry.signs[entry.at] ?? 0) !== 0) {
    putState({ place: { screen: "enter", entry: { ...entry, signs: withAt(entry.signs, entry.at, 0) } } });
  } else if (entry !== undefined && entry.at > 0) {
    putState({ place: { screen: "enter", entry: { ...entry, at: entry.at - 1 } } });
  } else {
    toFace();
  }
}

function whatIs(one: LaidListed): string {
  return kindWords(one.kind, tape.value);
}

async function strikeLast(): Promise<void> {
  const last = lastLaid(job.value);
  if (last === undefined) {
    said.value = words.wall.nothingToUndo;
    return;
  }
  const done = await alone(() => enterLaid({ strike: last.id }, wallState.value.by, whatIs(last)));
  said.value = done.id === undefined ? (done.refused ?? "") : words.wall.undone(whatIs(last));
  toFace();
}

async function bringLastBack(): Promise<void> {
  const last = lastStruck(job.value);
  if (last === undefined) return;
  await alone(() => bringBack("/laid", last.id, whatIs(last)));
  said.value = words.wall.redone(whatIs(last));
  toFace();
}

function changeCourse(by: number): void {
  const highest = answer.value?.courses.length ?? 1;
  putState({ course: Math.max(1, Math.min(highest, wallState.value.course + by)) });
  toFace();
}

function changeSide(): void {
  const names = sides.value.map((side) => side.name);
  const next = names[(names.indexOf(wallState.value.side) + 1) % Math.max(1, names.length)] ?? "";
  putState({ side: next, course: nextCourse(next) });
  toFace();
}

async function courseLaid(): Promise<void> {
  const { side, course: number, by } = wallState.value;
  const done = await alone(() => enterLaid({ laid: { on: side, course: number } }, by, `${side}-${number}`));
  said.value = done.refused ?? "";
  toFace();
}

function speak(): void {
  const faces = (["mark", "joints"] as const).map((face) =>
    screenOf({ ...known.value, state: { ...wallState.value, place: { screen: "face", face } } }),
  );
  const [mark, joints] = faces;
  const next =
    nextMark(course.value?.course) === undefined ? "" : `. ${words.wall.nextJoints}: ${joints?.number ?? ""}`;
  said.value = sayAloud(`${mark?.lead ?? ""}. ${mark?.number ?? ""}${next}`) ? "" : words.wall.noVoice;
  toFace();
}

function enterAt(entry: Entering, sign: number, value: number): Entering {
  return { ...entry, signs: withAt(entry.signs, entry.at, sign), values: withAt(entry.values, entry.at, value) };
}

function pick(entry: Entering, what: string): void {
  const begun = begunEntry(entry.kind, what, entry.mark, siteOf(entry.kind, what, entry.mark));
  putState({ place: { screen: "enter", entry: begun } });
}

function chooseWay(entry: Entering, way: number): void {
  if (way === 0) forward(enterAt(entry, 1, 0));
  else putState({ place: { screen: "enter", entry: enterAt(entry, way, 1) } });
}

function stepBy(entry: Entering, by: number): void {
  if (needsPick(entry)) return;
  const value = Math.max(0, (entry.values[entry.at] ?? 0) + by);
  putState({ place: { screen: "enter", entry: enterAt(entry, entry.signs[entry.at] ?? 1, value) } });
}

/// The unit in hand is measured; the next one begins as bought.
function nextUnit(entry: Entering): void {
  const site = siteOf(entry.kind, entry.pick, entry.mark);
  const values = entry.values.slice(0, entry.at + 1);
  const signs = values.map(() => 1);
  const further = {
    ...entry,
    at: entry.at + 1,
    values: [...values, stepsOf(site.unit, site.tape)],
    signs: [...signs, 1],
  };
  putState({ place: { screen: "enter", entry: further } });
}

/// The units that had to come up are up: what was read at their marks no longer counts.
async function unitsLifted(): Promise<void> {
  const now = course.value?.course;
  const run = now?.runs[now.run];
  const again = run?.next.again ?? run?.next.instead?.again;
  if (now === undefined || run === undefined || again === undefined) return;
  const stay = run.laid - again;
  const marks = now.marks.filter((mark) => mark.run === now.run).slice(stay);
  const entries = new Set(marks.flatMap((mark) => mark.entries ?? []));
  const strikes = laidOf(job.value).filter((one) => entries.has(one.index));
  const done = await alone(() =>
    enterAllLaid(
      strikes.map((one) => ({ strike: one.id })),
      wallState.value.by,
      words.steps.unlaid(words.wall.marksOf(now.name)),
    ),
  );
  said.value = done.refused ?? "";
  toFace();
}

/// Does something with the entry in the making, if there is one.
function withEntry(what: (entry: Entering) => void): void {
  const entry = entryNow();
  if (entry !== undefined) what(entry);
}

const kActs: { readonly [Kind in Act["do"]]: (what: Extract<Act, { readonly do: Kind }>) => void } = {
  face: (what) => toFace(what.face),
  more: (what) => putState({ place: { screen: "more", page: what.page } }),
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
  course: (what) => changeCourse(what.by),
  side: changeSide,
  aloud: speak,
  hand: () => {
    putState({ hand: wallState.value.hand === "right" ? "left" : "right" });
    toFace();
  },
  light: () => {
    putState({ light: wallState.value.light === "sun" ? "evening" : "sun" });
    toFace();
  },
  leave: () => putState({ open: false, place: { screen: "face", face: "next" } }),
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

export function act(what: Act): void {
  if (!isReady(what)) return;
  if (what.do !== "aloud") said.value = "";
  (kActs[what.do] as (what: Act) => void)(what);
}

export { keepAwake, letSleep, look };
