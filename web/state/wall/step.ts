// Where the view at the wall stands: kept on the device at every touch, so that a phone that dies comes back to the step
// it died on. Pure values; the view and its controller read and write them.
import { signal } from "@preact/signals";

/// "next": where the run starts, if that is beyond an opening, else the next mark.
export type Face = "next" | "mark" | "joints" | "bed";
/// "far": a far jamb read as a mark is, past or short of its place.
export type EntryKind = "mark" | "gauge" | "gap" | "set" | "check" | "row" | "jamb" | "far" | "end";

/// An entry in the making. Values are steps of the tape; a sign of 0 means that none was chosen yet.
export interface Entering {
  readonly kind: EntryKind;
  /// Which of its questions is asked now.
  readonly at: number;
  readonly values: readonly number[];
  readonly signs: readonly number[];
  /// What the entry is about: "plumb", an opening's jamb; "" until it is chosen or where nothing is to choose.
  readonly pick: string;
  /// The mark it belongs to (mark, gap): nanometres.
  readonly mark: number;
  /// Steps count down.
  readonly down?: boolean;
  /// Of what there is to choose from.
  readonly page?: number;
}

export type Place =
  | { readonly screen: "face"; readonly face: Face }
  /// What the day brings.
  | { readonly screen: "day"; readonly page: number }
  | { readonly screen: "more"; readonly page: number }
  /// What is to be done otherwise since a jamb or corner was found elsewhere.
  | { readonly screen: "changes"; readonly page: number }
  /// Grout, cell by cell: the next one but so many.
  | { readonly screen: "grout"; readonly skip: number }
  | { readonly screen: "enter"; readonly entry: Entering }
  | { readonly screen: "question"; readonly entry: Entering }
  | { readonly screen: "told"; readonly kind: EntryKind; readonly id: string };

export interface WallState {
  readonly open: boolean;
  readonly side: string;
  readonly course: number;
  readonly place: Place;
  readonly hand: "right" | "left";
  readonly light: "sun" | "evening";
  readonly by: string;
}

const kKey = "stringcourse-wall";
const kStart: WallState = {
  open: false,
  side: "",
  course: 0,
  place: { screen: "face", face: "next" },
  hand: "right",
  light: "sun",
  by: "",
};

function isPlace(value: unknown): value is Place {
  if (typeof value !== "object" || value === null || !("screen" in value)) return false;
  if (value.screen === "enter" || value.screen === "question") {
    const entry = (value as { entry?: Partial<Entering> }).entry;
    return (
      typeof entry?.kind === "string" &&
      typeof entry.at === "number" &&
      typeof entry.pick === "string" &&
      typeof entry.mark === "number" &&
      [entry.values, entry.signs].every((list) => Array.isArray(list) && list.every((one) => Number.isSafeInteger(one)))
    );
  }
  return ["face", "day", "more", "changes", "grout", "told"].includes(String(value.screen));
}

/// What the device kept; anything that is not of this form starts anew.
export function readState(text: string | null): WallState {
  if (text === null) return kStart;
  try {
    const kept = JSON.parse(text) as Partial<WallState>;
    if (typeof kept.side !== "string" || typeof kept.course !== "number" || !isPlace(kept.place)) return kStart;
    return {
      open: kept.open === true,
      side: kept.side,
      course: kept.course,
      place: kept.place,
      hand: kept.hand === "left" ? "left" : "right",
      light: kept.light === "evening" ? "evening" : "sun",
      by: typeof kept.by === "string" ? kept.by.slice(0, 12) : "",
    };
  } catch {
    return kStart;
  }
}

function fromDevice(): WallState {
  try {
    return readState(localStorage.getItem(kKey));
  } catch {
    return kStart;
  }
}

export const wallState = signal<WallState>(fromDevice());

export function putState(change: Partial<WallState>): void {
  wallState.value = { ...wallState.value, ...change };
  try {
    localStorage.setItem(kKey, JSON.stringify(wallState.value));
  } catch {
    // A browser without a store: the step lasts as long as the page.
  }
}
