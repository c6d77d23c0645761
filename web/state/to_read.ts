// Which reading is asked for next at the hold point that is open. The engine says which are to be taken, and in which order;
// one that is put off stays away until it is wanted again.
import { computed, signal } from "@preact/signals";
import type { NextReading } from "../engine/contract";
import { place } from "./point";
import { shown } from "./signals";

export const keyOf = (next: NextReading): string =>
  `${next.what} ${next.from} ${next.to} ${next.station} ${next.on} ${next.at.nm}`;

const putOff = signal<ReadonlySet<string>>(new Set());
/// What is read is chosen by hand, not as the engine asks for it.
export const byHand = signal(false);

const all = computed(() => shown.value?.holdPoints.find((one) => one.code === place.value)?.to_read ?? []);
export const toRead = computed(() => all.value.filter((one) => !putOff.value.has(keyOf(one))));
export const putOffHere = computed(() => all.value.length - toRead.value.length);

/// The one that the form is ready for and the drawing shows.
export const nextReading = computed(() => (byHand.value ? undefined : toRead.value[0]));

export function putItOff(next: NextReading): void {
  putOff.value = new Set([...putOff.value, keyOf(next)]);
}

export function askAgain(): void {
  putOff.value = new Set();
  byHand.value = false;
}
