// The screen as it stands now, and what a touch of it does.
import { computed } from "@preact/signals";
import { lastLaid, lastStruck } from "../job/laid";
import { job, readOnly, tape } from "../state/signals";
import type { Act } from "../state/wall/acts";
import { dayNow, now } from "../state/wall/clock";
import { toFace } from "../state/wall/going";
import { whensOf } from "../state/wall/grouting";
import { course, entryNow, failed, said, waiting } from "../state/wall/hearing";
import { nextMark } from "../state/wall/marks";
import { answer, jambs, questionsFor } from "../state/wall/site";
import { wallState } from "../state/wall/step";
import { act, isReady } from "../state/wall/touch";
import { textOf } from "../state/wall/written";
import { words } from "../words/words";
import { sayAloud } from "./aloud";
import { awake } from "./awake";
import type { Known, Screen } from "./screen";
import { screenOf } from "./screens";

const known = computed<Known>(() => {
  const entry = entryNow();
  return {
    state: wallState.value,
    tape: tape.value,
    course: course.value,
    answer: answer.value,
    question: entry === undefined ? undefined : questionsFor(entry)[entry.at],
    written: (steps) => textOf(steps) ?? "…",
    jambs: jambs.value,
    waiting: waiting.value,
    failed: failed.value,
    whens: wallState.value.place.screen === "grout" ? whensOf() : [],
    now: wallState.value.place.screen === "grout" ? now.value : 0,
    today: wallState.value.place.screen === "day" ? dayNow() : "",
    undoable: lastLaid(job.value) !== undefined,
    redoable: lastStruck(job.value) !== undefined,
    awake: awake.value,
    readOnly: readOnly.value,
    said: said.value,
  };
});

export const screen = computed<Screen>(() => screenOf(known.value));

function speak(): void {
  const faces = (["mark", "joints"] as const).map((face) =>
    screenOf({ ...known.value, state: { ...wallState.value, place: { screen: "face", face } } }),
  );
  const [mark, joints] = faces;
  const next =
    nextMark(course.value?.course) === undefined ? "" : `. ${words.wall.nextJoints}: ${joints?.number ?? ""}`;
  said.value = sayAloud(`${mark?.lead ?? ""}. ${mark?.number ?? ""}${next}`) ? "" : words.wall.noVoice;
  toFace();
}

export function touch(what: Act): void {
  if (what.do !== "aloud") act(what);
  else if (isReady(what)) speak();
}
