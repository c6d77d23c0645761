// How workers get the engine's code: the brief module first, the whole one between two answers. Modules here are empty.
import { expect, test } from "vitest";
import { Code, type Codes } from "../../engine/code";
import { Supply } from "../../engine/helper";
import type { Given, Question } from "../../engine/messages";

const kEmpty = new WebAssembly.Module(new Uint8Array([0, 97, 115, 109, 1, 0, 0, 0]));

/// Files that come, or fail, when the test says so.
class Files {
  fetched = 0;
  private last:
    | { readonly come: (code: WebAssembly.Module) => void; readonly fail: (error: Error) => void }
    | undefined;
  readonly code = new Code(() => {
    this.fetched += 1;
    return new Promise((come, fail) => {
      this.last = { come, fail };
    });
  });

  async come(): Promise<void> {
    this.last?.come(kEmpty);
    await this.code.get();
  }
  fail(): void {
    this.last?.fail(new Error("cut off"));
  }
}

function begun(first: Codes["first"] = "brief") {
  const brief = new Files();
  const whole = new Files();
  const given: Given["which"][] = [];
  const supply = new Supply({ brief: brief.code, whole: whole.code, first }, (one) => given.push(one.which));
  void whole.code.there.then((code) => supply.give("whole", code));
  return { brief, whole, given, supply };
}

const asked = (brief: boolean): Question => ({ id: 1, request: "{}", brief });

test("a brief question waits for the brief module alone, which is given once", async () => {
  const { brief, whole, given, supply } = begun();
  const ready = supply.before(asked(true));
  expect(given).toEqual([]);
  await brief.come();
  await ready;
  await supply.before(asked(true));
  expect(given).toEqual(["brief"]);
  expect([brief.fetched, whole.fetched]).toEqual([1, 0]);
});

test("what needs the whole one waits for it; brief questions do not", async () => {
  const { brief, whole, given, supply } = begun();
  let answered = false;
  const ready = supply.before(asked(false)).then(() => {
    answered = true;
  });
  const quick = supply.before(asked(true));
  await brief.come();
  await quick;
  expect([answered, given]).toEqual([false, ["brief"]]);
  await whole.come();
  await ready;
  expect(given).toEqual(["brief", "whole"]);
});

test("the whole one takes over as soon as it is there, whoever asked for it, and for good", async () => {
  const { brief, whole, given, supply } = begun();
  const quick = supply.before(asked(true));
  void whole.code.get();
  await whole.come();
  await brief.come(); // late: the worker has the better one by now
  await quick;
  await supply.before(asked(true));
  expect(given).toEqual(["whole"]);
});

test("where both are on the device the whole one alone is taken", async () => {
  const { brief, whole, given, supply } = begun("whole");
  const ready = supply.before(asked(true));
  await whole.come();
  await ready;
  expect(given).toEqual(["whole"]);
  expect(brief.fetched).toBe(0);
});

test("a module that could not be had is fetched anew for the next question", async () => {
  const { brief, given, supply } = begun();
  const failed = supply.before(asked(true));
  brief.fail();
  await expect(failed).rejects.toThrow("cut off");
  const again = supply.before(asked(true));
  await brief.come();
  await again;
  expect([brief.fetched, given]).toEqual([2, ["brief"]]);
});
