// Readings of tape and rod, entered in the page, and what they come to.
import { expect, type Page, test } from "@playwright/test";
import { openTable, settled, slowEngine } from "./table";

/// What is read is chosen by hand, not as it is asked for.
async function byHand(page: Page, address = "./#first-course"): Promise<void> {
  await openTable(page, address);
  await page.getByRole("button", { name: "Another reading" }).click();
}

/// 28 x 20 ft: faces 335 5/8 and 239 5/8, diagonals 412.39 in.
async function taping(page: Page, from: string, to: string, length: string): Promise<void> {
  const form = page.getByRole("form", { name: "Enter a reading" });
  await form.getByLabel("from corner").selectOption(from);
  await form.getByLabel("to corner").selectOption(to);
  await form.getByLabel("tape reads").fill(length);
  await form.getByRole("button", { name: "Enter", exact: true }).click();
  await expect(page.getByRole("list", { name: "Readings, newest first" }).locator("li").first()).toContainText(
    `${from} – ${to}`,
  );
  await expect(form.getByLabel("tape reads")).toHaveValue(""); // ready for the next
}

async function rod(page: Page, station: string, length: string): Promise<void> {
  const form = page.getByRole("form", { name: "Enter a reading" });
  await form.getByLabel("point").fill(station);
  await form.getByLabel("rod reads").fill(length);
  await form.getByRole("button", { name: "Enter", exact: true }).click();
  await expect(page.getByRole("list", { name: "Readings, newest first" }).locator("li").first()).toContainText(station);
  await expect(form.getByLabel("rod reads")).toHaveValue(""); // ready for the next
}

const kSix = [
  ["A", "B", `27'-11 3/4"`],
  ["B", "C", `19'-11 1/2"`],
  ["C", "D", `27'-11 5/8"`],
  ["D", "A", `19'-11 5/8"`],
  ["A", "C", `412 3/4"`],
] as const;

test("six tapings tell how far each peg is to be moved; a wrong one is questioned, struck and entered anew", async ({
  page,
}) => {
  await byHand(page);
  const ground = page.locator("main");
  for (const [from, to, length] of kSix) await taping(page, from, to, length);
  await expect(ground).toContainText("Nothing checks these readings yet");
  await taping(page, "B", "D", `410"`);
  await expect(ground).toContainText("do not fit together");
  await expect(ground).toContainText("Tape again, in this order: ");
  await page.getByRole("button", { name: `Strike the reading B – D, 410"` }).click();
  await expect(ground.locator(".log .struck")).toContainText("B – D");
  await taping(page, "B", "D", `412"`);
  await expect(ground).toContainText("The readings agree.");
  await expect(ground.locator(".moves li", { hasText: "D" }).last()).toContainText(`9/16" away from C`);
  await expect(ground.locator(".ink svg#pegs")).toBeVisible();
  await settled(page);
});

test("a length that cannot be read is refused with its reason, and nothing is entered", async ({ page }) => {
  await byHand(page);
  const form = page.getByRole("form", { name: "Enter a reading" });
  await form.getByLabel("tape reads").fill("twelve");
  await form.getByRole("button", { name: "Enter", exact: true }).click();
  await expect(form.getByRole("alert")).toContainText("twelve");
  await expect(page.locator("main")).toContainText("Nothing is read yet.");
  await expect(form.getByLabel("tape reads")).toHaveValue("twelve");
});

test("rod readings give the first bed under every unit, and the choices where none fits", async ({ page }) => {
  await byHand(page);
  await page.getByRole("button", { name: "Rod or water level" }).click();
  const fall = { datum: `48"`, A: `52"`, B: `52 3/4"`, C: `52 3/8"`, D: `52 1/16"` };
  for (const [station, length] of Object.entries(fall)) await rod(page, station, length);
  const ground = page.locator("main");
  await expect(ground).toContainText("It does not fit.");
  await expect(ground).toContainText("grind high spots at 2 readings");
  await expect(ground.locator(".ink svg#bed-1")).toBeVisible();
  await page.locator("#results").getByRole("button", { name: "CD" }).click();
  await expect(ground.locator(".ink svg#bed-3")).toBeVisible();
});

test("readings are part of the job: they are there after a reload", async ({ page }) => {
  await byHand(page);
  await taping(page, "A", "C", `412 3/8"`);
  await expect(page.locator("#where")).toContainText("in this browser only");
  await page.reload();
  await settled(page);
  await expect(page.getByRole("list", { name: "Readings, newest first" })).toContainText(`412 3/8"`);
});

