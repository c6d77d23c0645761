// Which part of the building is looked at: a course, a side, a place in hand, one unit.
import { batch } from "@preact/signals";
import { words } from "../words/words";
import { onceCome } from "./arrival";
import { formKey, formsAt, kLists, pointOf } from "./fields_home";
import { fold } from "./folds";
import { goTo, place } from "./point";
import {
  course,
  fromInside,
  history,
  inHand,
  lit,
  piece,
  said,
  shown,
  sideIndex,
  trouble,
  unknownPiece,
} from "./signals";
import { askShown, redraw, solveNow } from "./solving";

export function stepCourse(by: number): void {
  const highest = shown.value?.answer.courses.length ?? 1;
  const next = Math.max(1, Math.min(highest, course.value + by));
  if (next === course.value) return;
  course.value = next;
  said.value = words.say.course(next);
  void redraw();
}

export function seeSide(index: number): void {
  if (index === sideIndex.value) return;
  sideIndex.value = index;
  void redraw();
}

/// The elevation from outside, or from inside.
export function seeFrom(inside: boolean): void {
  if (inside === fromInside.value) return;
  fromInside.value = inside;
  void redraw();
}

/// Takes a place in hand and shows the side that it is on.
export function takeInHand(place: string): void {
  inHand.value = place;
  const answer = shown.value?.answer;
  const opening = answer?.openings.find((one) => one.place === place);
  const index = answer?.sides.findIndex((side) => side.place === place || side.name === opening?.side) ?? -1;
  if (index >= 0) seeSide(index);
}

const kTaken = /^(\/openings\/\d+|\/outline\/sides\/\d+|\/interior_walls\/\d+)/;

/// After the page has been drawn anew, and what is gone to has come.
function soon(act: () => void): void {
  onceCome(() => requestAnimationFrame(() => requestAnimationFrame(act)));
}

const behaviour = (): ScrollBehavior => (matchMedia("(prefers-reduced-motion: reduce)").matches ? "instant" : "smooth");

function drawingFor(name: string): string {
  if (name.startsWith("elevation")) return "elevation";
  return name === "pegs" || name.startsWith("bed") ? "results" : "plan";
}

/// Shows a place of the job on its drawing. Places inside an opening or a side mean that opening or side.
export function showPlace(at: string, drawing: string): void {
  const taken = kTaken.exec(at)?.[1] ?? "";
  lit.value = taken;
  takeInHand(taken);
  const number = Number(/-(\d+)$/.exec(drawing)?.[1] ?? 0);
  if (drawing.startsWith("elevation-")) seeSide(number - 1);
  if (drawing.startsWith("plan-course-")) stepCourse(number - course.value);
  soon(() => {
    const wanted = document.getElementById(drawingFor(drawing)) ?? document.querySelector(".view");
    wanted?.scrollIntoView({ block: "nearest", behavior: behaviour() });
  });
}

/// How well an element's pointer answers a place: the field itself, a field in it (the first), or what stands around it.
function nearness(pointer: string, at: string): number {
  if (pointer === at) return 1_000;
  if (pointer.startsWith(`${at}/`)) return 900;
  return at.startsWith(`${pointer}/`) ? pointer.length : -1;
}

function fieldAt(at: string): HTMLElement | undefined {
  let best: { readonly element: HTMLElement; readonly near: number } | undefined;
  for (const element of document.querySelectorAll<HTMLElement>("[data-pointer]")) {
    const near = nearness(element.dataset["pointer"] ?? "", at);
    if (near >= 0 && (best === undefined || near > best.near)) best = { element, near };
  }
  return best?.element;
}

/// Opens the field of a place: its hold point, its form, and the field itself, ready to be filled in.
export function openField(at: string): void {
  const here = place.value === "jobs" ? "order" : place.value;
  const point = pointOf(at, here);
  goTo(point);
  const taken = kTaken.exec(at)?.[1] ?? "";
  if (taken !== "") takeInHand(taken);
  for (const form of formsAt(point, at)) fold(formKey(form), true);
  for (const list of kLists) {
    const entry = /^\/\d+/.exec(at.startsWith(list.place) ? at.slice(list.place.length) : "")?.[0];
    if (list.point !== point || !at.startsWith(list.place)) continue;
    fold(`${list.point} ${list.title}`, true);
    if (entry !== undefined) fold(`${list.point} ${list.title} ${entry.slice(1)}`, true);
  }
  soon(() => {
    const field = fieldAt(at);
    field?.scrollIntoView({ block: "center", behavior: "instant" });
    field
      ?.querySelector<HTMLElement>("input:not([type=hidden]), select, textarea, button")
      ?.focus({ preventScroll: true });
  });
}

export async function showPiece(name: string): Promise<void> {
  const solved = await askShown({ job: history.value.now.text, piece: name });
  const card = solved?.head.piece;
  batch(() => {
    if (card !== undefined) piece.value = card;
    unknownPiece.value = card === undefined ? name : "";
  });
  if (card !== undefined)
    requestAnimationFrame(() => document.getElementById("unit")?.scrollIntoView({ block: "nearest" }));
}

export async function tryAgain(): Promise<void> {
  trouble.value = undefined;
  await solveNow();
}
