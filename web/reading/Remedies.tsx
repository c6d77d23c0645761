// What can be done where something does not fit: the best first, each with what it takes and gives up, chosen with one tap.
import { type About, chooseNone, chooseRemedy, chosenRemedy } from "../state/remedies";
import { readOnly } from "../state/signals";
import { words } from "../words/words";

const w = words.remedies;

export interface Remedy {
  readonly what: string;
  readonly text: string;
  readonly gives_up: string;
  readonly recommended: boolean;
  /// What it takes, in a few words each.
  readonly takes: readonly string[];
}

function One(props: { readonly about: About; readonly remedy: Remedy; readonly chosen: boolean }) {
  const { about, remedy, chosen } = props;
  return (
    <li class={chosen ? "remedy-choice chosen" : "remedy-choice"}>
      <span class="what">
        {chosen ? <strong>{w.chosen}</strong> : remedy.recommended ? <strong>{w.recommended}</strong> : null}{" "}
        {remedy.text}
      </span>
      <span class="small takes">{remedy.takes.join(" · ")}</span>
      {remedy.gives_up === "" ? null : <span class="small soft">{remedy.gives_up}</span>}
      <button
        type="button"
        class={remedy.recommended && !chosen ? "filled" : "framed"}
        disabled={readOnly.value}
        aria-label={chosen ? w.takeBackLong(remedy.text) : w.doLong(remedy.text)}
        onClick={() => void (chosen ? chooseNone(about) : chooseRemedy(about, remedy.what))}
      >
        {chosen ? w.takeBack : w.doThis}
      </button>
    </li>
  );
}

/// Chosen, but no way that is offered any more.
function Elsewhere(props: { readonly about: About; readonly text: string }) {
  return (
    <li class="remedy-choice chosen">
      <span class="what">
        <strong>{w.chosen}</strong> {props.text}
      </span>
      <button
        type="button"
        class="framed"
        disabled={readOnly.value}
        aria-label={w.takeBackLong(props.text)}
        onClick={() => void chooseNone(props.about)}
      >
        {w.takeBack}
      </button>
    </li>
  );
}

/// `now`: what was chosen, against what is read by now.
export function Remedies(props: {
  readonly about: About;
  readonly remedies: readonly Remedy[];
  readonly now: { readonly text: string; readonly against: string } | undefined;
}) {
  const { about, remedies, now } = props;
  const chosen = chosenRemedy(about);
  const listed = remedies.some((one) => one.what === chosen);
  if (remedies.length === 0 && chosen === "") return null;
  return (
    <div class="remedies" data-pointer={`/ground/${about}_remedy`}>
      <h4>{w.title}</h4>
      {now === undefined || now.against === "" ? null : (
        <p class="trouble" role="alert">
          {now.against}
        </p>
      )}
      <ul class="moves">
        {chosen !== "" && !listed ? <Elsewhere about={about} text={now?.text ?? chosen} /> : null}
        {remedies.map((one) => (
          <One key={one.what} about={about} remedy={one} chosen={one.what === chosen} />
        ))}
      </ul>
      <p class="small soft">{w.order[about]}</p>
    </div>
  );
}
