// The wall on the table: how far the work is, its log, the odds; and the way into the phone view.
import { computed, signal } from "@preact/signals";
import { ElevationView } from "../draw/Views";
import { Zone } from "../draw/Zone";
import type { CourseReply } from "../engine/contract";
import { type LaidListed, laidOf } from "../job/laid";
import { textAt } from "../job/pointer";
import { Forms } from "../parts/form/Forms";
import { PointPage } from "../parts/PointPage";
import { engine } from "../state/engine_port";
import { takeInLog } from "../state/job_files";
import { bringBack, enterLaid } from "../state/logs";
import { history, job, readOnly, shown, tape } from "../state/signals";
import { kindWords } from "../state/wall/entries";
import { openWall } from "../state/wall/going";
import { putState, wallState } from "../state/wall/step";
import { words } from "../words/words";
import { LogEntry } from "./LogEntry";
import { outcomeLines } from "./outcomes";
import { Remark } from "./Remark";

const w = words.wall;
const log = computed(() => [...laidOf(job.value)].reverse());
const laying = computed(() => shown.value?.answer.laying);
const odds = signal<{ readonly job: string; readonly reply: CourseReply } | undefined>(undefined);

/// "-1/8"" as "1/8" short".
function wayOf(text: string, above: string, below: string): string {
  if (/^-?0("| mm)?$/.test(text)) return w.onIt.toLowerCase();
  return text.startsWith("-") ? `${text.slice(1)} ${below}` : `${text} ${above}`;
}

/// Where a reading's mark stands, as the engine writes it in the job's tape; as it was entered where it is unknown.
function markText(one: LaidListed): string {
  const marks = laying.value?.begun.flatMap((course) => course.marks) ?? [];
  return marks.find((mark) => mark.entries?.includes(one.index))?.at.text ?? textAt(one.body, "/at");
}

/// What an entry says, in the words that it was entered with.
function valuesOf(one: LaidListed): string {
  const at = (field: string): string => textAt(one.body, `/${field}`);
  switch (one.kind) {
    case "mark": {
      const read =
        at("read") === "" ? wayOf(at("past"), w.past.toLowerCase(), w.short.toLowerCase()) : w.reads(at("read"));
      return w.atMark(markText(one), read);
    }
    case "units":
      return at("row") === "" ? w.oneByOne : w.dryRow(at("together"), at("row"));
    case "gauge":
      return wayOf(at("high"), w.high.toLowerCase(), w.low.toLowerCase());
    case "gap":
      return w.atMark(at("at"), at("measured"));
    case "set":
      return w.setAs(["near_outer", "near_inner", "far_outer", "far_inner"].map(at).join(", "), at("bed"));
    case "check":
      return [w.checks[at("what")] ?? at("what"), at("off"), at("over") === "" ? "" : w.over(at("over"))]
        .filter((text) => text !== "")
        .join(" ");
    case "found":
      return at("what") === "wall-end"
        ? w.foundCorner(at("at"))
        : w.foundJamb(at("what") === "near-jamb" ? w.near : w.far, at("opening"), at("at"));
    case "grouted":
      return w.atMark(at("at"), w.groutSaid[at("work")] ?? at("work"));
    case "looked_at":
      return w.atMark(at("at"), w.lookedAt[at("what")] ?? at("what"));
    default:
      return "";
  }
}

function whatOf(one: LaidListed): string {
  const on = [textAt(one.body, "/on"), textAt(one.body, "/course")].filter((text) => text !== "").join("-");
  return [on, kindWords(one.kind, tape.value)].filter((text) => text !== "").join(" ");
}

function Entry(props: { readonly one: LaidListed }) {
  const { one } = props;
  const said = one.struck ? [w.struck] : outcomeLines(shown.value?.answer, one.index);
  const what = whatOf(one);
  return (
    <li class={one.struck ? "struck" : ""}>
      <span class="what">{what}</span>
      <span class="value">{valuesOf(one)}</span>
      <span class="small soft">{[...said, one.more, one.when, one.by].filter((text) => text !== "").join(" · ")}</span>
      {readOnly.value ? null : one.struck ? (
        <button
          type="button"
          aria-label={w.countWhat(`${what} ${valuesOf(one)}`)}
          onClick={() => void bringBack("/laid", one.id, what)}
        >
          {words.ground.count}
        </button>
      ) : (
        <button
          type="button"
          aria-label={w.strikeWhat(`${what} ${valuesOf(one)}`)}
          onClick={() => void enterLaid({ strike: one.id }, wallState.value.by, what)}
        >
          {w.strike}
        </button>
      )}
    </li>
  );
}

async function playOdds(): Promise<void> {
  const text = history.value.now.text;
  const index = laying.value?.next_courses.findIndex((next) => next > 0) ?? -1;
  const side = wallState.value.side !== "" ? wallState.value.side : shown.value?.answer.sides[index]?.name;
  const at = shown.value?.answer.sides.findIndex((one) => one.name === side) ?? -1;
  const course = laying.value?.next_courses[at];
  if (side === undefined || course === undefined || course === 0) return;
  try {
    const reply = await engine().search({ border: 1, job: text, course: { side, course, odds: true } });
    if (reply !== "superseded" && reply.course !== undefined) odds.value = { job: text, reply: reply.course };
  } catch {
    odds.value = undefined;
  }
}

const percent = (millionths: number): string => (millionths / 10_000).toFixed(1);

function Odds() {
  const played = odds.value?.job === history.value.now.text ? odds.value.reply : undefined;
  const found = played?.odds;
  return (
    <div class="result">
      <button type="button" class="framed" onClick={() => void playOdds()}>
        {w.odds}
      </button>
      {played === undefined || found === undefined ? null : (
        <div role="status">
          <p class="small">{w.oddsLead(played.course.name, found.units)}</p>
          <ul class="moves">
            {([w.withMarks, w.without] as const).map((label, index) => {
              const one = index === 0 ? found.with_marks : found.without;
              return (
                <li key={label}>
                  <strong>{label}</strong>
                  <span>
                    {w.oddsLine(one.inside, one.courses, percent(one.least_millionths), percent(one.most_millionths))}
                  </span>
                </li>
              );
            })}
          </ul>
          <p class="small soft">{w.spreads(laying.value?.spreads.known ?? "")}</p>
        </div>
      )}
    </div>
  );
}

/// What is not as it was printed, since jambs or corners were found otherwise.
function Changes() {
  const changes = laying.value?.changes ?? [];
  if (changes.length === 0) return null;
  return (
    <div class="result whole">
      <h3>{w.changes}</h3>
      <ul class="moves">
        {changes.map((change) => (
          <li key={change.text}>
            <strong>{change.text}</strong>
            <span class="small">{change.units.join("; ")}</span>
          </li>
        ))}
      </ul>
    </div>
  );
}

function Log() {
  if (log.value.length === 0) return <p class="log">{w.noLog}</p>;
  return (
    <ul class="log" aria-label={w.log}>
      {log.value.map((one) => (
        <Entry key={one.id} one={one} />
      ))}
    </ul>
  );
}

/// The way into the phone view, and how far the work is.
function Begin() {
  const progress = laying.value?.progress;
  return (
    <section class="block">
      <p class="small soft">{w.lead}</p>
      <div class="row ends">
        <button type="button" class="filled large" onClick={openWall}>
          {w.open}
        </button>
        <label class="field initials">
          <span>{w.initials}</span>
          <input
            maxLength={12}
            value={wallState.value.by}
            autocomplete="off"
            spellcheck={false}
            onInput={(event) => putState({ by: event.currentTarget.value })}
          />
        </label>
      </div>
      {progress === undefined ? null : (
        <p>
          {w.progress(progress.laid, progress.units)}{" "}
          {progress.each_day > 0 ? w.pace(progress.days, progress.each_day, progress.days_left) : ""}
        </p>
      )}
    </section>
  );
}

function Fields() {
  return (
    <>
      <Begin />
      <section class="block" data-pointer="/laid">
        <Remark />
        <LogEntry />
        <button type="button" class="framed" disabled={readOnly.value} onClick={() => void takeInLog()}>
          {w.mergeFile}
        </button>
      </section>
      <Forms point="at-the-wall" />
    </>
  );
}

export function Wall() {
  return (
    <PointPage
      point="at-the-wall"
      long
      drawing={<ElevationView />}
      fields={<Fields />}
      more={
        <div id="wall">
          <Changes />
          <Odds />
          <Zone />
          <Log />
        </div>
      }
    />
  );
}
