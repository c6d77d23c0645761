// Names that had no room on a drawing, by the keys that stand there for them.
import type { DrawingHead } from "../engine/contract";

export function Keys(props: { readonly head: DrawingHead | undefined }) {
  const names = props.head?.names ?? [];
  if (names.length === 0) return null;
  return (
    <ul class="keys small">
      {names.map((one) => (
        <li key={one.key}>
          <b>{one.key}</b> {one.name}
        </li>
      ))}
    </ul>
  );
}
