// What a touch at the wall can ask for.
import type { GroutEntry } from "./grouting";
import type { EntryKind, Face } from "./step";

export type Act =
  | { readonly do: "face"; readonly face: Face }
  | { readonly do: "day"; readonly page: number }
  | { readonly do: "more"; readonly page: number }
  | { readonly do: "changes"; readonly page: number }
  /// A note of the course in hand, typed where there is a keyboard for it.
  | { readonly do: "remark" }
  /// `mark`: the mark that is on the screen, nanometres; a reading is of that one and no other.
  | {
      readonly do: "begin";
      readonly kind: EntryKind;
      readonly way?: number;
      readonly mark?: number;
      readonly pick?: string;
    }
  | { readonly do: "pick"; readonly pick: string }
  | { readonly do: "way"; readonly way: number }
  | { readonly do: "step"; readonly by: number }
  | { readonly do: "turn" }
  | { readonly do: "page"; readonly page: number }
  | { readonly do: "next-unit" }
  | { readonly do: "enough" }
  | { readonly do: "lifted" }
  | { readonly do: "take" }
  | { readonly do: "likely" }
  | { readonly do: "as-read" }
  | { readonly do: "back" }
  | { readonly do: "undo" }
  | { readonly do: "redo" }
  | { readonly do: "look" }
  | { readonly do: "laid" }
  /// Grout: what is next but so many.
  | { readonly do: "grout"; readonly skip: number }
  | { readonly do: "grouted"; readonly entry: GroutEntry; readonly what: string }
  | { readonly do: "course"; readonly by: number }
  | { readonly do: "side" }
  | { readonly do: "aloud" }
  | { readonly do: "hand" }
  | { readonly do: "light" }
  | { readonly do: "leave" };
