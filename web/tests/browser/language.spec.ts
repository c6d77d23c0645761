// The page in a made-up language (marked.ts): every view at two widths. No text is left that stands in no table of texts,
// but names, numbers and what the engine says; and half as much text again leaves nothing cut off, sticking out or written
// over something else.
import { readFileSync } from "node:fs";
import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { expect, type Page, test } from "@playwright/test";
import { build } from "vite";
import { jobForm } from "../../engine/generated/job_form";
import { english } from "../../words/english";
import { kClose, kOpen, marked } from "./marked";
import { OwnHost } from "./own_host";

const kWeb = fileURLToPath(new URL("../..", import.meta.url));

let folder = "";
let host: OwnHost;
test.beforeAll(async () => {
  test.setTimeout(180_000);
  folder = await mkdtemp(join(tmpdir(), "stringcourse-marked-"));
  await build({
    root: kWeb,
    configFile: join(kWeb, "tests/browser/marked.config.ts"),
    logLevel: "error",
    build: { outDir: folder, emptyOutDir: true },
  });
  host = await OwnHost.begin(folder);
});
test.afterAll(async () => {
  await host?.end();
  await rm(folder, { recursive: true, force: true });
});

/// What the engine was asked and said, as one text: each reply is a block of JSON documents and pictures.
async function hearEngine(page: Page): Promise<void> {
  await page.addInitScript(() => {
    const heard: string[] = [];
    Object.assign(window, { heard });
    const Plain = window.Worker;
    window.Worker = class extends Plain {
      constructor(...of: ConstructorParameters<typeof Worker>) {
        super(...of);
        this.addEventListener("message", (event: MessageEvent<{ block?: Uint8Array }>) => {
          if (event.data.block === undefined) return;
          // What comes after is a printed set: no text of the page.
          const [said = ""] = new TextDecoder().decode(event.data.block).split("%PDF-");
          if (!heard.includes(said)) heard.push(said);
        });
      }
    };
  });
}

interface Seen {
  /// Where it stands, and the text.
  readonly at: string;
  readonly text: string;
}

/// Every text that is shown or read out, outside drawings.
function textsOf(page: Page): Promise<readonly Seen[]> {
  return page.evaluate(() => {
    const seen: { at: string; text: string }[] = [];
    const where = (element: Element | null): string => {
      const path: string[] = [];
      for (let one = element; one !== null && path.length < 4; one = one.parentElement)
        path.unshift(one.tagName.toLowerCase() + (one.classList.length > 0 ? `.${one.classList[0]}` : ""));
      return path.join(" > ");
    };
    const walk = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    for (let node = walk.nextNode(); node !== null; node = walk.nextNode()) {
      const parent = node.parentElement;
      if (parent === null || parent.closest("svg, script, noscript, style") !== null) continue;
      const text = node.textContent?.trim() ?? "";
      if (text !== "") seen.push({ at: where(parent), text });
    }
    for (const element of document.body.querySelectorAll("*")) {
      if (element.closest("svg") !== null) continue;
      for (const name of ["aria-label", "title", "placeholder", "alt", "aria-valuetext"]) {
        const text = element.getAttribute(name)?.trim() ?? "";
        if (text !== "") seen.push({ at: `${where(element)}[${name}]`, text });
      }
    }
    return seen;
  });
}

/// The wording of the job's schema, which is the engine's.
const kSchema = Object.values(jobForm)
  .flatMap((part) => [part.help, ...part.fields.map((one) => one.help)])
  .join("\n");
/// Signs on buttons and marks: no words.
const kLetters = /\p{L}/u;

/// What is left of a text once all that is marked is taken out.
function outside(text: string): readonly string[] {
  const rest: string[] = [];
  let depth = 0;
  let piece = "";
  for (const letter of text) {
    if (letter === kOpen) depth += 1;
    if (depth === 0) piece += letter;
    if (letter === kClose) depth -= 1;
    if (depth > 0 && piece !== "") {
      rest.push(piece);
      piece = "";
    }
  }
  return [...rest, piece];
}

