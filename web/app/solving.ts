// Asking the engine: one whole question at a time for the job as it stands, and a quick one for each frame of a drag.
import { batch } from "@preact/signals";
import type { Edit, Reply, Request } from "../engine/contract";
import { words } from "../words/words";
import type { Answer, Refusals } from "./answer";
import { engine } from "./engine_port";
import {
  course,
  fieldTrouble,
  history,
  offered,
  type Picture,
  refusals,
  said,
  shown,
  sideIndex,
  trouble,
  unsought,
} from "./state";

/// No search in a frame of a drag: the engine lays each wall row by row.
const kDraftBudget = 0;

const kNothingRefused: Refusals = { stringcourse_refusals: 1, refusals: [], beyond: 0 };

function drawingNames(): readonly string[] {
  return [`plan-course-${course.value}`, `elevation-${sideIndex.value + 1}`];
}

function pictureOf(solved: Reply, prefix: string): Picture | undefined {
  const head = solved.head.drawings?.find((drawing) => drawing.name.startsWith(prefix));
  const svg = head === undefined ? undefined : solved.svg(head.name);
  return head === undefined || svg === undefined ? undefined : { head, svg };
}

function show(solved: Reply, answer: Answer, draft: boolean): void {
  const last = shown.value;
  shown.value = {
    answer,
    plan: pictureOf(solved, "plan") ?? last?.plan,
    elevation: pictureOf(solved, "elevation") ?? last?.elevation,
    holdPoints: solved.head.hold_points ?? last?.holdPoints ?? [],
    draft,
  };
}

/// Takes the steps back that the building no longer has; true if a drawing must be asked for again.
function clampViews(answer: Answer): boolean {
  const highest = Math.max(1, answer.courses.length);
  const last = Math.max(0, answer.sides.length - 1);
  const beyond = course.value > highest || sideIndex.value > last;
  course.value = Math.min(course.value, highest);
  sideIndex.value = Math.min(sideIndex.value, last);
  return beyond;
}

/// `latest`: a newer question of that name takes this one's place while it waits.
export async function ask(request: Omit<Request, "border">, latest?: string): Promise<Reply | undefined> {
  try {
    const solved = await engine().solve({ border: 1, ...request }, latest === undefined ? undefined : { latest });
    if (solved === "superseded") return undefined;
    if (solved.head.state !== "bad-request") return solved;
    trouble.value = { kind: "message", lead: words.trouble.badRequest, text: solved.head.message ?? "" };
  } catch {
    trouble.value = { kind: "fault" };
  }
  return undefined;
}

function sayTallies(answer: Answer, before = ""): void {
  const { cost, counts } = answer;
  said.value = `${before} ${words.say.tallies(cost.cuts, cost.short_laps, counts.pieces)}`.trim();
}

/// Offers are looked for in a worker of their own; a hand that moves ends the search.
export async function seekOffers(): Promise<void> {
  const { text } = history.value.now;
  if (offered.value?.job === text) return;
  try {
    const solved = await engine().solveAside({ border: 1, job: text, offers: true });
    if (solved === "superseded" || history.value.now.text !== text) return;
    if (solved.answer === undefined) unsought.value = text;
    else offered.value = { job: text, offers: solved.answer.offers, freePlaces: solved.answer.free_places };
  } catch {
    unsought.value = text; // the drawing and its tallies stand without offers
  }
}

/// What came of asking for a job: shown, or refused with the last good drawing left standing.
export type Outcome =
  /// `beyond`: a drawing stood at a course or side that the building no longer has, and is to be asked for again.
  | { readonly kind: "shown"; readonly job: string | undefined; readonly beyond: boolean }
  | { readonly kind: "refused"; readonly refusals: Refusals }
  | { readonly kind: "failed" };

/// Shown only if the job that stood when it was asked still stands.
async function solveAndShow(request: Omit<Request, "border">, latest?: string): Promise<Outcome> {
  const base = history.value.now.text;
  const solved = await ask({ ...request, drawings: drawingNames() }, latest);
  if (solved === undefined || history.value.now.text !== base) return { kind: "failed" };
  const { answer } = solved;
  if (answer === undefined) return { kind: "refused", refusals: solved.refusals ?? kNothingRefused };
  let beyond = false;
  batch(() => {
    refusals.value = undefined;
    trouble.value = undefined;
    show(solved, answer, false);
    beyond = clampViews(answer);
  });
  return { kind: "shown", job: solved.job, beyond };
}

/// Solves the job as it stands and shows it. True if it is shown.
export async function solveShown(): Promise<boolean> {
  const { text } = history.value.now;
  const outcome = await solveAndShow({ job: text }, "job");
  if (history.value.now.text !== text) return false;
  if (outcome.kind === "refused") refusals.value = outcome.refusals;
  if (outcome.kind !== "shown") return false;
  if (outcome.beyond) await redraw();
  return true;
}

/// The same, and then looks for offers.
export async function solveNow(): Promise<void> {
  if (await solveShown()) await seekOffers();
}

/// The same job, another course or side of it.
export async function redraw(): Promise<void> {
  const { text } = history.value.now;
  const solved = await ask({ job: text, drawings: drawingNames() });
  if (solved?.answer === undefined || history.value.now.text !== text || draftRunning()) return;
  show(solved, solved.answer, false);
}

/// Tries a changed job (as text, or as edits of one). Shown if the engine takes it, and its text is handed back.
export async function trial(request: Pick<Request, "job" | "edits" | "begin" | "merge">): Promise<Outcome> {
  const outcome = await solveAndShow(request);
  if (outcome.kind === "shown" && shown.value !== undefined) sayTallies(shown.value.answer);
  return outcome;
}

// One frame of a drag is asked for while the last is still being worked out; of those that wait only the newest counts.

interface Draft {
  readonly base: string;
  readonly edit: Edit;
  readonly label: () => string;
}
let waiting: Draft | undefined;
let running = false;
let holding = false;

export function draftRunning(): boolean {
  return holding;
}

export function beginDrafts(): void {
  holding = true;
  engine().abandonAside();
}

/// No more frames: what is still on its way is not shown.
export function endDrafts(): void {
  holding = false;
  waiting = undefined;
}

async function runDrafts(): Promise<void> {
  running = true;
  while (waiting !== undefined) {
    const draft = waiting;
    waiting = undefined;
    const solved = await ask({
      job: draft.base,
      edits: [draft.edit],
      drawings: drawingNames(),
      budget: kDraftBudget,
      moving: true,
    });
    if (!holding || solved === undefined) break;
    const { answer } = solved;
    batch(() => {
      refusals.value = answer === undefined ? (solved.refusals ?? kNothingRefused) : undefined;
      if (answer === undefined) return;
      show(solved, answer, true);
      if (waiting === undefined) sayTallies(answer, draft.label());
    });
  }
  running = false;
}

/// Asks for one frame of a drag; newer frames replace older ones that have not started.
export function draft(base: string, edit: Edit, label: () => string): void {
  waiting = { base, edit, label };
  if (!running) void runDrafts();
}

/// Clears what an earlier try left beside the fields.
export function forgetFieldTrouble(): void {
  fieldTrouble.value = undefined;
}
