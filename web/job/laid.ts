// Entries of the laid log: only ever added to. Pure; ids and times come from outside.
import { isObject, type Json, textAt, valueAt, withValue } from "./pointer";
import type { Stamp } from "./readings";

/// One thing that an entry says: {"mark": {...}}, {"strike": "id"} ...
export type LaidBody = Readonly<Record<string, Json>>;

function entriesOf(job: Json, log: string): readonly Json[] {
  const entries = valueAt(job, log);
  return Array.isArray(entries) ? entries : [];
}

function withEntry(job: Json, log: string, entry: Json): Json {
  return Array.isArray(valueAt(job, log)) ? withValue(job, `${log}/-`, entry) : withValue(job, log, [entry]);
}

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

const kKinds = ["mark", "units", "laid", "gauge", "set", "gap", "check", "found", "remark"] as const;

function struckIds(entries: readonly Json[]): ReadonlySet<string> {
  return new Set(entries.map((entry) => textAt(entry, "/strike")).filter((id) => id !== ""));
}

/// The log without its strikes, in its own order.
export function laidOf(job: Json): readonly LaidListed[] {
  const entries = entriesOf(job, "/laid");
  const struck = struckIds(entries);
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
        struck: struck.has(id),
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

/// An earlier state of the job with all log entries of a later one, those that came since struck: undo never erases.
export function withLogsOf(earlier: Json, later: Json, stamp: () => Stamp): Json {
  let job = earlier;
  for (const log of ["/readings", "/laid"]) {
    const before = new Set(entriesOf(earlier, log).map((entry) => textAt(entry, "/id")));
    const now = entriesOf(later, log);
    if (now.length === 0) continue;
    job = withValue(job, log, now as Json);
    const struck = struckIds(now);
    for (const entry of now) {
      const id = textAt(entry, "/id");
      if (before.has(id) || struck.has(id) || textAt(entry, "/strike") !== "") continue;
      const { id: own, when } = stamp();
      job = withEntry(job, log, { id: own, when, strike: id });
    }
  }
  return job;
}
