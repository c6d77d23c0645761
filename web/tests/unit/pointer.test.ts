import fc from "fast-check";
import { expect, test } from "vitest";
import { jobText, type Json, readJson, textAt, valueAt, without, withValue } from "../../job/pointer";

// RFC 6901, section 5: the document and what each pointer of it means.
const kRfc: Json = {
  foo: ["bar", "baz"],
  "": 0,
  "a/b": 1,
  "c%d": 2,
  "e^f": 3,
  "g|h": 4,
  "i\\j": 5,
  'k"l': 6,
  " ": 7,
  "m~n": 8,
};

test("pointers mean what RFC 6901 section 5 says", () => {
  const meant: readonly (readonly [string, Json])[] = [
    ["", kRfc],
    ["/foo", ["bar", "baz"]],
    ["/foo/0", "bar"],
    ["/", 0],
    ["/a~1b", 1],
    ["/c%d", 2],
    ["/e^f", 3],
    ["/g|h", 4],
    ["/i\\j", 5],
    ['/k"l', 6],
    ["/ ", 7],
    ["/m~0n", 8],
  ];
  for (const [pointer, value] of meant) expect(valueAt(kRfc, pointer), pointer).toEqual(value);
});

test("a place that only the language knows is no place of the document", () => {
  for (const pointer of ["/__proto__", "/constructor", "/toString", "/foo/length", "/foo/-", "/foo/00", "/foo/2"]) {
    expect(valueAt(kRfc, pointer), pointer).toBeUndefined();
  }
});

test("a value put in is found there, and the document before it stays as it was", () => {
  const before = JSON.stringify(kRfc);
  fc.assert(
    fc.property(
      fc.constantFrom("/foo/0", "/foo/1", "/a~1b", "/m~0n", "/new", "/foo/-"),
      fc.jsonValue(),
      (pointer, put) => {
        const after = withValue(kRfc, pointer, put as Json);
        const found = pointer === "/foo/-" ? valueAt(after, "/foo/2") : valueAt(after, pointer);
        expect(JSON.stringify(found)).toBe(JSON.stringify(put));
        expect(JSON.stringify(kRfc)).toBe(before);
      },
    ),
  );
});

test("what is taken out of a list closes up, what is taken out of an object is gone", () => {
  expect(without(kRfc, "/foo/0")).toEqual({ ...(kRfc as object), foo: ["baz"] });
  expect(valueAt(without(kRfc, "/a~1b"), "/a~1b")).toBeUndefined();
});

test("a change keeps the order of the other entries, so that a job file changes in one line", () => {
  const job: Json = { a: "1", b: "2", c: "3" };
  expect(jobText(withValue(job, "/b", "9"))).toBe('{\n  "a": "1",\n  "b": "9",\n  "c": "3"\n}\n');
});

test("text at a place is its text or its digits, and nothing for the rest", () => {
  expect([textAt({ a: "x" }, "/a"), textAt({ a: 14 }, "/a"), textAt({ a: [] }, "/a"), textAt({}, "/a")]).toEqual([
    "x",
    "14",
    "",
    "",
  ]);
});

test("what is not JSON is no document", () => {
  expect(readJson("{")).toBeUndefined();
  expect(readJson("")).toBeUndefined();
});
