// What a field is called in words.
import type { Field } from "../job/fields";
import { words } from "../words/words";

export function fieldName(field: Field): string {
  const name = words.inHand.fields[field.name as keyof typeof words.inHand.fields];
  if (typeof name === "function") return name(field.corner ?? "");
  return name ?? field.name.replaceAll("_", " ");
}
