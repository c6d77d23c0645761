// The other jobs on this device: deleted and brought back, doubled, renamed.
import { words } from "../words/words";
import { keep, openExample, openJob, removed, tellTrouble } from "./keeping";

export async function removeJob(id: string, name: string): Promise<void> {
  if (openJob.value?.id === id) await openExample();
  const gone = await keep.value?.remove(id);
  if (gone?.ok) removed.value = { id, name };
  else if (gone !== undefined) tellTrouble(gone.trouble);
}

export async function bringBack(): Promise<void> {
  const { value } = removed;
  if (value !== undefined) await restoreJob(value.id);
}

export async function restoreJob(id: string): Promise<void> {
  const back = await keep.value?.restore(id);
  if (removed.value?.id === id) removed.value = undefined;
  if (back !== undefined && !back.ok) tellTrouble(back.trouble);
}

/// Ends a job in the trash.
export async function destroyJob(id: string): Promise<void> {
  const done = await keep.value?.destroy(id);
  if (removed.value?.id === id) removed.value = undefined;
  if (done !== undefined && !done.ok) tellTrouble(done.trouble);
}

export async function duplicateJob(id: string, name: string): Promise<void> {
  const made = await keep.value?.duplicate(id, words.jobs.copyOf(name));
  if (made !== undefined && !made.ok) tellTrouble(made.trouble);
}

export async function renameJob(id: string, name: string): Promise<void> {
  const done = await keep.value?.rename(id, name);
  if (done !== undefined && !done.ok) tellTrouble(done.trouble);
}
