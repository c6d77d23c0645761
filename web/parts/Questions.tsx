// What is asked the day before, each with its answer, the number that says so, its place and its field.
import type { HoldPoint, Question } from "../engine/contract";
import { openField, showPlace } from "../state/seeing";
import { words } from "../words/words";

const w = words.points;

/// Marks that differ in shape, beside words that say the same.
const kMarks: Readonly<Record<Question["answer"], string>> = {
  yes: "✓",
  no: "✕",
  "cannot-tell": "?",
  "not-read": "",
};

function Links(props: { readonly what: string; readonly place: string; readonly drawing: string }) {
  const { what, place, drawing } = props;
  if (place === "" && drawing === "") return null;
  return (
    <span class="links">
      <button type="button" aria-label={w.seePlaceOf(what)} onClick={() => showPlace(place, drawing)}>
        {w.seePlace}
      </button>
      {place === "" ? null : (
        <button type="button" aria-label={w.openFieldOf(what)} onClick={() => openField(place)}>
          {w.openField}
        </button>
      )}
    </span>
  );
}

function One(props: { readonly question: Question; readonly coming: boolean }) {
  const { question } = props;
  return (
    <li class="question" data-answer={question.answer}>
      <span class="mark" aria-hidden="true">
        {kMarks[question.answer]}
      </span>
      <span class="asked">
        {question.text}
        <span class="answer">
          {props.coming ? <span class="soon">{w.soon}</span> : null}
          <strong>{w.answers[question.answer]}</strong>
          {question.says === "" ? null : ` ${question.says}`}
          {question.chosen === "" ? null : <span class="chosen-remedy"> {w.chosen(question.chosen)}</span>}
        </span>
      </span>
      <Links what={question.text} place={question.place} drawing={question.drawing} />
    </li>
  );
}

/// `coming`: what is asked is known, the answers are not; those of the example keep their room, unseen.
export function Questions(props: { readonly point: HoldPoint; readonly coming?: boolean }) {
  const { point } = props;
  const coming = props.coming === true;
  return (
    <section class={coming ? "questions coming" : "questions"} id="questions" aria-label={w.questions}>
      {coming ? (
        <p class="hidden-words" role="status">
          {w.coming}
        </p>
      ) : null}
      <h3>{w.questions}</h3>
      <ul aria-live="polite">
        {point.questions.map((question) => (
          <One key={question.code} question={question} coming={coming} />
        ))}
      </ul>
      {point.lacks.length === 0 ? null : (
        <>
          <h4>{w.lacks}</h4>
          <ul class="lacks">
            {point.lacks.map((lack) => (
              <li key={lack.text}>
                <span>{lack.text}</span>
                <Links what={lack.text} place={lack.place} drawing="" />
              </li>
            ))}
          </ul>
        </>
      )}
    </section>
  );
}
