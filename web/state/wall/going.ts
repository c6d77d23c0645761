// Where the view at the wall stands: which side, which course, which face of it.
import type { Answer } from "../../engine/contract";
import { sides } from "../signals";
import { answer } from "./site";
import { type Face, putState, wallState } from "./step";

const kHome: Face = "next";

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

/// Where the job says who lays, or when, each day has a card.
export function hasCard(of: Answer | undefined): boolean {
  return of?.programme?.planned === true && of.programme.days.length > 0;
}

/// The day's card is what is seen first; it enters nothing.
export function openWall(): void {
  const place = hasCard(answer.value) ? { screen: "day" as const, page: 0 } : { screen: "face" as const, face: kHome };
  putState({ open: true, place });
  settleState();
}

/// Back to the page, where the wall stands on the table.
export function leaveWall(): void {
  putState({ open: false, place: { screen: "face", face: "next" } });
}

export function toFace(face: Face = "next"): void {
  putState({ place: { screen: "face", face } });
}

export function changeCourse(by: number): void {
  const highest = answer.value?.courses.length ?? 1;
  putState({ course: Math.max(1, Math.min(highest, wallState.value.course + by)) });
  toFace();
}

export function changeSide(): void {
  const names = sides.value.map((side) => side.name);
  const next = names[(names.indexOf(wallState.value.side) + 1) % Math.max(1, names.length)] ?? "";
  putState({ side: next, course: nextCourse(next) });
  toFace();
}
