// The forms of a hold point, each folded until it is wanted.
import { emptyPart } from "../../job/form";
import { type Json, textAt } from "../../job/pointer";
import { kForms, kLists, type FormPlace, formKey, type ListPlace } from "../../state/fields_home";
import { dropEntry, entriesAt, partAt, sendEntry, sendPart } from "../../state/form";
import type { Point } from "../../state/point";
import { readOnly } from "../../state/signals";
import { formWords } from "../../words/form_words";
import { words } from "../../words/words";
import { Fold } from "../Fold";
import { Draft } from "./Draft";

const title = (name: string): string => formWords.titles[name] ?? name;

export function OneForm(props: { readonly form: FormPlace }) {
  const { form } = props;
  return (
    <Draft
      part={form.part}
      names={form.fields}
      place={form.place}
      label={title(form.title)}
      start={partAt(form.place)}
      send={(typed, changed) => sendPart(form.place, changed, typed, title(form.title))}
    />
  );
}

function nameOf(entry: Json, at: number): string {
  const name = textAt(entry, "/name");
  return name === "" ? String(at + 1) : name;
}

/// More entries than this are reached by the drawing.
const kMostListed = 60;

export function entryFold(list: ListPlace, at: number): string {
  return `${list.point} ${list.title} ${at}`;
}

export function OneEntry(props: { readonly list: ListPlace; readonly at: number }) {
  const { list, at } = props;
  const place = `${list.place}/${at}`;
  const name = nameOf(partAt(place), at);
  return (
    <>
      <Draft
        part={list.part}
        names={list.fields}
        place={place}
        label={name}
        start={partAt(place)}
        send={(typed, changed) => sendPart(place, changed, typed, name)}
      />
      {list.fields === undefined ? (
        <button type="button" class="danger" disabled={readOnly.value} onClick={() => void dropEntry(place, name)}>
          {words.inHand.takeOut(name)}
        </button>
      ) : null}
    </>
  );
}

function List(props: { readonly list: ListPlace }) {
  const { list } = props;
  const entries = entriesAt(list.place).slice(0, kMostListed);
  return (
    <>
      {entries.map((entry, at) => (
        <Fold
          key={`${list.place}/${at}`}
          name={entryFold(list, at)}
          title={nameOf(entry, at)}
          said={textAt(entry, "/on")}
        >
          {() => <OneEntry list={list} at={at} />}
        </Fold>
      ))}
      {entries.length === 0 && list.fields !== undefined ? <p class="small soft">{formWords.noOpening}</p> : null}
      {list.fields !== undefined ? null : (
        <Fold name={`${list.point} ${list.title} new`} title={formWords.another(title(list.title))}>
          {() => (
            <Draft
              part={list.part}
              place={`${list.place}/${entriesAt(list.place).length}`}
              label={formWords.another(title(list.title))}
              start={emptyPart(list.part)}
              fresh
              send={(typed) => sendEntry(list.place, list.part, typed, textAt(typed, "/name"))}
            />
          )}
        </Fold>
      )}
    </>
  );
}

/// How much of it the job says.
function said(form: FormPlace): string {
  const part = partAt(form.place) as { readonly [key: string]: Json };
  const there = form.fields.filter((field) => part[field] !== undefined).length;
  return there === 0 ? formWords.nothingSaid : formWords.saidOf(there, form.fields.length);
}

export function Forms(props: { readonly point: Point }) {
  const { point } = props;
  return (
    <section class="forms" aria-label={formWords.label}>
      <h3>{formWords.label}</h3>
      {kForms
        .filter((form) => form.point === point)
        .map((form) => (
          <Fold key={formKey(form)} name={formKey(form)} title={title(form.title)} said={said(form)}>
            {() => <OneForm form={form} />}
          </Fold>
        ))}
      {kLists
        .filter((list) => list.point === point)
        .map((list) => (
          <Fold
            key={list.title}
            name={`${list.point} ${list.title}`}
            title={title(list.title)}
            said={formWords.count(entriesAt(list.place).length)}
          >
            {() => <List list={list} />}
          </Fold>
        ))}
    </section>
  );
}
