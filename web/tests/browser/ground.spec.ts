// Readings of tape and rod, entered in the page, and what they come to.
import { expect, type Page, test } from "@playwright/test";
import { openTable, settled } from "./table";

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
}

async function rod(page: Page, station: string, length: string): Promise<void> {
  const form = page.getByRole("form", { name: "Enter a reading" });
  await form.getByLabel("point").fill(station);
  await form.getByLabel("rod reads").fill(length);
  await form.getByRole("button", { name: "Enter", exact: true }).click();
  await expect(page.getByRole("list", { name: "Readings, newest first" }).locator("li").first()).toContainText(station);
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
  await openTable(page);
  const ground = page.locator("#ground");
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
  await openTable(page);
  const form = page.getByRole("form", { name: "Enter a reading" });
  await form.getByLabel("tape reads").fill("twelve");
  await form.getByRole("button", { name: "Enter", exact: true }).click();
  await expect(form.getByRole("alert")).toContainText("twelve");
  await expect(page.locator("#ground")).toContainText("Nothing is read yet.");
  await expect(form.getByLabel("tape reads")).toHaveValue("twelve");
});

test("rod readings give the first bed under every unit, and the choices where none fits", async ({ page }) => {
  await openTable(page);
  await page.getByRole("button", { name: "Rod or water level" }).click();
  const fall = { datum: `48"`, A: `52"`, B: `52 3/4"`, C: `52 3/8"`, D: `52 1/16"` };
  for (const [station, length] of Object.entries(fall)) await rod(page, station, length);
  const ground = page.locator("#ground");
  await expect(ground).toContainText("It does not fit.");
  await expect(ground).toContainText("grind high spots at 2 readings");
  await expect(ground.locator(".ink svg#bed-1")).toBeVisible();
  await ground.getByRole("button", { name: "CD" }).click();
  await expect(ground.locator(".ink svg#bed-3")).toBeVisible();
});

test("readings are part of the job: they are there after a reload", async ({ page }) => {
  await openTable(page);
  await taping(page, "A", "C", `412 3/8"`);
  await expect(page.locator(".state-line, footer, body").first()).toBeVisible();
  await page.waitForTimeout(500);
  await page.reload();
  await settled(page);
  await expect(page.getByRole("list", { name: "Readings, newest first" })).toContainText(`412 3/8"`);
});

async function dowel(page: Page, at: string): Promise<void> {
  const form = page.getByRole("form", { name: "Enter a reading" });
  await form.getByLabel("on side").selectOption("DA");
  await form.getByLabel("its centre, from the side's start").fill(at);
  await form.getByRole("button", { name: "Enter", exact: true }).click();
  await expect(page.getByRole("list", { name: "Readings, newest first" }).locator("li").first()).toContainText(at);
}

test("a dowel in a web is saved by another layout, taken with one tap and given back with one", async ({ page }) => {
  await openTable(page);
  await page.getByRole("button", { name: "Dowel" }).click();
  for (const at of [`51 13/16"`, `103 13/16"`, `147 13/16"`]) await dowel(page, at);
  const ground = page.locator("#ground");
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
  await openTable(page);
  const ground = page.locator("#ground");
  await ground.getByText("Setting out, tape and rod").click();
  const pull = ground.getByLabel("pull on the line");
  await expect(pull).toHaveValue("20 lb");
  await pull.fill("hard");
  await pull.press("Enter");
  await expect(ground.getByRole("alert")).toContainText("hard");
  await pull.fill("25 lb");
  await pull.press("Enter");
  await expect(ground.getByRole("alert")).toHaveCount(0);
  await ground.getByLabel("dowels stand up over the footing or slab").fill(`24"`);
  await ground.getByLabel("dowels stand up over the footing or slab").press("Enter");
  await expect(ground.getByRole("button", { name: "Set", exact: true })).toHaveCount(0);
  await settled(page);
  await expect(ground.getByLabel("dowels stand up over the footing or slab")).toHaveValue(`24"`);
  await ground.getByLabel("dowels stand up over the footing or slab").fill("");
  await ground.getByLabel("dowels stand up over the footing or slab").press("Enter");
  await settled(page);
  await expect(ground.getByLabel("dowels stand up over the footing or slab")).toHaveValue("");
});

test("a two-peg test tells how far the instrument looks up, and a floor in a doorway how high the opening will be", async ({
  page,
}) => {
  await openTable(page);
  const ground = page.locator("#ground");
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
  await page.getByRole("button", { name: "Rod or water level" }).click();
  for (const [station, length] of Object.entries({ datum: `48"`, A: `56"`, B: `56"`, C: `56"`, D: `56"` }))
    await rod(page, station, length);
  await expect(ground).toContainText(`looks up 1/2" over 100'-0"`);
  await form.getByLabel("on side").selectOption("AB");
  await form.getByLabel("at, from its start").fill("12'");
  await form.getByLabel("the rod stood on").selectOption("floor");
  await rod(page, "floor at D1", `57"`);
  await expect(ground).toContainText("high over the floor as read");
});
