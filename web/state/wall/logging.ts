// What is entered at the wall goes into the log, and is struck there or counts again.
import { signal } from "@preact/signals";
import { type LaidListed, laidOf, lastLaid, lastStruck } from "../../job/laid";
import { words } from "../../words/words";
import { sameTable } from "../changing";
import { bringBack, enterAllLaid, enterLaid } from "../logs";
import { job, tape } from "../signals";
import { entryBody, kindWords, stepsIn } from "./entries";
import { toFace } from "./going";
import { course, said } from "./hearing";
import { siteOf } from "./site";
import { type Entering, putState, wallState } from "./step";
import { written } from "./written";

/// Entries on their way into the log: until they are there, no other one is begun.
export const entering = signal(0);

/// Enters something while nothing else can be touched; hands back what `enter` does.
export async function alone<T>(enter: () => Promise<T>): Promise<T> {
  entering.value += 1;
  try {
    return await enter();
  } finally {
    entering.value -= 1;
  }
}

export async function log(entry: Entering): Promise<void> {
  const site = siteOf(entry.kind, entry.pick, entry.mark);
  const { kind } = entry;
  if ((kind === "mark" || kind === "gap") && site.markText === "") {
    said.value = words.wall.markGone;
    return toFace();
  }
  const { side, course: number, by } = wallState.value;
  const same = sameTable();
  const done = await alone(async () => {
    const texts = await written(stepsIn(entry, site));
    if (!same()) return { refused: "" };
    if (texts === undefined) return { refused: words.trouble.fault };
    return enterLaid(entryBody(entry, site, texts), by, `${side}-${number} ${kindWords(kind, site.tape)}`);
  });
  if (done.id === undefined) {
    said.value = done.refused ?? words.trouble.fault;
    return;
  }
  said.value = "";
  if (kind === "mark") toFace("joints");
  else putState({ place: { screen: "told", kind, id: done.id } });
}

function whatIs(one: LaidListed): string {
  return kindWords(one.kind, tape.value);
}

export async function strikeLast(): Promise<void> {
  const last = lastLaid(job.value);
  if (last === undefined) {
    said.value = words.wall.nothingToUndo;
    return;
  }
  const done = await alone(() => enterLaid({ strike: last.id }, wallState.value.by, whatIs(last)));
  said.value = done.id === undefined ? (done.refused ?? "") : words.wall.undone(whatIs(last));
  toFace();
}

export async function bringLastBack(): Promise<void> {
  const last = lastStruck(job.value);
  if (last === undefined) return;
  await alone(() => bringBack("/laid", last.id, whatIs(last)));
  said.value = words.wall.redone(whatIs(last));
  toFace();
}

export async function courseLaid(): Promise<void> {
  const { side, course: number, by } = wallState.value;
  const done = await alone(() => enterLaid({ laid: { on: side, course: number } }, by, `${side}-${number}`));
  said.value = done.refused ?? "";
  toFace();
}

/// The units that had to come up are up: what was read at their marks no longer counts.
export async function unitsLifted(): Promise<void> {
  const now = course.value?.course;
  const run = now?.runs[now.run];
  const again = run?.next.again ?? run?.next.instead?.again;
  if (now === undefined || run === undefined || again === undefined) return;
  const stay = run.laid - again;
  const marks = now.marks.filter((mark) => mark.run === now.run).slice(stay);
  const entries = new Set(marks.flatMap((mark) => mark.entries ?? []));
  const strikes = laidOf(job.value).filter((one) => entries.has(one.index));
  const done = await alone(() =>
    enterAllLaid(
      strikes.map((one) => ({ strike: one.id })),
      wallState.value.by,
      words.steps.unlaid(words.wall.marksOf(now.name)),
    ),
  );
  said.value = done.refused ?? "";
  toFace();
}
