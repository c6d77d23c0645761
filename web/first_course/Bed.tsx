// How thick the first bed will be, and what else can be done about it.
import { PaperBox } from "../draw/PaperBox";
import { type Remedy, Remedies } from "../reading/Remedies";
import { bedDrawn, bedSide, type Ground, ground } from "../state/ground";
import { sides } from "../state/signals";
import { words } from "../words/words";

type BedFound = NonNullable<NonNullable<Ground["levels"]>["bed"]>;
const w = words.remedies;

function takesOf(choice: BedFound["choices"][number]): readonly string[] {
  return [
    choice.keeps ? "" : w.outside,
    choice.cuts === 0 ? w.noCuts : w.cuts(choice.cuts),
    choice.work === 0 ? w.noWork : w.work(choice.work),
    w.mortar(choice.mortar),
    choice.concrete === undefined ? "" : w.concrete(choice.concrete),
    choice.money,
  ].filter((text) => text !== "");
}

/// Where the bed fits nothing is to be chosen.
function remediesOf(bed: BedFound): readonly Remedy[] {
  if (bed.verdict === "fits" || bed.verdict === "not-read") return [];
  return bed.choices.map((choice) => ({ ...choice, takes: takesOf(choice) }));
}

export function Bed(props: { readonly bed: BedFound }) {
  const { bed } = props;
  return (
    <div class="result whole">
      <h3>{words.ground.bed}</h3>
      <p>
        <strong>{words.ground.verdicts[bed.verdict]}</strong>{" "}
        {bed.verdict === "not-read"
          ? null
          : words.ground.bedRange(bed.thinnest.text, bed.thickest.text, bed.least.text, bed.most.text)}{" "}
        {bed.lacks.length === 0 ? null : words.ground.bedLacks(bed.lacks.join(", "))}
      </p>
      <Remedies about="bed" remedies={remediesOf(bed)} now={ground.value?.bed_chosen} />
      <fieldset class="choice" aria-label={words.drawing.sides}>
        {sides.value.map((side, index) => (
          <button
            type="button"
            key={side.place}
            aria-pressed={index === bedSide.value}
            onClick={() => (bedSide.value = index)}
          >
            {side.name}
          </button>
        ))}
      </fieldset>
      {bedDrawn.value.svg === "" ? (
        <p class="small soft">{words.ground.noBedHere}</p>
      ) : (
        <PaperBox {...bedDrawn.value} label={words.ground.bed} />
      )}
    </div>
  );
}
