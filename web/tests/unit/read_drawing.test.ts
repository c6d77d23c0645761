import fc from "fast-check";
import { beforeAll, expect, test } from "vitest";
import { attributesOf, changesBetween, type Drawn, readDrawing, unescaped } from "../../draw/read_drawing";
import { type Engine, readReply } from "../../engine/glue";
import { example, realEngine } from "./real_engine";

let engine: Engine;
beforeAll(async () => {
  engine = await realEngine();
});

function svgs(name: string, courses: readonly number[], sides: readonly number[]): readonly string[] {
  const drawings = [...courses.map((course) => `plan-course-${course}`), ...sides.map((side) => `elevation-${side}`)];
  const reply = readReply(engine.ask(JSON.stringify({ border: 1, job: example(name), budget: 0, drawings })));
  return drawings.map((drawing) => reply.svg(drawing) ?? "");
}

/// Written out again from the tree alone, blanks between elements apart.
function written(drawn: Drawn): string {
  const inside = drawn.children.length > 0 ? drawn.children.map(written).join("") : drawn.words;
  return inside === "" ? `<${drawn.tag}${drawn.written}/>` : `<${drawn.tag}${drawn.written}>${inside}</${drawn.tag}>`;
}

test.each(["kiln-house", "glaze-store", "clay-store"])("%s: every drawing of the engine is read whole", (name) => {
  for (const svg of svgs(name, [1, 2, 7], [1, 2, 3, 4])) {
    const drawn = readDrawing(svg);
    expect(drawn).toBeDefined();
    if (drawn === undefined) return;
    // Nothing is lost and nothing added: the tree written out is the text without the blanks between its elements.
    const bare = svg
      .trim()
      .replaceAll(/>\n</g, "><")
      .replaceAll(/<(\w+)([^<>]*)><\/\1>/g, "<$1$2/>");
    expect(written(drawn)).toBe(bare);
  }
});

test.each([
  ["a script", "<svg><script>alert(1)</script></svg>"],
  ["a handler", '<svg onload="alert(1)"></svg>'],
  ["a handler written large", '<svg><path OnClick="alert(1)"/></svg>'],
  ["a link", '<svg><a href="x"><path d="M0 0"/></a></svg>'],
  ["an address", '<svg><path fill="url(https://example.com/a)"/></svg>'],
  ["a link to a shape", '<svg><path xlink:href="#a"/></svg>'],
  ["a style", '<svg><path style="background:red"/></svg>'],
  ["a foreign part", "<svg><foreignObject></foreignObject></svg>"],
  ["a picture", '<svg><image href="x"/></svg>'],
  ["a comment", "<svg><!-- --></svg>"],
  ["an instruction", '<?xml version="1.0"?><svg></svg>'],
  ["an entity of its own", '<!DOCTYPE svg [<!ENTITY a "b">]><svg></svg>'],
  ["words between shapes", '<svg><path d="M0 0"/>words<path d="M0 0"/></svg>'],
  ["an end too few", "<svg><g></svg>"],
  ["an end too many", "<svg></g></svg>"],
  ["two drawings", "<svg></svg><svg></svg>"],
  ["no drawing", "words"],
  ["another root", "<g></g>"],
  ["an attribute without quotes", "<svg><path d=M0/></svg>"],
])("a drawing that holds %s is not read", (_, svg) => {
  expect(readDrawing(svg)).toBeUndefined();
});

test("an address hidden in escapes is left out", () => {
  const drawn = readDrawing('<svg><path fill="ur&#108;(https://example.com)" d="M0 0"/></svg>');
  const path = drawn?.children[0];
  expect(path).toBeDefined();
  if (path !== undefined) expect(attributesOf(path)).toEqual([{ name: "d", value: "M0 0" }]);
});

test("what changes between two tags makes the one into the other, in whatever order they are written", () => {
  const value = fc.constantFrom("1", "2", "a &amp; b", "url(#x)", "ur&#108;(y)");
  const tag = fc
    .dictionary(fc.constantFrom("d", "fill", "class", "x", "y"), value)
    .chain((map) => fc.shuffledSubarray(Object.entries(map), { minLength: Object.keys(map).length }));
  const read = (entries: readonly (readonly [string, string])[]): Drawn => {
    const drawn = readDrawing(`<svg><path${entries.map(([name, text]) => ` ${name}="${text}"`).join("")}/></svg>`);
    const path = drawn?.children[0];
    if (path === undefined) throw new Error("not read");
    return path;
  };
  fc.assert(
    fc.property(tag, tag, (before, after) => {
      const [old, next] = [read(before), read(after)];
      const has = new Map(attributesOf(old).map((one) => [one.name, one.value]));
      const { put, gone } = changesBetween(old, next);
      for (const one of put) has.set(one.name, one.value);
      for (const name of gone) has.delete(name);
      expect(has).toEqual(new Map(attributesOf(next).map((one) => [one.name, one.value])));
    }),
  );
});

test("words that only sound like a handler, a link or an address are words", () => {
  const label = "wall on AB, href=x, on=, url(y)";
  const drawn = readDrawing(`<svg><g id="a" aria-label="${label}"><path d="M0 0"/></g></svg>`);
  const group = drawn?.children[0];
  expect(group).toBeDefined();
  if (group !== undefined) expect(attributesOf(group)).toContainEqual({ name: "aria-label", value: label });
});

test("escaped words read as they were meant, and never become a tag", () => {
  const drawn = readDrawing("<svg><text>&lt;b&gt; &amp; &quot;6&apos;-8&quot; &#8242; &#x2032; &unknown;</text></svg>");
  expect(drawn?.children[0]?.children).toEqual([]);
  expect(unescaped(drawn?.children[0]?.words ?? "")).toBe('<b> & "6\'-8" ′ ′ &unknown;');
});

test("names of a job that look like markup come back as words", () => {
  const job = JSON.parse(example("kiln-house"));
  job.openings[0].name = '"><script>alert(1)</script>';
  const reply = readReply(
    engine.ask(JSON.stringify({ border: 1, job: JSON.stringify(job), budget: 0, drawings: ["plan-course-1"] })),
  );
  const svg = reply.svg("plan-course-1");
  if (svg === undefined) {
    // The engine may refuse such a name; then it says so and draws nothing.
    expect(reply.refusals?.refusals.length).toBeGreaterThan(0);
    return;
  }
  expect(svg).not.toContain("<script");
  expect(readDrawing(svg)).toBeDefined();
});