/// The same in pieces.
function unmarked(text: string): readonly string[] {
  return outside(text)
    .flatMap((one) => one.split(/ · |; |: |, | – | × | = /))
    .map((one) => one.replace(/^[.\s]+/, "").trim());
}

/// True of the schema's wording, with what is said of a field that is left empty in its place.
function ofSchema(whole: string): boolean {
  return outside(whole)
    .map((part) => part.replace(/^[.\s]+|[.\s]+$/g, ""))
    .every((part) => kSchema.includes(part));
}

/// What is known to be a name, or the engine's, from an earlier look at the same page.
const kKnown = new Set<string>();

async function strays(page: Page): Promise<readonly string[]> {
  const pieces = (await textsOf(page)).flatMap(({ at, text }) =>
    unmarked(text).map((piece) => ({ at, piece, whole: text })),
  );
  const asked = pieces.filter(
    ({ piece, whole }) => kLetters.test(piece) && piece !== english.product && !ofSchema(whole) && !kKnown.has(piece),
  );
  if (asked.length === 0) return [];
  const said = await page.evaluate(() => {
    const { heard } = window as unknown as { heard: readonly string[] };
    const inputs = [...document.querySelectorAll("input, textarea")].map((one) => (one as HTMLInputElement).value);
    return [...heard, ...inputs].join("\n");
  });
  const job = readFileSync(new URL("../../../examples/kiln-house.json", import.meta.url), "utf8");
  const known = `${said}\n${job}`.replaceAll('\\"', '"');
  const found: string[] = [];
  for (const { at, piece } of asked) {
    if (kKnown.has(piece)) continue;
    // A count before a name, and a name before a size.
    const [name, size = ""] = piece.replace(/^\d+ /, "").split(/ (.*)/);
    const named = known.includes(name ?? "") && !kLetters.test(size);
    if (named || known.includes(piece)) kKnown.add(piece);
    else found.push(`${at}: ${piece}`);
  }
  return found;
}

/// Texts that are cut off, stick out of the page, or stand over one another. What sticks to the screen's edges is looked at
/// by itself: it lies over the rest by design.
function spilled(page: Page): Promise<readonly string[]> {
  return page.evaluate(() => {
    const found: string[] = [];
    interface Around {
      /// What sticks to the screen, of all that it stands in.
      readonly layer: Element | null;
      readonly scrolled: boolean;
      readonly cut: boolean;
    }
    const known = new Map<Element, Around>();
    const cuts = (how: string, whole: number, seen: number): boolean =>
      (how === "hidden" || how === "clip") && whole > seen + 1;
    const around = (element: Element): Around => {
      const told = known.get(element);
      if (told !== undefined) return told;
      const { position, overflowX, overflowY } = getComputedStyle(element);
      const beyond = element.parentElement === null ? undefined : around(element.parentElement);
      const body = element === document.body || beyond === undefined;
      const now: Around = {
        layer: position === "fixed" || position === "sticky" ? element : (beyond?.layer ?? null),
        scrolled: /auto|scroll/.test(overflowX) || beyond?.scrolled === true,
        cut:
          beyond?.cut === true ||
          (!body &&
            (cuts(overflowX, element.scrollWidth, element.clientWidth) ||
              cuts(overflowY, element.scrollHeight, element.clientHeight))),
      };
      known.set(element, now);
      return now;
    };
    const wide = document.documentElement.clientWidth;
    const boxes: { box: DOMRect; text: string; layer: Element | null; parent: Element }[] = [];
    const walk = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    for (let node = walk.nextNode(); node !== null; node = walk.nextNode()) {
      const parent = node.parentElement;
      const text = node.textContent?.trim() ?? "";
      if (
        parent === null ||
        text === "" ||
        parent.closest("svg, .hidden-words, .skip, option, .box, .printing") !== null
      )
        continue;
      if (!parent.checkVisibility({ visibilityProperty: true })) continue;
      // What is only read out.
      if (getComputedStyle(parent).clipPath !== "none") continue;
      const range = document.createRange();
      range.selectNodeContents(node);
      const { layer, scrolled, cut } = around(parent);
      const short = text.slice(0, 40);
      if (cut) found.push(`cut off: ${short}`);
      for (const box of range.getClientRects()) {
        if (box.width < 2 || box.height < 2) continue;
        boxes.push({ box, text: short, layer, parent });
        if (!scrolled && (box.right > wide + 1 || box.left < -1)) found.push(`beyond the page: ${short}`);
      }
    }
    boxes.sort((a, b) => a.box.top - b.box.top);
    for (const [at, one] of boxes.entries()) {
      for (let next = at + 1; next < boxes.length; ++next) {
        const other = boxes[next];
        if (other === undefined || other.box.top > one.box.bottom) break;
        if (one.layer !== other.layer || one.parent === other.parent) continue;
        const across = Math.min(one.box.right, other.box.right) - Math.max(one.box.left, other.box.left);
        const down = Math.min(one.box.bottom, other.box.bottom) - Math.max(one.box.top, other.box.top);
        // Lines stand closer than their letters' boxes are high.
        if (across > 2 && down > 5) found.push(`over one another: ${one.text} / ${other.text}`);
      }
    }
    return [...new Set(found)];
  });
}

