// The card of one unit: what was tapped, and its neighbours to walk on to.
import { useSignal } from "@preact/signals";
import { showPiece } from "../state/seeing";
import { piece, shown, unknownPiece } from "../state/signals";
import { words } from "../words/words";

function Fact(props: { readonly name: string; readonly children: string }) {
  return (
    <>
      <dt>{props.name}</dt>
      <dd>{props.children}</dd>
    </>
  );
}

function Neighbour(props: { readonly way: string; readonly names: readonly string[] }) {
  const names = props.names.filter((name) => name !== "");
  return (
    <>
      {names.length === 0 ? (
        <button type="button" disabled>
          <small>{props.way}</small>
          {words.piece.edge}
        </button>
      ) : (
        names.map((name) => (
          <button type="button" key={name} onClick={() => void showPiece(name)}>
            <small>{props.way}</small>
            {name}
          </button>
        ))
      )}
    </>
  );
}

/// What was tapped; nothing until then.
export function PieceCard() {
  const card = piece.value;
  if (card === undefined) return null;
  const cells = card.cells.map(
    (cell) =>
      `${cell.from.text} – ${cell.to.text}: ${cell.bar === "" ? words.piece.cellEmpty : words.piece.cellBar(cell.bar)}`,
  );
  return (
    <section class="block unit-card" id="unit" aria-label={words.piece.label} aria-live="polite">
      <h3>{words.piece.label}</h3>
      <h2>{card.name}</h2>
      <p class="small soft">{card.series}</p>
      <dl class="facts">
        <Fact name={words.piece.kind}>{card.kind_words}</Fact>
        <Fact name={words.piece.course}>{String(card.course)}</Fact>
        <Fact name={words.piece.length}>{card.length.text}</Fact>
        <Fact name={words.piece.measuredFrom}>{card.measured_from}</Fact>
        <Fact name={words.piece.from}>{card.from.text}</Fact>
        <Fact name={words.piece.mark}>{card.to.text}</Fact>
        <Fact name={words.piece.joint}>{card.joint.text}</Fact>
        <Fact name={words.piece.cut}>{words.piece.cuts[card.cut] ?? card.cut}</Fact>
        <Fact name={words.piece.cells}>{cells.length === 0 ? words.piece.noCells : cells.join("; ")}</Fact>
      </dl>
      <div class="neighbours">
        <Neighbour way={words.piece.left} names={[card.left]} />
        <Neighbour way={words.piece.right} names={[card.right]} />
        <Neighbour way={words.piece.above} names={card.above} />
        <Neighbour way={words.piece.below} names={card.below} />
      </div>
      <button type="button" onClick={() => (piece.value = undefined)}>
        {words.inHand.done}
      </button>
    </section>
  );
}

function firstName(): string {
  const name = shown.value?.answer.runs?.[0]?.pieces[0]?.[0];
  return typeof name === "string" ? name : words.piece.findExample;
}

/// A unit asked for by its name, for whoever does not tap.
export function FindPiece() {
  const name = useSignal("");
  const look = (event: Event): void => {
    event.preventDefault();
    void showPiece(name.value.trim() === "" ? firstName() : name.value.trim());
  };
  return (
    <section class="block hand" aria-label={words.piece.find}>
      <p class="small soft">{words.piece.nothing}</p>
      <form onSubmit={look}>
        <label class="field">
          <span>{words.piece.find}</span>
          <input
            value={name.value}
            placeholder={firstName()}
            autocomplete="off"
            spellcheck={false}
            maxLength={220}
            onInput={(event) => (name.value = event.currentTarget.value)}
          />
        </label>
        <button type="submit">{words.piece.look}</button>
      </form>
      <p class="small danger" role="status">
        {unknownPiece.value === "" ? "" : words.piece.unknown(unknownPiece.value)}
      </p>
    </section>
  );
}
