// Asking the engine: a layout at once, the whole answer when the search has ended, and a quick one for each frame of a drag.
import { batch } from "@preact/signals";
import type { Superseded } from "../engine/client";
import type { Answer, Edit, Refusals, Reply, Request } from "../engine/contract";
import { laidOf } from "../job/laid";
import { readJson } from "../job/pointer";
import { readingsOf } from "../job/readings";
import { words } from "../words/words";
import { engine } from "./engine_port";
import {
  course,
  fieldTrouble,
  fromInside,
  history,
  offered,
  type Picture,
  piece,
  refusals,
  said,
  searching,
  type Shown,
  shown,
  sideIndex,
  tried,
  trouble,
  unsought,
} from "./signals";

/// No search: the engine lays each wall row by row. For a frame of a drag, and for what is shown while the search goes on.
const kAtOnce = 0;

const kNothingRefused: Refusals = { stringcourse_refusals: 1, refusals: [], beyond: 0 };

function drawingNames(): readonly string[] {
  const elevation = `elevation-${sideIndex.value + 1}${fromInside.value ? "-inside" : ""}`;
  return [`plan-course-${course.value}`, elevation];
}

function pictureOf(solved: Reply, prefix: string): Picture | undefined {
  const head = solved.head.drawings?.find((drawing) => drawing.name.startsWith(prefix));
  const svg = head === undefined ? undefined : solved.svg(head.name);
  return head === undefined || svg === undefined ? undefined : { head, svg };
}

