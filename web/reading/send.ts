// A reading as it was typed, on its way into the log.
import { signal } from "@preact/signals";
import { type Entry, kPegFields, type PegField } from "../job/readings";
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

/// A reading as it stood in the form when it was entered.
interface Pressed {
  readonly form: HTMLFormElement;
  readonly entry: Entry;
  readonly what: string;
  readonly note: string;
  /// Which reading the form asked for; "" where it was chosen by hand.
  readonly asked: string;
}

/// Readings on their way into the log, until the form stands ready for the next.
interface OnTheirWay {
  now: Pressed;
  /// Entered meanwhile, to be sent next.
  readonly waiting: Pressed[];
  /// Something was filled in since a reading was entered last.
  filledIn: boolean;
  /// What was typed into the reading's field since; on a level slab often the same as was sent.
  typedOn: string | undefined;
  /// A hand is at a field since: it went to one, or filled one in.
  touched: boolean;
}
let onTheirWay: OnTheirWay | undefined;

/// How often the form was to be made ready: it is as soon as it is drawn anew.
export const cameIn = signal(0);

/// Heard of every stroke in a reading form.
export function heard(field: EventTarget | null): void {
  if (onTheirWay === undefined) return;
  onTheirWay.touched = true;
  onTheirWay.filledIn = true;
  if (field instanceof HTMLInputElement && field.name === "value") onTheirWay.typedOn = field.value;
}

/// Heard when a hand goes to a field of a reading form: it is not taken from there when the last reading has come in.
export function reached(): void {
  if (onTheirWay !== undefined) onTheirWay.touched = true;
}

/// The field that is filled in next stands empty and ready. What was typed while the last reading was on its way stands in
/// it, and is entered once whoever typed it has seen what is asked for now; nor is a hand taken from another field.
export function makeReady(form: HTMLFormElement | null): void {
  const way = onTheirWay;
  if (form === null || way === undefined || way.now.form !== form) return;
  onTheirWay = undefined;
  const empty = (field: Element): field is HTMLInputElement => field instanceof HTMLInputElement && field.value === "";
  const kept = way.typedOn ?? "";
  const value = form.elements.namedItem("value");
  const typed = value instanceof HTMLInputElement && value.type !== "hidden";
  if (typed) value.value = kept;
  if (way.touched && form.contains(document.activeElement)) return;
  if (typed && kept !== "") value.focus();
  else [...form.elements].find((field): field is HTMLInputElement => empty(field) && field.required)?.focus();
}

function pressedIn(form: HTMLFormElement, kind: Kind, asked: string): Pressed {
  const data = new FormData(form);
  const typed = (name: string): string => String(data.get(name) ?? "");
  return { form, entry: entryOf(kind, typed), what: whatIs(kind, typed), note: typed("note"), asked };
}

/// A press while readings are on their way. One tap too many, with nothing filled in since, is none; nor is what was typed
/// before the form asked for another reading entered for the one that it will ask for.
function pressedMeanwhile(way: OnTheirWay, pressed: Pressed): void {
  if (!way.filledIn || (pressed.asked !== "" && pressed.asked === way.now.asked)) return;
  way.waiting.push(pressed);
  way.filledIn = false;
  way.typedOn = undefined;
}

/// Sends one after another. Refused, the form stays as it was filled in, and what was entered after it is not sent: its
/// reason is read first.
async function sendAll(way: OnTheirWay): Promise<void> {
  for (;;) {
    const { entry, what, note } = way.now;
    refused.value = (await enter(entry, by.value, what, note)) ?? "";
    const next = way.waiting.shift();
    if (refused.value !== "" || next === undefined) return;
    way.now = next;
  }
}

/// Sends what stands in the form, once. `asked`: which reading the form asks for; "" where it is chosen by hand.
export async function send(form: HTMLFormElement, kind: Kind, asked: string): Promise<void> {
  const pressed = pressedIn(form, kind, asked);
  if (onTheirWay !== undefined) return pressedMeanwhile(onTheirWay, pressed);
  const way = { now: pressed, waiting: [], filledIn: false, typedOn: undefined, touched: false };
  onTheirWay = way;
  try {
    await sendAll(way);
  } finally {
    if (refused.value !== "" || !onTheirWay.now.form.isConnected) onTheirWay = undefined;
    else cameIn.value += 1;
  }
}
