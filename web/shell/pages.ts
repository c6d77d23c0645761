// The pages of the points and the view at the wall, each a part of its own.
import { whenIdle } from "../engine/idle";
import { type Part, part } from "../parts/part";
import { tellCome } from "../state/arrival";
import type { Place, Point } from "../state/point";

export const kPages: Readonly<Record<Point, Part>> = {
  order: part(async () => (await import("../order/Order")).Order),
  pour: part(async () => (await import("../pour/Pour")).Pour),
  "first-course": part(async () => (await import("../first_course/FirstCourse")).FirstCourse),
  lintels: part(async () => (await import("../lintels/Lintels")).Lintels),
  grout: part(async () => (await import("../grout/Grout")).Grout),
  top: part(async () => (await import("../top/Top")).Top),
  "at-the-wall": part(async () => (await import("../wall/Wall")).Wall),
};

export const kAtWall = part(async () => (await import("../wall/AtWall")).AtWall);

/// Fetches the part of a place; the list of jobs is there from the start.
export async function fetchPlace(at: Place): Promise<void> {
  if (at === "jobs") return;
  await kPages[at].fetch();
  if (kPages[at].view.value !== undefined) tellCome(at);
}

/// All parts, one after another, while the browser has nothing else to do.
export async function fetchAllWhenIdle(): Promise<void> {
  const idle = (): Promise<void> => new Promise((done) => whenIdle(done));
  for (const at of Object.keys(kPages) as Point[]) {
    await idle();
    await fetchPlace(at);
  }
  await idle();
  await kAtWall.fetch();
}
