// A wall view on which nothing goes on: what tests of its screens begin with.
import type { Known } from "../../wall/screen";

export const kQuiet = {
  jambs: [],
  whens: [],
  now: 0,
  today: "",
  waiting: false,
  failed: false,
  undoable: false,
  redoable: false,
  awake: true,
  readOnly: false,
  said: "",
} satisfies Partial<Known>;
