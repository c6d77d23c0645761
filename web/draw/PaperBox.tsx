// A small drawing without handles, and the names that had no room on it; nothing where there is none.
import type { DrawingHead } from "../engine/contract";
import { kLeastLettering, smallestLettering } from "./frame";
import { Ink } from "./Ink";
import { Keys } from "./Keys";

export function PaperBox(props: {
  readonly svg: string;
  readonly head: DrawingHead | undefined;
  /// Its name. Its lettering stays legible on a phone: the frame then scrolls, and is reached by keys.
  readonly label: string;
}) {
  if (props.svg === "") return null;
  const { width = 1, height = 1 } = props.head ?? {};
  const legible = Math.ceil((width * kLeastLettering) / Math.max(smallestLettering(props.svg), 1));
  return (
    <section
      class="paper-box"
      aria-label={props.label}
      // biome-ignore lint/a11y/noNoninteractiveTabindex: a frame that scrolls must be reached by keys
      tabIndex={0}
      style={{ "--legible": `${legible}px`, "--aspect": width / height }}
    >
      <Ink svg={props.svg} chosen={undefined} later={false} />
      <Keys head={props.head} />
    </section>
  );
}
