// What the page knows, as signals. Only actions and solving write here; components read.
import { computed, signal } from "@preact/signals";
import type { Answer, DrawingHead, FreePlaces, HoldPoint, Offer, PieceCard, Refusals } from "../engine/contract";
import { begun, type History } from "../job/history";
import { type Json, readJson } from "../job/pointer";
import { type Tape, tapeOf } from "../job/tape";

export interface Picture {
  readonly head: DrawingHead;
  readonly svg: string;
}

/// The last building that could be drawn.
export interface Shown {
  /// The job that it is of; "" of a frame of a drag.
  readonly text: string;
  readonly answer: Answer;
  readonly plan: Picture | undefined;
  readonly elevation: Picture | undefined;
  readonly holdPoints: readonly HoldPoint[];
  /// Of a hand that is still moving; laid at once, while the search goes on; or the whole answer.
  readonly stage: "hand" | "first" | "whole";
}

export interface Offered {
  readonly job: string;
  readonly offers: readonly Offer[];
  /// Every small change was tried.
  readonly complete: boolean;
  readonly freePlaces: FreePlaces;
}

/// A field whose text was refused: what was typed, and why.
export interface FieldTrouble {
  readonly pointer: string;
  readonly typed: string;
  readonly refusals: Refusals;
}

export type Trouble =
  | { readonly kind: "fault" }
  | { readonly kind: "message"; readonly lead: string; readonly text: string };

/// A search for a whole answer that somebody waits for.
export interface Searching {
  /// On the clock of performance.now().
  readonly since: number;
}

export const history = signal<History>(begun(""));
export const shown = signal<Shown | undefined>(undefined);
export const searching = signal<Searching | undefined>(undefined);
export const offered = signal<Offered | undefined>(undefined);
export const refusals = signal<Refusals | undefined>(undefined);
export const fieldTrouble = signal<FieldTrouble | undefined>(undefined);
export const trouble = signal<Trouble | undefined>(undefined);
/// The job that was put on the table and is drawn, refused or failed by now: the page has outlived it.
export const tried = signal("");
/// The job that no offers were found for: the search failed.
export const unsought = signal("");

export const course = signal(1);
export const sideIndex = signal(0);
/// The elevation is seen from inside the building.
export const fromInside = signal(false);
/// Place in hand: "" is the whole building.
export const inHand = signal("");
/// Place to be found on the drawing, from the strip.
export const lit = signal("");
export const piece = signal<PieceCard | undefined>(undefined);
export const unknownPiece = signal("");
export const freeHand = signal(false);
export const isExample = signal(true);
export const readOnly = signal(false);
/// Read out by screen readers.
export const said = signal("");

/// What is shown is the first module's: of the rest nothing is said yet.
export const brief = computed(() => shown.value !== undefined && shown.value.answer.programme === undefined);

export const job = computed<Json>(() => readJson(history.value.now.text) ?? {});
export const tape = computed<Tape>(() => tapeOf(job.value));
/// The finest step of the job's tape, nanometres; 0 where nothing was answered yet.
export const tapeStep = computed(() => shown.value?.answer.tape_step.nm ?? 0);
export const courses = computed(() => shown.value?.answer.courses.length ?? 1);
export const corners = computed(() => shown.value?.answer.corners.map((corner) => corner.name) ?? []);
export const sides = computed(() => shown.value?.answer.sides ?? []);
/// Offers belong to the job they were worked out for, and to no other.
export const offeredNow = computed(() => {
  const found = offered.value;
  const its = found !== undefined && found.job === history.value.now.text && shown.value?.stage !== "hand";
  return its ? found : undefined;
});
export const offersNow = computed(() => offeredNow.value?.offers);
/// Offers are still to come: nothing says that there will be none.
export const offersComing = computed(
  () =>
    offersNow.value === undefined &&
    refusals.value === undefined &&
    trouble.value === undefined &&
    unsought.value !== history.value.now.text,
);
