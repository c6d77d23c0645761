// Jobs from files and into files.
import { pickFile, readFile, saveBytes } from "../keep";
import { words } from "../words/words";
import { turnsOver } from "./changing";
import { engine } from "./engine_port";
import { allStored, fileName, keep, lay, leave, openExample, openJob, stranded, tellTrouble } from "./keeping";
import { mergeLog } from "./logs";
import { goTo } from "./point";
import { history, said, trouble } from "./signals";

async function takeIn(text: string, name: string): Promise<void> {
  const taken = await keep.value?.takeIn(text, name);
  if (taken?.ok) {
    await leave();
    goTo("order");
    await lay(taken.value);
  } else if (taken?.trouble.kind === "not-a-job")
    trouble.value = { kind: "message", lead: words.trouble.notAJob, text: await whyNoJob(text) };
  else if (taken !== undefined) tellTrouble(taken.trouble);
  if (taken?.ok === false && history.value.now.text === "") await openExample();
}

/// Why a text is no job, with the line and column where it goes wrong: the engine's words.
async function whyNoJob(text: string): Promise<string> {
  try {
    const solved = await engine().solve({ border: 1, job: text, budget: 0 });
    const first = solved === "superseded" ? undefined : solved.refusals?.refusals[0];
    return first === undefined ? "" : `${first.reason} ${first.remedy}`;
  } catch {
    return "";
  }
}

export async function openFile(): Promise<void> {
  const picked = await pickFile();
  if (picked.ok) await takeIn(picked.value.text, picked.value.name);
  else tellTrouble(picked.trouble);
}

export async function dropFile(file: File): Promise<void> {
  const read = await readFile(file);
  if (read.ok) await takeIn(read.value.text, read.value.name);
  else tellTrouble(read.trouble);
}

/// Another phone's copy of this job, from a file: its logs are taken in.
export async function takeInLog(): Promise<void> {
  const picked = await pickFile();
  if (!picked.ok) return tellTrouble(picked.trouble);
  const refused = await mergeLog(picked.value.text);
  if (refused !== undefined && refused !== "")
    trouble.value = { kind: "message", lead: words.wall.notMerged, text: refused };
}

/// To a file, with every change that was asked for before: through the store, which then counts anew; or straight from the
/// page when the store cannot hold it.
export async function toFile(): Promise<void> {
  await turnsOver();
  await allStored();
  const open = openJob.value;
  const whole = open !== undefined && open.text.value === history.value.now.text;
  const done = whole
    ? await open.saveToFile()
    : await saveBytes(history.value.now.text, fileName(), "application/json");
  if (!done.ok) return tellTrouble(done.trouble);
  said.value = words.state.filed(done.value.name);
}

/// The file of a job that is not open.
export async function saveKept(id: string): Promise<void> {
  const text = await keep.value?.read(id);
  if (text === undefined) return;
  if (!text.ok) return tellTrouble(text.trouble);
  const heads = [...(keep.value?.jobs.value ?? []), ...(keep.value?.trash.value ?? [])];
  const name = heads.find((head) => head.id === id)?.name;
  const done = await saveBytes(text.value, fileName(name), "application/json");
  if (!done.ok) tellTrouble(done.trouble);
  else said.value = words.state.filed(done.value.name);
}

export async function saveStranded(): Promise<void> {
  const { value } = stranded;
  if (value === undefined) return;
  const done = await saveBytes(value.text, value.name, "application/json");
  if (done.ok) stranded.value = undefined;
  else tellTrouble(done.trouble);
}
