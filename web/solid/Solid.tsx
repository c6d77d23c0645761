// The sheet with the units in space: fetched and opened on wish.
import { signal } from "@preact/signals";
import { Missing } from "../parts/Missing";
import { part } from "../parts/part";
import { words } from "../words/words";

const kSpace = part(async () => (await import("./Space")).Space);
const opened = signal(false);

function open(): void {
  opened.value = true;
  void kSpace.fetch();
}

function Opened() {
  const Space = kSpace.view.value;
  if (Space !== undefined) return <Space />;
  return kSpace.failed.value ? <Missing again={open} /> : <div class="space" aria-busy="true" />;
}

export function Solid() {
  return (
    <section class="solid" id="units" aria-labelledby="units-title">
      <h3 id="units-title">{words.solid.label}</h3>
      {opened.value ? (
        <Opened />
      ) : (
        <div class="row">
          <button type="button" class="filled" onClick={open}>
            {words.solid.open}
          </button>
          <span class="small soft">{words.solid.legend}</span>
        </div>
      )}
    </section>
  );
}
