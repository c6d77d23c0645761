// Entries of the laid log: only ever added to. Pure; ids and times come from outside.
import { isObject, type Json, textAt, valueAt } from "./pointer";
import type { Stamp } from "./readings";
import { entriesOf, entriesStanding, withEntry } from "./strikes";

/// One thing that an entry says: {"mark": {...}}, {"strike": "id"} ...
export type LaidBody = Readonly<Record<string, Json>>;

/// The job with one entry more at the end of its laid log.
export function withLaid(job: Json, body: LaidBody, stamp: Stamp): Json {
  const by = stamp.by.trim();
  return withEntry(job, "/laid", { id: stamp.id, when: stamp.when, ...(by === "" ? {} : { by }), ...body });
}

/// One entry as it is listed.
export interface LaidListed {
  readonly index: number;
  readonly id: string;
  readonly kind: string;
  readonly body: Json;
  readonly struck: boolean;
  readonly when: string;
  readonly by: string;
  /// Its note and the names of its photos, one text.
  readonly more: string;
}

function moreOf(entry: Json): string {
  const photos = valueAt(entry, "/photos");
  const names = Array.isArray(photos) ? photos.filter((name) => typeof name === "string") : [];
  return [textAt(entry, "/note"), ...names].filter((text) => text !== "").join(", ");
}

const kKinds = [
  "mark",
  "units",
  "laid",
  "gauge",
  "set",
  "gap",
  "check",
  "found",
  "remark",
  "grouted",
  "looked_at",
] as const;

/// The log without its strikes, in its own order.
export function laidOf(job: Json): readonly LaidListed[] {
  const entries = entriesOf(job, "/laid");
  const stands = entriesStanding(job, "/laid");
  return entries.flatMap((entry, index) => {
    const kind = kKinds.find((one) => isObject(valueAt(entry, `/${one}`)));
    if (kind === undefined) return [];
    const id = textAt(entry, "/id");
    const body = valueAt(entry, `/${kind}`) ?? {};
    return [
      {
        index,
        id,
        kind,
        body,
        struck: stands[index] !== true,
        when: textAt(entry, "/when"),
        by: textAt(entry, "/by"),
        more: moreOf(entry),
      },
    ];
  });
}

/// What the last entry that counts is called, to be struck.
export function lastLaid(job: Json): LaidListed | undefined {
  return laidOf(job)
    .filter((one) => !one.struck)
    .at(-1);
}

/// What was struck last, if nothing was entered since: an undo that may be taken back.
export function lastStruck(job: Json): LaidListed | undefined {
  const entries = entriesOf(job, "/laid");
  const stands = entriesStanding(job, "/laid");
  const listed = new Map(laidOf(job).map((one) => [one.id, one]));
  for (let at = entries.length - 1; at >= 0; --at) {
    const strikes = textAt(entries[at] ?? null, "/strike");
    if (strikes === "") return undefined;
    const one = listed.get(strikes);
    if (one !== undefined && stands[at] === true) return one;
  }
  return undefined;
}
