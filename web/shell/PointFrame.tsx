// The frame of a hold point: its head stands from the start, the rest in it once its part and a drawing have come.
import { useSignal } from "@preact/signals";
import { useEffect } from "preact/hooks";
import { Missing } from "../parts/Missing";
import { jobName } from "../state/keeping";
import { kPoints, type Point } from "../state/point";
import { refusals, shown, trouble } from "../state/signals";
import { leaveWall } from "../state/wall/going";
import { wallState } from "../state/wall/step";
import { words } from "../words/words";
import { fetchPlace, kAtWall, kPages } from "./pages";

function Head(props: { readonly point: Point }) {
  const { point } = props;
  return (
    <header class="point-head">
      <h2 id="point-title" tabIndex={-1}>
        {point === "at-the-wall" ? null : <span class="number">{kPoints.indexOf(point) + 1}</span>}
        {words.points.short[point]}
      </h2>
      <p>{words.points.lead[point]}</p>
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
  return long.value ? (
    <p class="row" role="status">
      {words.jobs.working(jobName())}
      <a class="button" href="#jobs">
        {words.jobs.others}
      </a>
    </p>
  ) : null;
}

export function PointFrame(props: { readonly point: Point }) {
  const { point } = props;
  const part = kPages[point];
  const fetch = (): void => void fetchPlace(point);
  // biome-ignore lint/correctness/useExhaustiveDependencies: once for each point
  useEffect(fetch, [point]);
  const Page = part.view.value;
  // Nothing lies under the head before the first drawing is there, so that nothing jumps.
  const drawn = shown.value !== undefined || refusals.value !== undefined || trouble.value !== undefined;
  const here = drawn && Page !== undefined;
  return (
    <article class="sheet point" id={`point-${point}`} aria-labelledby="point-title" aria-busy={!here}>
      <div class="frame">
        <Head point={point} />
        {here ? (
          <Page />
        ) : (
          <div class="still-room" id="building">
            {part.failed.value ? <Missing again={fetch} /> : <Awaited />}
          </div>
        )}
      </div>
    </article>
  );
}

/// The view at the wall. Until it has come nothing stands on it that a thumb could hit.
export function WallView() {
  const fetch = (): void => void kAtWall.fetch();
  useEffect(fetch, []);
  const View = kAtWall.view.value;
  if (View !== undefined) return <View />;
  return (
    <main class="at-wall" data-light={wallState.value.light} aria-busy="true" aria-label={words.wall.label}>
      {kAtWall.failed.value ? (
        <>
          <Missing again={fetch} />
          <button type="button" class="wall-zone" onClick={leaveWall}>
            {words.wall.leave}
          </button>
        </>
      ) : null}
    </main>
  );
}
