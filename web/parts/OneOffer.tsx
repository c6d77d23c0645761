// One offer with its button: in the margin, and beside the finding that it mends.
import type { Offer } from "../engine/contract";
import { takeOffer } from "../state/building";
import { readOnly } from "../state/signals";
import { words } from "../words/words";

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
