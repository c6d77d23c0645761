// Where on the page one is: at one of the hold points, at the wall, or at the list of jobs. Each has its own address.
import { signal } from "@preact/signals";
import { hint } from "./opening_note";

export const kPoints = ["order", "pour", "first-course", "lintels", "grout", "top", "at-the-wall"] as const;
export type Point = (typeof kPoints)[number];
export type Place = Point | "jobs";

/// The place of an address; one that is not known means the first point. Without any, whoever has no job of their own yet
/// begins where one is begun.
export function placeOf(hash: string, ownJob: boolean): Place {
  const name = hash.replace(/^#/, "");
  if (name === "jobs" || (name === "" && !ownJob)) return "jobs";
  return kPoints.find((point) => point === name) ?? "order";
}

const address = (): string => globalThis.location?.hash ?? "";

export const place = signal<Place>(placeOf(address(), hint()));

/// Back, forward, and links.
export function followAddress(): void {
  addEventListener("hashchange", () => (place.value = placeOf(address(), hint())));
}

export function goTo(next: Place): void {
  if (place.value === next) return;
  place.value = next;
  globalThis.history?.pushState(null, "", `#${next}`);
}
