// The side and course that a note is about, and whether its field is waited for.
import { signal } from "@preact/signals";
import { goTo } from "../point";

export const about = signal({ side: "", course: 1, note: "", photos: [] as readonly string[] });
export const noteWanted = signal(false);

/// From the view at the wall to the note's field, ready to be typed or spoken into.
export function askRemark(side: string, course: number): void {
  about.value = { ...about.value, side, course };
  noteWanted.value = true;
  goTo("at-the-wall");
}
