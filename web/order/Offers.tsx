// Offers in the margin: small changes that save something, each taken with one tap.
import { signal, useSignal } from "@preact/signals";
import type { RefObject } from "preact";
import { useEffect, useRef } from "preact/hooks";
import { OneOffer } from "../parts/OneOffer";
import { offeredNow, offersComing, offersNow, searching, shown } from "../state/signals";
import { words } from "../words/words";

const kFirst = 4;
const all = signal(false);

/// What offers wait for.
function waitingText(): string {
  if (shown.value?.stage === "hand") return words.offers.waiting;
  return searching.value === undefined ? words.offers.seeking : words.offers.searching;
}

/// On a phone the list keeps the room that it waited in, as long as anything under it may be in reach of a thumb: until it
/// lies below the screen (look/margin.css).
function useHeldRoom(): { readonly room: RefObject<HTMLElement | null>; readonly held: boolean } {
  const room = useRef<HTMLElement>(null);
  const held = useSignal(false);
  const coming = offersComing.value;
  useEffect(() => {
    if (coming) held.value = true;
    if (coming || room.current === null) return;
    const watch = new IntersectionObserver(([seen]) => {
      if (seen !== undefined && !seen.isIntersecting && seen.boundingClientRect.top > 0) held.value = false;
    });
    watch.observe(room.current);
    return () => watch.disconnect();
  }, [coming, held]);
  return { room, held: held.value };
}

export function Offers() {
  const { room, held } = useHeldRoom();
  const offers = offersNow.value;
  const listed = offers === undefined ? [] : all.value ? offers : offers.slice(0, kFirst);
  const more = (offers?.length ?? 0) - kFirst;
  return (
    <section
      class={held ? "block offers held" : "block offers"}
      ref={room}
      aria-label={words.offers.label}
      aria-busy={offersComing.value}
    >
      <h3>{words.offers.label}</h3>
      {offersComing.value ? <p class="small soft passing">{waitingText()}</p> : null}
      {offers?.length === 0 ? (
        <p class="small">{offeredNow.value?.complete === false ? words.offers.noneOfTried : words.offers.none}</p>
      ) : null}
      <ul>
        {listed.map((offer) => (
          <OneOffer key={offer.text} offer={offer} />
        ))}
      </ul>
      {more > 0 ? (
        <button type="button" class="small" aria-expanded={all.value} onClick={() => (all.value = !all.value)}>
          {all.value ? words.offers.fewer : words.offers.more(more)}
        </button>
      ) : null}
    </section>
  );
}
