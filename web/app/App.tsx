// The table: a head, the building's sheet, and further sheets below it.
import { signal, useSignal } from "@preact/signals";
import { useEffect } from "preact/hooks";
import type { Offline } from "../offline";
import { chooseLook, look } from "../look/theme";
import { redoable, undoable } from "../job/history";
import { Solid } from "../solid/Solid";
import { AtWall } from "../wall/AtWall";
import { wallState } from "../wall/state";
import { Wall } from "../wall/Wall";
import { words } from "../words/words";
import { redo, undo } from "./actions";
import { Begin } from "./Begin";
import { Cautions, Counts } from "./Counts";
import { Ground } from "./Ground";
import { InHand } from "./InHand";
import { Jobs } from "./Jobs";
import { jobName } from "./keeping";
import { Notices } from "./Notices";
import { Offers } from "./Offers";
import { FindPiece, PieceCard } from "./PieceCard";
import { Sheets } from "./Sheets";
import { history, inHand, readOnly, refusals, said, shown, trouble } from "./state";
import { StateLine } from "./StateLine";
import { Strip } from "./Strip";
import { TitleBlock } from "./TitleBlock";
import { ElevationView, PlanView } from "./Views";

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
      <a class="button skip" href="#building">
        {words.contents.skip}
      </a>
      <h1>{words.product}</h1>
      <div class="head-tools">
        <UndoRedo />
        <LookChoice />
      </div>
      <nav class="contents" aria-label={words.contents.label}>
        {(["building", "ground", "wall", "units", "sheets", "jobs"] as const).map((id) => (
          <a class="button" key={id} href={`#${id}`}>
            {words.contents[id]}
          </a>
        ))}
      </nav>
    </header>
  );
}

/// What is selected stands beside the drawing, or right under it, so that its fields and the drawing are seen together.
function Margin() {
  const chosen = inHand.value !== "";
  return (
    <div class="margin">
      <TitleBlock />
      {chosen ? <InHand key="selected" /> : null}
      <PieceCard />
      <Offers />
      {chosen ? null : <InHand key="building" />}
    </div>
  );
}

function Beside() {
  return (
    <>
      <Margin />
      <ElevationView />
      <div class="schedule">
        <Counts />
        <FindPiece />
        <Cautions />
      </div>
    </>
  );
}

function Building() {
  return (
    <section class="sheet" id="building" aria-label={words.contents.building}>
      <div class="frame">
        <Begin />
        <Strip />
        <div class="spread">
          <PlanView />
          {rest.value ? <Beside /> : null}
        </div>
      </div>
    </section>
  );
}

/// The plan comes first, whatever stands beside and below it a moment later, so that a slow phone answers in between.
const rest = signal(false);

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
    <>
      <section class="sheet empty" id="building" aria-label={words.contents.building} aria-busy="true">
        {long.value ? (
          <p class="row" role="status">
            {words.jobs.working(jobName())}
            <a class="button" href="#jobs">
              {words.jobs.others}
            </a>
          </p>
        ) : null}
      </section>
      {long.value ? <Jobs /> : null}
    </>
  );
}

/// Nothing lies on the table before the first drawing is there, so that nothing jumps.
function Table() {
  const known = shown.value !== undefined || refusals.value !== undefined || trouble.value !== undefined;
  useEffect(() => {
    if (known) setTimeout(() => (rest.value = true), 0);
  }, [known]);
  if (!known) return <Awaited />;
  return (
    <>
      <Building />
      {rest.value ? (
        <>
          <Ground />
          <Wall />
          <Solid />
          <Sheets />
          <Jobs />
        </>
      ) : null}
    </>
  );
}

export function App(props: { readonly offline: Offline | undefined }) {
  if (wallState.value.open) return <AtWall />;
  return (
    <>
      <Head />
      <main class="page">
        <Notices offline={props.offline} />
        <Table />
      </main>
      <footer class="foot">
        <p>
          {words.cautionWord}: {words.caution}
        </p>
      </footer>
      <StateLine />
      <p class="hidden-words" aria-live="polite">
        {said.value}
      </p>
    </>
  );
}
