// Which parts of the page are unfolded.
import { signal } from "@preact/signals";

/// Folds that are open, by their names; at first those that a hold point asks about.
export const unfolded = signal<ReadonlySet<string>>(
  new Set(["grout pours", "grout flat", "top beams", "lintels lintels", "pour bars"]),
);

export function fold(name: string, open: boolean): void {
  if (unfolded.value.has(name) === open) return;
  const next = new Set(unfolded.value);
  if (open) next.add(name);
  else next.delete(name);
  unfolded.value = next;
}
