// Where one begins: whom the page serves and what comes out, a building of one's own, a file, the example; and the jobs that
// are on this device.
import { Ink } from "../draw/Ink";
import { openFile } from "../state/job_files";
import { jobName, openExample } from "../state/keeping";
import { goTo } from "../state/point";
import { beginShow } from "../state/showing";
import { isExample, shown } from "../state/signals";
import { words } from "../words/words";
import { Begin } from "./Begin";
import { firstDrawing } from "./first_screen";
import { Jobs } from "./Jobs";

const w = words.start;

/// The example as the page draws it; nothing where another job lies on the table. Until the engine has drawn it, the
/// drawing that the page came with.
function Example() {
  if (!isExample.value) return null;
  const svg = shown.value?.plan?.svg ?? firstDrawing();
  return (
    <figure class="example">
      <div class="picture">{svg === "" ? null : <Ink svg={svg} chosen={undefined} later={false} />}</div>
      <figcaption class="small soft">{w.pictured}</figcaption>
    </figure>
  );
}

function look(): void {
  if (!isExample.value) void openExample();
  goTo("order");
}

export function Start() {
  return (
    <article class="sheet start" aria-labelledby="start-title">
      <div class="frame">
        <div class="start-head">
          <div>
            <h2 id="start-title" tabIndex={-1}>
              {w.lead}
            </h2>
            {isExample.value ? null : (
              <p class="row">
                <a class="button framed" href="#order">
                  {w.back}: {jobName()}
                </a>
              </p>
            )}
            <section aria-label={w.choice}>
              <h3>{w.sizes}</h3>
              <Begin />
              <div class="row choices">
                <button type="button" class="framed" onClick={() => void beginShow()}>
                  {w.show}
                </button>
                <button type="button" class="framed" onClick={look}>
                  {w.example}
                </button>
                <button type="button" class="framed" onClick={() => void openFile()}>
                  {w.file}
                </button>
                <span class="small soft">{words.jobs.drop}</span>
              </div>
            </section>
          </div>
          <Example />
        </div>
        <Jobs />
      </div>
    </article>
  );
}
