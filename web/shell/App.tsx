// The page: a head, the spine, and one hold point, or the place where a job is begun.
import { useSignal } from "@preact/signals";
import type { FunctionComponent } from "preact";
import { useEffect, useRef } from "preact/hooks";
import { FirstCourse } from "../first_course/FirstCourse";
import { Grout } from "../grout/Grout";
import { redoable, undoable } from "../job/history";
import { Lintels } from "../lintels/Lintels";
import { chooseLook, look } from "../look/theme";
import type { Offline } from "../offline";
import { Order } from "../order/Order";
import { Pour } from "../pour/Pour";
import { jobName } from "../state/keeping";
import { place, type Point } from "../state/point";
import { turns } from "../state/changing";
import { history, offersComing, readOnly, refusals, said, shown, trouble } from "../state/signals";
import { redo, undo } from "../state/undoing";
import { wallState } from "../state/wall/step";
import { Top } from "../top/Top";
import { AtWall } from "../wall/AtWall";
import { Wall } from "../wall/Wall";
import { words } from "../words/words";
import { Notices } from "./Notices";
import { ShowMe } from "./ShowMe";
import { Spine } from "./Spine";
import { Start } from "./Start";
import { StateLine } from "./StateLine";

function UndoRedo() {
  const back = undoable(history.value);
  const forth = redoable(history.value);
  return (
    <>
      <button
        type="button"
        disabled={back === undefined || readOnly.value}
        title={back === undefined ? words.undo.nothing : words.undo.undoWhat(back)}
        onClick={undo}
      >
        {words.undo.undo}
      </button>
      <button
        type="button"
        disabled={forth === undefined || readOnly.value}
        title={forth === undefined ? words.undo.nothingRedo : words.undo.redoWhat(forth)}
        onClick={redo}
      >
        {words.undo.redo}
      </button>
    </>
  );
}

function LookChoice() {
  const dark = look.value === "dark";
  return (
    <button
      type="button"
      aria-label={dark ? words.look.toLight : words.look.toDark}
      onClick={() => chooseLook(dark ? "light" : "dark")}
    >
      {dark ? words.look.light : words.look.dark}
    </button>
  );
}

function Head() {
  return (
    <header class="head">
      <button type="button" class="skip" onClick={() => document.getElementById("work")?.focus()}>
        {words.contents.skip}
      </button>
      <h1>{words.product}</h1>
      <div class="head-tools">
        <UndoRedo />
        <a class="button" href="#jobs" aria-current={place.value === "jobs" ? "page" : undefined}>
          {words.contents.jobs}
        </a>
      </div>
    </header>
  );
}

/// After so long without a drawing it is said what is being waited for: milliseconds.
const kLong = 3_000;

/// The first drawing is still being worked out. The other jobs can be had meanwhile: one that takes for ever, or ends in a
/// fault, keeps nobody from them.
function Awaited() {
  const long = useSignal(false);
  useEffect(() => {
    const clock = setTimeout(() => (long.value = true), kLong);
    return () => clearTimeout(clock);
  }, [long]);
  return (
    <section class="sheet empty" id="building" aria-label={words.points.short["order"]} aria-busy="true">
      {long.value ? (
        <p class="row" role="status">
          {words.jobs.working(jobName())}
          <a class="button" href="#jobs">
            {words.jobs.others}
          </a>
        </p>
      ) : null}
    </section>
  );
}

const kPages: Readonly<Record<Point, FunctionComponent>> = {
  order: Order,
  pour: Pour,
  "first-course": FirstCourse,
  lintels: Lintels,
  grout: Grout,
  top: Top,
  "at-the-wall": Wall,
};

/// Nothing lies on the table before the first drawing is there, so that nothing jumps.
function Here() {
  if (place.value === "jobs") return <Start />;
  const known = shown.value !== undefined || refusals.value !== undefined || trouble.value !== undefined;
  if (!known) return <Awaited />;
  const Page = kPages[place.value];
  return <Page />;
}

/// Another place begins at its top, and is read out from its heading.
function useBeginnings(): void {
  const first = useRef(true);
  const now = place.value;
  // biome-ignore lint/correctness/useExhaustiveDependencies: it follows the place
  useEffect(() => {
    if (first.current) {
      first.current = false;
      return;
    }
    scrollTo({ top: 0, behavior: "instant" });
    document.querySelector<HTMLElement>("main h2[tabindex]")?.focus({ preventScroll: true });
  }, [now]);
}

export function App(props: { readonly offline: Offline | undefined }) {
  useBeginnings();
  if (wallState.value.open) return <AtWall />;
  return (
    <>
      <div class="top">
        <Head />
        <StateLine />
      </div>
      <div class="page">
        <Spine />
        <main
          id="work"
          tabIndex={-1}
          data-stage={shown.value?.stage ?? ""}
          data-turns={turns}
          data-offers={offersComing.value ? "coming" : "there"}
        >
          <Notices offline={props.offline} />
          <Here />
          <footer class="foot">
            <p>
              {words.cautionWord}: {words.caution}
            </p>
            <LookChoice />
          </footer>
        </main>
      </div>
      <ShowMe />
      <p class="hidden-words" aria-live="polite">
        {said.value}
      </p>
    </>
  );
}