function show(solved: Reply, answer: Answer, text: string, stage: Shown["stage"]): void {
  const last = shown.value;
  shown.value = {
    text,
    answer,
    plan: pictureOf(solved, "plan") ?? last?.plan,
    elevation: pictureOf(solved, "elevation") ?? last?.elevation,
    holdPoints: solved.head.hold_points ?? last?.holdPoints ?? [],
    stage,
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

async function heard(asked: Promise<Reply | Superseded>): Promise<Reply | undefined> {
  try {
    const solved = await asked;
    if (solved === "superseded") return undefined;
    if (solved.head.state !== "bad-request") return solved;
    trouble.value = { kind: "message", lead: words.trouble.badRequest, text: solved.head.message ?? "" };
  } catch {
    trouble.value = { kind: "fault" };
  }
  return undefined;
}

/// Without a search. `latest`: a newer question of that name takes this one's place while it waits.
export function askAtOnce(request: Omit<Request, "border" | "budget">, latest?: string): Promise<Reply | undefined> {
  const how = latest === undefined ? undefined : { latest };
  return heard(engine().solve({ border: 1, ...request, budget: kAtOnce }, how));
}

/// The whole answer, or what is to be told of it. While the search for it goes on this waits; it comes to nothing if the
/// search is given up.
export function askWhole(request: Omit<Request, "border">): Promise<Reply | undefined> {
  return heard(engine().search({ border: 1, ...request }));
}

/// Of the layout that is shown, at whatever stage it is.
export function askShown(request: Omit<Request, "border">): Promise<Reply | undefined> {
  return shown.value?.stage === "first" ? askAtOnce(request) : askWhole(request);
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
    const { offers, offers_complete: complete, free_places: freePlaces } = solved.answer ?? {};
    const there = offers !== undefined && complete !== undefined && freePlaces !== undefined;
    if (there) offered.value = { job: text, offers, complete, freePlaces };
    else unsought.value = text;
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

/// What was read or laid is compared with the whole answer only: a first layout would say that units lie where none do.
function hasLogs(request: Pick<Request, "job" | "merge">): boolean {
  const job = request.job === undefined ? undefined : readJson(request.job);
  if (request.merge !== undefined) return true;
  return job !== undefined && readingsOf(job).length + laidOf(job).length > 0;
}

/// Shows what was answered to a job; the course and side seen may be others by now, and are asked for then.
function showAsked(
  solved: Reply,
  answer: Answer,
  text: string,
  stage: "first" | "whole",
  names: readonly string[],
): boolean {
  show(solved, answer, text, stage);
  const beyond = clampViews(answer);
  return beyond || String(names) !== String(drawingNames());
}

/// The whole answer to a job; the search for another one is given up.
async function searched(text: string, names: readonly string[]): Promise<Reply | undefined> {
  engine().abandonSearch();
  const mine = { since: performance.now() };
  searching.value = mine;
  const solved = await askWhole({ job: text, drawings: names });
  if (searching.value === mine) searching.value = undefined;
  return solved;
}

/// Shown only if the job that stood when it was asked still stands.
async function solveAndShow(request: Omit<Request, "border">, latest?: string): Promise<Outcome> {
  const base = history.value.now.text;
  const still = (): boolean => history.value.now.text === base;
  const names = drawingNames();
  const first = await askAtOnce({ ...request, drawings: names }, latest);
  if (first === undefined || !still()) return { kind: "failed" };
  if (first.answer === undefined) return { kind: "refused", refusals: first.refusals ?? kNothingRefused };
  const text = first.job ?? request.job ?? "";
  let solved: Reply | undefined = first;
  const stage = hasLogs(request) ? "whole" : "first";
  if (stage === "whole") solved = await searched(text, names);
  const answer = solved?.answer;
  if (solved === undefined || answer === undefined || !still()) return { kind: "failed" };
  let beyond = false;
  batch(() => {
    refusals.value = undefined;
    trouble.value = undefined;
    beyond = showAsked(solved, answer, text, stage, names);
  });
  return { kind: "shown", job: first.job, beyond };
}

/// Searches on from the layout that is shown. True once the whole answer is.
export async function seekWhole(): Promise<boolean> {
  const { text } = history.value.now;
  if (shown.value?.text === text && shown.value.stage === "whole") return true;
  const names = drawingNames();
  const solved = await searched(text, names);
  const answer = solved?.answer;
  if (solved === undefined || answer === undefined || history.value.now.text !== text || hand === "moving")
    return false;
  let again = false;
  batch(() => {
    again = showAsked(solved, answer, text, "whole", names);
    sayTallies(answer);
    tried.value = text;
  });
  if (again) await redraw();
  if (piece.value !== undefined) await lookAgain(piece.value.name);
  return true;
}

/// The card of a unit that was tapped in a first layout.
async function lookAgain(name: string): Promise<void> {
  const solved = await askWhole({ job: history.value.now.text, piece: name });
  if (solved !== undefined && piece.value?.name === name) piece.value = solved.head.piece;
}

/// What follows once a job is shown: the whole answer, then offers.
export async function seekRest(): Promise<void> {
  if (await seekWhole()) await seekOffers();
}

/// Shows the job as it stands, at once if it can be. True if it is shown.
export async function showNow(): Promise<boolean> {
  const { text } = history.value.now;
  const outcome = await solveAndShow({ job: text }, "job");
  if (history.value.now.text !== text) return false;
  if (outcome.kind === "refused") refusals.value = outcome.refusals;
  if (outcome.kind !== "shown") return false;
  if (outcome.beyond) await redraw();
  return true;
}

/// The same, then searches on, and looks for offers.
export async function solveNow(): Promise<void> {
  if (await showNow()) await seekRest();
}

/// The same job, another course or side of it.
export async function redraw(): Promise<void> {
  const { text } = history.value.now;
  const stage = shown.value?.stage;
  if (shown.value?.text !== text || stage === undefined || stage === "hand") return;
  const names = drawingNames();
  const solved = await askShown({ job: text, drawings: names });
  if (solved?.answer === undefined || history.value.now.text !== text || shown.value?.text !== text) return;
  if (shown.value.stage !== stage) return redraw(); // a better one has come meanwhile
  if (showAsked(solved, solved.answer, text, stage, names)) await redraw();
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
/// From the moment something is taken hold of: whether it has moved.
let hand: "still" | "moving" | undefined;

export function beginDrafts(): void {
  hand = "still";
}

/// No more frames: what is still on its way is not shown.
export function endDrafts(): void {
  hand = undefined;
  waiting = undefined;
}

async function runDrafts(): Promise<void> {
  running = true;
  while (waiting !== undefined) {
    const draft = waiting;
    waiting = undefined;
    const solved = await askAtOnce({ job: draft.base, edits: [draft.edit], drawings: drawingNames(), moving: true });
    if (hand === undefined || solved === undefined) break;
    const { answer } = solved;
    batch(() => {
      refusals.value = answer === undefined ? (solved.refusals ?? kNothingRefused) : undefined;
      if (answer === undefined) return;
      show(solved, answer, "", "hand");
      if (waiting === undefined) sayTallies(answer, draft.label());
    });
  }
  running = false;
}

/// Asks for one frame of a drag; newer frames replace older ones that have not started. What is searched for is of the
/// building as it was: it is wanted no more.
export function draft(base: string, edit: Edit, label: () => string): void {
  if (hand === "still") {
    hand = "moving";
    engine().abandonSearch();
    engine().abandonAside();
  }
  waiting = { base, edit, label };
  if (!running) void runDrafts();
}

/// Clears what an earlier try left beside the fields.
export function forgetFieldTrouble(): void {
  fieldTrouble.value = undefined;
}