async function look(page: Page, name: string): Promise<void> {
  await page.evaluate(() => scrollTo({ top: 0, behavior: "instant" }));
  expect.soft(await strays(page), `${name}: texts of no table`).toEqual([]);
  expect.soft(await spilled(page), `${name}: room`).toEqual([]);
  expect
    .soft(await page.evaluate(() => document.documentElement.scrollWidth), `${name}: nothing sticks out sideways`)
    .toBeLessThanOrEqual(page.viewportSize()?.width ?? 0);
}

async function settled(page: Page): Promise<void> {
  await expect(page.locator(".view .ink svg").first()).toBeVisible();
  await expect(page.locator("main")).toHaveAttribute("data-stage", "whole");
  await expect(page.locator("main")).toHaveAttribute("data-offers", "there");
}

/// Every form, and what is folded in it; each once.
async function unfoldAll(page: Page): Promise<void> {
  for (let depth = 0; depth < 4; ++depth) {
    const opened = await page.locator(".fold:not([open])").evaluateAll((folds) => {
      for (const one of folds) (one as HTMLDetailsElement).open = true;
      return folds.length;
    });
    if (opened === 0) return;
    await page.waitForTimeout(300);
  }
}

const kPoints = ["order", "pour", "first-course", "lintels", "grout", "top", "at-the-wall"] as const;

for (const width of [360, 1280]) {
  test(`at ${width} px every view has only marked texts, and room for half as much text again`, async ({ page }) => {
    test.setTimeout(180_000);
    await page.setViewportSize({ width, height: 800 });
    await hearEngine(page);
    await page.goto(host.address);
    await expect(page.locator(".begin")).toBeVisible(); // the script has taken the first screen over
    await look(page, "the first screen");
    await page.goto(`${host.address}#order`);
    await settled(page);
    for (const point of kPoints) {
      await page.goto(`${host.address}#${point}`);
      await settled(page);
      if (point === "order") await page.locator('#plan .handle[data-place="/openings/0"][data-part="body"]').click();
      await expect(page.locator("#sheets")).not.toContainText(kOpen + english.points.sheetsComing.slice(0, 10));
      await look(page, point);
      await unfoldAll(page);
      await look(page, `${point}, every form open`);
    }
    await page.getByRole("button", { name: kOpen + english.wall.open }).click();
    await expect(page.locator(".wall-number")).toBeVisible();
    await look(page, "the phone view");
  });
}

test("the made-up language is what it says: longer by half, marked once, values inside", () => {
  expect(marked("a b c d")).toBe(`${kOpen}a b c d a b${kClose}`);
  expect(marked({ of: (count: number) => `${count} cuts` }).of(3)).toBe(`${kOpen}3 cuts 3${kClose}`);
  expect(unmarked(`${kOpen}x${kClose} left · 3`)).toEqual(["left", "3"]);
});
