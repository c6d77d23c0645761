// The texts in the page's language. One language so far; a second one is chosen here.
import { english, type Words } from "./english";

export type { Words };
export const words: Words = english;
