// Parts of the page that are fetched when they are first opened: what waits for one, and one that cannot be had.
import { expect, test } from "vitest";
import { part } from "../../parts/part";
import { hasCome, onceCome, tellCome } from "../../state/arrival";
import { place } from "../../state/point";

const nothing = (): null => null;
const soon = (): Promise<void> => new Promise((done) => setTimeout(done, 0));

test("what is to be done at a place waits until its part has come, and is done once", async () => {
  place.value = "grout";
  let done = 0;
  onceCome(() => (done += 1));
  expect([hasCome.value, done]).toEqual([false, 0]);
  tellCome("grout");
  expect([hasCome.value, done]).toEqual([true, 1]);
  await soon();
  tellCome("top");
  expect(done).toBe(1);
  onceCome(() => (done += 1)); // it is there: at once
  expect(done).toBe(2);
});

test("whoever has gone elsewhere by then is not called back", async () => {
  place.value = "pour";
  let done = 0;
  onceCome(() => (done += 1));
  place.value = "jobs";
  await soon();
  tellCome("pour");
  place.value = "pour";
  await soon();
  expect(done).toBe(0);
});

test("the list of jobs is there from the start", () => {
  place.value = "jobs";
  expect(hasCome.value).toBe(true);
});

test("a part is fetched once however often it is asked for; one that could not be had is told, and fetched anew", async () => {
  let asked = 0;
  let there = false;
  const one = part(async () => {
    asked += 1;
    if (!there) throw new Error("no network");
    return nothing;
  });
  await Promise.all([one.fetch(), one.fetch()]);
  expect([asked, one.failed.value, one.view.value]).toEqual([1, true, undefined]);
  there = true;
  await one.fetch();
  expect([asked, one.failed.value, one.view.value]).toEqual([2, false, nothing]);
  await one.fetch();
  expect(asked).toBe(2);
});
