// The reading that is asked for next: one number to fill in, the rest is known.
import type { NextReading } from "../engine/contract";
import { EntryField } from "../parts/EntryField";
import { words } from "../words/words";
import { lastSetup } from "./last_setup";

const w = words.ground;

function Known(props: { readonly of: Readonly<Record<string, string>> }) {
  return (
    <>
      {Object.entries(props.of).map(([name, value]) => (
        <input type="hidden" key={name} name={name} value={value} />
      ))}
    </>
  );
}

export function LedFields(props: { readonly next: NextReading }) {
  const { next } = props;
  switch (next.what) {
    case "tape":
      return (
        <div class="fields led">
          <Known of={{ from: next.from, to: next.to }} />
          <EntryField name="value" label={w.tapeReads} required />
        </div>
      );
    case "rod":
      return (
        <div class="fields led">
          <Known of={{ station: next.station, on: next.on, at: next.on === "" ? "" : next.at.text }} />
          <EntryField name="value" label={w.rodReads} required />
          <EntryField name="setup" label={w.setup} start={lastSetup.value} required />
        </div>
      );
    case "edge":
      return (
        <div class="fields led">
          <Known of={{ on: next.on, value: next.at.text }} />
          <EntryField name="off" label={w.edgeAt} required />
        </div>
      );
    case "dowel":
      return (
        <div class="fields led">
          <Known of={{ on: next.on }} />
          <EntryField name="value" label={w.dowelAt} required />
          <EntryField name="off" label={w.offFace} start={next.expected.text} required />
        </div>
      );
  }
}