async function dowel(page: Page, at: string): Promise<void> {
  const form = page.getByRole("form", { name: "Enter a reading" });
  await form.getByLabel("on side").selectOption("DA");
  await form.getByLabel("its centre, at that distance").fill(at);
  await form.getByRole("button", { name: "Enter", exact: true }).click();
  await expect(page.getByRole("list", { name: "Readings, newest first" }).locator("li").first()).toContainText(at);
}

test("a dowel in a web is saved by another layout, taken with one tap and given back with one", async ({ page }) => {
  await byHand(page);
  await page.getByRole("button", { name: "Dowel", exact: true }).click();
  for (const at of [`51 13/16"`, `103 13/16"`, `147 13/16"`]) await dowel(page, at);
  const ground = page.locator("main");
  await expect(ground.locator(".log")).toContainText("cut it off and set another");
  const saving = ground.getByRole("button", { name: /^Lay so: 3 stand/ });
  await saving.click();
  await expect(ground).toContainText("Bars stand where dowels were found.");
  await expect(ground.locator(".log")).not.toContainText("cut it off");
  await ground.getByRole("button", { name: "Lay as before" }).click();
  await expect(ground.locator(".log")).toContainText("cut it off and set another");
});

test("what the setting-out card needs is typed, kept and taken out again; a pull that is none is refused", async ({
  page,
}) => {
  await openTable(page, "./#pour");
  await page.getByText("The mason's line").click();
  const line = page.getByRole("form", { name: "The mason's line" });
  const pull = line.getByLabel("pull on the line");
  await expect(pull).toHaveValue("20 lb");
  await pull.fill("hard");
  await pull.press("Enter");
  await expect(line.getByRole("alert")).toContainText("hard");
  await expect(pull).toHaveValue("hard");
  await pull.fill("25 lb");
  await pull.press("Enter");
  await expect(line.getByRole("alert")).toHaveCount(0);
  await expect(line.getByRole("button", { name: "Set", exact: true })).toHaveCount(0);
  const bars = page.getByRole("form", { name: "Upright bars and dowels" });
  const dowels = bars.getByLabel("dowels stand up");
  await dowels.fill(`24"`);
  await dowels.press("Enter");
  await expect(bars.getByRole("button", { name: "Set", exact: true })).toHaveCount(0);
  await settled(page);
  await page.reload();
  await settled(page);
  await expect(dowels).toHaveValue(`24"`);
  await dowels.fill("");
  await dowels.press("Enter");
  await expect(bars.getByRole("button", { name: "Set", exact: true })).toHaveCount(0);
  await settled(page);
  await expect(dowels).toHaveValue("");
});

test("a hand that has gone to another field is left there when the reading before comes in", async ({ page }) => {
  await slowEngine(page, 700);
  await byHand(page);
  await page.getByRole("button", { name: "Rod or water level" }).click();
  const form = page.getByRole("form", { name: "Enter a reading" });
  const point = form.getByLabel("point");
  await point.fill("datum");
  await form.getByLabel("rod reads").fill(`48"`);
  await form.getByRole("button", { name: "Enter", exact: true }).click();
  await point.focus();
  await expect(page.getByRole("list", { name: "Readings, newest first" }).locator("li").first()).toContainText("datum");
  await expect(form.getByLabel("rod reads")).toHaveValue("");
  await expect(point).toBeFocused();
});

test("on a level slab the next point's reading, typed before the last has come in, is kept though it is the same", async ({
  page,
}) => {
  await slowEngine(page, 700);
  await byHand(page);
  await page.getByRole("button", { name: "Rod or water level" }).click();
  const form = page.getByRole("form", { name: "Enter a reading" });
  const typeIn = async (station: string): Promise<void> => {
    await form.getByLabel("point").fill(station);
    await form.getByLabel("rod reads").fill(`56"`);
  };
  const enter = form.getByRole("button", { name: "Enter", exact: true });
  const newest = page.getByRole("list", { name: "Readings, newest first" }).locator("li").first();
  await typeIn("A");
  await enter.click();
  await typeIn("B");
  await expect(newest).toContainText("rod 1 · A");
  // A frame later the form stands ready, and what was typed stands in it.
  await page.evaluate(() => new Promise((drawn) => requestAnimationFrame(() => requestAnimationFrame(drawn))));
  await expect(form.getByLabel("rod reads")).toHaveValue(`56"`);
  await enter.click();
  await expect(newest).toContainText("rod 1 · B");
});

const entered = (page: Page) => page.getByRole("list", { name: "Readings, newest first" }).locator("li");

