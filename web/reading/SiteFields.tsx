// What is measured on the slab: edges and dowels on it, rod readings, and the test of the instrument.
import { computed } from "@preact/signals";
import { kPegFields } from "../job/readings";
import { EntryChoice, EntryField } from "../parts/EntryField";
import { corners, shown, sides } from "../state/signals";
import { words } from "../words/words";

/// What dowels stand in from the face by plan: where the next one is likely to be.
const dowelOff = computed(() => shown.value?.answer.dowels?.[0]?.off_face.text ?? "");

/// The corner that a distance is measured from.
function FromCorner() {
  return (
    <EntryChoice
      name="from"
      label={words.ground.fromCorner}
      options={corners.value}
      chosen=""
      none={words.ground.fromStart}
    />
  );
}

export function EdgeFields() {
  return (
    <div class="fields">
      <EntryChoice name="on" label={words.ground.on} options={sides.value.map((side) => side.name)} chosen="" />
      <FromCorner />
      <EntryField name="value" label={words.ground.at} required />
      <EntryField name="off" label={words.ground.beyond} required />
    </div>
  );
}

export function DowelFields() {
  return (
    <div class="fields">
      <EntryChoice name="on" label={words.ground.on} options={sides.value.map((side) => side.name)} chosen="" />
      <FromCorner />
      <EntryField name="value" label={words.ground.dowelAt} required />
      <EntryField name="off" label={words.ground.offFace} start={dowelOff.value} required />
    </div>
  );
}

export function TwoPegFields() {
  return (
    <div class="fields">
      {kPegFields.map((name) => (
        <EntryField key={name} name={name} label={words.ground.pegFields[name] ?? name} required />
      ))}
    </div>
  );
}

export function RodFields() {
  const names = corners.value;
  return (
    <div class="fields">
      <EntryField name="setup" label={words.ground.setup} start="1" required />
      <EntryField name="station" label={words.ground.station} list="stations" required />
      <EntryField name="value" label={words.ground.rodReads} required />
      <EntryChoice
        name="on"
        label={words.ground.on}
        options={sides.value.map((side) => side.name)}
        chosen=""
        none={words.ground.atCorner}
      />
      <FromCorner />
      <EntryField name="at" label={words.ground.at} />
      <EntryChoice
        name="surface"
        label={words.ground.surface}
        options={["floor", "other", "top"]}
        chosen=""
        none={words.ground.bearing}
      />
      <EntryField name="sight" label={words.ground.sight} />
      <datalist id="stations">
        {["datum", ...names].map((one) => (
          <option key={one} value={one} />
        ))}
      </datalist>
    </div>
  );
}
