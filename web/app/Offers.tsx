// Offers in the margin: small changes that save something, each taken with one tap.
import { signal } from "@preact/signals";
import { words } from "../words/words";
import { takeOffer } from "./actions";
import type { Offer } from "./answer";
import { offeredNow, offersComing, offersNow, readOnly, searching, shown } from "./state";

const kFirst = 4;
const all = signal(false);

/// One offer with its button: in the margin, and beside the finding that it mends.
export function OneOffer(props: { readonly offer: Offer }) {
  const { offer } = props;
  return (
    <li class="offer">
      <span>{offer.text}</span>
      <button
        type="button"
        disabled={readOnly.value}
        aria-label={words.offers.acceptLong(offer.text)}
        onClick={() => void takeOffer(offer)}
      >
        {words.offers.accept}
      </button>
    </li>
  );
}

/// What offers wait for.
function waitingText(): string {
  if (shown.value?.stage === "hand") return words.offers.waiting;
  return searching.value === undefined ? words.offers.seeking : words.offers.searching;
}

export function Offers() {
  const offers = offersNow.value;
  const listed = offers === undefined ? [] : all.value ? offers : offers.slice(0, kFirst);
  const more = (offers?.length ?? 0) - kFirst;
  return (
    <section class="block offers" aria-label={words.offers.label} aria-busy={offersComing.value}>
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
