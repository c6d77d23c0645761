// What was seen at a course: a note, and the names of photos. The photos stay where they are.
import { signal } from "@preact/signals";
import { useEffect, useRef } from "preact/hooks";
import { pickNames } from "../keep";
import { onceAtATime } from "../state/changing";
import { enterLaid } from "../state/logs";
import { readOnly, shown, sides } from "../state/signals";
import { about, noteWanted } from "../state/wall/remark";
import { wallState } from "../state/wall/step";
import { words } from "../words/words";

const w = words.wall;
const refused = signal("");

function change(part: Partial<typeof about.value>): void {
  about.value = { ...about.value, ...part };
}

/// The one that was chosen, if the building has it.
function sideNow(): string {
  const names = sides.value.map((one) => one.name);
  return names.includes(about.value.side) ? about.value.side : (names[0] ?? "");
}

const enterRemark = onceAtATime(async (): Promise<void> => {
  const { course, note, photos } = about.value;
  const on = sideNow();
  const body = {
    remark: { on, course },
    ...(note.trim() === "" ? {} : { note: note.trim() }),
    ...(photos.length === 0 ? {} : { photos }),
  };
  const done = await enterLaid(body, wallState.value.by, `${on}-${course} ${w.seen}`);
  if (done.id !== undefined) change({ note: "", photos: [] });
  refused.value = done.refused ?? "";
});

export function Remark() {
  const { course, note, photos } = about.value;
  const field = useRef<HTMLInputElement>(null);
  const wanted = noteWanted.value;
  useEffect(() => {
    if (!wanted) return;
    noteWanted.value = false;
    field.current?.scrollIntoView({ block: "center" });
    field.current?.focus({ preventScroll: true });
  }, [wanted]);
  const courses = (shown.value?.answer.courses ?? []).map((_, index) => index + 1);
  return (
    <form
      class="result remark"
      onSubmit={(event) => {
        event.preventDefault();
        void enterRemark();
      }}
    >
      <h3>{w.remark}</h3>
      <div class="row ends">
        <label class="field">
          <span>{w.side}</span>
          <select value={sideNow()} onChange={(event) => change({ side: event.currentTarget.value })}>
            {sides.value.map((one) => (
              <option key={one.name} value={one.name}>
                {one.name}
              </option>
            ))}
          </select>
        </label>
        <label class="field">
          <span>{w.courseOf}</span>
          <select value={course} onChange={(event) => change({ course: Number(event.currentTarget.value) })}>
            {courses.map((one) => (
              <option key={one} value={one}>
                {one}
              </option>
            ))}
          </select>
        </label>
        <label class="field note">
          <span>{w.note}</span>
          <input
            ref={field}
            maxLength={400}
            autocomplete="off"
            value={note}
            onInput={(event) => change({ note: event.currentTarget.value })}
          />
        </label>
        <button
          type="button"
          class="framed"
          disabled={readOnly.value}
          onClick={() => void pickNames("image/*").then((names) => change({ photos: names }))}
        >
          {w.photos}
        </button>
        <button type="submit" class="framed" disabled={readOnly.value || (note.trim() === "" && photos.length === 0)}>
          {w.enterRemark}
        </button>
      </div>
      <p class="small soft">{photos.length === 0 ? w.photosHint : photos.join(", ")}</p>
      {refused.value === "" ? null : (
        <p class="small" role="alert">
          {refused.value}
        </p>
      )}
    </form>
  );
}
