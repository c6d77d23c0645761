// The units in space: turned by hand, wheel or keys, told in words as well.
import { signal, useSignal, useSignalEffect } from "@preact/signals";
import { useEffect, useRef } from "preact/hooks";
import { look } from "../look/theme";
import { Stepper } from "../parts/Stepper";
import { showPiece } from "../state/seeing";
import { course, history, piece, shown } from "../state/signals";
import { askWhole } from "../state/solving";
import { words } from "../words/words";
import { exceptionsUpTo, type Stock, stocked } from "./stock";
import { turnedBy } from "./turning";
import type { Inks, View } from "./view";

const stock = signal<Stock | undefined>(undefined);

function inks(): Inks {
  const style = getComputedStyle(document.documentElement);
  const read = (name: string): string => style.getPropertyValue(name).trim();
  return {
    paper: read("--paper"),
    unit: read("--unit"),
    tint: read("--tint"),
    grey: read("--grey"),
    ink: read("--ink"),
    soft: read("--ink-soft"),
    chalk: read("--chalk"),
  };
}

async function fetchSolids(text: string): Promise<void> {
  const solved = await askWhole({ job: text, solids: true });
  if (solved?.solids === undefined || history.value.now.text !== text) return;
  stock.value = stocked(solved.solids);
}

function kindWords(kind: string): string {
  return kind === "cut" ? words.tallies.cuts : (words.kinds[kind] ?? kind);
}

function told(): string {
  const now = stock.value;
  if (now === undefined) return "";
  const at = Math.min(course.value, now.unitsUpTo.length - 1);
  const list = [...exceptionsUpTo(now, at)].map(([kind, count]) => `${count} ${kindWords(kind)}`);
  const exceptions = list.length === 0 ? words.solid.noExceptions : words.solid.exceptions(list.join(", "));
  return words.solid.describe(now.unitsUpTo[at] ?? 0, at, exceptions);
}

export function Space() {
  const failed = useSignal(false);
  const canvas = useRef<HTMLCanvasElement>(null);
  const view = useRef<View | undefined>(undefined);
  const ready = useRef(signal(0)).current;

  useEffect(() => {
    let gone = false;
    let watch: ResizeObserver | undefined;
    const open = async (): Promise<void> => {
      const { makeView } = await import("./view");
      if (gone || canvas.current === null) return;
      const made = makeView(canvas.current);
      view.current = made;
      watch = new ResizeObserver(() => made.resize());
      watch.observe(canvas.current);
      made.resize();
      ready.value += 1;
    };
    open().catch(() => (failed.value = true));
    return () => {
      gone = true;
      watch?.disconnect();
      view.current?.end();
    };
  }, [ready, failed]);

  useSignalEffect(() => {
    if (shown.value?.stage === "whole") void fetchSolids(shown.value.text);
  });
  useSignalEffect(() => {
    void ready.value;
    if (stock.value !== undefined) view.current?.lay(stock.value);
  });
  useSignalEffect(() => {
    void ready.value;
    void stock.value;
    view.current?.upTo(course.value);
  });
  useSignalEffect(() => {
    void ready.value;
    void look.value;
    view.current?.ink(inks());
  });
  useSignalEffect(() => {
    void ready.value;
    void stock.value;
    view.current?.choose(piece.value?.name);
  });

  const turning = turnedBy({
    turn: (around, up) => view.current?.turn(around, up),
    nearer: (factor) => view.current?.nearer(factor),
    home: () => view.current?.home(),
    tap: (x, y) => {
      const name = view.current?.unitAt(x, y);
      if (name !== undefined) void showPiece(name);
    },
  });

  if (failed.value) return <p>{words.solid.noGraphics}</p>;
  return (
    <>
      <div class="view-head">
        <Stepper at={words.solid.upTo} />
        <div class="view-tools">
          <button type="button" onClick={() => view.current?.turn(-0.3, 0)}>
            {words.solid.turnLeft}
          </button>
          <button type="button" onClick={() => view.current?.turn(0.3, 0)}>
            {words.solid.turnRight}
          </button>
          <button
            type="button"
            class="sign"
            aria-label={words.solid.farther}
            onClick={() => view.current?.nearer(1 / 1.25)}
          >
            −
          </button>
          <button type="button" class="sign" aria-label={words.solid.nearer} onClick={() => view.current?.nearer(1.25)}>
            +
          </button>
          <button type="button" onClick={() => view.current?.home()}>
            {words.solid.home}
          </button>
        </div>
      </div>
      <div class="space">
        <canvas ref={canvas} tabIndex={0} role="img" aria-label={told()} aria-describedby="space-keys" {...turning} />
      </div>
      <p class="small" aria-live="polite">
        {told()}
      </p>
      <p class="small soft" id="space-keys">
        {words.solid.keys} {words.solid.legend} {words.solid.bars}
      </p>
    </>
  );
}
