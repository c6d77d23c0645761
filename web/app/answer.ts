// Names for the parts of the answer that the page shows.
import type { Answer, Refusals } from "../engine/contract";

export type { Answer, Refusals };
export type Side = Answer["sides"][number];
export type Opening = Answer["openings"][number];
export type Finding = Answer["findings"][number];
export type Offer = Answer["offers"][number];
export type FreePlaces = Answer["free_places"];
