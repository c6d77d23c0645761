// Which job lies on the table: another one put there, one of one's own begun.
import { batch, effect } from "@preact/signals";
import { begun } from "../job/history";
import { words } from "../words/words";
import { clearTurns } from "./changing";
import { engine } from "./engine_port";
import {
  course,
  history,
  inHand,
  isExample,
  lit,
  offered,
  piece,
  refusals,
  shown,
  sideIndex,
  tried,
  trouble,
  unknownPiece,
} from "./signals";
import { askAtOnce, forgetFieldTrouble, seekOffers, seekWhole, showNow } from "./solving";

/// So long another job's drawing may stand: milliseconds.
const kOtherDrawing = 1_000;

/// A job takes the place of the one on the table.
export function putOnTable(text: string, example: boolean): Promise<void> {
  clearTurns();
  engine().leave();
  batch(() => {
    history.value = begun(text);
    isExample.value = example;
    offered.value = undefined;
    refusals.value = undefined;
    trouble.value = undefined;
    inHand.value = "";
    lit.value = "";
    piece.value = undefined;
    unknownPiece.value = "";
    course.value = 1;
    sideIndex.value = 0;
    forgetFieldTrouble();
  });
  // Another job's drawing stays for a moment, so that nothing flickers; no longer, for it is not this one's.
  const clock = setTimeout(() => {
    if (history.value.now.text === text) shown.value = undefined;
  }, kOtherDrawing);
  return showNow().then(async (drawn) => {
    clearTimeout(clock);
    if (history.value.now.text !== text) return;
    // The drawing that stands is another job's.
    if (!drawn) shown.value = undefined;
    const whole = drawn && (await seekWhole());
    if (history.value.now.text !== text) return;
    tried.value = text;
    if (whole) await seekOffers();
  });
}

export interface Sizes {
  readonly length: string;
  readonly width: string;
  readonly height: string;
  readonly series: string;
}

/// A building of one's own from four sizes. Hands back what was refused.
export async function begin(sizes: Sizes): Promise<string | undefined> {
  const solved = await askAtOnce({ begin: { name: words.begin.name, ...sizes } });
  if (solved === undefined) {
    const text = trouble.value?.kind === "message" ? trouble.value.text : words.trouble.fault;
    trouble.value = undefined;
    return text;
  }
  const first = solved.refusals?.refusals[0];
  if (solved.job === undefined || solved.answer === undefined)
    return `${first?.reason ?? ""} ${first?.remedy ?? ""}`.trim();
  await untilDrawn(solved.job, kOpening.begun(solved.job));
  return undefined;
}

/// Until the job is drawn, or there is nothing more to wait for: what is searched for afterwards keeps nobody.
async function untilDrawn(text: string, begun: Promise<void>): Promise<void> {
  let stop = (): void => undefined;
  const drawn = new Promise<void>((done) => {
    stop = effect(() => {
      if (shown.value?.text === text) done();
    });
  });
  await Promise.race([begun, drawn]);
  stop();
}

/// What keeps jobs hears of new ones here (keeping.ts).
export const kOpening: { begun: (text: string) => Promise<void> } = { begun: (text) => putOnTable(text, false) };
