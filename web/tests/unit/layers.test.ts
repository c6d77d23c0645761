// The page's folders stand on each other as layers.txt says: no file imports what its folder is not given, and nothing is
// given that no file imports.
import { existsSync, readdirSync, readFileSync } from "node:fs";
import { dirname, join, normalize, sep } from "node:path";
import { expect, test } from "vitest";

const kPage = new URL("../..", import.meta.url).pathname;
/// Folders that hold no part of the page.
const kNotOfThePage = new Set(["dist", "node_modules", "public", "test-results", "tests", "tools"]);

type Given = ReadonlyMap<string, readonly string[]>;

function layersIn(text: string): Given {
  const lines = text.split("\n").filter((line) => /^[a-z]/.test(line));
  return new Map(lines.map((line) => line.trim().split(/\s+/)).map(([folder = "", ...under]) => [folder, under]));
}

/// Paths that a file names: imported, fetched later, made a worker of.
function pathsIn(source: string): readonly string[] {
  const kNamed = /(?:\bfrom\s+|\bimport\s+|\bimport\(\s*|new URL\(\s*)"(\.[^"]*)"/g;
  return [...source.matchAll(kNamed)].map((found) => found[1] ?? "");
}

/// "from to" of each import that leads from one folder of the page into another, with the file it stands in.
function crossings(files: readonly string[], read: (file: string) => string): ReadonlyMap<string, string> {
  const found = new Map<string, string>();
  for (const file of files) {
    const from = file.split(sep)[0] ?? "";
    for (const path of pathsIn(read(file))) {
      const [to = ""] = normalize(join(dirname(file), path)).split(sep);
      if (to !== ".." && to !== from) found.set(`${from} ${to}`, file);
    }
  }
  return found;
}

/// What is wrong between a list and the imports, one sentence each.
function troubles(given: Given, made: ReadonlyMap<string, string>): readonly string[] {
  const order = [...given.keys()];
  const listed = order.flatMap((folder) => (given.get(folder) ?? []).map((under) => `${folder} ${under}`));
  return [
    ...[...made]
      .filter(([one]) => !listed.includes(one))
      .map(([one, file]) => `${one}: imported by ${file}, not listed`),
    ...listed.filter((one) => !made.has(one)).map((one) => `${one}: listed, not imported`),
    ...listed
      .map((one) => one.split(" "))
      .filter(([from = "", to = ""]) => order.indexOf(to) < 0 || order.indexOf(to) >= order.indexOf(from))
      .map(([from, to]) => `${from} ${to}: the lower one comes first`),
  ];
}

const folders = readdirSync(kPage, { withFileTypes: true })
  .filter((entry) => entry.isDirectory() && !kNotOfThePage.has(entry.name) && !entry.name.startsWith("."))
  .map((entry) => entry.name);
const files = folders.flatMap((folder) =>
  (readdirSync(join(kPage, folder), { recursive: true }) as string[])
    .filter((name) => /\.(ts|tsx|js)$/.test(name))
    .map((name) => join(folder, name)),
);
const given = layersIn(readFileSync(join(kPage, "layers.txt"), "utf8"));
const made = crossings(files, (file) => readFileSync(join(kPage, file), "utf8"));

test("files import what layers.txt gives their folder, and of all that it gives something", () => {
  expect(files.length).toBeGreaterThan(100);
  expect(troubles(given, made)).toEqual([]);
});

test("every folder of the page is in layers.txt, and is looked at by the type checker", () => {
  expect([...given.keys()].sort()).toEqual([...folders].sort());
  const { include } = JSON.parse(readFileSync(join(kPage, "tsconfig.json"), "utf8")) as { include: string[] };
  for (const folder of folders) expect(include).toContain(folder);
});

test("every path that a file names is there: none was read amiss", () => {
  for (const file of files) {
    for (const path of pathsIn(readFileSync(join(kPage, file), "utf8"))) {
      const [plain = ""] = join(kPage, dirname(file), path).split("?");
      const found = ["", ".ts", ".tsx", "/index.ts"].some((ending) => existsSync(plain + ending));
      // The module is built, not kept: it may not be there yet.
      if (!plain.includes(`${sep}build${sep}`)) expect(found, `${file}: ${path}`).toBe(true);
    }
  }
});

test("an import that is not given, a gift that is not used, and a list out of order are told", () => {
  const list = layersIn("# low first\nlow\nhigh  low\n");
  const sources: Readonly<Record<string, string>> = {
    "low/a.ts": 'export const one = 1;\nvoid import("../high/b");',
    "high/b.ts": 'import type { one } from "./c";\nimport "../low/look.css";',
  };
  const read = (file: string): string => sources[file] ?? "";
  expect(troubles(list, crossings(["high/b.ts"], read))).toEqual([]);
  expect(troubles(list, crossings(["low/a.ts", "high/b.ts"], read))).toEqual([
    "low high: imported by low/a.ts, not listed",
  ]);
  expect(troubles(list, crossings([], read))).toEqual(["high low: listed, not imported"]);
  expect(troubles(layersIn("high low\nlow\n"), crossings(["high/b.ts"], read))).toEqual([
    "high low: the lower one comes first",
  ]);
});
