// Which entries of a log stand: as engine/job/strikes.hpp says it. A log is a set, only ever added to.
import { type Json, textAt, valueAt, withValue } from "./pointer";

/// One entry's own id, and the id that it strikes ("": it is no strike).
export interface Striking {
  readonly id: string;
  readonly strikes: string;
}

/// For each entry whether it stands: no standing entry strikes it. A strike that is struck strikes nothing, so that what it
/// struck stands again. Strikes that strike one another in a ring do not stand, and strike nothing else.
export function standingOf(log: readonly Striking[]): readonly boolean[] {
  const places = new Map<string, number[]>();
  log.forEach(({ id }, at) => {
    const known = places.get(id);
    if (known === undefined) places.set(id, [at]);
    else known.push(at);
  });
  const struckBy = ({ strikes }: Striking): readonly number[] => (strikes === "" ? [] : (places.get(strikes) ?? []));
  const open = log.map(() => 0); // strikes against each entry that are not decided yet
  for (const one of log) for (const target of struckBy(one)) open[target] = (open[target] ?? 0) + 1;
  const fates: (boolean | undefined)[] = log.map((_, at) => (open[at] === 0 ? true : undefined));
  const decided = log.flatMap((_, at) => (open[at] === 0 ? [at] : []));
  for (let at = decided.pop(); at !== undefined; at = decided.pop()) {
    const one = log[at];
    for (const target of one === undefined ? [] : struckBy(one)) {
      open[target] = (open[target] ?? 0) - 1;
      if (fates[target] !== undefined || (fates[at] === false && open[target] !== 0)) continue;
      fates[target] = fates[at] === false;
      decided.push(target);
    }
  }
  return fates.map((fate) => fate === true);
}

export function entriesOf(job: Json, log: string): readonly Json[] {
  const entries = valueAt(job, log);
  return Array.isArray(entries) ? entries : [];
}

function strikingsOf(entries: readonly Json[]): readonly Striking[] {
  return entries.map((entry) => ({ id: textAt(entry, "/id"), strikes: textAt(entry, "/strike") }));
}

/// Whether each entry of a job's log stands.
export function entriesStanding(job: Json, log: string): readonly boolean[] {
  return standingOf(strikingsOf(entriesOf(job, log)));
}

export function withEntry(job: Json, log: string, entry: Json): Json {
  return Array.isArray(valueAt(job, log)) ? withValue(job, `${log}/-`, entry) : withValue(job, log, [entry]);
}

export interface StrikeStamp {
  readonly id: string;
  readonly when: string;
}

/// Ids of what has to be struck in `log` so that entry `at` stands, or no longer does. Entries are struck one after the
/// other and may be struck several times over: every standing strike of an entry that is to stand is struck.
function strikesFor(
  log: readonly Striking[],
  stands: readonly boolean[],
  at: number,
  wanted: boolean,
): readonly string[] {
  const id = log[at]?.id ?? "";
  if (!wanted) return [id];
  return log.flatMap((one, other) => (one.strikes === id && stands[other] === true ? [one.id] : []));
}

/// Whether an entry of this id stands in a log.
export function isStanding(job: Json, log: string, id: string): boolean {
  const stands = entriesStanding(job, log);
  return entriesOf(job, log).some((entry, at) => textAt(entry, "/id") === id && stands[at] === true);
}

/// The job with this entry of a log counting again, if it was struck.
export function withCounting(job: Json, log: string, id: string, stamp: () => StrikeStamp): Json {
  const strikings = strikingsOf(entriesOf(job, log));
  const stands = standingOf(strikings);
  const at = strikings.findIndex((one) => one.id === id);
  if (at < 0 || stands[at] === true) return job;
  const strikes = strikesFor(strikings, stands, at, true);
  return strikes.reduce((next, of) => withEntry(next, log, { ...stamp(), strike: of }), job);
}

/// A job with all entries of a later state's logs, of which those count that counted in the job itself: what came since is
/// struck, what was struck since stands again. Nothing is erased; each difference is one strike more.
export function withLogsOf(wanted: Json, later: Json, stamp: () => StrikeStamp): Json {
  let job = wanted;
  for (const log of ["/readings", "/laid"]) {
    const now = entriesOf(later, log);
    if (now.length === 0) continue;
    const counted = new Map(strikingsOf(entriesOf(wanted, log)).map(({ id }, at) => [id, at]));
    const stoodThen = entriesStanding(wanted, log);
    const strikings = strikingsOf(now);
    const standNow = standingOf(strikings);
    job = withValue(job, log, now as Json);
    strikings.forEach(({ id, strikes }, at) => {
      const before = counted.get(id);
      const shall = before !== undefined && stoodThen[before] === true;
      if (strikes !== "" || shall === (standNow[at] === true)) return;
      for (const of of strikesFor(strikings, standNow, at, shall))
        job = withEntry(job, log, { ...stamp(), strike: of });
    });
  }
  return job;
}
