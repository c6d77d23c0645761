// Whether the part of the page that shows a place has come: parts are fetched when they are first opened.
import { computed, effect, signal } from "@preact/signals";
import { type Place, place } from "./point";

const come = signal<ReadonlySet<Place>>(new Set<Place>(["jobs"]));

/// What shows the place where one is stands ready.
export const hasCome = computed(() => come.value.has(place.value));

export function tellCome(at: Place): void {
  if (!come.value.has(at)) come.value = new Set([...come.value, at]);
}

/// Acts once the part of the place where one is now has come; not at all if one has gone elsewhere by then.
export function onceCome(act: () => void): void {
  if (hasCome.value) {
    act();
    return;
  }
  const at = place.value;
  const end = effect(() => {
    if (place.value === at && !hasCome.value) return;
    queueMicrotask(() => end());
    if (place.value === at) act();
  });
}
