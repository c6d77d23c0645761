// Said where a part of the page could not be fetched.
import { words } from "../words/words";

/// The job is in this browser all the same.
export function Missing(props: { readonly again: () => void }) {
  return (
    <p class="row" role="alert">
      {words.trouble.partMissing}
      <button type="button" class="framed" onClick={props.again}>
        {words.trouble.again}
      </button>
    </p>
  );
}
