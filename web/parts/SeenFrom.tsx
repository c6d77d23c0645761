// Whether elevations are seen from outside or from inside the building.
import { seeFrom } from "../state/seeing";
import { fromInside } from "../state/signals";
import { words } from "../words/words";

export function SeenFrom() {
  const inside = fromInside.value;
  return (
    <button type="button" class="seen-from" onClick={() => seeFrom(!inside)}>
      {inside ? words.drawing.seeOutside : words.drawing.seeInside}
    </button>
  );
}
