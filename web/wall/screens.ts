// What the view at the wall shows. Pure: from where the view stands and what the engine said to what is on the screen.
import { hasCard } from "../state/wall/going";
import { closingGap } from "../state/wall/marks";
import { words } from "../words/words";
import { dayScreen } from "./day_screen";
import { changesOf, changesScreen, enterScreen, questionScreen, toldScreen } from "./entry_screens";
import { faceScreen } from "./face_screens";
import { groutScreen } from "./grout_screen";
import { type Known, kUndo, name, notes, paged, type Screen, type Zone } from "./screen";

const w = words.wall;

function moreScreen(known: Known, page: number): Screen {
  const { state } = known;
  const all: readonly Zone[] = [
    kUndo,
    known.redoable ? { label: w.redo, act: { do: "redo" } } : { label: w.done, act: { do: "laid" } },
    { label: w.remark, act: { do: "remark" } },
    { label: w.leave, act: { do: "leave" } },
    ...(known.redoable ? [{ label: w.done, act: { do: "laid" } } as const] : []),
    ...(changesOf(known).length > 0 ? [{ label: w.otherwise, act: { do: "changes", page: 0 } } as const] : []),
    { label: w.courseUp, act: { do: "course", by: 1 } },
    { label: w.nextSide, act: { do: "side" } },
    ...(hasCard(known.answer) ? [{ label: w.day.card, act: { do: "day", page: 0 } } as const] : []),
    ...((known.answer?.pour_cards ?? []).length === 0
      ? []
      : [{ label: w.grout, act: { do: "grout", skip: 0 } } as const]),
    { label: w.gauge(known.tape), act: { do: "begin", kind: "gauge" } },
    ...(closingGap(known.course?.course) === undefined
      ? []
      : [{ label: w.gap, act: { do: "begin", kind: "gap" } } as const]),
    { label: w.set, act: { do: "begin", kind: "set" } },
    { label: w.check, act: { do: "begin", kind: "check" } },
    { label: w.row, act: { do: "begin", kind: "row" } },
    { label: w.courseDown, act: { do: "course", by: -1 } },
    { label: w.jamb, act: { do: "begin", kind: "jamb" } },
    { label: w.end, act: { do: "begin", kind: "end" } },
    { label: w.aloud, act: { do: "aloud" } },
    { label: state.hand === "right" ? w.toLeft : w.toRight, act: { do: "hand" } },
    { label: state.light === "sun" ? w.evening : w.sunlight, act: { do: "light" } },
  ];
  return {
    lead: name(known),
    number: "",
    under: notes(known),
    zones: paged(all, page, (further) => ({ do: "more", page: further })),
  };
}

export function screenOf(known: Known): Screen {
  const { place } = known.state;
  switch (place.screen) {
    case "face":
      return faceScreen(known, place.face);
    case "day":
      return dayScreen(known, place.page);
    case "more":
      return moreScreen(known, place.page);
    case "enter":
      return enterScreen(known, place.entry);
    case "question":
      return questionScreen(known, place.entry);
    case "changes":
      return changesScreen(known, place.page);
    case "grout":
      return groutScreen(known, place.skip);
    case "told":
      return toldScreen(known, place.kind, place.id);
  }
}
