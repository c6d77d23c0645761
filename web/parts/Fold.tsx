// A part of the page that is unfolded on wish; what it holds is made only then.
import type { ComponentChildren } from "preact";
import { fold, unfolded } from "../state/folds";

export function Fold(props: {
  readonly name: string;
  readonly title: string;
  readonly said?: string;
  readonly children: () => ComponentChildren;
}) {
  const open = unfolded.value.has(props.name);
  return (
    <details
      class="fold"
      data-fold={props.name}
      open={open}
      onToggle={(event) => fold(props.name, event.currentTarget.open)}
    >
      <summary>
        <span class="fold-title">{props.title}</span>
        {props.said === undefined || props.said === "" ? null : <span class="small soft">{props.said}</span>}
      </summary>
      {open ? <div class="fold-body">{props.children()}</div> : null}
    </details>
  );
}
