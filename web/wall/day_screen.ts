// The day's card: what the day brings, where blocks stand, what goes in, what is checked, where to stop. It enters
// nothing: one touch leads on to the course in hand. Pure.
import type { WorkDay } from "../engine/contract";
import { words } from "../words/words";
import { type Known, notes, type Screen, type Zone } from "./screen";

const w = words.wall;
const d = words.wall.day;

/// Of a phone 360 px wide and 640 px high: letters on a row, rows beside the lead, the number and one row of zones.
const kLetters = 30;
const kRows = 11;

function kindsOf(day: WorkDay): string {
  return day.units
    .flatMap((unit) => {
      const kind = words.kinds[unit.kind] ?? unit.kind;
      return [
        ...(unit.whole > 0 ? [`${unit.whole} ${kind}`] : []),
        ...(unit.cut_pieces > 0 ? [d.cutFrom(unit.cut_pieces, kind)] : []),
      ];
    })
    .join(", ");
}

/// In the order in which they are wanted.
export function linesOf(day: WorkDay): readonly string[] {
  return [
    day.weather,
    ...day.works,
    kindsOf(day),
    day.batches === 0 ? "" : d.batches(day.batches),
    ...day.stacked,
    ...day.steel,
    ...day.checks,
    ...day.stop,
    day.brace.length === 0 ? "" : d.brace(day.brace.join(", "), day.zone.text),
  ]
    .filter((line) => line !== "")
    .map((line) => (/[.!?]$/.test(line) ? line : `${line}.`));
}

const rowsOf = (line: string): number => Math.ceil(line.length / kLetters);

/// As many lines on a page as there is room for, one at least.
export function pagesOf(lines: readonly string[], room: number): readonly (readonly string[])[] {
  const pages: string[][] = [];
  let rows = room;
  for (const line of lines) {
    if (pages.length === 0 || rows + rowsOf(line) > room) {
      pages.push([]);
      rows = 0;
    }
    pages.at(-1)?.push(line);
    rows += rowsOf(line);
  }
  return pages;
}

/// "Day 5, today", "Day 6, 2027-05-10".
function dayName(day: WorkDay, today: string): string {
  if (day.date === undefined) return d.numbered(day.number);
  if (day.date === today) return d.today(day.number);
  return day.date < today ? d.late(day.number, day.date) : d.next(day.number, day.date);
}

export function dayScreen(known: Known, page: number): Screen {
  const day = known.answer?.programme?.days[0];
  const onward: Zone = { label: d.onward, act: { do: "face", face: "next" }, first: true };
  if (day === undefined) return { lead: d.card, number: "✓", under: [d.nothing, ...notes(known)], zones: [onward] };
  const said = notes(known);
  const pages = pagesOf(linesOf(day), kRows - said.reduce((rows, line) => rows + rowsOf(line), 0));
  const at = page % Math.max(1, pages.length);
  const further: Zone = { label: w.nextPage, act: { do: "day", page: (at + 1) % Math.max(1, pages.length) } };
  return {
    lead: [dayName(day, known.today), pages.length > 1 ? w.ofAll(at + 1, pages.length) : ""]
      .filter(Boolean)
      .join(" · "),
    number: day.laid === 0 ? "–" : d.blocks(day.laid),
    under: [...(pages[at] ?? []), ...said],
    zones: pages.length > 1 ? [further, onward] : [onward],
  };
}