test("a reading that is filled in and entered while the last is on its way is sent next; one tap too many is none", async ({
  page,
}) => {
  await slowEngine(page, 700);
  await byHand(page);
  await page.getByRole("button", { name: "Rod or water level" }).click();
  const form = page.getByRole("form", { name: "Enter a reading" });
  const enter = form.getByRole("button", { name: "Enter", exact: true });
  for (const station of ["A", "B", "C"]) {
    await form.getByLabel("point").fill(station);
    await form.getByLabel("rod reads").fill(`56"`);
    await enter.click();
    await enter.click();
  }
  await expect(entered(page).first()).toContainText("rod 1 · C");
  await expect(form.getByLabel("rod reads")).toHaveValue("");
  await page.waitForTimeout(1500); // longer than one more would take
  await expect(entered(page)).toHaveCount(3);
});

test("refused, a reading is told, and what was entered after it stands in the form and is not sent", async ({
  page,
}) => {
  await slowEngine(page, 700);
  await byHand(page);
  const form = page.getByRole("form", { name: "Enter a reading" });
  const reads = form.getByLabel("tape reads");
  await reads.fill("twelve");
  await reads.press("Enter");
  await reads.fill(`412 3/8"`);
  await reads.press("Enter");
  await expect(form.getByRole("alert")).toContainText("twelve");
  await expect(reads).toHaveValue(`412 3/8"`);
  await expect(page.locator("main")).toContainText("Nothing is read yet.");
  await reads.press("Enter");
  await expect(entered(page)).toHaveCount(1);
});

test("Enter pressed as soon as the last reading stands in the list enters the next; before that the number waits to be seen", async ({
  page,
}) => {
  await slowEngine(page, 700);
  await openTable(page, "./#first-course");
  const form = page.getByRole("form", { name: "Enter a reading" });
  const reads = form.getByLabel("tape reads");
  const first = await form.locator(".next-reading strong").textContent();
  await reads.fill(`335 5/8"`);
  await reads.press("Enter");
  // Typed and entered before anybody can know what is asked for next: it is kept, and waits.
  await reads.fill(`239 5/8"`);
  await reads.press("Enter");
  // The first task after the list has grown, long before a frame: a key that is pressed then.
  await page.evaluate(() => {
    const list = document.querySelector("main");
    const watch = new MutationObserver(() => {
      if (document.querySelectorAll(".log li").length !== 1) return;
      watch.disconnect();
      const { port1, port2 } = new MessageChannel();
      port2.onmessage = () => {
        const field = document.activeElement as HTMLInputElement;
        Object.assign(window, { pressedIn: `${field.name} ${field.value}` });
        if (field.form?.reportValidity()) field.form.requestSubmit();
      };
      port1.postMessage("next");
    });
    if (list !== null) watch.observe(list, { subtree: true, childList: true });
  });
  await expect(entered(page)).toHaveCount(2);
  expect(await page.evaluate(() => (window as unknown as { pressedIn: string }).pressedIn)).toBe(`value 239 5/8"`);
  await expect(entered(page).first()).toContainText(`239 5/8"`);
  await expect(entered(page).last()).toContainText(`335 5/8"`);
  await expect(form.locator(".next-reading strong")).not.toHaveText(first ?? "");
});

test("a two-peg test tells how far the instrument looks up, and a floor in a doorway how high the opening will be", async ({
  page,
}) => {
  await byHand(page);
  const ground = page.locator("main");
  const form = page.getByRole("form", { name: "Enter a reading" });
  await page.getByRole("button", { name: "Two-peg test" }).click();
  const pegs = {
    "from midway, on A": `52"`,
    "from midway, on B": `61 1/2"`,
    "close to A, on A": `44"`,
    "close to A, on B": `54"`,
    "close to A, sight to A": `6'`,
    "close to A, sight to B": `106'`,
  };
  for (const [label, value] of Object.entries(pegs)) await form.getByLabel(label, { exact: true }).fill(value);
  await form.getByRole("button", { name: "Enter", exact: true }).click();
  await expect(page.getByRole("list", { name: "Readings, newest first" }).locator("li")).toHaveCount(1);
  await settled(page);
  await page.getByRole("button", { name: "Rod or water level" }).click();
  for (const [station, length] of Object.entries({ datum: `48"`, A: `56"`, B: `56"`, C: `56"`, D: `56"` }))
    await rod(page, station, length);
  await expect(ground).toContainText(`looks up 1/2" over 100'-0"`);
  await form.getByLabel("on side").selectOption("AB");
  await form.getByLabel("at that distance").fill("12'");
  await form.getByLabel("the rod stood on").selectOption("floor");
  await rod(page, "floor at D1", `57"`);
  await expect(ground).toContainText("high over the floor as read");
});
