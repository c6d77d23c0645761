// The page: a head, the spine, and one hold point, or the place where a job is begun.
import { useEffect, useRef } from "preact/hooks";
import { redoable, undoable } from "../job/history";
import { chooseLook, look } from "../look/theme";
import type { Offline } from "../offline";
import { turns } from "../state/changing";
import { place } from "../state/point";
import { history, offersComing, readOnly, said, shown } from "../state/signals";
import { redo, undo } from "../state/undoing";
import { wallState } from "../state/wall/step";
import { words } from "../words/words";
import { Notices } from "./Notices";
import { PointFrame, WallView } from "./PointFrame";
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
  if (wallState.value.open) return <WallView />;
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
          {place.value === "jobs" ? <Start /> : <PointFrame key={place.value} point={place.value} />}
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
