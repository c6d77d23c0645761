// A bare number is completed where it can mean one thing only, asked about where it can mean two, and never guessed.
import { expect, test } from "vitest";
import { readReply } from "../../engine/glue";
import { kHeightRange, kSideRange, meaningsOf, rangeOf, withUnit } from "../../job/bare";
import { realEngine } from "./real_engine";

const kInch = 25_400_000;
const kFoot = 12 * kInch;
const units = (text: string, tape: "inches" | "millimetres", range = kSideRange[tape]): readonly string[] =>
  meaningsOf(text, tape, range).map((one) => one.unit);

test("24, 20 and 8 of an inch job may be feet or inches", () => {
  expect(units("24", "inches")).toEqual(["feet", "inches"]);
  expect(units("20", "inches")).toEqual(["feet", "inches"]);
  expect(units("8", "inches", kHeightRange.inches)).toEqual(["feet", "inches"]);
});

test("what can be one thing only is that thing: by its range, not by its look", () => {
  expect(withUnit("8", "inches", kSideRange.inches, undefined)).toBe("8'"); // 8 in is shorter than a block
  expect(withUnit("336", "inches", kSideRange.inches, undefined)).toBe('336"'); // 336 ft is longer than any side here
  expect(withUnit("96", "inches", kHeightRange.inches, undefined)).toBe('96"');
  expect(withUnit("7200", "millimetres", kSideRange.millimetres, undefined)).toBe("7200 mm");
  expect(withUnit("7.2", "millimetres", kSideRange.millimetres, undefined)).toBe("7.2 m");
  // Centimetres may be meant: the engine asks.
  expect(withUnit("720", "millimetres", kSideRange.millimetres, undefined)).toBe("720");
  expect(withUnit("2400", "millimetres", kHeightRange.millimetres, undefined)).toBe("2400 mm");
});

test("the chosen unit is written; none chosen, none is guessed", () => {
  expect(withUnit(" 24 ", "inches", kSideRange.inches, "feet")).toBe("24'");
  expect(withUnit("24", "inches", kSideRange.inches, "inches")).toBe('24"');
  expect(withUnit("24", "inches", kSideRange.inches, undefined)).toBeUndefined();
});

test("a text that says its unit, a fraction of an inch, nothing and nonsense stay as they are", () => {
  for (const text of ["24'", '288"', "7.2 m", "335 5/8", "0", "", "long", "-3", "1e3"])
    expect(withUnit(text, "inches", kSideRange.inches, undefined)).toBe(text);
});

test("an opening's sizes are judged by its side and its wall", () => {
  const around = { side: 28 * kFoot, wall: 9 * kFoot };
  const of = (name: string, text: string): readonly string[] =>
    meaningsOf(text, "inches", rangeOf(name, around, "inches") ?? kSideRange.inches).map((one) => one.text);
  expect(of("width", "40")).toEqual(['40"']); // 40 ft is longer than the side
  expect(of("width", "4")).toEqual(["4'"]);
  expect(of("width", "12")).toEqual(["12'", '12"']);
  expect(of("height", "88")).toEqual(['88"']);
  expect(of("at", "12")).toEqual(["12'", '12"']);
  expect(of("shim", "1")).toEqual(['1"']);
  expect(rangeOf("courses", around, "inches")).toBeUndefined();
  expect(rangeOf("line_pull", around, "inches")).toBeUndefined();
});

test("the engine reads what is written as that many of that unit", async () => {
  const engine = await realEngine();
  const nominal = (length: string): number | undefined =>
    readReply(engine.ask(JSON.stringify({ border: 1, begin: { length, width: "10 m", height: "2400 mm" }, budget: 0 })))
      .answer?.sides[0]?.nominal.nm;
  const size = { feet: kFoot, inches: kInch, metres: 1_000_000_000, millimetres: 1_000_000 } as const;
  const read = [
    ["24", "inches", "feet"],
    ["24", "inches", "inches"],
    ["14.5", "inches", "feet"],
    ["7.2", "millimetres", "metres"],
    ["7200", "millimetres", "millimetres"],
  ] as const;
  for (const [text, tape, unit] of read) {
    const found = nominal(withUnit(text, tape, kSideRange[tape], unit) ?? "");
    expect(found, `${text} ${unit}`).toBe(Number(text) * size[unit]);
  }
});
