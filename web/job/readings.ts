// Entries of a job's log of readings: only ever added to. Pure; ids and times come from outside.
import { isObject, type Json, textAt, valueAt } from "./pointer";
import { entriesStanding, withEntry } from "./strikes";

export interface Stamp {
  readonly id: string;
  readonly when: string;
  readonly by: string;
  readonly note?: string;
}

export const kPegFields = ["midway_a", "midway_b", "close_a", "close_b", "sight_a", "sight_b"] as const;
export type PegField = (typeof kPegFields)[number];

/// The lines before the pour, or what was poured.
export type Taped = "lines" | "poured";

/// What is entered, as typed. Lengths stay text: the engine reads them.
export type Entry =
  | { readonly kind: "tape"; readonly from: string; readonly to: string; readonly length: string; readonly of?: Taped }
  | {
      readonly kind: "rod";
      readonly setup: string;
      readonly station: string;
      readonly rod: string;
      readonly on: string;
      readonly from?: string;
      readonly at: string;
      readonly surface: string;
      readonly sight: string;
    }
  | { readonly kind: "two_peg"; readonly readings: Readonly<Record<PegField, string>> }
  | {
      readonly kind: "dowel";
      readonly on: string;
      readonly from?: string;
      readonly at: string;
      readonly offFace: string;
    }
  | {
      readonly kind: "edge";
      readonly on: string;
      readonly from?: string;
      readonly at: string;
      readonly beyond: string;
    }
  | { readonly kind: "strike"; readonly id: string };

/// Where on a wall: from the corner that is named, else from its start.
function onWall(entry: { readonly on: string; readonly from?: string; readonly at: string }) {
  const from = entry.from ?? "";
  return { on: entry.on, ...(from === "" ? {} : { from }), at: entry.at.trim() };
}

function bodyOf(entry: Entry): Json {
  switch (entry.kind) {
    case "tape":
      return {
        tape: {
          from: entry.from,
          to: entry.to,
          length: entry.length.trim(),
          ...(entry.of === undefined ? {} : { of: entry.of }),
        },
      };
    case "rod": {
      const place = entry.on === "" ? {} : onWall(entry);
      const more = {
        ...(entry.surface === "" ? {} : { surface: entry.surface }),
        ...(entry.sight.trim() === "" ? {} : { sight: entry.sight.trim() }),
      };
      const read = { setup: entry.setup.trim(), station: entry.station.trim(), rod: entry.rod.trim() };
      return { rod: { ...read, ...place, ...more } };
    }
    case "two_peg":
      return { two_peg: Object.fromEntries(kPegFields.map((name) => [name, entry.readings[name].trim()])) };
    case "dowel":
      return { dowel: { ...onWall(entry), off_face: entry.offFace.trim() } };
    case "edge":
      return { edge: { ...onWall(entry), beyond: entry.beyond.trim() } };
    case "strike":
      return { strike: entry.id };
  }
}

/// The job with one entry more at the end of its log.
export function withReading(job: Json, entry: Entry, stamp: Stamp): Json {
  const note = stamp.note?.trim() ?? "";
  const signs = { when: stamp.when, ...(stamp.by.trim() === "" ? {} : { by: stamp.by.trim() }) };
  const body = { ...(bodyOf(entry) as { readonly [key: string]: Json }), ...(note === "" ? {} : { note }) };
  const reading: Json = { id: stamp.id, ...signs, ...body };
  return withEntry(job, "/readings", reading);
}

/// One entry as it is listed.
export interface Listed {
  readonly index: number;
  readonly id: string;
  readonly kind: "tape" | "rod" | "two_peg" | "dowel" | "edge";
  /// "A – B", "set-up 1, C", "AB 4'-0"".
  readonly what: string;
  readonly value: string;
  readonly struck: boolean;
  readonly when: string;
  readonly by: string;
}

function listed(job: Json, index: number, struck: boolean): Listed | undefined {
  const at = (field: string): string => textAt(job, `/readings/${index}/${field}`);
  const kind = (["tape", "rod", "two_peg", "dowel", "edge"] as const).find((one) =>
    isObject(valueAt(job, `/readings/${index}/${one}`)),
  );
  if (kind === undefined) return undefined;
  const place = [at(`${kind}/on`), at(`${kind}/at`)].filter((text) => text !== "").join(" ");
  const whats = {
    tape: `${at("tape/from")} – ${at("tape/to")}`,
    rod: [at("rod/setup"), at("rod/station"), place].filter((text) => text !== "").join(" · "),
    two_peg: `${at("two_peg/sight_a")} – ${at("two_peg/sight_b")}`,
    dowel: place,
    edge: place,
  };
  const values = {
    tape: at("tape/length"),
    rod: at("rod/rod"),
    two_peg: `${at("two_peg/close_a")} / ${at("two_peg/close_b")}`,
    dowel: at("dowel/off_face"),
    edge: at("edge/beyond"),
  };
  return {
    index,
    id: at("id"),
    kind,
    what: whats[kind],
    value: values[kind],
    struck,
    when: at("when"),
    by: at("by"),
  };
}

/// The log without its strikes, newest first.
export function readingsOf(job: Json): readonly Listed[] {
  const log = valueAt(job, "/readings");
  if (!Array.isArray(log)) return [];
  const stands = entriesStanding(job, "/readings");
  return log
    .map((_, index) => listed(job, index, stands[index] !== true))
    .filter((one) => one !== undefined)
    .reverse();
}
