// The boxes of the inspection list: a tick is an entry of the laid log, and taking it out strikes that.
import type { WholeAnswer } from "../engine/contract";
import { laidOf } from "../job/laid";
import { Fold } from "../parts/Fold";
import { enterLaid } from "../state/logs";
import { job, readOnly } from "../state/signals";
import { wallState } from "../state/wall/step";
import { words } from "../words/words";

const w = words.grout;

type Look = WholeAnswer["inspection"][number];
type Line = Look["lines"][number];

const keyOf = (line: Line): string => `${line.what} ${line.on} ${line.course} ${line.at.nm} ${line.of}`;

function nameOf(look: Look, line: Line): string {
  const name = look.bars[line.of]?.short_name ?? "";
  switch (line.what) {
    case "bar":
      return w.boxBar(name);
    case "cleanout":
      return w.boxCleanout(name);
    case "floor":
      return w.boxFloor(name, line.course);
    case "beam":
      return w.boxBeam(line.course);
    case "lintel":
      return w.boxLintel(line.course);
  }
}

/// Boxes whose tap is on its way into the log: another one meanwhile is the same tap.
const onTheirWay = new Set<string>();

async function turn(line: Line, what: string): Promise<void> {
  const key = keyOf(line);
  if (onTheirWay.has(key)) return;
  onTheirWay.add(key);
  try {
    await enterTick(line, what);
  } finally {
    onTheirWay.delete(key);
  }
}

async function enterTick(line: Line, what: string): Promise<void> {
  const { by } = wallState.value;
  const ticked = laidOf(job.value).find((one) => one.index === line.ticked_by);
  const body =
    ticked === undefined
      ? { looked_at: { what: line.what, on: line.on, course: line.course, at: line.at.text } }
      : { strike: ticked.id };
  await enterLaid(body, by, what);
}

function Box(props: { readonly look: Look; readonly line: Line }) {
  const { look, line } = props;
  const entry = laidOf(job.value).find((one) => one.index === line.ticked_by);
  const name = nameOf(look, line);
  return (
    <label class="box">
      <input
        type="checkbox"
        checked={line.ticked_by !== undefined}
        disabled={readOnly.value}
        onChange={() => void turn(line, `${line.on} ${name}`)}
      />
      <span>{name}</span>
      {entry === undefined ? null : <span class="small soft">{w.tickedBy(entry.when, entry.by)}</span>}
    </label>
  );
}

/// The boxes of one pour, side by side of the building.
export function Boxes(props: { readonly look: Look; readonly number: number }) {
  const { look, number } = props;
  const sides = [...new Set(look.lines.map((line) => line.on))];
  const ticked = look.lines.filter((line) => line.ticked_by !== undefined).length;
  return (
    <Fold name={`boxes ${number}`} title={`${w.boxes}: ${w.boxesOf(ticked, look.lines.length)}`}>
      {() =>
        sides.map((side) => (
          <fieldset class="boxes" key={side}>
            <legend>{w.inSide(side)}</legend>
            {look.lines
              .filter((line) => line.on === side)
              .map((line) => (
                <Box key={keyOf(line)} look={look} line={line} />
              ))}
          </fieldset>
        ))
      }
    </Fold>
  );
}
