// The zone that people keep out of beside walls without their final support: folded, drawn when it is opened.
import { useSignalEffect } from "@preact/signals";
import { Fold } from "../parts/Fold";
import { shown } from "../state/signals";
import { seekZoneDrawing, zoneDrawn } from "../state/top";
import { words } from "../words/words";
import { PaperBox } from "./PaperBox";

const w = words.zone;

function Plan() {
  useSignalEffect(seekZoneDrawing);
  return <PaperBox {...zoneDrawn.value} label={w.plan} />;
}

export function Zone() {
  const zone = shown.value?.answer.access_zone;
  if (zone === undefined) return null;
  return (
    <section class="result whole" aria-label={w.label}>
      <h3>{w.label}</h3>
      <p>{w.wide(zone.width.text, zone.height.text)}</p>
      <p class="small soft">{w.warns}</p>
      <Fold name="zone" title={w.plan}>
        {() => <Plan />}
      </Fold>
    </section>
  );
}
