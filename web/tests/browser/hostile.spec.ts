// Text from a job file never becomes markup, wherever it is shown.
import { readFile } from "node:fs/promises";
import { expect, test } from "@playwright/test";
import { goTo, openTable, settled } from "./table";

const kHostile = `<img src=x onerror="window.harmed=1"><script>window.harmed=1</script>"'&{{7*7}}\u202e`;

/// Every text of the example that a user chooses, made hostile: names keep what makes them different.
async function hostileJob(): Promise<string> {
  const text = await readFile(new URL("../../../examples/kiln-house.json", import.meta.url), "utf8");
  const job = JSON.parse(text);
  job.name = kHostile;
  job.notes = kHostile;
  job.drawn_by = kHostile;
  job.issued = kHostile;
  const corner = (name: string): string => `${name}</text><script>window.harmed=1</script>`;
  for (const side of job.outline.sides) {
    side.name = `${side.from}${side.to} ${kHostile}`;
    side.from = corner(side.from);
    side.to = corner(side.to);
  }
  const named = (on: string): string => job.outline.sides.find((one: { name: string }) => one.name.startsWith(on)).name;
  job.top.plate_on = job.top.plate_on.map(named);
  for (const trusses of job.top.trusses) {
    trusses.on = named(trusses.on);
    trusses.place.from = corner(trusses.place.from);
  }
  for (const opening of job.openings) {
    opening.on = named(opening.on);
    opening.place.from = corner(opening.place.from);
    opening.name = `${opening.name}"><svg onload="window.harmed=1">`;
    opening.note = kHostile;
  }
  return JSON.stringify(job);
}

test("hostile names in every field are shown as the letters that they are", async ({ page }) => {
  await openTable(page);
  const dialogs: string[] = [];
  page.on("dialog", (dialog) => {
    dialogs.push(dialog.message());
    void dialog.dismiss();
  });
  await goTo(page, "Jobs");
  const [chooser] = await Promise.all([
    page.waitForEvent("filechooser"),
    page.getByRole("button", { name: "Open a file" }).click(),
  ]);
  const buffer = Buffer.from(await hostileJob());
  await chooser.setFiles({ name: `${kHostile}.json`.replaceAll("/", ""), mimeType: "application/json", buffer });
  await expect(page.locator(".title-block h2")).toContainText("<img src=x");
  await settled(page);
  await page.locator("#plan .handle[data-part=body]").first().click();
  await page.locator("#plan .ink g > path").first().click({ force: true });
  await page.getByRole("button", { name: "Show the units in space" }).click();
  await expect(page.locator(".space canvas")).toHaveAttribute("data-units", /[1-9]/);
  // A name without room stands as a key, and is told whole under the drawing.
  await expect(page.locator("#plan .keys")).toContainText('"><svg onload="window.harmed=1">');
  const found = await page.evaluate(() => ({
    harmed: (window as unknown as { harmed?: number }).harmed,
    // The small map is a picture that the page made itself, and a picture runs nothing.
    images: document.querySelectorAll('#page img:not(.map > [src^="blob:"])').length,
    scripts: document.querySelectorAll("#page script, svg script, svg foreignObject").length,
    handlers: [...document.querySelectorAll("#page *")].filter((node) =>
      [...node.attributes].some((attribute) => attribute.name.startsWith("on")),
    ).length,
  }));
  expect(found).toEqual({ harmed: undefined, images: 0, scripts: 0, handlers: 0 });
  expect(dialogs).toEqual([]);
});

test("a drawing that holds more than shapes and letters is not shown", async ({ page }) => {
  // The second fence: an engine that wrote such a drawing would be at fault, so the worker is made to.
  await page.addInitScript(() => {
    const Real = window.Worker;
    window.Worker = class extends Real {
      override set onmessage(heard: ((event: MessageEvent) => void) | null) {
        super.onmessage = (event: MessageEvent) => {
          const block = event.data?.block as Uint8Array<ArrayBuffer> | undefined;
          if (block === undefined) return heard?.call(this, event);
          // Byte by byte: what browsers call latin1 has other letters for some bytes, which sizes are made of too.
          const text = Array.from(block, (byte) => String.fromCharCode(byte))
            .join("")
            .replaceAll("<title", "<image");
          const bytes = Uint8Array.from(text.replaceAll("</title", "</image"), (letter) => letter.charCodeAt(0));
          heard?.call(this, new MessageEvent("message", { data: { ...event.data, block: bytes } }));
        };
      }
    } as typeof Worker;
  });
  await page.goto("./#order");
  await expect(page.locator("#plan .ink")).toContainText("not shown because it holds more than a drawing");
  await expect(page.locator("#plan .ink image")).toHaveCount(0);
});
