// What fields, parts and choices are called in words, and which names of the building a text may be.
import { type FormField, partNamed, whenEmpty } from "../../job/form";
import { textAt } from "../../job/pointer";
import type { Tape } from "../../job/tape";
import { entriesAt } from "../../state/form";
import { corners, shown, sides } from "../../state/signals";
import { formWords } from "../../words/form_words";
import { words } from "../../words/words";

export function labelOf(part: string, name: string): string {
  return formWords.labels[`${part}.${name}`] ?? formWords.labels[name] ?? name.replaceAll("_", " ");
}

export function choiceName(value: string): string {
  return formWords.choices[value] ?? words.kinds[value] ?? value;
}

const openingNames = (): readonly string[] => shown.value?.answer.openings.map((one) => one.name) ?? [];
const seriesNames = (): readonly string[] => [
  ...Object.keys(words.series),
  ...entriesAt("/units/own_series").map((one) => textAt(one, "/id")),
];

const articles = () => shown.value?.answer.order?.articles ?? [];

/// Names that the building has and a text may be; undefined where any text may be.
export function namesFor(part: string, name: string): readonly string[] | undefined {
  if (part !== "outline" && (name === "on" || name === "off")) return sides.value.map((side) => side.name);
  if (part === "tape_reading" && (name === "from" || name === "to")) return corners.value;
  if (part === "place" && name === "from") return [...corners.value, "start", "end"];
  if (/_reading$/.test(part) && name === "from") return corners.value;
  if (part === "ground" && name === "hold") return corners.value;
  if (name === "series") return seriesNames();
  if (part === "article_price" && name === "article") return articles().map((one) => one.id);
  return part === "found_place" && name === "opening" ? openingNames() : undefined;
}

/// What a name is shown as: a series by its title, an article of the order as the list has it.
export function nameShown(name: string, value: string): string {
  if (name === "article") return articles().find((one) => one.id === value)?.name ?? value;
  return name === "series" ? (words.series[value] ?? value) : value;
}

/// Parts of which the schema wants exactly one.
export function kindsOf(part: string): readonly string[] {
  const { one, fields } = partNamed(part);
  return fields.filter((field) => field.kind === "part" && one.includes(field.name)).map((field) => field.name);
}

const kTruths: Readonly<Record<string, string>> = { true: formWords.yes, false: formWords.no };

/// What stands where a field is left empty, in words.
export function standsFor(field: FormField, tape: Tape): string {
  const said = whenEmpty(field, tape);
  return kTruths[said] ?? said;
}

/// What the schema says of a field, as a form says it: a document lacks a field, a person leaves it empty.
export function helpOf(field: FormField, tape: Tape): string {
  const lead = field.help.startsWith("Absent") ? "" : ". ";
  return field.help.replace(/(?:^Absent|;? absent): [^.;]+/, () => `${lead}${formWords.empty(standsFor(field, tape))}`);
}
