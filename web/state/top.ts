// The wall's top from above, side by side, and the zone beside walls: drawings that are asked for.
import { computed, signal } from "@preact/signals";
import type { Drawn } from "./ground";
import { history, shown, sides } from "./signals";
import { askWhole } from "./solving";

const kNone: Drawn = { svg: "", head: undefined };
export const plateDrawn = signal(kNone);
export const zoneDrawn = signal(kNone);

/// Sides that carry a plate, by their place among all.
export const sidesWithPlate = computed(() => {
  const named = new Set((shown.value?.answer.plates ?? []).map((piece) => piece.side));
  return sides.value.map((side, index) => ({ name: side.name, index })).filter((side) => named.has(side.name));
});

/// The side whose plate is looked at; one that carries none any more gives way to the first that does.
export const plateAsked = signal(0);
export const plateSide = computed(() => {
  const all = sidesWithPlate.value;
  return all.find((side) => side.index === plateAsked.value)?.index ?? all[0]?.index;
});

async function draw(text: string, name: string): Promise<Drawn | undefined> {
  const solved = await askWhole({ job: text, drawings: [name] });
  if (solved === undefined || history.value.now.text !== text) return undefined;
  return { svg: solved.svg(name) ?? "", head: solved.head.drawings?.find((one) => one.name === name) };
}

/// Asks for the plate's drawing once the whole answer is there.
export function seekPlateDrawing(): void {
  const side = plateSide.value;
  if (shown.value?.stage !== "whole") return;
  if (side === undefined) {
    plateDrawn.value = kNone;
    return;
  }
  void draw(shown.value.text, `plate-${side + 1}`).then((drawn) => {
    if (drawn !== undefined) plateDrawn.value = drawn;
  });
}

/// The same for the zone.
export function seekZoneDrawing(): void {
  if (shown.value?.stage !== "whole") return;
  void draw(shown.value.text, "zone").then((drawn) => {
    if (drawn !== undefined) zoneDrawn.value = drawn;
  });
}
