// An entry in the making: what it is of, its lengths counted up and down, what is doubted, what it came to.
import { kChecks, kFewestUnits, kMeasured, needsPick } from "../state/wall/entries";
import type { Entering, EntryKind } from "../state/wall/step";
import { words } from "../words/words";
import { jointsText, outcomeLines } from "./outcomes";
import { type Known, kToMark, kUndo, name, notes, paged, type Screen, type Zone } from "./screen";

const w = words.wall;

function picksOf(known: Known, kind: EntryKind): readonly { readonly pick: string; readonly name: string }[] {
  if (kind === "check") return kChecks.map((pick) => ({ pick, name: w.checks[pick] ?? pick }));
  if (kind === "row") return kMeasured.map((pick) => ({ pick, name: w.measured[pick] }));
  return known.jambs;
}

function pickScreen(known: Known, entry: Entering): Screen {
  const picks = picksOf(known, entry.kind).map(({ pick, name }): Zone => ({ label: name, act: { do: "pick", pick } }));
  return {
    lead: name(known),
    number: entry.kind === "check" ? w.whichCheck : entry.kind === "row" ? w.whichRow : w.whichJamb,
    under: [...(picks.length === 0 ? [w.noOpening] : []), ...notes(known)],
    zones: paged(picks, entry.page ?? 0, (page) => ({ do: "page", page })),
  };
}

function stepZones(known: Known, entry: Entering): readonly Zone[] {
  const step = (by: number): Zone => ({ label: w.step(by, known.tape), act: { do: "step", by } });
  const way = entry.down === true ? -1 : 1;
  // One unit is within a step or two of the next one.
  if (entry.pick === "each")
    return [
      step(-1),
      step(1),
      { label: w.nextUnit, act: { do: "next-unit" }, first: true },
      ...(entry.at + 1 < kFewestUnits ? [] : [{ label: w.enough, act: { do: "enough" } } as const]),
      { label: w.back, act: { do: "back" } },
    ];
  return [
    step(-way),
    step(way),
    step(5 * way),
    step(10 * way),
    { label: w.back, act: { do: "back" } },
    { label: w.take, act: { do: "take" }, first: true },
  ];
}

export function enterScreen(known: Known, entry: Entering): Screen {
  if (needsPick(entry)) return pickScreen(known, entry);
  const question = known.question;
  const sign = entry.signs[entry.at] ?? 1;
  const value = entry.values[entry.at] ?? 0;
  if (question?.ways !== undefined && sign === 0) {
    const [above, below, level] = question.ways;
    return {
      lead: name(known),
      number: question.title,
      under: notes(known),
      zones: [
        { label: below, act: { do: "way", way: -1 } },
        { label: above, act: { do: "way", way: 1 } },
        { label: level, act: { do: "way", way: 0 }, first: true },
        { label: w.back, act: { do: "back" } },
      ],
    };
  }
  const way = question?.ways === undefined ? "" : sign < 0 ? question.ways[1] : question.ways[0];
  const run = known.course?.course.runs[known.course.course.run];
  const next =
    entry.kind === "mark" && run?.next.what === "joints" ? `${w.nextJoints}: ${jointsText(run.next.joints)}` : "";
  return {
    lead: `${name(known)} · ${question?.title ?? ""}`,
    number: `${known.written(value)}${way === "" ? "" : ` ${way.toLowerCase()}`}`,
    under: [next, ...notes(known)].filter((text) => text !== ""),
    // What has a way is small; a plain length may have to go down a good deal.
    ...(entry.pick === "each" || question?.ways !== undefined
      ? {}
      : { turn: { label: entry.down === true ? w.countUp : w.countDown, act: { do: "turn" } } as const }),
    zones: stepZones(known, entry),
  };
}

export function questionScreen(known: Known, entry: Entering): Screen {
  const doubtful = known.course?.course.marks.find(
    (mark) => mark.at.nm === entry.mark && mark.run !== undefined,
  )?.doubtful;
  const likely = doubtful?.past !== undefined;
  return {
    lead: name(known),
    number: "?",
    under: [
      doubtful === undefined ? "" : likely ? w.doubtful(doubtful.why, doubtful.likely) : w.doubtfulBare(doubtful.why),
      ...notes(known),
    ].filter((text) => text !== ""),
    zones: [
      ...(likely ? [{ label: w.itIs, act: { do: "likely" }, first: true } as const] : []),
      { label: w.asRead, act: { do: "as-read" } },
      { label: w.back, act: { do: "back" } },
    ],
  };
}

export function toldScreen(known: Known, kind: EntryKind, id: string): Screen {
  const log = (known.answer?.job as { laid?: readonly { id: string }[] } | undefined)?.laid ?? [];
  const lines = [
    ...outcomeLines(
      known.answer,
      log.findIndex((entry) => entry.id === id),
    ),
  ];
  const batch = known.answer?.laying?.batch;
  if (kind === "row" && batch !== undefined)
    lines.push(w.mean(batch.mean_exact, w.verdicts[batch.within_tolerance] ?? ""));
  const found = kind === "jamb" || kind === "far" || kind === "end";
  if (found) lines.push(changesOf(known).length === 0 ? w.nothingOtherwise : w.resolved);
  const changed: readonly Zone[] =
    found && changesOf(known).length > 0 ? [{ label: w.otherwise, act: { do: "changes", page: 0 }, first: true }] : [];
  return {
    lead: name(known),
    number: lines[0] ?? "✓",
    under: [...lines.slice(1), ...notes(known)],
    zones: [...changed, kUndo, changed.length > 0 ? { ...kToMark, first: false } : kToMark],
  };
}

/// What the mason does otherwise than it was printed, in the side in hand: other blocks, or the same ones to other marks.
export function changesOf(known: Known): readonly { readonly text: string; readonly units: readonly string[] }[] {
  const changes = known.answer?.laying?.changes ?? [];
  return changes.filter(
    (change) => change.side === known.state.side && (change.units.length > 0 || change.marks_moved > 0),
  );
}

/// One change after the other.
export function changesScreen(known: Known, page: number): Screen {
  const all = changesOf(known);
  const change = all[page];
  const next: readonly Zone[] =
    all.length > 1
      ? [{ label: w.nextPage, act: { do: "changes", page: (page + 1) % all.length }, first: page + 1 < all.length }]
      : [];
  return {
    lead: `${known.state.side} · ${w.otherwise} ${all.length > 1 ? w.ofAll(page + 1, all.length) : ""}`.trim(),
    number: change === undefined ? w.nothingOtherwise : change.units.length > 0 ? change.units.join("; ") : w.newMarks,
    under: [change?.text ?? "", ...notes(known)].filter((text) => text !== ""),
    zones: [...next, kToMark],
  };
}
