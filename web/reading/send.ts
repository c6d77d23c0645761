// A reading as it was typed, on its way into the log.
import { signal } from "@preact/signals";
import { type Entry, kPegFields, type PegField } from "../job/readings";
import { onceAtATime } from "../state/changing";
import { enter } from "../state/logs";
import { place } from "../state/point";
import { words } from "../words/words";

export type Kind = "tape" | "rod" | "two_peg" | "dowel" | "edge";
export const kKinds = ["tape", "rod", "two_peg", "dowel", "edge"] as const;

export const refused = signal("");
export const by = signal("");

function pegReadings(typed: (name: string) => string): Readonly<Record<PegField, string>> {
  return Object.fromEntries(kPegFields.map((name) => [name, typed(name)])) as Record<PegField, string>;
}

function entryOf(kind: Kind, typed: (name: string) => string): Entry {
  switch (kind) {
    case "edge":
      return { kind, on: typed("on"), from: typed("from"), at: typed("value"), beyond: typed("off") };
    case "dowel":
      return { kind, on: typed("on"), from: typed("from"), at: typed("value"), offFace: typed("off") };
    case "tape":
      return {
        kind,
        from: typed("from"),
        to: typed("to"),
        length: typed("value"),
        of: place.value === "pour" ? "lines" : "poured",
      };
    case "two_peg":
      return { kind, readings: pegReadings(typed) };
    case "rod":
      return {
        kind,
        setup: typed("setup"),
        station: typed("station"),
        rod: typed("value"),
        on: typed("on"),
        from: typed("from"),
        at: typed("at"),
        surface: typed("surface"),
        sight: typed("sight"),
      };
  }
}

function whatIs(kind: Kind, typed: (name: string) => string): string {
  if (kind === "tape") return `${typed("from")} – ${typed("to")}`;
  if (kind === "rod") return typed("station");
  return kind === "two_peg" ? words.ground.kinds.two_peg : `${typed("on")} ${typed("value")}`;
}

/// A reading on its way into the log, until the form stands ready for the next.
interface OnItsWay {
  /// What was typed into the reading's field since; on a level slab often the same as was sent.
  typedOn: string | undefined;
  /// A hand is at a field since: it went to one, or filled one in.
  touched: boolean;
}
let onItsWay: OnItsWay | undefined;

/// Heard of every stroke in a reading form.
export function heard(field: EventTarget | null): void {
  if (onItsWay === undefined) return;
  onItsWay.touched = true;
  if (field instanceof HTMLInputElement && field.name === "value") onItsWay.typedOn = field.value;
}

/// Heard when a hand goes to a field of a reading form: it is not taken from there when the last reading has come in.
export function reached(): void {
  if (onItsWay !== undefined) onItsWay.touched = true;
}

/// The field that is filled in next stands empty and ready. What was typed while the last reading was on its way stands in
/// it, and is entered once whoever typed it has seen what is asked for now; nor is a hand taken from another field.
function ready(form: HTMLFormElement, way: OnItsWay): void {
  const empty = (field: Element): field is HTMLInputElement => field instanceof HTMLInputElement && field.value === "";
  const kept = way.typedOn ?? "";
  const value = form.elements.namedItem("value");
  const typed = value instanceof HTMLInputElement && value.type !== "hidden";
  if (typed) value.value = kept;
  if (way.touched && form.contains(document.activeElement)) return;
  if (typed && kept !== "") value.focus();
  else [...form.elements].find((field): field is HTMLInputElement => empty(field) && field.required)?.focus();
}

/// Sends what stands in the form, once; refused, it stays as it was typed.
export const send = onceAtATime(async (form: HTMLFormElement, kind: Kind, taken: () => void): Promise<void> => {
  const typed = (name: string): string => String(new FormData(form).get(name) ?? "");
  const way: OnItsWay = { typedOn: undefined, touched: false };
  onItsWay = way;
  refused.value = (await enter(entryOf(kind, typed), by.value, whatIs(kind, typed), typed("note"))) ?? "";
  if (refused.value !== "") {
    onItsWay = undefined;
    return;
  }
  taken();
  requestAnimationFrame(() => {
    if (onItsWay !== way) return; // the next one was sent meanwhile
    onItsWay = undefined;
    ready(form, way);
  });
});
