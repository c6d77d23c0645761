// Writes the first screen into the page's HTML: its sentence, and the example's first course as the engine draws it. So
// that it stands there before any script has run.
import { readFile } from "node:fs/promises";
import type { Plugin } from "vite";
import type { Reply, Request } from "../engine/contract.ts";
import { Engine, readReply } from "../engine/glue.ts";
import { english } from "../words/english.ts";

const kModule = new URL("../../build/wasm/stringcourse.wasm", import.meta.url);
const kExample = new URL("../../examples/kiln-house.json", import.meta.url);
export const kMark = "<!-- first screen -->";

const escaped = (text: string): string => text.replaceAll("&", "&amp;").replaceAll("<", "&lt;");

/// What the engine says of the example.
async function told(asked: Omit<Request, "border" | "job">): Promise<Reply> {
  const engine = await Engine.make(await WebAssembly.compile(await readFile(kModule)));
  const job = await readFile(kExample, "utf8");
  return readReply(engine.ask(JSON.stringify({ border: 1, job, ...asked })));
}

/// The drawing that the page shows of the example before anything is searched for. Its one style stands in look/drawing.css:
/// the page's policy lets no text style anything.
export async function firstDrawing(): Promise<string> {
  const svg = (await told({ drawings: ["plan-course-1"], budget: 0, moving: true })).svg("plan-course-1");
  if (svg === undefined) throw new Error("the engine drew no first screen");
  return svg.replace(/^<\?xml[^>]*>\s*/, "").replace(' style="font-kerning:none"', "");
}

/// The points as shell/Spine.tsx shows them before anything is known of the job.
function spine(): string {
  const { short, label } = english.points;
  const points = ["order", "pour", "first-course", "lintels", "grout", "top", "at-the-wall"];
  const one = (point: string, at: number): string =>
    `<li><a href="#${point}"><span class="number" aria-hidden="true">${point === "at-the-wall" ? "–" : at + 1}</span>` +
    `<span class="title">${escaped(short[point] ?? "")}</span></a></li>`;
  return `<nav class="spine" aria-label="${escaped(label)}"><ol>${points.map(one).join("")}</ol></nav>`;
}

/// Built like shell/Start.tsx, so that nothing moves when that takes its place.
export function firstScreen(svg: string): string {
  const { start, product } = english;
  return `<div id="first">
<div class="top"><header class="head"><h1>${escaped(product)}</h1></header><section class="state"><p></p></section></div>
<div class="page">${spine()}<main><article class="sheet start"><div class="frame"><div class="start-head">
<div><h2 tabindex="-1">${escaped(start.lead)}</h2></div>
<figure class="example"><div class="picture"><div class="ink">${svg}</div></div>
<figcaption class="small soft">${escaped(start.pictured)}</figcaption></figure>
</div></div></article></main></div>
</div>`;
}

export function firstScreenPlugin(): Plugin {
  return {
    name: "first-screen",
    async transformIndexHtml(html) {
      return html.includes(kMark) ? html.replace(kMark, firstScreen(await firstDrawing())) : html;
    },
  };
}

const kQuestions = "virtual:example-questions";

/// The example's hold points, as the whole engine answers them: on a first visit they hold the room of what is to come.
export function exampleQuestionsPlugin(): Plugin {
  return {
    name: "example-questions",
    resolveId: (id) => (id === kQuestions ? `\0${kQuestions}` : undefined),
    async load(id) {
      if (id !== `\0${kQuestions}`) return undefined;
      const points = (await told({})).head.hold_points;
      if (points === undefined) throw new Error("the engine answered no question of the example");
      return `export default ${JSON.stringify(points.map((point) => ({ ...point, to_read: [] })))}`;
    },
  };
}
